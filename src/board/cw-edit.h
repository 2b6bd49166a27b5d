/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits that tools make: pure functions from a project to the next one. All
 * return a new reference; @project itself when there was nothing to do.
 */
#pragma once

#include "cw-outline.h"
#include "cw-project.h"

G_BEGIN_DECLS

/* @project with @former replaced by what it becomes. */
CwProject *cw_edit_replace (const CwProject *project, const CwNode *former,
                            const CwNode *by);

/* @item at the end of the elevation's items. */
CwProject *cw_edit_add_item (const CwProject *project,
                             const CwElevation *elevation,
                             const CwNode *item);

/*
 * cw_edit_draw_outline:
 * @elevation: (nullable): the shown one; the outline goes to it when it has
 *   none, or else to a new elevation on the same sheet with the same buildup
 * @corners: a valid outline, in the coordinates of the shown elevation; its
 *   edges are guessed
 * @id: (out): of the elevation that has it now, owned by the caller
 * @shift: (out): where the origin went, in the former coordinates: the
 *   outline's left and its lowest point. The place on the sheet is moved
 *   along, so that nothing moves there.
 */
CwProject *cw_edit_draw_outline (const CwProject *project,
                                 const CwElevation *elevation,
                                 const CwCorner *corners, gsize n_corners,
                                 char **id, CwPoint *shift);

/* Corners of an elevation's outline in their place; edges as they are. */
CwProject *cw_edit_set_corners (const CwProject *project,
                                const CwElevation *elevation,
                                const CwCorner *corners, gsize n_corners);

/* One item, or one corner, moved. (transfer full) */
CwNode *cw_edit_moved (const CwNode *item, CwLength dx, CwLength dy);

/* Everything with those ids that belongs to @elevation moved. */
CwProject *cw_edit_move (const CwProject *project,
                         const CwElevation *elevation,
                         const char *const *ids, CwLength dx, CwLength dy);

/* The items of @elevation with those ids taken away; the elevation's own id
 * takes its outline away. */
CwProject *cw_edit_remove (const CwProject *project,
                           const CwElevation *elevation,
                           const char *const *ids);

/* An item that has place and size (opening, band, stub-out) made to fill
 * @box; an arch by its crown. (transfer full) */
CwNode *cw_edit_fill (const CwProject *project, const CwNode *item,
                      const CwBox *box);

/* An arch with its springing line brought to @level, its crown and sill where
 * they are. Heads of one or two circles (segmental, semicircular, pointed)
 * become one another as the rise asks; the others keep to their limits.
 * (transfer full) */
CwNode *cw_edit_spring (const CwProject *project, const CwNode *arch,
                        CwLength level);

/* A dimension with the first (0) or second (1) of its points at @to, or with
 * its line through @at. (transfer full) */
CwNode *cw_edit_dimension_end (const CwNode *dimension, guint end,
                               CwPoint to);
CwNode *cw_edit_dimension_line (const CwNode *dimension, CwPoint at);

/* A CwScale of a sheet, both ways alike. */
CwProject *cw_edit_set_scale (const CwProject *project, const CwSheet *sheet,
                              double mm_per_point);

/* The head that goes with a rise over a width when nobody chose one. */
CwArchHead cw_edit_head_for (CwLength width, CwLength rise);

/* Whether everything lies where a project may have it, and has a size. */
gboolean cw_edit_box_is_sound (const CwBox *box);
gboolean cw_edit_point_is_sound (CwPoint point);

/* The same of the items with those ids. */
gboolean cw_edit_is_in_bounds (const CwProject *project,
                               const char *const *ids);

G_END_DECLS
