/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Setting out held against random walls: gables, rakes, steps, arched tops,
 * unclad areas, openings and stub-outs under random rules. The pieces lie in
 * the wall and in their panels, none over another, and with what is cut out
 * of the wall between them they are the wall; a rule is kept or told of.
 */
#include <math.h>

#include "cw-piece-cuts.h"
#include "walls.h"

/* Of the net area. */
#define RELATIVE 1e-9

static CwLength
random_mm (int low, int high)
{
  return CW_MM (g_test_rand_int_range (low, high));
}

/* Whole mm, or any nm. */
static CwLength
random_length (int low, int high)
{
  return random_mm (low, high)
         + (g_test_rand_bit () ? g_test_rand_int_range (0, 1000000) : 0);
}

static const CwPoint no_point = { 0, 0 };

/* A corner of a step, of a ridge or of an eave. */
static gsize
random_top (CwCorner *corners, CwLength width, CwLength eaves)
{
  CwLength high = eaves + random_length (1, 3000);
  switch (g_test_rand_int_range (0, 5))
    {
    case 0: /* gable */
      corners[3].at = cw_point (random_length (100, (int) (width / CW_NM_PER_MM)
                                                        - 100),
                                high);
      return 4;
    case 1: /* one rake */
      corners[2].at.y = high;
      return 3;
    case 2: /* arched */
      corners[2].sagitta = random_length (10, (int) (width / CW_NM_PER_MM) / 2);
      return 3;
    case 3: /* step */
      corners[2].at.y = high;
      corners[3].at = cw_point (width / 2, high);
      corners[4].at = cw_point (width / 2, eaves);
      return 5;
    default:
      return 3;
    }
}

static CwLength
begin_random_wall (WallMaker *maker)
{
  const CwLength width = random_length (3000, 12000);
  const CwLength eaves = random_length (1500, 4500);
  CwCorner corners[6] = { { no_point, 0, CW_EDGE_BASE },
                          { cw_point (width, 0), 0, CW_EDGE_JOINT },
                          { cw_point (width, eaves), 0, CW_EDGE_EAVE },
                          { no_point, 0, CW_EDGE_EAVE },
                          { no_point, 0, CW_EDGE_EAVE } };
  gsize n = random_top (corners, width, eaves);
  corners[n] = (CwCorner) { cw_point (0, eaves), 0, CW_EDGE_JOINT };
  wall_begin_bowed (maker, corners, n + 1);
  return width;
}

static void
add_random_openings (WallMaker *maker, CwLength width)
{
  for (CwLength x = random_length (200, 900); x < width - CW_MM (2200);
       x += random_length (100, 2000))
    {
      const CwLength opening = random_length (400, 1900);
      if (g_test_rand_bit ())
        wall_add_opening (maker, x, random_length (0, 900), opening,
                          random_length (300, 1200));
      else
        wall_add_arch (maker, x, random_length (0, 400), opening,
                       random_length (300, 800), opening / 5);
      x += opening;
    }
}

static void
add_random_items (WallMaker *maker, CwLength width)
{
  const int mm = (int) (width / CW_NM_PER_MM);
  if (g_test_rand_bit ())
    {
      CwLength left = random_length (-500, mm - 500);
      CwLength right = left + random_length (300, 2500);
      CwLength top = random_length (100, 1400);
      const CwPoint points[] = { { left, CW_MM (-100) },
                                 { right, CW_MM (-100) },
                                 { right, top },
                                 { left, top - random_length (0, 90) } };
      wall_add_unclad (maker, points, G_N_ELEMENTS (points));
    }
  if (g_test_rand_bit ())
    wall_add_stub_out (maker, random_mm (0, mm), random_mm (0, 2500),
                       random_mm (30, 200));
  if (g_test_rand_bit ())
    wall_add_box_out (maker, random_mm (0, mm), random_mm (0, 2500),
                      random_mm (30, 400), random_mm (30, 400),
                      random_mm (0, 20));
  if (g_test_rand_bit ())
    wall_add_band (maker,
                   &(CwBox) { 0, CW_MM (500), width, CW_MM (650) });
}

