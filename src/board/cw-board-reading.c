/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading the board: what lies under the pointer, what is selected brought
 * near, and how it will look on paper.
 */
#include "cw-board-private.h"

#include "cw-hit.h"
#include "cw-item-words.h"

#define REACH_PIXELS 4
#define SELECTION_MARGIN 96

/* While something is drawn or dragged its own sizes stand there. */
char *
cw_board_words_at_pointer (CwBoard *self)
{
  g_return_val_if_fail (CW_IS_BOARD (self), NULL);

  const CwWallTakeoff *takeoff
      = self->takeoff && self->elevation_id
            ? cw_takeoff_wall (self->takeoff, self->elevation_id)
            : NULL;

  if (self->wall == NULL || !self->has_pointer || self->pressed
      || self->kind != CW_TOOL_SELECT)
    return NULL;
  return cw_item_words_at (
      self->wall, takeoff, cw_view_point (&self->view, self->x, self->y),
      (CwLength) (REACH_PIXELS * self->view.nm_per_pixel),
      self->as_printed ? CW_LAYER_ALL : self->layers, &self->style);
}

void
cw_board_set_as_printed (CwBoard *self, gboolean as_printed)
{
  g_return_if_fail (CW_IS_BOARD (self));

  if (as_printed == self->as_printed)
    return;
  self->as_printed = as_printed;
  cw_board_find_palette (self);
  cw_board_spoil (self, ~0u);
}

/* All that is selected; the outline where that is the whole elevation. */
static gboolean
selection_box (CwBoard *self, CwBox *box)
{
  const char *const *ids = cw_document_selection (self->document);
  gboolean found = FALSE;

  for (; *ids; ids++)
    {
      CwBox one;

      if (!cw_hit_bounds (self->wall, *ids, &one))
        continue;
      *box = found ? cw_box_around (box, &one) : one;
      found = TRUE;
    }
  return found;
}

gboolean
cw_board_zoom_to_selection (CwBoard *self)
{
  double width = gtk_widget_get_width (GTK_WIDGET (self));
  double height = gtk_widget_get_height (GTK_WIDGET (self));
  CwBox box;

  g_return_val_if_fail (CW_IS_BOARD (self), FALSE);

  if (self->wall == NULL || self->wants_fit || width < 1
      || !selection_box (self, &box))
    return FALSE;
  cw_view_fit (&self->view, &box, width, height,
               MIN (SELECTION_MARGIN, MIN (width, height) / 4));
  cw_board_view_changed (self);
  cw_board_feed_again (self);
  return TRUE;
}

char *
cw_board_describe_crosshair (CwBoard *self)
{
  CwPoint at = cw_view_point (&self->view, self->x, self->y);
  g_autofree char *across = cw_length_format (at.x, &self->style);
  g_autofree char *up = cw_length_format (at.y, &self->style);
  g_autofree char *words = NULL;
  const char *snapped;

  if (!self->by_keys)
    return NULL;
  snapped = self->tool ? cw_tool_snap_words (self->tool) : NULL;
  words = cw_board_words_at_pointer (self);
  if (snapped)
    /* Translators: across, up, what the pointer has fallen on, and what lies
     * there. */
    return g_strdup_printf (_ ("At %s, %s: %s. %s"), across, up, snapped,
                            words ? words : "");
  if (words)
    /* Translators: across, up, and what lies there. */
    return g_strdup_printf (_ ("At %s, %s: %s"), across, up, words);
  return g_strdup_printf (_ ("At %s, %s"), across, up);
}
