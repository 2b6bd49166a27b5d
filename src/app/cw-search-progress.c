/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-search-progress.h"

/* Steps of the share: finer than anybody sees. */
#define STEPS 1000

struct CwSearchProgress
{
  gatomicrefcount count;
  int n_panels, steps;          /* atomic */
  int is_waiting;               /* atomic: the main thread is called already */
  CwSearchTold told;            /* of the main thread; NULL: has ended */
  gpointer data;
};

CwSearchProgress *
cw_search_progress_new (CwSearchTold told, gpointer data)
{
  CwSearchProgress *progress = g_new0 (CwSearchProgress, 1);
  g_atomic_ref_count_init (&progress->count);
  progress->told = told;
  progress->data = data;
  return progress;
}

CwSearchProgress *
cw_search_progress_ref (CwSearchProgress *progress)
{
  g_atomic_ref_count_inc (&progress->count);
  return progress;
}

void
cw_search_progress_unref (CwSearchProgress *progress)
{
  if (g_atomic_ref_count_dec (&progress->count))
    g_free (progress);
}

void
cw_search_progress_end (CwSearchProgress *progress)
{
  progress->told = NULL;
}

static gboolean
tell (gpointer data)
{
  CwSearchProgress *progress = data;
  g_atomic_int_set (&progress->is_waiting, FALSE);
  if (progress->told)
    progress->told (progress->data);
  return G_SOURCE_REMOVE;
}

void
cw_search_progress_set (guint n_panels, double share, gpointer data)
{
  CwSearchProgress *progress = data;
  int steps = (int) (CLAMP (share, 0, 1) * STEPS);
  if (steps == g_atomic_int_get (&progress->steps)
      && (int) n_panels == g_atomic_int_get (&progress->n_panels))
    return;
  g_atomic_int_set (&progress->n_panels, (int) n_panels);
  g_atomic_int_set (&progress->steps, steps);
  if (g_atomic_int_compare_and_exchange (&progress->is_waiting, FALSE, TRUE))
    g_idle_add_full (G_PRIORITY_DEFAULT_IDLE, tell,
                     cw_search_progress_ref (progress),
                     (GDestroyNotify) cw_search_progress_unref);
}

void
cw_search_progress_get (CwSearchProgress *progress, guint *n_panels,
                        double *share)
{
  if (n_panels)
    *n_panels = (guint) g_atomic_int_get (&progress->n_panels);
  if (share)
    *share = (double) g_atomic_int_get (&progress->steps) / STEPS;
}
