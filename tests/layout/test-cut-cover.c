/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The cheapest choice of panels against choices worked out by hand and, for
 * small stores, against all choices there are.
 */
#include "cw-cut-search.h"

/* Blanks stand upright beside each other on panels one unit high. */
typedef struct
{
  CwLength length;
  guint64 cost;
  guint kind;
  guint n;
  guint blanks[6];
} Row;

static gboolean
offer_row (CwCutCover *cover, const CwCutSize *blanks, const Row *row)
{
  CwCutTree tree;
  cw_cut_tree_init (&tree, row->length, 1);
  for (guint i = 0; i < row->n; i++)
    {
      /* Each takes the beginning of what is free at the end. */
      g_assert_cmpint (tree.n_free, ==, 1);
      cw_cut_tree_place (&tree, tree.free[0], (gint32) row->blanks[i],
                         blanks[row->blanks[i]].width, 1, FALSE,
                         CW_CUT_NODE_ACROSS);
    }
  const gboolean is_kept
      = cw_cut_cover_add (cover, &tree, row->kind, row->cost);
  cw_cut_tree_clear (&tree);
  return is_kept;
}

static void
add_row (CwCutCover *cover, const CwCutSize *blanks, const Row *row,
         gboolean is_new)
{
  g_assert_cmpint (offer_row (cover, blanks, row), ==, is_new);
}

static guint64
cost_of (const GPtrArray *panels)
{
  guint64 cost = 0;
  for (guint i = 0; i < panels->len; i++)
    cost += ((const CwCutChosen *) g_ptr_array_index (panels, i))->cost;
  return cost;
}

/* Every blank once, in its size, and no panel without one. */
static void
assert_yields_all (const GPtrArray *panels, const CwCutSize *blanks, guint n)
{
  g_autofree guint *seen = g_new0 (guint, n);
  for (guint i = 0; i < panels->len; i++)
    {
      const CwCutChosen *chosen = g_ptr_array_index (panels, i);
      g_assert_cmpint (chosen->tree.n_blanks, >, 0);
      for (gint32 at = 0; at < chosen->tree.n_nodes; at++)
        {
          const CwCutNode *node = &chosen->tree.nodes[at];
          if (node->kind != CW_CUT_NODE_BLANK)
            continue;
          g_assert_cmpint (node->blank, >=, 0);
          g_assert_cmpint (node->blank, <, (gint32) n);
          g_assert_cmpint (node->width, ==, blanks[node->blank].width);
          seen[node->blank]++;
        }
    }
  for (guint i = 0; i < n; i++)
    g_assert_cmpuint (seen[i], ==, 1);
}

static const CwCutSize five[] = { { 5, 1 }, { 4, 1 }, { 3, 1 }, { 2, 1 },
                                  { 2, 1 } };

static void
test_fewest (void)
{
  /* 5 + 3 + 2 and 4 + 2 + 2 overlap in a 2, of which there are two. */
  const Row rows[] = { { 10, 1, 0, 2, { 0, 1 } },
                       { 10, 1, 0, 3, { 0, 2, 3 } },
                       { 10, 1, 0, 3, { 1, 3, 4 } },
                       { 10, 1, 0, 2, { 2, 3 } } };
  g_autoptr (CwCutCover) cover = cw_cut_cover_new (five, 5);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    add_row (cover, five, &rows[i], TRUE);
  g_autoptr (GPtrArray) panels = cw_cut_cover_choose (cover, 3, 100000, NULL);
  g_assert_nonnull (panels);
  g_assert_cmpuint (panels->len, ==, 2);
  assert_yields_all (panels, five, 5);
  /* Two are the fewest: one cannot be had. */
  g_assert_null (cw_cut_cover_choose (cover, 2, 100000, NULL));
}

static void
test_cheapest_lengths (void)
{
  /* Panels of 10 cost 100, of 6 cost 55: 5 + 4 and 3 + 2 + 2 on long ones
   * cost 200; 4 + 2 and 3 + 2 on short ones with 5 on a short one 165. */
  const Row rows[] = { { 10, 100, 10, 2, { 0, 1 } },
                       { 10, 100, 10, 3, { 2, 3, 4 } },
                       { 6, 55, 6, 1, { 0 } },
                       { 6, 55, 6, 2, { 1, 3 } },
                       { 6, 55, 6, 2, { 2, 3 } } };
  g_autoptr (CwCutCover) cover = cw_cut_cover_new (five, 5);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    add_row (cover, five, &rows[i], TRUE);
  g_autoptr (GPtrArray) panels
      = cw_cut_cover_choose (cover, 201, 100000, NULL);
  g_assert_nonnull (panels);
  g_assert_cmpuint (cost_of (panels), ==, 165);
  assert_yields_all (panels, five, 5);
  for (guint i = 0; i < panels->len; i++)
    {
      const CwCutChosen *chosen = g_ptr_array_index (panels, i);
      g_assert_cmpuint (chosen->kind, ==, 6);
      g_assert_cmpint (chosen->tree.nodes[0].width, ==, 6);
    }
}

