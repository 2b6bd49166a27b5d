/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A drag of what is selected, or of one of its handles: every step is made
 * from the project as it was when the drag began, and all of them are one
 * step of undo.
 */
#pragma once

#include "cw-handles.h"
#include "cw-tool-private.h"

G_BEGIN_DECLS

typedef struct
{
  CwProject *base;          /* (nullable): no drag goes on */
  CwWall *wall;             /* as it was */
  const CwProject *shown;   /* what this drag made last; compared, never read */
  char **ids;
  CwPoint from;
  CwBox box;                /* of what is dragged */
  gboolean by_handle;
  CwHandle handle;
  char *trouble;            /* (nullable): why it does not go further */
} CwDrag;

void cw_drag_begin_move (CwDrag *drag, CwTool *tool, CwPoint from);
void cw_drag_begin_handle (CwDrag *drag, CwTool *tool,
                           const CwHandle *handle);
void cw_drag_to (CwDrag *drag, CwTool *tool, const CwPointer *pointer);

/* What of it can be typed while a handle is dragged: sizes, a bow; 0:
 * nothing. */
guint cw_drag_fields (CwDrag *drag, CwTool *tool, CwTypedField *fields);

/* The handle brought to where what is typed asks for, and the drag ended.
 * FALSE with @error when that cannot be: the drag goes on. Only when there are
 * fields. */
gboolean cw_drag_enter (CwDrag *drag, CwTool *tool, const char *text,
                        GError **error);

/* Keeps what was made; does nothing when no drag goes on. */
void cw_drag_end (CwDrag *drag, CwTool *tool);

/* Goes back to how it was before, leaving no step behind. */
void cw_drag_give_up (CwDrag *drag, CwTool *tool);

/* TRUE when the document still is as this drag made it, or none goes on. */
gboolean cw_drag_goes_on (const CwDrag *drag, CwTool *tool);

void cw_drag_clear (CwDrag *drag);

G_END_DECLS
