/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls and unclad areas that cannot be measured, sheets without true scale.
 */
#include "cw-checks-private.h"

#include <math.h>

static void
add_invalid (CwChecking *checking, const char *code, const char *item,
             const CwList *list)
{
  g_autoptr (GArray) corners = cw_corners_from_list (list);
  const CwOutlineCheck fault
      = cw_outline_check ((const CwCorner *) corners->data, corners->len);
  CwCheck *check;

  if (fault.fault == CW_OUTLINE_VALID)
    return;
  check = cw_check_add (checking, code, item, cw_outline_check_text (&fault));
  cw_check_add_figure (check, fault.fault);
  if (fault.side < corners->len)
    cw_check_add_point (
        check, g_array_index (corners, CwCorner, fault.side).at);
}

static void
check_unclads (CwChecking *checking, const CwElevation *elevation)
{
  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      const CwNode *item = cw_list_at (elevation->items, i);

      if (item->type == &cw_unclad_type)
        add_invalid (checking, "unclad-invalid", cw_node_id (item),
                     ((const CwUnclad *) item)->corners);
    }
}

void
cw_check_outline (CwChecking *checking)
{
  const CwWall *wall = checking->wall->wall;
  const CwElevation *elevation = wall->elevation;

  if (!elevation->outline)
    cw_check_add (checking, "outline-missing", NULL,
                  g_strdup (_ ("It has no outline, so nothing of it is "
                              "counted.")));
  else if (!wall->outline)
    add_invalid (checking, "outline-invalid", NULL,
                 ((const CwOutline *) elevation->outline)->corners);
  else if (!wall->buildup)
    cw_check_add (checking, "buildup-missing", NULL,
                  g_strdup (_ ("It names no buildup, so no panels and no "
                              "materials are counted.")));
  check_unclads (checking, elevation);
}

static const char *
sheet_name (const CwSheet *sheet)
{
  return *sheet->name ? sheet->name : sheet->id;
}

static void
check_scales (CwChecking *checking, const CwSheet *sheet)
{
  const CwLimits *limits
      = (const CwLimits *) checking->takeoff->project->limits;
  const CwScale *scale = (const CwScale *) sheet->scale;
  const double across = cw_decimal_to_double (scale->across);
  const double along = cw_decimal_to_double (scale->along);
  const double percent = fabs (along / across - 1) * 100;

  if (percent <= cw_decimal_to_double (limits->scale_difference))
    return;
  g_autofree char *by = cw_check_number (checking, percent);
  g_autofree char *most = cw_check_number (
      checking, cw_decimal_to_double (limits->scale_difference));
  CwCheck *check = cw_check_add (
      checking, "sheet-scales-differ", sheet->id,
      g_strdup_printf (_ ("The scale of sheet %s along the page differs from "
                         "that across it by %s %%; %s %% is the limit set."),
                       sheet_name (sheet), by, most));
  cw_check_add_figure (check, percent);
}

static gboolean
has_scale (const CwSheet *sheet)
{
  const CwScale *scale = (const CwScale *) sheet->scale;

  return scale && scale->across > 0 && scale->along > 0;
}

void
cw_check_sheets (CwChecking *checking)
{
  const CwList *sheets = checking->takeoff->project->sheets;

  for (gsize i = 0; i < cw_list_length (sheets); i++)
    {
      const CwSheet *sheet = cw_list_at (sheets, i);

      if (has_scale (sheet))
        check_scales (checking, sheet);
      else
        cw_check_add (checking, "sheet-no-scale", sheet->id,
                      g_strdup_printf (
                          _ ("Sheet %s has no scale, so nothing traced on it "
                            "is true yet."),
                          sheet_name (sheet)));
    }
}
