/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The cut plan against counts known by arithmetic, and random jobs against a
 * checker that shares no code with the planner.
 */
#include "cut-plan-checker.h"
#include "cw-cut-plan.h"

static CwCutPlan *
plan_of (const CwCutBlank *blanks, guint n, const CwCutRules *rules)
{
  CwCutPlan *plan = cw_cut_plan_new (blanks, n, rules, CW_CUT_EFFORT_LIVE,
                                     NULL, NULL, NULL);
  check_cut_plan (plan, blanks, n);
  return plan;
}

/* One job of blanks of one height, as lengths along the panel. Counts follow
 * from the sum: derived. */
static void
assert_panels_for_lengths (const CwLength *mm, guint n, CwLength kerf_mm,
                           guint n_panels)
{
  const CwCutRules rules = { CW_MM (2400), CW_MM (600), CW_MM (kerf_mm) };
  g_autofree CwCutBlank *blanks = g_new0 (CwCutBlank, n);
  for (guint i = 0; i < n; i++)
    blanks[i] = (CwCutBlank) { CW_MM (mm[i]), CW_MM (600), 0 };
  g_autoptr (CwCutPlan) plan = plan_of (blanks, n, &rules);
  g_assert_cmpuint (plan->panels->len, ==, n_panels);
  g_assert_cmpuint (plan->least, ==, n_panels);
}

static void
test_lengths (void)
{
  const CwLength halves[] = { 1200, 1200, 1200, 1200 };
  assert_panels_for_lengths (halves, 4, 0, 2);
  /* With a kerf of 4 only one half of 1200 comes out of a panel. */
  assert_panels_for_lengths (halves, 4, 4, 4);
  /* 2 × 1198 + 4 = 2400 */
  const CwLength sawn_halves[] = { 1198, 1198, 1198, 1198 };
  assert_panels_for_lengths (sawn_halves, 4, 4, 2);
  /* 5 thirds of 797 with two kerfs of 4: 3 + 2. */
  const CwLength thirds[] = { 797, 797, 797, 797, 797 };
  assert_panels_for_lengths (thirds, 5, 4, 2);
  /* Each just over a half. */
  const CwLength large[] = { 1201, 1300, 1250, 1400, 1999 };
  assert_panels_for_lengths (large, 5, 0, 5);
  /* 7 + 5 + 12 and 9 + 15 and 8 + 16 tenths of a panel of 24. */
  const CwLength mixed[] = { 700, 500, 1200, 900, 1500, 800, 1600 };
  assert_panels_for_lengths (mixed, 7, 0, 3);
}

static void
test_whole_panels (void)
{
  const CwCutRules rules = { CW_MM (2400), CW_MM (600), CW_MM (4) };
  /* 10 mm too large by the joint that was left out: rasped, still one. */
  const CwCutBlank blanks[] = { { CW_MM (2400), CW_MM (600), 0 },
                                { CW_MM (2410), CW_MM (600), 0 },
                                { CW_MM (2400), CW_MM (600), 1 } };
  g_autoptr (CwCutPlan) plan = plan_of (blanks, 3, &rules);
  g_assert_cmpuint (plan->panels->len, ==, 3);
  g_assert_cmpuint (plan->least, ==, 3);
  for (guint i = 0; i < 3; i++)
    {
      const CwCutPanel *panel = g_ptr_array_index (plan->panels, i);
      g_assert_cmpuint (panel->cuts->len, ==, 0);
    }
}

static void
test_ripped_pairs (void)
{
  /* Two strips of 298 with a kerf of 4 come out of 600. */
  const CwCutRules rules = { CW_MM (2400), CW_MM (600), CW_MM (4) };
  CwCutBlank blanks[6];
  for (guint i = 0; i < 6; i++)
    blanks[i] = (CwCutBlank) { CW_MM (2400), CW_MM (298), 0 };
  g_autoptr (CwCutPlan) plan = plan_of (blanks, 6, &rules);
  g_assert_cmpuint (plan->panels->len, ==, 3);
}

static void
test_groups_stay_apart (void)
{
  const CwCutRules rules = { CW_MM (2400), CW_MM (600), 0 };
  CwCutBlank blanks[4];
  for (guint i = 0; i < 4; i++)
    blanks[i] = (CwCutBlank) { CW_MM (600), CW_MM (600), i };
  g_autoptr (CwCutPlan) apart = plan_of (blanks, 4, &rules);
  g_assert_cmpuint (apart->panels->len, ==, 4);
  for (guint i = 0; i < 4; i++)
    blanks[i].group = 7;
  g_autoptr (CwCutPlan) together = plan_of (blanks, 4, &rules);
  g_assert_cmpuint (together->panels->len, ==, 1);
}

