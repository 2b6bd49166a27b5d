/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What must hold for any wall: two of it are twice as much but for what is
 * rounded up; its mirror image has the mirrored layout and the same figures;
 * in two parts it has the same net; and the units on the screen are nothing
 * to it.
 */
#include <math.h>

#include "estimate-cases.h"
#include "random-elevation.h"

#define EXACT 1e-9

/* Each kind of bond and of openings' edges. */
static const char *const settings[] = {
  "setting-out.bond=stacked",
  "setting-out.bond=stagger setting-out.stagger=1200",
  "setting-out.bond=offcut setting-out.least-stagger=300",
  "setting-out.at-openings=break setting-out.offset=350",
  "setting-out.joints-on-studs=yes setting-out.bond=stagger "
  "setting-out.stagger=600",
  "setting-out.run=vertical setting-out.offset=100",
};

static guint
n_walls (void)
{
  return g_getenv ("CW_LONG") ? 400 : 4 * G_N_ELEMENTS (settings);
}

#define PRICES                                                                \
  " panel.price=46.5 joint-mortar.price=18.4 labour.wage=38.55 "              \
  "finish.price=83.2 bid.overhead=10 bid.profit=8"

/* (transfer full): of one wall, or of two. */
static CwTakeoff *
takeoff_of (CwNode *one, CwNode *other, const char *rules)
{
  g_autoptr (GPtrArray) elevations = g_ptr_array_new ();
  g_autofree char *all = g_strconcat (rules, PRICES, NULL);
  g_autoptr (CwProject) project = NULL;

  g_ptr_array_add (elevations, one);
  if (other)
    g_ptr_array_add (elevations, other);
  project = case_project_of (elevations, all);
  return cw_takeoff_new (project, NULL, NULL);
}

static const CwQuantity *
same_line (const GPtrArray *lines, const CwQuantity *line)
{
  for (guint i = 0; i < lines->len; i++)
    {
      const CwQuantity *known = lines->pdata[i];

      if (known->type == line->type
          && g_strcmp0 (known->variant, line->variant) == 0)
        return known;
    }
  g_error ("no %s/%s", line->type->key, line->variant ? line->variant : "");
}

/* How the cuts of a plan come out depends on which pieces share a panel, and
 * with it what is bought and what is sawn; all else is of the wall alone. */
static gboolean
is_of_the_plan (const CwQuantity *line)
{
  static const char *const keys[]
      = { "panel.stock",   "panel.order", "panel.waste", "saw.length",
          "mass.total",    "pallet.count", "truck.count", "staging.area",
          "labour.hours",  "labour.days" };

  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    if (g_str_equal (line->type->key, keys[i]))
      return line->variant == NULL || g_str_equal (line->variant, "sawing");
  return line->type->step == CW_STEP_COST;
}

static void
assert_same (const CwQuantity *a, const CwQuantity *b, double times)
{
  if (fabs (a->amount * times - b->amount)
      > EXACT * MAX (1, fabs (b->amount)))
    g_error ("%s/%s is %.12g and %.12g", a->type->key,
             a->variant ? a->variant : "", a->amount, b->amount);
}

/* Rounded up once: twice as much needs twice as many, or one less. */
static gboolean
is_rounded_up (const CwQuantity *line)
{
  static const char *const keys[]
      = { "mortar.bags", "fastener.boxes",     "basecoat.bags", "mesh.rolls",
          "finish.pails", "sealant.cartridges", "backer.coils",
          "barrier.rolls" };

  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    if (g_str_equal (line->type->key, keys[i]))
      return TRUE;
  return FALSE;
}

static gboolean
is_of_a_day (const CwQuantity *line)
{
  return g_str_has_suffix (line->type->key, ".mixes");
}

static void
compare_doubled (const CwQuantity *once, const CwQuantity *twice)
{
  if (is_of_a_day (once))
    assert_same (once, twice, 1);
  else if (is_rounded_up (once))
    {
      /* A roll of barrier that ends on the way is lapped: two walls of just a
       * roll each, laid on from one to the other, can begin a third. */
      const double laps = g_str_equal (once->type->key, "barrier.rolls");

      g_assert_cmpfloat (twice->amount, <=, 2 * once->amount + laps + EXACT);
      g_assert_cmpfloat (twice->amount, >=, 2 * once->amount - 1 - EXACT);
    }
  else if (g_str_equal (once->type->key, "panel.stock"))
    /* Offcuts of one help the other. */
    g_assert_cmpfloat (twice->amount, <=, 2 * once->amount + EXACT);
  else if (g_str_equal (once->type->key, "panel.least"))
    /* A bound for both is no weaker than that for one. */
    g_assert_cmpfloat (twice->amount, >=, once->amount);
  else if (!is_of_the_plan (once))
    assert_same (once, twice, 2);
}

