/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-window-private.h"

#include "cw-history-button.h"
#include "cw-look.h"
#include "cw-panel-head.h"
#include "cw-recent.h"
#include "cw-start-page.h"

G_DEFINE_FINAL_TYPE (CwWindow, cw_window, GTK_TYPE_APPLICATION_WINDOW)

CwJob *
cw_window_job (CwWindow *window)
{
  g_return_val_if_fail (CW_IS_WINDOW (window), NULL);
  return window->job;
}

CwWallsPlace *
cw_window_walls (CwWindow *window)
{
  g_return_val_if_fail (CW_IS_WINDOW (window), NULL);
  return window->walls;
}

CwPanelsPlace *
cw_window_panels (CwWindow *window)
{
  g_return_val_if_fail (CW_IS_WINDOW (window), NULL);
  return window->panels;
}

CwBoard *
cw_window_board (CwWindow *window)
{
  return cw_walls_place_board (window->walls);
}

CwDocument *
cw_window_document (CwWindow *window)
{
  return cw_job_document (window->job);
}

const CwProject *
cw_window_project (CwWindow *window)
{
  return cw_document_project (cw_window_document (window));
}

const CwElevation *
cw_window_elevation (CwWindow *window)
{
  return cw_document_elevation (cw_window_document (window));
}

void
cw_window_edit (CwWindow *window, CwProject *next, const char *step)
{
  CwDocument *document = cw_window_document (window);
  cw_document_seal (document);
  cw_document_edit (document, next, step, NULL);
  cw_node_unref (next);
}

void
cw_window_enable (CwWindow *window, const char *action, gboolean enabled)
{
  g_simple_action_set_enabled (
      G_SIMPLE_ACTION (
          g_action_map_lookup_action (G_ACTION_MAP (window), action)),
      enabled);
}

static void
name_button (GtkWidget *button, const char *general, const char *what)
{
  g_autofree char *text
      = what ? g_strdup_printf ("%s: %s", general, what) : g_strdup (general);
  gtk_widget_set_tooltip_text (button, text);
  cw_widget_set_name (button, text);
}

static void
document_changed (CwWindow *window)
{
  CwDocument *document = cw_window_document (window);
  cw_window_enable (window, "undo", cw_document_can_undo (document));
  cw_window_enable (window, "redo", cw_document_can_redo (document));
  name_button (window->undo_button, _("Undo"),
               cw_document_undo_name (document));
  name_button (window->redo_button, _("Redo"),
               cw_document_redo_name (document));
  if (!cw_job_is_untouched (window->job))
    cw_window_leave_start (window);
}

/* (transfer full) */
static char *
state_text (CwWindow *window)
{
  GFile *folder = cw_job_file (window->job) ? cw_job_folder (window->job)
                                            : NULL;
  g_autofree char *path = folder ? g_file_get_parse_name (folder) : NULL;
  gboolean saved = cw_document_is_saved (cw_window_document (window));
  if (!path)
    return g_strdup (saved ? _("not saved yet")
                           : _("changed, not saved yet"));
  if (saved)
    return g_steal_pointer (&path);
  /* Translators: a folder, after it that the project in it was changed. */
  return g_strdup_printf (_("%s — changed"), path);
}

static void
file_changed (CwWindow *window)
{
  g_autofree char *name = cw_job_name (window->job);
  g_autofree char *state = state_text (window);
  g_autofree char *title = g_strdup_printf ("%s — %s", name, _("Cladwright"));
  gtk_label_set_text (GTK_LABEL (window->name_label), name);
  gtk_label_set_text (GTK_LABEL (window->state_label), state);
  gtk_window_set_title (GTK_WINDOW (window), title);
}

static void
undo (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_document_undo (cw_window_document (data));
}

static void
redo (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_document_redo (cw_window_document (data));
}

/* As chosen for all windows. */
static void
searches_changed (CwWindow *window)
{
  GtkApplication *application
      = gtk_window_get_application (GTK_WINDOW (window));
  g_autoptr (GVariant) state
      = application ? g_action_group_get_action_state (
                          G_ACTION_GROUP (application), "search")
                    : NULL;
  if (state)
    cw_estimator_set_searches (cw_job_estimator (window->job),
                               g_variant_get_boolean (state));
}

