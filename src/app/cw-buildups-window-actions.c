/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is done with a whole buildup: taken from the library or a file,
 * doubled, written to a file, removed.
 */
#include "cw-buildups-window-private.h"

#include "cw-buildup-edits.h"
#include "cw-buildup-library.h"
#include "cw-dialogs.h"
#include "cw-form-dialog.h"
#include "cw-i18n.h"
#include "cw-library-dialog.h"

static void
take_from_library (const CwBuildup *buildup, gpointer data)
{
  CwBuildupsWindow *window = data;
  g_autofree char *id = NULL;
  CwProject *next
      = cw_buildup_add (cw_buildups_window_project (window), buildup, &id);
  cw_buildups_window_edit (window, next, _("Take a buildup"), id);
}

static void
from_library (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwBuildupsWindow *window = data;
  cw_library_dialog_open (GTK_WINDOW (window),
                          cw_job_style (window->job)->units,
                          take_from_library, g_object_ref (window),
                          g_object_unref);
}

static void
duplicate (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwBuildupsWindow *window = data;
  g_autofree char *id = NULL;
  CwProject *next = cw_buildup_duplicate (cw_buildups_window_project (window),
                                          window->chosen, &id);
  cw_buildups_window_edit (window, next, _("Duplicate a buildup"), id);
}

static void
tell_currency (CwBuildupsWindow *window, const char *currency)
{
  const char *own = cw_buildups_window_project (window)->currency;
  if (g_strcmp0 (own, currency) == 0)
    return;
  g_autofree char *detail = g_strdup_printf (
      _("The file’s prices are in %s, the project’s in %s. They were taken as "
        "they are: look at each before a bid."),
      currency, own);
  cw_dialogs_tell (GTK_WINDOW (window), _("Prices in another currency"),
                   detail);
}

static void
import_chosen (GFile *file, gpointer data)
{
  g_autoptr (CwBuildupsWindow) window = data;
  g_autofree char *currency = NULL;
  g_autoptr (GError) error = NULL;
  if (!file)
    return;
  g_autoptr (CwList) buildups = cw_buildups_load (file, &currency, &error);
  if (!buildups)
    {
      cw_dialogs_tell (GTK_WINDOW (window), _("No buildup was taken"),
                       error->message);
      return;
    }
  CwProject *next = cw_node_ref (cw_buildups_window_project (window));
  g_autofree char *id = NULL;
  for (gsize i = 0; i < cw_list_length (buildups); i++)
    {
      g_autoptr (CwProject) former = next;
      g_clear_pointer (&id, g_free);
      next = cw_buildup_add (former, cw_list_at (buildups, i), &id);
    }
  cw_buildups_window_edit (window, next, _("Take buildups from a file"), id);
  tell_currency (window, currency);
}

static void
import (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwBuildupsWindow *window = data;
  cw_dialogs_open_file (GTK_WINDOW (window), _("Take buildups from a file"),
                        CW_FILES_PROJECT, cw_job_folder (window->job),
                        import_chosen, g_object_ref (window));
}

static void
export_chosen (GFile *file, gpointer data)
{
  g_autoptr (CwBuildupsWindow) window = data;
  g_autoptr (GError) error = NULL;
  if (!file || !window->chosen)
    return;
  g_autoptr (CwProject) alone = cw_buildup_alone (
      cw_buildups_window_project (window), window->chosen);
  if (!cw_project_save (alone, file, NULL, &error))
    cw_dialogs_tell (GTK_WINDOW (window), _("The buildup was not written"),
                     error->message);
}

static void
export (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwBuildupsWindow *window = data;
  const CwBuildup *buildup = cw_project_buildup (
      cw_buildups_window_project (window), window->chosen);
  g_autofree char *name = g_strconcat (
      *buildup->name ? buildup->name : buildup->id, ".cladwright", NULL);
  gtk_window_set_focus (GTK_WINDOW (window), NULL);
  cw_dialogs_save_file (GTK_WINDOW (window), _("Write the buildup to a file"),
                        CW_FILES_PROJECT, cw_job_folder (window->job),
                        g_strdelimit (name, "/\\", '-'), export_chosen,
                        g_object_ref (window));
}

/* Which buildup the walls get instead. */
typedef struct
{
  CwBuildupsWindow *window;
  CwFormDialog *dialog;
  GtkWidget *list;            /* GtkDropDown */
  char *id;
  GPtrArray *others;          /* their ids */
} Removing;

static void
removing_free (Removing *removing)
{
  g_object_unref (removing->window);
  g_free (removing->id);
  g_ptr_array_unref (removing->others);
  g_free (removing);
}

static void
remove_instead (Removing *removing)
{
  const char *instead = g_ptr_array_index (
      removing->others,
      gtk_drop_down_get_selected (GTK_DROP_DOWN (removing->list)));
  const CwProject *project = cw_buildups_window_project (removing->window);
  g_autoptr (CwBuildupsWindow) window = g_object_ref (removing->window);
  g_autofree char *shown = g_strdup (instead);
  CwProject *next = cw_buildup_remove (project, removing->id, instead);
  gtk_window_destroy (GTK_WINDOW (removing->dialog));
  cw_buildups_window_edit (window, next, _("Remove a buildup"), shown);
}

