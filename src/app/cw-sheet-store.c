/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-sheet-store.h"

#include "cw-i18n.h"
#include "cw-sheet-liner.h"
#include "cw-thread.h"

/* One sheet's file: opened once for each path. */
typedef struct
{
  char *path;             /* as the sheet states it */
  CwSheetSource *source;
  char *problem;
  CwSheetLiner *liner;    /* of the page as the sheet shows it */
} Opened;

struct _CwSheetStore
{
  GObject parent;
  CwDocument *document;
  CwResolveFunc resolve;
  gpointer data;
  GHashTable *sheets;     /* sheet id → Opened */
  GCancellable *ending;
};

G_DEFINE_FINAL_TYPE (CwSheetStore, cw_sheet_store, G_TYPE_OBJECT)

enum { SHEET_READY, LINES_READY, N_SIGNALS };
static guint signals[N_SIGNALS];

static void
opened_free (Opened *opened)
{
  g_free (opened->path);
  g_clear_object (&opened->source);
  g_free (opened->problem);
  g_clear_pointer (&opened->liner, cw_sheet_liner_free);
  g_free (opened);
}

typedef struct
{
  char *id, *path, *sha256;
  GFile *file;
  CwSheetSource *source;
  char *problem;
} Opening;

static void
opening_free (Opening *opening)
{
  g_free (opening->id);
  g_free (opening->path);
  g_free (opening->sha256);
  g_object_unref (opening->file);
  g_clear_object (&opening->source);
  g_free (opening->problem);
  g_free (opening);
}

static void
check_content (Opening *opening, GCancellable *cancellable)
{
  if (!opening->sha256 || !*opening->sha256)
    return;
  g_autofree char *now
      = cw_sheet_source_sha256 (opening->file, cancellable, NULL);
  if (now && g_ascii_strcasecmp (now, opening->sha256) != 0)
    opening->problem = g_strdup (
        _("This file has changed since it was added as a sheet. Check that "
          "walls drawn on it still lie where they should."));
}

static void
open_in_thread (GTask *task, gpointer source, gpointer data,
                GCancellable *cancellable)
{
  Opening *opening = data;
  g_autoptr (GError) error = NULL;
  opening->source = cw_sheet_source_open (opening->file, &error);
  if (opening->source)
    check_content (opening, cancellable);
  else
    opening->problem = g_strdup (error->message);
  g_task_return_boolean (task, TRUE);
}

typedef struct
{
  CwSheetStore *store;
  char *id;
} Reading;

static void
reading_free (gpointer reading)
{
  g_free (((Reading *) reading)->id);
  g_free (reading);
}

static void
lines_read (gpointer data)
{
  Reading *reading = data;
  g_signal_emit (reading->store, signals[LINES_READY], 0, reading->id);
}

/* The lines of the page that the sheet shows now, unless they are there or
 * under way. Those of another page are gone at once. */
static void
read_lines (CwSheetStore *store, const CwSheet *sheet, Opened *opened)
{
  if (!opened->source
      || (opened->liner
          && cw_sheet_liner_is_of (opened->liner, (guint) sheet->page,
                                   (guint) sheet->turn)))
    return;
  Reading *reading = g_new (Reading, 1);
  reading->store = store;
  reading->id = g_strdup (sheet->id);
  gboolean had = opened->liner != NULL;
  g_clear_pointer (&opened->liner, cw_sheet_liner_free);
  g_autoptr (GFile) file = store->resolve (sheet->file, store->data);
  opened->liner = cw_sheet_liner_new (file, (guint) sheet->page,
                                      (guint) sheet->turn, lines_read,
                                      reading, reading_free);
  if (had)
    lines_read (reading);
}

static void
open_ended (GObject *object, GAsyncResult *result, gpointer data)
{
  CwSheetStore *store = CW_SHEET_STORE (object);
  Opening *opening = g_task_get_task_data (G_TASK (result));
  Opened *opened = g_hash_table_lookup (store->sheets, opening->id);
  /* Meanwhile the sheet may be gone or name another file. */
  if (g_cancellable_is_cancelled (store->ending)
      || !g_task_propagate_boolean (G_TASK (result), NULL) || !opened
      || g_strcmp0 (opened->path, opening->path) != 0)
    return;
  opened->source = g_steal_pointer (&opening->source);
  opened->problem = g_steal_pointer (&opening->problem);
  g_signal_emit (store, signals[SHEET_READY], 0, opening->id);
  const CwSheet *sheet
      = cw_project_sheet (cw_document_project (store->document), opening->id);
  if (sheet)
    read_lines (store, sheet, opened);
}

