/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-elevation-list.h"

#include "cw-elevation-row.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwElevationList
{
  GtkWidget parent;
  CwJob *job;
  GtkWidget *box;         /* GtkListBox */
  char *ids;              /* of the rows that stand there */
  gboolean showing;
};

G_DEFINE_FINAL_TYPE (CwElevationList, cw_elevation_list, GTK_TYPE_WIDGET)

static CwDocument *
document_of (CwElevationList *list)
{
  return cw_job_document (list->job);
}

static void
chosen (CwElevationList *list, GtkListBoxRow *row)
{
  if (row && !list->showing)
    cw_document_show_elevation (
        document_of (list), cw_elevation_row_id (CW_ELEVATION_ROW (row)));
}

static char *
ids_now (const CwProject *project)
{
  GString *ids = g_string_new (NULL);
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    g_string_append_printf (
        ids, "%s ", cw_node_id (cw_list_at (project->elevations, i)));
  return g_string_free (ids, FALSE);
}

static void
remake_rows (CwElevationList *list, const CwProject *project)
{
  GtkWidget *row;
  while ((row = gtk_widget_get_first_child (list->box)))
    gtk_list_box_remove (GTK_LIST_BOX (list->box), row);
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    gtk_list_box_append (
        GTK_LIST_BOX (list->box),
        cw_elevation_row_new (
            cw_node_id (cw_list_at (project->elevations, i))));
}

static void
refresh_row (CwElevationList *list, GtkListBoxRow *row)
{
  const char *shown = cw_document_elevation_id (document_of (list));
  cw_elevation_row_refresh (CW_ELEVATION_ROW (row), list->job);
  if (g_strcmp0 (cw_elevation_row_id (CW_ELEVATION_ROW (row)), shown) == 0)
    gtk_list_box_select_row (GTK_LIST_BOX (list->box), row);
}

static void
refresh (CwElevationList *list)
{
  const CwProject *project = cw_document_project (document_of (list));
  g_autofree char *ids = ids_now (project);
  list->showing = TRUE;
  if (g_strcmp0 (ids, list->ids) != 0)
    {
      g_free (list->ids);
      list->ids = g_steal_pointer (&ids);
      remake_rows (list, project);
    }
  for (int i = 0;; i++)
    {
      GtkListBoxRow *row
          = gtk_list_box_get_row_at_index (GTK_LIST_BOX (list->box), i);
      if (!row)
        break;
      refresh_row (list, row);
    }
  list->showing = FALSE;
}

static void
follow (CwElevationList *list, gpointer source, const char *signal)
{
  g_signal_connect_object (source, signal, G_CALLBACK (refresh), list,
                           G_CONNECT_SWAPPED);
}

void
cw_elevation_list_set_job (CwElevationList *list, CwJob *job)
{
  g_return_if_fail (CW_IS_ELEVATION_LIST (list));
  g_return_if_fail (list->job == NULL);
  list->job = g_object_ref (job);
  follow (list, cw_job_document (job), "changed");
  follow (list, cw_job_document (job), "selection-changed");
  follow (list, cw_job_estimator (job), "takeoff-changed");
  follow (list, job, "style-changed");
  refresh (list);
}

static void
cw_elevation_list_dispose (GObject *object)
{
  CwElevationList *list = CW_ELEVATION_LIST (object);
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (list))))
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (cw_elevation_list_parent_class)->dispose (object);
}

static void
cw_elevation_list_finalize (GObject *object)
{
  CwElevationList *list = CW_ELEVATION_LIST (object);
  g_clear_object (&list->job);
  g_free (list->ids);
  G_OBJECT_CLASS (cw_elevation_list_parent_class)->finalize (object);
}

static void
cw_elevation_list_class_init (CwElevationListClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_elevation_list_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_elevation_list_finalize;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
}

static GtkWidget *
new_placeholder (void)
{
  GtkWidget *label = gtk_label_new (
      _("No wall yet. Trace one on the sheet, or type its size."));
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, "cw-dim");
  gtk_widget_add_css_class (label, "cw-placeholder");
  return label;
}

static void
cw_elevation_list_init (CwElevationList *list)
{
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (list))),
      GTK_ORIENTATION_VERTICAL);
  GtkWidget *head = cw_panel_head_new (_("Walls"));
  gtk_box_append (GTK_BOX (head),
                  cw_icon_button_new ("cw-add-symbolic", _("Add a wall"),
                                      "win.add-wall"));
  gtk_box_append (GTK_BOX (head),
                  cw_icon_menu_button_new ("cw-more-symbolic",
                                           _("Change the list of walls"),
                                           "wall-menu"));
  gtk_widget_set_parent (head, GTK_WIDGET (list));

  list->box = gtk_list_box_new ();
  cw_widget_set_name (list->box, _("Walls"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list->box),
                                   GTK_SELECTION_BROWSE);
  gtk_list_box_set_placeholder (GTK_LIST_BOX (list->box),
                                new_placeholder ());
  g_signal_connect_swapped (list->box, "row-selected", G_CALLBACK (chosen),
                            list);
  gtk_widget_set_parent (list->box, GTK_WIDGET (list));
}
