/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The drawing board: the canvas widget. Shows the elevation that the document
 * shows, on its sheet, with the last takeoff's panels; feeds the tool.
 *
 * Signals: "tool-changed"; "hint-changed"; "pointer-moved" (x and y as gint64
 * nm); "view-changed" (zoom or place); "two-points" (scale or tape has both
 * its points); "text-wanted" (somebody began to type: the first character, a
 * string; what is typed then goes to cw_board_enter_text()); "menu-wanted" (x
 * and y in pixels, double: what is there has been selected).
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-check-drawing.h"
#include "cw-elevation-drawing.h"
#include "cw-sheet-source.h"
#include "cw-tool-typed.h"

G_BEGIN_DECLS

#define CW_TYPE_BOARD (cw_board_get_type ())
G_DECLARE_FINAL_TYPE (CwBoard, cw_board, CW, BOARD, GtkWidget)

GtkWidget *cw_board_new (void);

void cw_board_set_document (CwBoard *board, CwDocument *document);
/* The last good takeoff; drawn dimmer than the outline when it is stale. */
void cw_board_set_takeoff (CwBoard *board, const CwTakeoff *takeoff);
/* The takeoff is of another project on purpose: nothing is dimmed. */
void cw_board_set_previews (CwBoard *board, gboolean previews);
void cw_board_set_text_style (CwBoard *board, const CwTextStyle *style);
/* The file behind a sheet of the document; NULL: cannot be shown. The board
 * draws from it on its own worker thread: give it a source of its own. */
void cw_board_set_sheet_source (CwBoard *board, const char *sheet_id,
                                CwSheetSource *source);

/* The lines of its page, to snap to; NULL: not read yet, or an image. */
void cw_board_set_sheet_lines (CwBoard *board, const char *sheet_id,
                               const CwDrawnLines *lines);

void cw_board_set_tool (CwBoard *board, CwToolKind kind);
CwToolKind cw_board_get_tool (CwBoard *board);
/* Where on the wall the last menu was asked for. */
CwPoint cw_board_get_menu_point (CwBoard *board);
/* Where the pointer is, unsnapped; FALSE: it has not been there yet. */
gboolean cw_board_get_pointer (CwBoard *board, CwPoint *at);
/* What rests under the pointer, in words; NULL: nothing, or the pointer is at
 * work. (transfer full) (nullable) */
char *cw_board_words_at_pointer (CwBoard *board);
/* Brings the crosshair there, as keys would. */
void cw_board_crosshair_to (CwBoard *board, CwPoint at);
const char *cw_board_get_hint (CwBoard *board);
gboolean cw_board_enter_text (CwBoard *board, const char *text, GError **error);

/* What can be typed in separate fields, see cw-tool-typed.h; 0: nothing, or
 * there is no document. */
guint cw_board_get_fields (CwBoard *board,
                           CwTypedField fields[CW_TYPED_FIELDS_MOST]);
/* @n texts for as many fields; @wrong: (out): which one the error is of. */
gboolean cw_board_enter_fields (CwBoard *board, const char *const *texts,
                                guint n, guint *wrong, GError **error);
/* Whether the tool stays on after what is typed next. */
void cw_board_set_keeps_on (CwBoard *board, gboolean keeps_on);
/* Something is being typed: what it is measured from is shown, and stays. */
void cw_board_begin_typing (CwBoard *board);
void cw_board_end_typing (CwBoard *board);
const CwTextStyle *cw_board_get_text_style (CwBoard *board);

/* Points on the shown sheet's page for CW_TOOL_SCALE. FALSE when none. */
gboolean cw_board_get_sheet_points (CwBoard *board, double *x0, double *y0,
                                    double *x1, double *y1);

/* An opening of that mark about a place in pixels, snapped and selected; FALSE:
 * there is no such mark, no elevation, or no room in the world. */
gboolean cw_board_place_mark (CwBoard *board, const char *mark, double x,
                              double y);

void cw_board_set_layers (CwBoard *board, CwLayers layers, gboolean sheet);
/* As papers will show it: on white, in the colours of print, without what
 * papers leave out, whatever is chosen to be shown. */
void cw_board_set_as_printed (CwBoard *board, gboolean as_printed);
/* (element-type CwCheck) (nullable): those of the shown wall get a sign. */
void cw_board_set_checks (CwBoard *board, GPtrArray *checks);
/* Where a check points, lit, and brought into view; the same again is not
 * brought again. NULL: nothing. */
void cw_board_light_check (CwBoard *board, const CwCheck *check);
/* Lights up and shows what lies there on that elevation, as a piece of it. */
void cw_board_light_box (CwBoard *board, const char *elevation_id,
                         const CwBox *box);
/* What a line of the quantities comes from. @type NULL: nothing; @variant
 * (nullable): of the line. */
void cw_board_light (CwBoard *board, const CwQuantityType *type,
                     const char *variant);

void cw_board_zoom_fit (CwBoard *board);
/* All that is selected, near, with some room about it; FALSE: nothing is. */
gboolean cw_board_zoom_to_selection (CwBoard *board);
void cw_board_zoom_by (CwBoard *board, double factor);   /* about the centre */
double cw_board_get_mm_per_pixel (CwBoard *board);

/* Where a wall point is in widget pixels, and back; for tests and labels. */
void cw_board_to_widget (CwBoard *board, CwPoint at, double *x, double *y);
CwPoint cw_board_to_wall (CwBoard *board, double x, double y);

/* A button is held that the tool knows of. */
gboolean cw_board_is_dragging (CwBoard *board);
/* Round all that is selected, in pixels. FALSE when nothing is, or the whole
 * elevation. */
gboolean cw_board_get_selected_area (CwBoard *board, graphene_rect_t *area);

G_END_DECLS
