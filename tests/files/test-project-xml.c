/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reading and writing projects: files of the folders good and broken, and
 * random ones.
 */
#include "cw-foreign.h"
#include "project-cases.h"

#include <string.h>

static CwProject *
read_project (GBytes *bytes, const char *name)
{
  g_autoptr (GError) error = NULL;
  CwProject *project = cw_project_from_xml (bytes, &error);
  if (project == NULL)
    g_error ("%s: %s", name, error->message);
  return project;
}

/* A good file is saved as the file NAME.saved beside it, or as it was. */
static void
check_good (const char *path)
{
  g_autofree char *other = project_case_beside (path, ".saved");
  g_autoptr (GBytes) bytes = project_case_bytes (path);
  g_autoptr (GBytes) expected = project_case_bytes (other ? other : path);
  g_autoptr (CwProject) project = read_project (bytes, path);
  g_autoptr (GBytes) saved = cw_project_to_xml (project);
  project_case_assert_same (saved, expected);
  g_autoptr (CwProject) again = read_project (saved, path);
  g_autoptr (GBytes) twice = cw_project_to_xml (again);
  project_case_assert_same (twice, saved);
  if (other == NULL)
    g_assert_true (cw_node_equal (project, again));
  g_assert_true (project_case_is_valid (path));
  if (other)
    g_assert_true (project_case_is_valid (other));
}

static void
test_good (void)
{
  g_autoptr (GPtrArray) paths = project_cases ("good");
  for (guint i = 0; i < paths->len; i++)
    check_good (paths->pdata[i]);
}

typedef struct
{
  guint line;
  char kind[16];
  char *part;
} Expected;

/* "LINE: kind: part of the message" */
static Expected
read_expected (const char *path)
{
  g_autofree char *beside = project_case_beside (path, ".error");
  g_autoptr (GBytes) bytes = project_case_bytes (beside);
  gsize size;
  const char *text = g_bytes_get_data (bytes, &size);
  g_autofree char *copy = g_strchomp (g_strndup (text, size));
  g_auto (GStrv) parts = g_strsplit (copy, ": ", 3);
  g_assert_cmpuint (g_strv_length (parts), ==, 3);
  Expected expected = { (guint)g_ascii_strtoull (parts[0], NULL, 10), "",
                        g_strdup (parts[2]) };
  g_strlcpy (expected.kind, parts[1], sizeof expected.kind);
  return expected;
}

static CwFileError
error_of_kind (const char *kind)
{
  if (g_str_equal (kind, "xml"))
    return CW_FILE_ERROR_XML;
  if (g_str_equal (kind, "newer"))
    return CW_FILE_ERROR_NEWER;
  if (g_str_equal (kind, "grammar"))
    return CW_FILE_ERROR_GRAMMAR;
  if (g_str_equal (kind, "sense"))
    return CW_FILE_ERROR_SENSE;
  g_assert_cmpstr (kind, ==, "value");
  return CW_FILE_ERROR_VALUE;
}

static void
check_broken (const char *path)
{
  Expected expected = read_expected (path);
  g_autoptr (GBytes) bytes = project_case_bytes (path);
  g_autoptr (GError) error = NULL;
  g_autoptr (CwProject) project = cw_project_from_xml (bytes, &error);
  if (project != NULL)
    g_error ("%s was not refused", path);
  g_assert_error (error, CW_FILE_ERROR, (int)error_of_kind (expected.kind));
  if (cw_file_error_line (error) != expected.line
      || strstr (error->message, expected.part) == NULL)
    g_error ("%s: expected line %u: %s\nbut got %s", path, expected.line,
             expected.part, error->message);
  g_assert_nonnull (strstr (error->message, cw_file_error_sentence (error)));
  g_free (expected.part);
}

static void
test_broken (void)
{
  g_autoptr (GPtrArray) paths = project_cases ("broken");
  for (guint i = 0; i < paths->len; i++)
    check_broken (paths->pdata[i]);
}

