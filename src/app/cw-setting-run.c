/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-setting-run.h"

#include "cw-search-progress.h"
#include "cw-thread.h"

struct _CwSettingRun
{
  GObject parent;
  CwProject *project;
  char *elevation_id;
  gboolean alone;
  GCancellable *cancellable;
  CwSearchProgress *progress;   /* NULL: has ended */
  GArray *choices;
};

G_DEFINE_FINAL_TYPE (CwSettingRun, cw_setting_run, G_TYPE_OBJECT)

enum { PROGRESS, ENDED, N_SIGNALS };
static guint signals[N_SIGNALS];

/* What the thread works on. */
typedef struct
{
  GPtrArray *walls;             /* CwWall */
  gboolean alone;
  CwSettingAllowed allowed;
  CwSearchProgress *progress;
} Work;

static void
work_free (Work *work)
{
  g_ptr_array_unref (work->walls);
  cw_search_progress_unref (work->progress);
  g_free (work);
}

static void
tell_progress (gpointer run)
{
  g_signal_emit (run, signals[PROGRESS], 0);
}

static void
note (guint n_done, guint n_all, gpointer progress)
{
  cw_search_progress_set (0, (double) n_done / MAX (n_all, 1), progress);
}

static void
search (GTask *task, gpointer source, gpointer data,
        GCancellable *cancellable)
{
  const Work *work = data;
  const CwWall *const *walls = (const CwWall *const *) work->walls->pdata;
  GArray *choices
      = work->alone
            ? cw_setting_search (walls[0], &work->allowed, note,
                                 work->progress, cancellable)
            : cw_setting_search_walls (walls, work->walls->len,
                                       &work->allowed, note, work->progress,
                                       cancellable);
  g_task_return_pointer (task, choices, (GDestroyNotify) g_array_unref);
}

static void
ended (GObject *source, GAsyncResult *result, gpointer data)
{
  CwSettingRun *run = CW_SETTING_RUN (source);
  run->choices = g_task_propagate_pointer (G_TASK (result), NULL);
  cw_search_progress_end (run->progress);
  g_clear_pointer (&run->progress, cw_search_progress_unref);
  g_signal_emit (run, signals[ENDED], 0);
}

static gboolean
is_searched (const CwSettingRun *run, const CwElevation *elevation,
             const char *buildup_id)
{
  return run->alone ? g_strcmp0 (elevation->id, run->elevation_id) == 0
                    : g_strcmp0 (elevation->buildup, buildup_id) == 0;
}

/* (transfer full) (element-type CwElevation): borrowed ones */
static GPtrArray *
searched_in (const CwSettingRun *run, const CwProject *project)
{
  GPtrArray *searched = g_ptr_array_new ();
  const CwElevation *elevation
      = cw_project_elevation (project, run->elevation_id);
  for (gsize i = 0; elevation && i < cw_list_length (project->elevations); i++)
    {
      const CwElevation *other = cw_list_at (project->elevations, i);
      if (is_searched (run, other, elevation->buildup))
        g_ptr_array_add (searched, (gpointer) other);
    }
  return searched;
}

static Work *
work_new (CwSettingRun *run, const CwSettingAllowed *allowed)
{
  g_autoptr (GPtrArray) searched = searched_in (run, run->project);
  Work *work = g_new0 (Work, 1);
  work->walls
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_wall_unref);
  for (guint i = 0; i < searched->len; i++)
    g_ptr_array_add (work->walls,
                     cw_wall_new (run->project, searched->pdata[i]));
  work->alone = run->alone;
  work->allowed = *allowed;
  work->progress = cw_search_progress_ref (run->progress);
  return work;
}

CwSettingRun *
cw_setting_run_new (const CwProject *project, const char *elevation_id,
                    gboolean alone, const CwSettingAllowed *allowed)
{
  CwSettingRun *run = g_object_new (CW_TYPE_SETTING_RUN, NULL);
  run->project = cw_node_ref (project);
  run->elevation_id = g_strdup (elevation_id);
  run->alone = alone;
  run->cancellable = g_cancellable_new ();
  run->progress = cw_search_progress_new (tell_progress, run);
  cw_thread_run_quietly (run, search, work_new (run, allowed),
                         (GDestroyNotify) work_free, run->cancellable, ended,
                         NULL);
  return run;
}

void
cw_setting_run_stop (CwSettingRun *run)
{
  g_return_if_fail (CW_IS_SETTING_RUN (run));
  if (run->progress)
    g_cancellable_cancel (run->cancellable);
}

gboolean
cw_setting_run_is_going (CwSettingRun *run)
{
  g_return_val_if_fail (CW_IS_SETTING_RUN (run), FALSE);
  return run->progress != NULL;
}

gboolean
cw_setting_run_was_stopped (CwSettingRun *run)
{
  g_return_val_if_fail (CW_IS_SETTING_RUN (run), FALSE);
  return g_cancellable_is_cancelled (run->cancellable);
}

double
cw_setting_run_share (CwSettingRun *run)
{
  g_return_val_if_fail (CW_IS_SETTING_RUN (run), 0);
  double share = 1;
  if (run->progress)
    cw_search_progress_get (run->progress, NULL, &share);
  return share;
}

const GArray *
cw_setting_run_choices (CwSettingRun *run)
{
  g_return_val_if_fail (CW_IS_SETTING_RUN (run), NULL);
  return run->choices;
}

const char *
cw_setting_run_elevation (CwSettingRun *run)
{
  g_return_val_if_fail (CW_IS_SETTING_RUN (run), NULL);
  return run->elevation_id;
}

gboolean
cw_setting_run_is_alone (CwSettingRun *run)
{
  g_return_val_if_fail (CW_IS_SETTING_RUN (run), FALSE);
  return run->alone;
}

static const CwBuildup *
buildup_in (CwSettingRun *run, const CwProject *project)
{
  const CwElevation *elevation
      = cw_project_elevation (project, run->elevation_id);
  return elevation ? cw_project_buildup (project, elevation->buildup) : NULL;
}

gboolean
cw_setting_run_holds_for (CwSettingRun *run, const CwProject *project)
{
  g_return_val_if_fail (CW_IS_SETTING_RUN (run), FALSE);
  g_autoptr (GPtrArray) then = searched_in (run, run->project);
  g_autoptr (GPtrArray) now = searched_in (run, project);
  if (then->len != now->len || project->marks != run->project->marks
      || buildup_in (run, project) != buildup_in (run, run->project))
    return FALSE;
  for (guint i = 0; i < then->len; i++)
    if (then->pdata[i] != now->pdata[i])
      return FALSE;
  return TRUE;
}

static void
cw_setting_run_finalize (GObject *object)
{
  CwSettingRun *run = CW_SETTING_RUN (object);
  cw_node_unref (run->project);
  g_free (run->elevation_id);
  g_clear_object (&run->cancellable);
  g_clear_pointer (&run->choices, g_array_unref);
  G_OBJECT_CLASS (cw_setting_run_parent_class)->finalize (object);
}

static void
cw_setting_run_class_init (CwSettingRunClass *class)
{
  G_OBJECT_CLASS (class)->finalize = cw_setting_run_finalize;
  signals[PROGRESS] = g_signal_new ("progress", CW_TYPE_SETTING_RUN,
                                    G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                    G_TYPE_NONE, 0);
  signals[ENDED] = g_signal_new ("ended", CW_TYPE_SETTING_RUN,
                                 G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_NONE, 0);
}

static void
cw_setting_run_init (CwSettingRun *run)
{
}
