/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a node stands in a project, so that it is found again after edits
 * have put other nodes in its place: from the root or a node with an id, down
 * through at most two slots.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

#define CW_NODE_PATH_STEPS 2

typedef struct
{
  char *id;                 /* NULL: from the project itself */
  guint n_steps;
  struct
  {
    guint slot;
    int index;              /* -1: a single child */
  } steps[CW_NODE_PATH_STEPS];
} CwNodePath;

CwNodePath *cw_node_path_new (const char *id);
/* @path with a further step, (transfer full). */
CwNodePath *cw_node_path_down (const CwNodePath *path, guint slot, int index);
void cw_node_path_free (CwNodePath *path);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwNodePath, cw_node_path_free)

/* Borrowed; NULL when nothing stands there. */
const CwNode *cw_node_path_find (const CwNodePath *path,
                                 const CwProject *project);

/* For merging edits: equal for equal paths. (transfer full) */
char *cw_node_path_text (const CwNodePath *path);

G_END_DECLS
