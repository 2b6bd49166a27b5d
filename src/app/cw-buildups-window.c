/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-buildups-window-private.h"

#include "cw-buildup-edits.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

G_DEFINE_FINAL_TYPE (CwBuildupsWindow, cw_buildups_window, GTK_TYPE_WINDOW)

const CwProject *
cw_buildups_window_project (CwBuildupsWindow *window)
{
  return cw_document_project (cw_job_document (window->job));
}

const char *
cw_buildups_window_chosen (CwBuildupsWindow *window)
{
  g_return_val_if_fail (CW_IS_BUILDUPS_WINDOW (window), NULL);
  return window->chosen;
}

CwLayerForm *
cw_buildups_window_form (CwBuildupsWindow *window)
{
  g_return_val_if_fail (CW_IS_BUILDUPS_WINDOW (window), NULL);
  return window->form;
}

CwLayerList *
cw_buildups_window_layers (CwBuildupsWindow *window)
{
  g_return_val_if_fail (CW_IS_BUILDUPS_WINDOW (window), NULL);
  return window->layers;
}

/* "South, North": or that no wall has it. (transfer full) */
static char *
users_text (const CwProject *project, const char *id)
{
  g_autoptr (GPtrArray) users = cw_buildup_users (project, id);
  if (users->len == 0)
    return g_strdup (_("on no wall"));
  GString *text = g_string_new (NULL);
  for (guint i = 0; i < users->len; i++)
    {
      const CwElevation *elevation = users->pdata[i];
      g_string_append_printf (text, "%s%s", i > 0 ? ", " : "",
                              *elevation->name ? elevation->name
                                               : elevation->id);
    }
  return g_string_free (text, FALSE);
}

static GtkWidget *
new_line (const char *text)
{
  GtkWidget *label = gtk_label_new (text);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_lines (GTK_LABEL (label), 2);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  return label;
}

static GtkWidget *
new_row (const CwProject *project, const CwBuildup *buildup)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  const char *name = *buildup->name ? buildup->name : buildup->id;
  g_autofree char *users = users_text (project, buildup->id);
  g_autofree char *spoken = g_strdup_printf ("%s: %s", name, users);
  GtkWidget *below = new_line (users);
  gtk_widget_add_css_class (below, "cw-dim");
  gtk_widget_add_css_class (below, "cw-small");
  gtk_box_append (GTK_BOX (box), new_line (name));
  gtk_box_append (GTK_BOX (box), below);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  cw_widget_set_name (row, spoken);
  return row;
}

/* The chosen buildup, else the first, else NULL. */
static const CwBuildup *
settle_chosen (CwBuildupsWindow *window)
{
  const CwProject *project = cw_buildups_window_project (window);
  const CwBuildup *buildup
      = window->chosen ? cw_project_buildup (project, window->chosen) : NULL;
  if (!buildup && cw_list_length (project->buildups) > 0)
    buildup = cw_list_at (project->buildups, 0);
  g_autofree char *id = g_strdup (buildup ? buildup->id : NULL);
  g_free (window->chosen);
  window->chosen = g_steal_pointer (&id);
  return buildup;
}

static void
show_buildups (CwBuildupsWindow *window)
{
  const CwProject *project = cw_buildups_window_project (window);
  gboolean had_focus = gtk_widget_get_focus_child (window->box) != NULL;
  GtkWidget *row;
  window->showing = TRUE;
  while ((row = gtk_widget_get_first_child (window->box)))
    gtk_list_box_remove (GTK_LIST_BOX (window->box), row);
  for (gsize i = 0; i < cw_list_length (project->buildups); i++)
    {
      const CwBuildup *buildup = cw_list_at (project->buildups, i);
      row = new_row (project, buildup);
      gtk_list_box_append (GTK_LIST_BOX (window->box), row);
      if (g_strcmp0 (buildup->id, window->chosen) != 0)
        continue;
      gtk_list_box_select_row (GTK_LIST_BOX (window->box),
                               GTK_LIST_BOX_ROW (row));
      if (had_focus)
        gtk_widget_grab_focus (row);
    }
  window->showing = FALSE;
}

static void
show_form (CwBuildupsWindow *window)
{
  cw_layer_form_show (window->form, window->chosen,
                      cw_layer_list_chosen (window->layers));
}

static void
refresh (CwBuildupsWindow *window)
{
  const CwBuildup *buildup = settle_chosen (window);
  show_buildups (window);
  cw_layer_list_show (window->layers, buildup);
  show_form (window);
  cw_buildups_window_enable (window);
}

void
cw_buildups_window_choose (CwBuildupsWindow *window, const char *id)
{
  g_return_if_fail (CW_IS_BUILDUPS_WINDOW (window));
  g_autofree char *chosen = g_strdup (id);
  g_free (window->chosen);
  window->chosen = g_steal_pointer (&chosen);
  refresh (window);
}

void
cw_buildups_window_edit (CwBuildupsWindow *window, CwProject *next,
                         const char *name, const char *id)
{
  g_autoptr (CwProject) owned = next;
  g_autofree char *shown = g_strdup (id);
  cw_document_edit (cw_job_document (window->job), owned, name, NULL);
  if (shown)
    cw_buildups_window_choose (window, shown);
}

