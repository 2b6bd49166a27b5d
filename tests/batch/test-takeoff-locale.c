/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Files never depend on the user's language: the table is the same, byte for
 * byte, where numbers are written with a comma.
 */
#include "takeoff-run.h"

/* Compiles @language into @folder; FALSE where the sources are not there. */
static gboolean
make_locale (const char *folder, const char *language)
{
  g_autofree char *name = g_strconcat (language, ".UTF-8", NULL);
  g_autofree char *path = g_build_filename (folder, name, NULL);
  const char *const arguments[] = { "localedef", "--no-archive", "-i", language,
                                    "-f", "UTF-8", path, NULL };
  g_autoptr (GSubprocess) process = g_subprocess_newv (
      arguments,
      G_SUBPROCESS_FLAGS_STDOUT_SILENCE | G_SUBPROCESS_FLAGS_STDERR_SILENCE,
      NULL);
  if (process)
    g_subprocess_wait (process, NULL, NULL);
  return g_file_test (path, G_FILE_TEST_IS_DIR);
}

/* What printf makes of a number under @environment. (transfer full) */
static char *
printed_number (const char *const *environment)
{
  g_autoptr (GSubprocessLauncher) launcher
      = g_subprocess_launcher_new (G_SUBPROCESS_FLAGS_STDOUT_PIPE);
  for (; *environment; environment++)
    {
      g_auto (GStrv) parts = g_strsplit (*environment, "=", 2);
      g_subprocess_launcher_setenv (launcher, parts[0], parts[1], TRUE);
    }
  g_autoptr (GError) error = NULL;
  g_autoptr (GSubprocess) process = g_subprocess_launcher_spawn (
      launcher, &error, "/usr/bin/printf", "%.1f", "1", NULL);
  g_assert_no_error (error);
  char *text = NULL;
  g_subprocess_communicate_utf8 (process, NULL, NULL, &text, NULL, &error);
  g_assert_no_error (error);
  return text;
}

static char *
table_under (const char *const *environment)
{
  g_autofree char *project = takeoff_data ("files/good/example.cladwright");
  g_autoptr (TakeoffRun) run
      = takeoff_run (".", environment, (const char *const[]){ project, NULL });
  g_assert_cmpint (run->status, ==, 0);
  return g_steal_pointer (&run->out);
}

static void
test_comma (gconstpointer language)
{
  char *folder = takeoff_folder_new ();
  if (!make_locale (folder, language))
    {
      takeoff_folder_free (folder);
      g_test_skip ("There is no localedef here with this language");
      return;
    }
  g_autofree char *path = g_strconcat ("LOCPATH=", folder, NULL);
  g_autofree char *all = g_strdup_printf ("LC_ALL=%s.UTF-8",
                                          (const char *)language);
  const char *const environment[] = { path, all, NULL };
  g_autofree char *number = printed_number (environment);
  g_autofree char *table = table_under (environment);
  g_autofree char *plain = table_under (NULL);
  takeoff_folder_free (folder);
  g_assert_cmpstr (number, ==, "1,0");
  g_assert_cmpstr (table, ==, plain);
}

/* The units in the table are UTF-8 wherever it is written. */
static void
test_ascii (void)
{
  g_autofree char *table
      = table_under ((const char *const[]){ "LC_ALL=C", NULL });
  g_autofree char *plain = table_under (NULL);
  g_assert_cmpstr (table, ==, plain);
  g_assert_true (g_utf8_validate (table, -1, NULL));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_data_func ("/takeoff-locale/german", "de_DE", test_comma);
  g_test_add_data_func ("/takeoff-locale/turkish", "tr_TR", test_comma);
  g_test_add_func ("/takeoff-locale/ascii", test_ascii);
  return g_test_run ();
}
