/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The checks follow the job from another thread.
 */
#include "app-cases.h"
#include "cw-checker.h"
#include "estimate-cases.h"

/* Enough that finding their checks lasts beyond an edit. */
#define MANY_WALLS 150

typedef struct
{
  CwJob *job;
  CwChecker *checker;
  GThread *thread;
  guint n_told;
} Desk;

static void
told (Desk *desk)
{
  g_assert_true (g_thread_self () == desk->thread);
  desk->n_told++;
}

static void
lay (Desk *desk, gconstpointer data)
{
  desk->thread = g_thread_self ();
  desk->job = cw_job_new ();
  desk->checker = cw_checker_new (desk->job);
  g_signal_connect_swapped (desk->checker, "changed", G_CALLBACK (told),
                            desk);
}

static gboolean
is_idle (gpointer data)
{
  return !cw_checker_is_busy (((Desk *) data)->checker);
}

static void
clear (Desk *desk, gconstpointer data)
{
  case_wait (is_idle, desk);
  g_assert_finalize_object (desk->checker);
  g_object_unref (desk->job);
}

static void
set_walls (Desk *desk, const char *walls)
{
  g_autoptr (CwProject) project = case_project (walls, "");
  cw_document_edit (cw_job_document (desk->job), project, "Edit", NULL);
}

/* So many walls with a window off each. */
static void
set_many_walls (Desk *desk, guint n)
{
  g_autoptr (GString) walls = g_string_new (NULL);
  for (guint i = 0; i < n; i++)
    g_string_append_printf (walls,
                            "%s4.8x2.4 window:1x1@6,1 window:1x1@1,1 "
                            "window:1x1@1.5,1",
                            i ? "; " : "");
  set_walls (desk, walls->str);
}

static guint
n_errors (Desk *desk)
{
  return cw_checks_count (cw_checker_checks (desk->checker), CW_CHECK_ERROR);
}

static void
follows (Desk *desk, gconstpointer data)
{
  set_walls (desk, "4.8x2.4");
  case_wait (is_idle, desk);
  g_assert_cmpuint (n_errors (desk), ==, 0);
  set_walls (desk, "4.8x2.4 window:1x1@6,1");
  case_wait (is_idle, desk);
  g_assert_cmpuint (n_errors (desk), ==, 1);
  g_autofree char *summary = cw_checker_summary (desk->checker);
  g_assert_true (g_str_has_prefix (summary, "1 error"));
  cw_document_undo (cw_job_document (desk->job));
  case_wait (is_idle, desk);
  g_assert_cmpuint (n_errors (desk), ==, 0);
}

/* Until newer ones are there, the former are. */
static void
keeps_the_last (Desk *desk, gconstpointer data)
{
  set_walls (desk, "4.8x2.4 window:1x1@6,1");
  case_wait (is_idle, desk);
  GPtrArray *former = cw_checker_checks (desk->checker);
  const guint n_told = desk->n_told;
  set_walls (desk, "4.8x2.4");
  while (desk->n_told == n_told)
    {
      g_assert_true (cw_checker_checks (desk->checker) == former);
      g_assert_cmpuint (n_errors (desk), ==, 1);
      g_main_context_iteration (NULL, TRUE);
    }
  g_assert_cmpuint (n_errors (desk), ==, 0);
}

static gboolean
has_takeoff (gpointer data)
{
  Desk *desk = data;
  const CwTakeoff *takeoff = cw_job_takeoff (desk->job);
  return takeoff && takeoff->project
                        == cw_document_project (cw_job_document (desk->job));
}

/* Edits come while checks are being found: the end is of the last one. */
static void
edits_meanwhile (Desk *desk, gconstpointer data)
{
  for (guint n = MANY_WALLS; n > MANY_WALLS - 4; n--)
    {
      set_many_walls (desk, n);
      case_wait (has_takeoff, desk);
    }
  case_wait (is_idle, desk);
  g_assert_cmpuint (n_errors (desk), ==, 2 * (MANY_WALLS - 3));
}

/* There and back before anything was worked out. */
static void
edit_and_back (Desk *desk, gconstpointer data)
{
  set_many_walls (desk, MANY_WALLS);
  case_wait (is_idle, desk);
  set_walls (desk, "4.8x2.4");
  cw_document_undo (cw_job_document (desk->job));
  case_wait (is_idle, desk);
  g_assert_cmpuint (n_errors (desk), ==, 2 * MANY_WALLS);
}

static void
cancelled (void)
{
  g_autoptr (CwProject) project = case_project ("4.8x2.4", "");
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  g_cancellable_cancel (cancellable);
  g_assert_null (cw_checks_find (takeoff, &style, cancellable));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
#define ADD(name, test)                                                       \
  g_test_add ("/checker/" name, Desk, NULL, lay, test, clear)
  ADD ("follows", follows);
  ADD ("keeps-the-last", keeps_the_last);
  ADD ("edits-meanwhile", edits_meanwhile);
  ADD ("edit-and-back", edit_and_back);
  g_test_add_func ("/checker/cancelled", cancelled);
  return g_test_run ();
}
