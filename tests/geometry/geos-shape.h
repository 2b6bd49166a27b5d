/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Regions as GEOS sees them, with their arcs flattened: the reference that
 * shares no code with ours.
 */
#pragma once

#include <geos_c.h>

#include "cw-region.h"

G_BEGIN_DECLS

typedef GEOSGeometry GeosShape;

GEOSContextHandle_t geos_shape_context (void);
void geos_shape_free (GeosShape *shape);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (GeosShape, geos_shape_free)

/* What is inside of an odd number of @region's loops, arcs within @deviation
 * nm of themselves. */
GeosShape *geos_shape_new (const CwRegion *region, double deviation);

GeosShape *geos_shape_box (const CwBox *box);

GeosShape *geos_shape_union (const GeosShape *a, const GeosShape *b);
GeosShape *geos_shape_intersect (const GeosShape *a, const GeosShape *b);
GeosShape *geos_shape_subtract (const GeosShape *a, const GeosShape *b);

/* m² */
double geos_shape_area (const GeosShape *shape);

/* Of its whole rim, m. */
double geos_shape_length (const GeosShape *shape);

/* Connected parts of more than @least m². */
guint geos_shape_n_parts (const GeosShape *shape, double least);

/* Whether necks and gaps of up to @neck nm, which rounding may close or open,
 * explain @n parts of more than @least m²: as many as there are, or as there
 * are when the shape is a little fatter or thinner. */
gboolean geos_shape_explains (const GeosShape *shape, guint n, double least,
                              double neck);

G_END_DECLS
