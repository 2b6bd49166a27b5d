/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The panels that a project uses: every plan checked apart from the planner,
 * counts that arithmetic knows, and how far plans are from their bound.
 */
#include "panel-plan-checker.h"

#include "estimate-cases.h"

static CwTakeoff *
settled_of (const char *walls, const char *settings)
{
  g_autoptr (CwProject) project = case_project (walls, settings);

  return settled_takeoff (project, NULL);
}

/* What arithmetic knows. The joint is 3 mm and the kerf 4 mm; a wall of
 * 2403 mm and more has one whole panel a course and a piece of the rest. */
static const struct
{
  const char *name, *walls, *settings;
  guint panels, least;
} known[] = {
  { "whole", "9.609x6.027", "", 40, 40 },
  { "whole-twice", "9.609x6.027 *2", "", 80, 80 },
  { "whole-upright", "6.027x9.609", "setting-out.run=vertical", 40, 40 },
  /* 2247 and 150 mm a course, and 15 of the 150 from one panel. */
  { "a-nanometre-wider", "9.609000001x6.027", "setting-out.rasp=0", 41, 41 },
  { "rasped", "9.59x6.027", "", 40, 40 },
  /* 1198 + 4 + 1198 = 2400. */
  { "two-to-a-panel", "3.601x0.6 *2", "", 3, 3 },
  { "two-a-nanometre-long", "3.601000001x0.6 *2", "", 4, 4 },
  { "without-kerf", "3.603x0.6 *2", "panel.kerf=0", 3, 3 },
  { "odd-one-out", "3.601x0.6 *5", "", 8, 8 },
  /* 3 × 797 + 2 × 4 = 2399, 3 × 798 + 2 × 4 = 2402. */
  { "three-to-a-panel", "3.2x0.6 *7", "", 10, 10 },
  { "three-do-not-fit", "3.201x0.6 *7", "", 11, 11 },
  /* 1500 beside 896: 2400. */
  { "long-and-short", "3.903x0.6 *3; 3.299x0.6 *3", "", 9, 9 },
  { "two-walls-that-keep", "3.601x0.6; 3.601x0.6",
    "setting-out.offcuts=elevation", 4, 4 },
  { "not-used-again", "3.601x1.203", "setting-out.offcuts=none", 4, 4 },
  { "in-the-course", "3.601x1.203", "setting-out.offcuts=course", 4, 4 },
  { "in-the-elevation", "3.601x1.203", "setting-out.offcuts=elevation", 3, 3 },
  /* Two of 298 mm height: 2 × 298 + 4 = 600. */
  { "ripped", "2.4x0.901 *2", "", 3, 3 },
  { "ripped-a-nanometre-high", "2.4x0.901000001 *2", "", 4, 4 },
  /* A notch of 1000 × 400 at the panel's corner frees 996 × 396. */
  { "out-of-a-notch", "2.4x0.6 window:1x0.4@0,0.2; 0.996x0.396", "", 1, 1 },
  { "out-of-a-notch-a-nanometre-long",
    "2.4x0.6 window:1x0.4@0,0.2; 0.996000001x0.396", "", 2, 2 },
  { "out-of-a-notch-a-nanometre-high",
    "2.4x0.6 window:1x0.4@0,0.2; 0.996x0.396000001", "", 2, 2 },
  { "out-of-a-notch-each", "2.4x0.6 window:1x0.4@0,0.2 *3; 0.996x0.396 *3",
    "", 3, 3 },
  /* 2 × 496 + 4 = 996. */
  { "two-out-of-a-notch",
    "2.4x0.6 window:1x0.4@0,0.2; 0.496x0.396 *2", "", 1, 1 },
  { "three-not-out-of-a-notch",
    "2.4x0.6 window:1x0.4@0,0.2; 0.496x0.396 *3", "", 2, 2 },
  { "out-of-a-notch-without-kerf",
    "2.4x0.6 window:1x0.4@0,0.2; 1x0.4", "panel.kerf=0", 1, 1 },
  /* In the middle of a side it takes a cut more: 992 × 396. */
  { "out-of-a-side", "2.4x0.6 window:1x0.4@0.7,0.2; 0.992x0.396", "", 1, 1 },
  { "out-of-a-side-a-nanometre-long",
    "2.4x0.6 window:1x0.4@0.7,0.2; 0.992000001x0.396", "", 2, 2 },
  /* No cut from an edge frees what is open to no side. */
  { "not-out-of-the-middle", "2.4x0.6 window:1.4x0.4@0.5,0.1; 0.5x0.2", "", 2,
    2 },
  /* Turned only where panels may be: 396 × 200. */
  { "not-turned-out-of-a-notch",
    "2.4x0.6 window:1x0.4@0,0.2; 0.2x0.397", "", 2, 2 },
  { "turned-out-of-a-notch", "2.4x0.6 window:1x0.4@0,0.2; 0.2x0.397",
    "setting-out.turn=yes", 1, 1 },
  { "upright-out-of-a-notch", "0.6x2.4 window:0.4x1@0.2,0; 0.396x0.996",
    "setting-out.run=vertical", 1, 1 },
  /* A window over the head joint at 2400: 996 × 200 beside the notched one. */
  { "notch-not-used-again", "3.399x0.6 window:1.999x0.4@1.4,0.2",
    "setting-out.offcuts=none", 2, 2 },
  { "notch-in-the-course", "3.399x0.6 window:1.999x0.4@1.4,0.2",
    "setting-out.offcuts=course", 1, 1 },
  { "notch-in-the-course-twice", "3.399x0.6 window:1.999x0.4@1.4,0.2 *2",
    "setting-out.offcuts=course", 2, 2 },
  { "notch-not-from-wall-to-wall",
    "2.4x0.6 window:1x0.4@0,0.2; 0.996x0.396",
    "setting-out.offcuts=elevation", 2, 2 },
};

