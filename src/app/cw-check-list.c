/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-check-list.h"

#include "cw-check-row.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-waiver-dialog.h"
#include "cw-waiver-edits.h"

struct _CwCheckList
{
  GtkWidget parent;
  CwJob *job;
  CwChecker *checker;
  GtkWidget *box;         /* GtkListBox */
  GPtrArray *shown;       /* CwCheck: what the rows borrow from */
  char *signature;        /* of the rows that stand there */
  char *chosen;           /* key of the row that is chosen, or NULL */
  gboolean is_filling;
};

G_DEFINE_FINAL_TYPE (CwCheckList, cw_check_list, GTK_TYPE_WIDGET)

enum { CHOSEN, N_SIGNALS };
static guint signals[N_SIGNALS];

/* Which check it is, whatever its numbers. (transfer full) */
static char *
key_of (const CwCheck *check)
{
  return g_strdup_printf ("%s %s %s", check->type->code,
                          check->elevation_id ? check->elevation_id : "",
                          check->item);
}

/* Changes when a row has to look otherwise. (transfer full) */
static char *
signature_of (const GPtrArray *checks)
{
  GString *signature = g_string_new (NULL);
  for (guint i = 0; i < checks->len; i++)
    {
      const CwCheck *check = checks->pdata[i];
      g_autofree char *key = key_of (check);
      g_string_append_printf (signature, "%s|%s|%u|%s|%d\n", key, check->text,
                              check->places->len,
                              check->waiver ? check->waiver->reason : "",
                              check->is_changed);
    }
  return g_string_free (signature, FALSE);
}

static void
take_back (CwCheckList *list, const CwCheck *check)
{
  CwDocument *document = cw_job_document (list->job);
  const CwProject *project = cw_document_project (document);
  const CwWaiver *waiver = cw_check_waiver (check, project);
  if (!waiver)
    return;
  g_autoptr (CwProject) next = cw_edit_take_waiver_back (project, waiver);
  cw_document_edit (document, next, _("Take a waiver back"), NULL);
}

static void
waive (CwCheckList *list, CwCheckRow *row)
{
  const CwCheck *check = cw_check_row_check (row);
  if (check->waiver)
    take_back (list, check);
  else
    cw_waiver_dialog_show (
        GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (list))), list->job,
        check);
}

/* A wall that is about to be drawn says so in the list of walls. */
static void
add_rows (CwCheckList *list)
{
  const CwProject *project
      = cw_document_project (cw_job_document (list->job));
  for (guint i = 0; i < list->shown->len; i++)
    {
      const CwCheck *check = list->shown->pdata[i];
      if (cw_check_awaits_drawing (check))
        continue;
      GtkWidget *row = cw_check_row_new (check, project);
      g_autofree char *key = key_of (check);
      g_signal_connect_object (row, "waive", G_CALLBACK (waive), list,
                               G_CONNECT_SWAPPED);
      gtk_list_box_append (GTK_LIST_BOX (list->box), row);
      if (g_strcmp0 (key, list->chosen) == 0)
        gtk_list_box_select_row (GTK_LIST_BOX (list->box),
                                 GTK_LIST_BOX_ROW (row));
    }
}

static void
fill (CwCheckList *list)
{
  GtkListBoxRow *row;
  list->is_filling = TRUE;
  while ((row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (list->box), 0)))
    gtk_list_box_remove (GTK_LIST_BOX (list->box), GTK_WIDGET (row));
  g_ptr_array_unref (list->shown);
  list->shown = g_ptr_array_ref (cw_checker_checks (list->checker));
  add_rows (list);
  list->is_filling = FALSE;
  gtk_widget_set_visible (
      GTK_WIDGET (list),
      gtk_list_box_get_row_at_index (GTK_LIST_BOX (list->box), 0) != NULL);
}

/* The geometry may be another although the words are the same. */
static void
tell_chosen (CwCheckList *list)
{
  const CwCheck *found = NULL;
  GPtrArray *checks = cw_checker_checks (list->checker);
  for (guint i = 0; list->chosen && i < checks->len; i++)
    {
      g_autofree char *key = key_of (checks->pdata[i]);
      if (g_strcmp0 (key, list->chosen) == 0)
        found = checks->pdata[i];
    }
  g_signal_emit (list, signals[CHOSEN], 0, found);
}

static void
refresh (CwCheckList *list)
{
  g_autofree char *signature
      = signature_of (cw_checker_checks (list->checker));
  if (g_strcmp0 (signature, list->signature) != 0)
    {
      g_free (list->signature);
      list->signature = g_steal_pointer (&signature);
      fill (list);
    }
  if (list->chosen)
    tell_chosen (list);
}

