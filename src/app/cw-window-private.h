/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window's parts: what it is (cw-window.c), files in and out
 * (cw-window-file.c), sheets and walls (cw-window-sheet.c, cw-window-wall.c),
 * what is seen of the board (cw-window-view.c), what is done with the
 * selection (cw-window-arrange.c, cw-window-clip.c) and with a side of an
 * outline (cw-window-side.c), buildups (cw-window-buildups.c).
 */
#pragma once

#include "cw-i18n.h"
#include "cw-notice.h"
#include "cw-window.h"

G_BEGIN_DECLS

struct _CwWindow
{
  GtkApplicationWindow parent;
  CwJob *job;
  GtkWidget *recent_button, *undo_button, *redo_button;
  GtkWidget *export_button, *menu_button, *history_button;
  GtkWidget *board_menu;
  GtkWidget *name_label, *state_label, *stack;
  CwNotice *notice;
  CwWallsPlace *walls;
  CwPanelsPlace *panels;
  GtkWindow *buildups, *prices;   /* weak; NULL: not open */
  gboolean closing;           /* as soon as it is saved */
  gboolean may_close;         /* asked and answered */
};

/* Each adds its actions, and handlers where it has any. */
void cw_window_add_file_actions (CwWindow *window);
void cw_window_add_sheet_actions (CwWindow *window);
void cw_window_add_wall_actions (CwWindow *window);
void cw_window_add_view_actions (CwWindow *window);
void cw_window_add_place_actions (CwWindow *window);
void cw_window_add_buildup_actions (CwWindow *window);
void cw_window_add_arrange_actions (CwWindow *window);
void cw_window_add_clip_actions (CwWindow *window);
void cw_window_add_side_actions (CwWindow *window);

/* By where the board's menu was asked for. */
void cw_window_enable_side_actions (CwWindow *window);

/* From the page of ways to begin, where that is shown. */
void cw_window_leave_start (CwWindow *window);

/* Saves, asking for a name where there is none. */
void cw_window_save (CwWindow *window);

CwBoard *cw_window_board (CwWindow *window);
CwDocument *cw_window_document (CwWindow *window);
const CwProject *cw_window_project (CwWindow *window);
/* Of the shown wall; NULL: none is shown. */
const CwElevation *cw_window_elevation (CwWindow *window);
/* @next becomes the document's, as a step of its own. Takes @next. */
void cw_window_edit (CwWindow *window, CwProject *next, const char *step);

void cw_window_enable (CwWindow *window, const char *action,
                       gboolean enabled);

/* A new, empty wall on @sheet_id (nullable), shown, ready to be drawn. */
void cw_window_begin_wall (CwWindow *window, const char *sheet_id);

G_END_DECLS
