/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pictures of sawn panels. The expected text form lies in tests/data/draw;
 * after a change that is meant, look at it and renew it with CW_RENEW=1.
 */
#include <math.h>
#include <string.h>

#include "cw-cut-drawing.h"
#include "cw-cut-rests.h"
#include "cw-cut-words.h"
#include "cw-display-items.h"
#include "draw-cases.h"

#define UNIT 8.0

static const CwTextStyle *
metric (void)
{
  static CwTextStyle style;

  style = cw_text_style_plain (CW_UNITS_METRIC);
  return &style;
}

static gboolean
has_item (const CwDisplayList *list, CwStyle style, const char *id)
{
  for (gsize i = 0; i < cw_display_list_length (list); i++)
    {
      const CwDisplayItem *item = cw_display_list_item (list, i);

      if (item->style == style
          && g_strcmp0 (cw_display_list_id (list, item), id) == 0)
        return TRUE;
    }
  return FALSE;
}

static gboolean
has_text (const CwDisplayList *list, CwStyle style, const char *text)
{
  for (gsize i = 0; i < cw_display_list_length (list); i++)
    {
      const CwDisplayItem *item = cw_display_list_item (list, i);

      if (item->kind == CW_SHAPE_OP_TEXT && item->style == style
          && g_str_equal (
              cw_display_list_string (
                  list, cw_display_list_text (list, item)->text),
              text))
        return TRUE;
    }
  return FALSE;
}

/* Every cut has its line, its number and its figure. */
static void
check_cuts (const CwDisplayList *list, const CwCutWhole *panel)
{
  for (guint i = 0; i < panel->cuts->len; i++)
    {
      const CwCut *cut = &g_array_index (panel->cuts, CwCut, i);
      g_autofree char *id = g_strdup_printf ("cut-%u", i + 1);
      g_autofree char *number = g_strdup_printf ("%u", i + 1);
      g_autofree char *figure
          = cw_length_format_dimension (cut->at, metric ());

      g_assert_true (has_item (list, CW_STYLE_SAW, id));
      g_assert_true (has_item (list, CW_STYLE_SAW_MARK, id));
      g_assert_true (has_text (list, CW_STYLE_SAW_NUMBER, number));
      g_assert_true (has_text (list, CW_STYLE_DIMENSION_TEXT, figure));
    }
}

static gboolean
are_apart (const CwRegion *a, const CwRegion *b)
{
  const CwBox one = cw_region_box (a), other = cw_region_box (b);
  g_autoptr (CwRegion) both = NULL;

  if (!cw_box_overlaps (&one, &other))
    return TRUE;
  both = cw_region_intersect (a, b);
  return cw_region_area (both) < 1e-12;
}

static void
check_inside (const CwBox *box, const CwCutRules *rules)
{
  g_assert_cmpint (box->left, >=, 0);
  g_assert_cmpint (box->bottom, >=, 0);
  g_assert_cmpint (box->right, <=, rules->length);
  g_assert_cmpint (box->top, <=, rules->height);
}

/* (transfer full): as large as the blank and the piece. */
static CwRegion *
checked_face (const CwPanelPlan *plan, const CwCutPlacement *it)
{
  CwRegion *face = cw_cut_face (plan, it);
  const CwBox box = cw_region_box (face);
  const CwPiece *piece;

  g_assert_nonnull (cw_cut_piece (plan, it->blank, &piece));
  g_assert_cmpint (box.left, ==, it->x);
  g_assert_cmpint (box.bottom, ==, it->y);
  g_assert_cmpint (box.right, ==, it->x + it->width);
  g_assert_cmpint (box.top, ==, it->y + it->height);
  if (!(piece->cuts & CW_CUT_HOLE))
    g_assert_cmpfloat_with_epsilon (cw_region_area (face), piece->area,
                                    1e-9);
  check_inside (&box, &plan->cut->rules);
  return face;
}

