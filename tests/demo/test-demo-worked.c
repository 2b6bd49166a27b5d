/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every figure of the demo's takeoff against the sheet worked by hand, and
 * its setting out against panels laid by hand.
 */
#include <math.h>

#include "cw-case-table.h"
#include "cw-project-file.h"
#include "panel-plan-checker.h"
#include "worked-sheet.h"

#define RELATIVE 1e-9

static const char *const wall_ids[]
    = { "south", "east", "north", "west", NULL };

static CwTakeoff *
demo_takeoff (void)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *path
      = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "data", "demo",
                          "fennel-house.cladwright", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (CwProject) project = cw_project_load (file, NULL, &error);

  g_assert_no_error (error);
  return settled_takeoff (project, NULL);
}

static const GPtrArray *
lines_of (const CwTakeoff *takeoff, const char *where)
{
  const CwWallTakeoff *wall;

  if (g_str_equal (where, "project"))
    return takeoff->quantities;
  wall = cw_takeoff_wall (takeoff, where);
  g_assert_nonnull (wall);
  return wall->quantities;
}

/* (transfer full): "key" or "key/variant". */
static char *
name_of_line (const CwQuantity *line)
{
  return line->variant
             ? g_strconcat (line->type->key, "/", line->variant, NULL)
             : g_strdup (line->type->key);
}

static const CwQuantity *
line_of_name (const GPtrArray *lines, const char *name)
{
  for (guint i = 0; i < lines->len; i++)
    {
      g_autofree char *known = name_of_line (lines->pdata[i]);

      if (g_str_equal (known, name))
        return lines->pdata[i];
    }
  return NULL;
}

/* NAN when there is no such line. */
static double
amount_of_name (const GPtrArray *lines, const char *name)
{
  g_auto (GStrv) parts = g_strsplit (name, ":", 3);
  const CwQuantity *line = line_of_name (lines, parts[0]);

  if (line == NULL)
    return NAN;
  if (g_strv_length (parts) == 2)
    {
      g_assert_cmpstr (parts[1], ==, "order");
      return line->order_amount;
    }
  if (g_strv_length (parts) < 3)
    return line->amount;
  const guint step = (guint) g_ascii_strtoull (parts[1], NULL, 10);
  const guint place = (guint) g_ascii_strtoull (parts[2], NULL, 10);
  g_assert_cmpuint (step, <, line->steps->len);
  return g_array_index (line->steps, CwStepWords, step).places[place].value;
}

/* A line that a wall has nothing of may be left out of its takeoff. */
static void
check_figure (const CwTakeoff *takeoff, const WorkedFigure *figure)
{
  const double amount
      = amount_of_name (lines_of (takeoff, figure->where), figure->quantity);
  const double expected = figure->amount;

  if (isnan (amount) && fabs (expected) < RELATIVE)
    return;
  if (!(fabs (amount - expected)
        <= RELATIVE * MAX (1e-3, fabs (expected))))
    g_error ("worked.tsv:%u: %s of %s is %.12g, by hand %.12g", figure->line,
             figure->quantity, figure->where, amount, expected);
}

static void
test_sheet_equals_takeoff (void)
{
  g_autoptr (CwTakeoff) takeoff = demo_takeoff ();
  g_autoptr (WorkedSheet) sheet
      = worked_sheet_load ("demo/worked.tsv", wall_ids);
  const GPtrArray *figures = worked_sheet_figures (sheet);
  guint n = 0;

  for (guint i = 0; i < figures->len; i++)
    {
      const WorkedFigure *figure = figures->pdata[i];

      if (figure->is_aside)
        continue;
      check_figure (takeoff, figure);
      n++;
    }
  g_test_message ("%u figures", n);
}

/* A line and what is ordered of it have their rows. */
static void
check_covered (const WorkedSheet *sheet, const char *where,
               const CwQuantity *line)
{
  g_autofree char *name = name_of_line (line);
  g_autofree char *ordered = g_strconcat (name, ":order", NULL);
  const WorkedFigure *figure = worked_sheet_figure (sheet, where, name);

  if (figure == NULL || figure->is_aside)
    g_error ("%s of %s is not worked by hand", name, where);
  if (!isnan (line->order_amount)
      && fabs (line->order_amount - line->amount) > RELATIVE
      && !worked_sheet_figure (sheet, where, ordered))
    g_error ("what is ordered of %s is not worked by hand", name);
}

