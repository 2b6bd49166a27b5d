/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a node keeps what its type's tables describe.
 */
#pragma once

#include "cw-node.h"

G_BEGIN_DECLS

static inline gint64 *
cw_node_value_at (const CwNode *node, const CwField *field)
{
  return (gint64 *) G_STRUCT_MEMBER_P (node, field->offset);
}

static inline char **
cw_node_text_at (const CwNode *node, const CwField *field)
{
  return (char **) G_STRUCT_MEMBER_P (node, field->offset);
}

static inline CwNode **
cw_node_child_at (const CwNode *node, const CwSlot *slot)
{
  return (CwNode **) G_STRUCT_MEMBER_P (node, slot->offset);
}

static inline CwList **
cw_node_list_at (const CwNode *node, const CwSlot *slot)
{
  return (CwList **) G_STRUCT_MEMBER_P (node, slot->offset);
}

G_END_DECLS
