/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The board with its rulers and the entry at the pointer, fed by a job.
 */
#pragma once

#include "cw-board.h"
#include "cw-job.h"
#include "cw-move-label.h"

G_BEGIN_DECLS

#define CW_TYPE_BOARD_FRAME (cw_board_frame_get_type ())
G_DECLARE_FINAL_TYPE (CwBoardFrame, cw_board_frame, CW, BOARD_FRAME,
                      GtkWidget)

void cw_board_frame_set_job (CwBoardFrame *frame, CwJob *job);
CwBoard *cw_board_frame_board (CwBoardFrame *frame);
CwMoveLabel *cw_board_frame_move_label (CwBoardFrame *frame);

/* Shows the panels of @takeoff, of another project like this one, instead of
 * the job's; NULL: the job's again. */
void cw_board_frame_preview (CwBoardFrame *frame, const CwTakeoff *takeoff);

/* Opens the entry, as if somebody had begun to type. */
void cw_board_frame_type (CwBoardFrame *frame, const char *text);

G_END_DECLS
