/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the parts of the inspector share.
 */
#pragma once

#include "cw-inspector.h"
#include "cw-node-path.h"

G_BEGIN_DECLS

/* Parts that stay folded until they are wanted. */
typedef enum
{
  FOLD_SIDES,
  FOLD_BUILDUP,
  FOLD_MARKS,
  FOLD_PROJECT,
  FOLD_BID,
  N_FOLDS,
} Fold;

struct _CwInspector
{
  GtkWidget parent;
  GtkWidget *scroller, *box;
  CwJob *job;
  char *shape;              /* what is shown; equal: only values changed */
  GPtrArray *groups;        /* CwFieldGroup, borrowed */
  gboolean open[N_FOLDS];
  /* While a list changes: which one, and its button that adds. */
  gconstpointer changing;
  GtkWidget *adder;
};

const CwProject *cw_inspector_project (CwInspector *inspector);

/* The fields of one element. Takes @path. */
void cw_inspector_add_single (CwInspector *inspector, GtkWidget *box,
                              const char *title, CwNodePath *path);

/* The fold of the bid, with lists that grow and shrink. */
void cw_inspector_add_bid (CwInspector *inspector, GtkWidget *box);
void cw_inspector_append_bid_shape (GString *shape, const CwProject *project);

G_END_DECLS