static void
test_known (gconstpointer data)
{
  const guint i = GPOINTER_TO_UINT (data);
  g_autoptr (CwTakeoff) takeoff
      = settled_of (known[i].walls, known[i].settings);

  check_panel_plans (takeoff);
  g_assert_cmpuint (panels_used (takeoff), ==, known[i].panels);
  g_assert_cmpuint (panels_needed (takeoff), ==, known[i].least);
}

/* Of 500 × 350 mm four come out of a panel: 4 × 500 + 3 × 4 = 2012. Turned,
 * six: 6 × 350 + 5 × 4 = 2120. */
static void
test_turned (void)
{
  g_autoptr (CwTakeoff) straight = settled_of ("0.5x0.35 *6", "");
  g_autoptr (CwTakeoff) turned
      = settled_of ("0.5x0.35 *6", "setting-out.turn=yes");

  check_panel_plans (straight);
  check_panel_plans (turned);
  g_assert_cmpuint (panels_used (straight), ==, 2);
  g_assert_cmpuint (panels_needed (straight), ==, 2);
  g_assert_cmpuint (panels_used (turned), ==, 1);
  g_assert_cmpuint (panels_needed (turned), ==, 1);
}

static const char *const invented[] = {
  "12.4x5.3 window:1.2x1.4@1.1,0.9 window:1.2x1.4@4.3,0.9 "
  "door:0.95x2.1@7.2,0 window:0.8x0.8@9.5,3.2 stub:0.11@11,0.4",
  "7.8x2.75 window:1.5x1.2@1.2,0.9 door:1x2.1@5,0",
  "15.2x7.9 window:1.2x1.5@1,1 window:1.2x1.5@4,1 window:1.2x1.5@7,1 "
  "window:1.2x1.5@1,4.1 window:1.2x1.5@4,4.1 window:1.2x1.5@7,4.1 "
  "door:1.8x2.4@11,0",
  "4.05x8.4 arch:1.2x1.4+0.4:segmental@1.3,1 arch:1.2x1.4+0.6:semicircular"
  "@1.3,4.5",
  "21x3.3 window:2.4x1.2@2,1 window:2.4x1.2@6.1,1 window:2.4x1.2@10.3,1 "
  "window:2.4x1.2@14.7,1 door:0.9x2.1@19,0",
  "9.35x6.15 unclad:2.2x1.7@0,0 window:1x1@4,1.2 window:1x1@6.6,1.2",
  "5.5x5.5 window:0.6x0.6@0.8,0.8 window:0.6x0.6@2.1,2.1 "
  "window:0.6x0.6@3.4,3.4",
  "30x2.45 door:2.4x2.2@3,0 door:2.4x2.2@9,0 door:2.4x2.2@15,0 "
  "door:2.4x2.2@21,0",
  "11.11x4.44 stub:0.2@1,1 stub:0.2@3,2 arch:3x2.2+0.5:segmental@5,0",
  "6.7x9.6 window:1.1x1.6@0.7,1 window:1.1x1.6@4.6,1 window:1.1x1.6@0.7,4 "
  "window:1.1x1.6@4.6,4 window:1.1x1.6@2.6,7",
};

