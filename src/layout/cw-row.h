/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A row: what of the net wall lies in one course, as it is while the wall is
 * set out. Its runs are the lengths between the ends of the wall and the
 * openings that stand through the whole course; panels are laid run by run.
 *
 *    run 1            run 2
 *   |_________________|   |______________|
 *   |       ____      |   |              |    window through the course
 *   |______|    |_____|   |______________|    notch: the run goes on
 */
#pragma once

#include "cw-frame.h"

G_BEGIN_DECLS

typedef struct
{
  CwInterval along;
  guint first_part, n_parts;    /* of the row's parts */
} CwRowRun;

typedef struct
{
  CwInterval across;
  CwLength slot;                /* where the uncut course would begin */
  CwRegion *region;             /* the net wall within the course */
  gboolean is_box;              /* one plain rectangle from edge to edge */
  GPtrArray *parts;             /* CwRegion: connected, sorted along */
  GArray *runs;                 /* CwRowRun, sorted along, disjoint */
} CwRow;

/* Takes @region. */
CwRow *cw_row_new (const CwFrame *frame, CwInterval across, CwLength slot,
                   CwRegion *region);
void cw_row_free (CwRow *row);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwRow, cw_row_free)

/* Cuts the net wall into rows, one for each stretch (CwStretch) of courses,
 * from the start upward. (transfer full) (element-type CwRow) */
GPtrArray *cw_rows_of_region (const CwFrame *frame, const CwRegion *net,
                              const GArray *courses);

G_END_DECLS