static GtkWidget *
new_others (Removing *removing, const CwProject *project)
{
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);
  for (gsize i = 0; i < cw_list_length (project->buildups); i++)
    {
      const CwBuildup *other = cw_list_at (project->buildups, i);
      if (g_strcmp0 (other->id, removing->id) == 0)
        continue;
      g_ptr_array_add (removing->others, g_strdup (other->id));
      gtk_string_list_append (names, other->name);
    }
  return gtk_drop_down_new (G_LIST_MODEL (g_steal_pointer (&names)), NULL);
}

static void
ask_instead (CwBuildupsWindow *window, guint n_users)
{
  Removing *removing = g_new0 (Removing, 1);
  removing->window = g_object_ref (window);
  removing->id = g_strdup (window->chosen);
  removing->others = g_ptr_array_new_with_free_func (g_free);
  removing->dialog = cw_form_dialog_new (GTK_WINDOW (window),
                                         _("Remove a buildup"),
                                         _("_Remove it"));
  g_object_set_data_full (G_OBJECT (removing->dialog), "removing", removing,
                          (GDestroyNotify) removing_free);
  g_autofree char *words = g_strdup_printf (
      g_dngettext (GETTEXT_PACKAGE, "%u wall has this buildup.",
                   "%u walls have this buildup.", n_users),
      n_users);
  cw_form_dialog_add_words (removing->dialog, words);
  removing->list
      = new_others (removing, cw_buildups_window_project (window));
  cw_form_dialog_add (removing->dialog, _("What they get instead"),
                      removing->list);
  g_signal_connect_swapped (removing->dialog, "taken",
                            G_CALLBACK (remove_instead), removing);
  gtk_window_present (GTK_WINDOW (removing->dialog));
}

static void
remove_buildup (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwBuildupsWindow *window = data;
  const CwProject *project = cw_buildups_window_project (window);
  g_autoptr (GPtrArray) users = cw_buildup_users (project, window->chosen);
  if (users->len == 0)
    cw_buildups_window_edit (
        window, cw_buildup_remove (project, window->chosen, NULL),
        _("Remove a buildup"), NULL);
  else if (cw_list_length (project->buildups) > 1)
    ask_instead (window, users->len);
  else
    cw_dialogs_tell (GTK_WINDOW (window),
                     _("The walls need this buildup"),
                     _("It is the only one of the project. Add another one "
                       "first; then the walls can get that one instead."));
}

/* The main window's own, so that its keys work here too. */
static void
act_in_parent (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  GtkWindow *parent = gtk_window_get_transient_for (GTK_WINDOW (data));
  if (parent)
    g_action_group_activate_action (G_ACTION_GROUP (parent),
                                    g_action_get_name (G_ACTION (action)),
                                    NULL);
}

static void
enable (GActionMap *map, const char *name, gboolean enabled)
{
  g_simple_action_set_enabled (
      G_SIMPLE_ACTION (g_action_map_lookup_action (map, name)), enabled);
}

void
cw_buildups_window_enable (CwBuildupsWindow *window)
{
  static const char *const names[] = { "duplicate", "export", "remove" };
  for (gsize i = 0; i < G_N_ELEMENTS (names); i++)
    enable (G_ACTION_MAP (window->actions), names[i],
            window->chosen != NULL);
  CwDocument *document = cw_job_document (window->job);
  enable (G_ACTION_MAP (window->main_actions), "undo",
          cw_document_can_undo (document));
  enable (G_ACTION_MAP (window->main_actions), "redo",
          cw_document_can_redo (document));
}

void
cw_buildups_window_add_actions (CwBuildupsWindow *window)
{
  static const GActionEntry entries[] = {
    { "library", from_library, NULL, NULL, NULL },
    { "duplicate", duplicate, NULL, NULL, NULL },
    { "import", import, NULL, NULL, NULL },
    { "export", export, NULL, NULL, NULL },
    { "remove", remove_buildup, NULL, NULL, NULL },
  };
  static const GActionEntry main_entries[] = {
    { "undo", act_in_parent, NULL, NULL, NULL },
    { "redo", act_in_parent, NULL, NULL, NULL },
    { "save", act_in_parent, NULL, NULL, NULL },
  };
  window->main_actions = g_simple_action_group_new ();
  g_action_map_add_action_entries (G_ACTION_MAP (window->main_actions),
                                   main_entries, G_N_ELEMENTS (main_entries),
                                   window);
  gtk_widget_insert_action_group (GTK_WIDGET (window), "win",
                                  G_ACTION_GROUP (window->main_actions));
  window->actions = g_simple_action_group_new ();
  g_action_map_add_action_entries (G_ACTION_MAP (window->actions), entries,
                                   G_N_ELEMENTS (entries), window);
  gtk_widget_insert_action_group (GTK_WIDGET (window), "buildups",
                                  G_ACTION_GROUP (window->actions));
}
