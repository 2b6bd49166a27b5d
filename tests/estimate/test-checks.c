/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is told of and what is not.
 */
#include <string.h>

#include "cw-case-table.h"
#include "cw-checks.h"
#include "estimate-cases.h"

/* What a row of the list says at once; two lines or three. */
#define SHORT 110

static const CwTextStyle *
style (void)
{
  static CwTextStyle plain;

  plain = cw_text_style_plain (CW_UNITS_METRIC);
  return &plain;
}

static GPtrArray *
checks_of (const CwProject *project)
{
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);

  return cw_checks_find (takeoff, style (), NULL);
}

static const CwCheck *
find (const GPtrArray *checks, const char *code)
{
  for (guint i = 0; i < checks->len; i++)
    {
      const CwCheck *check = checks->pdata[i];

      if (g_str_equal (check->type->code, code))
        return check;
    }
  return NULL;
}

static guint
count (const GPtrArray *checks, const char *code)
{
  guint n = 0;

  for (guint i = 0; i < checks->len; i++)
    n += g_str_equal (((CwCheck *) checks->pdata[i])->type->code, code);
  return n;
}

static void
test_row (gconstpointer data)
{
  const CwCase *row = data;
  g_autoptr (CwProject) project = case_project (
      row->columns[1],
      g_str_equal (row->columns[2], "-") ? "" : row->columns[2]);
  g_autoptr (GPtrArray) checks = checks_of (project);

  g_assert_nonnull (cw_check_type (row->columns[3]));
  for (guint i = 0; i < checks->len; i++)
    g_test_message ("%s: %s", ((CwCheck *) checks->pdata[i])->type->code,
                    ((CwCheck *) checks->pdata[i])->text);
  g_assert_cmpuint (count (checks, row->columns[3]), ==,
                    (guint) g_ascii_strtoull (row->columns[4], NULL, 10));
}

/* Sentences end as sentences; nothing is ever said to be safe. */
static void
assert_sentence (const char *text)
{
  g_autofree char *lower = g_utf8_strdown (text, -1);

  g_assert_cmpuint (strlen (text), >, 0);
  g_assert_true (g_str_has_suffix (text, "."));
  g_assert_null (strstr (lower, "safe"));
}

static void
test_types (void)
{
  for (guint i = 0; i < cw_n_check_types; i++)
    {
      const CwCheckType *type = &cw_check_types[i];

      g_assert_true (cw_check_type (type->code) == type);
      g_assert_cmpint (type->severity, <, CW_N_CHECK_SEVERITIES);
      g_assert_cmpuint (strlen (type->title), >, 0);
      assert_sentence (type->remedy);
      assert_sentence (type->source);
    }
}

static void
test_sentences (void)
{
  g_autoptr (CwProject) project = case_project (
      "9x5 window:1x1@1,1 window:1x1@1.5,1 stub:0.06@4,0.6",
      "wind.basis=given wind.pressure=9000 mesh.lap=10 barrier.lap=10");
  g_autoptr (GPtrArray) checks = checks_of (project);

  g_assert_cmpuint (checks->len, >, 8);
  for (guint i = 0; i < checks->len; i++)
    {
      const CwCheck *check = checks->pdata[i];

      assert_sentence (check->text);
      g_assert_cmpint (g_utf8_strlen (check->text, -1), <=, SHORT);
      if (check->detail)
        assert_sentence (check->detail);
      if (i > 0)
        g_assert_cmpint (((CwCheck *) checks->pdata[i - 1])->type->severity,
                         <=, check->type->severity);
    }
}

/* The caution goes with every comparison of fasteners. */
static void
test_caution (void)
{
  g_autoptr (CwProject) within
      = case_project ("4.8x2.4", "wind.basis=given wind.pressure=100");
  g_autoptr (CwProject) over
      = case_project ("4.8x2.4", "wind.basis=given wind.pressure=90000");
  g_autoptr (GPtrArray) checks = checks_of (within);
  g_autoptr (GPtrArray) others = checks_of (over);

  g_assert_nonnull (strstr (find (checks, "fastener-compared")->text,
                            "licensed designer decides"));
  g_assert_nonnull (strstr (find (others, "fastener-demand")->text,
                            "licensed designer decides"));
}

