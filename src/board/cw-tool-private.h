/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What every tool is made of, and what all of them share: one table of
 * functions and one struct a tool, each in a file of its own.
 */
#pragma once

#include "cw-edit.h"
#include "cw-hit.h"
#include "cw-i18n.h"
#include "cw-placing.h"
#include "cw-snap-gap.h"
#include "cw-tool.h"
#include "cw-typed-fields.h"
#include "cw-typed.h"

G_BEGIN_DECLS

/* How far things draw the pointer, and from where on a drag is meant. */
#define CW_TOOL_SNAP_PIXELS 8
#define CW_TOOL_DRAG_PIXELS 4
#define CW_TOOL_HANDLE_PIXELS 4

/* Whether a point can be given now, by along and up. */
typedef enum
{
  CW_TOOL_WANTS_NONE,
  CW_TOOL_WANTS_FIRST,  /* with what else is typed: from a corner of the wall */
  CW_TOOL_WANTS_NEXT,   /* instead of it: from the last point */
} CwToolWants;

/* Any entry may be NULL: the tool does nothing then. */
typedef struct
{
  gsize size;                                   /* of the tool's struct, CwTool first */
  gboolean places;                              /* one thing after the other, while Shift is held */
  void (*start) (CwTool *tool);
  void (*clear) (CwTool *tool);
  void (*press) (CwTool *tool, const CwPointer *pointer, guint n_press);
  void (*move) (CwTool *tool, const CwPointer *pointer);
  void (*release) (CwTool *tool, const CwPointer *pointer);
  void (*nudge) (CwTool *tool, CwLength dx, CwLength dy);
  gboolean (*enter_text) (CwTool *tool, const char *text, GError **error);
  /* Of its own; at most CW_TYPED_FIELDS_MOST - 2. What is typed into them
   * goes to enter_text as one text. */
  guint (*fields) (CwTool *tool, CwTypedField *fields);
  /* @last: (out): where the last point is; @now: (out): where the next one
   * would be. */
  CwToolWants (*wants_point) (CwTool *tool, CwPoint *last, CwPoint *now);
  /* As a click exactly there; it was measured from @from. FALSE: it cannot
   * be. */
  gboolean (*place_point) (CwTool *tool, CwPoint at, CwPoint from);
  void (*next_form) (CwTool *tool);
  gboolean (*finish) (CwTool *tool);
  gboolean (*cancel) (CwTool *tool);
  gboolean (*remove) (CwTool *tool);
  void (*refresh) (CwTool *tool);
  char *(*hint) (CwTool *tool);                 /* (transfer full) */
  void (*overlay) (CwTool *tool, CwDisplayList *list, double nm_per_pixel);
  gboolean (*two_points) (CwTool *tool, CwPoint *first, CwPoint *second);
} CwToolClass;

struct CwTool
{
  const CwToolClass *klass;
  CwToolKind kind;
  CwDocument *document;
  CwTextStyle style;

  CwPointer pointer;        /* the last one seen */
  gboolean has_pointer;
  CwSnap snap;              /* what the last move fell on */
  gboolean shows_snap;
  CwSnapGap gap, gap_up;    /* where snap.x_kind, y_kind is CW_SNAP_GAP */
  guint form;               /* see cw_tool_next_form() */
  GArray *joints;           /* (nullable) CwJoint */
  CwDrawnLines *drawn;      /* (nullable): of the sheet that is seen */
  CwPlacing drawn_at;

  gboolean has_reference;   /* chosen, for along and up */
  CwPoint reference;
  gboolean typing;          /* something is being typed at the pointer */
  CwPoint typed_from;       /* for along and up, without a last point */
  gboolean typed_together;  /* a first point, and now what goes from it */

  CwWall *wall;             /* (nullable): the shown elevation's, see cw_tool_wall() */
  char *hint;
  gboolean done;
  CwPoint shift;
};

extern const CwToolClass cw_tool_select_class, cw_tool_wall_class,
    cw_tool_rectangle_class, cw_tool_stub_out_class, cw_tool_dimension_class,
    cw_tool_two_points_class;

/* The project, the shown elevation (NULL: none) and its wall, as they are
 * now; borrowed until the next edit. */
const CwProject *cw_tool_project (CwTool *tool);
const CwElevation *cw_tool_elevation (CwTool *tool);
const CwWall *cw_tool_wall (CwTool *tool);

/* The pointer snapped to the wall and to further @points, unless the user
 * holds snapping off; @skip_ids as in CwSnapField. Remembers what it fell on
 * for the guides. */
CwPoint cw_tool_snap (CwTool *tool, const CwPointer *pointer,
                      const CwPoint *points, gsize n_points,
                      const char *const *skip_ids);
/* The same field, for tools that snap in ways of their own. */
CwSnapField cw_tool_snap_field (CwTool *tool, const CwPointer *pointer);

/* After a snap that moved @box by @by: where gaps like those that are there
 * are nearer than what it fell on, or it fell on nothing, those. So a window
 * can be put as close to its neighbour as others are. */
void cw_tool_snap_gaps (CwTool *tool, const CwSnapField *field,
                        const CwBox *box, CwPoint *by);

CwLength cw_tool_reach (const CwPointer *pointer, double pixels);
gboolean cw_tool_is_apart (const CwPointer *pointer, CwPoint a, CwPoint b,
                           double pixels);

/* @at made level or upright from @from, whichever it is nearer to. */
CwPoint cw_tool_straighten (CwPoint from, CwPoint at);

/* One step of undo. @select (nullable): the only thing selected afterwards. */
void cw_tool_edit (CwTool *tool, const CwProject *project, const char *name,
                   const char *select);

/* Something has been placed: done, unless the user holds on to the tool. */
void cw_tool_placed (CwTool *tool);

/* As a click exactly there; FALSE: no point is wanted, or not there. */
gboolean cw_tool_place_point (CwTool *tool, CwPoint at);

/* The fields of a way between two points: how far, and how steep. */
guint cw_tool_way_fields (CwTool *tool, CwTypedField *fields, CwPoint from,
                          CwPoint to);
/* The fields of a box. */
guint cw_tool_size_fields (CwTypedField *fields, const char *width,
                           const char *height, const CwBox *now);

/* Bits of overlays. */
void cw_tool_draw_snap (CwTool *tool, CwDisplayList *list,
                        double nm_per_pixel);
void cw_tool_draw_handle (CwDisplayList *list, CwPoint at,
                          double nm_per_pixel);
void cw_tool_draw_label (CwDisplayList *list, CwPoint at, CwAnchor anchor,
                         double dx_pixels, double dy_pixels,
                         double nm_per_pixel, const char *text);
/* What along and up are measured from: a cross in a square. */
void cw_tool_draw_reference (CwDisplayList *list, CwPoint at,
                             double nm_per_pixel);
/* The length of the way between two points, beside its middle. */
void cw_tool_draw_length (CwTool *tool, CwDisplayList *list, CwPoint from,
                          CwPoint to, double nm_per_pixel);
/* The width and height of a box, beside its sides. */
void cw_tool_draw_size (CwTool *tool, CwDisplayList *list, const CwBox *box,
                        double nm_per_pixel);

/* "1200 × 1400" in the user's form. (transfer full) */
char *cw_tool_size_text (CwTool *tool, CwLength width, CwLength height);

static inline CwBox
cw_tool_box (CwPoint a, CwPoint b)
{
  return (CwBox) { MIN (a.x, b.x), MIN (a.y, b.y), MAX (a.x, b.x),
                   MAX (a.y, b.y) };
}

G_END_DECLS
