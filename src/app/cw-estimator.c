/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-estimator.h"

#include "cw-search-progress.h"
#include "cw-thread.h"

/* A project that stays so long is looked at again; short of it, the next step
 * of a drag would only have to wait. */
#define STAYS_MS 100
/* Who pauses so long is thinking: time for the long search. */
#define IDLE_MS 1000

struct _CwEstimator
{
  GObject parent;
  CwProject *wanted;            /* the newest project */
  CwTakeoff *takeoff;           /* the last good one */
  GCancellable *running;        /* NULL: no thread is at work */
  CwSearchProgress *progress;   /* of the long search; NULL: none is running */
  guint waiting;                /* for the project to stay; 0: not */
  gboolean searches;            /* long, when idle */
  gboolean stopped;             /* by the user, for this project */
  guint held;
};

G_DEFINE_FINAL_TYPE (CwEstimator, cw_estimator, G_TYPE_OBJECT)

enum { TAKEOFF_CHANGED, SEARCH_CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

enum { PROP_0, PROP_BUSY, N_PROPS };
static GParamSpec *props[N_PROPS];

/* What the thread works on. */
typedef struct
{
  CwProject *project;
  CwTakeoff *former;            /* of the same project: to be improved */
  CwSearchProgress *progress;   /* of the long search; NULL: is none */
} Work;

static void
work_free (Work *work)
{
  cw_node_unref (work->project);
  g_clear_pointer (&work->former, cw_takeoff_unref);
  g_clear_pointer (&work->progress, cw_search_progress_unref);
  g_free (work);
}

static gboolean
is_of_newest (CwEstimator *estimator)
{
  return estimator->takeoff
         && estimator->takeoff->project == estimator->wanted;
}

gboolean
cw_estimator_is_busy (CwEstimator *estimator)
{
  g_return_val_if_fail (CW_IS_ESTIMATOR (estimator), FALSE);
  return estimator->wanted
         && (!is_of_newest (estimator)
             || !cw_takeoff_is_settled (estimator->takeoff,
                                        CW_CUT_EFFORT_LIVE));
}

/* Something is left to be found by searching long. */
static gboolean
is_unsettled (CwEstimator *estimator)
{
  return is_of_newest (estimator)
         && !cw_takeoff_is_settled (estimator->takeoff, CW_CUT_EFFORT_LONG);
}

static gboolean
wants_search (CwEstimator *estimator)
{
  return estimator->searches && !estimator->stopped && !estimator->held
         && !cw_estimator_is_busy (estimator) && is_unsettled (estimator);
}

const CwTakeoff *
cw_estimator_takeoff (CwEstimator *estimator)
{
  g_return_val_if_fail (CW_IS_ESTIMATOR (estimator), NULL);
  return estimator->takeoff;
}

CwSearch
cw_estimator_search (CwEstimator *estimator, guint *n_panels, double *share)
{
  g_return_val_if_fail (CW_IS_ESTIMATOR (estimator), CW_SEARCH_NONE);
  if (estimator->progress)
    {
      cw_search_progress_get (estimator->progress, n_panels, share);
      return CW_SEARCH_RUNNING;
    }
  return estimator->stopped && is_unsettled (estimator) ? CW_SEARCH_STOPPED
                                                        : CW_SEARCH_NONE;
}

static CwTakeoff *
work_out (const Work *work, GCancellable *cancellable)
{
  if (work->progress)
    return cw_takeoff_search (work->former, cw_search_progress_set,
                              work->progress, cancellable);
  if (work->former && work->former->project == work->project)
    return cw_takeoff_improve (work->former, CW_CUT_EFFORT_LIVE, cancellable);
  return cw_takeoff_new (work->project, work->former, cancellable);
}

static void
do_work (GTask *task, gpointer source, gpointer data,
         GCancellable *cancellable)
{
  g_task_return_pointer (task, work_out (data, cancellable),
                         (GDestroyNotify) cw_takeoff_unref);
}

static void start (CwEstimator *estimator);

static void
emit_search_changed (gpointer estimator)
{
  g_signal_emit (estimator, signals[SEARCH_CHANGED], 0);
}

static void
end_progress (CwEstimator *estimator)
{
  if (!estimator->progress)
    return;
  cw_search_progress_end (estimator->progress);
  g_clear_pointer (&estimator->progress, cw_search_progress_unref);
  emit_search_changed (estimator);
}

static void
take_over (CwEstimator *estimator, CwTakeoff *takeoff)
{
  gboolean is_new = takeoff != estimator->takeoff;
  g_clear_pointer (&estimator->takeoff, cw_takeoff_unref);
  estimator->takeoff = takeoff;
  g_object_notify_by_pspec (G_OBJECT (estimator), props[PROP_BUSY]);
  if (is_new)
    g_signal_emit (estimator, signals[TAKEOFF_CHANGED], 0);
}

static gboolean
has_stayed (gpointer data)
{
  CwEstimator *estimator = data;
  estimator->waiting = 0;
  start (estimator);
  return G_SOURCE_REMOVE;
}

static void
wait_to_improve (CwEstimator *estimator)
{
  gboolean is_busy = cw_estimator_is_busy (estimator);
  if (!estimator->running && !estimator->waiting
      && (is_busy || wants_search (estimator)))
    estimator->waiting = g_timeout_add (is_busy ? STAYS_MS : IDLE_MS,
                                        has_stayed, estimator);
}

/* What a search found before the next project ended it. */
static void
keep_found (CwEstimator *estimator, const Work *work, CwTakeoff *found)
{
  if (found && work->progress && work->former == estimator->takeoff)
    {
      cw_takeoff_unref (estimator->takeoff);
      estimator->takeoff = found;
    }
  else
    g_clear_pointer (&found, cw_takeoff_unref);
}

/* One thread at a time: a cancelled one has to end before the next begins,
 * so that fast typing does not fill the machine with half-done work. */
static void
work_ended (GObject *source, GAsyncResult *result, gpointer data)
{
  CwEstimator *estimator = CW_ESTIMATOR (source);
  Work *work = g_task_get_task_data (G_TASK (result));
  gboolean is_newest = work->project == estimator->wanted;
  CwTakeoff *takeoff = g_task_propagate_pointer (G_TASK (result), NULL);

  g_clear_object (&estimator->running);
  end_progress (estimator);
  if (takeoff && is_newest)
    {
      take_over (estimator, takeoff);
      wait_to_improve (estimator);
    }
  else
    {
      keep_found (estimator, work, takeoff);
      start (estimator);
    }
}

static void
begin_search (CwEstimator *estimator, Work *work)
{
  estimator->progress = cw_search_progress_new (emit_search_changed,
                                                estimator);
  work->progress = cw_search_progress_ref (estimator->progress);
  cw_thread_run_quietly (estimator, do_work, work,
                         (GDestroyNotify) work_free, estimator->running,
                         work_ended, NULL);
  emit_search_changed (estimator);
}

static void
start (CwEstimator *estimator)
{
  gboolean searches = wants_search (estimator);
  if (estimator->running || !estimator->wanted
      || (!searches && !cw_estimator_is_busy (estimator)))
    return;
  Work *work = g_new0 (Work, 1);
  work->project = cw_node_ref (estimator->wanted);
  if (estimator->takeoff)
    work->former = cw_takeoff_ref (estimator->takeoff);

  estimator->running = g_cancellable_new ();
  if (searches)
    begin_search (estimator, work);
  else
    cw_thread_run (estimator, do_work, work, (GDestroyNotify) work_free,
                   estimator->running, work_ended, NULL);
}

void
cw_estimator_set_project (CwEstimator *estimator, const CwProject *project)
{
  g_return_if_fail (CW_IS_ESTIMATOR (estimator));
  g_return_if_fail (project != NULL);
  if (estimator->wanted == project)
    return;
  g_clear_pointer (&estimator->wanted, cw_node_unref);
  estimator->wanted = cw_node_ref (project);
  estimator->stopped = FALSE;
  g_clear_handle_id (&estimator->waiting, g_source_remove);
  if (estimator->running)
    g_cancellable_cancel (estimator->running);
  else
    start (estimator);
  g_object_notify_by_pspec (G_OBJECT (estimator), props[PROP_BUSY]);
  emit_search_changed (estimator);
}

static void
end_search (CwEstimator *estimator)
{
  if (estimator->progress)
    g_cancellable_cancel (estimator->running);
  if (!cw_estimator_is_busy (estimator))
    g_clear_handle_id (&estimator->waiting, g_source_remove);
}

void
cw_estimator_stop (CwEstimator *estimator)
{
  g_return_if_fail (CW_IS_ESTIMATOR (estimator));
  estimator->stopped = TRUE;
  end_search (estimator);
}

void
cw_estimator_search_on (CwEstimator *estimator)
{
  g_return_if_fail (CW_IS_ESTIMATOR (estimator));
  estimator->stopped = FALSE;
  start (estimator);
  emit_search_changed (estimator);
}

gboolean
cw_estimator_get_searches (CwEstimator *estimator)
{
  g_return_val_if_fail (CW_IS_ESTIMATOR (estimator), FALSE);
  return estimator->searches;
}

void
cw_estimator_set_searches (CwEstimator *estimator, gboolean searches)
{
  g_return_if_fail (CW_IS_ESTIMATOR (estimator));
  estimator->searches = searches;
  if (searches)
    wait_to_improve (estimator);
  else
    end_search (estimator);
}

void
cw_estimator_hold (CwEstimator *estimator)
{
  g_return_if_fail (CW_IS_ESTIMATOR (estimator));
  estimator->held++;
  end_search (estimator);
}

void
cw_estimator_release (CwEstimator *estimator, const CwTakeoff *found)
{
  g_return_if_fail (CW_IS_ESTIMATOR (estimator));
  g_return_if_fail (estimator->held > 0);
  estimator->held--;
  if (found && found->project == estimator->wanted && !estimator->running)
    take_over (estimator, cw_takeoff_ref (found));
  wait_to_improve (estimator);
}

void
cw_estimator_give_up (CwEstimator *estimator)
{
  g_return_if_fail (CW_IS_ESTIMATOR (estimator));
  g_clear_pointer (&estimator->wanted, cw_node_unref);
  g_clear_handle_id (&estimator->waiting, g_source_remove);
  if (estimator->running)
    g_cancellable_cancel (estimator->running);
}

static void
cw_estimator_get_property (GObject *object, guint id, GValue *value,
                           GParamSpec *pspec)
{
  if (id == PROP_BUSY)
    g_value_set_boolean (value, cw_estimator_is_busy (CW_ESTIMATOR (object)));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
cw_estimator_finalize (GObject *object)
{
  CwEstimator *estimator = CW_ESTIMATOR (object);
  g_clear_handle_id (&estimator->waiting, g_source_remove);
  g_clear_pointer (&estimator->wanted, cw_node_unref);
  g_clear_pointer (&estimator->takeoff, cw_takeoff_unref);
  g_clear_object (&estimator->running);
  G_OBJECT_CLASS (cw_estimator_parent_class)->finalize (object);
}

static void
cw_estimator_class_init (CwEstimatorClass *class)
{
  GObjectClass *object_class = G_OBJECT_CLASS (class);
  object_class->get_property = cw_estimator_get_property;
  object_class->finalize = cw_estimator_finalize;

  props[PROP_BUSY] = g_param_spec_boolean (
      "busy", NULL, NULL, FALSE, G_PARAM_READABLE | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, props);

  signals[TAKEOFF_CHANGED]
      = g_signal_new ("takeoff-changed", CW_TYPE_ESTIMATOR, G_SIGNAL_RUN_LAST,
                      0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[SEARCH_CHANGED]
      = g_signal_new ("search-changed", CW_TYPE_ESTIMATOR, G_SIGNAL_RUN_LAST,
                      0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
cw_estimator_init (CwEstimator *estimator)
{
  estimator->searches = TRUE;
}

CwEstimator *
cw_estimator_new (void)
{
  return g_object_new (CW_TYPE_ESTIMATOR, NULL);
}