static void
set_random_rules (WallMaker *maker)
{
  CwSettingOut *rules = maker->setting_out;
  const CwLength joints[] = { 0, CW_MM (3), 3175001, CW_MM (10) };
  rules->run = g_test_rand_int_range (0, 2);
  rules->start = g_test_rand_int_range (0, 3);
  rules->bond = g_test_rand_int_range (0, 3);
  rules->stagger = random_length (0, 2400);
  rules->offset = random_length (0, 2400);
  rules->base = random_length (0, 600);
  rules->least_piece = random_mm (0, 400);
  rules->least_stagger = random_mm (0, 400);
  rules->rasp = random_mm (0, 40);
  rules->joints_on_studs = g_test_rand_bit ();
  rules->at_openings = g_test_rand_int_range (0, 2);
  maker->panel->joint = joints[g_test_rand_int_range (0, 4)];
  if (g_test_rand_bit ())
    {
      maker->panel->length = 2438400000;
      maker->panel->height = 609600000;
    }
}

static CwLayout *
random_layout (void)
{
  WallMaker maker;
  const CwLength width = begin_random_wall (&maker);
  add_random_openings (&maker, width);
  add_random_items (&maker, width);
  set_random_rules (&maker);
  return wall_layout (&maker);
}

static const CwSettingOut *
rules_of (const CwLayout *layout)
{
  return (const CwSettingOut *) layout->wall->buildup->setting_out;
}

static const CwPanel *
panel_of (const CwLayout *layout)
{
  return cw_list_at (layout->wall->buildup->panels, 0);
}

static const CwPiece *
piece_at (const CwLayout *layout, guint index)
{
  return &g_array_index (layout->pieces, CwPiece, index);
}

static const CwCourse *
course_at (const CwLayout *layout, guint index)
{
  return &g_array_index (layout->courses, CwCourse, index);
}

static gboolean
is_upright (const CwLayout *layout)
{
  return rules_of (layout)->run == CW_RUN_VERTICAL;
}

static CwBox
turned (const CwLayout *layout, CwLength along_low, CwLength across_low,
        CwLength along_high, CwLength across_high)
{
  return is_upright (layout)
             ? (CwBox) { across_low, along_low, across_high, along_high }
             : (CwBox) { along_low, across_low, along_high, across_high };
}

static void
assert_in_panel (const CwLayout *layout, const CwPiece *piece)
{
  const CwPanel *panel = panel_of (layout);
  const CwBox size = turned (layout, 0, 0, panel->length, panel->height);
  g_assert_cmpint (cw_box_width (&piece->slot), ==, size.right);
  g_assert_cmpint (cw_box_height (&piece->slot), ==, size.top);
  g_assert_cmpint (piece->box.left, >=, piece->slot.left);
  g_assert_cmpint (piece->box.right, <=, piece->slot.right);
  g_assert_cmpint (piece->box.bottom, >=, piece->slot.bottom);
  g_assert_cmpint (piece->box.top, <=, piece->slot.top);
}

/* By cutting the wall to the piece, not the wall to its panel. */
static void
assert_in_wall (const CwLayout *layout, const CwPiece *piece)
{
  g_autoptr (CwRegion) within
      = cw_region_clip (layout->wall->net, &piece->box, 0);
  if (piece->shape)
    {
      CwRegion *common = cw_region_intersect (within, piece->shape);
      cw_region_unref (within);
      within = common;
    }
  g_assert_cmpfloat (fabs (cw_region_area (within) - piece->area), <=,
                     RELATIVE * cw_region_area (layout->wall->net));
}

