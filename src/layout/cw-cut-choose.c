/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-choose.h"

#include <glpk.h>
#include <math.h>

#include "cw-linear.h"

typedef struct
{
  const CwCutCovering *covering;
  guint64 below, effort;
  GCancellable *cancellable;
  glp_prob *problem;
  guint64 of_a_step;         /* blanks on all patterns */
  guint64 n_looks;           /* of the branching at what to do next */
} Choosing;

static const CwCutPattern *
pattern_at (const Choosing *choosing, int column)
{
  return g_ptr_array_index (choosing->covering->patterns, column - 1);
}

/* Row 1: the cost. Row 2 + s: the blanks of size s. */
static void
add_rows (const Choosing *choosing)
{
  const CwCutCovering *covering = choosing->covering;
  glp_add_rows (choosing->problem, (int) covering->n_sizes + 1);
  /* Costs are whole: half a unit keeps clear of rounding. */
  glp_set_row_bnds (choosing->problem, 1, GLP_UP, 0,
                    (double) choosing->below - 0.5);
  for (guint size = 0; size < covering->n_sizes; size++)
    glp_set_row_bnds (choosing->problem, (int) size + 2, GLP_LO,
                      covering->needed[size], 0);
}

static void
add_column (const Choosing *choosing, int column)
{
  const CwCutPattern *pattern = pattern_at (choosing, column);
  int *rows = g_new (int, pattern->n_sizes + 2);
  double *values = g_new (double, pattern->n_sizes + 2);
  int n = 1;
  rows[1] = 1;
  values[1] = (double) pattern->cost;
  for (guint i = 0; i < pattern->n_sizes; i++)
    if (i > 0 && pattern->sizes[i] == pattern->sizes[i - 1])
      values[n]++;
    else
      {
        rows[++n] = (int) pattern->sizes[i] + 2;
        values[n] = 1;
      }
  glp_set_mat_col (choosing->problem, column, n, rows, values);
  glp_set_obj_coef (choosing->problem, column, (double) pattern->cost);
  glp_set_col_kind (choosing->problem, column, GLP_IV);
  glp_set_col_bnds (choosing->problem, column, GLP_LO, 0, 0);
  g_free (rows);
  g_free (values);
}

static void
state_problem (Choosing *choosing)
{
  const int n = (int) choosing->covering->patterns->len;
  choosing->problem = glp_create_prob ();
  glp_set_obj_dir (choosing->problem, GLP_MIN);
  add_rows (choosing);
  glp_add_cols (choosing->problem, n);
  for (int column = 1; column <= n; column++)
    add_column (choosing, column);
}

/* A step goes over the whole program; so may a look of the branching, which
 * can close a branch without a step. */
static gboolean
is_over (const Choosing *choosing, int n_steps)
{
  return ((guint64) n_steps + choosing->n_looks) * choosing->of_a_step
             >= choosing->effort
         || g_cancellable_is_cancelled (choosing->cancellable);
}

/* Simplex in short runs, so that a cancel is heard. */
#define STEPS_AT_ONCE 200

static gboolean
relax (Choosing *choosing)
{
  glp_smcp how;
  glp_init_smcp (&how);
  how.msg_lev = GLP_MSG_OFF;
  how.it_lim = STEPS_AT_ONCE;
  glp_adv_basis (choosing->problem, 0);
  int result;
  do
    result = glp_simplex (choosing->problem, &how);
  while (result == GLP_EITLIM
         && !is_over (choosing, glp_get_it_cnt (choosing->problem)));
  return result == 0 && glp_get_status (choosing->problem) == GLP_OPT;
}

static void
watch_branching (glp_tree *tree, void *data)
{
  Choosing *choosing = data;
  choosing->n_looks++;
  if (is_over (choosing, glp_get_it_cnt (glp_ios_get_prob (tree))))
    glp_ios_terminate (tree);
}

static gboolean
branch (Choosing *choosing)
{
  glp_iocp how;
  glp_init_iocp (&how);
  how.msg_lev = GLP_MSG_OFF;
  how.br_tech = GLP_BR_MFV;
  how.bt_tech = GLP_BT_BLB;
  how.cb_func = watch_branching;
  how.cb_info = choosing;
  glp_intopt (choosing->problem, &how);
  const int status = glp_mip_status (choosing->problem);
  return status == GLP_OPT || status == GLP_FEAS;
}

/* What the solver says is worked out again in whole numbers. */
static gboolean
is_choice (const Choosing *choosing, const guint *times)
{
  const CwCutCovering *covering = choosing->covering;
  g_autofree guint *yields = g_new0 (guint, covering->n_sizes);
  guint64 cost = 0;
  for (guint i = 0; i < covering->patterns->len; i++)
    {
      const CwCutPattern *pattern = pattern_at (choosing, (int) i + 1);
      cost += times[i] * pattern->cost;
      for (guint j = 0; j < pattern->n_sizes; j++)
        yields[pattern->sizes[j]] += times[i];
    }
  for (guint size = 0; size < covering->n_sizes; size++)
    if (yields[size] < covering->needed[size])
      return FALSE;
  return cost < choosing->below;
}

static guint *
read_choice (const Choosing *choosing)
{
  const guint n = choosing->covering->patterns->len;
  guint *times = g_new (guint, n);
  for (guint i = 0; i < n; i++)
    times[i] = (guint) lround (
        glp_mip_col_val (choosing->problem, (int) i + 1));
  if (!is_choice (choosing, times))
    g_clear_pointer (&times, g_free);
  return times;
}

static guint64
count_blanks (const CwCutCovering *covering)
{
  guint64 n = 0;
  for (guint i = 0; i < covering->patterns->len; i++)
    n += ((const CwCutPattern *) g_ptr_array_index (covering->patterns, i))
             ->n_sizes;
  return n;
}

guint *
cw_cut_choose (const CwCutCovering *covering, guint64 below, guint64 effort,
               GCancellable *cancellable)
{
  Choosing choosing = { .covering = covering, .below = below,
                        .effort = effort, .cancellable = cancellable,
                        .of_a_step = count_blanks (covering) };
  guint *times = NULL;

  cw_linear_begin ();
  state_problem (&choosing);
  if (relax (&choosing) && branch (&choosing))
    times = read_choice (&choosing);
  glp_delete_prob (choosing.problem);
  cw_linear_end ();
  return times;
}