static void
test_keeps_the_cheaper (void)
{
  const Row dear = { 10, 100, 10, 2, { 1, 3 } };
  const Row cheap = { 6, 55, 6, 2, { 4, 1 } };
  g_autoptr (CwCutCover) cover = cw_cut_cover_new (five, 5);
  add_row (cover, five, &dear, TRUE);
  add_row (cover, five, &dear, FALSE);
  /* The 2 that it holds is as good as the other. */
  add_row (cover, five, &cheap, TRUE);
  add_row (cover, five, &dear, FALSE);
  g_assert_cmpuint (cw_cut_cover_n_patterns (cover), ==, 1);
}

static void
test_one_pattern_for_all (void)
{
  CwCutSize blanks[7];
  for (guint i = 0; i < 7; i++)
    blanks[i] = (CwCutSize) { 4, 1 };
  const Row row = { 10, 1, 0, 2, { 5, 2 } };
  g_autoptr (CwCutCover) cover = cw_cut_cover_new (blanks, 7);
  add_row (cover, blanks, &row, TRUE);
  g_autoptr (GPtrArray) panels = cw_cut_cover_choose (cover, 5, 100000, NULL);
  /* Seven in twos: four panels, the last with a rest. */
  g_assert_nonnull (panels);
  g_assert_cmpuint (panels->len, ==, 4);
  assert_yields_all (panels, blanks, 7);
}

static void
test_missing_and_cancelled (void)
{
  const Row row = { 10, 1, 0, 2, { 0, 1 } };
  const Row rest = { 10, 1, 0, 3, { 2, 3, 4 } };
  g_autoptr (CwCutCover) cover = cw_cut_cover_new (five, 5);
  g_assert_null (cw_cut_cover_choose (cover, 9, 100000, NULL));
  add_row (cover, five, &row, TRUE);
  /* Nothing yields the others. */
  g_assert_null (cw_cut_cover_choose (cover, 9, 100000, NULL));
  add_row (cover, five, &rest, TRUE);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  g_cancellable_cancel (cancellable);
  g_assert_null (cw_cut_cover_choose (cover, 9, 100000, cancellable));
  g_autoptr (GPtrArray) panels = cw_cut_cover_choose (cover, 9, 100000, NULL);
  g_assert_nonnull (panels);
}

#define N_SMALL 6
#define MOST_ROWS 9

static void
fill_at_random (Row *rows, CwCutSize *blanks)
{
  for (guint i = 0; i < N_SMALL; i++)
    blanks[i] = (CwCutSize) { g_test_rand_int_range (1, 5), 1 };
  for (guint i = 0; i < MOST_ROWS; i++)
    {
      rows[i] = (Row) { .length = 5 * N_SMALL,
                        .cost = (guint64) g_test_rand_int_range (1, 9) };
      for (guint j = 0; j < N_SMALL; j++)
        if (g_test_rand_int_range (0, 3) == 0)
          rows[i].blanks[rows[i].n++] = j;
    }
}

/* The least cost at which rows from @row on yield what is left to do, by
 * taking each as often as it may help; @most when there is none below it. */
static guint64
least_cost (const Row *rows, guint row, const CwCutSize *blanks,
            const int *left, guint64 cost, guint64 most)
{
  int still[5], sum = 0;
  for (guint length = 0; length < 5; length++)
    sum += MAX (still[length] = left[length], 0);
  if (cost >= most || sum == 0)
    return MIN (cost, most);
  if (row == MOST_ROWS)
    return most;
  for (guint times = 0; times <= N_SMALL; times++)
    {
      most = least_cost (rows, row + 1, blanks, still,
                         cost + times * rows[row].cost, most);
      for (guint i = 0; i < rows[row].n; i++)
        still[blanks[rows[row].blanks[i]].width]--;
    }
  return most;
}

