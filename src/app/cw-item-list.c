/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-item-list.h"

#include "cw-i18n.h"
#include "cw-item-words.h"
#include "cw-panel-head.h"
#include "cw-settings.h"

struct _CwItemList
{
  GtkWidget parent;
  CwJob *job;
  GtkWidget *expander, *box;
  CwWall *wall;           /* (nullable): as it is listed */
  char *ids;              /* of the rows, in order */
  gboolean showing;       /* rows are being made: nobody chooses */
  guint idle;
};

G_DEFINE_FINAL_TYPE (CwItemList, cw_item_list, GTK_TYPE_WIDGET)

static const char *
row_id (GtkListBoxRow *row)
{
  return g_object_get_data (G_OBJECT (row), "cw-id");
}

static GtkListBoxRow *
row_at (CwItemList *list, int index)
{
  return gtk_list_box_get_row_at_index (GTK_LIST_BOX (list->box), index);
}

static GtkWidget *
new_line (const char *style)
{
  GtkWidget *label = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  if (style)
    gtk_widget_add_css_class (label, style);
  return label;
}

static void
add_row (CwItemList *list, const char *id)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *lines = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  gtk_box_append (GTK_BOX (lines), new_line (NULL));
  gtk_box_append (GTK_BOX (lines), new_line ("cw-dim"));
  cw_widget_keep_direction (gtk_widget_get_last_child (lines));
  gtk_widget_add_css_class (gtk_widget_get_last_child (lines), "cw-figure");
  gtk_widget_add_css_class (gtk_widget_get_last_child (lines), "cw-small");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), lines);
  g_object_set_data_full (G_OBJECT (row), "cw-id", g_strdup (id), g_free);
  gtk_list_box_append (GTK_LIST_BOX (list->box), row);
}

static void
fill_row (CwItemList *list, GtkListBoxRow *row)
{
  g_autofree char *name = cw_item_name (list->wall, row_id (row));
  g_autofree char *size
      = cw_item_size (list->wall, row_id (row), cw_job_style (list->job));
  g_autofree char *both
      = g_strdup_printf ("%s: %s", name, size ? size : _("no size yet"));
  GtkWidget *lines = gtk_list_box_row_get_child (row);
  gtk_label_set_text (GTK_LABEL (gtk_widget_get_first_child (lines)), name);
  gtk_label_set_text (GTK_LABEL (gtk_widget_get_last_child (lines)),
                      size ? size : _("no size yet"));
  cw_widget_set_name (GTK_WIDGET (row), both);
}

/* The wall itself, then what is on it. (transfer full) */
static char *
ids_of (const CwWall *wall)
{
  GString *ids = g_string_new (NULL);
  if (!wall)
    return g_string_free (ids, FALSE);
  g_string_append (ids, wall->elevation->id);
  for (gsize i = 0; i < cw_list_length (wall->elevation->items); i++)
    g_string_append_printf (
        ids, "\n%s", cw_node_id (cw_list_at (wall->elevation->items, i)));
  return g_string_free (ids, FALSE);
}

static void
remake_rows (CwItemList *list)
{
  g_auto (GStrv) ids = g_strsplit (list->ids, "\n", -1);
  GtkListBoxRow *row;
  while ((row = row_at (list, 0)))
    gtk_list_box_remove (GTK_LIST_BOX (list->box), GTK_WIDGET (row));
  for (guint i = 0; ids[i]; i++)
    add_row (list, ids[i]);
}

static void
show_selection (CwItemList *list)
{
  CwDocument *document = cw_job_document (list->job);
  GtkListBoxRow *row;
  for (int i = 0; (row = row_at (list, i)); i++)
    {
      gboolean chosen = cw_document_is_selected (document, row_id (row));
      if (chosen == gtk_list_box_row_is_selected (row))
        continue;
      if (chosen)
        gtk_list_box_select_row (GTK_LIST_BOX (list->box), row);
      else
        gtk_list_box_unselect_row (GTK_LIST_BOX (list->box), row);
    }
}

static void
renew_wall (CwItemList *list)
{
  CwDocument *document = cw_job_document (list->job);
  const CwProject *project = cw_document_project (document);
  const char *id = cw_document_elevation_id (document);
  const CwElevation *elevation
      = id ? cw_project_elevation (project, id) : NULL;
  CwWall *former = list->wall;
  list->wall = elevation ? cw_wall_renew (former, project, elevation) : NULL;
  g_clear_pointer (&former, cw_wall_unref);
}

