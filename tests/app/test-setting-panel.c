/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The best setting out of the example's walls, searched and taken in the
 * window.
 */
#include "cw-dialogs.h"
#include "window-cases.h"

typedef struct
{
  CaseDesk base;
  CwDocument *document;       /* borrowed */
  CwSettingPanel *panel;      /* borrowed */
  CwSettingTable *table;      /* borrowed */
} Desk;

static void
lay (Desk *desk, gconstpointer data)
{
  case_desk_lay (&desk->base);
  desk->document = cw_job_document (desk->base.job);
  desk->panel = cw_walls_place_setting (cw_window_walls (desk->base.window));
  desk->table = cw_setting_panel_table (desk->panel);
  case_wait_for_takeoff (desk->base.job);
  case_desk_act (&desk->base, "best-setting-out");
  g_assert_true (cw_setting_panel_is_open (desk->panel));
}

static void
clear (Desk *desk, gconstpointer data)
{
  case_desk_clear (&desk->base);
}

static gboolean
has_searched (gpointer data)
{
  return !cw_setting_panel_is_searching (((Desk *) data)->panel);
}

static gboolean
has_outcome (gpointer data)
{
  return *cw_setting_panel_outcome (((Desk *) data)->panel) != '\0';
}

/* (transfer none): the row at the top, shown on the wall. */
static const CwSettingChoice *
search_and_choose (Desk *desk)
{
  cw_setting_panel_search (desk->panel);
  g_assert_true (cw_setting_panel_is_searching (desk->panel));
  case_wait (has_searched, desk);
  g_assert_cmpuint (cw_setting_table_n_choices (desk->table), >, 3);
  g_assert_null (cw_setting_table_chosen (desk->table));
  cw_setting_table_choose (desk->table, 0);
  case_wait (has_outcome, desk);
  return cw_setting_table_chosen (desk->table);
}

static double
panels_of (Desk *desk, const char *scope)
{
  case_wait_for_takeoff (desk->base.job);
  return cw_takeoff_quantity (cw_job_takeoff (desk->base.job), scope,
                              "panel.stock")
      ->amount;
}

/* The wall's own figures are those of the table, and one undo takes all of it
 * back. */
static void
takes_one_wall (Desk *desk, gconstpointer data)
{
  const CwProject *before = cw_document_project (desk->document);
  const double present = panels_of (desk, "south");
  cw_setting_panel_set_alone (desk->panel, TRUE);
  const guint n_panels = search_and_choose (desk)->n_panels;
  g_assert_cmpfloat (n_panels, <, present);
  cw_setting_panel_take (desk->panel);
  g_assert_false (cw_setting_panel_is_open (desk->panel));
  g_assert_cmpfloat_with_epsilon (panels_of (desk, "south"), n_panels, 1e-9);
  g_assert_cmpuint (
      cw_list_length (cw_document_project (desk->document)->buildups), ==,
      cw_list_length (before->buildups) + 1);
  cw_document_undo (desk->document);
  g_assert_true (cw_document_project (desk->document) == before);
  g_assert_cmpfloat_with_epsilon (panels_of (desk, "south"), present, 1e-9);
}

static void
stops (Desk *desk, gconstpointer data)
{
  cw_setting_panel_set_alone (desk->panel, FALSE);
  cw_setting_panel_search (desk->panel);
  cw_setting_panel_set_alone (desk->panel, TRUE);
  g_assert_false (cw_setting_panel_is_searching (desk->panel));
  g_assert_cmpuint (cw_setting_table_n_choices (desk->table), ==, 0);
}

/* What was found is not for a wall that has changed since. */
static void
forgets_changed_walls (Desk *desk, gconstpointer data)
{
  cw_setting_panel_set_alone (desk->panel, TRUE);
  search_and_choose (desk);
  case_rename_first (desk->base.job, "Seaward");
  case_settle ();
  g_assert_cmpuint (cw_setting_table_n_choices (desk->table), ==, 0);
  g_assert_null (cw_setting_table_chosen (desk->table));
  const CwProject *before = cw_document_project (desk->document);
  cw_setting_panel_take (desk->panel);
  g_assert_true (cw_document_project (desk->document) == before);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  if (!case_start_toolkit ())
    return 0;
  case_application ();
  g_test_add ("/setting-panel/takes-one-wall", Desk, NULL, lay,
              takes_one_wall, clear);
  g_test_add ("/setting-panel/stops", Desk, NULL, lay, stops, clear);
  g_test_add ("/setting-panel/forgets-changed-walls", Desk, NULL, lay,
              forgets_changed_walls, clear);
  return g_test_run ();
}
