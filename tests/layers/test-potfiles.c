/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every file with words for the user is in po/POTFILES, and every file named
 * there has some: what is not listed is never translated.
 */
#include <gio/gio.h>
#include <string.h>

typedef struct
{
  GRegex *words;
  GPtrArray *found;           /* paths from the root of the tree */
} Search;

static void
search_file (Search *search, const char *path)
{
  g_autofree char *text = NULL;
  g_autofree char *file
      = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), path, NULL);
  g_assert_true (g_file_get_contents (file, &text, NULL, NULL));
  if (g_regex_match (search->words, text, 0, NULL))
    g_ptr_array_add (search->found, g_strdup (path));
}

static gboolean
may_have_words (const char *name)
{
  return g_str_has_suffix (name, ".c") || g_str_has_suffix (name, ".h")
         || g_str_has_suffix (name, ".ui");
}

static void
search_folder (Search *search, const char *path)
{
  g_autofree char *folder
      = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), path, NULL);
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  g_assert_nonnull (dir);
  const char *name;
  while ((name = g_dir_read_name (dir)))
    {
      g_autofree char *child = g_build_filename (path, name, NULL);
      g_autofree char *file = g_build_filename (folder, name, NULL);
      if (g_file_test (file, G_FILE_TEST_IS_DIR))
        search_folder (search, child);
      else if (may_have_words (name))
        search_file (search, child);
    }
}

static GRegex *
words_of_the_user (void)
{
  return g_regex_new ("\\b(_|N_|C_|NC_)\\s?\\(\\s*\"|ngettext\\s?\\([^)]*\""
                      "|translatable=\"yes\"",
                      0, 0, NULL);
}

static GPtrArray *
files_with_words (void)
{
  g_autoptr (GRegex) words = words_of_the_user ();
  Search search = { words, g_ptr_array_new_with_free_func (g_free) };
  search_folder (&search, "src");
  search_folder (&search, "ui");
  return search.found;
}

static char **
listed_files (void)
{
  g_autofree char *text = NULL;
  g_autofree char *file = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "po",
                                            "POTFILES", NULL);
  g_assert_true (g_file_get_contents (file, &text, NULL, NULL));
  return g_strsplit (text, "\n", -1);
}

static void
test_every_file_is_listed (void)
{
  g_autoptr (GPtrArray) found = files_with_words ();
  g_auto (GStrv) listed = listed_files ();
  g_assert_cmpuint (found->len, >, 50);
  for (guint i = 0; i < found->len; i++)
    if (!g_strv_contains ((const char *const *) listed, found->pdata[i]))
      {
        g_test_message ("%s is not in po/POTFILES",
                        (char *) found->pdata[i]);
        g_test_fail ();
      }
}

/* Only sources are looked into: data's own files have words of their own. */
static void
test_every_listed_file_has_words (void)
{
  g_autoptr (GPtrArray) found = files_with_words ();
  g_auto (GStrv) listed = listed_files ();
  for (char **name = listed; *name; name++)
    if (may_have_words (*name)
        && !g_ptr_array_find_with_equal_func (found, *name, g_str_equal, NULL))
      {
        g_test_message ("%s of po/POTFILES has no words, or is not there",
                        *name);
        g_test_fail ();
      }
}

static void
test_what_counts_as_words (void)
{
  g_autoptr (GRegex) words = words_of_the_user ();
  const char *const yes[]
      = { "_ (\"Wall\")", "N_(\"Wall\")", "C_ (\"verb\", \"Open\")",
          "g_dngettext (GETTEXT_PACKAGE, \"a\"", "<p translatable=\"yes\">" };
  const char *const no[]
      = { "N_()", "g_dngettext (GETTEXT_PACKAGE, …)", "cw_ (\"x\")", "/* _() */", "translatable=\"no\"" };
  for (gsize i = 0; i < G_N_ELEMENTS (yes); i++)
    g_assert_true (g_regex_match (words, yes[i], 0, NULL));
  for (gsize i = 0; i < G_N_ELEMENTS (no); i++)
    g_assert_false (g_regex_match (words, no[i], 0, NULL));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/potfiles/what-counts-as-words",
                   test_what_counts_as_words);
  g_test_add_func ("/potfiles/every-file-is-listed",
                   test_every_file_is_listed);
  g_test_add_func ("/potfiles/every-listed-file-has-words",
                   test_every_listed_file_has_words);
  return g_test_run ();
}