static void
test_against_all_choices (void)
{
  guint n_found = 0;
  for (guint round = 0; round < 100; round++)
    {
      Row rows[MOST_ROWS];
      CwCutSize blanks[N_SMALL];
      fill_at_random (rows, blanks);
      g_autoptr (CwCutCover) cover = cw_cut_cover_new (blanks, N_SMALL);
      for (guint i = 0; i < MOST_ROWS; i++)
        if (rows[i].n > 0)
          offer_row (cover, blanks, &rows[i]);
      int left[5] = { 0 };
      for (guint i = 0; i < N_SMALL; i++)
        left[blanks[i].width]++;
      const guint64 least = least_cost (rows, 0, blanks, left, 0, 1000);
      g_autoptr (GPtrArray) panels
          = cw_cut_cover_choose (cover, 1000, 1000000, NULL);
      g_assert_cmpint (panels != NULL, ==, least < 1000);
      if (!panels)
        continue;
      g_assert_cmpuint (cost_of (panels), ==, least);
      assert_yields_all (panels, blanks, N_SMALL);
      n_found++;
    }
  g_assert_cmpuint (n_found, >, 30);
}

/* What two searches found, one on panels of 10, one on panels of 6. */
static void
test_collects_from_searches (void)
{
  const CwCutSize blanks[] = { { 5, 1 }, { 5, 1 }, { 6, 1 }, { 3, 1 },
                               { 3, 1 } };
  g_autoptr (CwCutCover) cover = cw_cut_cover_new (blanks, 5);
  g_autoptr (CwCutSearch) on_long
      = cw_cut_search_new (blanks, 5, (CwCutSize) { 10, 1 }, FALSE, 1);
  g_autoptr (CwCutSearch) on_short
      = cw_cut_search_new (blanks, 5, (CwCutSize) { 6, 1 }, FALSE, 1);
  cw_cut_search_collect (on_long, cover, 10, 100, 1000);
  cw_cut_search_run (on_long, 1, 2000, NULL);
  cw_cut_search_collect (on_short, cover, 6, 61, 1000);
  cw_cut_search_run (on_short, 1, 2000, NULL);
  /* 5 + 5 on a long one, 6 and 3 + 3 on a short one each: 222. Three long
   * ones would be 300, five blanks on four short ones 244. */
  g_autoptr (GPtrArray) panels
      = cw_cut_cover_choose (cover, 244, 1000000, NULL);
  g_assert_nonnull (panels);
  g_assert_cmpuint (cost_of (panels), ==, 222);
  assert_yields_all (panels, blanks, 5);
}

static gpointer
choose_again (gpointer data)
{
  for (guint i = 0; i < 50; i++)
    {
      g_autoptr (GPtrArray) panels
          = cw_cut_cover_choose (data, 3, 100000, NULL);
      g_assert_nonnull (panels);
      g_assert_cmpuint (panels->len, ==, 2);
      assert_yields_all (panels, five, 5);
    }
  return NULL;
}

static void
test_in_threads (void)
{
  const Row rows[] = { { 10, 1, 0, 2, { 0, 1 } },
                       { 10, 1, 0, 3, { 2, 3, 4 } },
                       { 10, 1, 0, 2, { 2, 3 } } };
  g_autoptr (CwCutCover) cover = cw_cut_cover_new (five, 5);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    add_row (cover, five, &rows[i], TRUE);
  GThread *threads[4];
  for (guint i = 0; i < 4; i++)
    threads[i] = g_thread_new ("choose", choose_again, cover);
  for (guint i = 0; i < 4; i++)
    g_thread_join (threads[i]);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/layout/cut-cover/fewest", test_fewest);
  g_test_add_func ("/layout/cut-cover/cheapest-lengths",
                   test_cheapest_lengths);
  g_test_add_func ("/layout/cut-cover/keeps-the-cheaper",
                   test_keeps_the_cheaper);
  g_test_add_func ("/layout/cut-cover/one-pattern-for-all",
                   test_one_pattern_for_all);
  g_test_add_func ("/layout/cut-cover/missing-and-cancelled",
                   test_missing_and_cancelled);
  g_test_add_func ("/layout/cut-cover/against-all-choices",
                   test_against_all_choices);
  g_test_add_func ("/layout/cut-cover/collects-from-searches",
                   test_collects_from_searches);
  g_test_add_func ("/layout/cut-cover/in-threads", test_in_threads);
  return g_test_run ();
}
