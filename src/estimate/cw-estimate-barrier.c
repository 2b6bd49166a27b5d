/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The weather-resistive barrier: strips from the base up, each lapped over
 * the one below.
 *
 *    ┌────────────────────┐  top of the wall
 *   ┌┴────────────────────┴┐
 *   │ strip 2              │  wrap at an outside corner
 *   ├──────────────────────┤┐
 *   │······················││ lap
 *   │ strip 1              ├┘
 *   └──────────────────────┘  base
 */
#include "cw-estimate-private.h"

/* A lap that leaves less than this of a strip would lay strips for ever. */
#define LEAST_STEP CW_MM (1)

typedef struct
{
  CwLength wrap;
  CwLength bottom, top;       /* of the present strip */
  GArray *boxes;              /* CwBox: (nullable) where each lies */
  double length;              /* m of strips */
  guint n_wraps;
} Strips;

/* Outer sides run anticlockwise: the left ones down, the right ones up. */
static void
note_corners (const CwLoop *loop, gboolean *left, gboolean *right)
{
  for (gsize i = 0; i < loop->n_sides; i++)
    {
      CwLength rise = cw_loop_end (loop, i).y - loop->sides[i].start.y;

      if (loop->sides[i].tag != CW_EDGE_OUTSIDE_CORNER)
        continue;
      *left = *left || rise < 0;
      *right = *right || rise > 0;
    }
}

/* A strip along one connected @part of a band of the wall. */
static void
lay_strip (Strips *strips, const CwRegion *part)
{
  CwBox box = cw_region_box (part);
  gboolean left = FALSE, right = FALSE;
  guint n_wraps;

  for (gsize i = 0; i < cw_region_n_loops (part); i++)
    {
      CwLoop loop = cw_region_loop (part, i);

      note_corners (&loop, &left, &right);
    }
  n_wraps = left + right;
  if (strips->boxes)
    {
      CwBox lies = { box.left - left * strips->wrap, strips->bottom,
                     box.right + right * strips->wrap, strips->top };

      g_array_append_val (strips->boxes, lies);
    }
  strips->n_wraps += n_wraps;
  strips->length += cw_length_in_m (cw_box_width (&box)
                                    + n_wraps * strips->wrap);
}

static void
lay_band (Strips *strips, const CwRegion *rest, CwLength top)
{
  CwRegion *band = NULL;
  g_autoptr (GPtrArray) parts = NULL;

  cw_region_split (rest, CW_AXIS_Y, top, CW_N_EDGES, &band, NULL);
  parts = cw_region_parts (band);
  for (guint i = 0; i < parts->len; i++)
    lay_strip (strips, parts->pdata[i]);
  cw_region_unref (band);
}

/* ⌈(height − lap) ÷ (width − lap)⌉ in whole nanometres, at least one. */
static guint
n_strips (CwLength height, const CwBarrier *barrier)
{
  CwLength step = barrier->roll_width - barrier->lap;

  if (height <= barrier->roll_width)
    return 1;
  return (guint) ((height - barrier->lap + step - 1) / step);
}

static Strips
lay_strips (const CwRegion *outline, const CwBarrier *barrier, guint n,
            GArray *boxes)
{
  Strips strips = { .wrap = barrier->wrap, .boxes = boxes };
  CwLength bottom = cw_region_box (outline).bottom;
  CwRegion *rest = cw_region_ref (outline);

  for (guint i = 0; i < n; i++)
    {
      CwRegion *above = NULL;

      strips.bottom = bottom;
      strips.top = bottom + barrier->roll_width;
      lay_band (&strips, rest, strips.top);
      bottom += barrier->roll_width - barrier->lap;
      cw_region_split (rest, CW_AXIS_Y, bottom, CW_N_EDGES, NULL, &above);
      cw_region_unref (rest);
      rest = above;
    }
  cw_region_unref (rest);
  return strips;
}

