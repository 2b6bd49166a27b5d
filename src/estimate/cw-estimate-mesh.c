/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Mesh: strips over the field, diagonal pieces at the corners of openings,
 * strips along edges.
 */
#include "cw-estimate-private.h"

static double
add_field (CwWallEstimate *estimate, const CwMesh *mesh)
{
  const CwWallFigures *figures = estimate->figures;
  double area
      = figures->measured - figures->measured_reveals + figures->bands;
  double factor = (double) mesh->roll_width
                  / (double) (mesh->roll_width - mesh->lap);

  cw_quantity_step (cw_quantity_add (estimate->quantities, "mesh.field",
                                     area * factor),
                    N_ ("measured area and bands {0}, strips of {1} lapped "
                        "{2}: {3} times as much"),
                    { area, "m²" },
                    { cw_estimate_mm (mesh->roll_width), "mm" },
                    { cw_estimate_mm (mesh->lap), "mm" }, { factor, "" });
  return area * factor;
}

static double
add_corners (CwWallEstimate *estimate, const CwMesh *mesh)
{
  const GArray *sides = estimate->figures->sides;
  double area = cw_length_in_m (mesh->corner_width)
                * cw_length_in_m (mesh->corner_height);
  guint n = 0;

  for (guint i = 0; i < sides->len; i++)
    n += g_array_index (sides, CwOpeningSides, i).n_corners;
  cw_quantity_step (cw_quantity_add (estimate->quantities, "mesh.corner", n),
                    N_ ("corners of {0} openings that meet cladding, {1} by "
                        "{2} each: {3}"),
                    { sides->len, "" },
                    { cw_estimate_mm (mesh->corner_width), "mm" },
                    { cw_estimate_mm (mesh->corner_height), "mm" },
                    { n * area, "m²" });
  estimate->figures->mesh_corners = n;
  return mesh->corner_box > 0 ? 0 : n * area;
}

static double
add_edges (CwWallEstimate *estimate, const CwMesh *mesh)
{
  CwWallFigures *figures = estimate->figures;
  double openings = figures->head + figures->jamb + figures->sill;
  double length = openings + figures->stub_outs;
  double area = length * cw_length_in_m (mesh->edge);

  cw_quantity_step (cw_quantity_add (estimate->quantities, "mesh.edge",
                                     length),
                    N_ ("round openings {0} and stub-outs {1}, {2} wide: "
                        "{3}"),
                    { openings, "m" }, { figures->stub_outs, "m" },
                    { cw_estimate_mm (mesh->edge), "mm" }, { area, "m²" });
  figures->mesh_edges = length;
  return mesh->edge_roll > 0 ? 0 : area;
}

void
cw_estimate_mesh (CwWallEstimate *estimate)
{
  const CwMesh *mesh = (const CwMesh *) estimate->wall->buildup->mesh;

  if (mesh == NULL || mesh->lap >= mesh->roll_width)
    return;
  estimate->figures->mesh = add_field (estimate, mesh)
                            + add_corners (estimate, mesh)
                            + add_edges (estimate, mesh);
}

static double
roll_area (const CwNode *layer)
{
  const CwMesh *mesh = (const CwMesh *) layer;

  return cw_length_in_m (mesh->roll_width)
         * cw_length_in_m (mesh->roll_length);
}

void
cw_estimate_mesh_packages (CwProjectEstimate *estimate)
{
  static const CwPackaging packaging = {
    .key = "mesh.rolls",
    .slot = CW_BUILDUP_MESH,
    .figure = G_STRUCT_OFFSET (CwWallFigures, mesh),
    .order_unit = N_ ("roll"),
    .sentence = N_ ("field, and pieces that are cut from it, {0}, {2} a roll: "
                    "{3} rolls"),
    .unit = "m²",
    .size = roll_area,
  };

  cw_estimate_add_packages (estimate, &packaging);
}