static void
test_near_bound (gconstpointer data)
{
  static const char *const settings[]
      = { "", "setting-out.bond=stagger setting-out.stagger=1200",
          "setting-out.bond=offcut", "setting-out.start=right",
          "setting-out.run=vertical" };

  for (guint i = 0; i < G_N_ELEMENTS (settings); i++)
    {
      g_autoptr (CwTakeoff) takeoff = settled_of (data, settings[i]);

      check_panel_plans (takeoff);
      assert_plan_near_bound (takeoff, settings[i]);
    }
}

/* The further offcuts may travel, the fewer panels. */
static void
test_travelling (void)
{
  static const char *const ways[] = { "none", "course", "elevation",
                                      "project" };
  g_autofree char *walls = g_strjoin (
      "; ", invented[0], invented[1], invented[5], invented[9], NULL);
  guint former = G_MAXUINT;

  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    {
      g_autofree char *setting
          = g_strconcat ("setting-out.offcuts=", ways[i], NULL);
      g_autoptr (CwTakeoff) takeoff = settled_of (walls, setting);

      check_panel_plans (takeoff);
      g_test_message ("%s: %u panels, at least %u", ways[i],
                      panels_used (takeoff), panels_needed (takeoff));
      g_assert_cmpuint (panels_used (takeoff), <=, former);
      former = panels_used (takeoff);
    }
}

static void
test_travelling_each (gconstpointer data)
{
  g_autoptr (CwTakeoff) course
      = settled_of (data, "setting-out.offcuts=course");
  g_autoptr (CwTakeoff) elevation
      = settled_of (data, "setting-out.offcuts=elevation");
  g_autoptr (CwTakeoff) project = settled_of (data, "");

  g_assert_cmpuint (panels_used (elevation), <=, panels_used (course));
  g_assert_cmpuint (panels_used (project), ==, panels_used (elevation));
  g_assert_cmpuint (panels_needed (elevation), <=, panels_needed (course));
}

/* Whatever was looked at before, a project has one plan. */
static void
assert_same_cuts (const CwPanelPlan *a, const CwPanelPlan *b)
{
  g_assert_cmpuint (a->n_panels, ==, b->n_panels);
  g_assert_cmpuint (a->least, ==, b->least);
  for (guint i = 0; a->cut && i < a->cut->panels->len; i++)
    {
      const CwCutPanel *one = a->cut->panels->pdata[i];
      const CwCutPanel *other = b->cut->panels->pdata[i];

      g_assert_cmpuint (one->placements->len, ==, other->placements->len);
      for (guint j = 0; j < one->placements->len; j++)
        {
          const CwCutPlacement *here
              = &g_array_index (one->placements, CwCutPlacement, j);
          const CwCutPlacement *there
              = &g_array_index (other->placements, CwCutPlacement, j);

          g_assert_cmpuint (here->blank, ==, there->blank);
          g_assert_cmpint (here->x, ==, there->x);
          g_assert_cmpint (here->y, ==, there->y);
        }
    }
}

