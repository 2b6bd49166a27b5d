/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The place for panels: its list, the words of a panel, the way to a wall.
 */
#include <string.h>

#include "cw-dialogs.h"
#include "cw-edits.h"
#include "window-cases.h"

typedef CaseDesk Desk;

static void
lay (Desk *desk, gconstpointer data)
{
  case_desk_lay (desk);
}

static void
clear (Desk *desk, gconstpointer data)
{
  case_desk_clear (desk);
}

static CwCutGrid *
grid_of (Desk *desk)
{
  return cw_panels_place_grid (cw_window_panels (desk->window));
}

static CwCutDetail *
detail_of (Desk *desk)
{
  return cw_panels_place_detail (cw_window_panels (desk->window));
}

/* The chosen panel is of the job's own takeoff. */
static gboolean
is_listed (gpointer data)
{
  CwCutItem *item = cw_cut_grid_chosen (grid_of (data));
  return item
         && cw_cut_item_list (item)->takeoff
                == cw_job_takeoff (((Desk *) data)->job);
}

static void
go_to_panels (Desk *desk)
{
  case_wait_for_takeoff (desk->job);
  g_action_group_change_action_state (G_ACTION_GROUP (desk->window), "place",
                                      g_variant_new_string ("panels"));
  case_wait (is_listed, desk);
  case_settle ();
}

/* As many as the figures beside them say, whole ones aside. */
static void
lists_every_panel (Desk *desk, gconstpointer data)
{
  const CwCutList *list;
  guint n = 0;
  go_to_panels (desk);
  list = cw_cut_item_list (cw_cut_grid_chosen (grid_of (desk)));
  g_assert_true (gtk_widget_get_mapped (GTK_WIDGET (grid_of (desk))));
  g_assert_cmpuint (cw_cut_grid_n_panels (grid_of (desk)), ==,
                    list->panels->len);
  for (guint i = 0; i < list->panels->len; i++)
    n += ((const CwCutListPanel *) list->panels->pdata[i])->n;
  const CwTakeoff *takeoff = cw_job_takeoff (desk->job);
  g_assert_cmpfloat_with_epsilon (
      n
          + cw_takeoff_quantity (takeoff, NULL, "panel.whole")->amount
          + cw_takeoff_quantity (takeoff, NULL, "panel.rasped")->amount,
      cw_takeoff_quantity (takeoff, NULL, "panel.stock")->amount, 1e-9);
}

static void
shows_figures (Desk *desk, gconstpointer data)
{
  CwPanelScopes *scopes
      = cw_panels_place_scopes (cw_window_panels (desk->window));
  g_autofree char *used = NULL;
  go_to_panels (desk);
  used = g_strdup_printf (
      "%.0f", cw_takeoff_quantity (cw_job_takeoff (desk->job), NULL,
                                   "panel.stock")
                  ->amount);
  g_assert_cmpstr (cw_panel_scopes_figure (scopes, "panel.stock"), ==, used);
}

/* A wall's panels alone, and all of them again. */
static void
one_wall (Desk *desk, gconstpointer data)
{
  CwPanelScopes *scopes
      = cw_panels_place_scopes (cw_window_panels (desk->window));
  guint all;
  go_to_panels (desk);
  all = cw_cut_grid_n_panels (grid_of (desk));
  cw_panel_scopes_choose (scopes, "south");
  g_assert_cmpuint (cw_cut_grid_n_panels (grid_of (desk)), >, 0);
  g_assert_cmpuint (cw_cut_grid_n_panels (grid_of (desk)), <, all);
  cw_panel_scopes_choose (scopes, NULL);
  g_assert_cmpuint (cw_cut_grid_n_panels (grid_of (desk)), ==, all);
}

static void
choosing_lists_pieces (Desk *desk, gconstpointer data)
{
  go_to_panels (desk);
  for (guint number = 1; number <= 10; number++)
    {
      cw_cut_grid_choose (grid_of (desk), number);
      case_settle ();
      const CwCutListPanel *panel
          = cw_cut_item_panel (cw_cut_grid_chosen (grid_of (desk)));
      g_assert_cmpuint (panel->number, ==, number);
      g_assert_cmpuint (cw_cut_detail_n_pieces (detail_of (desk)), ==,
                        panel->pieces->len);
    }
}

static void
piece_leads_to_its_wall (Desk *desk, gconstpointer data)
{
  const CwCutListPanel *panel;
  const CwLayout *layout;
  go_to_panels (desk);
  cw_cut_grid_choose (grid_of (desk), 7);
  panel = cw_cut_item_panel (cw_cut_grid_chosen (grid_of (desk)));
  cw_cut_list_piece (cw_cut_item_list (cw_cut_grid_chosen (grid_of (desk))),
                     &g_array_index (panel->pieces, CwCutListPiece, 0),
                     &layout);
  g_autofree char *id = g_strdup (layout->wall->elevation->id);
  cw_cut_detail_choose_piece (detail_of (desk), 0);
  case_settle ();
  g_assert_cmpstr (
      cw_document_elevation_id (cw_job_document (desk->job)), ==, id);
  g_assert_true (
      gtk_widget_get_mapped (GTK_WIDGET (cw_window_walls (desk->window))));
  g_assert_false (
      gtk_widget_get_mapped (GTK_WIDGET (cw_window_panels (desk->window))));
}

/* An edit is followed; the place stays. */
static void
follows_edits (Desk *desk, gconstpointer data)
{
  go_to_panels (desk);
  const CwCutList *former
      = cw_cut_item_list (cw_cut_grid_chosen (grid_of (desk)));
  g_autoptr (CwTakeoff) before = cw_takeoff_ref (former->takeoff);
  case_rename_first (desk->job, "Seaward");
  case_wait_for_takeoff (desk->job);
  case_wait (is_listed, desk);
  g_assert_true (
      cw_cut_item_list (cw_cut_grid_chosen (grid_of (desk)))->takeoff
      != before);
  g_assert_true (
      gtk_widget_get_mapped (GTK_WIDGET (cw_window_panels (desk->window))));
}

static void
nothing_drawn (void)
{
  CwWindow *window = case_empty_window ();
  Desk desk = { NULL, window, cw_window_job (window) };
  case_wait_for_takeoff (desk.job);
  g_action_group_change_action_state (G_ACTION_GROUP (window), "place",
                                      g_variant_new_string ("panels"));
  case_settle ();
  g_assert_cmpuint (cw_cut_grid_n_panels (grid_of (&desk)), ==, 0);
  g_assert_cmpuint (cw_cut_detail_n_pieces (detail_of (&desk)), ==, 0);
  case_close (GTK_WINDOW (window));
}

static void
add (const char *path, void (*test) (Desk *, gconstpointer))
{
  g_test_add (path, Desk, NULL, lay, test, clear);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  if (!case_start_toolkit ())
    return 0;
  case_application ();
  add ("/panels/lists-every-panel", lists_every_panel);
  add ("/panels/shows-figures", shows_figures);
  add ("/panels/one-wall", one_wall);
  add ("/panels/choosing-lists-pieces", choosing_lists_pieces);
  add ("/panels/piece-leads-to-its-wall", piece_leads_to_its_wall);
  add ("/panels/follows-edits", follows_edits);
  g_test_add_func ("/panels/nothing-drawn", nothing_drawn);
  return g_test_run ();
}