/* The pieces and the rests lie in the panel, and none on another. */
static void
check_places (const CwPanelPlan *plan, guint index, const CwCutWhole *panel)
{
  g_autoptr (GArray) rests
      = cw_cut_rests (plan->cut->panels->pdata[index], &plan->cut->rules);
  g_autoptr (GPtrArray) faces
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_region_unref);

  for (guint i = 0; i < panel->placements->len; i++)
    g_ptr_array_add (faces,
                     checked_face (plan, &g_array_index (panel->placements,
                                                         CwCutPlacement, i)));
  for (guint i = 0; i < rests->len; i++)
    {
      const CwBox *rest = &g_array_index (rests, CwBox, i);

      check_inside (rest, &plan->cut->rules);
      g_ptr_array_add (faces, cw_region_new_box (rest, 0));
    }
  for (guint i = 0; i < faces->len; i++)
    for (guint j = 0; j < i; j++)
      g_assert_true (are_apart (faces->pdata[i], faces->pdata[j]));
}

static void
check_room (const CwDisplayList *list, const CwCutRoom *room)
{
  double left, bottom, right, top;

  g_assert_true (
      cw_display_list_bounds (list, &left, &bottom, &right, &top));
  g_assert_cmpfloat (left, >=, room->left - 1e-6);
  g_assert_cmpfloat (bottom, >=, room->bottom - 1e-6);
  g_assert_cmpfloat (right, <=, room->right + 1e-6);
  g_assert_cmpfloat (top, <=, room->top + 1e-6);
}

static void
check_panel (const CwPanelPlan *plan, guint index)
{
  g_autoptr (CwCutWhole) panel = cw_cut_whole_new (plan, index);
  CwCutRoom room;
  g_autoptr (CwDisplayList) list
      = cw_cut_drawing (plan, index, TRUE, metric (), UNIT, &room);

  check_cuts (list, panel);
  check_places (plan, index, panel);
  check_room (list, &room);
  for (guint i = 0; i < panel->placements->len; i++)
    {
      const CwPiece *piece;
      const CwLayout *layout = cw_cut_piece (
          plan,
          g_array_index (panel->placements, CwCutPlacement, i).blank,
          &piece);
      g_autofree char *name = cw_layout_piece_name (layout, piece);

      g_assert_true (has_item (list, CW_STYLE_CUT_PIECE, name));
    }
}

/* (transfer full) */
static CwTakeoff *
house (gboolean upright, gboolean turn)
{
  g_autoptr (CwTakeoff) plain = draw_case_house ();
  const CwBuildup *buildup = cw_list_at (plain->project->buildups, 0);
  g_autoptr (CwNode) setting_out
      = cw_node_copy ((const CwNode *) buildup->setting_out);
  g_autoptr (CwNode) project = NULL;

  ((CwSettingOut *) setting_out)->run
      = upright ? CW_RUN_VERTICAL : CW_RUN_HORIZONTAL;
  ((CwSettingOut *) setting_out)->turn = turn;
  project = cw_node_replace (&plain->project->node,
                             (const CwNode *) buildup->setting_out,
                             setting_out);
  return cw_takeoff_new ((CwProject *) project, NULL, NULL);
}

static void
check_house (gboolean upright, gboolean turn)
{
  g_autoptr (CwTakeoff) takeoff = house (upright, turn);
  const CwPanelPlan *plan = draw_case_wall (takeoff)->plans->pdata[0];

  g_assert_cmpuint (plan->cut->panels->len, >, 3);
  for (guint i = 0; i < plan->cut->panels->len; i++)
    check_panel (plan, i);
}

/* A wall with those corners and a small one beside it, looked at long enough
 * to use waste. (transfer full) */
static CwTakeoff *
wall_and_small (const CwCorner *corners, guint n, CwLength width,
                CwLength height, const char *settings)
{
  const CwCorner small[] = { { { 0, 0 }, 0, CW_EDGE_BASE },
                             { { width, 0 }, 0, CW_EDGE_JOINT },
                             { { width, height }, 0, CW_EDGE_EAVE },
                             { { 0, height }, 0, CW_EDGE_JOINT } };
  g_autoptr (GPtrArray) none
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_unref);
  g_autoptr (GPtrArray) walls
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_unref);
  g_autoptr (CwProject) project = NULL;
  g_autoptr (CwTakeoff) plain = NULL;

  g_ptr_array_add (walls, case_elevation_of ("large", corners, n, none));
  g_ptr_array_add (walls, case_elevation_of ("small", small, 4, none));
  project = case_project_of (walls, settings);
  plain = cw_takeoff_new (project, NULL, NULL);
  return cw_takeoff_improve (plain, CW_CUT_EFFORT_LIVE, NULL);
}

