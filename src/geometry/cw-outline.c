/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-outline.h"

#include "cw-exact.h"
#include "cw-i18n.h"
#include "cw-region-private.h"
#include "cw-side-meet.h"

static CwPoint
corner_after (const CwCorner *corners, gsize n, gsize i)
{
  return corners[i + 1 < n ? i + 1 : 0].at;
}

static gboolean
is_too_high (const CwCorner *corner, CwPoint next)
{
  const CwWide dx = next.x - corner->at.x, dy = next.y - corner->at.y;
  return 4 * (CwWide) corner->sagitta * corner->sagitta > dx * dx + dy * dy;
}

static CwOutlineCheck
check_sides (const CwCorner *corners, gsize n)
{
  for (gsize i = 0; i < n; i++)
    {
      const CwPoint next = corner_after (corners, n, i);
      if (cw_point_equal (corners[i].at, next))
        return (CwOutlineCheck) { CW_OUTLINE_ZERO_SIDE, i, i };
      if (is_too_high (&corners[i], next))
        return (CwOutlineCheck) { CW_OUTLINE_ARC_TOO_HIGH, i, i };
    }
  return (CwOutlineCheck) { CW_OUTLINE_VALID, 0, 0 };
}

/* Outward is to the right of the way for anticlockwise corners; for clockwise
 * ones the bow changes its sign. */
static CwSide *
sides_of (const CwCorner *corners, gsize n, gboolean clockwise)
{
  CwSide *sides = g_new (CwSide, n);
  for (gsize i = 0; i < n; i++)
    {
      const CwLength bow
          = clockwise ? -corners[i].sagitta : corners[i].sagitta;
      sides[i] = bow == 0
                     ? cw_side_straight (corners[i].at, corners[i].tag)
                     : cw_side_arc_by_sagitta (
                         corners[i].at, corner_after (corners, n, i), bow,
                         corners[i].tag);
    }
  return sides;
}

/* The sense follows from the chords; where they enclose nothing (two corners
 * and bows) the corners count as anticlockwise. */
static gboolean
is_clockwise (const CwCorner *corners, gsize n)
{
  CwWide twice = 0;
  for (gsize i = 0; i < n; i++)
    twice += cw_cross (corners[0].at, corners[i].at,
                       corner_after (corners, n, i));
  return twice < 0;
}

/* Sides meet where they should not: anywhere for sides apart, anywhere but
 * at the shared corner for neighbours. */
static gboolean
sides_cross (const CwLoop *loop, gsize i, gsize j)
{
  const CwPoint i_end = cw_loop_end (loop, i), j_end = cw_loop_end (loop, j);
  gboolean crosses = FALSE;
  GArray *meets = g_array_new (FALSE, FALSE, sizeof (CwMeet));
  cw_sides_meet (&loop->sides[i], i_end, &loop->sides[j], j_end, meets);
  for (guint k = 0; k < meets->len; k++)
    {
      const CwPoint at = g_array_index (meets, CwMeet, k).at;
      const gboolean shared
          = (j == i + 1 && cw_point_equal (at, i_end))
            || ((j + 1) % loop->n_sides == i
                && cw_point_equal (at, j_end));
      crosses |= !shared;
    }
  g_array_unref (meets);
  return crosses;
}

static CwOutlineCheck
check_crossings (const CwLoop *loop)
{
  for (gsize i = 0; i < loop->n_sides; i++)
    for (gsize j = i + 1; j < loop->n_sides; j++)
      if (sides_cross (loop, i, j))
        return (CwOutlineCheck) { CW_OUTLINE_CROSSES, i, j };
  if (!(fabs (cw_loop_area (loop)) > 0))
    return (CwOutlineCheck) { CW_OUTLINE_NO_AREA, 0, 0 };
  return (CwOutlineCheck) { CW_OUTLINE_VALID, 0, 0 };
}

static gboolean
has_bow (const CwCorner *corners, gsize n)
{
  for (gsize i = 0; i < n; i++)
    if (corners[i].sagitta != 0)
      return TRUE;
  return FALSE;
}

CwOutlineCheck
cw_outline_check (const CwCorner *corners, gsize n)
{
  if (n < 2 || (n == 2 && !has_bow (corners, n)))
    return (CwOutlineCheck) { CW_OUTLINE_TOO_FEW, 0, 0 };
  CwOutlineCheck check = check_sides (corners, n);
  if (check.fault != CW_OUTLINE_VALID)
    return check;

  g_autofree CwSide *sides
      = sides_of (corners, n, is_clockwise (corners, n));
  const CwLoop loop = { sides, n };
  return check_crossings (&loop);
}

char *
cw_outline_check_text (const CwOutlineCheck *check)
{
  const guint side = (guint) check->side + 1, other = (guint) check->other + 1;
  switch (check->fault)
    {
    case CW_OUTLINE_VALID:
      return g_strdup (_("The outline is closed and whole."));
    case CW_OUTLINE_TOO_FEW:
      return g_strdup (
          _("An outline needs at least three corners, or two and an arc."));
    case CW_OUTLINE_ZERO_SIDE:
      return g_strdup_printf (
          _("Corner %u and the next are on one spot. Remove one of them."),
          side);
    case CW_OUTLINE_ARC_TOO_HIGH:
      return g_strdup_printf (_("The arc of side %u rises more than half its "
                                "chord. Make it flatter."),
                              side);
    case CW_OUTLINE_CROSSES:
      return g_strdup_printf (
          _("Sides %u and %u cross. Move one of their corners."), side,
          other);
    case CW_OUTLINE_NO_AREA:
      return g_strdup (_("The outline encloses no area."));
    }
  g_assert_not_reached ();
}

CwRegion *
cw_outline_region (const CwCorner *corners, gsize n)
{
  if (cw_outline_check (corners, n).fault != CW_OUTLINE_VALID)
    return NULL;
  g_autofree CwSide *sides
      = sides_of (corners, n, is_clockwise (corners, n));
  return cw_region_new_loop (sides, n);
}
