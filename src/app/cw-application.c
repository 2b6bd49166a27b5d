/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-application.h"

#include "cw-dialogs.h"
#include "cw-example.h"
#include "cw-i18n.h"
#include "cw-job.h"
#include "cw-look.h"
#include "cw-recent.h"
#include "cw-settings.h"
#include "cw-window.h"

struct _CwApplication
{
  GtkApplication parent;
};

G_DEFINE_FINAL_TYPE (CwApplication, cw_application, GTK_TYPE_APPLICATION)

/* A file on its way into a window. */
typedef struct
{
  CwApplication *application;
  GtkWindow *from;      /* weak: it may be closed meanwhile */
  GFile *file;
  gboolean is_example;
} Opening;

static void
opening_free (Opening *opening)
{
  g_clear_weak_pointer (&opening->from);
  g_object_unref (opening->file);
  g_application_release (G_APPLICATION (opening->application));
  g_object_unref (opening->application);
  g_free (opening);
}

static CwWindow *
show_job (CwApplication *application, CwJob *job, GtkWindow *from)
{
  CwWindow *window = cw_window_new (application, job);
  if (from && CW_IS_WINDOW (from)
      && cw_job_is_untouched (cw_window_job (CW_WINDOW (from))))
    gtk_window_destroy (from);
  gtk_window_present (GTK_WINDOW (window));
  return window;
}

static void
show_new (CwApplication *application)
{
  g_autoptr (CwJob) job = cw_job_new ();
  show_job (application, job, NULL);
}

static void
tell_failure (Opening *opening, const GError *error)
{
  GtkWindow *parent = opening->from;
  if (!parent)
    {
      show_new (opening->application);
      parent = gtk_application_get_active_window (
          GTK_APPLICATION (opening->application));
    }
  g_autofree char *name = g_file_get_basename (opening->file);
  g_autofree char *message = g_strdup_printf (_("“%s” cannot be opened"), name);
  cw_dialogs_tell (parent, message, error->message);
}

static void
opened (GObject *source, GAsyncResult *result, gpointer data)
{
  Opening *opening = data;
  g_autoptr (GError) error = NULL;
  g_autoptr (CwJob) job = cw_job_open_finish (result, &error);
  if (!job)
    tell_failure (opening, error);
  else
    {
      if (opening->is_example)
        cw_job_detach (job);
      else
        cw_recent_add (opening->file);
      CwWindow *window
          = show_job (opening->application, job, opening->from);
      if (opening->is_example)
        cw_window_tour_if_new (window);
    }
  opening_free (opening);
}

static void
start_opening (CwApplication *application, GFile *file, GtkWindow *from,
               gboolean is_example)
{
  Opening *opening = g_new0 (Opening, 1);
  opening->application = g_object_ref (application);
  /* No window may be there yet to keep the program running. */
  g_application_hold (G_APPLICATION (application));
  g_set_weak_pointer (&opening->from, from);
  opening->file = g_object_ref (file);
  opening->is_example = is_example;
  cw_job_open_async (file, NULL, opened, opening);
}

static GtkWindow *
window_with (CwApplication *application, GFile *file)
{
  for (GList *l
       = gtk_application_get_windows (GTK_APPLICATION (application));
       l; l = l->next)
    if (CW_IS_WINDOW (l->data))
      {
        GFile *its = cw_job_file (cw_window_job (l->data));
        if (its && g_file_equal (its, file))
          return l->data;
      }
  return NULL;
}

void
cw_application_open_file (CwApplication *application, GFile *file,
                          GtkWindow *from)
{
  g_return_if_fail (CW_IS_APPLICATION (application));
  g_return_if_fail (G_IS_FILE (file));
  GtkWindow *present = window_with (application, file);
  if (present)
    gtk_window_present (present);
  else
    start_opening (application, file, from, FALSE);
}

void
cw_application_open_example (CwApplication *application, GtkWindow *from)
{
  g_return_if_fail (CW_IS_APPLICATION (application));
  g_autoptr (GFile) file = cw_example_file ();
  if (file)
    start_opening (application, file, from, TRUE);
  else
    cw_dialogs_tell (from, _("The example is not here"),
                     _("It was not installed with the program. Install the "
                       "program again with its data."));
}

static void
new_window (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  show_new (data);
}

static void
open_recent (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  g_autoptr (GFile) file
      = g_file_new_for_uri (g_variant_get_string (parameter, NULL));
  cw_application_open_file (
      data, file, gtk_application_get_active_window (GTK_APPLICATION (data)));
}

static void
change_look (GSimpleAction *action, GVariant *state, gpointer data)
{
  const char *look = g_variant_get_string (state, NULL);
  cw_look_choose (cw_look_from_name (look));
  cw_settings_set_text ("look", look);
  g_simple_action_set_state (action, state);
}

static void
change_contrast (GSimpleAction *action, GVariant *state, gpointer data)
{
  cw_look_set_contrast (g_variant_get_boolean (state));
  cw_settings_set_flag ("contrast", g_variant_get_boolean (state));
  g_simple_action_set_state (action, state);
}

static void
change_search (GSimpleAction *action, GVariant *state, gpointer data)
{
  cw_settings_set_flag ("search", g_variant_get_boolean (state));
  g_simple_action_set_state (action, state);
}

