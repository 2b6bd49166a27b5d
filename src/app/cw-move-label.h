/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The label at the pointer that says what a move changes: panels, cuts, money.
 * It lies over the board, follows the pointer without covering what is moved,
 * and goes a moment after the move has ended.
 */
#pragma once

#include "cw-board.h"
#include "cw-job.h"

G_BEGIN_DECLS

#define CW_TYPE_MOVE_LABEL (cw_move_label_get_type ())
G_DECLARE_FINAL_TYPE (CwMoveLabel, cw_move_label, CW, MOVE_LABEL, GtkWidget)

/* @board, which it lies over, outlives it. */
GtkWidget *cw_move_label_new (CwBoard *board);
void cw_move_label_set_job (CwMoveLabel *label, CwJob *job);

/* What stands there; NULL: nothing is shown. Borrowed. Also the property
 * "words", for the status line. */
const char *cw_move_label_words (CwMoveLabel *label);

G_END_DECLS
