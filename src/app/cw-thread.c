/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-thread.h"

#include <sys/resource.h>

/* Of the system's 20 steps. */
#define QUIET 10

typedef struct
{
  GObject *owner;
  GAsyncReadyCallback done;
  gpointer data;
} Call;

static void
ended (GObject *source, GAsyncResult *result, gpointer data)
{
  Call *call = data;
  if (call->done)
    call->done (call->owner, result, call->data);
  g_clear_object (&call->owner);
  g_free (call);
}

/* (transfer full) */
static GTask *
task_new (gpointer owner, gpointer task_data, GDestroyNotify free,
          GCancellable *cancellable, GAsyncReadyCallback done, gpointer data)
{
  Call *call = g_new0 (Call, 1);
  call->owner = owner ? g_object_ref (owner) : NULL;
  call->done = done;
  call->data = data;
  GTask *task = g_task_new (NULL, cancellable, ended, call);
  g_task_set_check_cancellable (task, FALSE);
  g_task_set_task_data (task, task_data, free);
  return task;
}

void
cw_thread_run (gpointer owner, GTaskThreadFunc work, gpointer task_data,
               GDestroyNotify free, GCancellable *cancellable,
               GAsyncReadyCallback done, gpointer data)
{
  g_autoptr (GTask) task
      = task_new (owner, task_data, free, cancellable, done, data);
  g_task_run_in_thread (task, work);
}

typedef struct
{
  GTask *task;
  GTaskThreadFunc work;
} Quiet;

/* The thread's own priority: a thread of the pool would keep it. */
static gpointer
run_quietly (gpointer data)
{
  g_autofree Quiet *quiet = data;
  GTask *task = quiet->task;
  (void) setpriority (PRIO_PROCESS, 0, QUIET);
  quiet->work (task, NULL, g_task_get_task_data (task),
               g_task_get_cancellable (task));
  g_object_unref (task);
  return NULL;
}

void
cw_thread_run_quietly (gpointer owner, GTaskThreadFunc work,
                       gpointer task_data, GDestroyNotify free,
                       GCancellable *cancellable, GAsyncReadyCallback done,
                       gpointer data)
{
  Quiet *quiet = g_new (Quiet, 1);
  quiet->task = task_new (owner, task_data, free, cancellable, done, data);
  quiet->work = work;
  g_thread_unref (g_thread_new ("quiet work", run_quietly, quiet));
}
