/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-snap-gap.h"

#include <stdlib.h>

/* As guides do. */
#define REACH_SHARE 0.75

/* All is worked out sideways; upright, x and y change about. */
static CwBox
turned (CwBox box, gboolean upright)
{
  return upright ? (CwBox) { box.bottom, box.left, box.top, box.right } : box;
}

static void
turn (CwPoint *point)
{
  *point = cw_point (point->y, point->x);
}

/* What stands beside the box, by where it begins and ends. */
typedef struct
{
  CwLength left, right;
} Stand;

static int
compare_stands (gconstpointer a, gconstpointer b)
{
  const Stand *one = a, *other = b;

  return one->left < other->left ? -1 : one->left > other->left;
}

/* A side that is being placed has no height: it may be level with an end. */
static gboolean
is_beside (const CwBox *there, const CwBox *box)
{
  if (box->top == box->bottom)
    return there->top >= box->bottom && there->bottom <= box->top;
  return there->top > box->bottom && there->bottom < box->top;
}

/* The ends of the wall, and the openings level with @box. */
static GArray *
find_stands (const CwSnapField *field, const CwBox *box, gboolean upright)
{
  GArray *stands = g_array_new (FALSE, FALSE, sizeof (Stand));
  CwBox whole = turned (cw_region_box (field->wall->outline), upright);
  Stand ends[] = { { whole.left, whole.left }, { whole.right, whole.right } };

  g_array_append_vals (stands, ends, 2);
  for (guint i = 0; i < field->wall->openings->len; i++)
    {
      const CwWallOpening *opening
          = &g_array_index (field->wall->openings, CwWallOpening, i);
      CwBox there = turned (cw_region_box (opening->shape), upright);
      Stand stand = { there.left, there.right };

      if (is_beside (&there, box)
          && !(field->skip_ids
               && g_strv_contains (field->skip_ids, opening->drawn->id)))
        g_array_append_val (stands, stand);
    }
  g_array_sort (stands, compare_stands);
  return stands;
}

typedef struct
{
  const CwBox *box;
  CwLength reach;
  gboolean found;
  CwSnapGap gap;
} Search;

static CwPoint
level_with (const Search *search, CwLength x)
{
  return cw_point (x, (search->box->bottom + search->box->top) / 2);
}

/* The box at @left, between gaps from a to b and from c to d. */
static void
offer (Search *search, CwLength left, CwLength a, CwLength b, CwLength c,
       CwLength d)
{
  CwLength move = left - search->box->left;

  if (ABS (move) > search->reach || b <= a || d <= c
      || (search->found && ABS (move) >= ABS (search->gap.move)))
    return;
  search->found = TRUE;
  search->gap = (CwSnapGap) { move,
                              { level_with (search, a), level_with (search, c) },
                              { level_with (search, b), level_with (search, d) } };
}

static const Stand *
stand_at (const GArray *stands, guint i)
{
  return &g_array_index (stands, Stand, i);
}

/* Between neighbours i and i + 1. */
static void
look_between (Search *search, const GArray *stands, guint i)
{
  const Stand *a = stand_at (stands, i), *b = stand_at (stands, i + 1);
  CwLength width = cw_box_width (search->box), left;

  left = (a->right + b->left - width) / 2;
  if (width > 0)
    offer (search, left, a->right, left, left + width, b->left);
  if (i > 0)
    {
      CwLength former = stand_at (stands, i - 1)->right;

      left = a->right + (a->left - former);
      if (left + width < b->left)
        offer (search, left, former, a->left, a->right, left);
    }
  if (i + 2 < stands->len)
    {
      CwLength next = stand_at (stands, i + 2)->left;

      left = b->left - (next - b->right) - width;
      if (left > a->right)
        offer (search, left, left + width, b->left, b->right, next);
    }
}

gboolean
cw_snap_gap (const CwSnapField *field, const CwBox *box, gboolean upright,
             CwSnapGap *gap)
{
  g_autoptr (GArray) stands = NULL;
  CwBox level = turned (*box, upright);
  Search search = { .box = &level };

  g_return_val_if_fail (field && box && gap, FALSE);

  if (field->wall == NULL || field->wall->outline == NULL
      || field->radius <= 0)
    return FALSE;
  search.reach = (CwLength) (REACH_SHARE * (double) field->radius);
  stands = find_stands (field, &level, upright);
  for (guint i = 0; i + 1 < stands->len; i++)
    look_between (&search, stands, i);
  for (guint i = 0; upright && i < 2; i++)
    {
      turn (&search.gap.from[i]);
      turn (&search.gap.to[i]);
    }
  *gap = search.gap;
  return search.found;
}
