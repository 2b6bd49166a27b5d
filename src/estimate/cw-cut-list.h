/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The cut list: every panel that is sawn, alike ones together, with the
 * pieces that come of it. A pure function of a takeoff; immutable, counted.
 */
#pragma once

#include "cw-cut-face.h"
#include "cw-cut-whole.h"
#include "cw-takeoff.h"

G_BEGIN_DECLS

typedef struct
{
  guint wall;                /* its place in the takeoff */
  guint piece;               /* its place in the wall's layout */
  guint slot;                /* its place on the panel, cw_cut_letter() */
  guint n;                   /* so often, of walls alike */
} CwCutListPiece;

typedef struct
{
  guint number;              /* from 1, in the order of the list */
  const CwBuildup *buildup;
  const CwPanelPlan *plan;   /* where the first of them is */
  guint panel;               /* and its place there */
  CwCutWhole *whole;         /* all that comes out of it */
  guint n;                   /* panels alike: same blanks, shapes and cuts */
  GArray *pieces;            /* CwCutListPiece, slot by slot */
} CwCutListPanel;

typedef struct
{
  gatomicrefcount count;
  CwTakeoff *takeoff;
  GPtrArray *panels;         /* CwCutListPanel */
  guint n_panels;            /* sawn, all in all */
} CwCutList;

/* (transfer full) (nullable): NULL when cancelled */
CwCutList *cw_cut_list_new (const CwTakeoff *takeoff,
                            GCancellable *cancellable);
CwCutList *cw_cut_list_ref (const CwCutList *list);
void cw_cut_list_unref (CwCutList *list);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwCutList, cw_cut_list_unref)

/* Something of @panel goes on that wall of the takeoff. */
gboolean cw_cut_list_panel_is_for (const CwCutListPanel *panel, guint wall);

/* Borrowed. */
const CwPiece *cw_cut_list_piece (const CwCutList *list,
                                  const CwCutListPiece *piece,
                                  const CwLayout **layout);

G_END_DECLS