static void
test_every_line_is_worked (void)
{
  g_autoptr (CwTakeoff) takeoff = demo_takeoff ();
  g_autoptr (WorkedSheet) sheet
      = worked_sheet_load ("demo/worked.tsv", wall_ids);

  for (guint i = 0; i <= g_strv_length ((char **) wall_ids); i++)
    {
      const char *where = wall_ids[i] ? wall_ids[i] : "project";
      const GPtrArray *lines = lines_of (takeoff, where);

      g_assert_cmpuint (lines->len, >, 50);
      for (guint k = 0; k < lines->len; k++)
        check_covered (sheet, where, lines->pdata[k]);
    }
}

/* The whole of the layers: no key of the table is missing on the demo but
 * those of things that it does not have. */
static void
test_every_key_is_on_the_demo (void)
{
  static const char *const absent[] = { "cost.alternate" };
  g_autoptr (CwTakeoff) takeoff = demo_takeoff ();

  for (guint i = 0; i < cw_n_quantity_types; i++)
    {
      const char *key = cw_quantity_types[i].key;
      gboolean is_absent = FALSE;

      for (guint k = 0; k < G_N_ELEMENTS (absent); k++)
        is_absent = is_absent || g_str_equal (key, absent[k]);
      if (!is_absent && !cw_takeoff_quantity (takeoff, NULL, key))
        g_error ("the demo has no %s", key);
    }
}

/* What the sheet takes as counted: the panels that the plans use, by a
 * checker of its own. */
static void
test_counted_panels (void)
{
  g_autoptr (CwTakeoff) takeoff = demo_takeoff ();

  check_panel_plans (takeoff);
}

static double
mm_of (const char *text)
{
  return g_ascii_strtod (text, NULL);
}

/* "2403-4394.2" against the next piece of the course. */
static void
check_piece (const CwCase *row, const CwPiece *piece, const char *text)
{
  g_auto (GStrv) ends = g_strsplit (text, "-", 2);

  if (fabs (mm_of (ends[0]) - (double) piece->box.left / CW_NM_PER_MM) > 0.005
      || fabs (mm_of (ends[1]) - (double) piece->box.right / CW_NM_PER_MM)
             > 0.005)
    g_error ("setting-out.tsv:%u: piece %u is from %.2f to %.2f, by hand %s",
             row->line, piece->number,
             (double) piece->box.left / CW_NM_PER_MM,
             (double) piece->box.right / CW_NM_PER_MM, text);
}

/* Returns how many pieces the course has. */
static guint
check_course (const CwTakeoff *takeoff, const CwCase *row)
{
  const CwWallTakeoff *wall = cw_takeoff_wall (takeoff, row->columns[0]);
  const guint index = (guint) g_ascii_strtoull (row->columns[1], NULL, 10);
  g_auto (GStrv) pieces = g_strsplit (row->columns[3], " ", -1);
  const CwCourse *course;

  g_assert_nonnull (wall);
  g_assert_cmpuint (index, <=, wall->layout->courses->len);
  course = &g_array_index (wall->layout->courses, CwCourse, index - 1);
  g_assert_cmpfloat_with_epsilon (
      (double) course->low / CW_NM_PER_MM, mm_of (row->columns[2]), 1e-6);
  if (course->n_pieces != g_strv_length (pieces))
    g_error ("setting-out.tsv:%u: there are %u pieces", row->line,
             course->n_pieces);
  for (guint i = 0; pieces[i]; i++)
    check_piece (row,
                 &g_array_index (wall->layout->pieces, CwPiece,
                                 course->first_piece + i),
                 pieces[i]);
  return course->n_pieces;
}

static void
test_setting_out (void)
{
  g_autoptr (CwTakeoff) takeoff = demo_takeoff ();
  g_autoptr (GPtrArray) rows
      = cw_case_table_load ("demo/setting-out.tsv", 4);
  guint n = 0, n_pieces = 0;

  for (guint i = 0; i < rows->len; i++)
    n += check_course (takeoff, rows->pdata[i]);
  for (guint i = 0; i < takeoff->walls->len; i++)
    n_pieces
        += ((CwWallTakeoff *) takeoff->walls->pdata[i])->layout->pieces->len;
  g_assert_cmpuint (n, ==, n_pieces);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/demo/worked/equals-takeoff", test_sheet_equals_takeoff);
  g_test_add_func ("/demo/worked/every-line", test_every_line_is_worked);
  g_test_add_func ("/demo/worked/every-key", test_every_key_is_on_the_demo);
  g_test_add_func ("/demo/worked/counted-panels", test_counted_panels);
  g_test_add_func ("/demo/worked/setting-out", test_setting_out);
  return g_test_run ();
}
