/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Include arrows run downward only: walks every source under src and judges
 * each quoted include by the folder that holds the header of that name.
 */
#include <gio/gio.h>
#include <string.h>

/* Height of each layer. Layers of equal height do not include each other;
 * the two programs stand side by side on top. */
static const struct
{
  const char *name;
  int height;
} layers[] = {
  { "base", 0 },   { "geometry", 1 }, { "model", 2 }, { "layout", 3 },
  { "estimate", 4 }, { "draw", 5 },   { "files", 6 }, { "report", 6 },
  { "board", 7 },  { "batch", 8 },    { "app", 8 },
};

static int
layer_height (const char *name)
{
  for (gsize i = 0; i < G_N_ELEMENTS (layers); i++)
    if (g_str_equal (layers[i].name, name))
      return layers[i].height;
  return -1;
}

typedef void (*SourceFunc) (const char *layer, const char *file,
                            gpointer data);

static void
each_source (SourceFunc visit, gpointer data)
{
  g_autofree char *root
      = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "src", NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (layers); i++)
    {
      g_autofree char *folder = g_build_filename (root, layers[i].name, NULL);
      g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
      g_assert_nonnull (dir);
      const char *name;
      while ((name = g_dir_read_name (dir)))
        if (g_str_has_suffix (name, ".c") || g_str_has_suffix (name, ".h"))
          {
            g_autofree char *file = g_build_filename (folder, name, NULL);
            visit (layers[i].name, file, data);
          }
    }
}

static void
note_header (const char *layer, const char *file, gpointer homes)
{
  if (g_str_has_suffix (file, ".h"))
    {
      char *name = g_path_get_basename (file);
      /* Two headers of one name would make the include path matter. */
      g_assert_true (g_hash_table_insert (homes, name, (gpointer) layer));
    }
}

static GHashTable *
header_homes (void)
{
  GHashTable *homes
      = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  each_source (note_header, homes);
  return homes;
}

static gboolean
may_include (const char *from, const char *to)
{
  return g_str_equal (from, to) || layer_height (to) < layer_height (from);
}

typedef struct
{
  GHashTable *homes;
  GRegex *include;
  guint n_seen;
} Walk;

static void
judge_include (Walk *walk, const char *layer, const char *file,
               const char *header)
{
  const char *home = g_hash_table_lookup (walk->homes, header);
  /* A header with a folder in its name goes round the include paths. */
  if (strchr (header, '/'))
    g_error ("%s includes \"%s\" by a path", file, header);
  if (home && !may_include (layer, home))
    g_error ("%s (layer %s) includes %s of layer %s", file, layer, header,
             home);
  walk->n_seen++;
}

static void
judge_source (const char *layer, const char *file, gpointer data)
{
  Walk *walk = data;
  g_autofree char *text = NULL;
  g_assert_true (g_file_get_contents (file, &text, NULL, NULL));

  g_autoptr (GMatchInfo) match = NULL;
  g_regex_match (walk->include, text, 0, &match);
  for (; g_match_info_matches (match); g_match_info_next (match, NULL))
    {
      g_autofree char *header = g_match_info_fetch (match, 1);
      judge_include (walk, layer, file, header);
    }
}

static void
test_arrows_run_downward (void)
{
  g_autoptr (GHashTable) homes = header_homes ();
  g_autoptr (GRegex) include = g_regex_new ("^#\\s*include\\s+\"([^\"]+)\"",
                                            G_REGEX_MULTILINE, 0, NULL);
  Walk walk = { homes, include, 0 };
  each_source (judge_source, &walk);
  g_assert_cmpuint (walk.n_seen, >, 20);
}

static void
judge_toolkit (const char *layer, const char *file, gpointer data)
{
  if (layer_height (layer) >= layer_height ("board")
      && !g_str_equal (layer, "batch"))
    return;
  g_autofree char *text = NULL;
  g_assert_true (g_file_get_contents (file, &text, NULL, NULL));
  if (strstr (text, "#include <gtk/") || strstr (text, "#include <gdk/"))
    g_error ("%s includes the toolkit, below the board", file);
  (*(guint *) data)++;
}

static void
test_no_toolkit_below_the_board (void)
{
  guint n_seen = 0;
  each_source (judge_toolkit, &n_seen);
  g_assert_cmpuint (n_seen, >, 20);
}

/* The judge itself: an arrow that runs upward or sideways is refused. */
static void
test_judge (void)
{
  g_assert_true (may_include ("model", "geometry"));
  g_assert_true (may_include ("model", "model"));
  g_assert_true (may_include ("app", "board"));
  g_assert_false (may_include ("geometry", "model"));
  g_assert_false (may_include ("files", "report"));
  g_assert_false (may_include ("report", "files"));
  g_assert_false (may_include ("batch", "app"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layers/judge", test_judge);
  g_test_add_func ("/layers/arrows-run-downward", test_arrows_run_downward);
  g_test_add_func ("/layers/no-toolkit-below-the-board",
                   test_no_toolkit_below_the_board);
  return g_test_run ();
}
