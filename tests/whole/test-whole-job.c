/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The main job through the real window, with a pointer and a keyboard, from
 * an empty project: the demo's sheet is added and scaled, two walls are traced
 * with their openings, the project is saved and its takeoff written. Then the
 * saved project's table, by the program for the command line, must have the
 * figures worked by hand from the sheet's printed dimensions.
 */
#include <gio/gio.h>
#include <math.h>

#include "cw-case-table.h"
#include "cw-csv-rows.h"
#include "cw-desk-sheet.h"

/* ANSI B, as the demo's sheet is drawn. */
#define PAGE_WIDTH 1224.0
#define PAGE_HEIGHT 792.0
#define POINTS_PER_FOOT 18.0

typedef struct
{
  CwDesk *desk;
  CwSheetPlace sheet;
  double x, y;          /* of the wall at hand: its lower left on the page */
  char *project, *pdf, *csv;
} Job;

static char *
built (const char *name)
{
  return g_build_filename (g_getenv ("CW_BUILD_ROOT"), "src", name, NULL);
}

/* Places on a wall are in feet from its lower left corner, as on the sheet. */
static double
page_x (const Job *job, double feet)
{
  return job->x + feet * POINTS_PER_FOOT;
}

static double
page_y (const Job *job, double feet)
{
  return job->y - feet * POINTS_PER_FOOT;
}

static void
click_on_wall (Job *job, double x, double y)
{
  cw_desk_click_on_sheet (job->desk, &job->sheet, page_x (job, x),
                          page_y (job, y));
}

static void
point_on_wall (Job *job, double x, double y)
{
  cw_desk_point_on_sheet (job->desk, &job->sheet, page_x (job, x),
                          page_y (job, y));
}

static void
enter (Job *job, const char *text)
{
  cw_desk_type (job->desk, text);
  cw_desk_key (job->desk, "Return");
}

static void
see_sheet (Job *job)
{
  job->sheet = cw_desk_find_sheet (job->desk, PAGE_WIDTH, PAGE_HEIGHT);
}

static void
start (Job *job)
{
  g_autofree char *program = built ("app/cladwright");
  const char *const argv[] = { program, NULL };
  const char *folder = cw_desk_folder (job->desk);
  job->project = g_build_filename (folder, "traced.cladwright", NULL);
  job->pdf = g_build_filename (folder, "traced.pdf", NULL);
  job->csv = g_build_filename (folder, "traced.csv", NULL);
  cw_desk_start (job->desk, argv, "Cladwright");
  cw_desk_keep_picture (job->desk, "1-started");
}

/* A slash opens the file chooser's place for a typed path. */
static void
add_sheet (Job *job)
{
  g_autofree char *path
      = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "data", "demo",
                          "sheets", "fennel-house.pdf", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autofree char *absolute = g_file_get_path (file);
  cw_desk_key (job->desk, "ctrl+shift+p");
  cw_desk_await_window (job->desk, "plan sheet");
  cw_desk_key (job->desk, "slash");
  enter (job, absolute + 1);
  cw_desk_await_window (job->desk, "Add a plan sheet");
  cairo_surface_destroy (cw_desk_look (job->desk));
  cw_desk_keep_picture (job->desk, "2-sheet");
  cw_desk_key (job->desk, "Return");
  cw_desk_await_no_window (job->desk, "Add a plan sheet");
}

/* By the south wall's base, 32 feet. */
static void
set_scale (Job *job)
{
  cw_desk_await_window (job->desk, "Cladwright");
  see_sheet (job);
  job->x = 90;
  job->y = 690;
  click_on_wall (job, 0, 0);
  click_on_wall (job, 32, 0);
  cw_desk_await_window (job->desk, "Scale of the sheet");
  cw_desk_keep_picture (job->desk, "3-scale");
  enter (job, "32'");
  cw_desk_await_no_window (job->desk, "Scale of the sheet");
  cw_desk_await_window (job->desk, "Cladwright");
}

static void
place_rectangle (Job *job, const char *tool, double x, double y,
                 const char *size)
{
  cw_desk_key (job->desk, tool);
  click_on_wall (job, x, y);
  point_on_wall (job, x + 1, y + 1);
  enter (job, size);
}

