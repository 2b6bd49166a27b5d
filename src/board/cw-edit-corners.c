/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-edit-corners.h"

#include <math.h>

/* Parts of a bowed side that are looked at one by one. */
#define ARC_PARTS 64

static CwCorner *
corner_at (const GArray *corners, guint i)
{
  return &g_array_index (corners, CwCorner, i % corners->len);
}

static double
distance (CwPoint a, CwPoint b)
{
  return hypot ((double) (b.x - a.x), (double) (b.y - a.y));
}

static const CwNode *
owner_node (const CwProject *project, const char *owner)
{
  const CwNode *node = cw_node_find (&project->node, owner);

  if (node && node->type == &cw_elevation_type)
    return ((const CwElevation *) node)->outline;
  return node && node->type == &cw_unclad_type ? node : NULL;
}

GArray *
cw_edit_corners (const CwProject *project, const char *owner)
{
  const CwNode *node;

  g_return_val_if_fail (project && owner, NULL);

  node = owner_node (project, owner);
  return node ? cw_corners_from_list (cw_node_list (node, CW_OUTLINE_CORNERS))
              : NULL;
}

CwProject *
cw_edit_put_corners (const CwProject *project, const char *owner,
                     const GArray *corners, char **fault)
{
  const CwNode *node = owner_node (project, owner);
  CwOutlineCheck check
      = cw_outline_check ((CwCorner *) corners->data, corners->len);
  g_autoptr (CwList) list = NULL;
  g_autoptr (CwNode) by = NULL;

  g_return_val_if_fail (node != NULL, NULL);
  G_STATIC_ASSERT ((int) CW_OUTLINE_CORNERS == (int) CW_UNCLAD_CORNERS);

  if (check.fault != CW_OUTLINE_VALID)
    {
      if (fault)
        *fault = cw_outline_check_text (&check);
      return NULL;
    }
  list = cw_corners_to_list ((CwCorner *) corners->data, corners->len);
  by = cw_node_copy (node);
  cw_node_set_list (by, CW_OUTLINE_CORNERS, list);
  return cw_edit_replace (project, node, by);
}

/* The bow of a part of a circle of that radius over a chord. */
static CwLength
part_bow (double radius, CwPoint from, CwPoint to, CwLength like)
{
  double half = distance (from, to) / 2;
  double rest = radius * radius - half * half;
  double bow = radius - sqrt (MAX (rest, 0));

  return (CwLength) llround (like < 0 ? -bow : bow);
}

CwProject *
cw_edit_insert_corner (const CwProject *project, const char *owner,
                       guint side, CwPoint at, char **fault)
{
  g_autoptr (GArray) corners = cw_edit_corners (project, owner);
  CwCorner *from, by;
  CwPoint to;

  g_return_val_if_fail (corners && side < corners->len, NULL);

  from = corner_at (corners, side);
  to = corner_at (corners, side + 1)->at;
  by = *from;
  by.at = at;
  if (from->sagitta != 0)
    {
      double bow = fabs ((double) from->sagitta);
      double half = distance (from->at, to) / 2;
      double radius = (half * half + bow * bow) / (2 * bow);

      by.sagitta = part_bow (radius, at, to, from->sagitta);
      from->sagitta = part_bow (radius, from->at, at, from->sagitta);
    }
  g_array_insert_val (corners, side + 1, by);
  return cw_edit_put_corners (project, owner, corners, fault);
}

CwProject *
cw_edit_remove_corner (const CwProject *project, const char *owner,
                       guint corner, char **fault)
{
  g_autoptr (GArray) corners = cw_edit_corners (project, owner);

  g_return_val_if_fail (corners && corner < corners->len, NULL);

  g_array_remove_index (corners, corner);
  return cw_edit_put_corners (project, owner, corners, fault);
}

