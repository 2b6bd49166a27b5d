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
check_cuts (const CwDisplayList *list, const CwCutPanel *panel)
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

/* The faces lie in their blanks, the blanks and the rests in the panel, and
 * none on another. */
static void
check_places (const CwPanelPlan *plan, const CwCutPanel *panel)
{
  const CwCutRules *rules = &plan->cut->rules;
  g_autoptr (GArray) boxes = cw_cut_rests (panel, rules);

  for (guint i = 0; i < panel->placements->len; i++)
    {
      const CwCutPlacement *it
          = &g_array_index (panel->placements, CwCutPlacement, i);
      g_autoptr (CwRegion) face = cw_cut_face (plan, it);
      const CwBox blank = { it->x, it->y, it->x + it->width,
                            it->y + it->height };
      const CwBox box = cw_region_box (face);
      const CwPiece *piece;

      g_assert_nonnull (cw_cut_piece (plan, it->blank, &piece));
      g_assert_cmpint (box.left, ==, blank.left);
      g_assert_cmpint (box.bottom, ==, blank.bottom);
      g_assert_cmpint (box.right, ==, blank.right);
      g_assert_cmpint (box.top, ==, blank.top);
      if (!(piece->cuts & CW_CUT_HOLE))
        g_assert_cmpfloat_with_epsilon (cw_region_area (face), piece->area,
                                        1e-9);
      g_array_append_val (boxes, blank);
    }
  for (guint i = 0; i < boxes->len; i++)
    {
      const CwBox *box = &g_array_index (boxes, CwBox, i);

      g_assert_cmpint (box->left, >=, 0);
      g_assert_cmpint (box->bottom, >=, 0);
      g_assert_cmpint (box->right, <=, rules->length);
      g_assert_cmpint (box->top, <=, rules->height);
      for (guint j = 0; j < i; j++)
        g_assert_false (
            cw_box_overlaps (box, &g_array_index (boxes, CwBox, j)));
    }
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
  const CwCutPanel *panel = plan->cut->panels->pdata[index];
  CwCutRoom room;
  g_autoptr (CwDisplayList) list
      = cw_cut_drawing (plan, index, TRUE, metric (), UNIT, &room);

  check_cuts (list, panel);
  check_places (plan, panel);
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

  g_assert_cmpstr (first, ==, "across at 1840 mm");
  g_assert_cmpstr (second, ==,
                   "along at 300 mm, from 640 mm to 1840 mm");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/draw/cuts/level", test_level);
  g_test_add_func ("/draw/cuts/upright", test_upright);
  g_test_add_func ("/draw/cuts/turned", test_turned);
  g_test_add_func ("/draw/cuts/foot-left", test_foot_left);
  g_test_add_func ("/draw/cuts/rests", test_rests);
  g_test_add_func ("/draw/cuts/golden", test_golden);
  g_test_add_func ("/draw/cuts/list", test_list);
  g_test_add_func ("/draw/cuts/words", test_words);
  return g_test_run ();
}