static void
trace_south (Job *job)
{
  see_sheet (job);
  cw_desk_key (job->desk, "w");
  click_on_wall (job, 0, 0);
  point_on_wall (job, 20, 0);
  enter (job, "32'");
  point_on_wall (job, 32, 7);
  enter (job, "9'");
  point_on_wall (job, 12, 9);
  enter (job, "32'");
  cw_desk_key (job->desk, "Return");
  cw_desk_keep_picture (job->desk, "4-south");
  see_sheet (job);
  place_rectangle (job, "i", 3, 2 + 4.0 / 12, "4' x 4' 6\"");
  place_rectangle (job, "i", 25, 2 + 4.0 / 12, "4' x 4' 6\"");
  place_rectangle (job, "i", 20, 3 + 10.0 / 12, "2' 4\" x 3'");
  place_rectangle (job, "d", 14 + 5.0 / 12, 0, "3' 2\" x 6' 10\"");
  cw_desk_keep_picture (job->desk, "5-openings");
}

static void
trace_east (Job *job)
{
  job->x = 738;
  job->y = 690;
  cw_desk_key (job->desk, "ctrl+shift+w");
  see_sheet (job);
  click_on_wall (job, 0, 0);
  click_on_wall (job, 24, 0);
  click_on_wall (job, 24, 9);
  click_on_wall (job, 12, 15);
  click_on_wall (job, 0, 9);
  cw_desk_key (job->desk, "Return");
  see_sheet (job);
  place_rectangle (job, "a", 9.5, 2.5, "5' x 5' x 1'");
  cw_desk_keep_picture (job->desk, "6-east");
}

static void
write_to (Job *job, const char *chord, const char *title, const char *path)
{
  cw_desk_key (job->desk, chord);
  cw_desk_await_window (job->desk, title);
  cw_desk_key (job->desk, "ctrl+a");
  enter (job, path);
  cw_desk_await_file (job->desk, path);
  cw_desk_await_no_window (job->desk, title);
  cw_desk_await_window (job->desk, "Cladwright");
}

static void
run_takeoff (Job *job)
{
  g_autofree char *program = built ("batch/cladwright-takeoff");
  g_autoptr (GError) error = NULL;
  g_autoptr (GSubprocess) takeoff
      = g_subprocess_new (G_SUBPROCESS_FLAGS_NONE, &error, program, "--csv",
                          job->csv, job->project, NULL);
  g_assert_no_error (error);
  g_subprocess_wait_check (takeoff, NULL, &error);
  g_assert_no_error (error);
}

static void
check_figures (Job *job)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GPtrArray) cases = cw_case_table_load ("whole/job.tsv", 5);
  g_autofree char *csv = NULL;
  g_file_get_contents (job->csv, &csv, NULL, &error);
  g_assert_no_error (error);
  g_autoptr (GPtrArray) rows = cw_csv_rows (csv);
  for (guint i = 0; i < cases->len; i++)
    {
      const CwCase *c = cases->pdata[i];
      GPtrArray *row = cw_csv_find (rows, c->columns[1], c->columns[0]);
      const double expected = g_ascii_strtod (c->columns[2], NULL);
      const double most = g_ascii_strtod (c->columns[3], NULL) * expected;
      const double amount = row ? g_ascii_strtod (row->pdata[2], NULL) : 0;
      if (!(fabs (amount - expected) <= most))
        g_error ("job.tsv:%u: %s %s is %.9g, by hand %.9g (%s)", c->line,
                 c->columns[0], c->columns[1], amount, expected,
                 c->columns[4]);
    }
}

static void
check_pdf (Job *job)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *pdf = NULL;
  gsize size = 0;
  g_file_get_contents (job->pdf, &pdf, &size, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (size, >, 1000);
  g_assert_true (g_str_has_prefix (pdf, "%PDF-"));
}

static void
job_clear (Job *job)
{
  g_free (job->project);
  g_free (job->pdf);
  g_free (job->csv);
}

static void
test_whole_job (void)
{
  g_autoptr (CwDesk) desk = cw_desk_new (1600, 1000);
  if (desk == NULL)
    return;
  Job job = { .desk = desk };
  start (&job);
  add_sheet (&job);
  set_scale (&job);
  trace_south (&job);
  trace_east (&job);
  write_to (&job, "ctrl+s", "Save the project", job.project);
  write_to (&job, "ctrl+e", "Write the takeoff", job.pdf);
  g_assert_true (cw_desk_program_runs (desk));
  run_takeoff (&job);
  check_figures (&job);
  check_pdf (&job);
  job_clear (&job);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/whole/job", test_whole_job);
  return g_test_run ();
}
