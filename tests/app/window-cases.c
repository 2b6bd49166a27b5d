/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "window-cases.h"

#include "cw-dialogs.h"
#include "cw-look.h"
#include "cw-settings.h"

#define TURNS 25

/* Settings of a user who just began, for each program of tests its own. The
 * tour would lie over what is tested. */
static void
begin_settings (void)
{
  g_autofree char *folder = g_dir_make_tmp ("cladwright-XXXXXX", NULL);
  g_setenv ("XDG_CONFIG_HOME", folder, TRUE);
  cw_settings_set_flag ("tour-seen", TRUE);
}

gboolean
case_start_toolkit (void)
{
  begin_settings ();
  if (gtk_init_check ())
    return TRUE;
  g_print ("1..0 # SKIP there is no display; run it under xvfb-run\n");
  return FALSE;
}

CwApplication *
case_application (void)
{
  static CwApplication *application;
  g_autoptr (GError) error = NULL;
  if (application)
    return application;
  application = cw_application_new ();
  g_application_set_flags (G_APPLICATION (application),
                           G_APPLICATION_HANDLES_OPEN
                               | G_APPLICATION_NON_UNIQUE);
  g_application_register (G_APPLICATION (application), NULL, &error);
  g_assert_no_error (error);
  return application;
}

void
case_settle (void)
{
  for (int i = 0; i < TURNS; i++)
    {
      while (g_main_context_iteration (NULL, FALSE))
        ;
      g_usleep (2000);
    }
}

static CwWindow *
show (CwJob *job)
{
  CwWindow *window = cw_window_new (case_application (), job);
  gtk_window_present (GTK_WINDOW (window));
  case_wait_for_takeoff (job);
  case_settle ();
  return window;
}

CwWindow *
case_demo_window (GFile *folder)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) file = case_copy_demo (folder);
  g_autoptr (CwJob) job = case_open (file, &error);
  g_assert_no_error (error);
  return show (job);
}

CwWindow *
case_empty_window (void)
{
  g_autoptr (CwJob) job = cw_job_new ();
  return show (job);
}

static gboolean
is_gone (gpointer data)
{
  return *(gpointer *) data == NULL;
}

void
case_close (GtkWindow *window)
{
  gpointer watched = window;
  g_object_add_weak_pointer (G_OBJECT (window), &watched);
  gtk_window_close (window);
  case_wait (is_gone, &watched);
}

void
case_desk_lay (CaseDesk *desk)
{
  desk->folder = case_folder ();
  desk->window = case_demo_window (desk->folder);
  desk->job = cw_window_job (desk->window);
}

void
case_desk_clear (CaseDesk *desk)
{
  if (desk->window)
    {
      if (!cw_document_is_saved (cw_job_document (desk->job)))
        cw_dialogs_answer_next (1);
      case_close (GTK_WINDOW (desk->window));
    }
  g_object_unref (desk->folder);
}

void
case_desk_act (CaseDesk *desk, const char *action)
{
  g_action_group_activate_action (G_ACTION_GROUP (desk->window), action,
                                  NULL);
  case_settle ();
}

GtkWindow *
case_open_window (GType type)
{
  g_autoptr (GList) tops = gtk_window_list_toplevels ();
  for (GList *l = tops; l; l = l->next)
    if (g_type_is_a (G_OBJECT_TYPE (l->data), type))
      return l->data;
  return NULL;
}

void
case_walk (GtkWidget *root, CaseWidgetFunc each, gpointer data)
{
  each (root, data);
  for (GtkWidget *child = gtk_widget_get_first_child (root); child;
       child = gtk_widget_get_next_sibling (child))
    case_walk (child, each, data);
}

typedef struct
{
  GType type;
  GtkWidget *found;
} Search;

static void
note_type (GtkWidget *widget, gpointer data)
{
  Search *search = data;
  if (!search->found && g_type_is_a (G_OBJECT_TYPE (widget), search->type))
    search->found = widget;
}

gpointer
case_find (GtkWidget *root, GType type)
{
  Search search = { type, NULL };
  case_walk (root, note_type, &search);
  return search.found;
}
