/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a display list lies in memory, for the painters of this layer and of
 * those above that write drawings in other forms.
 *
 *   items    | wall | outline | piece-whole | piece-whole | piece-number | …
 *                │                    │                          │
 *   ops      | M L L L Z | … | M L L L Z | …                     │
 *   numbers  | x y x y … | …                                     │
 *   texts                                      | x y angle … | … ┘
 *   strings  | ids and texts, each ended by a NUL
 *
 * Ops take numbers in order: M and L two, A six (cx cy rx ry from to), Z none.
 */
#pragma once

#include "cw-display-list.h"

G_BEGIN_DECLS

typedef enum
{
  CW_OP_MOVE = 'M',
  CW_OP_LINE = 'L',
  CW_OP_ARC = 'A',
  CW_OP_CLOSE = 'Z',
} CwPathOp;

typedef struct
{
  double left, bottom, right, top;    /* mm; empty when left > right */
} CwExtent;

typedef struct
{
  guint8 style;           /* CwStyle */
  guint8 kind;            /* CwShapeOp */
  gboolean is_closed;     /* has a closed part: an open path is never filled */
  guint32 id;             /* place in strings + 1; 0: none */
  guint32 first, n_ops;   /* ops of a path; first alone: the text's index */
  guint32 first_number;
  CwExtent extent;        /* of a path; of a text its point */
} CwDisplayItem;

typedef struct
{
  double x, y, angle;
  double room_width, room_height;     /* mm; 0: any */
  guint32 text;                       /* place in strings */
  guint8 anchor;                      /* CwAnchor */
} CwDisplayText;

struct CwDisplayList
{
  gatomicrefcount count;
  GArray *items;          /* CwDisplayItem */
  GByteArray *ops;        /* CwPathOp */
  GArray *numbers;        /* double */
  GArray *texts;          /* CwDisplayText */
  GString *strings;
  guint32 last_id;        /* + 1, so that a run of one id is stored once */
  gboolean is_building;   /* between begin and end */
};

static inline const CwDisplayItem *
cw_display_list_item (const CwDisplayList *list, gsize index)
{
  return &g_array_index (list->items, CwDisplayItem, index);
}

static inline const CwDisplayText *
cw_display_list_text (const CwDisplayList *list, const CwDisplayItem *item)
{
  return &g_array_index (list->texts, CwDisplayText, item->first);
}

static inline const double *
cw_display_list_numbers (const CwDisplayList *list, const CwDisplayItem *item)
{
  return &g_array_index (list->numbers, double, item->first_number);
}

static inline const char *
cw_display_list_string (const CwDisplayList *list, guint32 place)
{
  return list->strings->str + place;
}

/* NULL when the item has none. */
static inline const char *
cw_display_list_id (const CwDisplayList *list, const CwDisplayItem *item)
{
  return item->id ? list->strings->str + item->id - 1 : NULL;
}

/* How many numbers @op takes. */
guint cw_path_op_numbers (guint8 op);

static inline void
cw_extent_add (CwExtent *extent, double x, double y)
{
  extent->left = MIN (extent->left, x);
  extent->bottom = MIN (extent->bottom, y);
  extent->right = MAX (extent->right, x);
  extent->top = MAX (extent->top, y);
}

G_END_DECLS
