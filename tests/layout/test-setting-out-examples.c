/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Setting out worked by hand, to the nanometre: panels of 2400 × 600 with
 * joints of 3, a kerf of 4, least piece 150, least stagger 200. Each row is a
 * course from the starting corner: where its pieces begin and end, in mm.
 */
#include "cw-set-out.h"
#include "walls.h"

/* nm as mm, with all its digits. */
static void
append_mm (GString *text, CwLength nm)
{
  g_string_append_printf (text, "%" G_GINT64_FORMAT, nm / CW_NM_PER_MM);
  if (nm % CW_NM_PER_MM)
    {
      g_string_append_printf (text, ".%06" G_GINT64_FORMAT,
                              nm % CW_NM_PER_MM);
      while (text->str[text->len - 1] == '0')
        g_string_truncate (text, text->len - 1);
    }
}

static void
append_span (GString *text, CwLength low, CwLength high)
{
  if (text->len > 0)
    g_string_append_c (text, ' ');
  append_mm (text, low);
  g_string_append_c (text, '-');
  append_mm (text, high);
}

/* "0-2400 2403-4803": the pieces of a course, from 1. */
static char *
row_of (const CwLayout *layout, guint course)
{
  const CwSettingOut *setting_out
      = (const CwSettingOut *) layout->wall->buildup->setting_out;
  GString *text = g_string_new (NULL);
  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);
      if (piece->course != course)
        continue;
      if (setting_out->run == CW_RUN_VERTICAL)
        append_span (text, piece->box.bottom, piece->box.top);
      else
        append_span (text, piece->box.left, piece->box.right);
    }
  return g_string_free (text, FALSE);
}

static char *
courses_of (const CwLayout *layout)
{
  GString *text = g_string_new (NULL);
  for (guint i = 0; i < layout->courses->len; i++)
    {
      const CwCourse *course = &g_array_index (layout->courses, CwCourse, i);
      append_span (text, course->low, course->high);
    }
  return g_string_free (text, FALSE);
}

static void
assert_row (const CwLayout *layout, guint course, const char *expected)
{
  g_autofree char *row = row_of (layout, course);
  g_assert_cmpstr (row, ==, expected);
}

static void
assert_courses (const CwLayout *layout, const char *expected)
{
  g_autofree char *courses = courses_of (layout);
  g_assert_cmpstr (courses, ==, expected);
}

static void
assert_no_troubles (const CwLayout *layout)
{
  g_assert_cmpuint (layout->troubles->len, ==, 0);
}

/*  |__2400__|__2400__|_1194_|
 *  |__2400__|__2400__|_1194_|
 */
static void
test_stacked_left (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (1203));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_courses (layout, "0-600 603-1203");
  assert_row (layout, 1, "0-2400 2403-4803 4806-6000");
  assert_row (layout, 2, "0-2400 2403-4803 4806-6000");
  assert_no_troubles (layout);
}

/*  |_1194_|__2400__|__2400__| 1  */
static void
test_stacked_right (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (600));
  maker.setting_out->start = CW_START_RIGHT;
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "3600-6000 1197-3597 0-1194");
}

/*  |__2400__|_1194_|__2400__|    the closer lies in the middle  */
static void
test_stacked_both (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (600));
  maker.setting_out->start = CW_START_BOTH;
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "0-2400 2403-3597 3600-6000");
}

/*  |_797_|__2400__|__2400__|_394_|    a panel begins at 800  */
static void
test_offset (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (600));
  maker.setting_out->offset = CW_MM (800);
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "0-797 800-3200 3203-5603 5606-6000");
}

/*  97 would be too narrow: the panel after it begins 53 later and keeps its
 *  end.
 *
 *  |150|__2347__|__2400__|_1094_|
 */
static void
test_offset_too_small (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (600));
  maker.setting_out->offset = CW_MM (100);
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "0-150 153-2500 2503-4903 4906-6000");
  assert_no_troubles (layout);
}

