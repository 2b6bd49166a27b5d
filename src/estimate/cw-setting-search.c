/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-setting-private.h"

#include <math.h>

/* Choices of the table beside the best of each start and bond. */
#define N_BEST 8

typedef struct
{
  const CwWall *const *walls;
  guint n_walls;
  gboolean counts;            /* each wall as often as it stands */
  guint n_troubles;           /* of the present setting out */
  guint n_done, n_all;
  CwSettingProgress progress;
  gpointer data;
  GCancellable *cancellable;
} Search;

/* Cents and millimetres: far finer would sort by rounding errors. */
static gint64
hundredths (double value)
{
  return llround (value * 100);
}

static gint64
thousandths (double value)
{
  return llround (value * 1000);
}

static int
compare_numbers (gint64 a, gint64 b)
{
  return (a > b) - (a < b);
}

static int
compare_settings (const CwSettingChoice *a, const CwSettingChoice *b)
{
  int order = compare_numbers (a->start, b->start);

  if (order == 0)
    order = compare_numbers (a->bond, b->bond);
  if (order == 0)
    order = compare_numbers (a->offset, b->offset);
  if (order == 0)
    order = compare_numbers (a->base, b->base);
  return order ? order : compare_numbers (a->stagger, b->stagger);
}

/* What costs the same is left as it is now. */
static int
compare_choices (gconstpointer one, gconstpointer other, gpointer data)
{
  const CwSettingChoice *a = one, *b = other;
  guint n_troubles = ((const Search *) data)->n_troubles;
  int order = compare_numbers (a->n_troubles > n_troubles,
                               b->n_troubles > n_troubles);

  if (order == 0)
    order = compare_numbers (hundredths (a->cost), hundredths (b->cost));
  if (order == 0)
    order = compare_numbers (a->n_panels, b->n_panels);
  if (order == 0)
    order = compare_numbers (thousandths (a->saw), thousandths (b->saw));
  if (order == 0)
    order = compare_numbers (a->n_troubles, b->n_troubles);
  if (order == 0)
    order = compare_numbers (b->is_present, a->is_present);
  return order ? order : compare_settings (a, b);
}

static gboolean
is_plain (const CwSettingChoice *choice)
{
  return choice->start == CW_START_LEFT && choice->bond == CW_BOND_STACKED
         && choice->offset == 0 && choice->base == 0;
}

gboolean
cw_setting_choice_same (const CwSettingChoice *a, const CwSettingChoice *b)
{
  g_return_val_if_fail (a != NULL && b != NULL, FALSE);

  return compare_settings (a, b) == 0;
}

static void
add_figures (CwSettingChoice *sum, const CwSettingChoice *of, guint count)
{
  sum->n_panels += of->n_panels * count;
  sum->n_least += of->n_least * count;
  sum->n_troubles += of->n_troubles * count;
  sum->saw += of->saw * count;
  sum->cost += of->cost * count;
}

/* On all walls. FALSE when cancelled. */
static gboolean
measure (const Search *search, CwSettingChoice *choice, CwCutEffort effort)
{
  CwSettingChoice sum = *choice;

  sum.n_panels = sum.n_least = sum.n_troubles = 0;
  sum.saw = sum.cost = 0;
  for (guint i = 0; i < search->n_walls; i++)
    {
      const CwWall *wall = search->walls[i];

      if (!cw_setting_choice_measure (choice, wall, effort,
                                      search->cancellable))
        return FALSE;
      add_figures (&sum, choice,
                   search->counts ? (guint) wall->elevation->count : 1);
    }
  *choice = sum;
  return TRUE;
}

/* How many were measured: not all when cancelled. */
static guint
measure_all (Search *search, GArray *choices, CwCutEffort effort)
{
  for (guint i = 0; i < choices->len; i++)
    {
      if (!measure (search, &g_array_index (choices, CwSettingChoice, i),
                    effort))
        return i;
      search->n_done++;
      if (search->progress)
        search->progress (search->n_done, search->n_all, search->data);
    }
  return choices->len;
}

static gboolean
same_figures (const CwSettingChoice *a, const CwSettingChoice *b)
{
  return a->start == b->start && a->bond == b->bond
         && a->n_panels == b->n_panels && a->n_troubles == b->n_troubles
         && hundredths (a->cost) == hundredths (b->cost)
         && thousandths (a->saw) == thousandths (b->saw);
}

/* One of the best, and no twin of the one before it. */
static gboolean
is_among_best (const GArray *best, const CwSettingChoice *choice)
{
  return best->len == 0
         || (best->len < N_BEST
             && !same_figures (&g_array_index (best, CwSettingChoice,
                                               best->len - 1),
                               choice));
}

