/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-mark-list.h"

#include "cw-dragged-mark.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwMarkList
{
  GtkWidget parent;
  CwJob *job;
  GtkWidget *box;           /* GtkListBox */
  CwList *marks;            /* (nullable): that the rows were made of */
};

G_DEFINE_FINAL_TYPE (CwMarkList, cw_mark_list, GTK_TYPE_WIDGET)

static const CwProject *
project_of (CwMarkList *list)
{
  return cw_document_project (cw_job_document (list->job));
}

static const char *
row_mark (GtkWidget *row)
{
  return g_object_get_data (G_OBJECT (row), "mark");
}

/* ------------------------------------------------------------------- texts */

static void
count_openings (const CwElevation *elevation, GHashTable *counts)
{
  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      const CwNode *item = cw_list_at (elevation->items, i);
      if (!cw_node_is_opening (item))
        continue;
      char *mark = ((const CwOpening *) item)->mark;
      const guint n
          = GPOINTER_TO_UINT (g_hash_table_lookup (counts, mark)) + 1;
      g_hash_table_insert (counts, mark, GUINT_TO_POINTER (n));
    }
}

/* Openings by their marks, of every wall once however often it is built. */
static GHashTable *
count_marks (const CwProject *project)
{
  GHashTable *counts = g_hash_table_new (g_str_hash, g_str_equal);
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    count_openings (cw_list_at (project->elevations, i), counts);
  return counts;
}

static char *
size_text (CwMarkList *list, const CwMark *mark)
{
  const CwTextStyle *style = cw_job_style (list->job);
  g_autofree char *width = cw_length_format (mark->width, style);
  g_autofree char *height = cw_length_format (mark->height, style);
  return g_strdup_printf ("%s × %s", width, height);
}

/* What a screen reader says of a row. */
static char *
spoken_text (const CwMark *mark, const char *size, guint n)
{
  static const char *const kinds[] = { [CW_OPENING_WINDOW] = N_("window"),
                                       [CW_OPENING_DOOR] = N_("door"),
                                       [CW_OPENING_ARCH] = N_("arch") };
  /* Translators: name, kind, width × height, how many are on the walls. */
  return g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%s: %s %s, %u placed",
                                       "%s: %s %s, %u placed", n),
                          mark->name, _(kinds[mark->kind]), size, n);
}

static void
refresh_row (CwMarkList *list, GtkWidget *row, GHashTable *counts)
{
  const CwMark *mark = cw_project_mark (project_of (list), row_mark (row));
  if (!mark)
    return;
  const guint n = GPOINTER_TO_UINT (g_hash_table_lookup (counts, mark->id));
  g_autofree char *size = size_text (list, mark);
  g_autofree char *spoken = spoken_text (mark, size, n);
  g_autofree char *placed = g_strdup_printf ("× %u", n);
  gtk_label_set_text (g_object_get_data (G_OBJECT (row), "size"), size);
  gtk_label_set_text (g_object_get_data (G_OBJECT (row), "placed"), placed);
  cw_widget_set_name (row, spoken);
}

static void
refresh_rows (CwMarkList *list)
{
  g_autoptr (GHashTable) counts = count_marks (project_of (list));
  for (GtkWidget *row = gtk_widget_get_first_child (list->box); row;
       row = gtk_widget_get_next_sibling (row))
    refresh_row (list, row, counts);
}

/* -------------------------------------------------------------------- rows */

static GdkContentProvider *
give_mark (GtkDragSource *source, double x, double y, GtkWidget *row)
{
  g_autoptr (CwDraggedMark) mark = cw_dragged_mark_new (row_mark (row));
  return gdk_content_provider_new_typed (CW_TYPE_DRAGGED_MARK, mark);
}

/* Just the name, beside the pointer: the board shows where it would fall. */
static void
begin_drag (GtkDragSource *source, GdkDrag *drag, GtkWidget *row)
{
  GtkWidget *name = gtk_label_new (
      gtk_label_get_text (g_object_get_data (G_OBJECT (row), "name")));
  gtk_widget_add_css_class (name, "cw-carried");
  gtk_drag_icon_set_child (GTK_DRAG_ICON (gtk_drag_icon_get_for_drag (drag)),
                           name);
  gdk_drag_set_hotspot (drag, -12, -12);
}

