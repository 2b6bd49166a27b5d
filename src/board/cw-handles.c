/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-handles.h"

#include <math.h>
#include <string.h>

#include "cw-dimension.h"
#include "cw-edit-corners.h"
#include "cw-hit.h"

/* What is left of a box when a side is pushed past the other. */
#define LEAST CW_MM (1)

static void
add (GArray *handles, CwLength x, CwLength y, guint kind, guint corner)
{
  CwHandle handle = { cw_point (x, y), (CwHandleKind) kind, corner };

  g_array_append_val (handles, handle);
}

static void
add_box (GArray *handles, const CwBox *box)
{
  CwLength x = box->left + cw_box_width (box) / 2;
  CwLength y = box->bottom + cw_box_height (box) / 2;

  add (handles, box->left, box->bottom, CW_HANDLE_LEFT | CW_HANDLE_BOTTOM, 0);
  add (handles, box->right, box->bottom, CW_HANDLE_RIGHT | CW_HANDLE_BOTTOM,
       0);
  add (handles, box->right, box->top, CW_HANDLE_RIGHT | CW_HANDLE_TOP, 0);
  add (handles, box->left, box->top, CW_HANDLE_LEFT | CW_HANDLE_TOP, 0);
  add (handles, x, box->bottom, CW_HANDLE_BOTTOM, 0);
  add (handles, box->right, y, CW_HANDLE_RIGHT, 0);
  add (handles, x, box->top, CW_HANDLE_TOP, 0);
  add (handles, box->left, y, CW_HANDLE_LEFT, 0);
}

static void
add_springing (GArray *handles, const CwWall *wall, const char *id)
{
  const CwWallOpening *found = cw_hit_opening (wall, id);
  const CwOpening *arch = found ? found->opening : NULL;

  if (arch == NULL || arch->node.type != &cw_arch_type || arch->rise <= 0)
    return;
  add (handles, arch->x, arch->y + arch->height, CW_HANDLE_SPRINGING, 0);
  add (handles, arch->x + arch->width, arch->y + arch->height,
       CW_HANDLE_SPRINGING, 0);
}

/* At each corner, and at the middle of each arc. */
static void
add_corners (GArray *handles, const CwList *list)
{
  g_autoptr (GArray) corners = cw_corners_from_list (list);
  CwLength outward = cw_corners_are_clockwise (corners) ? -1 : 1;

  for (guint i = 0; i < corners->len; i++)
    {
      const CwCorner *corner = &g_array_index (corners, CwCorner, i);
      const CwCorner *next
          = &g_array_index (corners, CwCorner, (i + 1) % corners->len);
      CwPoint bow = cw_bow_point (corner->at, next->at,
                                  outward * corner->sagitta, 0.5);

      add (handles, corner->at.x, corner->at.y, CW_HANDLE_CORNER, i);
      if (corner->sagitta != 0)
        add (handles, bow.x, bow.y, CW_HANDLE_BOW, i);
    }
}

static void
add_dimension (GArray *handles, const CwDimension *dimension)
{
  CwPoint line[2];

  cw_dimension_line (dimension, line);
  add (handles, dimension->x, dimension->y, CW_HANDLE_END, 0);
  add (handles, dimension->to_x, dimension->to_y, CW_HANDLE_END, 1);
  add (handles, line[0].x + (line[1].x - line[0].x) / 2,
       line[0].y + (line[1].y - line[0].y) / 2, CW_HANDLE_LINE, 0);
}

static const CwUnclad *
find_unclad (const CwWall *wall, const char *id)
{
  for (guint i = 0; i < wall->unclads->len; i++)
    {
      const CwUnclad *unclad = g_ptr_array_index (wall->unclads, i);

      if (strcmp (unclad->id, id) == 0)
        return unclad;
    }
  return NULL;
}

GArray *
cw_handles (const CwWall *wall, const char *id)
{
  GArray *handles = g_array_new (FALSE, FALSE, sizeof (CwHandle));
  CwBox box;

  g_return_val_if_fail (wall != NULL && id != NULL, handles);

  if (strcmp (wall->elevation->id, id) == 0)
    {
      if (wall->elevation->outline)
        add_corners (handles,
                     ((CwOutline *) wall->elevation->outline)->corners);
    }
  else if (cw_hit_dimension (wall, id))
    add_dimension (handles, cw_hit_dimension (wall, id));
  else if (find_unclad (wall, id))
    add_corners (handles, find_unclad (wall, id)->corners);
  else if (cw_hit_bounds (wall, id, &box))
    {
      add_box (handles, &box);
      add_springing (handles, wall, id);
    }
  return handles;
}

gboolean
cw_handles_pick (const GArray *handles, CwPoint at, CwLength reach,
                 CwHandle *handle)
{
  double nearest = (double) reach;
  gboolean found = FALSE;

  for (guint i = 0; i < handles->len; i++)
    {
      const CwHandle *there = &g_array_index (handles, CwHandle, i);
      double away = hypot ((double) (there->at.x - at.x),
                           (double) (there->at.y - at.y));

      if (away <= nearest)
        {
          nearest = away;
          *handle = *there;
          found = TRUE;
        }
    }
  return found;
}

CwBox
cw_handle_drag (const CwBox *box, CwHandleKind kind, CwPoint to)
{
  CwBox dragged = *box;

  if (kind & CW_HANDLE_LEFT)
    dragged.left = MIN (to.x, box->right - LEAST);
  if (kind & CW_HANDLE_RIGHT)
    dragged.right = MAX (to.x, box->left + LEAST);
  if (kind & CW_HANDLE_BOTTOM)
    dragged.bottom = MIN (to.y, box->top - LEAST);
  if (kind & CW_HANDLE_TOP)
    dragged.top = MAX (to.y, box->bottom + LEAST);
  return dragged;
}