/* A project with a sheet of that scale; none when @across is 0. */
static CwProject *
with_sheet (double across, double along)
{
  g_autoptr (CwProject) bare = case_project ("4.8x2.4", "");
  CwNode *project = cw_node_copy (&bare->node);
  g_autoptr (CwNode) sheet = cw_node_new (&cw_sheet_type);
  g_autoptr (CwNode) scale = cw_node_new (&cw_scale_type);
  g_autoptr (CwList) sheets = NULL;

  cw_node_put_text (sheet, "id", "s1");
  cw_node_put (scale, "across", (CwDecimal) (across * 1e6));
  cw_node_put (scale, "along", (CwDecimal) (along * 1e6));
  if (across > 0)
    cw_node_set_child (sheet, CW_SHEET_SCALE, scale);
  sheets = cw_list_new (&sheet, 1);
  cw_node_set_list (project, CW_PROJECT_SHEETS, sheets);
  cw_node_freeze (project);
  return (CwProject *) project;
}

static CwProject *
unscaled (void)
{
  return with_sheet (0, 0);
}

static CwProject *
scaled (void)
{
  return with_sheet (16.933333, 17.05);
}

static CwProject *
stretched (void)
{
  return with_sheet (16.933333, 17.2);
}

/* Round a square, or across it. */
static const CwCorner square[] = { { { 0, 0 }, 0, CW_EDGE_BASE },
                                   { { CW_MM (2400), 0 }, 0, CW_EDGE_JOINT },
                                   { { CW_MM (2400), CW_MM (2400) }, 0,
                                     CW_EDGE_EAVE },
                                   { { 0, CW_MM (2400) }, 0, CW_EDGE_JOINT } };
static const CwCorner bow_tie[] = { { { 0, 0 }, 0, CW_EDGE_BASE },
                                    { { CW_MM (2400), 0 }, 0, CW_EDGE_JOINT },
                                    { { 0, CW_MM (2400) }, 0, CW_EDGE_EAVE },
                                    { { CW_MM (2400), CW_MM (2400) }, 0,
                                      CW_EDGE_JOINT } };

/* One wall, with an unclad area when there are corners of one. */
static CwProject *
with_corners (const CwCorner *outline, const CwCorner *unclad)
{
  g_autoptr (GPtrArray) items
      = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autoptr (GPtrArray) walls
      = g_ptr_array_new_with_free_func (cw_node_unref);

  if (unclad)
    {
      g_autoptr (CwList) corners = cw_corners_to_list (unclad, 4);
      CwNode *item = cw_node_new (&cw_unclad_type);

      cw_node_put_text (item, "id", "u1");
      cw_node_set_list (item, CW_UNCLAD_CORNERS, corners);
      g_ptr_array_add (items, item);
    }
  g_ptr_array_add (walls, case_elevation_of ("e1", outline, 4, items));
  return case_project_of (walls, "");
}

static CwProject *
crossed_outline (void)
{
  return with_corners (bow_tie, NULL);
}

static CwProject *
crossed_unclad (void)
{
  return with_corners (square, bow_tie);
}

static CwProject *
uncrossed (void)
{
  return with_corners (square, square);
}

/* An elevation of which nothing was drawn, and one that names no buildup. */
static CwProject *
bare_walls (void)
{
  g_autoptr (CwProject) plain = cw_project_new_default (CW_UNITS_METRIC);
  CwNode *project = cw_node_copy (&plain->node);
  g_autoptr (CwNode) undrawn = cw_node_new (&cw_elevation_type);
  g_autoptr (CwProject) drawn = case_project ("4.8x2.4", "");
  g_autoptr (CwNode) unbuilt
      = cw_node_copy (cw_list_at (drawn->elevations, 0));
  g_autoptr (CwList) walls = NULL;

  cw_node_put_text (undrawn, "id", "e9");
  cw_node_put_text (unbuilt, "buildup", "");
  walls = cw_list_new ((CwNode *[]) { undrawn, unbuilt }, 2);
  cw_node_set_list (project, CW_PROJECT_ELEVATIONS, walls);
  cw_node_freeze (project);
  return (CwProject *) project;
}

