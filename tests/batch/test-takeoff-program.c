/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>
#include <unistd.h>

#include "cw-csv-rows.h"
#include "cw-project-file.h"
#include "cw-table-csv.h"
#include "takeoff-run.h"

#define GOOD "files/good/small.cladwright"
#define BAD "files/broken/width-zero.cladwright"
#define OF_BAD                                                                \
  ":22: <door id=\"o2\"> has width=\"0\": a number from 0.000001 to "         \
  "10000000 is expected\n"

typedef struct
{
  char *folder;
} Fixture;

static void
set_up (Fixture *fixture, gconstpointer data)
{
  fixture->folder = takeoff_folder_new ();
}

static void
tear_down (Fixture *fixture, gconstpointer data)
{
  takeoff_folder_free (fixture->folder);
}

static char *
content_of (const Fixture *fixture, const char *name)
{
  g_autofree char *path = g_build_filename (fixture->folder, name, NULL);
  char *content = NULL;
  g_autoptr (GError) error = NULL;
  g_file_get_contents (path, &content, NULL, &error);
  g_assert_no_error (error);
  return content;
}

static void
assert_absent (const Fixture *fixture, const char *name)
{
  g_autofree char *path = g_build_filename (fixture->folder, name, NULL);
  g_assert_false (g_file_test (path, G_FILE_TEST_EXISTS));
}

#define HEAVY                                                                 \
  "warning: Panel heavy to lift by hand: Panel 50 × 600 × 2400 has "
#define PLAN_LIFTING                                                          \
  "Plan a hoist, a lifter or more hands, and have a competent person judge "  \
  "the work."
#define IS_ONE_FIELD " is one field, over the limits set. "
#define PLAN_JOINTS                                                           \
  "Plan control joints with the designer, and draw walls that end at them "   \
  "with edges of that kind."

/* What the program says of a project, each line after the file's name. */
static const char *const of_small[] = {
  ":8: " HEAVY "43.0 kg; the recommended limit for one person is 8.3 kg. "
  PLAN_LIFTING,
  ":14: warning: <elevation id=\"e1\">: Control joints wanted: 9000 mm × "
  "2700 mm" IS_ONE_FIELD PLAN_JOINTS,
  NULL
};

static const char *const of_example[] = {
  ":8: " HEAVY "94.8 lb; the recommended limit for one person is 18.9 lb. "
  PLAN_LIFTING,
  ":35: warning: <elevation id=\"e1\">: Stub-out off the cladding: Stub-out "
  "p1 does not come through the cladding. Move it onto the cladding, or take "
  "it away.",
  ":24: warning: <elevation id=\"e1\"> in 4 places: Control joints wanted: "
  "29′ 6 21/64″ × 14′ 9 11/64″" IS_ONE_FIELD PLAN_JOINTS,
  NULL
};

static const char *const of_troubled[] = {
  ":18: error: <elevation id=\"e2\">: No outline: It has no outline, so "
  "nothing of it is counted. Draw the wall's outline.",
  ":5: " HEAVY "43.0 kg; the recommended limit for one person is 8.3 kg. "
  PLAN_LIFTING,
  ":10: warning: <elevation id=\"e1\"> in 2 places: Pieces under the least: "
  "2 pieces are under 400 mm: the narrowest has 300 mm. Move the offset or "
  "the base, or choose another bond.",
  ":10: warning: <elevation id=\"e1\">: Control joints wanted: 300 mm × "
  "1200 mm" IS_ONE_FIELD PLAN_JOINTS,
  NULL
};

static char *
told (const char *name, const char *const *lines)
{
  GString *text = g_string_new (NULL);
  for (guint i = 0; lines[i]; i++)
    g_string_append_printf (text, "%s%s\n", name, lines[i]);
  return g_string_free (text, FALSE);
}

/* After @told there is one line more, which begins with @start. */
static void
assert_told_then (const char *err, const char *told, const char *start)
{
  g_assert_true (g_str_has_prefix (err, told));
  const char *last = err + strlen (told);
  g_assert_true (g_str_has_prefix (last, start));
  g_assert_cmpstr (strchr (last, '\n'), ==, "\n");
}

static void
assert_ran (const TakeoffRun *run, int status, const char *out,
            const char *err)
{
  g_assert_cmpstr (run->err, ==, err);
  g_assert_cmpstr (run->out, ==, out);
  g_assert_cmpint (run->status, ==, status);
}