static const CwPanelPlan *
shared_plan (const CwTakeoff *takeoff)
{
  const CwPanelStock *stock = takeoff->stocks->pdata[0];

  return g_array_index (stock->shares, CwPanelShare, 0).plan;
}

/* A gable as wide and high as a panel: the small wall comes out of what its
 * rakes cut off, and is in the picture of the same panel. */
static void
test_out_of_waste (void)
{
  const CwCorner gable[] = { { { 0, 0 }, 0, CW_EDGE_BASE },
                             { { CW_MM (2400), 0 }, 0, CW_EDGE_RAKE },
                             { { CW_MM (1200), CW_MM (600) }, 0,
                               CW_EDGE_RAKE } };
  g_autoptr (CwTakeoff) takeoff
      = wall_and_small (gable, 3, CW_MM (590), CW_MM (290), "");
  g_autoptr (CwCutList) list = cw_cut_list_new (takeoff, NULL);
  const CwCutListPanel *panel;
  g_autofree char *step = NULL;

  g_assert_cmpuint (list->panels->len, ==, 1);
  panel = list->panels->pdata[0];
  g_assert_cmpuint (panel->whole->rests->len, ==, 1);
  g_assert_cmpuint (panel->whole->placements->len, ==, 2);
  g_assert_cmpuint (panel->pieces->len, ==, 2);
  g_assert_cmpuint (panel->whole->cuts->len, >, 0);
  check_panel (panel->plan, panel->panel);
  step = cw_cut_list_step_text (panel, 0, metric ());
  g_assert_true (g_str_has_prefix (step, "in the waste of A, "));
}

/* A rest with nothing in it, so that its place is looked at alone. */
static void
use_rest (CwPanelRest *rest)
{
  if (rest->cut)
    return;
  rest->cut = g_new0 (CwCutPanel, 1);
  rest->cut->placements = g_array_new (FALSE, FALSE, sizeof (CwCutPlacement));
  rest->cut->cuts = g_array_new (FALSE, FALSE, sizeof (CwCut));
}

/* Lays the blank of @piece the other way. Returns the panel it is on. */
static guint
turn_blank (const CwPanelPlan *plan, guint piece, gboolean turned)
{
  for (guint i = 0; i < plan->cut->panels->len; i++)
    {
      const CwCutPanel *panel = plan->cut->panels->pdata[i];
      for (guint j = 0; j < panel->placements->len; j++)
        {
          CwCutPlacement *it
              = &g_array_index (panel->placements, CwCutPlacement, j);
          const CwLength width = it->width;

          if (it->blank != piece)
            continue;
          if (!it->turned != !turned)
            {
              it->width = it->height;
              it->height = width;
              it->turned = turned;
            }
          return i;
        }
    }
  g_assert_not_reached ();
}

/* The corner cut off by the rake, seen on the wall and on the panel, lies
 * within the blank and clear of the piece. */
static void
check_rest_of (const CwPanelPlan *plan, CwPanelRest *rest, gboolean turned)
{
  const guint index = turn_blank (plan, rest->host, turned);
  g_autoptr (CwCutWhole) whole = NULL;

  use_rest (rest);
  whole = cw_cut_whole_new (plan, index);
  g_assert_cmpuint (whole->rests->len, ==, 1);
  for (guint i = 0; i < whole->placements->len; i++)
    {
      const CwCutPlacement *it
          = &g_array_index (whole->placements, CwCutPlacement, i);
      const CwBox *box = &g_array_index (whole->rests, CwBox, 0);
      g_autoptr (CwRegion) face = NULL;
      g_autoptr (CwRegion) freed = cw_region_new_box (box, 0);

      if (it->blank != rest->host)
        continue;
      face = cw_cut_face (plan, it);
      g_assert_cmpint (box->left, >=, it->x);
      g_assert_cmpint (box->bottom, >=, it->y);
      g_assert_cmpint (box->right, <=, it->x + it->width);
      g_assert_cmpint (box->top, <=, it->y + it->height);
      g_assert_true (are_apart (face, freed));
    }
}