static void
add_actions (CwWindow *window)
{
  static const GActionEntry entries[] = {
    { "undo", undo, NULL, NULL, NULL },
    { "redo", redo, NULL, NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
  cw_window_add_file_actions (window);
  cw_window_add_sheet_actions (window);
  cw_window_add_wall_actions (window);
  cw_window_add_view_actions (window);
  cw_window_add_place_actions (window);
  cw_window_add_buildup_actions (window);
  cw_window_add_arrange_actions (window);
}

static void
fill_stack (CwWindow *window)
{
  GtkStack *stack = GTK_STACK (window->stack);
  window->walls = CW_WALLS_PLACE (cw_walls_place_new ());
  gtk_stack_add_named (stack, cw_start_page_new (), "start");
  window->panels = CW_PANELS_PLACE (cw_panels_place_new ());
  gtk_stack_add_named (stack, GTK_WIDGET (window->walls), "walls");
  gtk_stack_add_named (stack, GTK_WIDGET (window->panels), "panels");
}

static void
cw_window_dispose (GObject *object)
{
  CwWindow *window = CW_WINDOW (object);
  g_clear_weak_pointer (&window->buildups);
  g_clear_weak_pointer (&window->prices);
  g_clear_object (&window->job);
  G_OBJECT_CLASS (cw_window_parent_class)->dispose (object);
}

static void
cw_window_class_init (CwWindowClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  G_OBJECT_CLASS (class)->dispose = cw_window_dispose;
  g_type_ensure (CW_TYPE_NOTICE);
  gtk_widget_class_set_template_from_resource (
      widget_class, CW_RESOURCE_PATH "/window.ui");
  gtk_widget_class_bind_template_child (widget_class, CwWindow,
                                        recent_button);
  gtk_widget_class_bind_template_child (widget_class, CwWindow,
                                        export_button);
  gtk_widget_class_bind_template_child (widget_class, CwWindow, menu_button);
  gtk_widget_class_bind_template_child (widget_class, CwWindow, undo_button);
  gtk_widget_class_bind_template_child (widget_class, CwWindow,
                                        history_button);
  gtk_widget_class_bind_template_child (widget_class, CwWindow, redo_button);
  gtk_widget_class_bind_template_child (widget_class, CwWindow, name_label);
  gtk_widget_class_bind_template_child (widget_class, CwWindow, state_label);
  gtk_widget_class_bind_template_child (widget_class, CwWindow, stack);
  gtk_widget_class_bind_template_child (widget_class, CwWindow, notice);
}

static void
cw_window_init (CwWindow *window)
{
  gtk_widget_init_template (GTK_WIDGET (window));
  g_autoptr (GMenuModel) recent = cw_recent_menu_new ();
  gtk_menu_button_set_menu_model (GTK_MENU_BUTTON (window->recent_button),
                                  recent);
  cw_menu_button_take_menu (GTK_MENU_BUTTON (window->export_button),
                            "export-menu");
  cw_menu_button_take_menu (GTK_MENU_BUTTON (window->menu_button),
                            "main-menu");
  fill_stack (window);
}

static void
take_job (CwWindow *window, CwJob *job)
{
  window->job = g_object_ref (job);
  add_actions (window);
  cw_walls_place_set_job (window->walls, job);
  cw_panels_place_set_job (window->panels, job);
  g_signal_connect_object (cw_window_document (window), "changed",
                           G_CALLBACK (document_changed), window,
                           G_CONNECT_SWAPPED);
  cw_history_button_follow (GTK_MENU_BUTTON (window->history_button),
                            cw_window_document (window));
  g_signal_connect_object (job, "file-changed", G_CALLBACK (file_changed),
                           window, G_CONNECT_SWAPPED);
  g_signal_connect_object (gtk_window_get_application (GTK_WINDOW (window)),
                           "action-state-changed::search",
                           G_CALLBACK (searches_changed), window,
                           G_CONNECT_SWAPPED);
  document_changed (window);
  file_changed (window);
  searches_changed (window);
}

CwWindow *
cw_window_new (CwApplication *application, CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  CwWindow *window
      = g_object_new (CW_TYPE_WINDOW, "application", application, NULL);
  take_job (window, job);
  return window;
}