/* The table as the library makes it in this process. */
static char *
expected_table (const char *path)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);
  g_autoptr (GError) error = NULL;
  g_autoptr (CwProject) project = cw_project_load (file, NULL, &error);
  g_assert_no_error (error);
  g_autoptr (CwTakeoff) quick = cw_takeoff_new (project, NULL, NULL);
  /* What is exported is looked for that long. */
  g_autoptr (CwTakeoff) takeoff
      = cw_takeoff_improve (quick, CW_CUT_EFFORT_LONG, NULL);
  return cw_takeoff_to_csv (takeoff);
}

static void
test_csv (Fixture *fixture, gconstpointer data)
{
  g_autofree char *project = takeoff_copy (fixture->folder, GOOD, "a.cladwright");
  g_autoptr (TakeoffRun) run
      = TAKEOFF_RUN (fixture->folder, "--csv", "a.csv", "a.cladwright");
  g_autofree char *warnings = told ("a.cladwright", of_small);
  assert_ran (run, 0, "", warnings);
  g_autofree char *table = content_of (fixture, "a.csv");
  g_autofree char *expected = expected_table (project);
  g_assert_cmpstr (table, ==, expected);

  /* 9 × 2.7 m by hand. */
  g_autoptr (GPtrArray) rows = cw_csv_rows (table);
  GPtrArray *gross = cw_csv_find (rows, "wall.gross", "e1");
  g_assert_nonnull (gross);
  g_assert_cmpstr (gross->pdata[2], ==, "24.3");
}

/* Without a wish, and with "-", the same table on standard output. */
static void
test_standard_output (Fixture *fixture, gconstpointer data)
{
  g_autofree char *project = takeoff_copy (fixture->folder, GOOD, "a.cladwright");
  g_autofree char *expected = expected_table (project);
  g_autofree char *warnings = told (project, of_small);
  g_autoptr (TakeoffRun) plain = TAKEOFF_RUN (fixture->folder, project);
  assert_ran (plain, 0, expected, warnings);
  g_autoptr (TakeoffRun) dash
      = TAKEOFF_RUN (fixture->folder, "--csv", "-", project);
  assert_ran (dash, 0, expected, warnings);
}

/* A pipe is written into, and stays a pipe. */
static void
test_device (Fixture *fixture, gconstpointer data)
{
  g_autofree char *project = takeoff_copy (fixture->folder, GOOD, "a.cladwright");
  g_autofree char *expected = expected_table (project);
  g_autofree char *link = g_build_filename (fixture->folder, "out", NULL);
  g_assert_cmpint (symlink ("/proc/self/fd/1", link), ==, 0);
  g_autoptr (TakeoffRun) run
      = TAKEOFF_RUN (fixture->folder, "--csv", "out", project);
  g_autofree char *warnings = told (project, of_small);
  assert_ran (run, 0, expected, warnings);
  g_assert_true (g_file_test (link, G_FILE_TEST_IS_SYMLINK));
}

/* What the link means is written; the link stays. */
static void
test_link (Fixture *fixture, gconstpointer data)
{
  g_autofree char *project = takeoff_copy (fixture->folder, GOOD, "a.cladwright");
  g_autofree char *expected = expected_table (project);
  g_autofree char *real = g_build_filename (fixture->folder, "real.csv", NULL);
  g_autofree char *link = g_build_filename (fixture->folder, "out.csv", NULL);
  g_assert_true (g_file_set_contents (real, "old", -1, NULL));
  g_assert_cmpint (symlink ("real.csv", link), ==, 0);
  g_autoptr (TakeoffRun) run
      = TAKEOFF_RUN (fixture->folder, "--csv", "out.csv", project);
  g_autofree char *warnings = told (project, of_small);
  assert_ran (run, 0, "", warnings);
  g_autofree char *table = content_of (fixture, "real.csv");
  g_assert_cmpstr (table, ==, expected);
  g_assert_true (g_file_test (link, G_FILE_TEST_IS_SYMLINK));
}

static void
test_into_folder (Fixture *fixture, gconstpointer data)
{
  g_free (takeoff_copy (fixture->folder, GOOD, "house 1.cladwright"));
  g_autoptr (TakeoffRun) run
      = TAKEOFF_RUN (fixture->folder, "--csv=.", "house 1.cladwright");
  g_autofree char *warnings = told ("house 1.cladwright", of_small);
  assert_ran (run, 0, "", warnings);
  g_autofree char *table = content_of (fixture, "house 1.csv");
  g_assert_true (g_str_has_prefix (table, "key,scope,"));
}