static void
check_rests_turn (const char *settings)
{
  const CwCorner corners[] = { { { 0, 0 }, 0, CW_EDGE_BASE },
                               { { CW_MM (560), 0 }, 0, CW_EDGE_JOINT },
                               { { CW_MM (560), CW_MM (100) }, 0,
                                 CW_EDGE_RAKE },
                               { { CW_MM (200), CW_MM (500) }, 0,
                                 CW_EDGE_EAVE },
                               { { 0, CW_MM (500) }, 0, CW_EDGE_JOINT } };
  g_autoptr (CwTakeoff) takeoff
      = wall_and_small (corners, G_N_ELEMENTS (corners), CW_MM (150),
                        CW_MM (100), settings);
  const CwPanelPlan *plan = shared_plan (takeoff);

  g_assert_cmpuint (plan->rests->len, ==, 1);
  check_rest_of (plan, &g_array_index (plan->rests, CwPanelRest, 0), FALSE);
  check_rest_of (plan, &g_array_index (plan->rests, CwPanelRest, 0), TRUE);
}

static void
test_rests_turn (void)
{
  check_rests_turn ("");
  check_rests_turn ("setting-out.run=vertical");
}

static void
test_level (void)
{
  check_house (FALSE, FALSE);
}

static void
test_upright (void)
{
  check_house (TRUE, FALSE);
}

static void
test_turned (void)
{
  check_house (FALSE, TRUE);
  check_house (TRUE, TRUE);
}

/* A panel that stands on the wall lies with its foot at the left: what is
 * lower on the wall is further to the left on the panel, and what is at the
 * right is lower. */
static void
test_foot_left (void)
{
  g_autoptr (CwTakeoff) takeoff = house (TRUE, FALSE);
  const CwPanelPlan *plan = draw_case_wall (takeoff)->plans->pdata[0];
  guint n_rakes = 0;

  for (guint i = 0; i < plan->cut->panels->len; i++)
    {
      const CwCutPanel *panel = plan->cut->panels->pdata[i];
      for (guint j = 0; j < panel->placements->len; j++)
        {
          const CwCutPlacement *it
              = &g_array_index (panel->placements, CwCutPlacement, j);
          g_autoptr (CwRegion) face = cw_cut_face (plan, it);
          const CwPiece *piece;
          const CwPoint top_right = { it->x + it->width - 1,
                                     it->y + it->height - 1 };

          cw_cut_piece (plan, it->blank, &piece);
          if (!(piece->cuts & CW_CUT_RAKE))
            continue;
          n_rakes++;
          g_assert_cmpint (
              cw_region_contains (face, top_right), ==,
              cw_region_contains (piece->shape,
                                  cw_point (piece->box.left + 1,
                                            piece->box.top - 1)));
        }
    }
  g_assert_cmpuint (n_rakes, >, 0);
}

/* Cuts of 4 mm: two pieces of 1000 leave 2400 - 2 x (1000 + 4) = 392. */
static void
test_rests (void)
{
  const CwCutRules rules
      = { CW_MM (2400), CW_MM (600), CW_MM (4), FALSE };
  const CwCutBlank blanks[] = { { CW_MM (1000), CW_MM (600), 0 },
                                { CW_MM (1000), CW_MM (600), 0 } };
  g_autoptr (CwCutPlan) plan = cw_cut_plan_new (
      blanks, 2, &rules, CW_CUT_EFFORT_LIVE, NULL, NULL, NULL);
  g_autoptr (GArray) rests = NULL;

  g_assert_cmpuint (plan->panels->len, ==, 1);
  rests = cw_cut_rests (plan->panels->pdata[0], &rules);
  g_assert_cmpuint (rests->len, ==, 1);
  g_assert_cmpint (g_array_index (rests, CwBox, 0).left, ==, CW_MM (2008));
  g_assert_cmpint (g_array_index (rests, CwBox, 0).right, ==, CW_MM (2400));
}

