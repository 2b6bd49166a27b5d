/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-marginal.h"

#include "cw-thread.h"

struct _CwMarginal
{
  GObject parent;
  CwDocument *document;
  CwProject *base, *wanted;     /* NULL: no edits go on */
  CwTakeoff *before;            /* of a base, the last one worked out */
  CwProject *shown;             /* that the figures are of */
  CwTakeoffChange figures;
  gboolean has_figures;
  GCancellable *running;        /* NULL: no thread is at work */
};

G_DEFINE_FINAL_TYPE (CwMarginal, cw_marginal, G_TYPE_OBJECT)

static guint changed_signal;

/* What the thread works on, and gives. */
typedef struct
{
  CwProject *base, *project;
  CwTakeoff *before;            /* (nullable): of the base or a former one */
  CwTakeoff *after;
} Work;

static void
work_free (Work *work)
{
  cw_node_unref (work->base);
  cw_node_unref (work->project);
  g_clear_pointer (&work->before, cw_takeoff_unref);
  g_clear_pointer (&work->after, cw_takeoff_unref);
  g_free (work);
}

/* (transfer full) (nullable): NULL when cancelled */
static CwTakeoff *
live_takeoff (const CwProject *project, const CwTakeoff *former,
              GCancellable *cancellable)
{
  g_autoptr (CwTakeoff) quick = cw_takeoff_new (project, former, cancellable);
  return quick ? cw_takeoff_improve (quick, CW_CUT_EFFORT_LIVE, cancellable)
               : NULL;
}

static void
work_out (GTask *task, gpointer source, gpointer data,
          GCancellable *cancellable)
{
  Work *work = data;
  if (!work->before || work->before->project != work->base)
    {
      CwTakeoff *before
          = live_takeoff (work->base, work->before, cancellable);
      g_clear_pointer (&work->before, cw_takeoff_unref);
      work->before = before;
    }
  if (work->before)
    work->after = live_takeoff (work->project, work->before, cancellable);
  g_task_return_boolean (task, work->after != NULL);
}

static void
tell (CwMarginal *marginal)
{
  g_signal_emit (marginal, changed_signal, 0);
}

static void start (CwMarginal *marginal);

static void
take_over (CwMarginal *marginal, const Work *work)
{
  if (work->before)
    {
      g_clear_pointer (&marginal->before, cw_takeoff_unref);
      marginal->before = cw_takeoff_ref (work->before);
    }
  if (!work->after || work->base != marginal->base)
    return;
  marginal->figures = cw_takeoff_change (work->before, work->after);
  marginal->has_figures = TRUE;
  g_clear_pointer (&marginal->shown, cw_node_unref);
  marginal->shown = cw_node_ref (work->project);
}

static void
worked_out (GObject *source, GAsyncResult *result, gpointer data)
{
  CwMarginal *marginal = CW_MARGINAL (source);
  g_clear_object (&marginal->running);
  take_over (marginal, g_task_get_task_data (G_TASK (result)));
  start (marginal);
  tell (marginal);
}

gboolean
cw_marginal_is_stale (CwMarginal *marginal)
{
  g_return_val_if_fail (CW_IS_MARGINAL (marginal), FALSE);
  return marginal->wanted && marginal->shown != marginal->wanted;
}

/* A run of work goes to its end while the edits go on: figures that are a
 * little late are better than none until the pointer rests. */
static void
start (CwMarginal *marginal)
{
  if (marginal->running || !cw_marginal_is_stale (marginal))
    return;
  Work *work = g_new0 (Work, 1);
  work->base = cw_node_ref (marginal->base);
  work->project = cw_node_ref (marginal->wanted);
  work->before = marginal->before ? cw_takeoff_ref (marginal->before) : NULL;
  marginal->running = g_cancellable_new ();
  cw_thread_run (marginal, work_out, work, (GDestroyNotify) work_free,
                 marginal->running, worked_out, NULL);
}

static void
forget (CwMarginal *marginal)
{
  g_clear_pointer (&marginal->base, cw_node_unref);
  g_clear_pointer (&marginal->wanted, cw_node_unref);
  g_clear_pointer (&marginal->shown, cw_node_unref);
  marginal->has_figures = FALSE;
  if (marginal->running)
    g_cancellable_cancel (marginal->running);
}

static void
document_changed (CwMarginal *marginal)
{
  const CwProject *base = cw_document_run_base (marginal->document);
  if (!base && !marginal->base)
    return;
  if (base != marginal->base)
    forget (marginal);
  if (base && !marginal->base)
    marginal->base = cw_node_ref (base);
  if (base)
    {
      g_clear_pointer (&marginal->wanted, cw_node_unref);
      marginal->wanted
          = cw_node_ref (cw_document_project (marginal->document));
    }
  start (marginal);
  tell (marginal);
}

const CwTakeoffChange *
cw_marginal_figures (CwMarginal *marginal)
{
  g_return_val_if_fail (CW_IS_MARGINAL (marginal), NULL);
  return marginal->has_figures ? &marginal->figures : NULL;
}

static void
cw_marginal_finalize (GObject *object)
{
  CwMarginal *marginal = CW_MARGINAL (object);
  forget (marginal);
  g_clear_object (&marginal->running);
  g_clear_pointer (&marginal->before, cw_takeoff_unref);
  g_clear_object (&marginal->document);
  G_OBJECT_CLASS (cw_marginal_parent_class)->finalize (object);
}

static void
cw_marginal_class_init (CwMarginalClass *class)
{
  G_OBJECT_CLASS (class)->finalize = cw_marginal_finalize;
  changed_signal = g_signal_new ("changed", CW_TYPE_MARGINAL,
                                 G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_NONE, 0);
}

static void
cw_marginal_init (CwMarginal *marginal)
{
}

CwMarginal *
cw_marginal_new (CwDocument *document)
{
  CwMarginal *marginal = g_object_new (CW_TYPE_MARGINAL, NULL);
  marginal->document = g_object_ref (document);
  g_signal_connect_object (document, "changed",
                           G_CALLBACK (document_changed), marginal,
                           G_CONNECT_SWAPPED);
  return marginal;
}