static void
refresh (CwItemList *list)
{
  GtkListBoxRow *row;
  renew_wall (list);
  g_autofree char *ids = ids_of (list->wall);
  list->showing = TRUE;
  if (g_strcmp0 (ids, list->ids) != 0)
    {
      g_free (list->ids);
      list->ids = g_steal_pointer (&ids);
      remake_rows (list);
    }
  for (int i = 0; (row = row_at (list, i)); i++)
    fill_row (list, row);
  show_selection (list);
  list->showing = FALSE;
}

static gboolean
refresh_later (gpointer data)
{
  CwItemList *list = data;
  list->idle = 0;
  refresh (list);
  return G_SOURCE_REMOVE;
}

/* A drag changes the project with every step: once a turn is enough, and
 * folded up nothing is to be seen. */
static void
changed (CwItemList *list)
{
  if (!list->idle
      && gtk_expander_get_expanded (GTK_EXPANDER (list->expander)))
    list->idle = g_idle_add (refresh_later, list);
}

static void
unfolded (CwItemList *list)
{
  cw_settings_set_flag (
      "show-contents",
      gtk_expander_get_expanded (GTK_EXPANDER (list->expander)));
  changed (list);
}

static void
chosen (CwItemList *list)
{
  if (list->showing)
    return;
  g_autoptr (GList) rows
      = gtk_list_box_get_selected_rows (GTK_LIST_BOX (list->box));
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();
  for (GList *l = rows; l; l = l->next)
    g_ptr_array_add (ids, (gpointer) row_id (l->data));
  g_ptr_array_add (ids, NULL);
  cw_document_select (cw_job_document (list->job),
                      (const char *const *) ids->pdata);
}

void
cw_item_list_enter (CwItemList *list)
{
  g_return_if_fail (CW_IS_ITEM_LIST (list));
  gtk_expander_set_expanded (GTK_EXPANDER (list->expander), TRUE);
  refresh (list);
  g_autoptr (GList) rows
      = gtk_list_box_get_selected_rows (GTK_LIST_BOX (list->box));
  GtkListBoxRow *row = rows ? rows->data : row_at (list, 0);
  gtk_widget_grab_focus (row ? GTK_WIDGET (row) : list->expander);
}

static void
follow (CwItemList *list, gpointer source, const char *signal)
{
  g_signal_connect_object (source, signal, G_CALLBACK (changed), list,
                           G_CONNECT_SWAPPED);
}

void
cw_item_list_set_job (CwItemList *list, CwJob *job)
{
  g_return_if_fail (CW_IS_ITEM_LIST (list));
  g_return_if_fail (list->job == NULL);
  list->job = g_object_ref (job);
  follow (list, cw_job_document (job), "changed");
  follow (list, cw_job_document (job), "selection-changed");
  follow (list, job, "style-changed");
  changed (list);
}

static void
cw_item_list_dispose (GObject *object)
{
  CwItemList *list = CW_ITEM_LIST (object);
  list->showing = TRUE;
  g_clear_handle_id (&list->idle, g_source_remove);
  g_clear_pointer (&list->expander, gtk_widget_unparent);
  g_clear_pointer (&list->wall, cw_wall_unref);
  g_clear_pointer (&list->ids, g_free);
  g_clear_object (&list->job);
  G_OBJECT_CLASS (cw_item_list_parent_class)->dispose (object);
}

static void
cw_item_list_class_init (CwItemListClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_item_list_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BIN_LAYOUT);
}

static void
cw_item_list_init (CwItemList *list)
{
  GtkWidget *title = gtk_label_new (_("On this wall"));
  gtk_widget_add_css_class (title, "cw-heading");
  list->expander = gtk_expander_new (NULL);
  gtk_expander_set_label_widget (GTK_EXPANDER (list->expander), title);
  gtk_widget_add_css_class (list->expander, "cw-item-list");
  gtk_expander_set_expanded (GTK_EXPANDER (list->expander),
                             cw_settings_get_flag ("show-contents", FALSE));
  cw_widget_set_name (list->expander, _("On this wall"));
  g_signal_connect_swapped (list->expander, "notify::expanded",
                            G_CALLBACK (unfolded), list);
  list->box = gtk_list_box_new ();
  cw_widget_set_name (list->box, _("On this wall"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list->box),
                                   GTK_SELECTION_MULTIPLE);
  g_signal_connect_swapped (list->box, "selected-rows-changed",
                            G_CALLBACK (chosen), list);
  gtk_expander_set_child (GTK_EXPANDER (list->expander), list->box);
  gtk_widget_set_parent (list->expander, GTK_WIDGET (list));
}
