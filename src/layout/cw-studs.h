/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where studs stand behind a wall.
 */
#pragma once

#include "cw-wall.h"

G_BEGIN_DECLS

/*
 * cw_studs_of_wall:
 * Centre lines in x, sorted, each once: from `first` (counted from the
 * outline's left) at the spacing, one at each end of the wall, and with
 * `at-jambs` one at each jamb that stands on the wall.
 *
 * Returns: (transfer full) (element-type CwLength)
 */
GArray *cw_studs_of_wall (const CwWall *wall);

/* The index of the first stud at or right of @x. */
guint cw_studs_from (const GArray *studs, CwLength x);

G_END_DECLS
