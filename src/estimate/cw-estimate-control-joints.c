/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Control joints that part a wall into fields small enough. The limits are
 * the project's; their defaults are those of ASTM C1063 for walls of plaster
 * on lath: a field of at most 144 ft², 18 ft either way, length to width at
 * most 2.5 : 1.
 */
#include "cw-control-joints.h"
#include "cw-estimate-private.h"

#include <math.h>

/* More rows than the least are tried, because wider fields may come of it. */
#define EXTRA_ROWS 10

/* Equal parts no longer than @most; 12 ft in 12 ft is one. */
static double
n_parts (double length, double most)
{
  return MAX (1, ceil (length / most - 1e-9));
}

/* The fewest columns with @n_rows rows; FALSE when no number will do. */
static gboolean
grid_of_rows (const CwLimits *limits, double width, double height,
              double n_rows, CwControlGrid *grid)
{
  const double side = cw_length_in_m (limits->control_side);
  const double area = cw_decimal_to_double (limits->control_area);
  const double ratio = cw_decimal_to_double (limits->control_ratio);
  double row = height / n_rows;
  double most = MIN (MIN (side, area / row), ratio * row);
  double n_columns = n_parts (width, most);

  grid->n_columns = n_columns;
  grid->n_rows = n_rows;
  grid->length = (n_columns - 1) * height + (n_rows - 1) * width;
  return row <= side * (1 + 1e-9)
         && row <= ratio * (width / n_columns) * (1 + 1e-9);
}

CwControlGrid
cw_control_grid (const CwLimits *limits, double width, double height)
{
  double least_rows
      = n_parts (height, cw_length_in_m (limits->control_side));
  double narrow_rows = n_parts (
      height, cw_decimal_to_double (limits->control_ratio) * width);
  CwControlGrid best = { 1, narrow_rows, (narrow_rows - 1) * width };
  gboolean found
      = grid_of_rows (limits, width, height, narrow_rows, &best);

  for (guint i = 0; i <= EXTRA_ROWS; i++)
    {
      CwControlGrid grid;

      if (grid_of_rows (limits, width, height, least_rows + i, &grid)
          && (!found || grid.length < best.length))
        {
          best = grid;
          found = TRUE;
        }
    }
  return best;
}

CwControlGrid
cw_control_grid_of (const CwWall *wall)
{
  CwBox box = cw_region_box (wall->outline);

  return cw_control_grid (wall->limits,
                          cw_length_in_m (cw_box_width (&box)),
                          cw_length_in_m (cw_box_height (&box)));
}

static void
add_span (GArray *lines, CwAxis axis, CwLength at, CwLength low, CwLength high)
{
  CwJoint line = { .is_bed = axis == CW_AXIS_Y };

  line.from = line.is_bed ? cw_point (low, at) : cw_point (at, low);
  line.to = line.is_bed ? cw_point (high, at) : cw_point (at, high);
  g_array_append_val (lines, line);
}

/* Where there is wall on both sides of the line: along a jamb, a head or a
 * sill there is nothing to part. */
static void
add_line (GArray *lines, const CwRegion *net, CwAxis axis, CwLength at)
{
  g_autoptr (GArray) before = cw_region_spans (net, axis, at - 1);
  g_autoptr (GArray) after = cw_region_spans (net, axis, at + 1);
  guint i = 0, j = 0;

  while (i + 1 < before->len && j + 1 < after->len)
    {
      const CwLength *one = &g_array_index (before, CwLength, i);
      const CwLength *other = &g_array_index (after, CwLength, j);
      const CwLength low = MAX (one[0], other[0]);
      const CwLength high = MIN (one[1], other[1]);

      if (low < high)
        add_span (lines, axis, at, low, high);
      if (one[1] < other[1])
        i += 2;
      else
        j += 2;
    }
}

/* On the net area, n − 1 lines that part the box equally. */
static void
add_lines (GArray *lines, const CwRegion *net, CwAxis axis, CwLength low,
           CwLength high, double n)
{
  for (double i = 1; i < n; i++)
    {
      CwLength at = low + (CwLength) llround ((double) (high - low) * i / n);

      add_line (lines, net, axis, at);
    }
}

GArray *
cw_estimate_control_joint_lines (const CwWall *wall)
{
  GArray *lines = g_array_new (FALSE, FALSE, sizeof (CwJoint));
  CwBox box = cw_region_box (wall->outline);
  CwControlGrid grid = cw_control_grid_of (wall);

  add_lines (lines, wall->net, CW_AXIS_X, box.left, box.right,
             grid.n_columns);
  add_lines (lines, wall->net, CW_AXIS_Y, box.bottom, box.top, grid.n_rows);
  return lines;
}

/* m of the upright or the level ones; either way one coordinate is still. */
static double
lines_length (const GArray *lines, gboolean level)
{
  CwLength sum = 0;

  for (guint i = 0; i < lines->len; i++)
    {
      const CwJoint *line = &g_array_index (lines, CwJoint, i);

      if (!line->is_bed == !level)
        sum += line->to.x - line->from.x + line->to.y - line->from.y;
    }
  return cw_length_in_m (sum);
}

void
cw_estimate_control_joints (CwWallEstimate *estimate)
{
  CwControlGrid grid = cw_control_grid_of (estimate->wall);
  g_autoptr (GArray) lines
      = cw_estimate_control_joint_lines (estimate->wall);
  double upright = lines_length (lines, FALSE);
  double level = lines_length (lines, TRUE);

  estimate->figures->beads[CW_BEAD_CONTROL_JOINT] = upright + level;
  cw_quantity_step (cw_quantity_add (estimate->quantities, "joint.control",
                                     upright + level),
                    N_ ("{0} by {1} fields need {2} upright and {3} level"),
                    { grid.n_columns, "" }, { grid.n_rows, "" },
                    { upright, "m" }, { level, "m" });
}
