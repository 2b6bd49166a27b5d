/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One panel cut by straight saw cuts that run right across what is being cut,
 * as a tree: a node is a rectangle; its children are what one set of parallel
 * cuts makes of it, side by side or one above the other.
 *
 *   +--------+-----+            across ─┬─ along ─┬─ blank 1
 *   |   1    |     |                    │         └─ blank 2
 *   +--------+  3  |                    ├─ blank 3
 *   |   2    |     | free               └─ free
 *   +--------+-----+------+
 *
 * Children of one node may stand in any order, so the free ones among them
 * are always kept together as a single one. A cut node never has a child
 * that is cut the same way.
 *
 * The kerf: rectangles here are one kerf wider and higher than the saw leaves
 * them, blanks and panels alike. Then a cut takes nothing and every sum comes
 * out right; see cw-cut-plan.h.
 */
#pragma once

#include "cw-length.h"

G_BEGIN_DECLS

/* Of a blank or a panel, with the kerf added. */
typedef struct
{
  CwLength width, height;
} CwCutSize;

typedef enum
{
  CW_CUT_NODE_FREE,
  CW_CUT_NODE_BLANK,
  CW_CUT_NODE_ACROSS,    /* children side by side: upright cuts */
  CW_CUT_NODE_ALONG,     /* children one above the other: level cuts */
  CW_CUT_NODE_UNUSED,    /* a place in the array that holds no node */
} CwCutNodeKind;

typedef struct
{
  CwLength width, height;
  gint32 parent, first, next;   /* places in the array, -1: none */
  gint32 blank;                 /* which blank; -1: none */
  gint16 kind;                  /* CwCutNodeKind */
  gint16 turned;                /* the blank lies across the panel */
} CwCutNode;

typedef struct
{
  CwCutNode *nodes;             /* the panel itself is nodes[0] */
  gint32 n_nodes, n_allocated;
  gint32 unused;                /* head of the list of unused places */
  gint32 n_blanks;
  gint32 n_free;
  gint32 *free;                 /* places of the free nodes */
  gint32 n_free_allocated;
  CwLength most_width, most_height;   /* of the free nodes, each by itself */
} CwCutTree;

void cw_cut_tree_init (CwCutTree *tree, CwLength width, CwLength height);
void cw_cut_tree_clear (CwCutTree *tree);
/* On the heap. */
CwCutTree *cw_cut_tree_dup (const CwCutTree *tree);
void cw_cut_tree_free (CwCutTree *tree);

/* @to: a tree, or zeros */
void cw_cut_tree_copy (CwCutTree *to, const CwCutTree *from);

/*
 * cw_cut_tree_place:
 * @at: a free node at least as large as the blank
 * @first: which cut is made first where two are needed:
 *   CW_CUT_NODE_ACROSS or CW_CUT_NODE_ALONG
 *
 * Returns: the blank's node
 */
gint32 cw_cut_tree_place (CwCutTree *tree, gint32 at, gint32 blank,
                          CwLength width, CwLength height, gboolean turned,
                          CwCutNodeKind first);

/* Takes the blanks at and below @at out, appends them to @blanks, and joins
 * the space with the free space beside it. */
void cw_cut_tree_remove (CwCutTree *tree, gint32 at, GArray *blanks);

/* @names: for each blank the number that it has from now on. */
void cw_cut_tree_rename (CwCutTree *tree, const guint *names);

G_END_DECLS