static void
assert_same_shares (const CwTakeoff *a, const CwTakeoff *b)
{
  const CwPanelStock *one = a->stocks->pdata[0], *other = b->stocks->pdata[0];

  g_assert_cmpuint (one->shares->len, ==, other->shares->len);
  for (guint i = 0; i < one->shares->len; i++)
    assert_same_cuts (
        g_array_index (one->shares, CwPanelShare, i).plan,
        g_array_index (other->shares, CwPanelShare, i).plan);
}

/* @project with its first wall as @by has it. */
static CwProject *
with_first_wall (const CwProject *project, const CwProject *by)
{
  return (CwProject *) cw_node_replace (&project->node,
                                        cw_list_at (project->elevations, 0),
                                        cw_list_at (by->elevations, 0));
}

static void
test_same_project_same_plan (void)
{
  g_autofree char *walls
      = g_strjoin ("; ", invented[0], invented[1], invented[9], NULL);
  g_autofree char *others
      = g_strjoin ("; ", invented[3], invented[1], invented[9], NULL);
  g_autoptr (CwProject) project = case_project (walls, "");
  g_autoptr (CwProject) other = case_project (others, "");
  g_autoptr (CwProject) edited = with_first_wall (project, other);
  g_autoptr (CwTakeoff) first = settled_takeoff (project, NULL);
  g_autoptr (CwTakeoff) changed = settled_takeoff (edited, first);
  g_autoptr (CwTakeoff) back = settled_takeoff (project, changed);
  g_autoptr (CwTakeoff) afresh = settled_takeoff (project, NULL);

  check_panel_plans (changed);
  g_assert_true (first->walls->pdata[1] == back->walls->pdata[1]);
  assert_same_shares (first, back);
  assert_same_shares (first, afresh);
}

static const CwPanelPlan *
first_plan (const CwTakeoff *takeoff)
{
  return ((const CwWallTakeoff *) takeoff->walls->pdata[0])->plans->pdata[0];
}

/* Pieces that stay as they are keep their cuts, whatever else changes. */
static void
test_cuts_taken_over (void)
{
  g_autoptr (CwProject) project = case_project (invented[0], "");
  g_autoptr (CwTakeoff) former = settled_takeoff (project, NULL);
  const CwNode *elevation = cw_list_at (project->elevations, 0);
  g_autoptr (CwNode) named = cw_node_copy (elevation);
  g_autoptr (CwNode) next = NULL;
  g_autoptr (CwTakeoff) takeoff = NULL;

  cw_node_put_text (named, "name", "South");
  next = cw_node_replace (&project->node, elevation, named);
  takeoff = cw_takeoff_new ((CwProject *) next, former, NULL);
  g_assert_true (takeoff->walls->pdata[0] != former->walls->pdata[0]);
  g_assert_nonnull (first_plan (takeoff)->cut);
  g_assert_true (first_plan (takeoff)->cut == first_plan (former)->cut);
  g_assert_true (cw_takeoff_is_settled (takeoff, CW_CUT_EFFORT_LIVE));
}

static void
test_improving_cancelled (void)
{
  g_autoptr (CwProject) project = case_project (invented[7], "");
  g_autoptr (CwTakeoff) quick = cw_takeoff_new (project, NULL, NULL);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();

  g_assert_false (cw_takeoff_is_settled (quick, CW_CUT_EFFORT_LIVE));
  g_cancellable_cancel (cancellable);
  g_assert_null (
      cw_takeoff_improve (quick, CW_CUT_EFFORT_LIVE, cancellable));
}

static guint
n_out_of_rests (const CwPanelPlan *plan)
{
  guint n = 0;

  for (guint i = 0; i < plan->rests->len; i++)
    n += g_array_index (plan->rests, CwPanelRest, i).cut != NULL;
  return n;
}

/* A gable of one panel, 2400 mm wide, 600 mm high in the middle and nothing at
 * its ends: its blank is the panel. A corner of 1200 × 600 holds rectangles
 * up to half of each, and the saw runs between. */
