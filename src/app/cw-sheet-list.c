/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-list.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-scale-text.h"

struct _CwSheetList
{
  GtkWidget parent;
  CwJob *job;
  GtkWidget *box;         /* GtkListBox */
};

G_DEFINE_FINAL_TYPE (CwSheetList, cw_sheet_list, GTK_TYPE_WIDGET)

static const CwProject *
project_of (CwSheetList *list)
{
  return cw_document_project (cw_job_document (list->job));
}

static void
append_item (GMenu *menu, const char *label, const char *action,
             const char *id)
{
  g_autoptr (GMenuItem) item = g_menu_item_new (label, NULL);
  g_menu_item_set_action_and_target (item, action, "s", id);
  g_menu_append_item (menu, item);
}

static GtkWidget *
new_menu_button (const CwSheet *sheet)
{
  g_autoptr (GMenu) menu = g_menu_new ();
  append_item (menu, _("Trace a _wall on it"), "win.trace-on-sheet",
               sheet->id);
  append_item (menu, _("_Scale…"), "win.sheet-scale", sheet->id);
  append_item (menu, _("_Turn by a quarter"), "win.turn-sheet", sheet->id);
  append_item (menu, _("_Remove"), "win.remove-sheet", sheet->id);
  GtkWidget *button = gtk_menu_button_new ();
  gtk_menu_button_set_icon_name (GTK_MENU_BUTTON (button),
                                 "cw-more-symbolic");
  gtk_menu_button_set_menu_model (GTK_MENU_BUTTON (button),
                                  G_MENU_MODEL (menu));
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  g_autofree char *name
      = g_strdup_printf (_("What to do with sheet %s"), sheet->name);
  gtk_widget_set_tooltip_text (button, name);
  cw_widget_set_name (button, name);
  return button;
}

static GtkWidget *
new_line (GtkWidget *box, const char *text)
{
  GtkWidget *label = gtk_label_new (text);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_box_append (GTK_BOX (box), label);
  return label;
}

static void
add_texts (CwSheetList *list, GtkWidget *line, const CwSheet *sheet)
{
  const char *problem
      = cw_sheet_store_problem (cw_job_sheets (list->job), sheet->id);
  g_autofree char *scale
      = cw_scale_text (sheet, (CwUnits) project_of (list)->units);
  GtkWidget *texts = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  gtk_widget_set_hexpand (texts, TRUE);
  gtk_widget_set_valign (texts, GTK_ALIGN_CENTER);
  gtk_box_append (GTK_BOX (line), texts);
  new_line (texts, *sheet->name ? sheet->name : sheet->file);
  const char *state = problem ? problem : scale ? scale : _("no scale yet");
  GtkWidget *label = new_line (texts, state);
  if (scale && !problem)
    cw_widget_keep_direction (label);
  gtk_widget_add_css_class (label, problem ? "cw-trouble"
                                   : scale ? "cw-dim"
                                           : "cw-accent");
  gtk_widget_set_tooltip_text (texts, problem ? problem : sheet->file);
}

static GtkWidget *
new_row (CwSheetList *list, const CwSheet *sheet)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  add_texts (list, line, sheet);
  gtk_box_append (GTK_BOX (line), new_menu_button (sheet));
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), line);
  cw_widget_set_name (row, *sheet->name ? sheet->name : sheet->file);
  g_object_set_data_full (G_OBJECT (row), "sheet", g_strdup (sheet->id),
                          g_free);
  return row;
}

/* Sheets are few. */
static void
refresh (CwSheetList *list)
{
  GtkWidget *row;
  while ((row = gtk_widget_get_first_child (list->box)))
    gtk_list_box_remove (GTK_LIST_BOX (list->box), row);
  const CwList *sheets = project_of (list)->sheets;
  for (gsize i = 0; i < cw_list_length (sheets); i++)
    gtk_list_box_append (GTK_LIST_BOX (list->box),
                         new_row (list, cw_list_at (sheets, i)));
}

/* Most edits are of walls. */
static void
document_changed (CwSheetList *list)
{
  const CwList *sheets = project_of (list)->sheets;
  if (g_object_get_data (G_OBJECT (list), "shown") == (gpointer) sheets)
    return;
  g_object_set_data_full (G_OBJECT (list), "shown", cw_list_ref (sheets),
                          (GDestroyNotify) cw_list_unref);
  refresh (list);
}

static void
activated (CwSheetList *list, GtkListBoxRow *row)
{
  gtk_widget_activate_action (GTK_WIDGET (list), "win.go-to-sheet", "s",
                              g_object_get_data (G_OBJECT (row), "sheet"));
}

void
cw_sheet_list_set_job (CwSheetList *list, CwJob *job)
{
  g_return_if_fail (CW_IS_SHEET_LIST (list));
  g_return_if_fail (list->job == NULL);
  list->job = g_object_ref (job);
  g_signal_connect_object (cw_job_document (job), "changed",
                           G_CALLBACK (document_changed), list,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_job_sheets (job), "sheet-ready",
                           G_CALLBACK (refresh), list, G_CONNECT_SWAPPED);
  g_signal_connect_object (job, "style-changed", G_CALLBACK (refresh), list,
                           G_CONNECT_SWAPPED);
  document_changed (list);
}

static void
cw_sheet_list_dispose (GObject *object)
{
  CwSheetList *list = CW_SHEET_LIST (object);
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (list))))
    gtk_widget_unparent (child);
  g_clear_object (&list->job);
  G_OBJECT_CLASS (cw_sheet_list_parent_class)->dispose (object);
}

static void
cw_sheet_list_class_init (CwSheetListClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_sheet_list_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
}

static void
cw_sheet_list_init (CwSheetList *list)
{
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (list))),
      GTK_ORIENTATION_VERTICAL);
  GtkWidget *head = cw_panel_head_new (_("Plan sheets"));
  gtk_box_append (GTK_BOX (head),
                  cw_icon_button_new ("cw-add-symbolic",
                                      _("Add a plan sheet"),
                                      "win.add-sheet"));
  gtk_widget_set_parent (head, GTK_WIDGET (list));
  list->box = gtk_list_box_new ();
  cw_widget_set_name (list->box, _("Plan sheets"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list->box),
                                   GTK_SELECTION_NONE);
  g_signal_connect_swapped (list->box, "row-activated",
                            G_CALLBACK (activated), list);
  gtk_widget_set_parent (list->box, GTK_WIDGET (list));
}