/* A wall that stands for two, and two walls, are twice one wall. */
static void
test_twice (void)
{
  g_autoptr (GRand) random = g_rand_new_with_seed (1);
  guint n = 0;

  for (guint i = 0; i < n_walls (); i++)
    {
      const char *rules = settings[i % G_N_ELEMENTS (settings)];
      g_autoptr (CwNode) wall = random_elevation (random, "e1", TRUE);
      g_autoptr (CwNode) other = cw_node_copy (wall);
      g_autoptr (CwNode) both = cw_node_copy (wall);
      g_autoptr (CwTakeoff) once = takeoff_of (wall, NULL, rules);
      g_autoptr (CwTakeoff) two = NULL;
      g_autoptr (CwTakeoff) counted = NULL;

      cw_node_put (both, "count", 2);
      cw_node_put_text (other, "id", "e2");
      two = takeoff_of (wall, other, rules);
      counted = takeoff_of (both, NULL, rules);
      g_test_message ("wall %u", i);
      for (guint k = 0; k < once->quantities->len; k++)
        {
          const CwQuantity *line = once->quantities->pdata[k];

          compare_doubled (line, same_line (counted->quantities, line));
          compare_doubled (line, same_line (two->quantities, line));
          n++;
        }
    }
  g_assert_cmpuint (n, >, 60 * n_walls ());
}

static const CwList *
corners_of (const CwNode *elevation)
{
  return ((const CwOutline *) ((const CwElevation *) elevation)->outline)
      ->corners;
}

static CwLength
width_of (const CwNode *elevation)
{
  return ((const CwCornerNode *) cw_list_at (corners_of (elevation), 1))->x;
}

/* Turned over, and given the other way round: the side that began in a
 * corner now ends there. */
static CwList *
mirrored_corners (const CwList *corners, CwLength width)
{
  const gsize n = cw_list_length (corners);
  g_autofree CwCorner *mirrored = g_new0 (CwCorner, n);

  for (gsize i = 0; i < n; i++)
    {
      const CwCornerNode *at = cw_list_at (corners, n - 1 - i);
      const CwCornerNode *side = cw_list_at (corners, (2 * n - 2 - i) % n);

      mirrored[i].at = cw_point (width - at->x, at->y);
      mirrored[i].tag = (guint) side->edge;
    }
  return cw_corners_to_list (mirrored, n);
}

static CwNode *
mirrored_item (const CwNode *item, CwLength width)
{
  CwNode *mirrored = cw_node_copy (item);

  if (item->type == &cw_unclad_type)
    {
      g_autoptr (CwList) corners = mirrored_corners (
          ((const CwUnclad *) item)->corners, width);

      cw_node_set_list (mirrored, CW_UNCLAD_CORNERS, corners);
    }
  else if (item->type == &cw_stub_out_type)
    cw_node_put (mirrored, "x", width - ((const CwStubOut *) item)->x);
  else if (item->type == &cw_band_type)
    cw_node_put (mirrored, "x",
                 width - ((const CwBand *) item)->x
                     - ((const CwBand *) item)->width);
  else
    cw_node_put (mirrored, "x",
                 width - ((const CwOpening *) item)->x
                     - ((const CwOpening *) item)->width);
  return mirrored;
}

static CwNode *
mirrored_elevation (const CwNode *elevation)
{
  const CwList *items = ((const CwElevation *) elevation)->items;
  const CwLength width = width_of (elevation);
  g_autoptr (GPtrArray) mirrored
      = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autoptr (CwList) corners
      = mirrored_corners (corners_of (elevation), width);
  g_autoptr (CwList) list = NULL;
  g_autoptr (CwNode) outline = cw_node_new (&cw_outline_type);
  CwNode *result = cw_node_copy (elevation);

  for (gsize i = 0; i < cw_list_length (items); i++)
    g_ptr_array_add (mirrored, mirrored_item (cw_list_at (items, i), width));
  list = cw_list_new ((CwNode *const *) mirrored->pdata, mirrored->len);
  cw_node_set_list (outline, CW_OUTLINE_CORNERS, corners);
  cw_node_set_child (result, CW_ELEVATION_OUTLINE, outline);
  cw_node_set_list (result, CW_ELEVATION_ITEMS, list);
  return result;
}

