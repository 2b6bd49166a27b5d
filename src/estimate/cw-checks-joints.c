/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls that are larger than a field between control joints may be.
 */
#include "cw-checks-private.h"
#include "cw-control-joints.h"
#include "cw-estimate-private.h"

static void
add_joints (CwCheck *check, const CwWall *wall)
{
  g_autoptr (GArray) lines = cw_estimate_control_joint_lines (wall);

  for (guint i = 0; i < lines->len; i++)
    {
      const CwJoint *line = &g_array_index (lines, CwJoint, i);
      cw_check_add_place (check, (CwBox) { line->from.x, line->from.y,
                                           line->to.x, line->to.y });
    }
}

void
cw_check_control_joints (CwChecking *checking)
{
  const CwWall *wall = checking->wall->wall;
  const CwLimits *limits = wall->limits;
  const CwBox box = cw_region_box (wall->outline);
  const CwControlGrid grid = cw_control_grid_of (wall);

  if (!wall->buildup || grid.n_columns * grid.n_rows < 1.5)
    return;
  g_autofree char *width = cw_check_length (checking, cw_box_width (&box));
  g_autofree char *height = cw_check_length (checking, cw_box_height (&box));
  g_autofree char *area = cw_check_amount (
      checking, cw_decimal_to_double (limits->control_area), "m²");
  g_autofree char *side = cw_check_length (checking, limits->control_side);
  g_autofree char *ratio = cw_text_style_number (
      checking->style, cw_decimal_to_double (limits->control_ratio), 1);
  CwCheck *check = cw_check_add (
      checking, "control-joints", NULL,
      g_strdup_printf (
          _ ("%s × %s is one field, over the limits set."), width, height));
  cw_check_set_detail (
      check,
      g_strdup_printf (
          _ ("A field may have at most %s, %s either way and %s : 1. %.0f by "
            "%.0f equal fields would keep to that."),
          area, side, ratio, grid.n_columns, grid.n_rows));
  cw_check_add_figure (check, cw_length_in_m (cw_box_width (&box)));
  cw_check_add_figure (check, cw_length_in_m (cw_box_height (&box)));
  add_joints (check, wall);
}
