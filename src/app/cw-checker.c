/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-checker.h"

#include "cw-i18n.h"

/* So long after a takeoff, and no more often. */
#define AFTER_MS 120

struct _CwChecker
{
  GObject parent;
  CwJob *job;
  GPtrArray *checks;
  guint later;
};

G_DEFINE_FINAL_TYPE (CwChecker, cw_checker, G_TYPE_OBJECT)

enum { CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

GPtrArray *
cw_checker_checks (CwChecker *checker)
{
  g_return_val_if_fail (CW_IS_CHECKER (checker), NULL);
  return checker->checks;
}

void
cw_checker_look (CwChecker *checker)
{
  g_return_if_fail (CW_IS_CHECKER (checker));
  const CwTakeoff *takeoff = cw_job_takeoff (checker->job);
  g_clear_handle_id (&checker->later, g_source_remove);
  g_ptr_array_unref (checker->checks);
  checker->checks = takeoff ? cw_checks_find (takeoff,
                                              cw_job_style (checker->job))
                            : g_ptr_array_new ();
  g_signal_emit (checker, signals[CHANGED], 0);
}

static gboolean
look_now (gpointer data)
{
  CwChecker *checker = data;
  checker->later = 0;
  cw_checker_look (checker);
  return G_SOURCE_REMOVE;
}

static void
look_later (CwChecker *checker)
{
  if (!checker->later)
    checker->later = g_timeout_add (AFTER_MS, look_now, checker);
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
  g_clear_object (&checker->job);
  G_OBJECT_CLASS (cw_checker_parent_class)->dispose (object);
}

static void
cw_checker_finalize (GObject *object)
{
  g_ptr_array_unref (CW_CHECKER (object)->checks);
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
  cw_checker_look (checker);
  return checker;
}