/* As it was left. */
static void
take_settings (CwApplication *application)
{
  g_autofree char *look = cw_settings_get_text ("look", "system");
  gboolean search = cw_settings_get_flag ("search", TRUE);
  g_action_group_change_action_state (G_ACTION_GROUP (application), "search",
                                      g_variant_new_boolean (search));
  if (cw_settings_get_flag ("contrast", FALSE))
    g_action_group_activate_action (G_ACTION_GROUP (application), "contrast",
                                    NULL);
  if (cw_look_from_name (look) != CW_LOOK_SYSTEM)
    g_action_group_change_action_state (G_ACTION_GROUP (application), "look",
                                        g_variant_new_string (look));
}

static void
show_about (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  gtk_show_about_dialog (
      gtk_application_get_active_window (GTK_APPLICATION (data)),
      "program-name", _("Cladwright"), "version", CW_VERSION,
      "logo-icon-name", "org.cladwright.Cladwright", "license-type",
      GTK_LICENSE_GPL_3_0, "comments",
      _("Takeoffs for walls clad with reinforced aerated-concrete panels.\n"
        "Check every figure before you order: local codes and the maker’s "
        "instructions come first."),
      NULL);
}

/* Windows may refuse, so each is asked in turn. */
static void
quit (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  g_autoptr (GList) windows
      = g_list_copy (gtk_application_get_windows (GTK_APPLICATION (data)));
  for (GList *l = windows; l; l = l->next)
    gtk_window_close (l->data);
}

static const GActionEntry actions[] = {
  { "new", new_window, NULL, NULL, NULL },
  { "open-recent", open_recent, "s", NULL, NULL },
  { "look", NULL, "s", "'system'", change_look },
  { "contrast", NULL, NULL, "false", change_contrast },
  { "search", NULL, NULL, "true", change_search },
  { "about", show_about, NULL, NULL, NULL },
  { "quit", quit, NULL, NULL, NULL },
};

static const struct
{
  const char *action;
  const char *keys[3];
} shortcuts[] = {
  { "app.new", { "<Control>n" } },
  { "app.quit", { "<Control>q" } },
  { "win.open", { "<Control>o" } },
  { "win.save", { "<Control>s" } },
  { "win.save-as", { "<Control><Shift>s" } },
  { "win.export-pdf", { "<Control>e" } },
  { "win.undo", { "<Control>z" } },
  { "win.redo", { "<Control><Shift>z", "<Control>y" } },
  { "win.place::walls", { "<Alt>2" } },
  { "win.place::panels", { "<Alt>3" } },
  { "win.add-sheet", { "<Control><Shift>p" } },
  { "win.add-wall", { "<Control><Shift>w" } },
  { "win.buildups", { "<Control>b" } },
  { "win.prices", { "<Control><Shift>b" } },
  { "win.best-setting-out", { "<Control>t" } },
  { "win.fit", { "<Control>0" } },
  { "win.show-sheet", { "<Control>1" } },
  { "win.show-panels", { "<Control>2" } },
  { "win.show-numbers", { "<Control>3" } },
  { "win.show-studs", { "<Control>4" } },
  { "win.show-barrier", { "<Control>5" } },
  { "win.show-mesh", { "<Control>6" } },
  { "win.show-dimensions", { "<Control>7" } },
  { "win.show-levels", { "<Control>8" } },
  { "win.show-checks", { "<Control>9" } },
  { "win.list-items", { "<Control>l" } },
  { "win.as-printed", { "F7" } },
  { "win.closer", { "<Control>plus", "<Control>equal" } },
  { "win.farther", { "<Control>minus" } },
  { "win.show-help-overlay", { "<Control>question" } },
  { "window.close", { "<Control>w" } },
};

static void
cw_application_startup (GApplication *application)
{
  cw_app_register_resources ();
  G_APPLICATION_CLASS (cw_application_parent_class)->startup (application);
  cw_look_start ();
  g_action_map_add_action_entries (G_ACTION_MAP (application), actions,
                                   G_N_ELEMENTS (actions), application);
  take_settings (CW_APPLICATION (application));
  for (gsize i = 0; i < G_N_ELEMENTS (shortcuts); i++)
    gtk_application_set_accels_for_action (
        GTK_APPLICATION (application), shortcuts[i].action,
        (const char *const[]) { shortcuts[i].keys[0], shortcuts[i].keys[1],
                                NULL });
}

static void
cw_application_activate (GApplication *application)
{
  show_new (CW_APPLICATION (application));
}

static void
cw_application_open (GApplication *application, GFile **files, int n_files,
                     const char *hint)
{
  for (int i = 0; i < n_files; i++)
    cw_application_open_file (CW_APPLICATION (application), files[i], NULL);
}

static void
cw_application_class_init (CwApplicationClass *class)
{
  GApplicationClass *application_class = G_APPLICATION_CLASS (class);
  application_class->startup = cw_application_startup;
  application_class->activate = cw_application_activate;
  application_class->open = cw_application_open;
}

static void
cw_application_init (CwApplication *application)
{
  g_set_application_name (_("Cladwright"));
  gtk_window_set_default_icon_name ("org.cladwright.Cladwright");
}

CwApplication *
cw_application_new (void)
{
  return g_object_new (CW_TYPE_APPLICATION, "application-id",
                       "org.cladwright.Cladwright", "flags",
                       G_APPLICATION_HANDLES_OPEN, "resource-base-path",
                       CW_RESOURCE_PATH, NULL);
}
