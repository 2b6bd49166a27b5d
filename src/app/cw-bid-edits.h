/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of the lists that stand behind a bid: what is hired, the estimator's
 * own lines, alternates. Pure functions from a project to the next.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

/* A new one, all defaults, at the end of the project's list in @slot.
 * (transfer full) */
CwProject *cw_edit_add_to_list (const CwProject *project, guint slot);

/* Without the one at @index. (transfer full) */
CwProject *cw_edit_remove_from_list (const CwProject *project, guint slot,
                                     gsize index);

G_END_DECLS