/* Of the sorted @choices, those for the table. */
static GArray *
pick_best (const GArray *choices)
{
  GArray *best = g_array_new (FALSE, FALSE, sizeof (CwSettingChoice));
  gboolean is_there[CW_START_BOTH + 1][CW_BOND_OFFCUT + 1] = { { FALSE } };

  for (guint i = 0; i < choices->len; i++)
    {
      CwSettingChoice choice = g_array_index (choices, CwSettingChoice, i);
      gboolean *there = &is_there[choice.start][choice.bond];

      if (is_among_best (best, &choice) || !*there
          || choice.is_present || is_plain (&choice))
        g_array_append_val (best, choice);
      *there = TRUE;
    }
  return best;
}

static guint
n_to_plan (const CwSettingAllowed *allowed)
{
  return N_BEST + 2
         + (guint) __builtin_popcount (allowed->starts & CW_SETTING_ALL_STARTS)
               * (guint) __builtin_popcount (allowed->bonds
                                             & CW_SETTING_ALL_BONDS);
}

static void
sort_choices (Search *search, GArray *choices)
{
  for (guint i = 0; i < choices->len; i++)
    {
      const CwSettingChoice *choice
          = &g_array_index (choices, CwSettingChoice, i);

      if (choice->is_present)
        search->n_troubles = choice->n_troubles;
    }
  g_array_sort_with_data (choices, compare_choices, search);
}

static gboolean
has_choice (const GArray *choices, const CwSettingChoice *choice)
{
  for (guint i = 0; i < choices->len; i++)
    if (cw_setting_choice_same (
            &g_array_index (choices, CwSettingChoice, i), choice))
      return TRUE;
  return FALSE;
}

/* What any of the walls asks for, none twice. */
static GArray *
choices_of_all (const Search *search, const CwSettingAllowed *allowed)
{
  GArray *all = cw_setting_choices (search->walls[0], allowed);

  for (guint i = 1; i < search->n_walls; i++)
    {
      g_autoptr (GArray) more = cw_setting_choices (search->walls[i], allowed);

      for (guint j = 0; j < more->len; j++)
        if (!has_choice (all, &g_array_index (more, CwSettingChoice, j)))
          g_array_append_vals (all, &g_array_index (more, CwSettingChoice, j),
                               1);
    }
  return all;
}

static GArray *
search_choices (Search *search, const CwSettingAllowed *allowed)
{
  g_autoptr (GArray) choices = choices_of_all (search, allowed);
  GArray *best;

  search->n_all = choices->len + n_to_plan (allowed);
  g_array_set_size (
      choices, measure_all (search, choices, CW_CUT_EFFORT_FIRST));
  sort_choices (search, choices);
  best = pick_best (choices);
  search->n_all = search->n_done + best->len;
  measure_all (search, best, CW_CUT_EFFORT_LIVE);
  sort_choices (search, best);
  return best;
}

static gboolean
can_be_laid (const CwWall *wall)
{
  const CwPanel *panel
      = wall->buildup ? cw_list_at (wall->buildup->panels, 0) : NULL;

  return wall->outline && panel && panel->length > 0 && panel->height > 0
         && panel->joint >= 0;
}

static GArray *
search_walls (const CwWall *const *walls, guint n_walls,
              const CwSettingAllowed *allowed, Search search)
{
  g_autoptr (GPtrArray) laid = g_ptr_array_new ();

  for (guint i = 0; i < n_walls; i++)
    if (can_be_laid (walls[i]))
      g_ptr_array_add (laid, (gpointer) walls[i]);
  if (laid->len == 0)
    return g_array_new (FALSE, FALSE, sizeof (CwSettingChoice));
  search.walls = (const CwWall *const *) laid->pdata;
  search.n_walls = laid->len;
  return search_choices (&search, allowed);
}

GArray *
cw_setting_search (const CwWall *wall, const CwSettingAllowed *allowed,
                   CwSettingProgress progress, gpointer data,
                   GCancellable *cancellable)
{
  g_return_val_if_fail (wall != NULL && allowed != NULL, NULL);

  return search_walls (&wall, 1, allowed,
                       (Search) { .progress = progress,
                                  .data = data,
                                  .cancellable = cancellable });
}

GArray *
cw_setting_search_walls (const CwWall *const *walls, guint n_walls,
                         const CwSettingAllowed *allowed,
                         CwSettingProgress progress, gpointer data,
                         GCancellable *cancellable)
{
  g_return_val_if_fail (walls != NULL && allowed != NULL, NULL);

  return search_walls (walls, n_walls, allowed,
                       (Search) { .counts = TRUE,
                                  .progress = progress,
                                  .data = data,
                                  .cancellable = cancellable });
}
