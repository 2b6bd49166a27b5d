/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-check-list.h"

#include "cw-checks.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwCheckList
{
  GtkWidget parent;
  CwJob *job;
  GtkWidget *box;         /* GtkListBox */
};

G_DEFINE_FINAL_TYPE (CwCheckList, cw_check_list, GTK_TYPE_WIDGET)

/* (transfer full) */
static char *
place_text (const CwCheck *check, const CwProject *project)
{
  const CwElevation *elevation
      = cw_project_elevation (project, check->elevation_id);
  const char *name = elevation ? elevation->name : check->elevation_id;
  if (check->n_places == 0)
    return g_strdup (name);
  return g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%s, in %u place",
                                       "%s, in %u places", check->n_places),
                          name, check->n_places);
}

static void
append_text (GtkWidget *box, const char *text, const char *style)
{
  GtkWidget *label = gtk_label_new (text);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_add_css_class (label, style);
  gtk_box_append (GTK_BOX (box), label);
}

static GtkWidget *
new_row (const CwCheck *check, const CwProject *project)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  g_autofree char *place
      = check->elevation_id ? place_text (check, project) : NULL;
  if (place)
    append_text (box, place, "cw-accent");
  append_text (box, check->text, "cw-dim");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  cw_widget_set_name (row, check->text);
  g_object_set_data_full (G_OBJECT (row), "elevation",
                          g_strdup (check->elevation_id), g_free);
  return row;
}

/* A wall that is about to be drawn says so in the list of walls. */
static guint
add_rows (CwCheckList *list, const CwTakeoff *takeoff)
{
  guint n = 0;
  g_autoptr (GPtrArray) checks = cw_checks_find (takeoff);
  for (guint i = 0; i < checks->len; i++)
    {
      const CwCheck *check = checks->pdata[i];
      if (check->awaits_drawing)
        continue;
      gtk_list_box_append (GTK_LIST_BOX (list->box),
                           new_row (check, takeoff->project));
      n++;
    }
  return n;
}

static void
refresh (CwCheckList *list)
{
  const CwTakeoff *takeoff = cw_job_takeoff (list->job);
  GtkWidget *row;
  while ((row = gtk_widget_get_first_child (list->box)))
    gtk_list_box_remove (GTK_LIST_BOX (list->box), row);
  gtk_widget_set_visible (GTK_WIDGET (list),
                          takeoff && add_rows (list, takeoff) > 0);
}

static void
activated (CwCheckList *list, GtkListBoxRow *row)
{
  const char *id = g_object_get_data (G_OBJECT (row), "elevation");
  CwDocument *document = cw_job_document (list->job);
  if (id && cw_project_elevation (cw_document_project (document), id))
    cw_document_show_elevation (document, id);
}

void
cw_check_list_set_job (CwCheckList *list, CwJob *job)
{
  g_return_if_fail (CW_IS_CHECK_LIST (list));
  g_return_if_fail (list->job == NULL);
  list->job = g_object_ref (job);
  g_signal_connect_object (cw_job_estimator (job), "takeoff-changed",
                           G_CALLBACK (refresh), list, G_CONNECT_SWAPPED);
  refresh (list);
}

static void
cw_check_list_dispose (GObject *object)
{
  CwCheckList *list = CW_CHECK_LIST (object);
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (list))))
    gtk_widget_unparent (child);
  g_clear_object (&list->job);
  G_OBJECT_CLASS (cw_check_list_parent_class)->dispose (object);
}

static void
cw_check_list_class_init (CwCheckListClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_check_list_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
}

static void
cw_check_list_init (CwCheckList *list)
{
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (list))),
      GTK_ORIENTATION_VERTICAL);
  gtk_widget_set_parent (cw_panel_head_new (_("To look at")),
                         GTK_WIDGET (list));
  list->box = gtk_list_box_new ();
  cw_widget_set_name (list->box, _("To look at"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list->box),
                                   GTK_SELECTION_NONE);
  g_signal_connect_swapped (list->box, "row-activated",
                            G_CALLBACK (activated), list);
  gtk_widget_set_parent (list->box, GTK_WIDGET (list));
}
