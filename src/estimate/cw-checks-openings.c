/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Openings that lie off the wall or on each other.
 */
#include "cw-checks-private.h"

/* m²: less is the width of a line. */
#define NOTHING 1e-6

static const CwWallOpening *
opening_at (const CwWall *wall, guint index)
{
  return &g_array_index (wall->openings, CwWallOpening, index);
}

/* Translators call it by its mark, as the drawing does. */
static const char *
opening_name (const CwWallOpening *opening)
{
  return opening->mark && *opening->mark->name ? opening->mark->name
                                               : opening->opening->id;
}

static gboolean
lies_within (const CwRegion *outline, const CwBox *box)
{
  const CwBox wall = cw_region_box (outline);

  return cw_region_is_box (outline) && box->left >= wall.left
         && box->right <= wall.right && box->bottom >= wall.bottom
         && box->top <= wall.top;
}

static void
check_within (CwChecking *checking, const CwWallOpening *opening)
{
  const CwRegion *outline = checking->wall->wall->outline;
  const CwBox box = cw_region_box (opening->shape);

  if (lies_within (outline, &box))
    return;
  g_autoptr (CwRegion) beyond = cw_region_subtract (opening->shape, outline);
  const double over = cw_region_area (beyond);
  const double whole = cw_region_area (opening->shape);
  if (over <= NOTHING)
    return;
  const gboolean is_off = over >= whole - NOTHING;
  g_autofree char *area = cw_check_amount (checking, over, "m²");
  CwCheck *check = cw_check_add (
      checking, is_off ? "opening-outside" : "opening-crosses-outline",
      opening->opening->id,
      is_off ? g_strdup_printf (_ ("None of %s lies on the wall."),
                                opening_name (opening))
             : g_strdup_printf (_ ("%s of %s lies beyond the outline."), area,
                                opening_name (opening)));
  cw_check_set_detail (
      check, g_strdup (is_off ? _ ("Nothing is deducted for it, but it is in "
                                  "the schedule.")
                              : _ ("Only the part on the wall is "
                                  "deducted.")));
  cw_check_add_figure (check, over);
  cw_check_add_place (check, box);
}

static void
check_pair (CwChecking *checking, const CwWallOpening *one,
            const CwWallOpening *other)
{
  const CwBox a = cw_region_box (one->shape), b = cw_region_box (other->shape);

  if (!cw_box_overlaps (&a, &b))
    return;
  g_autoptr (CwRegion) both = cw_region_intersect (one->shape, other->shape);
  const double shared = cw_region_area (both);
  if (shared <= NOTHING)
    return;
  g_autofree char *area = cw_check_amount (checking, shared, "m²");
  g_autofree char *item = g_strdup_printf ("%s+%s", one->opening->id,
                                           other->opening->id);
  CwCheck *check = cw_check_add (
      checking, "opening-overlap", item,
      g_strdup_printf (_ ("%s and %s share %s."), opening_name (one),
                       opening_name (other), area));
  cw_check_set_detail (check, g_strdup (_ ("It is deducted once; both are in "
                                          "the schedule.")));
  cw_check_add_figure (check, shared);
  cw_check_add_place (check, cw_region_box (both));
}

static void
check_arch (CwChecking *checking, const CwWallOpening *opening)
{
  const CwOpening *arch = opening->opening;

  if (arch->node.type != &cw_arch_type
      || cw_arch_is_possible ((CwArchHead) arch->head, arch->width,
                              arch->rise))
    return;
  g_autofree char *rise = cw_check_length (checking, arch->rise);
  g_autofree char *width = cw_check_length (checking, arch->width);
  CwCheck *check = cw_check_add (
      checking, "arch-rise", arch->id,
      g_strdup_printf (_ ("%s cannot rise %s over a width of %s."),
                       opening_name (opening), rise, width));
  cw_check_set_detail (check, g_strdup (_ ("It is drawn and measured with the "
                                          "nearest rise that it can.")));
  cw_check_add_figure (check, cw_length_in_m (arch->rise));
  cw_check_add_place (check, cw_region_box (opening->shape));
}

void
cw_check_openings (CwChecking *checking)
{
  const CwWall *wall = checking->wall->wall;

  for (guint i = 0; i < wall->openings->len; i++)
    {
      check_arch (checking, opening_at (wall, i));
      check_within (checking, opening_at (wall, i));
      for (guint j = i + 1; j < wall->openings->len; j++)
        check_pair (checking, opening_at (wall, i), opening_at (wall, j));
    }
}
