/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Points and boxes in whole nanometres: x to the right, y up.
 */
#pragma once

#include "cw-length.h"

G_BEGIN_DECLS

typedef struct
{
  CwLength x, y;
} CwPoint;

/* Closed box; empty when left > right or bottom > top. */
typedef struct
{
  CwLength left, bottom, right, top;
} CwBox;

static inline CwPoint
cw_point (CwLength x, CwLength y)
{
  return (CwPoint) { x, y };
}

static inline gboolean
cw_point_equal (CwPoint a, CwPoint b)
{
  return a.x == b.x && a.y == b.y;
}

static inline CwLength
cw_box_width (const CwBox *box)
{
  return box->right - box->left;
}

static inline CwLength
cw_box_height (const CwBox *box)
{
  return box->top - box->bottom;
}

/* The box about both. */
static inline CwBox
cw_box_around (const CwBox *a, const CwBox *b)
{
  return (CwBox){ MIN (a->left, b->left), MIN (a->bottom, b->bottom),
                  MAX (a->right, b->right), MAX (a->top, b->top) };
}

/* TRUE when the insides of the boxes share area (touching is not meeting). */
static inline gboolean
cw_box_overlaps (const CwBox *a, const CwBox *b)
{
  return a->left < b->right && b->left < a->right && a->bottom < b->top
         && b->bottom < a->top;
}

/* Area in m². Exact up to the last rounding to double. */
double cw_box_area (const CwBox *box);

G_END_DECLS
