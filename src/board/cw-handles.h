/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The handles of what is selected: eight about an item that has a size, two
 * more at the ends of an arch's springing line, one at each corner of an
 * outline, and three on a dimension.
 */
#pragma once

#include "cw-wall.h"

G_BEGIN_DECLS

typedef enum
{
  CW_HANDLE_LEFT = 1 << 0,
  CW_HANDLE_RIGHT = 1 << 1,
  CW_HANDLE_BOTTOM = 1 << 2,
  CW_HANDLE_TOP = 1 << 3,
  CW_HANDLE_CORNER = 1 << 4,    /* of an outline or an unclad area */
  CW_HANDLE_SPRINGING = 1 << 5, /* of an arch; its crown stays */
  CW_HANDLE_END = 1 << 6,       /* of a dimension: what is measured */
  CW_HANDLE_BOW = 1 << 8,       /* of an arc: how far it bows */
  CW_HANDLE_LINE = 1 << 7,      /* of a dimension: how far its line stands off */
} CwHandleKind;

typedef struct
{
  CwPoint at;
  CwHandleKind kind;    /* the sides of the box that it moves, or a corner */
  guint corner;         /* which */
} CwHandle;

/* The handles of the item with that id, or of the outline when it is the
 * elevation's; none for what has neither. (transfer full)
 * (element-type CwHandle) */
GArray *cw_handles (const CwWall *wall, const char *id);

/* The handle within @reach of @at that is nearest; FALSE: none. */
gboolean cw_handles_pick (const GArray *handles, CwPoint at, CwLength reach,
                          CwHandle *handle);

/* @box with the sides that a handle of @kind moves brought to @to; never
 * turned inside out. */
CwBox cw_handle_drag (const CwBox *box, CwHandleKind kind, CwPoint to);

G_END_DECLS