/* The opening, stub-out or area that the check names on its wall. */
static void
select_item (CwCheckList *list, const CwCheck *check)
{
  CwDocument *document = cw_job_document (list->job);
  const CwElevation *elevation = cw_project_elevation (
      cw_document_project (document), check->elevation_id);
  g_auto (GStrv) ids = g_strsplit (check->item, "+", -1);
  if (!elevation)
    return;
  for (guint i = 0; ids[i]; i++)
    if (!*ids[i] || !cw_node_find (&elevation->node, ids[i]))
      return;
  cw_document_select (document, (const char *const *) ids);
}

static void
row_selected (CwCheckList *list, GtkListBoxRow *row)
{
  if (list->is_filling)
    return;
  g_clear_pointer (&list->chosen, g_free);
  if (row)
    list->chosen = key_of (cw_check_row_check (CW_CHECK_ROW (row)));
  tell_chosen (list);
}

static void
row_activated (CwCheckList *list, GtkListBoxRow *row)
{
  const CwCheck *check = cw_check_row_check (CW_CHECK_ROW (row));
  CwDocument *document = cw_job_document (list->job);
  if (check->elevation_id
      && cw_project_elevation (cw_document_project (document),
                               check->elevation_id))
    {
      cw_document_show_elevation (document, check->elevation_id);
      select_item (list, check);
    }
  /* Its wall was perhaps not the one that stood there. */
  g_signal_emit (list, signals[CHOSEN], 0, NULL);
  tell_chosen (list);
}

static CwCheckSeverity
severity_of (GtkListBoxRow *row)
{
  return cw_check_row_check (CW_CHECK_ROW (row))->type->severity;
}

static void
add_header (GtkListBoxRow *row, GtkListBoxRow *before, gpointer data)
{
  static const char *const titles[]
      = { N_ ("Errors"), N_ ("Warnings"), N_ ("Notes") };
  if (before && severity_of (before) == severity_of (row))
    {
      gtk_list_box_row_set_header (row, NULL);
      return;
    }
  GtkWidget *label = gtk_label_new (_(titles[severity_of (row)]));
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, "cw-heading");
  gtk_widget_add_css_class (label, "cw-group");
  gtk_list_box_row_set_header (row, label);
}

GtkListBoxRow *
cw_check_list_row (CwCheckList *list, const char *code)
{
  g_return_val_if_fail (CW_IS_CHECK_LIST (list), NULL);
  GtkListBoxRow *row;
  for (int i = 0; (row = gtk_list_box_get_row_at_index (
                       GTK_LIST_BOX (list->box), i));
       i++)
    if (g_str_equal (cw_check_row_check (CW_CHECK_ROW (row))->type->code,
                     code))
      return row;
  return NULL;
}

void
cw_check_list_set_job (CwCheckList *list, CwJob *job, CwChecker *checker)
{
  g_return_if_fail (CW_IS_CHECK_LIST (list));
  g_return_if_fail (list->job == NULL);
  list->job = g_object_ref (job);
  list->checker = g_object_ref (checker);
  g_signal_connect_object (checker, "changed", G_CALLBACK (refresh), list,
                           G_CONNECT_SWAPPED);
  refresh (list);
}

static void
cw_check_list_dispose (GObject *object)
{
  CwCheckList *list = CW_CHECK_LIST (object);
  GtkWidget *child;
  list->is_filling = TRUE;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (list))))
    gtk_widget_unparent (child);
  g_clear_object (&list->checker);
  g_clear_object (&list->job);
  G_OBJECT_CLASS (cw_check_list_parent_class)->dispose (object);
}

static void
cw_check_list_finalize (GObject *object)
{
  CwCheckList *list = CW_CHECK_LIST (object);
  g_ptr_array_unref (list->shown);
  g_free (list->signature);
  g_free (list->chosen);
  G_OBJECT_CLASS (cw_check_list_parent_class)->finalize (object);
}

static void
cw_check_list_class_init (CwCheckListClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_check_list_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_check_list_finalize;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
  signals[CHOSEN] = g_signal_new ("chosen", CW_TYPE_CHECK_LIST,
                                  G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                  G_TYPE_NONE, 1, G_TYPE_POINTER);
}

static void
cw_check_list_init (CwCheckList *list)
{
  list->shown = g_ptr_array_new ();
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (list))),
      GTK_ORIENTATION_VERTICAL);
  gtk_widget_set_parent (cw_panel_head_new (_("To look at")),
                         GTK_WIDGET (list));
  list->box = gtk_list_box_new ();
  cw_widget_set_name (list->box, _("To look at"));
  gtk_list_box_set_header_func (GTK_LIST_BOX (list->box), add_header, NULL,
                                NULL);
  g_signal_connect_swapped (list->box, "row-selected",
                            G_CALLBACK (row_selected), list);
  g_signal_connect_swapped (list->box, "row-activated",
                            G_CALLBACK (row_activated), list);
  gtk_widget_set_parent (list->box, GTK_WIDGET (list));
}