static CwTakeoff *
gable_and (double length, double height)
{
  const CwLength right = (CwLength) (length * CW_NM_PER_MM);
  const CwLength top = (CwLength) (height * CW_NM_PER_MM);
  const CwCorner gable[] = { { { 0, 0 }, 0, CW_EDGE_BASE },
                             { { CW_MM (2400), 0 }, 0, CW_EDGE_RAKE },
                             { { CW_MM (1200), CW_MM (600) }, 0,
                               CW_EDGE_RAKE } };
  const CwCorner small[] = { { { 0, 0 }, 0, CW_EDGE_BASE },
                             { { right, 0 }, 0, CW_EDGE_JOINT },
                             { { right, top }, 0, CW_EDGE_EAVE },
                             { { 0, top }, 0, CW_EDGE_JOINT } };
  g_autoptr (GPtrArray) none
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_unref);
  g_autoptr (GPtrArray) walls
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_unref);
  g_autoptr (CwProject) project = NULL;

  g_ptr_array_add (walls, case_elevation_of ("gable", gable, 3, none));
  g_ptr_array_add (walls, case_elevation_of ("small", small, 4, none));
  project = case_project_of (walls, "");
  return settled_takeoff (project, NULL);
}

static void
test_out_of_a_rake (void)
{
  g_autoptr (CwTakeoff) fits = gable_and (590, 290);
  g_autoptr (CwTakeoff) too_long = gable_and (605, 305);
  const CwPanelStock *stock = fits->stocks->pdata[0];

  check_panel_plans (fits);
  check_panel_plans (too_long);
  g_assert_cmpuint (panels_used (fits), ==, 1);
  g_assert_cmpuint (panels_needed (fits), ==, 1);
  g_assert_cmpuint (
      n_out_of_rests (g_array_index (stock->shares, CwPanelShare, 0).plan),
      ==, 1);
  g_assert_cmpuint (panels_used (too_long), ==, 2);
}

/* More walls than are planned together: nothing is lost between them. */
static void
test_many_walls (void)
{
  g_autofree char *walls = g_strconcat (invented[2], " *70", NULL);
  g_autoptr (CwTakeoff) takeoff = settled_of (walls, "");
  const CwPanelStock *stock = takeoff->stocks->pdata[0];
  const CwWallTakeoff *wall = takeoff->walls->pdata[0];
  const CwPanelPlan *own = wall->plans->pdata[0];

  check_panel_plans (takeoff);
  g_assert_cmpuint (stock->pools->len, >, 1);
  g_assert_cmpuint (stock->n_panels, <=, 70 * own->n_panels);
  assert_plan_near_bound (takeoff, "seventy walls");
  g_test_message ("70 walls: %u panels, at least %u; each by itself %u",
                  stock->n_panels, stock->least, own->n_panels);
}

/* As many walls alike as an elevation can stand for: two pieces of 1198 mm to
 * a panel, 1198 + 4 + 1198 = 2400. */
static void
test_walls_alike (void)
{
  g_autoptr (CwTakeoff) even = settled_of ("3.601x0.6 *100000", "");
  g_autoptr (CwTakeoff) odd
      = settled_of ("3.601x0.6 *99999; 3.601x0.6 *2; 2.4x0.6", "");

  g_assert_cmpuint (panels_used (even), ==, 150000);
  g_assert_cmpuint (panels_needed (even), ==, 150000);
  g_assert_cmpuint (panels_used (odd), ==, 100001 + 50001 + 1);
  g_assert_cmpuint (panels_needed (odd), ==, 100001 + 50001 + 1);
  check_panel_plans (odd);
}

/* Some metres with millimetres. */
static double
random_metres (GRand *random, double from, double to)
{
  return g_rand_int_range (random, (int) (from * 1000), (int) (to * 1000))
         / 1000.0;
}

static void
add_random_wall (GRand *random, GString *walls)
{
  const double width = random_metres (random, 1, 14);
  const double height = random_metres (random, 0.4, 7);
  const guint n = (guint) g_rand_int_range (random, 0, 6);

  g_string_append_printf (walls, "%s%.3fx%.3f *%d", walls->len ? "; " : "",
                          width, height, g_rand_int_range (random, 1, 5));
  for (guint i = 0; i < n; i++)
    g_string_append_printf (walls, " %s:%.3fx%.3f%s@%.3f,%.3f",
                            i % 3 ? "window" : "arch",
                            random_metres (random, 0.3, 2.5),
                            random_metres (random, 0.3, 2),
                            i % 3 ? "" : "+0.15:segmental",
                            random_metres (random, 0, width),
                            random_metres (random, 0, height));
}

