/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Areas of the wall, and what of it is measured by the project's rule.
 */
#include "cw-estimate-private.h"

/* IS 1200 part 13:1994, clause 3.2: m² of one opening. */
#define IS1200_SMALL 0.5
#define IS1200_LARGE 3.0

/* An area is the nearest double to the true one and the limit is another:
 * one of 0.51 m² drawn is one of 0.51 m² meant. */
static gboolean
is_at_most (double area, double limit)
{
  return area <= limit * (1 + 1e-12);
}

/* m² of one opening, cut to the outline. */
static double
opening_area (const CwWall *wall, guint index)
{
  const CwWallOpening *opening
      = &g_array_index (wall->openings, CwWallOpening, index);
  g_autoptr (CwRegion) cut
      = cw_region_intersect (opening->shape, wall->outline);

  return cw_region_area (cut);
}

CwRegion *
cw_estimate_less_openings_over (const CwWall *wall, double limit)
{
  g_autoptr (GPtrArray) deducted
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_region_unref);
  g_autoptr (CwRegion) joined = NULL;

  for (guint i = 0; i < wall->unclads->len; i++)
    g_ptr_array_add (deducted, cw_unclad_shape (wall->unclads->pdata[i]));
  for (guint i = 0; i < wall->openings->len; i++)
    if (!is_at_most (opening_area (wall, i), limit))
      g_ptr_array_add (
          deducted,
          cw_region_ref (
              g_array_index (wall->openings, CwWallOpening, i).shape));
  joined = cw_region_union ((const CwRegion *const *) deducted->pdata,
                            deducted->len);
  return cw_region_subtract (wall->outline, joined);
}

static double
area_less_openings_over (const CwWall *wall, double limit)
{
  g_autoptr (CwRegion) rest = cw_estimate_less_openings_over (wall, limit);

  return cw_region_area (rest);
}

gboolean
cw_estimate_is1200_takes_reveals (const CwWall *wall, guint index)
{
  return !is_at_most (opening_area (wall, index), IS1200_LARGE);
}

/* Where an opening of just the limit is deducted, the limit is a hair less. */
static double
through_limit (const CwMeasure *measure)
{
  double limit = cw_decimal_to_double (measure->limit);

  return measure->at_limit == CW_AT_LIMIT_DEDUCTED ? limit * (1 - 1e-11)
                                                   : limit;
}

double
cw_estimate_through_limit (const CwMeasure *measure)
{
  switch ((CwMeasureRule) measure->rule)
    {
    case CW_MEASURE_THROUGH:
      return through_limit (measure);
    case CW_MEASURE_IS1200:
      return measure->face == CW_FACE_WIDER ? IS1200_LARGE : IS1200_SMALL;
    case CW_MEASURE_NET:
    case CW_MEASURE_HALF:
      break;
    }
  return 0;
}

double
cw_estimate_half_limit (const CwMeasure *measure)
{
  if (measure->rule == CW_MEASURE_HALF)
    return G_MAXDOUBLE;
  return measure->rule == CW_MEASURE_IS1200 && measure->face == CW_FACE_EQUAL
             ? IS1200_LARGE
             : 0;
}

static double
measured_reveals (const CwWallEstimate *estimate)
{
  const CwWall *wall = estimate->wall;
  double sum = 0;

  for (guint i = 0; i < wall->openings->len; i++)
    if (cw_estimate_is1200_takes_reveals (wall, i))
      sum += g_array_index (estimate->figures->sides, CwOpeningSides, i)
                 .reveal;
  return sum;
}

static CwQuantity *
add_measured (CwWallEstimate *estimate, double area)
{
  estimate->figures->measured = area;
  return cw_quantity_add (estimate->quantities, "wall.measured", area);
}

static void
measure_net (CwWallEstimate *estimate)
{
  double net = estimate->figures->net;

  cw_quantity_step (add_measured (estimate, net), N_ ("the net area {0}"),
                    { net, "m²" });
}