/* Whole, and named for the project in its footer. */
static void
test_pdf (Fixture *fixture, gconstpointer data)
{
  g_free (takeoff_copy (fixture->folder, "files/good/example.cladwright",
                        "a.cladwright"));
  g_autoptr (TakeoffRun) run = TAKEOFF_RUN (fixture->folder, "--pdf", "a.pdf",
                                            "--csv", "a.csv", "a.cladwright");
  g_autofree char *warnings = told ("a.cladwright", of_example);
  assert_ran (run, 0, "", warnings);
  g_autofree char *table = content_of (fixture, "a.csv");
  g_assert_true (g_str_has_prefix (table, "key,scope,"));

  const char *const arguments[]
      = { "pdftotext", "-layout", "a.pdf", "-", NULL };
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;
  int status;
  g_spawn_sync (fixture->folder, (char **) arguments, NULL,
                G_SPAWN_SEARCH_PATH, NULL, NULL, &text, NULL, &status, &error);
  g_assert_no_error (error);
  g_assert_true (g_spawn_check_wait_status (status, NULL));
  g_assert_nonnull (strstr (text, "a.cladwright"));
}

/* With --pdf alone no table is printed. */
/* @text with @more before its first @mark. */
static char *
put_before (const char *text, const char *mark, const char *more)
{
  const char *at = strstr (text, mark);
  g_assert_nonnull (at);
  g_autofree char *head = g_strndup (text, (gsize) (at - text));
  return g_strconcat (head, more, at, NULL);
}

#define WAIVER                                                                \
  "  <waiver check=\"panel-mass\" item=\"b1/1\" reason=\"A hoist, "             \
  "&quot;ours&quot;\" by=\"Est.\" date=\"2026-11-25\"/>\n"

static void
assert_row (GPtrArray *rows, const char *code, const char *scope,
            const char *const *fields)
{
  for (guint i = 1; i < rows->len; i++)
    {
      if (!g_str_equal (cw_csv_field (rows, i, 0), code)
          || !g_str_equal (cw_csv_field (rows, i, 2), scope))
        continue;
      for (guint j = 0; fields[j]; j++)
        if (!g_str_equal (fields[j], "*"))
          g_assert_cmpstr (cw_csv_field (rows, i, j), ==, fields[j]);
      return;
    }
  g_error ("no %s of %s", code, scope);
}

/* With what was waived; and no table of quantities. */
static void
test_checks (Fixture *fixture, gconstpointer data)
{
  g_free (takeoff_copy (fixture->folder, GOOD, "a.cladwright"));
  g_autofree char *path
      = g_build_filename (fixture->folder, "a.cladwright", NULL);
  g_autofree char *text = content_of (fixture, "a.cladwright");
  g_autofree char *waived = put_before (text, "</project>", WAIVER);
  g_assert_true (g_file_set_contents (path, waived, -1, NULL));
  g_autoptr (TakeoffRun) run = TAKEOFF_RUN (
      fixture->folder, "--checks", "c.csv", "a.cladwright");
  g_assert_cmpint (run->status, ==, 0);
  g_assert_cmpstr (run->out, ==, "");
  g_autofree char *table = content_of (fixture, "c.csv");
  g_autoptr (GPtrArray) rows = cw_csv_rows (table);
  g_assert_true (g_str_has_prefix (table, "code,severity,scope,item,places,"));
  assert_row (rows, "panel-mass", "project",
              (const char *[]){ "panel-mass", "warning", "project", "b1/1", "",
                                "Panel 50 × 600 × 2400 has 43.0 kg; the "
                                "recommended limit for one person is 8.3 kg.",
                                "*", PLAN_LIFTING, "*", "A hoist, \"ours\"",
                                "Est.", "2026-11-25", "yes", NULL });
  assert_row (rows, "control-joints", "e1",
              (const char *[]){ "control-joints", "warning", "e1", "",
                                "4500 2100 4500 2700",
                                "9000 mm × 2700 mm is one field, over the "
                                "limits set.",
                                "*", PLAN_JOINTS, "*", "", "", "", "", NULL });
}