/*  |_1197_|__2400__|__2397__|     moved by 1200; 3 off the last by rasping
 *  |__2400__|__2400__|_1194_|
 */
static void
test_stagger (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (1203));
  maker.setting_out->bond = CW_BOND_STAGGER;
  maker.setting_out->stagger = CW_MM (1200);
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "0-2400 2403-4803 4806-6000");
  assert_row (layout, 2, "0-1197 1200-3600 3603-6000");
  g_assert_cmpuint (cw_layout_count (layout, CW_PIECE_RASPED), ==, 1);
  assert_no_troubles (layout);
}

/*  |__2400__|__2400__|_1194_|     the rest, 2400 - 2392 - 4, is no piece
 *  |_1202_|__2400__|__2392__|     1202 = 2400 - 1194 - 4
 *  |__2400__|__2400__|_1194_|
 */
static void
test_offcut (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (1806));
  maker.setting_out->bond = CW_BOND_OFFCUT;
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "0-2400 2403-4803 4806-6000");
  assert_row (layout, 2, "0-1202 1205-3605 3608-6000");
  assert_row (layout, 3, "0-2400 2403-4803 4806-6000");
  assert_no_troubles (layout);
}

/*  The rest of 2206 would end 194 from the joint below and is not used; the
 *  panels that begin the course anew are shortened to keep 200.
 *
 *  |_2200_|__2400__|_390_|
 *  |__2400__|__2400__|190|
 */
static void
test_offcut_too_near (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (4996), CW_MM (1203));
  maker.setting_out->bond = CW_BOND_OFFCUT;
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "0-2400 2403-4803 4806-4996");
  assert_row (layout, 2, "0-2200 2203-4603 4606-4996");
  assert_no_troubles (layout);
}

/*  From both corners the closer of 1194 is what was laid last, and its rest
 *  of 1202 begins the next course on the left. On the right the joint may
 *  not stand over the one at 3597: that panel is cut to 2200, and the closer's
 *  other joint keeps its 200 too.
 *
 *  |_1202_|__2192__|_397_|__2200__|
 *  |__2400__|__1194___|__2400__|
 */
static void
test_offcut_both (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (1203));
  maker.setting_out->bond = CW_BOND_OFFCUT;
  maker.setting_out->start = CW_START_BOTH;
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "0-2400 2403-3597 3600-6000");
  assert_row (layout, 2, "0-1202 1205-3397 3400-3797 3800-6000");
  assert_no_troubles (layout);
}

/*  studs at 0, 600, 1200 …: the joint's middle on 2400 and on 4800  */
static void
test_joints_on_studs (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (600));
  maker.setting_out->joints_on_studs = TRUE;
  maker.stud_spacing = CW_MM (600);
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "0-2398.5 2401.5-4798.5 4801.5-6000");
  assert_no_troubles (layout);
}

/*  A joint on each jamb, within the opening; above and below it a piece.
 *
 *  |        |__|     |      |
 *  |__2000__|__|_____|______|
 */
static void
test_break (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (600));
  wall_add_opening (&maker, CW_MM (2000), CW_MM (200), CW_MM (1000),
                    CW_MM (200));
  maker.setting_out->at_openings = CW_AT_OPENINGS_BREAK;
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1,
              "0-2000 2003-2997 2003-2997 3000-4803 4806-6000");
  assert_no_troubles (layout);
}

/*  The joint at 2400 would stand 50 past the jamb at 2350; it goes back to
 *  150 and a joint before it, and the next panel is whole again.
 *
 *         2197|3   2350
 *  |__________|_|   |‾‾‾‾‾|
 */
static void
test_notch (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (6000), CW_MM (600));
  wall_add_opening (&maker, CW_MM (2350), CW_MM (200), CW_MM (1000),
                    CW_MM (200));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "0-2197 2200-4600 4603-6000");
  assert_no_troubles (layout);
}