/* The schema refuses what the reader refuses by grammar, and lets pass what
 * only rules of sense refuse. */
static void
test_broken_by_schema (void)
{
  g_autoptr (GPtrArray) paths = project_cases ("broken");
  guint n_judged = 0;
  for (guint i = 0; i < paths->len; i++)
    {
      Expected expected = read_expected (paths->pdata[i]);
      gboolean by_sense = g_str_equal (expected.kind, "sense");
      g_free (expected.part);
      if (g_str_equal (expected.kind, "xml"))
        continue;
      if (project_case_is_valid (paths->pdata[i]) != by_sense)
        g_error ("The schema %s %s", by_sense ? "refuses" : "lets pass",
                 (char *)paths->pdata[i]);
      n_judged++;
    }
  g_assert_cmpuint (n_judged, >, 50);
}

static void
test_random (void)
{
  guint n = g_getenv ("CW_LONG") ? 5000 : 200;
  for (guint i = 0; i < n; i++)
    {
      g_autoptr (CwProject) project = project_case_random ();
      g_autoptr (GBytes) bytes = cw_project_to_xml (project);
      g_autoptr (CwProject) again
          = read_project (bytes, g_bytes_get_data (bytes, NULL));
      g_autoptr (GBytes) twice = cw_project_to_xml (again);
      project_case_assert_same (twice, bytes);
      if (!cw_node_equal (project, again))
        g_error ("The project that was read is another one:\n%.*s",
                 (int)g_bytes_get_size (bytes),
                 (const char *)g_bytes_get_data (bytes, NULL));
    }
}

static void
test_default_projects (void)
{
  for (CwUnits units = CW_UNITS_US; units <= CW_UNITS_METRIC; units++)
    {
      g_autoptr (CwProject) project = cw_project_new_default (units);
      g_autoptr (GBytes) bytes = cw_project_to_xml (project);
      g_autoptr (CwProject) again = read_project (bytes, "default");
      g_assert_true (cw_node_equal (project, again));
    }
}

/* An edit changes its own line and no other. */
static void
test_edit_changes_one_line (void)
{
  g_autofree char *path = g_test_build_filename (
      G_TEST_DIST, "data", "files", "good", "example.cladwright", NULL);
  g_autoptr (GBytes) bytes = project_case_bytes (path);
  g_autoptr (CwProject) project = read_project (bytes, path);
  g_autoptr (GBytes) before = cw_project_to_xml (project);
  const CwNode *window = cw_node_find (&project->node, "o1");
  g_autoptr (CwNode) wider = cw_node_with (
      window, (guint)cw_node_type_field (window->type, "width"), CW_MM (1300));
  g_autoptr (CwNode) edited = cw_node_replace (&project->node, window, wider);
  g_autoptr (GBytes) after = cw_project_to_xml ((CwProject *)edited);

  g_auto (GStrv) old = g_strsplit (g_bytes_get_data (before, NULL), "\n", -1);
  g_auto (GStrv) new = g_strsplit (g_bytes_get_data (after, NULL), "\n", -1);
  g_assert_cmpuint (g_strv_length (old), ==, g_strv_length (new));
  guint n_changed = 0;
  for (guint i = 0; old[i]; i++)
    n_changed += !g_str_equal (old[i], new[i]);
  g_assert_cmpuint (n_changed, ==, 1);
}

/* A character that XML cannot hold must not make a file that will not open. */
static void
test_forbidden_characters (void)
{
  g_autoptr (CwProject) project = cw_project_new_default (CW_UNITS_US);
  g_autoptr (CwNode) info
      = cw_node_with_text (project->info, 0, "a\001b\uffffc\td");
  g_autoptr (CwNode) edited
      = cw_node_replace (&project->node, project->info, info);
  g_autoptr (GBytes) bytes = cw_project_to_xml ((CwProject *)edited);
  g_autoptr (CwProject) again = read_project (bytes, "forbidden");
  g_assert_cmpstr (((CwInfo *)again->info)->name, ==, "a\ufffdb\ufffdc\td");
}