/* Where a rake or a curve is cut the place is rounded to whole nm. */
static gboolean
is_near (CwLength a, CwLength b)
{
  return ABS (a - b) <= 2;
}

static gboolean
has_piece (const CwLayout *layout, const CwPiece *piece, CwLength width)
{
  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *known = &g_array_index (layout->pieces, CwPiece, i);

      if (known->course == piece->course && known->kind == piece->kind
          && is_near (known->box.left, width - piece->box.right)
          && is_near (known->box.right, width - piece->box.left)
          && is_near (known->box.bottom, piece->box.bottom)
          && is_near (known->box.top, piece->box.top))
        return TRUE;
    }
  return FALSE;
}

static void
compare_layouts (const CwTakeoff *here, const CwTakeoff *there,
                 CwLength width)
{
  const CwLayout *one = ((CwWallTakeoff *) here->walls->pdata[0])->layout;
  const CwLayout *other = ((CwWallTakeoff *) there->walls->pdata[0])->layout;

  g_assert_cmpuint (one->pieces->len, ==, other->pieces->len);
  g_assert_cmpuint (one->joints->len, ==, other->joints->len);
  g_assert_cmpuint (one->troubles->len, ==, other->troubles->len);
  for (guint i = 0; i < one->pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (one->pieces, CwPiece, i);

      if (!has_piece (other, piece, width))
        g_error ("piece %u-%u has no mirror image", piece->course,
                 piece->number);
    }
}

/* Begun in the other corner, with studs counted from there. */
static void
test_mirrored (void)
{
  g_autoptr (GRand) random = g_rand_new_with_seed (2);
  guint n = 0;

  for (guint i = 0; i < n_walls (); i++)
    {
      const char *rules = settings[i % G_N_ELEMENTS (settings)];
      g_autoptr (CwNode) wall = random_elevation (random, "e1", TRUE);
      g_autoptr (CwNode) image = mirrored_elevation (wall);
      const CwLength width = width_of (wall);
      g_autofree char *from_right = g_strdup_printf (
          "%s setting-out.start=right studs.first=%.6f", rules,
          (double) (width % CW_MM (600)) / CW_NM_PER_MM);
      g_autoptr (CwTakeoff) here = takeoff_of (wall, NULL, rules);
      g_autoptr (CwTakeoff) there = takeoff_of (image, NULL, from_right);

      g_test_message ("wall %u, %s", i, rules);
      compare_layouts (here, there, width);
      for (guint k = 0; k < here->quantities->len; k++)
        {
          const CwQuantity *line = here->quantities->pdata[k];

          if (is_of_the_plan (line))
            continue;
          assert_same (line, same_line (there->quantities, line), 1);
          n++;
        }
    }
  g_assert_cmpuint (n, >, 50 * n_walls ());
}

/* Of the wall left and right of its ridge, with a joint between. */
static CwNode *
half_of (const CwNode *elevation, gboolean is_left)
{
  const CwList *all = corners_of (elevation);
  const CwCornerNode *foot = cw_list_at (all, 1), *right = cw_list_at (all, 2);
  const CwCornerNode *ridge = cw_list_at (all, 3), *left = cw_list_at (all, 4);
  const CwCorner left_corners[]
      = { { { 0, 0 }, 0, CW_EDGE_BASE },
          { { ridge->x, 0 }, 0, CW_EDGE_JOINT },
          { { ridge->x, ridge->y }, 0, (guint) ridge->edge },
          { { 0, left->y }, 0, (guint) left->edge } };
  const CwCorner right_corners[]
      = { { { ridge->x, 0 }, 0, CW_EDGE_BASE },
          { { foot->x, 0 }, 0, (guint) foot->edge },
          { { right->x, right->y }, 0, (guint) right->edge },
          { { ridge->x, ridge->y }, 0, CW_EDGE_JOINT } };
  g_autoptr (CwList) corners
      = cw_corners_to_list (is_left ? left_corners : right_corners, 4);
  g_autoptr (CwNode) outline = cw_node_new (&cw_outline_type);
  CwNode *half = cw_node_copy (elevation);

  cw_node_set_list (outline, CW_OUTLINE_CORNERS, corners);
  cw_node_set_child (half, CW_ELEVATION_OUTLINE, outline);
  cw_node_put_text (half, "id", is_left ? "e1" : "e2");
  return half;
}

