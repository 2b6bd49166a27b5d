/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a blank fits tightest on what is left of panels and rests: the plain
 * way to fill one, without a search.
 */
#pragma once

#include "cw-cut-tree.h"

G_BEGIN_DECLS

typedef struct
{
  CwCutTree *tree;           /* NULL: nowhere */
  gint32 node;
  CwCutSize size;            /* of the blank as it lies there */
  gboolean turned;
  double room;               /* of the node */
} CwCutFit;

/* Looks at @tree for a place for a blank of @size, the kerf added, that is
 * tighter than @best. @turn: the blank may lie across. */
void cw_cut_fit_look (CwCutTree *tree, CwCutSize size, gboolean turn,
                      CwCutFit *best);

/* Puts the blank of that number there, leaving the longer rest whole. */
void cw_cut_fit_put (const CwCutFit *fit, guint blank);

G_END_DECLS