static void
test_checks_into_folder (Fixture *fixture, gconstpointer data)
{
  g_free (takeoff_copy (fixture->folder, GOOD, "a.cladwright"));
  g_autoptr (TakeoffRun) run
      = TAKEOFF_RUN (fixture->folder, "--checks", ".", "--csv", ".",
                     "a.cladwright");
  g_assert_cmpint (run->status, ==, 0);
  g_autofree char *checks = content_of (fixture, "a.checks.csv");
  g_autofree char *table = content_of (fixture, "a.csv");
  g_assert_true (g_str_has_prefix (checks, "code,severity,"));
  g_assert_true (g_str_has_prefix (table, "key,scope,"));
}

static void
test_pdf_into_folder (Fixture *fixture, gconstpointer data)
{
  g_free (takeoff_copy (fixture->folder, GOOD, "a.cladwright"));
  g_free (takeoff_copy (fixture->folder, BAD, "b.cladwright"));
  g_autoptr (TakeoffRun) run = TAKEOFF_RUN (fixture->folder, "--pdf", ".",
                                            "a.cladwright", "b.cladwright");
  g_assert_cmpint (run->status, ==, 1);
  g_assert_cmpstr (run->out, ==, "");
  g_autofree char *pdf = content_of (fixture, "a.pdf");
  g_assert_true (g_str_has_prefix (pdf, "%PDF-"));
  assert_absent (fixture, "b.pdf");
  assert_absent (fixture, "a.csv");
}

static void
test_unreadable (Fixture *fixture, gconstpointer data)
{
  g_autoptr (TakeoffRun) absent = TAKEOFF_RUN (fixture->folder, "no.cladwright");
  assert_ran (absent, 1, "",
              "no.cladwright: The file cannot be read: it is not there, or "
              "may not be looked at\n");
  g_autoptr (TakeoffRun) folder = TAKEOFF_RUN (fixture->folder, ".");
  assert_ran (folder, 1, "",
              ".: The file cannot be read: it is no regular file\n");
}

/* The line and the sentence, and what was there stays. */
static void
test_invalid (Fixture *fixture, gconstpointer data)
{
  g_free (takeoff_copy (fixture->folder, BAD, "bad.cladwright"));
  g_free (takeoff_copy (fixture->folder, GOOD, "old.csv"));
  g_autofree char *former = content_of (fixture, "old.csv");
  g_autoptr (TakeoffRun) run
      = TAKEOFF_RUN (fixture->folder, "--csv", "old.csv", "bad.cladwright");
  assert_ran (run, 1, "", "bad.cladwright" OF_BAD);
  g_autofree char *now = content_of (fixture, "old.csv");
  g_assert_cmpstr (now, ==, former);
}

/* Whatever is wrong with a file, the program says so once and ends with 1. */
static void
test_every_broken_file (Fixture *fixture, gconstpointer data)
{
  g_autofree char *folder = takeoff_data ("files/broken");
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  g_assert_nonnull (dir);
  guint n = 0;
  for (const char *name; (name = g_dir_read_name (dir));)
    {
      if (!g_str_has_suffix (name, ".cladwright"))
        continue;
      g_autoptr (TakeoffRun) run = TAKEOFF_RUN (folder, name);
      g_assert_cmpint (run->status, ==, 1);
      g_assert_cmpstr (run->out, ==, "");
      g_assert_true (g_str_has_prefix (run->err, name));
      g_assert_true (g_str_has_suffix (run->err, "\n"));
      n++;
    }
  g_assert_cmpuint (n, >, 50);
}

static void
test_cannot_be_measured (Fixture *fixture, gconstpointer data)
{
  g_free (takeoff_copy (fixture->folder, "batch/crossing.cladwright",
                        "c.cladwright"));
  g_autoptr (TakeoffRun) run = TAKEOFF_RUN (fixture->folder, "c.cladwright");
  assert_ran (run, 1, "",
              "c.cladwright:10: <elevation id=\"e1\"> cannot be measured: "
              "Sides 1 and 3 cross. Move one of their corners.\n"
              "c.cladwright:25: <unclad id=\"u1\"> cannot be measured: Corner "
              "2 and the next are on one spot. Remove one of them.\n");
}

static void
test_warnings (Fixture *fixture, gconstpointer data)
{
  g_autofree char *project = takeoff_copy (
      fixture->folder, "batch/troubled.cladwright", "t.cladwright");
  g_autofree char *expected = expected_table (project);
  g_autoptr (TakeoffRun) run = TAKEOFF_RUN (fixture->folder, "t.cladwright");
  g_autofree char *lines = told ("t.cladwright", of_troubled);
  assert_ran (run, 0, expected, lines);
}

