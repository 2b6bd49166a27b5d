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

static void
add_trucks (CwProjectEstimate *estimate)
{
  const CwTruck *truck = (const CwTruck *) estimate->takeoff->project->truck;
  double mass = estimate->panel_mass + estimate->package_mass;
  double payload = cw_decimal_to_double (truck->payload);
  double by_mass = cw_estimate_n_packages (mass, payload);
  double by_pallets = cw_estimate_n_packages (estimate->pallets,
                                              (double) truck->pallets);

  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "truck.count",
                       MAX (by_mass, by_pallets)),
      N_ ("{0} by {1} a truck: {2}; {3} pallets by {4} a truck: {5}; the more "
          "of both"),
      { mass, "kg" }, { payload, "kg" }, { by_mass, "" },
      { estimate->pallets, "" }, { (double) truck->pallets, "" },
      { by_pallets, "" });
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
  add_trucks (estimate);
  cw_quantity_step (cw_quantity_add (estimate->quantities, "staging.area",
                                     estimate->pallet_area),
                    N_ ("{0} pallets by the ground under each"),
                    { estimate->pallets, "" });
}
