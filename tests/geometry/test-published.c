/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Arcs, segments, ellipses and arches against tests/data/geometry/published.tsv.
 * Whatever can be measured on a region is, by cutting a circle or looking at
 * the sides of an opening, so that the formulas are met where they are used.
 */
#include <math.h>

#include "cw-arch.h"
#include "cw-case-table.h"

#define TAG_ROUND 1
#define TAG_CUT 2

static CwLength
metres (double value)
{
  return llround (value * 1e9);
}

/* The part of a circle of @radius above a level line @height under its top. */
static CwRegion *
circle_segment (double radius, double height)
{
  g_autoptr (CwRegion) circle = cw_hole_region_round (
      cw_point (0, 0), metres (2 * radius), TAG_ROUND);
  CwRegion *segment = NULL;
  cw_region_split (circle, CW_AXIS_Y, metres (radius - height), TAG_CUT, NULL,
                   &segment);
  return segment;
}

static double
circle_chord (double radius, double height)
{
  g_autoptr (CwRegion) segment = circle_segment (radius, height);
  return cw_region_length_of (segment, TAG_CUT);
}

static double
circle_segment_area (double radius, double height)
{
  g_autoptr (CwRegion) segment = circle_segment (radius, height);
  return cw_region_area (segment);
}

static double
circle_segment_length (double radius, double height)
{
  g_autoptr (CwRegion) segment = circle_segment (radius, height);
  return cw_region_length_of (segment, TAG_ROUND);
}

static double
degrees (double radians)
{
  return radians * 180 / G_PI;
}

static double
circle_segment_angle (double radius, double height)
{
  return degrees (circle_segment_length (radius, height) / radius);
}

static double
ring_area (double outer, double inner)
{
  g_autoptr (CwRegion) whole
      = cw_hole_region_round (cw_point (0, 0), metres (outer), TAG_ROUND);
  g_autoptr (CwRegion) hole
      = cw_hole_region_round (cw_point (0, 0), metres (inner), TAG_ROUND);
  g_autoptr (CwRegion) ring = cw_region_subtract (whole, hole);
  return cw_region_area (ring);
}

/* The first arc of an opening that is nothing but its head. */
static CwSide
first_arc (CwArchHead head, double span, double rise)
{
  g_autoptr (CwRegion) opening = cw_opening_region (
      cw_point (0, 0), metres (span), 0, head, metres (rise));
  CwLoop loop = cw_region_loop (opening, 0);
  for (gsize i = 0; i < loop.n_sides; i++)
    if (loop.sides[i].is_arc)
      return loop.sides[i];
  g_assert_not_reached ();
}

static double
segment_radius (double span, double rise)
{
  return first_arc (CW_ARCH_SEGMENTAL, span, rise).rx / 1e9;
}

static double
segment_length (double span, double rise)
{
  return cw_arch_length (CW_ARCH_SEGMENTAL, metres (span), metres (rise));
}

static double
segment_area (double span, double rise)
{
  return cw_arch_area (CW_ARCH_SEGMENTAL, metres (span), metres (rise));
}

static double
segment_area_share (double span, double rise)
{
  return segment_area (span, rise) / (span * rise);
}

static double
segment_angle (double span, double rise)
{
  CwSide arc = first_arc (CW_ARCH_SEGMENTAL, span, rise);
  return degrees (arc.to - arc.from);
}

/* How far the centre lies below the springing line. */
static double
segment_depth (double span, double rise)
{
  return -first_arc (CW_ARCH_SEGMENTAL, span, rise).cy / 1e9;
}

/* Segment and the triangle down to the centre, as one loop. */
static double
segment_sector (double span, double rise)
{
  CwSide arc = first_arc (CW_ARCH_SEGMENTAL, span, rise);
  CwSide sides[] = {
    arc,
    cw_side_straight (cw_point (0, 0), TAG_CUT),
    cw_side_straight (cw_point (llround (arc.cx), llround (arc.cy)), TAG_CUT),
  };
  g_autoptr (CwRegion) sector
      = cw_region_new_loop (sides, G_N_ELEMENTS (sides));
  return cw_region_area (sector);
}