static void
row_selected (CwBuildupsWindow *window, GtkListBoxRow *row)
{
  if (window->showing || !row)
    return;
  const CwList *buildups = cw_buildups_window_project (window)->buildups;
  const CwBuildup *buildup
      = cw_list_at (buildups, (gsize) gtk_list_box_row_get_index (row));
  g_free (window->chosen);
  window->chosen = g_strdup (buildup->id);
  cw_layer_list_show (window->layers, buildup);
  show_form (window);
  cw_buildups_window_enable (window);
}

static void
layer_wanted (CwBuildupsWindow *window, int slot, int index)
{
  cw_layer_list_choose (window->layers, slot, index);
  show_form (window);
}

static void
cw_buildups_window_dispose (GObject *object)
{
  CwBuildupsWindow *window = CW_BUILDUPS_WINDOW (object);
  window->showing = TRUE;
  g_clear_object (&window->actions);
  g_clear_object (&window->main_actions);
  g_clear_pointer (&window->chosen, g_free);
  G_OBJECT_CLASS (cw_buildups_window_parent_class)->dispose (object);
  g_clear_object (&window->job);
}

static void
cw_buildups_window_class_init (CwBuildupsWindowClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_buildups_window_dispose;
  gtk_widget_class_add_binding_action (GTK_WIDGET_CLASS (class),
                                       GDK_KEY_Escape, 0, "window.close",
                                       NULL);
}

static GtkWidget *
new_scroller (GtkWidget *child)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller),
                                  GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), child);
  gtk_widget_set_vexpand (scroller, TRUE);
  return scroller;
}

static GtkWidget *
new_lists (CwBuildupsWindow *window)
{
  GtkWidget *side = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *lists = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *head = cw_panel_head_new (_("Buildups"));
  gtk_box_append (GTK_BOX (head),
                  cw_icon_menu_button_new ("cw-add-symbolic",
                                           _("Add a buildup"),
                                           "buildup-add-menu"));
  gtk_box_append (GTK_BOX (head),
                  cw_icon_menu_button_new ("cw-more-symbolic",
                                           _("Change this buildup"),
                                           "buildup-menu"));
  window->box = gtk_list_box_new ();
  cw_widget_set_name (window->box, _("Buildups"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (window->box),
                                   GTK_SELECTION_BROWSE);
  g_signal_connect_swapped (window->box, "row-selected",
                            G_CALLBACK (row_selected), window);
  window->layers = CW_LAYER_LIST (cw_layer_list_new ());
  g_signal_connect_swapped (window->layers, "layer-chosen",
                            G_CALLBACK (show_form), window);
  gtk_box_append (GTK_BOX (side), head);
  gtk_box_append (GTK_BOX (lists), window->box);
  gtk_box_append (GTK_BOX (lists),
                  cw_panel_head_new (_("Layers, from the studs outward")));
  gtk_box_append (GTK_BOX (lists), GTK_WIDGET (window->layers));
  gtk_box_append (GTK_BOX (side), new_scroller (lists));
  gtk_widget_set_size_request (side, 240, -1);
  return side;
}

static void
build (CwBuildupsWindow *window)
{
  GtkWidget *paned = gtk_paned_new (GTK_ORIENTATION_HORIZONTAL);
  GtkWidget *bar = gtk_header_bar_new ();
  GtkWidget *undo = cw_icon_button_new ("cw-undo-symbolic", _("Undo"),
                                        "win.undo");
  GtkWidget *redo = cw_icon_button_new ("cw-redo-symbolic", _("Redo"),
                                        "win.redo");
  gtk_header_bar_pack_start (GTK_HEADER_BAR (bar), undo);
  gtk_header_bar_pack_start (GTK_HEADER_BAR (bar), redo);
  gtk_window_set_titlebar (GTK_WINDOW (window), bar);
  window->form = CW_LAYER_FORM (cw_layer_form_new (window->job));
  g_signal_connect_swapped (window->form, "layer-wanted",
                            G_CALLBACK (layer_wanted), window);
  GtkWidget *paper = new_scroller (GTK_WIDGET (window->form));
  gtk_widget_add_css_class (paper, "cw-paper");
  gtk_widget_set_size_request (paper, 360, -1);
  gtk_paned_set_start_child (GTK_PANED (paned), new_lists (window));
  gtk_paned_set_end_child (GTK_PANED (paned), paper);
  gtk_paned_set_resize_start_child (GTK_PANED (paned), FALSE);
  gtk_paned_set_shrink_start_child (GTK_PANED (paned), FALSE);
  gtk_paned_set_shrink_end_child (GTK_PANED (paned), FALSE);
  gtk_paned_set_position (GTK_PANED (paned), 300);
  gtk_window_set_child (GTK_WINDOW (window), paned);
}

static void
cw_buildups_window_init (CwBuildupsWindow *window)
{
  gtk_window_set_title (GTK_WINDOW (window), _("Buildups"));
  gtk_window_set_default_size (GTK_WINDOW (window), 920, 720);
}

CwBuildupsWindow *
cw_buildups_window_new (GtkWindow *parent, CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  CwBuildupsWindow *window = g_object_new (
      CW_TYPE_BUILDUPS_WINDOW, "transient-for", parent, "application",
      gtk_window_get_application (parent), "destroy-with-parent", TRUE, NULL);
  window->job = g_object_ref (job);
  cw_buildups_window_add_actions (window);
  build (window);
  g_signal_connect_object (cw_job_document (job), "changed",
                           G_CALLBACK (refresh), window, G_CONNECT_SWAPPED);
  refresh (window);
  return window;
}
