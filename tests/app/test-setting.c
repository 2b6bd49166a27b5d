/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Taking a choice of setting out, and what is said of it.
 */
#include "cw-change-words.h"
#include "cw-setting-edit.h"
#include "cw-setting-words.h"
#include "estimate-cases.h"

static const CwSettingChoice choice
    = { .start = CW_START_RIGHT, .bond = CW_BOND_STAGGER,
        .offset = CW_MM (450), .base = CW_MM (120), .stagger = CW_MM (600),
        .n_panels = 16, .n_least = 15, .saw = 12.34, .cost = 1234.5,
        .n_troubles = 2 };

static const CwElevation *
wall_at (const CwProject *project, gsize index)
{
  return cw_list_at (project->elevations, index);
}

static const CwSettingOut *
setting_of (const CwProject *project, gsize index)
{
  const CwBuildup *buildup
      = cw_project_buildup (project, wall_at (project, index)->buildup);
  g_assert_nonnull (buildup);
  return (const CwSettingOut *) buildup->setting_out;
}

static void
assert_taken (const CwSettingOut *setting)
{
  g_assert_cmpint (setting->start, ==, CW_START_RIGHT);
  g_assert_cmpint (setting->bond, ==, CW_BOND_STAGGER);
  g_assert_cmpint (setting->offset, ==, CW_MM (450));
  g_assert_cmpint (setting->base, ==, CW_MM (120));
  g_assert_cmpint (setting->stagger, ==, CW_MM (600));
}

static void
changes_all_walls (void)
{
  g_autoptr (CwProject) project = case_project ("9x3; 7x3", "");
  g_autoptr (CwProject) next = cw_setting_take (
      project, wall_at (project, 0)->id, &choice, FALSE, "Copy");
  g_assert_cmpuint (cw_list_length (next->buildups), ==,
                    cw_list_length (project->buildups));
  assert_taken (setting_of (next, 0));
  assert_taken (setting_of (next, 1));
}

static void
changes_one_wall_of_several (void)
{
  g_autoptr (CwProject) project = case_project ("9x3; 7x3", "");
  g_autoptr (CwProject) next = cw_setting_take (
      project, wall_at (project, 0)->id, &choice, TRUE, "Copy");
  const CwBuildup *copy
      = cw_project_buildup (next, wall_at (next, 0)->buildup);
  g_assert_cmpuint (cw_list_length (next->buildups), ==,
                    cw_list_length (project->buildups) + 1);
  g_assert_cmpstr (copy->name, ==, "Copy");
  assert_taken (setting_of (next, 0));
  g_assert_true (setting_of (next, 1) == setting_of (project, 1));
  g_assert_true (wall_at (next, 1) == wall_at (project, 1));
}

/* No copy where nothing shares the buildup. */
static void
changes_the_only_wall (void)
{
  g_autoptr (CwProject) project = case_project ("9x3", "");
  g_autoptr (CwProject) next = cw_setting_take (
      project, wall_at (project, 0)->id, &choice, TRUE, "Copy");
  g_assert_cmpuint (cw_list_length (next->buildups), ==,
                    cw_list_length (project->buildups));
  g_assert_cmpuint (
      cw_setting_n_walls (next, wall_at (next, 0)->buildup), ==, 1);
  assert_taken (setting_of (next, 0));
}

static void
assert_cell (CwSettingColumn column, const char *expected)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  CwCurrency currency = cw_currency ("EUR", CW_HALF_AWAY);
  g_autofree char *cell = cw_setting_cell (&choice, column, &style, &currency);
  g_assert_cmpstr (cell, ==, expected);
}

static void
says_choices (void)
{
  assert_cell (CW_SETTING_COLUMN_START, "Right corner");
  assert_cell (CW_SETTING_COLUMN_BOND, "Staggered, 600 mm");
  assert_cell (CW_SETTING_COLUMN_OFFSET, "450 mm");
  assert_cell (CW_SETTING_COLUMN_BASE, "120 mm");
  assert_cell (CW_SETTING_COLUMN_PANELS, "16 (at least 15)");
  assert_cell (CW_SETTING_COLUMN_SAW, "12.34 m");
  assert_cell (CW_SETTING_COLUMN_COST, "1234.50 EUR");
  assert_cell (CW_SETTING_COLUMN_TROUBLES, "2");
}

static const struct
{
  CwTakeoffChange change;
  CwUnits units;
  const char *words;
} changes[] = {
  { { 1, -2.3, 41.2, TRUE }, CW_UNITS_METRIC,
    "+1 panel, −2.30 m of cuts, +41.20 USD" },
  { { -2, 0, -1000, TRUE }, CW_UNITS_METRIC, "−2 panels, −1000.00 USD" },
  { { 0, 0.5, 12, FALSE }, CW_UNITS_METRIC, "+0.50 m of cuts" },
  /* 0.3048 m is 1 ft. */
  { { 0, 3.048, 0, TRUE }, CW_UNITS_US, "+10.0 ft of cuts" },
  { { 0, 0.0001, 0.001, TRUE }, CW_UNITS_METRIC, "no change" },
  { { 0, 0, 0, FALSE }, CW_UNITS_METRIC, "no change" },
};

static void
says_changes (void)
{
  CwCurrency currency = cw_currency ("USD", CW_HALF_AWAY);
  for (gsize i = 0; i < G_N_ELEMENTS (changes); i++)
    {
      CwTextStyle style = cw_text_style_plain (changes[i].units);
      g_autofree char *words
          = cw_change_words (&changes[i].change, &style, &currency);
      g_assert_cmpstr (words, ==, changes[i].words);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/setting/changes-all-walls", changes_all_walls);
  g_test_add_func ("/setting/changes-one-wall-of-several",
                   changes_one_wall_of_several);
  g_test_add_func ("/setting/changes-the-only-wall", changes_the_only_wall);
  g_test_add_func ("/setting/says-choices", says_choices);
  g_test_add_func ("/setting/says-changes", says_changes);
  return g_test_run ();
}