/* What no line of the table can say: a project with the check once, and one
 * without. */
typedef struct
{
  const char *code;
  CwProject *(*with) (void);
  CwProject *(*without) (void);
} Drawn;

static const Drawn drawn_cases[] = {
  { "sheet-no-scale", unscaled, scaled },
  { "sheet-scales-differ", stretched, scaled },
  { "outline-missing", bare_walls, uncrossed },
  { "buildup-missing", bare_walls, uncrossed },
  { "outline-invalid", crossed_outline, uncrossed },
  { "unclad-invalid", crossed_unclad, uncrossed },
};

static void
test_drawn (gconstpointer data)
{
  const Drawn *drawn = data;
  g_autoptr (CwProject) with = drawn->with ();
  g_autoptr (CwProject) without = drawn->without ();
  g_autoptr (GPtrArray) checks = checks_of (with);
  g_autoptr (GPtrArray) others = checks_of (without);

  g_assert_cmpuint (count (checks, drawn->code), ==, 1);
  g_assert_cmpuint (count (others, drawn->code), ==, 0);
}

/* Each type has a case that is told of and one that is not. */
static void
test_every_type (void)
{
  g_autoptr (GPtrArray) rows = cw_case_table_load ("estimate/checks.tsv", 6);

  for (guint i = 0; i < cw_n_check_types; i++)
    {
      const char *code = cw_check_types[i].code;
      gboolean is_told = FALSE, is_silent = FALSE;

      for (guint j = 0; j < G_N_ELEMENTS (drawn_cases); j++)
        if (g_str_equal (drawn_cases[j].code, code))
          is_told = is_silent = TRUE;
      for (guint j = 0; j < rows->len; j++)
        {
          const CwCase *row = rows->pdata[j];
          const gboolean is_none = g_str_equal (row->columns[4], "0");

          if (!g_str_equal (row->columns[3], code))
            continue;
          is_silent = is_silent || is_none;
          is_told = is_told || !is_none;
        }
      if (!is_told || !is_silent)
        g_error ("%s has no case that is %s", code,
                 is_told ? "not told of" : "told of");
    }
}

/* Nothing is said where there is nothing to say. */
static void
test_clean (void)
{
  g_autoptr (CwProject) project = case_project (
      "2.4x1.806", "panel.mass=8 base-coat.kind=cement finish.suits=cement");
  g_autoptr (GPtrArray) checks = checks_of (project);

  for (guint i = 0; i < checks->len; i++)
    g_test_message ("%s: %s", ((CwCheck *) checks->pdata[i])->type->code,
                    ((CwCheck *) checks->pdata[i])->text);
  g_assert_cmpuint (checks->len, ==, 0);
}

/* Pressures, speeds, forces and masses as the reader has them. */
static void
test_units (void)
{
  static const char settings[]
      = "wind.basis=guide wind.speed=51.4096 panel.mass=44.678848";
  g_autoptr (CwProject) project = case_project ("4.8x2.4", settings);
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  const CwTextStyle us = cw_text_style_plain (CW_UNITS_US);
  g_autoptr (GPtrArray) in_us = cw_checks_find (takeoff, &us, NULL);
  g_autoptr (GPtrArray) metric = cw_checks_find (takeoff, style (), NULL);
  const CwCheck *wind = find (in_us, "fastener-compared");

  g_assert_nonnull (strstr (find (in_us, "panel-mass")->text, "98.5 lb"));
  g_assert_nonnull (strstr (find (metric, "panel-mass")->text, "44.7 kg"));
  g_assert_nonnull (strstr (wind->detail, "V 115 mph"));
  g_assert_nonnull (strstr (wind->detail, " psf"));
  g_assert_nonnull (strstr (wind->text, " lb on each"));
  wind = find (metric, "fastener-compared");
  g_assert_nonnull (strstr (wind->detail, "V 51.4 m/s"));
  g_assert_nonnull (strstr (wind->detail, " Pa"));
  g_assert_nonnull (strstr (wind->text, " N on each"));
}

