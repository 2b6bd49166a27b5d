/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The list of what is to be looked at, used as a person would.
 */
#include <string.h>

#include "cw-check-list.h"
#include "cw-check-row.h"
#include "cw-form-dialog.h"
#include "window-cases.h"

/* A note of the example, which is cut and never clean. */
#define CODE "silica"

typedef struct
{
  CaseDesk base;
  CwCheckList *list;          /* borrowed */
} Desk;

static gboolean
is_listed (gpointer data)
{
  return cw_check_list_row (((Desk *) data)->list, CODE) != NULL;
}

static void
lay (Desk *desk, gconstpointer data)
{
  case_desk_lay (&desk->base);
  desk->list
      = case_find (GTK_WIDGET (desk->base.window), CW_TYPE_CHECK_LIST);
  g_assert_nonnull (desk->list);
  case_wait (is_listed, desk);
  case_settle ();
}

static void
clear (Desk *desk, gconstpointer data)
{
  case_wait_for_takeoff (desk->base.job);
  case_desk_clear (&desk->base);
}

static CwCheckRow *
row_of (Desk *desk)
{
  return CW_CHECK_ROW (cw_check_list_row (desk->list, CODE));
}

static const CwProject *
project_of (Desk *desk)
{
  return cw_document_project (cw_job_document (desk->base.job));
}

typedef struct
{
  const char *text;
  gboolean is_shown;
} Words;

static void
match_words (GtkWidget *widget, gpointer data)
{
  Words *words = data;
  if (GTK_IS_LABEL (widget) && gtk_widget_get_child_visible (widget)
      && strstr (gtk_label_get_text (GTK_LABEL (widget)), words->text))
    words->is_shown = gtk_widget_get_mapped (widget);
}

static gboolean
shows (GtkWidget *root, const char *text)
{
  Words words = { text, FALSE };
  case_walk (root, match_words, &words);
  return words.is_shown;
}

/* One sentence at once; the rest when it is chosen. */
static void
tells_the_rest_when_chosen (Desk *desk, gconstpointer data)
{
  CwCheckRow *row = row_of (desk);
  const CwCheck *check = cw_check_row_check (row);
  GtkRevealer *details = case_find (GTK_WIDGET (row), GTK_TYPE_REVEALER);
  g_assert_nonnull (check->detail);
  g_assert_true (shows (GTK_WIDGET (row), check->text));
  g_assert_false (gtk_revealer_get_reveal_child (details));
  gtk_list_box_select_row (
      GTK_LIST_BOX (gtk_widget_get_parent (GTK_WIDGET (row))),
      GTK_LIST_BOX_ROW (row));
  case_settle ();
  g_assert_true (gtk_revealer_get_reveal_child (details));
  g_assert_true (shows (GTK_WIDGET (row), check->detail));
  g_assert_true (shows (GTK_WIDGET (row), check->type->remedy));
}

static gboolean
is_waived (gpointer data)
{
  Desk *desk = data;
  return row_of (desk) && cw_check_row_check (row_of (desk))->waiver != NULL;
}

static gboolean
is_not_waived (gpointer data)
{
  return row_of (data) && !is_waived (data);
}

/* Presses the row's button. */
static void
press (Desk *desk)
{
  GtkWidget *button = case_find (GTK_WIDGET (row_of (desk)), GTK_TYPE_BUTTON);
  g_assert_nonnull (button);
  g_signal_emit_by_name (button, "clicked");
  case_settle ();
}

static void
waive (Desk *desk, const char *reason)
{
  press (desk);
  GtkWindow *dialog = case_open_window (CW_TYPE_FORM_DIALOG);
  g_assert_nonnull (dialog);
  GtkWidget *entry = case_find (GTK_WIDGET (dialog), GTK_TYPE_ENTRY);
  gtk_editable_set_text (GTK_EDITABLE (entry), reason);
  g_signal_emit_by_name (dialog, "taken");
  case_settle ();
}

static void
waives_with_a_reason (Desk *desk, gconstpointer data)
{
  waive (desk, "Wet saw, the crew is trained.");
  g_assert_null (case_open_window (CW_TYPE_FORM_DIALOG));
  case_wait (is_waived, desk);
  g_assert_cmpuint (cw_list_length (project_of (desk)->waivers), ==, 1);
  const CwWaiver *waiver = cw_list_at (project_of (desk)->waivers, 0);
  g_assert_cmpstr (waiver->reason, ==, "Wet saw, the crew is trained.");
  g_assert_cmpuint (strlen (waiver->date), ==, strlen ("2026-11-25"));
  case_settle ();
  g_assert_true (shows (GTK_WIDGET (row_of (desk)), waiver->reason));
  cw_document_undo (cw_job_document (desk->base.job));
  case_wait (is_not_waived, desk);
  cw_document_redo (cw_job_document (desk->base.job));
  case_wait (is_waived, desk);
  press (desk);
  case_wait (is_not_waived, desk);
  g_assert_cmpuint (cw_list_length (project_of (desk)->waivers), ==, 0);
}

static void
asks_for_a_reason (Desk *desk, gconstpointer data)
{
  const CwProject *before = project_of (desk);
  waive (desk, "  ");
  GtkWindow *dialog = case_open_window (CW_TYPE_FORM_DIALOG);
  g_assert_nonnull (dialog);
  g_assert_true (shows (GTK_WIDGET (dialog), "Say why"));
  g_assert_true (project_of (desk) == before);
  gtk_window_destroy (dialog);
  case_settle ();
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  if (!case_start_toolkit ())
    return 0;
  case_application ();
#define ADD(name, test)                                                       \
  g_test_add ("/check-list/" name, Desk, NULL, lay, test, clear)
  ADD ("tells-the-rest-when-chosen", tells_the_rest_when_chosen);
  ADD ("waives-with-a-reason", waives_with_a_reason);
  ADD ("asks-for-a-reason", asks_for_a_reason);
  return g_test_run ();
}