/* H-12's rule of thumb, with the chord of half the arc taken from our arc. */
static double
segment_length_by_chords (double span, double rise)
{
  CwSide arc = first_arc (CW_ARCH_SEGMENTAL, span, rise);
  double x, y;
  cw_side_at (&arc, cw_point (0, 0), 0.5, &x, &y);
  return (8 * hypot (x, y) / 1e9 - span) / 3;
}

static double
ellipse_area (double a, double b)
{
  return 2 * cw_arch_area (CW_ARCH_SEMI_ELLIPTICAL, metres (2 * a), metres (b));
}

static double
ellipse_perimeter (double a, double b)
{
  return 2
         * cw_arch_length (CW_ARCH_SEMI_ELLIPTICAL, metres (2 * a), metres (b));
}

static double
ellipse_perimeter_k (double a, double b)
{
  return ellipse_perimeter (a, b) / (G_PI * (a + b));
}

static double
semi_elliptical_area (double span, double rise)
{
  return cw_arch_area (CW_ARCH_SEMI_ELLIPTICAL, metres (span), metres (rise));
}

static double
semi_elliptical_length (double span, double rise)
{
  return cw_arch_length (CW_ARCH_SEMI_ELLIPTICAL, metres (span), metres (rise));
}

static double
pointed_radius (double span, double rise)
{
  return first_arc (CW_ARCH_POINTED, span, rise).rx / 1e9;
}

static double
pointed_area (double span, double rise)
{
  return cw_arch_area (CW_ARCH_POINTED, metres (span), metres (rise));
}

static double
pointed_length (double span, double rise)
{
  return cw_arch_length (CW_ARCH_POINTED, metres (span), metres (rise));
}

typedef struct
{
  const char *name;
  double (*measure) (double a, double b);
} Measure;

static const Measure measures[] = {
  { "circle-chord", circle_chord },
  { "circle-segment-angle", circle_segment_angle },
  { "circle-segment-length", circle_segment_length },
  { "circle-segment-area", circle_segment_area },
  { "ring-area", ring_area },
  { "segment-radius", segment_radius },
  { "segment-angle", segment_angle },
  { "segment-length", segment_length },
  { "segment-area", segment_area },
  { "segment-area-share", segment_area_share },
  { "segment-sector", segment_sector },
  { "segment-depth", segment_depth },
  { "segment-length-by-chords", segment_length_by_chords },
  { "ellipse-area", ellipse_area },
  { "ellipse-perimeter", ellipse_perimeter },
  { "ellipse-perimeter-k", ellipse_perimeter_k },
  { "semi-elliptical-area", semi_elliptical_area },
  { "semi-elliptical-length", semi_elliptical_length },
  { "pointed-radius", pointed_radius },
  { "pointed-area", pointed_area },
  { "pointed-length", pointed_length },
};

static const Measure *
measure_named (const CwCase *row)
{
  for (guint i = 0; i < G_N_ELEMENTS (measures); i++)
    if (g_str_equal (measures[i].name, row->columns[1]))
      return &measures[i];
  g_error ("Line %u: there is no measure %s", row->line, row->columns[1]);
}

static double
number (const CwCase *row, guint column)
{
  char *end;
  double value = g_ascii_strtod (row->columns[column], &end);
  if (end == row->columns[column] || *end != '\0')
    g_error ("Line %u: %s is no number", row->line, row->columns[column]);
  return value;
}

static void
test_row (gconstpointer data)
{
  const CwCase *row = data;
  double found
      = measure_named (row)->measure (number (row, 2), number (row, 3));
  double expected = number (row, 4), tolerance = number (row, 5);
  if (!(fabs (found - expected) <= tolerance))
    g_error ("%s, %s %s %s: %.12g, not %s (%s, %s)", row->columns[0],
             row->columns[1], row->columns[2], row->columns[3], found,
             row->columns[4], row->columns[6], row->columns[7]);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_autoptr (GPtrArray) table
      = cw_case_table_load ("geometry/published.tsv", 8);
  for (guint i = 0; i < table->len; i++)
    {
      const CwCase *row = table->pdata[i];
      g_autofree char *path = g_strdup_printf (
          "/geometry/published/%s/%s/line-%u", row->columns[0],
          row->columns[1], row->line);
      g_test_add_data_func (path, row, test_row);
    }
  return g_test_run ();
}