static void
test_lines_of_ids (void)
{
  g_autofree char *path = g_test_build_filename (
      G_TEST_DIST, "data", "files", "good", "small.cladwright", NULL);
  g_autoptr (GBytes) bytes = project_case_bytes (path);
  g_autoptr (GHashTable) lines = cw_project_xml_lines (bytes);
  g_assert_cmpuint (cw_project_xml_line (lines, "s1"), ==, 5);
  g_assert_cmpuint (cw_project_xml_line (lines, "o2"), ==, 22);
  g_assert_cmpuint (cw_project_xml_line (lines, "none"), ==, 0);
}

/* Lines beyond the 16 bits that the library keeps. */
static void
test_line_of_a_long_file (void)
{
  GString *xml = g_string_new (
      "<project xmlns=\"urn:cladwright:project:1\" format=\"1\">\n");
  for (guint i = 0; i < 70000; i++)
    g_string_append (xml, "<!-- -->\n");
  g_string_append (xml, "<mark id=\"w1\" width=\"wide\"/>\n</project>\n");
  g_autoptr (GBytes) bytes = g_string_free_to_bytes (xml);
  g_autoptr (GError) error = NULL;
  g_assert_null (cw_project_from_xml (bytes, &error));
  g_assert_error (error, CW_FILE_ERROR, CW_FILE_ERROR_VALUE);
  g_assert_cmpuint (cw_file_error_line (error), ==, 70002);
}

static void
test_too_large (void)
{
  gsize size = CW_PROJECT_FILE_MOST + 1;
  g_autoptr (GBytes) bytes = g_bytes_new_take (g_malloc0 (size), size);
  g_autoptr (GError) error = NULL;
  g_assert_null (cw_project_from_xml (bytes, &error));
  g_assert_error (error, CW_FILE_ERROR, CW_FILE_ERROR_TOO_LARGE);
}

/* Any file cut or with one byte changed is read or refused, never more. */
static void
test_mangled (void)
{
  g_autofree char *path = g_test_build_filename (
      G_TEST_DIST, "data", "files", "good", "small.cladwright", NULL);
  g_autoptr (GBytes) bytes = project_case_bytes (path);
  gsize size = g_bytes_get_size (bytes);
  guint n = g_getenv ("CW_LONG") ? 20000 : 500;
  for (guint i = 0; i < n; i++)
    {
      char *data = g_memdup2 (g_bytes_get_data (bytes, NULL), size);
      gsize at = (gsize)g_test_rand_int_range (0, (gint32)size);
      data[at] = (char)g_test_rand_int ();
      gsize kept = g_test_rand_bit () ? at : size;
      g_autoptr (GBytes) mangled = g_bytes_new_take (data, kept);
      g_autoptr (GError) error = NULL;
      g_autoptr (CwProject) project = cw_project_from_xml (mangled, &error);
      g_assert_true ((project == NULL) == (error != NULL));
      if (error)
        g_assert_true (error->domain == CW_FILE_ERROR);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/project-xml/good", test_good);
  g_test_add_func ("/project-xml/broken", test_broken);
  g_test_add_func ("/project-xml/broken/schema", test_broken_by_schema);
  g_test_add_func ("/project-xml/random", test_random);
  g_test_add_func ("/project-xml/default", test_default_projects);
  g_test_add_func ("/project-xml/edit", test_edit_changes_one_line);
  g_test_add_func ("/project-xml/forbidden-characters",
                   test_forbidden_characters);
  g_test_add_func ("/project-xml/lines", test_lines_of_ids);
  g_test_add_func ("/project-xml/lines/long-file", test_line_of_a_long_file);
  g_test_add_func ("/project-xml/too-large", test_too_large);
  g_test_add_func ("/project-xml/mangled", test_mangled);
  return g_test_run ();
}