/* One that fails does not keep the others from their tables. */
static void
test_several (Fixture *fixture, gconstpointer data)
{
  g_free (takeoff_copy (fixture->folder, GOOD, "a.cladwright"));
  g_free (takeoff_copy (fixture->folder, BAD, "b.cladwright"));
  g_free (takeoff_copy (fixture->folder, "files/good/example.cladwright",
                        "c.cladwright"));
  g_autoptr (TakeoffRun) run
      = TAKEOFF_RUN (fixture->folder, "--csv", ".", "a.cladwright",
                     "b.cladwright", "c.cladwright");
  g_autofree char *of_a = told ("a.cladwright", of_small);
  g_autofree char *of_c = told ("c.cladwright", of_example);
  g_autofree char *lines = g_strconcat (of_a, "b.cladwright" OF_BAD, of_c, NULL);
  assert_ran (run, 1, "", lines);
  for (const char *const *stem = (const char *const[]){ "a", "c", NULL };
       *stem; stem++)
    {
      g_autofree char *name = g_strconcat (*stem, ".csv", NULL);
      g_autofree char *project = g_strconcat (*stem, ".cladwright", NULL);
      g_autofree char *path = g_build_filename (fixture->folder, project, NULL);
      g_autofree char *table = content_of (fixture, name);
      g_autofree char *expected = expected_table (path);
      g_assert_cmpstr (table, ==, expected);
    }
  assert_absent (fixture, "b.csv");
}

static void
test_only_checked (Fixture *fixture, gconstpointer data)
{
  g_free (takeoff_copy (fixture->folder, GOOD, "a.cladwright"));
  g_free (takeoff_copy (fixture->folder, GOOD, "b.cladwright"));
  g_autoptr (TakeoffRun) run
      = TAKEOFF_RUN (fixture->folder, "a.cladwright", "b.cladwright");
  g_autofree char *of_a = told ("a.cladwright", of_small);
  g_autofree char *of_b = told ("b.cladwright", of_small);
  g_autofree char *lines = g_strconcat (of_a, of_b, NULL);
  assert_ran (run, 0, "", lines);
}

static void
assert_refused (TakeoffRun *run, const char *why)
{
  g_autofree char *expected = g_strdup_printf (
      "cladwright-takeoff: %s\n"
      "Usage: cladwright-takeoff [--pdf F] [--csv F] [--checks F] "
      "[--effort live|long] PROJECT…\n",
      why);
  assert_ran (run, 2, "", expected);
  takeoff_run_free (run);
}

static void
test_usage (Fixture *fixture, gconstpointer data)
{
  const char *folder = fixture->folder;
  g_free (takeoff_copy (folder, GOOD, "a.cladwright"));
  g_free (takeoff_copy (folder, GOOD, "b.cladwright"));
  assert_refused (TAKEOFF_RUN (folder, "--xml", "f", "a.cladwright"),
                  "Unknown option --xml");
  assert_refused (TAKEOFF_RUN (folder, "--effort", "short", "a.cladwright"),
                  "--effort is live or long");
  assert_refused (TAKEOFF_RUN (folder, "--csv", "a.csv"),
                  "No project is named");
  assert_refused (TAKEOFF_RUN (folder, "a.cladwright", "--csv"),
                  "Missing argument for --csv");
  assert_refused (
      TAKEOFF_RUN (folder, "--csv", "x.csv", "a.cladwright", "b.cladwright"),
      "With several projects --csv must name a folder that is there, and "
      "x.csv is none");
  assert_absent (fixture, "a.csv");
  assert_absent (fixture, "x.csv");
}

