/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits that the window offers and no tool makes: pure functions from a
 * project to the next. All return a new project, (transfer full).
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

/* What a new elevation lies on; the origin is on the page as turned, in
 * points from its top left. */
typedef struct
{
  const char *sheet;    /* (nullable): on none */
  double at_x, at_y;
} CwSheetPlace;

/* @id: (out): of the new elevation, owned by the caller. */
CwProject *cw_edit_add_elevation (const CwProject *project, const char *name,
                                  const CwSheetPlace *place, char **id);

/* Whether an elevation has that name; one that none has: "Wall 1", "Wall 2" …
 * (transfer full) */
gboolean cw_edit_is_name_taken (const CwProject *project, const char *name);
char *cw_edit_free_name (const CwProject *project, const char *stem);

/* With everything on it, under new ids; the name is the caller's. */
CwProject *cw_edit_duplicate_elevation (const CwProject *project,
                                        const char *id, const char *name,
                                        char **new_id);
/* The same turned over left to right; on no sheet, which shows it otherwise. */
CwProject *cw_edit_duplicate_mirrored (const CwProject *project,
                                       const char *id, const char *name,
                                       char **new_id);
CwProject *cw_edit_remove_elevation (const CwProject *project, const char *id);
/* @by places down the list; at most to its ends. */
CwProject *cw_edit_move_elevation (const CwProject *project, const char *id,
                                   int by);
CwProject *cw_edit_rename (const CwProject *project, const char *id,
                           const char *name);

/* A buildup like that one, under a name of its own, for one elevation. */
CwProject *cw_edit_vary_buildup (const CwProject *project,
                                 const char *elevation_id, const char *name);

/* A window's mark of a common size, to be changed. */
CwProject *cw_edit_add_mark (const CwProject *project);

typedef struct
{
  const char *name, *file, *sha256;
  gint64 page;
} CwSheetEntry;

CwProject *cw_edit_add_sheet (const CwProject *project,
                              const CwSheetEntry *entry, char **id);
/* Elevations drawn on it stay, on no sheet. */
CwProject *cw_edit_remove_sheet (const CwProject *project, const char *id);
CwProject *cw_edit_turn_sheet (const CwProject *project, const char *sheet_id,
                               gint64 turn);

/* Every sheet's file rewritten by @rewrite, which gives the new text (owned
 * by the caller). The same project with a new reference when none differs. */
typedef char *(*CwRewriteFunc) (const char *file, gpointer data);
CwProject *cw_edit_rewrite_sheets (const CwProject *project,
                                   CwRewriteFunc rewrite, gpointer data);

G_END_DECLS