static void
add_strips (CwWallEstimate *estimate, const CwBarrier *barrier)
{
  CwBox box = cw_region_box (estimate->wall->outline);
  guint n = n_strips (cw_box_height (&box), barrier);
  Strips strips = lay_strips (estimate->wall->outline, barrier, n, NULL);
  double area = strips.length * cw_length_in_m (barrier->roll_width);
  CwQuantity *quantity
      = cw_quantity_add (estimate->quantities, "barrier.area", area);

  estimate->figures->barrier_strips = strips.length;
  cw_quantity_step (quantity,
                    N_ ("height {0} in strips of {1} lapped {2}: {3} strips"),
                    { cw_estimate_mm (cw_box_height (&box)), "mm" },
                    { cw_estimate_mm (barrier->roll_width), "mm" },
                    { cw_estimate_mm (barrier->lap), "mm" }, { n, "" });
  cw_quantity_step (quantity,
                    N_ ("as long as the wall is wide in each, with {0} wraps "
                        "of {1} at outside corners: {2}"),
                    { strips.n_wraps, "" },
                    { cw_estimate_mm (barrier->wrap), "mm" },
                    { strips.length, "m" });
}

/* What is to be laid, or NULL. */
static const CwBarrier *
barrier_to_lay (const CwWall *wall)
{
  const CwBarrier *barrier = (const CwBarrier *) wall->buildup->barrier;

  if (barrier == NULL || wall->elevation->barrier != CW_BARRIER_TO_INSTALL
      || barrier->roll_width - barrier->lap < LEAST_STEP)
    return NULL;
  return barrier;
}

GArray *
cw_estimate_barrier_boxes (const CwWall *wall)
{
  const CwBarrier *barrier = barrier_to_lay (wall);
  GArray *boxes;
  CwBox box;

  if (barrier == NULL)
    return NULL;
  boxes = g_array_new (FALSE, FALSE, sizeof (CwBox));
  box = cw_region_box (wall->outline);
  lay_strips (wall->outline, barrier,
              n_strips (cw_box_height (&box), barrier), boxes);
  return boxes;
}

void
cw_estimate_barrier (CwWallEstimate *estimate)
{
  const CwBarrier *barrier = barrier_to_lay (estimate->wall);

  if (barrier)
    add_strips (estimate, barrier);
}

/* N rolls have N − 1 ends within the strips: T + (N − 1) e ≤ N R. A roll no
 * longer than an end lap would never get on. */
static double
n_rolls (double strips, const CwBarrier *barrier)
{
  double roll = cw_length_in_m (barrier->roll_length);
  double end_lap = cw_length_in_m (barrier->end_lap);

  if (strips <= roll || end_lap >= roll)
    return cw_estimate_n_packages (strips, roll);
  return cw_estimate_n_packages (strips - end_lap, roll - end_lap);
}

static void
order_rolls (CwProjectEstimate *estimate, CwQuantity *quantity,
             const CwProduct *product)
{
  const CwBarrier *barrier = (const CwBarrier *) product->layer;
  double n = n_rolls (product->need, barrier);

  quantity->amount += n;
  cw_quantity_step (quantity,
                    N_ ("{0} of strips, rolls of {1}, end laps of {2} where "
                        "one ends: {3} rolls"),
                    { product->need, "m" },
                    { cw_estimate_mm (barrier->roll_length), "mm" },
                    { cw_estimate_mm (barrier->end_lap), "mm" }, { n, "" });
  cw_estimate_buy (estimate, quantity, product->layer, "price", n);
}

void
cw_estimate_barrier_packages (CwProjectEstimate *estimate)
{
  g_autoptr (GArray) products
      = cw_estimate_products (estimate, CW_BUILDUP_BARRIER,
                              G_STRUCT_OFFSET (CwWallFigures, barrier_strips));
  CwQuantity *quantity = NULL;

  for (guint i = 0; i < products->len; i++)
    {
      const CwProduct *product = &g_array_index (products, CwProduct, i);

      if (product->need <= 0)
        continue;
      if (quantity == NULL)
        quantity = cw_quantity_add (estimate->quantities, "barrier.rolls", 0);
      quantity->order_unit = N_ ("roll");
      order_rolls (estimate, quantity, product);
    }
  if (quantity == NULL)
    return;
  quantity->order_amount = quantity->amount;
}