static void
open_sheet (CwSheetStore *store, const CwSheet *sheet)
{
  Opened *opened = g_new0 (Opened, 1);
  opened->path = g_strdup (sheet->file);
  g_hash_table_insert (store->sheets, g_strdup (sheet->id), opened);

  Opening *opening = g_new0 (Opening, 1);
  opening->id = g_strdup (sheet->id);
  opening->path = g_strdup (sheet->file);
  opening->sha256 = g_strdup (sheet->sha256);
  opening->file = store->resolve (sheet->file, store->data);
  cw_thread_run (store, open_in_thread, opening,
                 (GDestroyNotify) opening_free, store->ending, open_ended,
                 NULL);
}

static void
look_for_sheets (CwSheetStore *store)
{
  const CwList *sheets = cw_document_project (store->document)->sheets;
  for (gsize i = 0; i < cw_list_length (sheets); i++)
    {
      const CwSheet *sheet = cw_list_at (sheets, i);
      Opened *opened = g_hash_table_lookup (store->sheets, sheet->id);
      if (!opened || g_strcmp0 (opened->path, sheet->file) != 0)
        open_sheet (store, sheet);
      else
        read_lines (store, sheet, opened);
    }
}

CwSheetSource *
cw_sheet_store_source (CwSheetStore *store, const char *sheet_id)
{
  g_return_val_if_fail (CW_IS_SHEET_STORE (store), NULL);
  Opened *opened = g_hash_table_lookup (store->sheets, sheet_id);
  return opened ? opened->source : NULL;
}

const CwDrawnLines *
cw_sheet_store_lines (CwSheetStore *store, const char *sheet_id)
{
  g_return_val_if_fail (CW_IS_SHEET_STORE (store), NULL);
  Opened *opened = g_hash_table_lookup (store->sheets, sheet_id);
  return opened && opened->liner ? cw_sheet_liner_lines (opened->liner)
                                 : NULL;
}

const char *
cw_sheet_store_problem (CwSheetStore *store, const char *sheet_id)
{
  g_return_val_if_fail (CW_IS_SHEET_STORE (store), NULL);
  Opened *opened = g_hash_table_lookup (store->sheets, sheet_id);
  return opened ? opened->problem : NULL;
}

static void
cw_sheet_store_dispose (GObject *object)
{
  CwSheetStore *store = CW_SHEET_STORE (object);
  g_cancellable_cancel (store->ending);
  if (store->document)
    g_signal_handlers_disconnect_by_data (store->document, store);
  g_clear_object (&store->document);
  G_OBJECT_CLASS (cw_sheet_store_parent_class)->dispose (object);
}

static void
cw_sheet_store_finalize (GObject *object)
{
  CwSheetStore *store = CW_SHEET_STORE (object);
  g_hash_table_unref (store->sheets);
  g_object_unref (store->ending);
  G_OBJECT_CLASS (cw_sheet_store_parent_class)->finalize (object);
}

static void
cw_sheet_store_class_init (CwSheetStoreClass *class)
{
  GObjectClass *object_class = G_OBJECT_CLASS (class);
  object_class->dispose = cw_sheet_store_dispose;
  object_class->finalize = cw_sheet_store_finalize;
  signals[SHEET_READY] = g_signal_new ("sheet-ready", CW_TYPE_SHEET_STORE,
                                       G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                       G_TYPE_NONE, 1, G_TYPE_STRING);
  signals[LINES_READY] = g_signal_new ("lines-ready", CW_TYPE_SHEET_STORE,
                                       G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                       G_TYPE_NONE, 1, G_TYPE_STRING);
}

static void
cw_sheet_store_init (CwSheetStore *store)
{
  store->ending = g_cancellable_new ();
  store->sheets = g_hash_table_new_full (g_str_hash, g_str_equal, g_free,
                                         (GDestroyNotify) opened_free);
}

CwSheetStore *
cw_sheet_store_new (CwDocument *document, CwResolveFunc resolve,
                    gpointer data)
{
  CwSheetStore *store = g_object_new (CW_TYPE_SHEET_STORE, NULL);
  store->document = g_object_ref (document);
  store->resolve = resolve;
  store->data = data;
  g_signal_connect_swapped (document, "changed", G_CALLBACK (look_for_sheets),
                            store);
  look_for_sheets (store);
  return store;
}
