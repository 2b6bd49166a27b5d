/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is bought by the length: beads, control joints, backer rod, and mesh
 * pieces that come ready-made.
 */
#include "cw-estimate-private.h"

/* A need of one bead on all walls, apart for each that differs. */
static void
add_bead_needs (const CwProjectEstimate *estimate, GArray *products)
{
  for (guint i = 0; i < estimate->takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = estimate->takeoff->walls->pdata[i];
      const CwBuildup *buildup = wall->wall->buildup;

      for (gsize j = 0; buildup && j < cw_list_length (buildup->beads); j++)
        {
          const CwBead *bead = cw_list_at (buildup->beads, j);

          cw_estimate_add_need (products, &bead->node,
                                wall->figures->beads[bead->kind]
                                    * cw_estimate_count (wall));
        }
    }
}

static void
order_bead (CwProjectEstimate *estimate, const CwProduct *product)
{
  static const char *const keys[CW_N_BEADS] = {
    [CW_BEAD_CORNER] = "bead.corner",
    [CW_BEAD_STARTER] = "bead.starter",
    [CW_BEAD_DRIP] = "bead.drip",
    [CW_BEAD_CONTROL_JOINT] = "joint.control",
  };
  const CwBead *bead = (const CwBead *) product->layer;
  CwQuantity *line = cw_quantities_line (estimate->quantities,
                                         keys[bead->kind], NULL);
  double length = cw_length_in_m (bead->length);
  double n = cw_estimate_n_packages (
      cw_estimate_with_waste (product->need, bead->waste), length);

  line->order_amount = n + (line->order_amount > 0 ? line->order_amount : 0);
  line->order_unit = N_ ("length");
  cw_quantity_step (line,
                    N_ ("{0} and {1} waste, in lengths of {2}: {3} lengths"),
                    { product->need, "m" },
                    { cw_decimal_to_double (bead->waste), "%" },
                    { cw_estimate_mm (bead->length), "mm" }, { n, "" });
  cw_estimate_buy (estimate, line, product->layer, "price", n);
}

void
cw_estimate_bead_packages (CwProjectEstimate *estimate)
{
  g_autoptr (GArray) products
      = g_array_new (FALSE, FALSE, sizeof (CwProduct));

  add_bead_needs (estimate, products);
  for (guint i = 0; i < products->len; i++)
    if (g_array_index (products, CwProduct, i).need > 0)
      order_bead (estimate, &g_array_index (products, CwProduct, i));
}

static double
coil (const CwNode *layer)
{
  return cw_length_in_m (((const CwBackerRod *) layer)->length);
}

static CwDecimal
rod_waste (const CwNode *layer)
{
  return ((const CwBackerRod *) layer)->waste;
}

void
cw_estimate_rod_packages (CwProjectEstimate *estimate)
{
  static const CwPackaging packaging = {
    .key = "backer.coils",
    .slot = CW_BUILDUP_BACKER_ROD,
    .figure = G_STRUCT_OFFSET (CwWallFigures, tasks[CW_TASK_SEALANT]),
    .order_unit = N_ ("coil"),
    .sentence = N_ ("{0} and {1} waste, {2} a coil: {3} coils"),
    .unit = "m",
    .size = coil,
    .waste = rod_waste,
  };

  cw_estimate_add_packages (estimate, &packaging);
}

void
cw_estimate_backer_rod (CwWallEstimate *estimate)
{
  const CwBackerRod *rod
      = (const CwBackerRod *) estimate->wall->buildup->backer_rod;

  if (rod)
    cw_quantity_step (
        cw_quantity_add (estimate->quantities, "backer.length",
                         estimate->figures->tasks[CW_TASK_SEALANT]),
        N_ ("as long as the sealant joints, {0} thick"),
        { cw_estimate_mm (rod->diameter), "mm" });
}

/* Ready-made pieces: how many a package, and where their price stands. */
typedef struct
{
  const char *key, *price, *order_unit, *sentence, *unit;
  gsize figure;
  double (*size) (const CwMesh *mesh);
} MeshPieces;

static double
corner_box (const CwMesh *mesh)
{
  return (double) mesh->corner_box;
}

static double
edge_roll (const CwMesh *mesh)
{
  return cw_length_in_m (mesh->edge_roll);
}

static void
order_mesh_pieces (CwProjectEstimate *estimate, const MeshPieces *pieces)
{
  g_autoptr (GArray) products = cw_estimate_products (
      estimate, CW_BUILDUP_MESH, pieces->figure);

  for (guint i = 0; i < products->len; i++)
    {
      const CwProduct *product = &g_array_index (products, CwProduct, i);
      double size = pieces->size ((const CwMesh *) product->layer);
      CwQuantity *line;
      double n;

      if (size <= 0 || product->need <= 0)
        continue;
      line = cw_quantities_line (estimate->quantities, pieces->key, NULL);
      n = cw_estimate_n_packages (product->need, size);
      line->order_amount
          = n + (line->order_amount > 0 ? line->order_amount : 0);
      line->order_unit = pieces->order_unit;
      cw_quantity_step (line, pieces->sentence,
                        { product->need, pieces->unit },
                        { size, pieces->unit }, { n, "" });
      cw_estimate_buy (estimate, line, product->layer, pieces->price, n);
    }
}

void
cw_estimate_mesh_piece_packages (CwProjectEstimate *estimate)
{
  static const MeshPieces corners = {
    .key = "mesh.corner",
    .price = "corner-price",
    .order_unit = N_ ("box"),
    .sentence = N_ ("{0} pieces, {1} a box: {2} boxes"),
    .unit = "",
    .figure = G_STRUCT_OFFSET (CwWallFigures, mesh_corners),
    .size = corner_box,
  };
  static const MeshPieces edges = {
    .key = "mesh.edge",
    .price = "edge-price",
    .order_unit = N_ ("roll"),
    .sentence = N_ ("{0}, {1} a roll: {2} rolls"),
    .unit = "m",
    .figure = G_STRUCT_OFFSET (CwWallFigures, mesh_edges),
    .size = edge_roll,
  };

  order_mesh_pieces (estimate, &corners);
  order_mesh_pieces (estimate, &edges);
}