/*  | | | | |   panels stand: 600, 600, 600, 191  */
static void
test_upright_left (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (2000), CW_MM (3000));
  maker.setting_out->run = CW_RUN_VERTICAL;
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_courses (layout, "0-600 603-1203 1206-1806 1809-2000");
  assert_row (layout, 1, "0-2400 2403-3000");
  assert_row (layout, 4, "0-2400 2403-3000");
}

static void
test_upright_right (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (2000), CW_MM (3000));
  maker.setting_out->run = CW_RUN_VERTICAL;
  maker.setting_out->start = CW_START_RIGHT;
  maker.setting_out->bond = CW_BOND_STAGGER;
  maker.setting_out->stagger = CW_MM (1000);
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_courses (layout, "1400-2000 797-1397 194-794 0-191");
  assert_row (layout, 1, "0-2400 2403-3000");
  assert_row (layout, 2, "0-997 1000-3000");
  assert_row (layout, 3, "0-1997 2000-3000");
}

/*  600, 600, the closer of 191, 600  */
static void
test_upright_both (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (2000), CW_MM (2400));
  maker.setting_out->run = CW_RUN_VERTICAL;
  maker.setting_out->start = CW_START_BOTH;
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_courses (layout, "0-600 603-1203 1206-1397 1400-2000");
}

/*  Upright, the offset moves the courses and the base the panels; the last
 *  panel of 94 grows to 150 and the one before it is 56 shorter.
 */
static void
test_upright_offset_and_base (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (1200), CW_MM (3000));
  maker.setting_out->run = CW_RUN_VERTICAL;
  maker.setting_out->offset = CW_MM (403);
  maker.setting_out->base = CW_MM (503);
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_courses (layout, "0-400 403-1003 1006-1200");
  assert_row (layout, 1, "0-500 503-2847 2850-3000");
}

static void
test_base (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (2400), CW_MM (1503));
  maker.setting_out->base = CW_MM (300);
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_courses (layout, "0-297 300-900 903-1503");
  assert_no_troubles (layout);
}

/*
 *               . 1803
 *          .---------.         course 3 from 1206: 1507.5 … 4492.5
 *      .---------------.       course 2 from 603
 *    |-------------------|     course 1, rise 0.4
 *
 *  With an offset of 203 the first piece of course 2 would be 200 long and
 *  80 high; it is 375 long, where the rake is 150 over the course.
 */
static void
test_gable (void)
{
  const CwPoint corners[] = { { 0, 0 },
                              { CW_MM (6000), 0 },
                              { CW_MM (6000), CW_MM (603) },
                              { CW_MM (3000), CW_MM (1803) },
                              { 0, CW_MM (603) } };
  WallMaker maker;
  wall_begin (&maker, corners, G_N_ELEMENTS (corners));
  maker.setting_out->offset = CW_MM (203);
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_courses (layout, "0-600 603-1203 1206-1803");
  assert_row (layout, 1, "0-200 203-2603 2606-5006 5009-6000");
  assert_row (layout, 2, "0-375 378-2603 2606-5006 5009-6000");
  assert_row (layout, 3, "1507.5-2603 2606-4492.5");
  assert_no_troubles (layout);
}

/* A wall narrower than the least piece is laid all the same. */
static void
test_trouble_has_place (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (100), CW_MM (603 + 600));
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_row (layout, 1, "0-100");
  g_assert_cmpuint (layout->troubles->len, ==, 2);
  const CwLayoutTrouble *trouble
      = &g_array_index (layout->troubles, CwLayoutTrouble, 1);
  g_assert_cmpint (trouble->kind, ==, CW_TROUBLE_LEAST_PIECE);
  g_assert_cmpuint (trouble->course, ==, 2);
  g_assert_cmpint (trouble->place.x, ==, CW_MM (50));
  g_assert_cmpint (trouble->place.y, ==, CW_MM (903));
}

static void
add_zone (GArray *zones, CwLength low, CwLength high)
{
  const CwZone zone = { CW_MM (low), CW_MM (high), CW_TROUBLE_LEAST_STAGGER };
  g_array_append_val (zones, zone);
}

