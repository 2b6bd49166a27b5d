/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is delivered: its mass, the pallets of panels and the ground under
 * them.
 */
#include "cw-estimate-private.h"

static void
add_mass (CwProjectEstimate *estimate)
{
  double mass = estimate->panel_mass + estimate->package_mass;

  cw_quantity_step (cw_quantity_add (estimate->quantities, "mass.total",
                                     mass),
                    N_ ("panels {0}, bags and pails {1}; fasteners, rolls, "
                        "cartridges and pallets are not weighed"),
                    { estimate->panel_mass, "kg" },
                    { estimate->package_mass, "kg" });
}

void
cw_estimate_delivery (CwProjectEstimate *estimate)
{
  if (estimate->panel_mass + estimate->package_mass <= 0)
    return;
  add_mass (estimate);
  cw_quantity_step (cw_quantity_add (estimate->quantities, "pallet.count",
                                     estimate->pallets),
                    N_ ("panels ordered by panels a pallet"));
  cw_quantity_step (cw_quantity_add (estimate->quantities, "staging.area",
                                     estimate->pallet_area),
                    N_ ("{0} pallets by the ground under each"),
                    { estimate->pallets, "" });
}