static void
test_turning (void)
{
  CwCutRules rules = { CW_MM (2400), CW_MM (600), 0 };
  const CwCutBlank blanks[] = { { CW_MM (600), CW_MM (400), 0 },
                                { CW_MM (600), CW_MM (400), 0 },
                                { CW_MM (600), CW_MM (400), 0 },
                                { CW_MM (600), CW_MM (400), 0 },
                                { CW_MM (600), CW_MM (400), 0 },
                                { CW_MM (600), CW_MM (400), 0 } };
  g_autoptr (CwCutPlan) straight = plan_of (blanks, 6, &rules);
  g_assert_cmpuint (straight->panels->len, ==, 2);
  rules.turn = TRUE;
  /* 6 × 400 = 2400 */
  g_autoptr (CwCutPlan) turned = plan_of (blanks, 6, &rules);
  g_assert_cmpuint (turned->panels->len, ==, 1);
}

static void
fill_at_random (CwCutBlank *blanks, guint n, const CwCutRules *rules)
{
  for (guint i = 0; i < n; i++)
    blanks[i] = (CwCutBlank) {
      g_test_rand_int_range (1, (gint32) (rules->length / CW_MM (1))) * CW_MM (1),
      g_test_rand_bit ()
          ? rules->height
          : g_test_rand_int_range (1, (gint32) (rules->height / CW_MM (1)))
                * CW_MM (1),
      (guint) g_test_rand_int_range (0, 3)
    };
}

static void
test_random_jobs (void)
{
  for (guint round = 0; round < 200; round++)
    {
      const CwCutRules rules
          = { CW_MM (g_test_rand_int_range (600, 3000)),
              CW_MM (g_test_rand_int_range (300, 700)),
              CW_MM (g_test_rand_int_range (0, 6)), g_test_rand_bit () };
      CwCutBlank blanks[40];
      const guint n = (guint) g_test_rand_int_range (0, 40);
      fill_at_random (blanks, n, &rules);
      g_autoptr (CwCutPlan) plan = plan_of (blanks, n, &rules);
      g_assert_cmpuint (plan->panels->len, <=, n);
    }
}

static void
assert_same_cuts (const GArray *a, const GArray *b)
{
  g_assert_cmpuint (a->len, ==, b->len);
  for (guint i = 0; i < a->len; i++)
    {
      const CwCut *first = &g_array_index (a, CwCut, i);
      const CwCut *second = &g_array_index (b, CwCut, i);
      g_assert_cmpint (first->upright, ==, second->upright);
      g_assert_cmpint (first->at, ==, second->at);
      g_assert_cmpint (first->from, ==, second->from);
      g_assert_cmpint (first->to, ==, second->to);
    }
}

static void
assert_same_panels (const CwCutPlan *a, const CwCutPlan *b)
{
  g_assert_cmpuint (a->panels->len, ==, b->panels->len);
  for (guint i = 0; i < a->panels->len; i++)
    assert_same_cuts (
        ((const CwCutPanel *) g_ptr_array_index (a->panels, i))->cuts,
        ((const CwCutPanel *) g_ptr_array_index (b->panels, i))->cuts);
}

static void
test_same_plan_again (void)
{
  const CwCutRules rules = { CW_MM (2400), CW_MM (600), CW_MM (4) };
  CwCutBlank blanks[40];
  fill_at_random (blanks, 40, &rules);
  g_autoptr (CwCutPlan) first = plan_of (blanks, 40, &rules);
  g_autoptr (CwCutPlan) second = plan_of (blanks, 40, &rules);
  assert_same_panels (first, second);
}

static void
note_progress (guint n_panels, double share, gpointer data)
{
  g_assert_cmpuint (n_panels, >, 0);
  g_assert_cmpfloat (share, >=, 0);
  g_assert_cmpfloat (share, <=, 1);
  (*(guint *) data)++;
}

static void
cancel_at_once (guint n_panels, double share, gpointer cancellable)
{
  g_cancellable_cancel (cancellable);
}

static void
test_progress_and_cancel (void)
{
  const CwCutRules rules = { CW_MM (2400), CW_MM (600), CW_MM (4) };
  CwCutBlank blanks[12];
  for (guint i = 0; i < 12; i++)
    blanks[i] = (CwCutBlank) { CW_MM (700 + 37 * (i % 5)),
                               CW_MM (310 + 19 * (i % 4)), 0 };
  guint n_calls = 0;
  g_autoptr (CwCutPlan) plan
      = cw_cut_plan_new (blanks, 12, &rules, CW_CUT_EFFORT_LIVE,
                         note_progress, &n_calls, NULL);
  check_cut_plan (plan, blanks, 12);
  if (plan->panels->len > plan->least)
    g_assert_cmpuint (n_calls, >, 0);

  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  g_autoptr (CwCutPlan) cancelled
      = cw_cut_plan_new (blanks, 12, &rules, CW_CUT_EFFORT_LIVE,
                         cancel_at_once, cancellable, cancellable);
  check_cut_plan (cancelled, blanks, 12);
}

typedef struct
{
  guint n_calls, fewest;
  double share;
} Course;

