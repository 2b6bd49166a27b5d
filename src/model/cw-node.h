/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every element of a project is a node: a counted value that never changes
 * once it has been shared. A change makes new nodes from the changed one up
 * to the project and shares all the rest, so a node's pointer can key a cache
 * and any thread may read any project.
 *
 *   CwProject ── elevations ── CwElevation ── items ── CwOpening
 *       │             │               └────── outline ── CwCornerNode
 *       └ buildups …  └ other elevations, shared by both projects
 *
 * Life of a node: cw_node_new() or cw_node_copy() gives a node that its maker
 * may set; from the first cw_node_ref(), or once put into a parent, list or
 * document, it is frozen and setters abort. Getters borrow; new, copy, with
 * and ref give a reference to the caller.
 */
#pragma once

#include "cw-field.h"

G_BEGIN_DECLS

typedef struct CwNode CwNode;
typedef struct CwNodeType CwNodeType;
typedef struct CwList CwList;
typedef struct CwForeign CwForeign;

/* Where a node keeps children: one node or a list, of the named types. */
typedef struct
{
  const char *name;                   /* "outline", "items"; for messages and paths */
  gsize offset;                       /* CwNode * or CwList * (never NULL for lists) */
  gboolean is_list;
  const CwNodeType *const *types;     /* what may stand there, NULL-ended */
  gboolean always;                    /* present even when the file leaves it out: a child, or one in a list */
} CwSlot;

struct CwNodeType
{
  const char *element;                /* its name in the file */
  const char *label;                  /* N_() shown */
  gsize size;                         /* of the struct, CwNode first */
  const CwField *fields;              /* in file order */
  guint n_fields;                     /* at most 64 */
  const CwSlot *slots;                /* in file order */
  guint n_slots;
};

struct CwNode
{
  const CwNodeType *type;
  gatomicrefcount count;
  guint64 stated;                     /* bit i: fields[i] was stated, not a default */
  CwForeign *foreign;                 /* (nullable) (owned): attributes and elements of other namespaces; its maker sets it */
  gboolean frozen;
};

CwNode *cw_node_new (const CwNodeType *type);       /* all defaults, nothing stated */
CwNode *cw_node_copy (const CwNode *node);          /* shallow: children shared */
gpointer cw_node_ref (gconstpointer node);          /* freezes; returns the same pointer */
void cw_node_unref (gpointer node);
void cw_node_freeze (CwNode *node);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwNode, cw_node_unref)

/* Same type, fields, stated marks, foreign content and equal children. */
gboolean cw_node_equal (gconstpointer a, gconstpointer b);

/* Field access by table; @index is the field's place in its type. */
gint64 cw_node_get (const CwNode *node, guint index);
const char *cw_node_get_text (const CwNode *node, guint index);
void cw_node_set (CwNode *node, guint index, gint64 value);      /* unfrozen nodes; marks it stated */
void cw_node_set_text (CwNode *node, guint index, const char *text);
void cw_node_unset (CwNode *node, guint index);                  /* back to the default, not stated */
gboolean cw_node_states (const CwNode *node, guint index);

/* The place of the field of that name, or -1. */
int cw_node_type_field (const CwNodeType *type, const char *name);

/* By name, for makers and tests; abort on a name that is not there. */
void cw_node_put (CwNode *node, const char *field, gint64 value);
void cw_node_put_text (CwNode *node, const char *field, const char *text);

/* A frozen copy with one field changed (or unset). (transfer full) */
CwNode *cw_node_with (const CwNode *node, guint index, gint64 value);
CwNode *cw_node_with_text (const CwNode *node, guint index, const char *text);
CwNode *cw_node_without (const CwNode *node, guint index);

/* Children. Setters take a reference and are for unfrozen nodes. */
CwNode *cw_node_child (const CwNode *node, guint slot);
CwList *cw_node_list (const CwNode *node, guint slot);
void cw_node_set_child (CwNode *node, guint slot, const CwNode *child);
void cw_node_set_list (CwNode *node, guint slot, const CwList *list);

/*
 * cw_node_replace:
 * A tree like @root with the node @old (found by pointer, anywhere below or
 * @root itself) replaced by @by, or removed from its list when @by is NULL.
 * All nodes off the path are shared. Returns @root itself, with a new
 * reference, when @old is not in it or @by is @old.
 */
CwNode *cw_node_replace (const CwNode *root, const CwNode *old,
                         const CwNode *by);

/* The node with that id anywhere in @root, borrowed, or NULL. */
const CwNode *cw_node_find (const CwNode *root, const char *id);

/* The id of a node of a type with one, else NULL. */
const char *cw_node_id (const CwNode *node);

/* Lists: counted arrays of nodes, immutable as nodes are. */
CwList *cw_list_new (CwNode *const *nodes, gsize n);    /* refs the nodes */
CwList *cw_list_ref (const CwList *list);
void cw_list_unref (CwList *list);
gsize cw_list_length (const CwList *list);
gpointer cw_list_at (const CwList *list, gsize index);  /* borrowed */
CwList *cw_list_insert (const CwList *list, gsize index, const CwNode *node);
CwList *cw_list_append (const CwList *list, const CwNode *node);
CwList *cw_list_remove (const CwList *list, gsize index);
CwList *cw_list_set (const CwList *list, gsize index, const CwNode *node);
int cw_list_index (const CwList *list, const CwNode *node);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwList, cw_list_unref)

G_END_DECLS