static gboolean
shapes_overlap (const CwPiece *a, const CwPiece *b)
{
  if (!cw_box_overlaps (&a->box, &b->box))
    return FALSE;
  const CwPiece *shaped = a->shape ? a : b, *other = a->shape ? b : a;
  if (!shaped->shape)
    return TRUE;
  g_autoptr (CwRegion) common
      = other->shape ? cw_region_intersect (shaped->shape, other->shape)
                     : cw_region_clip (shaped->shape, &other->box, 0);
  return cw_region_area (common) > 1e-9;
}

static void
assert_apart (const CwLayout *layout)
{
  for (guint i = 0; i < layout->pieces->len; i++)
    for (guint j = 0; j < i; j++)
      g_assert_false (
          shapes_overlap (piece_at (layout, i), piece_at (layout, j)));
}

static void
assert_pieces (const CwLayout *layout)
{
  for (guint i = 0; i < layout->pieces->len; i++)
    {
      assert_in_panel (layout, piece_at (layout, i));
      assert_in_wall (layout, piece_at (layout, i));
    }
  assert_apart (layout);
}

static double
net_within (const CwLayout *layout, CwBox box)
{
  g_autoptr (CwRegion) within = cw_region_clip (layout->wall->net, &box, 0);
  return cw_region_area (within);
}

static int
compare_spans (gconstpointer a, gconstpointer b)
{
  const CwBox *one = a, *other = b;
  return (one->left > other->left) - (one->left < other->left);
}

/* What of the wall lies in a course before, between and after its pieces. */
static double
gaps_in_course (const CwLayout *layout, const CwCourse *course)
{
  g_autoptr (GArray) spans = g_array_new (FALSE, FALSE, sizeof (CwBox));
  double area = 0;
  for (guint i = 0; i < course->n_pieces; i++)
    {
      CwBox box = piece_at (layout, course->first_piece + i)->box;
      if (is_upright (layout))
        box.left = box.bottom, box.right = box.top;
      g_array_append_val (spans, box);
    }
  g_array_sort (spans, compare_spans);
  CwLength done = CW_MM (-100000);
  for (guint i = 0; i <= spans->len; i++)
    {
      CwBox end = { CW_MM (100000), 0, CW_MM (100000), 0 };
      CwBox span = i < spans->len ? g_array_index (spans, CwBox, i) : end;
      if (span.left > done)
        area += net_within (layout, turned (layout, done, course->low,
                                            span.left, course->high));
      done = MAX (done, span.right);
    }
  return area;
}

/* What of the wall lies between the courses. */
static double
gaps_between_courses (const CwLayout *layout)
{
  double area = 0;
  for (guint i = 0; i + 1 < layout->courses->len; i++)
    {
      const CwCourse *a = course_at (layout, i);
      const CwCourse *b = course_at (layout, i + 1);
      CwLength low = MIN (a->high, b->high), high = MAX (a->low, b->low);
      if (low < high)
        area += net_within (layout, turned (layout, CW_MM (-100000), low,
                                            CW_MM (100000), high));
    }
  return area;
}

static void
assert_covers (const CwLayout *layout)
{
  const double net = cw_region_area (layout->wall->net);
  double area = gaps_between_courses (layout);
  for (guint i = 0; i < layout->pieces->len; i++)
    area += piece_at (layout, i)->area;
  for (guint i = 0; i < layout->courses->len; i++)
    area += gaps_in_course (layout, course_at (layout, i));
  g_assert_cmpfloat (fabs (area - net), <=, RELATIVE * net);
}

static gboolean
is_told (const CwLayout *layout, CwTroubleKind kind, guint course,
         CwPoint place)
{
  for (guint i = 0; i < layout->troubles->len; i++)
    {
      const CwLayoutTrouble *trouble
          = &g_array_index (layout->troubles, CwLayoutTrouble, i);
      if (trouble->kind == kind && trouble->course == course
          && ABS (trouble->place.x - place.x) <= 1
          && (kind != CW_TROUBLE_LEAST_PIECE
              || ABS (trouble->place.y - place.y) <= 1))
        return TRUE;
    }
  return FALSE;
}

