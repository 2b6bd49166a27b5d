/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a move costs, and where the label that says so stands.
 */
#include "app-cases.h"
#include "cw-label-place.h"
#include "cw-marginal.h"
#include "estimate-cases.h"

/* Panels of 2400 × 600 with joints of 3 mm and a kerf of 4 mm. Of 9.609 m a
 * course is four whole panels; a wall 1 mm and more longer needs a piece more
 * a course, and 15 of 150 mm come out of one panel. */
static CwProject *
wall_of (const char *size)
{
  return case_project (size, "setting-out.rasp=0");
}

static gboolean
is_known (gpointer marginal)
{
  return cw_marginal_figures (marginal) && !cw_marginal_is_stale (marginal);
}

typedef struct
{
  CwDocument *document;
  CwMarginal *marginal;
  CwProject *base;
} Move;

static void
begin (Move *move, gconstpointer data)
{
  move->base = wall_of ("9.609x6.027");
  move->document = cw_document_new (move->base);
  move->marginal = cw_marginal_new (move->document);
}

static void
end (Move *move, gconstpointer data)
{
  g_object_unref (move->marginal);
  g_object_unref (move->document);
  cw_node_unref (move->base);
}

/* As a step of a drag. */
static void
drag_to (Move *move, const CwProject *project)
{
  cw_document_edit (move->document, project, "Move", "drag");
}

static void
counts_from_where_it_began (Move *move, gconstpointer data)
{
  g_autoptr (CwProject) longer = wall_of ("9.609000001x6.027");
  g_autoptr (CwProject) shorter = wall_of ("7.206x6.027");
  g_assert_null (cw_marginal_figures (move->marginal));
  drag_to (move, longer);
  g_assert_true (cw_marginal_is_stale (move->marginal));
  case_wait (is_known, move->marginal);
  g_assert_cmpint (cw_marginal_figures (move->marginal)->panels, ==, 1);
  g_assert_cmpfloat (cw_marginal_figures (move->marginal)->saw, >, 1);
  drag_to (move, shorter);
  g_assert_nonnull (cw_marginal_figures (move->marginal));
  case_wait (is_known, move->marginal);
  /* Ten courses of one panel less. */
  g_assert_cmpint (cw_marginal_figures (move->marginal)->panels, ==, -10);
  g_assert_cmpfloat_with_epsilon (
      cw_marginal_figures (move->marginal)->saw, 0, 1e-9);
}

/* Another kind of edit has no figures, nor has a move that is back. */
static void
ends_with_the_move (Move *move, gconstpointer data)
{
  g_autoptr (CwProject) longer = wall_of ("9.609000001x6.027");
  g_autoptr (CwProject) other = wall_of ("5x3");
  drag_to (move, longer);
  case_wait (is_known, move->marginal);
  drag_to (move, move->base);
  g_assert_null (cw_marginal_figures (move->marginal));
  drag_to (move, longer);
  case_wait (is_known, move->marginal);
  cw_document_seal (move->document);
  cw_document_edit (move->document, other, "Other", NULL);
  g_assert_null (cw_marginal_figures (move->marginal));
  g_assert_false (cw_marginal_is_stale (move->marginal));
}

/* The second move counts from where the first one ended. */
static void
begins_anew (Move *move, gconstpointer data)
{
  g_autoptr (CwProject) longer = wall_of ("9.609000001x6.027");
  g_autoptr (CwProject) higher = wall_of ("9.609000001x6.630");
  drag_to (move, longer);
  cw_document_seal (move->document);
  drag_to (move, higher);
  case_wait (is_known, move->marginal);
  /* A course more: four whole panels, its piece out of the same offcut. */
  g_assert_cmpint (cw_marginal_figures (move->marginal)->panels, ==, 4);
}

static const struct
{
  const char *name;
  float x, y;                   /* pointer */
  float left, top, width, height;   /* to keep free; no width: nothing */
  float at_x, at_y;
} places[] = {
  { "right-of-pointer", 100, 100, 0, 0, 0, 0, 118, 118 },
  { "right-of-opening", 100, 100, 80, 80, 60, 60, 158, 118 },
  { "below-at-the-right-edge", 700, 100, 640, 80, 150, 60, 718, 158 },
  { "left-where-it-is-full", 780, 100, 700, 80, 95, 60, 602, 118 },
  { "above-in-the-corner", 690, 560, 20, 500, 770, 95, 708, 462 },
  { "nowhere-free", 400, 300, 0, 0, 800, 600, 418, 318 },
};

static gboolean
overlaps (const graphene_rect_t *a, const graphene_rect_t *b)
{
  graphene_rect_t both;
  return graphene_rect_intersection (a, b, &both) && both.size.width > 0
         && both.size.height > 0;
}

/* A label of 80 × 20 on a board of 800 × 600. */
static void
label_keeps_clear (void)
{
  const graphene_size_t board = GRAPHENE_SIZE_INIT (800, 600);
  for (gsize i = 0; i < G_N_ELEMENTS (places); i++)
    {
      graphene_point_t pointer = { places[i].x, places[i].y };
      graphene_rect_t keep = GRAPHENE_RECT_INIT (
          places[i].left, places[i].top, places[i].width, places[i].height);
      graphene_point_t at = cw_label_place (
          &pointer, places[i].width > 0 ? &keep : NULL, 80, 20, &board);
      graphene_rect_t label = GRAPHENE_RECT_INIT (at.x, at.y, 80, 20);
      g_test_message ("%s: %g, %g", places[i].name, at.x, at.y);
      g_assert_cmpfloat_with_epsilon (at.x, places[i].at_x, 0.01);
      g_assert_cmpfloat_with_epsilon (at.y, places[i].at_y, 0.01);
      g_assert_true (i + 1 == G_N_ELEMENTS (places)
                     || !overlaps (&label, &keep));
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add ("/marginal/counts-from-where-it-began", Move, NULL, begin,
              counts_from_where_it_began, end);
  g_test_add ("/marginal/ends-with-the-move", Move, NULL, begin,
              ends_with_the_move, end);
  g_test_add ("/marginal/begins-anew", Move, NULL, begin, begins_anew, end);
  g_test_add_func ("/marginal/label-keeps-clear", label_keeps_clear);
  return g_test_run ();
}
