/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits that put what is selected in order: align, distribute, mirror,
 * repeat. Pure functions; @project itself comes back, with a new reference,
 * when there was nothing to do. Whole nanometres throughout: what is aligned
 * is exactly aligned.
 */
#pragma once

#include "cw-edit.h"

G_BEGIN_DECLS

typedef enum
{
  CW_ALIGN_LEFT,
  CW_ALIGN_CENTRE,
  CW_ALIGN_RIGHT,
  CW_ALIGN_BOTTOM,
  CW_ALIGN_MIDDLE,
  CW_ALIGN_TOP,
} CwAlign;

/* All of @ids brought into line with the first of them, which stays. */
CwProject *cw_edit_align (const CwProject *project,
                          const CwElevation *elevation,
                          const char *const *ids, CwAlign how);

/* Equal gaps between the two outermost, which stay; what does not divide is
 * spread, a nanometre here and there. Fewer than three: nothing. */
CwProject *cw_edit_distribute (const CwProject *project,
                               const CwElevation *elevation,
                               const char *const *ids, gboolean upright);

/* @ids turned over left to right about the middle of all of them; for one
 * that is symmetrical nothing changes. */
CwProject *cw_edit_mirror (const CwProject *project,
                           const CwElevation *elevation,
                           const char *const *ids);

/* The whole elevation turned over left to right about the middle of its
 * outline, or of what it has. Corners run anticlockwise afterwards. */
CwProject *cw_edit_mirror_elevation (const CwProject *project,
                                     const CwElevation *elevation);

/* One item turned over; @sum: left and right of the axis' box added up.
 * (transfer full) */
CwNode *cw_edit_mirrored (const CwProject *project, const CwNode *item,
                          CwLength sum);

/*
 * cw_edit_repeat:
 * @n: how many copies there are to be besides the original
 * @way: from one to the next; or, when @whole, from the original to the last
 * @new_ids: (out) (transfer full): of the copies
 *
 * Copies of @ids in a row, under new ids, in the order of the row.
 */
CwProject *cw_edit_repeat (const CwProject *project,
                           const CwElevation *elevation,
                           const char *const *ids, guint n, CwPoint way,
                           gboolean whole, char ***new_ids);
#define CW_REPEAT_MOST 200

/* The box about all of @ids; FALSE: none of them is there. */
gboolean cw_edit_bounds (const CwProject *project,
                         const CwElevation *elevation,
                         const char *const *ids, CwBox *box);

G_END_DECLS