static void
assert_least_piece (const CwLayout *layout)
{
  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = piece_at (layout, i);
      const CwPoint middle
          = cw_point ((piece->box.left + piece->box.right) / 2,
                      (piece->box.bottom + piece->box.top) / 2);
      gboolean narrow
          = MIN (cw_box_width (&piece->box), cw_box_height (&piece->box))
            < rules_of (layout)->least_piece;
      g_assert_cmpint (is_told (layout, CW_TROUBLE_LEAST_PIECE,
                                piece->course, middle),
                       ==, narrow);
    }
}

/* A joint that a break asks for is where it is. */
static gboolean
is_at_jamb (const CwLayout *layout, CwLength x)
{
  const CwLength joint = panel_of (layout)->joint;
  for (guint i = 0; i < layout->wall->openings->len; i++)
    {
      const CwOpening *opening
          = g_array_index (layout->wall->openings, CwWallOpening, i).opening;
      if (ABS (x - opening->x) <= joint
          || ABS (x - opening->x - opening->width) <= joint)
        return TRUE;
    }
  return FALSE;
}

static guint
course_of (const CwLayout *layout, const CwJoint *joint)
{
  const CwLength middle = (joint->from.y + joint->to.y) / 2;
  for (guint i = 0; i < layout->courses->len; i++)
    if (course_at (layout, i)->low <= middle
        && middle <= course_at (layout, i)->high)
      return i + 1;
  g_assert_not_reached ();
}

static gboolean
stands_on_stud (const CwLayout *layout, CwLength x)
{
  for (guint i = 0; i < layout->studs->len; i++)
    if (ABS (g_array_index (layout->studs, CwLength, i) - x) <= 1)
      return TRUE;
  return FALSE;
}

static void
assert_stagger (const CwLayout *layout, const CwJoint *joint, guint course)
{
  for (guint i = 0; i < layout->joints->len; i++)
    {
      const CwJoint *other = &g_array_index (layout->joints, CwJoint, i);
      if (!other->is_bed && course_of (layout, other) == course - 1
          && ABS (other->from.x - joint->from.x)
                 < rules_of (layout)->least_stagger - 1)
        g_assert_true (is_told (layout, CW_TROUBLE_LEAST_STAGGER, course,
                                joint->from));
    }
}

/* No joint that runs into an opening's corner, unless it is told of. */
static void
assert_off_corners (const CwLayout *layout, const CwJoint *joint,
                    guint course)
{
  const CwLength half = panel_of (layout)->joint / 2;
  for (guint i = 0; i < layout->wall->openings->len; i++)
    {
      const CwOpening *opening
          = g_array_index (layout->wall->openings, CwWallOpening, i).opening;
      const CwLength y[] = { opening->y, opening->y + opening->height };
      const CwLength x[] = { opening->x, opening->x + opening->width };
      for (guint k = 0; k < 4; k++)
        if (ABS (joint->from.x - x[k % 2]) <= half
            && (joint->from.y == y[k / 2] || joint->to.y == y[k / 2]))
          g_assert_true (is_told (layout, CW_TROUBLE_AT_CORNER, course,
                                  joint->from));
    }
}

/* Of level runs, where joints and studs both stand. */
static void
assert_joints (const CwLayout *layout)
{
  const CwSettingOut *rules = rules_of (layout);
  gboolean breaks = rules->at_openings == CW_AT_OPENINGS_BREAK;
  for (guint i = 0; i < layout->joints->len; i++)
    {
      const CwJoint *joint = &g_array_index (layout->joints, CwJoint, i);
      if (joint->is_bed || (breaks && is_at_jamb (layout, joint->from.x)))
        continue;
      guint course = course_of (layout, joint);
      if (rules->bond != CW_BOND_STACKED)
        assert_stagger (layout, joint, course);
      if (!breaks)
        assert_off_corners (layout, joint, course);
      if (rules->joints_on_studs && !stands_on_stud (layout, joint->from.x))
        g_assert_true (is_told (layout, CW_TROUBLE_OFF_STUD, course,
                                joint->from));
    }
}