/* The first panel that is sawn by at least so many cuts. */
static guint
panel_with (const CwPanelPlan *plan, guint n_cuts)
{
  for (guint i = 0; i < plan->cut->panels->len; i++)
    {
      const CwCutPanel *panel = plan->cut->panels->pdata[i];
      if (panel->cuts->len >= n_cuts)
        return i;
    }
  g_assert_not_reached ();
}

static void
append_drawing (GString *drawn, const CwPanelPlan *plan, guint panel)
{
  g_autoptr (CwDisplayList) list
      = cw_cut_drawing (plan, panel, TRUE, metric (), UNIT, NULL);
  g_autofree char *text = cw_display_list_to_text (list);

  g_string_append_printf (drawn, "panel\n%s", text);
}

static void
test_golden (void)
{
  g_autoptr (CwTakeoff) takeoff = draw_case_house ();
  const CwPanelPlan *plan = draw_case_wall (takeoff)->plans->pdata[0];
  g_autoptr (GString) drawn = g_string_new (NULL);
  g_autofree char *expected = NULL;
  g_autofree char *path = g_build_filename (
      g_getenv ("G_TEST_SRCDIR"), "data", "draw", "cuts-metric.txt", NULL);

  append_drawing (drawn, plan, panel_with (plan, 0));
  append_drawing (drawn, plan, panel_with (plan, 2));
  if (g_getenv ("CW_RENEW"))
    g_assert_true (g_file_set_contents (path, drawn->str, -1, NULL));
  g_assert_true (g_file_get_contents (path, &expected, NULL, NULL));
  g_assert_cmpstr (drawn->str, ==, expected);
}

/* The list has every sawn piece once for each wall that has it. */
static void
test_list (void)
{
  g_autoptr (CwProject) project = case_project (
      "6x2.7 *3 window:1.2x1.4@0.9,0.9; 5x2.7 door:0.9x2.1@2,0", "");
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  g_autoptr (CwCutList) list = cw_cut_list_new (takeoff, NULL);
  const CwPanelStock *stock = takeoff->stocks->pdata[0];
  guint n_pieces = 0, n_panels = 0, n_first = 0;

  for (guint i = 0; i < list->panels->len; i++)
    {
      const CwCutListPanel *panel = list->panels->pdata[i];

      n_panels += panel->n;
      n_first += cw_cut_list_panel_is_for (panel, 0);
      for (guint j = 0; j < panel->pieces->len; j++)
        n_pieces += g_array_index (panel->pieces, CwCutListPiece, j).n;
    }
  g_assert_cmpuint (n_pieces, ==, stock->n_sawn);
  g_assert_cmpuint (n_panels, ==, stock->n_panels - stock->n_whole);
  g_assert_cmpuint (list->n_panels, ==, n_panels);
  g_assert_cmpuint (n_first, >, 0);
  g_assert_cmpuint (n_first, <, list->panels->len);
}

static void
test_words (void)
{
  const CwCutRules rules
      = { CW_MM (2400), CW_MM (600), CW_MM (4), FALSE };
  const CwCut across = { TRUE, CW_MM (1840), 0, CW_MM (600) };
  const CwCut along = { FALSE, CW_MM (300), CW_MM (640), CW_MM (1840) };
  g_autofree char *first = cw_cut_step_text (&across, &rules, metric ());
  g_autofree char *second = cw_cut_step_text (&along, &rules, metric ());

  g_assert_cmpstr (first, ==, "across at 1840\302\240mm");
  g_assert_cmpstr (second, ==,
                   "along at 300\302\240mm, from 640\302\240mm to 1840\302\240mm");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/draw/cuts/level", test_level);
  g_test_add_func ("/draw/cuts/upright", test_upright);
  g_test_add_func ("/draw/cuts/turned", test_turned);
  g_test_add_func ("/draw/cuts/foot-left", test_foot_left);
  g_test_add_func ("/draw/cuts/out-of-waste", test_out_of_waste);
  g_test_add_func ("/draw/cuts/waste-turns", test_rests_turn);
  g_test_add_func ("/draw/cuts/rests", test_rests);
  g_test_add_func ("/draw/cuts/golden", test_golden);
  g_test_add_func ("/draw/cuts/list", test_list);
  g_test_add_func ("/draw/cuts/words", test_words);
  return g_test_run ();
}
