/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads the lines of one page of a sheet's file on another thread, from a
 * reading of the file of its own: the one that the page is drawn from is at
 * work on a thread already.
 */
#pragma once

#include <gio/gio.h>

#include "cw-drawn-lines.h"

G_BEGIN_DECLS

typedef struct CwSheetLiner CwSheetLiner;

/* @ready: called on the main thread when the lines are there, never after
 * cw_sheet_liner_free() and not when they cannot be read */
CwSheetLiner *cw_sheet_liner_new (GFile *file, guint page, guint turn,
                                  void (*ready) (gpointer data),
                                  gpointer data, GDestroyNotify free_data);

/* Ends the reading as soon as can be. */
void cw_sheet_liner_free (CwSheetLiner *liner);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwSheetLiner, cw_sheet_liner_free)

gboolean cw_sheet_liner_is_of (const CwSheetLiner *liner, guint page,
                               guint turn);

/* Borrowed; NULL: not yet, or not to be had. */
const CwDrawnLines *cw_sheet_liner_lines (const CwSheetLiner *liner);

G_END_DECLS
