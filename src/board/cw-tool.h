/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tools: state machines that turn presses, moves and typed text into a
 * proposed project. They know no widget; the board feeds them, and so do the
 * tests.
 */
#pragma once

#include "cw-document.h"
#include "cw-display-list.h"
#include "cw-snap.h"

G_BEGIN_DECLS

typedef enum
{
  CW_TOOL_SELECT,
  CW_TOOL_WALL,
  CW_TOOL_WINDOW,
  CW_TOOL_DOOR,
  CW_TOOL_ARCH,
  CW_TOOL_STUB_OUT,
  CW_TOOL_UNCLAD,
  CW_TOOL_BAND,
  CW_TOOL_DIMENSION,
  CW_TOOL_TAPE,
  CW_TOOL_SCALE,
  CW_N_TOOLS,
} CwToolKind;

typedef struct
{
  CwToolKind kind;
  const char *name;     /* "wall", for actions "board.tool::wall" */
  const char *label;    /* N_() "Wall outline" */
  const char *key;      /* "w" */
  const char *icon;     /* "cw-wall-symbolic" */
} CwToolInfo;

extern const CwToolInfo cw_tool_infos[CW_N_TOOLS];

typedef enum
{
  CW_HOLD_NONE = 0,
  CW_HOLD_ADD = 1 << 0,       /* add to the selection, or stay on the tool (Shift) */
  CW_HOLD_FREE = 1 << 1,      /* snapping off (Alt) */
  CW_HOLD_STRAIGHT = 1 << 2,  /* level or upright only (Ctrl) */
} CwHold;

/* The pointer as a tool sees it: on the wall, in nm, unsnapped. */
typedef struct
{
  CwPoint at;
  double nm_per_pixel;        /* for pick and snap radii */
  CwHold hold;
} CwPointer;

typedef struct CwTool CwTool;

/* @document and @units text style are borrowed and outlive the tool. */
CwTool *cw_tool_new (CwToolKind kind, CwDocument *document);
void cw_tool_free (CwTool *tool);
void cw_tool_set_text_style (CwTool *tool, const CwTextStyle *style);

/* The joints of the shown wall's panels, to snap to. (nullable)
 * (element-type CwJoint): never changed once given. */
void cw_tool_set_joints (CwTool *tool, GArray *joints);

/* The lines of the plan sheet that is seen, and where the shown wall lies on
 * it, to snap to. @lines: (nullable) */
void cw_tool_set_drawn (CwTool *tool, const CwDrawnLines *lines,
                        const CwPlacing *placing);

CwToolKind cw_tool_kind (CwTool *tool);

void cw_tool_press (CwTool *tool, const CwPointer *pointer, guint n_press);
void cw_tool_move (CwTool *tool, const CwPointer *pointer);
void cw_tool_release (CwTool *tool, const CwPointer *pointer);

/* Steps of the arrow keys for what is selected. */
void cw_tool_nudge (CwTool *tool, CwLength dx, CwLength dy);

/* Text typed at the pointer: "1200 x 1400" sizes, a length goes the way the
 * pointer points. FALSE with @error when it cannot be read. */
gboolean cw_tool_enter_text (CwTool *tool, const char *text, GError **error);

/* The next form of what the tool makes: the five heads of an arch in turn. */
void cw_tool_next_form (CwTool *tool);
/* Which one it is, to be given to the next tool of the kind. */
guint cw_tool_get_form (CwTool *tool);
void cw_tool_set_form (CwTool *tool, guint form);

/* Whether it stays on after what is typed next, as with CW_HOLD_ADD. */
void cw_tool_set_keeps_on (CwTool *tool, gboolean keeps_on);

/* What the pointer has fallen on, in words; translated; NULL: nothing. */
const char *cw_tool_snap_words (CwTool *tool);

gboolean cw_tool_finish (CwTool *tool);   /* Enter: close the outline … TRUE when something ended */
gboolean cw_tool_cancel (CwTool *tool);   /* Escape: TRUE when there was something to give up */
gboolean cw_tool_delete (CwTool *tool);   /* the selection, or the last point */

/* What the next click does; translated, borrowed until the next call. */
const char *cw_tool_hint (CwTool *tool);

/* What is being drawn, guides and handles included; (transfer full). */
CwDisplayList *cw_tool_overlay (CwTool *tool, double nm_per_pixel);

/* TRUE once after something was placed without CW_HOLD_ADD: back to selecting,
 * if whoever feeds the tool wants that. */
gboolean cw_tool_take_done (CwTool *tool);

/* How far the elevation's origin moved with the last edit, once: what was at
 * (x, y) is at (x, y) minus this. Zero when it did not move. */
CwPoint cw_tool_take_shift (CwTool *tool);

/* The document or the shown elevation changed behind the tool's back (undo,
 * inspector): gives up what can no longer be gone on with. */
void cw_tool_refresh (CwTool *tool);

/* CW_TOOL_SCALE and CW_TOOL_TAPE: the two points on the wall plane; FALSE
 * until both are there. */
gboolean cw_tool_two_points (CwTool *tool, CwPoint *first, CwPoint *second);

G_END_DECLS
