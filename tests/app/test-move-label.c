/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The label at the pointer and the status line, as an opening of the example
 * is moved.
 */
#include "cw-change-words.h"
#include "cw-dialogs.h"
#include "cw-edit.h"
#include "cw-move-label.h"
#include "window-cases.h"

typedef struct
{
  CaseDesk base;
  CwDocument *document;       /* borrowed */
  CwMoveLabel *label;         /* borrowed */
} Desk;

static void
lay (Desk *desk, gconstpointer data)
{
  case_desk_lay (&desk->base);
  desk->document = cw_job_document (desk->base.job);
  desk->label
      = case_find (GTK_WIDGET (desk->base.window), CW_TYPE_MOVE_LABEL);
  case_wait_for_takeoff (desk->base.job);
}

static void
clear (Desk *desk, gconstpointer data)
{
  case_desk_clear (&desk->base);
}

/* As a step of a drag does. (transfer none): valid until the next edit */
static const CwProject *
drag_first_opening (Desk *desk, const CwProject *from, CwLength by)
{
  const CwElevation *wall = cw_project_elevation (from, "south");
  const char *ids[] = { "o1", NULL };
  cw_document_select (desk->document, ids);
  g_autoptr (CwProject) moved = cw_edit_move (from, wall, ids, by, 0);
  cw_document_edit (desk->document, moved, "Move", "drag");
  return cw_document_project (desk->document);
}

/* (transfer full) */
static CwTakeoff *
live_takeoff (const CwProject *project)
{
  g_autoptr (CwTakeoff) quick = cw_takeoff_new (project, NULL, NULL);
  return cw_takeoff_improve (quick, CW_CUT_EFFORT_LIVE, NULL);
}

/* (transfer full) */
static char *
expected_words (Desk *desk, const CwProject *from, const CwProject *to)
{
  g_autoptr (CwTakeoff) before = live_takeoff (from);
  g_autoptr (CwTakeoff) after = live_takeoff (to);
  CwTakeoffChange change = cw_takeoff_change (before, after);
  CwCurrency currency = cw_currency (to->currency, CW_HALF_AWAY);
  return cw_change_words (&change, cw_job_style (desk->base.job), &currency);
}

static gboolean
is_shown (gpointer label)
{
  return cw_move_label_words (label) != NULL;
}

static gboolean
is_hidden (gpointer label)
{
  return cw_move_label_words (label) == NULL;
}

static void
find_words (GtkWidget *widget, gpointer data)
{
  gpointer *wanted = data;
  if (GTK_IS_LABEL (widget)
      && g_strcmp0 (gtk_label_get_text (GTK_LABEL (widget)), wanted[0]) == 0)
    wanted[1] = GUINT_TO_POINTER (GPOINTER_TO_UINT (wanted[1]) + 1);
}

/* At the pointer and in the status line. */
static guint
n_labels (Desk *desk, const char *words)
{
  gpointer wanted[] = { (gpointer) words, NULL };
  case_walk (GTK_WIDGET (desk->base.window), find_words, wanted);
  return GPOINTER_TO_UINT (wanted[1]);
}

static void
says_what_a_move_costs (Desk *desk, gconstpointer data)
{
  g_autoptr (CwProject) from
      = cw_node_ref (cw_document_project (desk->document));
  g_assert_null (cw_move_label_words (desk->label));
  const CwProject *to = drag_first_opening (desk, from, CW_MM (500));
  g_autofree char *words = expected_words (desk, from, to);
  case_wait (is_shown, desk->label);
  g_assert_cmpstr (cw_move_label_words (desk->label), ==, words);
  g_assert_cmpuint (n_labels (desk, words), ==, 2);
  g_assert_false (gtk_widget_get_can_target (GTK_WIDGET (desk->label)));
}

/* A moment after the last step, or at once with another edit. */
static void
goes_away (Desk *desk, gconstpointer data)
{
  g_autoptr (CwProject) from
      = cw_node_ref (cw_document_project (desk->document));
  drag_first_opening (desk, from, CW_MM (500));
  case_wait (is_shown, desk->label);
  case_wait (is_hidden, desk->label);
  drag_first_opening (desk, from, CW_MM (300));
  case_wait (is_shown, desk->label);
  case_rename_first (desk->base.job, "Seaward");
  g_assert_null (cw_move_label_words (desk->label));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  if (!case_start_toolkit ())
    return 0;
  case_application ();
  g_test_add ("/move-label/says-what-a-move-costs", Desk, NULL, lay,
              says_what_a_move_costs, clear);
  g_test_add ("/move-label/goes-away", Desk, NULL, lay, goes_away, clear);
  return g_test_run ();
}