static const char *
one_of (GRand *random, const char *const *words)
{
  return words[g_rand_int_range (random, 0,
                                 (int) g_strv_length ((char **) words))];
}

static char *
random_settings (GRand *random)
{
  static const char *const runs[] = { "horizontal", "vertical", NULL };
  static const char *const bonds[] = { "stacked", "offcut", NULL };
  static const char *const turns[] = { "no", "yes", NULL };
  static const char *const kerfs[] = { "0", "4", "37", NULL };

  return g_strdup_printf ("setting-out.run=%s setting-out.bond=%s "
                          "setting-out.turn=%s panel.kerf=%s ",
                          one_of (random, runs), one_of (random, bonds),
                          one_of (random, turns), one_of (random, kerfs));
}

/* A first answer is a plan too, and its bound holds for the better one. */
static void
check_first_and_settled (const char *walls, const char *settings,
                         const char *offcuts, guint *former)
{
  g_autofree char *all
      = g_strconcat (settings, "setting-out.offcuts=", offcuts, NULL);
  g_autoptr (CwProject) project = case_project (walls, all);
  g_autoptr (CwTakeoff) first = cw_takeoff_new (project, NULL, NULL);
  g_autoptr (CwTakeoff) settled
      = cw_takeoff_improve (first, CW_CUT_EFFORT_LIVE, NULL);

  check_panel_plans (first);
  check_panel_plans (settled);
  g_assert_cmpuint (panels_used (settled), <=, panels_used (first));
  g_assert_cmpuint (panels_needed (first), <=, panels_used (settled));
  g_assert_cmpuint (panels_used (settled), <=, *former);
  *former = panels_used (settled);
}

static void
test_random_projects (void)
{
  static const char *const ways[] = { "none", "course", "elevation",
                                      "project" };
  g_autoptr (GRand) random = g_rand_new_with_seed (20261125);
  const guint n = g_getenv ("CW_LONG") ? 2000 : 60;

  for (guint i = 0; i < n; i++)
    {
      g_autoptr (GString) walls = g_string_new (NULL);
      g_autofree char *settings = random_settings (random);
      guint former = G_MAXUINT;

      for (int j = g_rand_int_range (random, 1, 4); j > 0; j--)
        add_random_wall (random, walls);
      g_test_message ("%u: %s %s", i, walls->str, settings);
      for (guint j = 0; j < G_N_ELEMENTS (ways); j++)
        check_first_and_settled (walls->str, settings, ways[j], &former);
    }
}

static void
add_known (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (known); i++)
    {
      g_autofree char *path
          = g_strconcat ("/estimate/panel-plan/", known[i].name, NULL);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), test_known);
    }
}

static void
add_invented (const char *name, GTestDataFunc test)
{
  for (guint i = 0; i < G_N_ELEMENTS (invented); i++)
    {
      g_autofree char *path = g_strdup_printf (
          "/estimate/panel-plan/%s/wall-%u", name, i + 1);

      g_test_add_data_func (path, invented[i], test);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  add_known ();
  add_invented ("near-bound", test_near_bound);
  add_invented ("travelling", test_travelling_each);
#define ADD(path, test) g_test_add_func ("/estimate/panel-plan/" path, test)
  ADD ("turned", test_turned);
  ADD ("travelling", test_travelling);
  ADD ("same-project-same-plan", test_same_project_same_plan);
  ADD ("cuts-taken-over", test_cuts_taken_over);
  ADD ("improving-cancelled", test_improving_cancelled);
  ADD ("out-of-a-rake", test_out_of_a_rake);
  ADD ("many-walls", test_many_walls);
  ADD ("walls-alike", test_walls_alike);
  ADD ("random-projects", test_random_projects);
  return g_test_run ();
}
