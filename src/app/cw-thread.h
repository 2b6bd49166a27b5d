/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Work on another thread for an object of the main thread.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

/*
 * cw_thread_run:
 * @owner: (nullable): kept until @done has run, and let go on this thread;
 *   a task's own source object may be let go on the other one
 * @work: gets no source object, @task_data and @cancellable
 * @task_data: freed by @free on whichever thread is last
 * @done: gets @owner as its source
 *
 * A @work that is cancelled still tells what it has.
 */
void cw_thread_run (gpointer owner, GTaskThreadFunc work, gpointer task_data,
                    GDestroyNotify free, GCancellable *cancellable,
                    GAsyncReadyCallback done, gpointer data);

/* Likewise, on a thread of its own that gives way to all others: for work
 * that takes seconds and nobody waits for. */
void cw_thread_run_quietly (gpointer owner, GTaskThreadFunc work,
                            gpointer task_data, GDestroyNotify free,
                            GCancellable *cancellable,
                            GAsyncReadyCallback done, gpointer data);

G_END_DECLS
