/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-estimator.h"

#include "cw-thread.h"

/* A project that stays so long is looked at again; short of it, the next step
 * of a drag would only have to wait. */
#define STAYS_MS 100

struct _CwEstimator
{
  GObject parent;
  CwProject *wanted;            /* the newest project */
  CwTakeoff *takeoff;           /* the last good one */
  GCancellable *running;        /* NULL: no thread is at work */
  guint waiting;                /* for the project to stay; 0: not */
};

G_DEFINE_FINAL_TYPE (CwEstimator, cw_estimator, G_TYPE_OBJECT)

enum { TAKEOFF_CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

enum { PROP_0, PROP_BUSY, N_PROPS };
static GParamSpec *props[N_PROPS];

/* What the thread works on. */
typedef struct
{
  CwProject *project;
  CwTakeoff *former;            /* of the same project: to be improved */
} Work;

static void
work_free (Work *work)
{
  cw_node_unref (work->project);
  g_clear_pointer (&work->former, cw_takeoff_unref);
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

const CwTakeoff *
cw_estimator_takeoff (CwEstimator *estimator)
{
  g_return_val_if_fail (CW_IS_ESTIMATOR (estimator), NULL);
  return estimator->takeoff;
}

static void
do_work (GTask *task, gpointer source, gpointer data,
         GCancellable *cancellable)
{
  Work *work = data;
  CwTakeoff *takeoff
      = work->former && work->former->project == work->project
            ? cw_takeoff_improve (work->former, CW_CUT_EFFORT_LIVE,
                                  cancellable)
            : cw_takeoff_new (work->project, work->former, cancellable);
  g_task_return_pointer (task, takeoff, (GDestroyNotify) cw_takeoff_unref);
}

static void start (CwEstimator *estimator);

static void
take_over (CwEstimator *estimator, CwTakeoff *takeoff)
{
  g_clear_pointer (&estimator->takeoff, cw_takeoff_unref);
  estimator->takeoff = takeoff;
  g_object_notify_by_pspec (G_OBJECT (estimator), props[PROP_BUSY]);
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
  if (cw_estimator_is_busy (estimator) && !estimator->running
      && !estimator->waiting)
    estimator->waiting = g_timeout_add (STAYS_MS, has_stayed, estimator);
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
  if (takeoff && is_newest)
    {
      take_over (estimator, takeoff);
      wait_to_improve (estimator);
    }
  else
    {
      g_clear_pointer (&takeoff, cw_takeoff_unref);
      start (estimator);
    }
}

static void
start (CwEstimator *estimator)
{
  if (estimator->running || !estimator->wanted)
    return;
  Work *work = g_new0 (Work, 1);
  work->project = cw_node_ref (estimator->wanted);
  if (estimator->takeoff)
    work->former = cw_takeoff_ref (estimator->takeoff);

  estimator->running = g_cancellable_new ();
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
  g_clear_handle_id (&estimator->waiting, g_source_remove);
  if (estimator->running)
    g_cancellable_cancel (estimator->running);
  else
    start (estimator);
  g_object_notify_by_pspec (G_OBJECT (estimator), props[PROP_BUSY]);
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
}

static void
cw_estimator_init (CwEstimator *estimator)
{
}

CwEstimator *
cw_estimator_new (void)
{
  return g_object_new (CW_TYPE_ESTIMATOR, NULL);
}
