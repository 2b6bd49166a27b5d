/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where checks point, on the board.
 */
#include "cw-board-private.h"

void
cw_board_set_checks (CwBoard *self, GPtrArray *checks)
{
  g_return_if_fail (CW_IS_BOARD (self));

  if (self->checks == checks)
    return;
  g_clear_pointer (&self->checks, g_ptr_array_unref);
  self->checks = checks ? g_ptr_array_ref (checks) : NULL;
  cw_board_spoil (self, 1 << CW_BOARD_CHECKS);
}

CwDisplayList *
cw_board_draw_checks (CwBoard *self)
{
  return self->checks && self->elevation_id && !self->as_printed
                 && (self->layers & CW_LAYER_CHECKS)
             ? cw_check_drawing (self->checks, self->elevation_id)
             : NULL;
}

CwDisplayList *
cw_board_draw_lit_check (CwBoard *self)
{
  return self->lit_places
                 && g_strcmp0 (self->lit_elevation, self->elevation_id) == 0
             ? cw_check_drawing_lit (self->lit_places)
             : NULL;
}

void
cw_board_drop_checks (CwBoard *self)
{
  g_clear_pointer (&self->checks, g_ptr_array_unref);
  g_clear_pointer (&self->lit_places, g_array_unref);
  g_clear_pointer (&self->lit_elevation, g_free);
}

static CwBox
box_of (const GArray *places)
{
  CwBox box = g_array_index (places, CwBox, 0);

  for (guint i = 1; i < places->len; i++)
    box = cw_box_around (&box, &g_array_index (places, CwBox, i));
  return box;
}

static gboolean
is_lit (CwBoard *self, const char *elevation_id, const GArray *places)
{
  return self->lit_places && self->lit_places->len == places->len
         && g_strcmp0 (self->lit_elevation, elevation_id) == 0
         && memcmp (self->lit_places->data, places->data,
                    places->len * sizeof (CwBox)) == 0;
}

static void
light_places (CwBoard *self, const char *elevation_id, GArray *places)
{
  const CwBox box = box_of (places);

  if (is_lit (self, elevation_id, places))
    return;
  g_clear_pointer (&self->lit_places, g_array_unref);
  g_free (self->lit_elevation);
  self->lit_places = g_array_ref (places);
  self->lit_elevation = g_strdup (elevation_id);
  if (g_strcmp0 (self->lit_elevation, self->elevation_id) == 0)
    cw_board_show_box (self, &box);
}

void
cw_board_light_check (CwBoard *self, const CwCheck *check)
{
  g_return_if_fail (CW_IS_BOARD (self));

  if (check && check->elevation_id && check->places->len > 0)
    light_places (self, check->elevation_id, check->places);
  else
    {
      g_clear_pointer (&self->lit_places, g_array_unref);
      g_clear_pointer (&self->lit_elevation, g_free);
    }
  cw_board_spoil (self, 1 << CW_BOARD_LIT);
}

void
cw_board_light_box (CwBoard *self, const char *elevation_id,
                    const CwBox *box)
{
  g_return_if_fail (CW_IS_BOARD (self));
  g_return_if_fail (elevation_id != NULL && box != NULL);

  g_autoptr (GArray) places = g_array_new (FALSE, FALSE, sizeof (CwBox));

  g_array_append_vals (places, box, 1);
  light_places (self, elevation_id, places);
  cw_board_spoil (self, 1 << CW_BOARD_LIT);
}
