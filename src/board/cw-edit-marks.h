/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits about marks: a mark gives its openings what they do not state
 * themselves. Pure functions; @project itself comes back, with a new
 * reference, when there was nothing to do.
 */
#pragma once

#include "cw-edit.h"

G_BEGIN_DECLS

/* The openings among @ids keep their size and head and belong to no mark any
 * more. */
CwProject *cw_edit_break_away (const CwProject *project,
                               const CwElevation *elevation,
                               const char *const *ids);

/* The openings among @ids that are of the mark's kind take it, with all that
 * it gives. */
CwProject *cw_edit_follow_mark (const CwProject *project,
                                const CwElevation *elevation,
                                const char *const *ids, const char *mark);

/* A new mark as the first opening of @ids is, and those of its kind follow
 * it. @mark: (out) (transfer full) (nullable): its id; NULL: there was no
 * opening. The name is the next one free: W1, W2 …, D1 …, A1 …. */
CwProject *cw_edit_make_mark (const CwProject *project,
                              const CwElevation *elevation,
                              const char *const *ids, char **mark);

/* An opening of @mark with its lower left at @at. @id: (out) (transfer full):
 * its own. */
CwProject *cw_edit_place_mark (const CwProject *project,
                               const CwElevation *elevation,
                               const CwMark *mark, CwPoint at, char **id);

/* How many openings of the whole project have @mark. */
guint cw_project_count_mark (const CwProject *project, const char *mark);

/* The mark that all openings among @ids have; NULL: none, or several. */
const CwMark *cw_edit_common_mark (const CwProject *project,
                                   const char *const *ids);

G_END_DECLS
