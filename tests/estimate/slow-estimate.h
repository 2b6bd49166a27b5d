/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A second, slow estimator for the tests, which shares no code with the
 * estimate: everything is flattened to polygons of many points, and GEOS cuts
 * and measures them.
 */
#pragma once

#include <geos_c.h>

#include "cw-project.h"

G_BEGIN_DECLS

typedef struct
{
  double gross, openings, unclad, net;    /* m² */
  double through, half;                   /* m², measured */
  double head, jamb, sill;                /* m */
  double edges[CW_N_EDGES];               /* m */
  guint n_corners;                        /* of openings, that meet cladding */
  gboolean shared;                        /* sides of two openings lie on one another */
  gboolean doubtful;                      /* sides of two kinds lie on one another */
} SlowEstimate;

/* Of an elevation whose outline has straight sides and whose heads are no
 * three-centred ones, openings of at most @limit m² measured through. */
SlowEstimate slow_estimate (const CwElevation *elevation, double limit);

/* What is clad, and all that is drawn. (transfer full) */
GEOSGeometry *slow_net (const CwElevation *elevation);
GEOSGeometry *slow_outline (const CwElevation *elevation);

G_END_DECLS
