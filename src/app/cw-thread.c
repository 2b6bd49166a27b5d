/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-thread.h"

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

void
cw_thread_run (gpointer owner, GTaskThreadFunc work, gpointer task_data,
               GDestroyNotify free, GCancellable *cancellable,
               GAsyncReadyCallback done, gpointer data)
{
  Call *call = g_new0 (Call, 1);
  call->owner = owner ? g_object_ref (owner) : NULL;
  call->done = done;
  call->data = data;
  g_autoptr (GTask) task = g_task_new (NULL, cancellable, ended, call);
  g_task_set_check_cancellable (task, FALSE);
  g_task_set_task_data (task, task_data, free);
  g_task_run_in_thread (task, work);
}