CwProject *
cw_edit_bow_side (const CwProject *project, const char *owner, guint side,
                  CwLength sagitta, char **fault)
{
  g_autoptr (GArray) corners = cw_edit_corners (project, owner);

  g_return_val_if_fail (corners && side < corners->len, NULL);

  if (corner_at (corners, side)->sagitta == sagitta)
    return cw_node_ref (project);
  corner_at (corners, side)->sagitta = sagitta;
  return cw_edit_put_corners (project, owner, corners, fault);
}

CwLength
cw_bow_through (CwPoint from, CwPoint by, CwPoint to)
{
  double dx = (double) (to.x - from.x), dy = (double) (to.y - from.y);
  double chord = hypot (dx, dy), half = chord / 2;
  double px = (double) (by.x - from.x), py = (double) (by.y - from.y);
  double along, beside, centre, radius;

  if (chord < 1)
    return 0;
  along = (px * dx + py * dy) / chord - half;
  beside = (px * dy - py * dx) / chord;
  if (fabs (beside) < 1)
    return 0;
  centre = (along * along + beside * beside - half * half) / (2 * beside);
  radius = hypot (half, centre);
  return (CwLength) llround (centre + (beside < 0 ? -radius : radius));
}

gboolean
cw_corners_are_clockwise (const GArray *corners)
{
  double twice = 0;

  for (guint i = 0; i < corners->len; i++)
    {
      CwPoint zero = corner_at (corners, 0)->at;
      CwPoint a = corner_at (corners, i)->at;
      CwPoint b = corner_at (corners, i + 1)->at;

      twice += (double) (a.x - zero.x) * (double) (b.y - zero.y)
               - (double) (b.x - zero.x) * (double) (a.y - zero.y);
    }
  return twice < 0;
}

CwPoint
cw_bow_point (CwPoint from, CwPoint to, CwLength right, double share)
{
  double bow = (double) right;
  double dx = (double) (to.x - from.x), dy = (double) (to.y - from.y);
  double half = hypot (dx, dy) / 2, radius, angle, x, y;

  if (fabs (bow) < 1 || half < 1)
    return cw_point (from.x + (CwLength) llround (dx * share),
                     from.y + (CwLength) llround (dy * share));
  radius = (half * half + bow * bow) / (2 * bow);
  angle = 2 * atan2 (bow, half) * (2 * share - 1);
  x = half + radius * sin (angle);
  y = radius * cos (angle) - (radius - bow);
  return cw_point (
      from.x + (CwLength) llround ((x * dx + y * dy) / (2 * half)),
      from.y + (CwLength) llround ((x * dy - y * dx) / (2 * half)));
}

static CwPoint
nearest_on_straight (CwPoint from, CwPoint to, CwPoint at)
{
  double dx = (double) (to.x - from.x), dy = (double) (to.y - from.y);
  double share = ((double) (at.x - from.x) * dx + (double) (at.y - from.y) * dy)
                 / MAX (dx * dx + dy * dy, 1);

  return cw_bow_point (from, to, 0, CLAMP (share, 0, 1));
}

static CwPoint
nearest_on_bow (CwPoint from, CwPoint to, CwLength bow, CwPoint at)
{
  CwPoint best = cw_bow_point (from, to, bow, 0);

  for (guint i = 1; i <= ARC_PARTS; i++)
    {
      CwPoint point = cw_bow_point (from, to, bow, (double) i / ARC_PARTS);

      if (distance (point, at) < distance (best, at))
        best = point;
    }
  return best;
}

int
cw_corners_side_at (const GArray *corners, CwPoint at, CwLength reach,
                    CwPoint *on)
{
  double best = (double) reach;
  CwLength turn = cw_corners_are_clockwise (corners) ? -1 : 1;
  int found = -1;

  for (guint i = 0; i < corners->len; i++)
    {
      const CwCorner *from = corner_at (corners, i);
      CwPoint to = corner_at (corners, i + 1)->at;
      CwPoint there = from->sagitta == 0
                          ? nearest_on_straight (from->at, to, at)
                          : nearest_on_bow (from->at, to,
                                            turn * from->sagitta, at);
      double away = distance (there, at);

      if (away > best)
        continue;
      best = away;
      found = (int) i;
      *on = there;
    }
  return found;
}
