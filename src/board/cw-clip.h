/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Copying items and pasting them elsewhere. What is copied is a project of
 * its own, with one elevation that has nothing but those items, and their
 * marks: it can be written and read as any other, so that it goes from window
 * to window as text.
 */
#pragma once

#include "cw-edit.h"

G_BEGIN_DECLS

/* (transfer full) (nullable): NULL: none of @ids can be copied. */
CwProject *cw_clip_new (const CwProject *project,
                        const CwElevation *elevation,
                        const char *const *ids);

/* Whether @project looks like something that was copied. */
gboolean cw_clip_is_one (const CwProject *project);

/* The box about all that is in @clip; FALSE: nothing has a shape. */
gboolean cw_clip_bounds (const CwProject *clip, CwBox *box);

/*
 * cw_edit_paste:
 * @way: how far from where it was copied
 * @ids: (out) (transfer full): of what was pasted
 *
 * A mark of the copy is the project's own one where that gives the same, by
 * whatever id; else it comes along.
 */
CwProject *cw_edit_paste (const CwProject *project,
                          const CwElevation *elevation, const CwProject *clip,
                          CwPoint way, char ***ids);

G_END_DECLS
