/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The files behind the sheets of a document: opened and checked off the main
 * thread as sheets come in. "sheet-ready" (sheet id) comes when a sheet can
 * be shown or when it is known why not; "lines-ready" (sheet id) when the lines
 * of its page have been read, which takes a little longer, or are gone.
 */
#pragma once

#include "cw-document.h"
#include "cw-drawn-lines.h"
#include "cw-sheet-source.h"

G_BEGIN_DECLS

#define CW_TYPE_SHEET_STORE (cw_sheet_store_get_type ())
G_DECLARE_FINAL_TYPE (CwSheetStore, cw_sheet_store, CW, SHEET_STORE, GObject)

/* The file that a sheet's text stands for. (transfer full) */
typedef GFile *(*CwResolveFunc) (const char *file, gpointer data);

CwSheetStore *cw_sheet_store_new (CwDocument *document, CwResolveFunc resolve,
                                  gpointer data);

/* Borrowed; NULL while it is being opened or when it cannot be. */
CwSheetSource *cw_sheet_store_source (CwSheetStore *store,
                                      const char *sheet_id);

/* Borrowed; NULL while they are being read or when they cannot be. */
const CwDrawnLines *cw_sheet_store_lines (CwSheetStore *store,
                                          const char *sheet_id);

/* A sentence about a sheet that is missing or has another content than when
 * it was added; NULL when all is well. Borrowed. */
const char *cw_sheet_store_problem (CwSheetStore *store,
                                    const char *sheet_id);

G_END_DECLS