static void
measure_through (CwWallEstimate *estimate)
{
  const CwMeasure *measure = estimate->wall->measure;
  double limit = cw_decimal_to_double (measure->limit);
  gboolean from_limit = measure->at_limit == CW_AT_LIMIT_DEDUCTED;
  double area = area_less_openings_over (estimate->wall,
                                         through_limit (measure));

  cw_quantity_step (add_measured (estimate, area),
                    from_limit
                        ? N_ ("gross {0} less unclad areas and openings of {1} "
                              "and over; smaller ones, {2}, are measured "
                              "through")
                        : N_ ("gross {0} less unclad areas and openings over "
                              "{1}; smaller ones, {2}, are measured through"),
                    { estimate->figures->gross, "m²" }, { limit, "m²" },
                    { area - estimate->figures->net, "m²" });
}

static void
measure_half (CwWallEstimate *estimate)
{
  double net = estimate->figures->net;
  double unopened = area_less_openings_over (estimate->wall, G_MAXDOUBLE);

  cw_quantity_step (add_measured (estimate, (net + unopened) / 2),
                    N_ ("net area {0} and half of the openings {1}"),
                    { net, "m²" }, { unopened - net, "m²" });
}

/* Of an opening between the limits, by clause 3.2 (b)(2) and (3). */
static double
share_of_face (const CwMeasure *measure)
{
  switch ((CwMeasuredFace) measure->face)
    {
    case CW_FACE_EQUAL:
      return 0.5;
    case CW_FACE_WIDER:
      return 0;
    case CW_FACE_NARROWER:
    default:
      return 1;
    }
}

static void
measure_is1200 (CwWallEstimate *estimate)
{
  CwWallFigures *figures = estimate->figures;
  double over_small
      = area_less_openings_over (estimate->wall, IS1200_SMALL);
  double over_large
      = area_less_openings_over (estimate->wall, IS1200_LARGE);
  double share = share_of_face (estimate->wall->measure);
  double area = over_large - share * (over_large - over_small);

  figures->measured_reveals = measured_reveals (estimate);
  cw_quantity_step (add_measured (estimate, area + figures->measured_reveals),
                    N_ ("gross {0} less unclad areas, {5} of the openings "
                        "over {1} and up to {3}, and all of those over {3}: "
                        "{2}; reveals of openings over {3} added: {4}"),
                    { figures->gross, "m²" }, { IS1200_SMALL, "m²" },
                    { area, "m²" }, { IS1200_LARGE, "m²" },
                    { figures->measured_reveals, "m²" },
                    { 100 * share, "%" });
}

static void
add_measured_by_rule (CwWallEstimate *estimate)
{
  switch ((CwMeasureRule) estimate->wall->measure->rule)
    {
    case CW_MEASURE_NET:
      measure_net (estimate);
      break;
    case CW_MEASURE_THROUGH:
      measure_through (estimate);
      break;
    case CW_MEASURE_HALF:
      measure_half (estimate);
      break;
    case CW_MEASURE_IS1200:
      measure_is1200 (estimate);
      break;
    }
}

static void
add_areas (CwWallEstimate *estimate)
{
  const CwWallFigures *figures = estimate->figures;
  const CwWall *wall = estimate->wall;

  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "wall.gross", figures->gross),
      N_ ("area of the outline"));
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "opening.area",
                       figures->openings),
      N_ ("{0} openings, cut to the outline, overlaps once"),
      { wall->openings->len, "" });
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "unclad.area", figures->unclad),
      N_ ("{0} unclad areas, cut to the outline, less openings in them"),
      { wall->unclads->len, "" });
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "wall.net", figures->net),
      N_ ("gross {0} less openings {1} less unclad areas {2}"),
      { figures->gross, "m²" }, { figures->openings, "m²" },
      { figures->unclad, "m²" });
}

void
cw_estimate_wall (CwWallEstimate *estimate)
{
  CwWallFigures *figures = estimate->figures;

  figures->gross = cw_region_area (estimate->wall->outline);
  figures->openings = cw_region_area (estimate->wall->opened);
  figures->unclad = cw_region_area (estimate->wall->unclad);
  figures->net = cw_region_area (estimate->wall->net);
  add_areas (estimate);
  add_measured_by_rule (estimate);
}
