/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The walls' lines summed for the project.
 */
#include "cw-estimate-private.h"

typedef struct
{
  CwQuantity *quantity;
  double n_walls, n_elevations;
} Sum;

typedef struct
{
  GPtrArray *quantities;
  GArray **sums;              /* of each quantity type, an array of Sum by variant */
} Join;

/* A wall's share of panels wasted says nothing when added up, and offcuts
 * travel from wall to wall, which makes other cuts. */
static gboolean
adds_up (const CwQuantityType *type)
{
  return !g_str_equal (type->unit, "%")
         && !g_str_equal (type->key, "panel.stock")
         && !g_str_equal (type->key, "panel.least")
         && !g_str_has_prefix (type->key, "saw.")
         && type->step != CW_STEP_LABOUR
         && !g_str_has_suffix (type->key, ".mixes");
}

static Sum *
sum_for (Join *join, const CwQuantity *line)
{
  guint index = (guint) (line->type - cw_quantity_types);
  GArray *sums = join->sums[index];
  Sum sum = { NULL, 0, 0 };

  if (sums == NULL)
    sums = join->sums[index] = g_array_new (FALSE, FALSE, sizeof (Sum));
  for (guint i = 0; i < sums->len; i++)
    {
      Sum *former = &g_array_index (sums, Sum, i);

      if (g_strcmp0 (former->quantity->variant, line->variant) == 0)
        return former;
    }
  sum.quantity = cw_quantity_add_variant (join->quantities, line->type->key,
                                          line->variant, 0);
  g_array_append_val (sums, sum);
  return &g_array_index (sums, Sum, sums->len - 1);
}

static void
join_wall (Join *join, const CwWallTakeoff *wall)
{
  double count = cw_estimate_count (wall);

  for (guint i = 0; i < wall->quantities->len; i++)
    {
      const CwQuantity *line = wall->quantities->pdata[i];
      Sum *sum;

      if (!adds_up (line->type))
        continue;
      sum = sum_for (join, line);
      sum->quantity->amount += line->amount * count;
      sum->n_walls += count;
      sum->n_elevations++;
    }
}

static void
close_sums (GArray *sums)
{
  for (guint i = 0; i < sums->len; i++)
    {
      const Sum *sum = &g_array_index (sums, Sum, i);

      cw_quantity_step (sum->quantity,
                        N_ ("sum over {0} elevations that stand for {1} "
                            "walls"),
                        { sum->n_elevations, "" }, { sum->n_walls, "" });
    }
  g_array_unref (sums);
}

/* What a day needs does not add up: the wall that needs the most says it. */
static void
take_most (GPtrArray *quantities, const GPtrArray *walls, const char *key)
{
  CwQuantity *most = NULL;

  for (guint i = 0; i < walls->len; i++)
    {
      const CwWallTakeoff *wall = walls->pdata[i];

      for (guint j = 0; j < wall->quantities->len; j++)
        {
          const CwQuantity *line = wall->quantities->pdata[j];

          if (!g_str_equal (line->type->key, key)
              || (most && most->amount >= line->amount))
            continue;
          if (most == NULL)
            most = cw_quantity_add (quantities, key, 0);
          most->amount = line->amount;
          g_array_set_size (most->steps, 0);
          g_array_append_vals (most->steps, line->steps->data,
                               line->steps->len);
        }
    }
}

void
cw_estimate_join_walls (CwProjectEstimate *estimate)
{
  g_autofree GArray **sums = g_new0 (GArray *, cw_n_quantity_types);
  Join join = { estimate->quantities, sums };
  const GPtrArray *walls = estimate->takeoff->walls;

  for (guint i = 0; i < walls->len; i++)
    join_wall (&join, walls->pdata[i]);
  for (guint i = 0; i < cw_n_quantity_types; i++)
    if (sums[i])
      close_sums (sums[i]);
  take_most (estimate->quantities, walls, "mortar.mixes");
  take_most (estimate->quantities, walls, "basecoat.mixes");
}