static void
test_awaits_drawing (void)
{
  g_autoptr (CwProject) project = bare_walls ();
  g_autoptr (GPtrArray) checks = checks_of (project);

  g_assert_true (cw_check_awaits_drawing (find (checks, "outline-missing")));
  g_assert_false (cw_check_awaits_drawing (find (checks, "buildup-missing")));
}

static CwProject *
with_waiver (const CwProject *project, const CwCheck *check,
             const char *figures)
{
  g_autoptr (CwNode) waiver = cw_node_new (&cw_waiver_type);
  g_autoptr (CwList) waivers = NULL;
  CwNode *next = cw_node_copy (&project->node);

  cw_node_put_text (waiver, "check", check->type->code);
  cw_node_put_text (waiver, "elevation", check->elevation_id);
  cw_node_put_text (waiver, "item", check->item);
  cw_node_put_text (waiver, "reason", "One window.");
  cw_node_put_text (waiver, "figures", figures);
  waivers = cw_list_new (&waiver, 1);
  cw_node_set_list (next, CW_PROJECT_WAIVERS, waivers);
  cw_node_freeze (next);
  return (CwProject *) next;
}

/* A waiver is for its check on its item alone, and tells when the numbers
 * are others; one that nothing is for any more is still known. */
static void
test_waivers (void)
{
  g_autoptr (CwProject) project = case_project (
      "4.8x2.4 window:1x1@1,1 window:1x1@1.5,1 window:1x1@2.2,1", "");
  g_autoptr (GPtrArray) checks = checks_of (project);
  const CwCheck *first = find (checks, "opening-overlap");
  g_autoptr (CwProject) same = with_waiver (project, first, first->figures);
  g_autoptr (CwProject) other = with_waiver (project, first, "0.125");
  g_autoptr (CwProject) plain = case_project ("4.8x2.4", "");
  g_autoptr (CwProject) gone = with_waiver (plain, first, first->figures);
  g_autoptr (GPtrArray) of_same = checks_of (same);
  g_autoptr (GPtrArray) of_other = checks_of (other);
  g_autoptr (GPtrArray) of_gone = checks_of (gone);
  g_autoptr (GPtrArray) idle = cw_waivers_idle (gone, of_gone);

  g_assert_cmpuint (count (checks, "opening-overlap"), ==, 2);
  g_assert_cmpuint (cw_checks_count (checks, CW_CHECK_ERROR), ==, 2);
  g_assert_cmpuint (cw_checks_count (of_same, CW_CHECK_ERROR), ==, 1);
  g_assert_nonnull (find (of_same, "opening-overlap")->waiver);
  g_assert_false (find (of_same, "opening-overlap")->is_changed);
  g_assert_true (find (of_other, "opening-overlap")->is_changed);
  g_assert_cmpuint (idle->len, ==, 1);
}

static void
add_drawn (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (drawn_cases); i++)
    {
      g_autofree char *path
          = g_strdup_printf ("/checks/drawn/%s", drawn_cases[i].code);

      g_test_add_data_func (path, &drawn_cases[i], test_drawn);
    }
}

int
main (int argc, char **argv)
{
  g_autoptr (GPtrArray) rows = NULL;

  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  rows = cw_case_table_load ("estimate/checks.tsv", 6);
  for (guint i = 0; i < rows->len; i++)
    {
      const CwCase *row = rows->pdata[i];
      g_autofree char *path = g_strdup_printf (
          "/checks/row/%s/%u", row->columns[3], row->line);

      g_test_add_data_func (path, row, test_row);
    }
  g_test_add_func ("/checks/types", test_types);
  g_test_add_func ("/checks/sentences", test_sentences);
  g_test_add_func ("/checks/caution", test_caution);
  g_test_add_func ("/checks/waivers", test_waivers);
  g_test_add_func ("/checks/every-type", test_every_type);
  g_test_add_func ("/checks/clean", test_clean);
  g_test_add_func ("/checks/units", test_units);
  g_test_add_func ("/checks/awaits-drawing", test_awaits_drawing);
  add_drawn ();
  return g_test_run ();
}
