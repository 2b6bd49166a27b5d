/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-liner.h"

#include "cw-sheet-lines.h"
#include "cw-thread.h"

struct CwSheetLiner
{
  guint page, turn;
  CwDrawnLines *lines;
  GCancellable *ending;
  void (*ready) (gpointer data);
  gpointer data;
  GDestroyNotify free_data;
};

typedef struct
{
  GFile *file;
  guint page, turn;
} Wanted;

static void
wanted_free (Wanted *wanted)
{
  g_object_unref (wanted->file);
  g_free (wanted);
}

static void
read_in_thread (GTask *task, gpointer source, gpointer data,
                GCancellable *cancellable)
{
  const Wanted *wanted = data;
  g_autoptr (GError) error = NULL;
  g_autoptr (CwSheetSource) sheet
      = cw_sheet_source_open (wanted->file, &error);
  CwDrawnLines *lines = NULL;

  if (sheet && wanted->page >= 1
      && wanted->page <= cw_sheet_source_n_pages (sheet))
    lines = cw_sheet_source_lines (sheet, wanted->page, wanted->turn,
                                   cancellable, &error);
  g_task_return_pointer (task, lines, (GDestroyNotify) cw_drawn_lines_unref);
}

/* What cannot be read is not snapped to; that the sheet itself cannot be is
 * said by whoever shows it. */
static void
read_ended (GObject *object, GAsyncResult *result, gpointer data)
{
  GTask *task = G_TASK (result);

  if (g_cancellable_is_cancelled (g_task_get_cancellable (task)))
    return;
  CwSheetLiner *liner = data;
  liner->lines = g_task_propagate_pointer (task, NULL);
  if (liner->lines)
    liner->ready (liner->data);
}

CwSheetLiner *
cw_sheet_liner_new (GFile *file, guint page, guint turn,
                    void (*ready) (gpointer data), gpointer data,
                    GDestroyNotify free_data)
{
  g_return_val_if_fail (G_IS_FILE (file) && ready, NULL);

  CwSheetLiner *liner = g_new0 (CwSheetLiner, 1);
  liner->page = page;
  liner->turn = turn;
  liner->ending = g_cancellable_new ();
  liner->ready = ready;
  liner->data = data;
  liner->free_data = free_data;

  Wanted *wanted = g_new (Wanted, 1);
  *wanted = (Wanted) { g_object_ref (file), page, turn };
  cw_thread_run_quietly (NULL, read_in_thread, wanted,
                         (GDestroyNotify) wanted_free, liner->ending,
                         read_ended, liner);
  return liner;
}

void
cw_sheet_liner_free (CwSheetLiner *liner)
{
  g_return_if_fail (liner != NULL);

  g_cancellable_cancel (liner->ending);
  g_object_unref (liner->ending);
  g_clear_pointer (&liner->lines, cw_drawn_lines_unref);
  if (liner->free_data)
    liner->free_data (liner->data);
  g_free (liner);
}

gboolean
cw_sheet_liner_is_of (const CwSheetLiner *liner, guint page, guint turn)
{
  return liner->page == page && liner->turn == turn;
}

const CwDrawnLines *
cw_sheet_liner_lines (const CwSheetLiner *liner)
{
  return liner->lines;
}