static void
make_draggable (GtkWidget *row)
{
  GtkDragSource *source = gtk_drag_source_new ();
  gtk_drag_source_set_actions (source, GDK_ACTION_COPY);
  g_signal_connect_object (source, "prepare", G_CALLBACK (give_mark), row, 0);
  g_signal_connect_object (source, "drag-begin", G_CALLBACK (begin_drag), row,
                           0);
  gtk_widget_add_controller (row, GTK_EVENT_CONTROLLER (source));
}

static GtkWidget *
new_label (GtkWidget *line, const char *text)
{
  GtkWidget *label = gtk_label_new (text);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_box_append (GTK_BOX (line), label);
  return label;
}

static GtkWidget *
new_row (const CwMark *mark)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *name = new_label (line, *mark->name ? mark->name : mark->id);
  GtkWidget *size = new_label (line, ""), *placed = new_label (line, "");
  gtk_widget_set_hexpand (size, TRUE);
  gtk_widget_add_css_class (size, "cw-dim");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), line);
  gtk_widget_set_tooltip_text (row, _("Drag it onto the wall, or press Enter "
                                      "to place one in the middle"));
  g_object_set_data_full (G_OBJECT (row), "mark", g_strdup (mark->id),
                          g_free);
  g_object_set_data (G_OBJECT (row), "name", name);
  g_object_set_data (G_OBJECT (row), "size", size);
  g_object_set_data (G_OBJECT (row), "placed", placed);
  make_draggable (row);
  return row;
}

static void
rebuild (CwMarkList *list)
{
  GtkWidget *row;
  while ((row = gtk_widget_get_first_child (list->box)))
    gtk_list_box_remove (GTK_LIST_BOX (list->box), row);
  for (gsize i = 0; i < cw_list_length (list->marks); i++)
    gtk_list_box_append (GTK_LIST_BOX (list->box),
                         new_row (cw_list_at (list->marks, i)));
  gtk_widget_set_visible (GTK_WIDGET (list),
                          cw_list_length (list->marks) > 0);
}

static void
document_changed (CwMarkList *list)
{
  CwList *marks = project_of (list)->marks;
  if (marks != list->marks)
    {
      g_clear_pointer (&list->marks, cw_list_unref);
      list->marks = marks ? cw_list_ref (marks) : NULL;
      rebuild (list);
    }
  refresh_rows (list);
}

static void
activated (CwMarkList *list, GtkListBoxRow *row)
{
  gtk_widget_activate_action (GTK_WIDGET (list), "win.place-mark", "s",
                              row_mark (GTK_WIDGET (row)));
}

void
cw_mark_list_set_job (CwMarkList *list, CwJob *job)
{
  g_return_if_fail (CW_IS_MARK_LIST (list));
  g_return_if_fail (list->job == NULL);
  list->job = g_object_ref (job);
  g_signal_connect_object (cw_job_document (job), "changed",
                           G_CALLBACK (document_changed), list,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (job, "style-changed", G_CALLBACK (refresh_rows),
                           list, G_CONNECT_SWAPPED);
  document_changed (list);
}

static void
cw_mark_list_dispose (GObject *object)
{
  CwMarkList *list = CW_MARK_LIST (object);
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (list))))
    gtk_widget_unparent (child);
  g_clear_pointer (&list->marks, cw_list_unref);
  g_clear_object (&list->job);
  G_OBJECT_CLASS (cw_mark_list_parent_class)->dispose (object);
}

static void
cw_mark_list_class_init (CwMarkListClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_mark_list_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
}

static void
cw_mark_list_init (CwMarkList *list)
{
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (list))),
      GTK_ORIENTATION_VERTICAL);
  gtk_widget_set_parent (cw_panel_head_new (_("Opening schedule")),
                         GTK_WIDGET (list));
  list->box = gtk_list_box_new ();
  cw_widget_set_name (list->box, _("Opening schedule"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list->box),
                                   GTK_SELECTION_NONE);
  gtk_list_box_set_activate_on_single_click (GTK_LIST_BOX (list->box),
                                             FALSE);
  g_signal_connect_swapped (list->box, "row-activated",
                            G_CALLBACK (activated), list);
  gtk_widget_set_parent (list->box, GTK_WIDGET (list));
}
