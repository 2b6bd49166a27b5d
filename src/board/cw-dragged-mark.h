/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is dragged from the schedule of openings onto the board: a mark, by
 * its id, as a boxed type of its own so that no other text is taken for one.
 */
#pragma once

#include <glib-object.h>

G_BEGIN_DECLS

#define CW_TYPE_DRAGGED_MARK (cw_dragged_mark_get_type ())

typedef struct CwDraggedMark CwDraggedMark;

GType cw_dragged_mark_get_type (void);
CwDraggedMark *cw_dragged_mark_new (const char *id);
void cw_dragged_mark_free (CwDraggedMark *mark);
const char *cw_dragged_mark_id (const CwDraggedMark *mark);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwDraggedMark, cw_dragged_mark_free)

G_END_DECLS
