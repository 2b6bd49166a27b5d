/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The foot of the board: what the next click does, where the pointer is, how
 * large the wall is shown, and whether the figures are up to date.
 */
#pragma once

#include "cw-board.h"
#include "cw-job.h"
#include "cw-move-label.h"

G_BEGIN_DECLS

#define CW_TYPE_STATUS_LINE (cw_status_line_get_type ())
G_DECLARE_FINAL_TYPE (CwStatusLine, cw_status_line, CW, STATUS_LINE,
                      GtkWidget)

/* @board outlives the line. */
void cw_status_line_follow (CwStatusLine *line, CwBoard *board, CwJob *job);

/* How many checks there are, in words; "" for none. */
void cw_status_line_set_checks (CwStatusLine *line, const char *summary);

/* What a move changes is said there too: the label at the pointer is not for
 * everybody. @label outlives the line. */
void cw_status_line_follow_moves (CwStatusLine *line, CwMoveLabel *label);

G_END_DECLS
