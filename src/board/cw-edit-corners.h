/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of the corners of an outline, or of an unclad area: put one in, take
 * one away, bow a side. All refuse what would be no outline any more.
 */
#pragma once

#include "cw-edit.h"

G_BEGIN_DECLS

/* The corners of the elevation with that id, or of the unclad area; NULL:
 * there are none. (transfer full) (element-type CwCorner) */
GArray *cw_edit_corners (const CwProject *project, const char *owner);

/* They are replaced. @fault: (nullable) (out) (transfer full): a sentence, when NULL is
 * returned because they make no outline. */
CwProject *cw_edit_put_corners (const CwProject *project, const char *owner,
                                const GArray *corners, char **fault);

/* A corner on the side that starts from corner @side, at @at. Both halves of a
 * bowed side stay on its curve when @at is on it. */
CwProject *cw_edit_insert_corner (const CwProject *project, const char *owner,
                                  guint side, CwPoint at, char **fault);
CwProject *cw_edit_remove_corner (const CwProject *project, const char *owner,
                                  guint corner, char **fault);
/* @sagitta: outward positive; 0: straight. */
CwProject *cw_edit_bow_side (const CwProject *project, const char *owner,
                             guint side, CwLength sagitta, char **fault);

/* The bow of the circle from @from through @by to @to, positive to the right
 * of the way; 0: the three lie on a line. */
CwLength cw_bow_through (CwPoint from, CwPoint by, CwPoint to);

/* The point of such a side at @share of its way, 0 to 1. */
CwPoint cw_bow_point (CwPoint from, CwPoint to, CwLength bow, double share);

/* Outward is to the right of the way, or to the left. */
gboolean cw_corners_are_clockwise (const GArray *corners);

/* The side within @reach of @at that is nearest, by the corner it starts
 * from; -1: none. @on: (out): the point of it. */
int cw_corners_side_at (const GArray *corners, CwPoint at, CwLength reach,
                        CwPoint *on);

G_END_DECLS