/* Of upright runs, where the joints between courses stand with the studs. */
static void
assert_courses_on_studs (const CwLayout *layout)
{
  for (guint i = 0; i + 1 < layout->courses->len; i++)
    {
      const CwCourse *one = course_at (layout, i);
      const CwCourse *next = course_at (layout, i + 1);
      const CwPoint middle
          = cw_point (one->high < next->high ? (one->high + next->low) / 2
                                             : (one->low + next->high) / 2,
                      0);
      g_assert_true (stands_on_stud (layout, middle.x)
                     || is_told (layout, CW_TROUBLE_OFF_STUD, i + 1, middle));
    }
}

/* What is listed for a piece is what it is said to be cut by. */
static void
assert_cuts (const CwLayout *layout)
{
  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = piece_at (layout, i);
      g_autoptr (GArray) cuts = cw_piece_cuts (layout, piece);
      g_assert_cmpint (cuts->len == 0, ==, piece->kind == CW_PIECE_WHOLE);
      for (guint c = 0; c < cuts->len; c++)
        {
          const CwPieceCut *cut = &g_array_index (cuts, CwPieceCut, c);
          g_assert_cmpfloat (cut->length, >=, 0);
          g_assert_cmpint (cut->is_rasped, ==,
                           piece->kind == CW_PIECE_RASPED
                               && cut->kind != CW_CUT_HOLE);
          g_assert_true (cut->kind == CW_CUT_NOTCH
                         || (piece->cuts & cut->kind));
        }
      g_assert_cmpfloat (cw_piece_mass (layout, piece), >=, 0);
    }
}

static void
assert_layout (const CwLayout *layout)
{
  assert_pieces (layout);
  assert_covers (layout);
  assert_least_piece (layout);
  if (!is_upright (layout))
    assert_joints (layout);
  else if (rules_of (layout)->joints_on_studs)
    assert_courses_on_studs (layout);
  assert_cuts (layout);
}

static void
test_random_walls (void)
{
  const guint n = g_getenv ("CW_LONG") ? 50000 : 3000;
  guint n_pieces = 0, n_shaped = 0, n_troubles = 0;
  for (guint i = 0; i < n; i++)
    {
      g_autoptr (CwLayout) layout = random_layout ();
      assert_layout (layout);
      n_pieces += layout->pieces->len;
      n_troubles += layout->troubles->len;
      for (guint p = 0; p < layout->pieces->len; p++)
        n_shaped += piece_at (layout, p)->shape != NULL;
    }
  g_test_message ("%u walls, %u pieces, %u of them shaped, %u troubles", n,
                  n_pieces, n_shaped, n_troubles);
  g_assert_cmpuint (n_shaped, >, n);
}

/* A plain wall that is wide and high enough keeps the least piece, whatever
 * the offset, and every bond keeps its stagger where panels are long enough
 * for it. */
static void
test_plain_walls_keep_rules (void)
{
  for (guint i = 0; i < 3000; i++)
    {
      WallMaker maker;
      wall_begin_box (&maker, random_length (1000, 12000),
                      random_length (650, 4000));
      set_random_rules (&maker);
      maker.setting_out->joints_on_studs = FALSE;
      maker.setting_out->least_piece = random_mm (0, 300);
      maker.setting_out->least_stagger = random_mm (0, 300);
      g_autoptr (CwLayout) layout = wall_layout (&maker);
      g_assert_cmpuint (layout->troubles->len, ==, 0);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/random-layouts/walls", test_random_walls);
  g_test_add_func ("/random-layouts/plain-walls-keep-rules",
                   test_plain_walls_keep_rules);
  return g_test_run ();
}
