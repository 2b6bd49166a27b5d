/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The board's parts: what it is (cw-board.c), what comes in from pointer and
 * keys (cw-board-input.c), what it looks like (cw-board-draw.c), and how the
 * view follows the project (cw-board-view.c).
 */
#pragma once

#include "cw-board.h"
#include "cw-i18n.h"
#include "cw-picture.h"
#include "cw-placing.h"
#include "cw-sheet-tiles.h"
#include "cw-view.h"

G_BEGIN_DECLS

/* The layers of the shown elevation, from the back to the front. */
typedef enum
{
  CW_BOARD_FACE,
  CW_BOARD_PANELS,
  CW_BOARD_LININGS,     /* barrier and mesh */
  CW_BOARD_OPENINGS,
  CW_BOARD_MEASURES,
  CW_BOARD_TRACED,      /* of the wall, over a sheet, while more is traced */
  CW_BOARD_CHECKS,
  CW_BOARD_LIT,
  CW_BOARD_OVERLAY,
  CW_N_BOARD_PICTURES,
} CwBoardPicture;

/* Another elevation on the same sheet, shown faintly. */
typedef struct
{
  CwWall *wall;
  CwPicture picture;
  double x, y;          /* its origin in the shown wall's nm */
} CwNeighbour;

struct _CwBoard
{
  GtkWidget parent_instance;

  CwDocument *document;         /* (nullable) */
  CwTakeoff *takeoff;           /* (nullable) */
  gboolean previews;            /* the takeoff is of another project */
  CwTextStyle style;
  CwTool *tool;                 /* (nullable): without a document */
  CwToolKind kind;
  guint forms[CW_N_TOOLS];      /* chosen ones, kept when a tool is left */
  CwLayers layers;
  gboolean shows_sheet;
  gboolean as_printed;
  const CwQuantityType *lit;
  char *lit_variant;            /* (nullable): of that quantity */
  GPtrArray *checks;            /* (nullable): CwCheck */
  GArray *lit_places;           /* (nullable): CwBox, of the check that is lit */
  char *lit_elevation;          /* (nullable): whose places they are */

  CwView view;
  gboolean wants_fit;           /* as soon as there is a size */
  char *elevation_id;           /* whose view it is */
  CwPlacing placing;            /* as the view knows it; its sheet may be gone */
  char *sheet_id;               /* (nullable) */

  CwWall *wall;                 /* (nullable): the shown one */
  CwPicture pictures[CW_N_BOARD_PICTURES];
  guint stale;                  /* mask of 1 << CwBoardPicture: lists to be made anew */
  double measures_at;           /* nm a pixel that the measures were made for */
  GPtrArray *neighbours;        /* CwNeighbour */
  gboolean neighbours_stale;
  CwPalette palette;
  guint still_id;               /* a zoom goes on until it fires */

  GHashTable *sources;          /* sheet id → CwSheetSource */
  GHashTable *drawn;            /* sheet id → CwDrawnLines */
  CwSheetTiles *tiles;          /* (nullable): of the shown sheet */
  char *tiles_key;

  double x, y;                  /* the pointer, or the crosshair, pixels */
  gboolean has_pointer;
  gboolean by_keys;             /* the crosshair is moved by keys */
  gboolean held;                /* by keys, as by a button */
  double seen_x, seen_y;        /* where the pointer itself was last */
  CwHold hold;
  gboolean freed;               /* F is held: snapping off */
  CwPoint menu_at;
  gboolean dropping;            /* a mark is held over the board */
  CwBox drop;                   /* where it would fall */
  gboolean pressed;
  gboolean space;               /* held: drags move the paper */
  gboolean space_used;          /* it has been dragged with: no click */
  gboolean panning;
  double pan_x, pan_y;
  double pinch_x, pinch_y, pinch_scale;
  gboolean had_points;
  char *hint;
  char *label, *description;    /* as last told to assistive technology */
};

enum
{
  CW_BOARD_TOOL_CHANGED,
  CW_BOARD_HINT_CHANGED,
  CW_BOARD_POINTER_MOVED,
  CW_BOARD_VIEW_CHANGED,
  CW_BOARD_TWO_POINTS,
  CW_BOARD_TEXT_WANTED,
  CW_BOARD_MENU_WANTED,
  CW_N_BOARD_SIGNALS,
};
extern guint cw_board_signals[CW_N_BOARD_SIGNALS];

const CwElevation *cw_board_elevation (CwBoard *self);

/* The lists of these pictures are made anew in the next frame. */
void cw_board_spoil (CwBoard *self, guint pictures);
void cw_board_spoil_neighbours (CwBoard *self);

/* After anything that may have changed what the tool says or has made. */
void cw_board_after_tool (CwBoard *self);
void cw_board_tell (CwBoard *self);

/* cw-board-input.c */
void cw_board_listen (CwBoard *self);
void cw_board_feed_again (CwBoard *self);
CwPointer cw_board_pointer (CwBoard *self, double x, double y);
void cw_board_tell_pointer (CwBoard *self);

/* cw-board-keys.c: the crosshair that keys move, for who has no pointer. */
gboolean cw_board_move_crosshair (CwBoard *self, guint key,
                                  GdkModifierType state);
void cw_board_click_crosshair (CwBoard *self);
void cw_board_hold_crosshair (CwBoard *self);
void cw_board_show_crosshair (CwBoard *self, GtkSnapshot *snapshot);

/* cw-board-reading.c: where it is and on what; NULL: keys do not move it.
 * (transfer full) (nullable) */
char *cw_board_describe_crosshair (CwBoard *self);
/* cw-board-typed.c */
gboolean cw_board_choose_reference (CwBoard *self);

/* cw-board-menu.c */
void cw_board_listen_for_menu (CwBoard *self);
gboolean cw_board_menu_by_key (CwBoard *self, guint key,
                               GdkModifierType state);

/* cw-board-drop.c */
void cw_board_listen_for_drops (CwBoard *self);
void cw_board_draw_drop (CwBoard *self, CwDisplayList *list);

/* cw-board-draw.c */
void cw_board_snapshot (GtkWidget *widget, GtkSnapshot *snapshot);
void cw_board_css_changed (GtkWidget *widget, GtkCssStyleChange *change);
void cw_board_find_palette (CwBoard *self);
void cw_board_drop_tiles (CwBoard *self);

/* cw-board-checks.c */
CwDisplayList *cw_board_draw_checks (CwBoard *self);
/* (nullable): of the check that is lit on the shown wall. */
CwDisplayList *cw_board_draw_lit_check (CwBoard *self);
void cw_board_drop_checks (CwBoard *self);

/* cw-board-view.c */
void cw_board_show_box (CwBoard *self, const CwBox *box);
void cw_board_follow_document (CwBoard *self, CwPoint shift);
void cw_board_view_changed (CwBoard *self);
void cw_board_zoom_at (CwBoard *self, double factor, double x, double y);
void cw_board_pan_by (CwBoard *self, double dx, double dy);
gboolean cw_board_page_size (CwBoard *self, double *width, double *height);

G_END_DECLS
