/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-checker.h"

#include "cw-i18n.h"
#include "cw-thread.h"

/* So long after a takeoff, and no more often. */
#define AFTER_MS 120

struct _CwChecker
{
  GObject parent;
  CwJob *job;
  GPtrArray *checks;
  CwTakeoff *looked_at;         /* (nullable): that the checks are of */
  GCancellable *running;        /* NULL: no thread is at work */
  guint later;
  gboolean is_stale;            /* what runs is not what is wanted */
};

G_DEFINE_FINAL_TYPE (CwChecker, cw_checker, G_TYPE_OBJECT)

enum { CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

/* What the thread works on. */
typedef struct
{
  CwTakeoff *takeoff;
  CwTextStyle style;
} Work;

static void
work_free (gpointer data)
{
  Work *work = data;
  cw_takeoff_unref (work->takeoff);
  g_free (work);
}

static void
do_work (GTask *task, gpointer source, gpointer data,
         GCancellable *cancellable)
{
  const Work *work = data;
  g_task_return_pointer (
      task, cw_checks_find (work->takeoff, &work->style, cancellable),
      (GDestroyNotify) g_ptr_array_unref);
}

GPtrArray *
cw_checker_checks (CwChecker *checker)
{
  g_return_val_if_fail (CW_IS_CHECKER (checker), NULL);
  return checker->checks;
}

static void look_later (CwChecker *checker);

static void
take_over (CwChecker *checker, const Work *work, GPtrArray *checks)
{
  g_clear_pointer (&checker->looked_at, cw_takeoff_unref);
  checker->looked_at = cw_takeoff_ref (work->takeoff);
  g_ptr_array_unref (checker->checks);
  checker->checks = checks;
  g_signal_emit (checker, signals[CHANGED], 0);
}

/* A list that comes although it was cancelled is true of its takeoff, and
 * better than an older one while the next is being found. */
static void
work_ended (GObject *source, GAsyncResult *result, gpointer data)
{
  CwChecker *checker = CW_CHECKER (source);
  const Work *work = g_task_get_task_data (G_TASK (result));
  GPtrArray *checks = g_task_propagate_pointer (G_TASK (result), NULL);
  const gboolean again = checker->is_stale || !checks;
  g_clear_object (&checker->running);
  checker->is_stale = FALSE;
  if (!checker->job)
    g_clear_pointer (&checks, g_ptr_array_unref);
  if (checks)
    take_over (checker, work, checks);
  if (again && checker->job)
    look_later (checker);
}

/* One thread at a time, as the estimator has it. */
static void
start (CwChecker *checker)
{
  const CwTakeoff *takeoff = cw_job_takeoff (checker->job);
  if (!takeoff || checker->running)
    return;
  Work *work = g_new (Work, 1);
  work->takeoff = cw_takeoff_ref (takeoff);
  work->style = *cw_job_style (checker->job);
  checker->running = g_cancellable_new ();
  cw_thread_run (checker, do_work, work, work_free, checker->running,
                 work_ended, NULL);
}

static gboolean
look_now (gpointer data)
{
  CwChecker *checker = data;
  checker->later = 0;
  start (checker);
  return G_SOURCE_REMOVE;
}

/* What is running ends, and begins again afterwards. */
static void
cancel (CwChecker *checker)
{
  if (!checker->running)
    return;
  checker->is_stale = TRUE;
  g_cancellable_cancel (checker->running);
}

static void
look_later (CwChecker *checker)
{
  if (checker->running)
    cancel (checker);
  else if (!checker->later)
    checker->later = g_timeout_add (AFTER_MS, look_now, checker);
}

gboolean
cw_checker_is_busy (CwChecker *checker)
{
  g_return_val_if_fail (CW_IS_CHECKER (checker), FALSE);
  return checker->later || checker->running
         || cw_estimator_is_busy (cw_job_estimator (checker->job))
         || checker->looked_at != cw_job_takeoff (checker->job);
}

static char *
count_text (CwCheckSeverity severity, guint n)
{
  switch (severity)
    {
    case CW_CHECK_ERROR:
      return g_strdup_printf (
          g_dngettext (GETTEXT_PACKAGE, "%u error", "%u errors", n), n);
    case CW_CHECK_WARNING:
      return g_strdup_printf (
          g_dngettext (GETTEXT_PACKAGE, "%u warning", "%u warnings", n), n);
    default:
      return g_strdup_printf (
          g_dngettext (GETTEXT_PACKAGE, "%u note", "%u notes", n), n);
    }
}

char *
cw_checker_summary (CwChecker *checker)
{
  g_return_val_if_fail (CW_IS_CHECKER (checker), NULL);
  GString *text = g_string_new (NULL);
  for (guint i = 0; i < CW_N_CHECK_SEVERITIES; i++)
    {
      guint n = cw_checks_count (checker->checks, (CwCheckSeverity) i);
      if (n == 0)
        continue;
      g_autofree char *count = count_text ((CwCheckSeverity) i, n);
      g_string_append_printf (text, "%s%s", text->len ? ", " : "", count);
    }
  return g_string_free (text, FALSE);
}

static void
cw_checker_dispose (GObject *object)
{
  CwChecker *checker = CW_CHECKER (object);
  g_clear_handle_id (&checker->later, g_source_remove);
  cancel (checker);
  g_clear_object (&checker->job);
  G_OBJECT_CLASS (cw_checker_parent_class)->dispose (object);
}

static void
cw_checker_finalize (GObject *object)
{
  CwChecker *checker = CW_CHECKER (object);
  g_ptr_array_unref (checker->checks);
  g_clear_pointer (&checker->looked_at, cw_takeoff_unref);
  G_OBJECT_CLASS (cw_checker_parent_class)->finalize (object);
}

static void
cw_checker_class_init (CwCheckerClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_checker_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_checker_finalize;
  signals[CHANGED] = g_signal_new ("changed", CW_TYPE_CHECKER,
                                   G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 0);
}

static void
cw_checker_init (CwChecker *checker)
{
  checker->checks = g_ptr_array_new ();
}

CwChecker *
cw_checker_new (CwJob *job)
{
  CwChecker *checker = g_object_new (CW_TYPE_CHECKER, NULL);
  checker->job = g_object_ref (job);
  g_signal_connect_object (cw_job_estimator (job), "takeoff-changed",
                           G_CALLBACK (look_later), checker,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (job, "style-changed", G_CALLBACK (look_later),
                           checker, G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_job_document (job), "changed",
                           G_CALLBACK (cancel), checker, G_CONNECT_SWAPPED);
  start (checker);
  return checker;
}
