/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Ids for many new elements at once: a stem and the next free number.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

typedef struct CwFreeIds CwFreeIds;

/* All ids of @project are taken. (transfer full) */
CwFreeIds *cw_free_ids_new (const CwProject *project);
void cw_free_ids_free (CwFreeIds *ids);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwFreeIds, cw_free_ids_free)

/* An id with the stem of @like that nothing has yet; taken from now on.
 * (transfer full) */
char *cw_free_ids_take (CwFreeIds *ids, const char *like);

/* A copy of @node, not frozen, under a free id when it has one at all.
 * (transfer full) */
CwNode *cw_free_ids_copy (CwFreeIds *ids, const CwNode *node);

/* The same of every node of @list. (transfer full) */
CwList *cw_free_ids_copy_list (CwFreeIds *ids, const CwList *list);

G_END_DECLS