/* Nothing is written over a project, nor twice into one file. */
static void
test_same_file (Fixture *fixture, gconstpointer data)
{
  const char *folder = fixture->folder;
  g_free (takeoff_copy (folder, GOOD, "a.cladwright"));
  g_autofree char *before = content_of (fixture, "a.cladwright");
  assert_refused (
      TAKEOFF_RUN (folder, "--csv", "./a.cladwright", "a.cladwright"),
      "the table of a.cladwright would be written over the project "
      "a.cladwright");
  assert_refused (TAKEOFF_RUN (folder, "--csv", "x", "--pdf", "./x",
                               "a.cladwright"),
                  "the PDF of a.cladwright would be written over the table of "
                  "a.cladwright");
  assert_refused (
      TAKEOFF_RUN (folder, "--csv", ".", "a.cladwright", "./a.cladwright"),
      "the table of ./a.cladwright would be written over the table of "
      "a.cladwright");
  assert_refused (TAKEOFF_RUN (folder, "--csv", "-", "--pdf", "-",
                               "a.cladwright"),
                  "Only one of --pdf, --csv and --checks can go to standard output");
  g_autofree char *after = content_of (fixture, "a.cladwright");
  g_assert_cmpstr (after, ==, before);
}

static void
test_unwritable (Fixture *fixture, gconstpointer data)
{
  g_free (takeoff_copy (fixture->folder, GOOD, "a.cladwright"));
  g_autoptr (TakeoffRun) run = TAKEOFF_RUN (fixture->folder, "--csv",
                                            "no/a.csv", "a.cladwright");
  g_assert_cmpint (run->status, ==, 1);
  g_assert_cmpstr (run->out, ==, "");
  g_autofree char *warnings = told ("a.cladwright", of_small);
  assert_told_then (run->err, warnings, "no/a.csv: ");
  assert_absent (fixture, "no");
}

/* A full disk shows only when the last bytes are written. */
static void
test_output_full (Fixture *fixture, gconstpointer data)
{
  g_autofree char *project
      = takeoff_copy (fixture->folder, GOOD, "a.cladwright");
  g_autofree char *program
      = g_build_filename (g_getenv ("CW_BUILD_ROOT"), "src", "batch",
                          "cladwright-takeoff", NULL);
  g_autoptr (GSubprocessLauncher) launcher
      = g_subprocess_launcher_new (G_SUBPROCESS_FLAGS_STDERR_PIPE);
  g_autoptr (GError) error = NULL;
  g_autofree char *err = NULL;
  g_subprocess_launcher_set_stdout_file_path (launcher, "/dev/full");
  g_autoptr (GSubprocess) process = g_subprocess_launcher_spawn (
      launcher, &error, program, project, NULL);
  g_assert_no_error (error);
  g_subprocess_communicate_utf8 (process, NULL, NULL, NULL, &err, &error);
  g_assert_no_error (error);
  g_assert_cmpint (g_subprocess_get_exit_status (process), ==, 1);
  g_autofree char *warnings = told (project, of_small);
  assert_told_then (err, warnings, "Standard output cannot be written: ");
}

static void
test_help (Fixture *fixture, gconstpointer data)
{
  g_autoptr (TakeoffRun) help = TAKEOFF_RUN (fixture->folder, "--help");
  g_assert_cmpint (help->status, ==, 0);
  g_assert_cmpstr (help->err, ==, "");
  g_assert_nonnull (strstr (help->out, "--csv"));
  g_assert_nonnull (strstr (help->out, "--pdf"));
  g_assert_nonnull (strstr (help->out, "Local codes"));
  g_autoptr (TakeoffRun) version = TAKEOFF_RUN (fixture->folder, "--version");
  assert_ran (version, 0, "cladwright-takeoff " CW_VERSION "\n", "");
}

#define ADD(path, function)                                                   \
  g_test_add ("/takeoff-program/" path, Fixture, NULL, set_up, function,      \
              tear_down)

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  ADD ("csv", test_csv);
  ADD ("standard-output", test_standard_output);
  ADD ("device", test_device);
  ADD ("link", test_link);
  ADD ("into-folder", test_into_folder);
  ADD ("pdf", test_pdf);
  ADD ("pdf-into-folder", test_pdf_into_folder);
  ADD ("checks", test_checks);
  ADD ("checks-into-folder", test_checks_into_folder);
  ADD ("unreadable", test_unreadable);
  ADD ("invalid", test_invalid);
  ADD ("every-broken-file", test_every_broken_file);
  ADD ("cannot-be-measured", test_cannot_be_measured);
  ADD ("warnings", test_warnings);
  ADD ("several", test_several);
  ADD ("only-checked", test_only_checked);
  ADD ("usage", test_usage);
  ADD ("same-file", test_same_file);
  ADD ("unwritable", test_unwritable);
  ADD ("output-full", test_output_full);
  ADD ("help", test_help);
  return g_test_run ();
}
