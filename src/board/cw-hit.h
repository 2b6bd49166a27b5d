/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What of a wall lies at a point, by its exact shape.
 */
#pragma once

#include "cw-wall.h"

G_BEGIN_DECLS

/*
 * cw_hit_at:
 * @reach: how far beside a small item still counts
 *
 * The item of the elevation on top at @at, the elevation itself on its face
 * or outline, or NULL; borrowed from the wall. An opening is given as it is
 * drawn, not as its mark fills it in.
 */
const CwNode *cw_hit_at (const CwWall *wall, CwPoint at, CwLength reach);

/* The items whose whole shape lies in @box, in file order.
 * (transfer container) (element-type CwNode) */
GPtrArray *cw_hit_within (const CwWall *wall, const CwBox *box);

/* Bounds of an item, or of the outline when @id is the elevation's; FALSE
 * when there is no such shape. */
gboolean cw_hit_bounds (const CwWall *wall, const char *id, CwBox *box);

/* Its exact shape; (transfer full) (nullable): a dimension has none. */
CwRegion *cw_hit_shape (const CwWall *wall, const char *id);

/* The opening with that id, or NULL. */
const CwWallOpening *cw_hit_opening (const CwWall *wall, const char *id);

/* The dimension with that id, or NULL. */
const CwDimension *cw_hit_dimension (const CwWall *wall, const char *id);

G_END_DECLS
