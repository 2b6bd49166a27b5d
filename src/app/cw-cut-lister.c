/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-lister.h"

#include "cw-thread.h"

struct _CwCutLister
{
  GObject parent;
  CwJob *job;
  CwCutList *list;            /* (nullable) */
  GCancellable *working;      /* (nullable) */
  gboolean wanted;
};

enum
{
  CHANGED,
  N_SIGNALS,
};

static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (CwCutLister, cw_cut_lister, G_TYPE_OBJECT)

const CwCutList *
cw_cut_lister_list (CwCutLister *lister)
{
  g_return_val_if_fail (CW_IS_CUT_LISTER (lister), NULL);
  return lister->list;
}

gboolean
cw_cut_lister_is_stale (CwCutLister *lister)
{
  g_return_val_if_fail (CW_IS_CUT_LISTER (lister), FALSE);
  return !lister->list
         || lister->list->takeoff != cw_job_takeoff (lister->job);
}

static void
work (GTask *task, gpointer source, gpointer takeoff,
      GCancellable *cancellable)
{
  CwCutList *list = cw_cut_list_new (takeoff, cancellable);
  g_task_return_pointer (task, list, NULL);
}

static void
done (GObject *object, GAsyncResult *result, gpointer data)
{
  CwCutLister *lister = CW_CUT_LISTER (object);
  CwCutList *list = g_task_propagate_pointer (G_TASK (result), NULL);
  if (!list)
    return;
  if (g_task_get_cancellable (G_TASK (result)) != lister->working)
    {
      cw_cut_list_unref (list);
      return;
    }
  g_clear_object (&lister->working);
  g_clear_pointer (&lister->list, cw_cut_list_unref);
  lister->list = list;
  g_signal_emit (lister, signals[CHANGED], 0);
}

static void
stop (CwCutLister *lister)
{
  if (lister->working)
    g_cancellable_cancel (lister->working);
  g_clear_object (&lister->working);
}

static void
refresh (CwCutLister *lister)
{
  const CwTakeoff *takeoff = cw_job_takeoff (lister->job);
  if (!lister->wanted || !takeoff || !cw_cut_lister_is_stale (lister))
    return;
  stop (lister);
  lister->working = g_cancellable_new ();
  cw_thread_run (lister, work, cw_takeoff_ref (takeoff),
                 (GDestroyNotify) cw_takeoff_unref, lister->working, done,
                 NULL);
}

void
cw_cut_lister_set_wanted (CwCutLister *lister, gboolean wanted)
{
  g_return_if_fail (CW_IS_CUT_LISTER (lister));
  lister->wanted = wanted;
  if (wanted)
    refresh (lister);
  else
    stop (lister);
}

static void
cw_cut_lister_dispose (GObject *object)
{
  CwCutLister *lister = CW_CUT_LISTER (object);
  stop (lister);
  g_clear_pointer (&lister->list, cw_cut_list_unref);
  g_clear_object (&lister->job);
  G_OBJECT_CLASS (cw_cut_lister_parent_class)->dispose (object);
}

static void
cw_cut_lister_class_init (CwCutListerClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_cut_lister_dispose;
  signals[CHANGED]
      = g_signal_new ("changed", CW_TYPE_CUT_LISTER, G_SIGNAL_RUN_LAST, 0,
                      NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
cw_cut_lister_init (CwCutLister *lister)
{
}

CwCutLister *
cw_cut_lister_new (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  CwCutLister *lister = g_object_new (CW_TYPE_CUT_LISTER, NULL);
  lister->job = g_object_ref (job);
  g_signal_connect_object (cw_job_estimator (job), "takeoff-changed",
                           G_CALLBACK (refresh), lister, G_CONNECT_SWAPPED);
  return lister;
}
