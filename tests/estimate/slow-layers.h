/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The layers of a buildup for the slow estimator, one wall or a project, with
 * arithmetic of their own: only the buildup's numbers are the program's.
 */
#pragma once

#include "slow-panels.h"

G_BEGIN_DECLS

typedef struct
{
  SlowEstimate wall;
  SlowPanels panels;
  double reveals, bands, stub_outs;       /* m², m², m */
  double coated, mortared;                /* m², m */
  double mortar, mortar_water;            /* L */
  double barrier;                         /* m of strips */
  double base_coat, coat_water, finish;   /* kg, L, kg */
  double wetting;                         /* L */
  double mesh, mesh_edges;                /* m² of field, m */
  double sealant;                         /* m */
  double corner, starter, drip, control;  /* m of beads */
} SlowLayers;

/* Of an elevation that random_elevation() made, measured net. */
SlowLayers slow_layers (const CwProject *project,
                        const CwElevation *elevation);

/* The first of the project's buildups. */
const CwBuildup *slow_buildup (const CwProject *project);

G_END_DECLS