/* The share grows, the panels do not. */
static void
note_course (guint n_panels, double share, gpointer data)
{
  Course *course = data;
  g_assert_cmpfloat (share, >=, course->share);
  g_assert_cmpfloat (share, <=, 1);
  g_assert_cmpuint (n_panels, <=, course->fewest);
  course->share = share;
  course->fewest = n_panels;
  course->n_calls++;
}

/* From a plan without search on: never more panels, and at least once fewer. */
static void
test_improve (void)
{
  const CwCutRules rules = { CW_MM (2400), CW_MM (600), CW_MM (4) };
  guint n_saved = 0, n_calls = 0;
  for (guint round = 0; round < 20; round++)
    {
      CwCutBlank blanks[60];
      fill_at_random (blanks, 60, &rules);
      g_autoptr (CwCutPlan) first = cw_cut_plan_new (
          blanks, 60, &rules, CW_CUT_EFFORT_FIRST, NULL, NULL, NULL);
      Course course = { 0, first->panels->len, 0 };
      g_autoptr (CwCutPlan) better
          = cw_cut_plan_improve (first, blanks, 60, CW_CUT_EFFORT_LIVE,
                                 note_course, &course, NULL);
      check_cut_plan (better, blanks, 60);
      g_assert_cmpuint (better->panels->len, <=, course.fewest);
      g_assert_cmpuint (better->least, >=, first->least);
      n_saved += first->panels->len - better->panels->len;
      n_calls += course.n_calls;
    }
  g_assert_cmpuint (n_saved, >, 0);
  g_assert_cmpuint (n_calls, >, 0);
}

static void
test_improve_cancelled (void)
{
  const CwCutRules rules = { CW_MM (2400), CW_MM (600), CW_MM (4) };
  CwCutBlank blanks[60];
  fill_at_random (blanks, 60, &rules);
  blanks[0] = (CwCutBlank) { CW_MM (2400), CW_MM (600), 0 };
  g_autoptr (CwCutPlan) former = plan_of (blanks, 60, &rules);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  g_cancellable_cancel (cancellable);
  g_autoptr (CwCutPlan) kept
      = cw_cut_plan_improve (former, blanks, 60, CW_CUT_EFFORT_LONG, NULL,
                             NULL, cancellable);
  check_cut_plan (kept, blanks, 60);
  g_assert_cmpuint (kept->least, ==, former->least);
  assert_same_panels (kept, former);
}

/* A long search gives the same plan again. */
static void
test_long (void)
{
  const CwCutRules rules = { 10, 10, 0, FALSE };
  CwCutBlank blanks[24];
  for (guint i = 0; i < 24; i++)
    blanks[i] = (CwCutBlank) { 1 + 7 * i % 9, 1 + 5 * i % 8, 0 };
  g_autoptr (CwCutPlan) first = cw_cut_plan_new (
      blanks, 24, &rules, CW_CUT_EFFORT_LONG, NULL, NULL, NULL);
  g_autoptr (CwCutPlan) second = cw_cut_plan_new (
      blanks, 24, &rules, CW_CUT_EFFORT_LONG, NULL, NULL, NULL);
  check_cut_plan (first, blanks, 24);
  assert_same_panels (first, second);
}

/* A blank that weighs nothing to speak of needs a panel, and is looked at for
 * no longer than others. */
static void
test_sliver (void)
{
  const CwCutBlank sliver = { 1, 1, 0 };
  const CwCutRules rules = { CW_MM (2400), CW_MM (600), 0, FALSE };
  g_autoptr (CwCutPlan) first = cw_cut_plan_new (
      &sliver, 1, &rules, CW_CUT_EFFORT_FIRST, NULL, NULL, NULL);
  g_autoptr (CwCutPlan) live = cw_cut_plan_improve (
      first, &sliver, 1, CW_CUT_EFFORT_LIVE, NULL, NULL, NULL);

  check_cut_plan (live, &sliver, 1);
  g_assert_cmpuint (live->panels->len, ==, 1);
  g_assert_cmpuint (live->least, ==, 1);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/layout/cut-plan/lengths", test_lengths);
  g_test_add_func ("/layout/cut-plan/whole-panels", test_whole_panels);
  g_test_add_func ("/layout/cut-plan/ripped-pairs", test_ripped_pairs);
  g_test_add_func ("/layout/cut-plan/groups-stay-apart",
                   test_groups_stay_apart);
  g_test_add_func ("/layout/cut-plan/turning", test_turning);
  g_test_add_func ("/layout/cut-plan/random-jobs", test_random_jobs);
  g_test_add_func ("/layout/cut-plan/same-plan-again", test_same_plan_again);
  g_test_add_func ("/layout/cut-plan/progress-and-cancel",
                   test_progress_and_cancel);
  g_test_add_func ("/layout/cut-plan/improve", test_improve);
  g_test_add_func ("/layout/cut-plan/improve-cancelled",
                   test_improve_cancelled);
  g_test_add_func ("/layout/cut-plan/long", test_long);
  g_test_add_func ("/layout/cut-plan/sliver", test_sliver);
  return g_test_run ();
}