/*  Joints may not begin within 2000 … 2400 and 4500 … 6700, and the first is
 *  wished at 2150. 2000 is nearest, but a panel from there ends at 4403 and
 *  leaves 2444 without a place for a joint. From 2400 a panel can end at 4500.
 *
 *        2000 ////2400                 4500 ///////////////// 6700
 *  |___________________|__________________|_______________________|
 *  0                2400               4500                    6850
 */
static void
test_look_ahead (void)
{
  g_autoptr (GArray) zones = g_array_new (FALSE, FALSE, sizeof (CwZone));
  g_autoptr (GArray) stretches
      = g_array_new (FALSE, FALSE, sizeof (CwStretch));
  g_autoptr (GArray) troubles
      = g_array_new (FALSE, FALSE, sizeof (CwSetOutTrouble));
  CwSetOutRules rules = { .length = CW_MM (2400),
                          .joint = CW_MM (3),
                          .least = CW_MM (150),
                          .least_low = CW_MM (150),
                          .least_high = CW_MM (150),
                          .zones = zones };
  CwSetOut out = { stretches, troubles };
  GString *text = g_string_new (NULL);
  add_zone (zones, 2000, 2400);
  add_zone (zones, 4500, 6700);
  cw_zones_sort (&rules);
  cw_set_out_run (&rules, (CwInterval) { 0, CW_MM (6850) }, CW_MM (-250),
                  &out);
  for (guint i = 0; i < stretches->len; i++)
    append_span (text, g_array_index (stretches, CwStretch, i).low,
                 g_array_index (stretches, CwStretch, i).high);
  g_autofree char *row = g_string_free (text, FALSE);
  g_assert_cmpstr (row, ==, "0-2400 2403-4500 4503-6850");
  g_assert_cmpuint (troubles->len, ==, 0);
}

static void
assert_studs (const CwLayout *layout, const char *expected)
{
  GString *text = g_string_new (NULL);
  for (guint i = 0; i < layout->studs->len; i++)
    {
      if (i > 0)
        g_string_append_c (text, ' ');
      append_mm (text, g_array_index (layout->studs, CwLength, i));
    }
  g_autofree char *studs = g_string_free (text, FALSE);
  g_assert_cmpstr (studs, ==, expected);
}

/*  Every 600 from the left end, at the right end and at both jambs.  */
static void
test_studs (void)
{
  WallMaker maker;
  wall_begin_box (&maker, CW_MM (2000), CW_MM (600));
  wall_add_opening (&maker, CW_MM (700), CW_MM (200), CW_MM (500),
                    CW_MM (200));
  maker.stud_spacing = CW_MM (600);
  g_autoptr (CwLayout) layout = wall_layout (&maker);
  assert_studs (layout, "0 600 700 1200 1800 2000");
}

int
main (int argc, char *argv[])
{
  static const struct
  {
    const char *path;
    GTestFunc test;
  } tests[] = {
    { "stacked/left", test_stacked_left },
    { "stacked/right", test_stacked_right },
    { "stacked/both", test_stacked_both },
    { "offset", test_offset },
    { "offset-too-small", test_offset_too_small },
    { "stagger", test_stagger },
    { "offcut/left", test_offcut },
    { "offcut/too-near", test_offcut_too_near },
    { "offcut/both", test_offcut_both },
    { "joints-on-studs", test_joints_on_studs },
    { "openings/break", test_break },
    { "openings/notch", test_notch },
    { "upright/left", test_upright_left },
    { "upright/right", test_upright_right },
    { "upright/both", test_upright_both },
    { "upright/offset-and-base", test_upright_offset_and_base },
    { "base", test_base },
    { "gable", test_gable },
    { "trouble-has-place", test_trouble_has_place },
    { "look-ahead", test_look_ahead },
    { "studs", test_studs },
  };
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (tests); i++)
    {
      g_autofree char *path
          = g_strconcat ("/setting-out/", tests[i].path, NULL);
      g_test_add_func (path, tests[i].test);
    }
  return g_test_run ();
}