/* What a joint through the wall leaves as it was. Openings are cut in two by
 * it where it meets them, so that their number, the strips of barrier (by
 * the height of each part) and the panels are others. */
static const char *const kept[] = {
  "wall.gross",     "opening.area", "unclad.area",  "wall.net",
  "wall.measured",  "opening.head", "opening.jamb", "opening.sill",
  "reveal.area",    "edge.base",    "edge.eave",    "edge.rake",
  "edge.abutment",  "bead.corner",  "bead.starter", "bead.drip",
  "edge.outside-corner",
};

/* A jamb in the very line of the joint has no cladding beside it any more. */
static gboolean
has_jamb_at (const CwNode *elevation, CwLength x)
{
  const CwList *items = ((const CwElevation *) elevation)->items;

  for (gsize i = 0; i < cw_list_length (items); i++)
    {
      const CwNode *item = cw_list_at (items, i);
      const CwOpening *opening = (const CwOpening *) item;

      if (cw_node_is_opening (item)
          && (opening->x == x || opening->x + opening->width == x))
        return TRUE;
    }
  return FALSE;
}

static void
test_split (void)
{
  static const char *const rules[]
      = { "measure.rule=net", "measure.rule=half" };
  g_autoptr (GRand) random = g_rand_new_with_seed (3);
  guint n = 0;

  for (guint i = 0; i < n_walls (); i++)
    {
      g_autoptr (CwNode) wall = random_elevation (random, "e1", FALSE);
      g_autoptr (CwNode) left = half_of (wall, TRUE);
      g_autoptr (CwNode) right = half_of (wall, FALSE);
      g_autoptr (CwTakeoff) one = takeoff_of (wall, NULL, rules[i % 2]);
      g_autoptr (CwTakeoff) two = takeoff_of (left, right, rules[i % 2]);
      const CwCornerNode *ridge = cw_list_at (corners_of (wall), 3);

      if (has_jamb_at (wall, ridge->x))
        continue;
      n++;
      g_test_message ("wall %u", i);
      for (guint k = 0; k < G_N_ELEMENTS (kept); k++)
        assert_same (cw_takeoff_quantity (one, NULL, kept[k]),
                     cw_takeoff_quantity (two, NULL, kept[k]), 1);
      case_assert_near (case_amount (two, NULL, "edge.joint"),
                        2 * cw_length_in_m (ridge->y), EXACT);
    }
  g_assert_cmpuint (n, >, n_walls () / 2);
}

/* To the last bit, and the papers' lines as well. */
static void
test_units (void)
{
  g_autoptr (GRand) random = g_rand_new_with_seed (4);
  const guint n = MIN (n_walls (), 40);

  for (guint i = 0; i < n; i++)
    {
      const char *rules = settings[i % G_N_ELEMENTS (settings)];
      g_autoptr (CwNode) wall = random_elevation (random, "e1", TRUE);
      g_autoptr (CwTakeoff) metric = takeoff_of (wall, NULL, rules);
      CwNode *changed = cw_node_copy (&metric->project->node);
      g_autoptr (CwProject) project = NULL;
      g_autoptr (CwTakeoff) us = NULL;

      cw_node_put (changed, "units", CW_UNITS_US);
      cw_node_freeze (changed);
      project = (CwProject *) changed;
      us = cw_takeoff_new (project, NULL, NULL);
      g_assert_cmpuint (us->quantities->len, ==, metric->quantities->len);
      for (guint k = 0; k < us->quantities->len; k++)
        {
          const CwQuantity *a = us->quantities->pdata[k];
          const CwQuantity *b = metric->quantities->pdata[k];

          g_assert_cmpmem (&a->amount, sizeof a->amount, &b->amount,
                           sizeof b->amount);
          g_assert_cmpint (a->money, ==, b->money);
        }
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/estimate/invariants/twice", test_twice);
  g_test_add_func ("/estimate/invariants/mirrored", test_mirrored);
  g_test_add_func ("/estimate/invariants/split", test_split);
  g_test_add_func ("/estimate/invariants/units", test_units);
  return g_test_run ();
}
