/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The entry at the pointer: what is typed goes to the board's tool.
 */
#pragma once

#include "cw-board.h"

G_BEGIN_DECLS

#define CW_TYPE_TYPED_BOX (cw_typed_box_get_type ())
G_DECLARE_FINAL_TYPE (CwTypedBox, cw_typed_box, CW, TYPED_BOX, GtkWidget)

/* @board outlives the box. Hidden until it is opened. */
GtkWidget *cw_typed_box_new (CwBoard *board);

/* With @text already in it, the cursor behind. */
void cw_typed_box_open (CwTypedBox *box, const char *text);
void cw_typed_box_close (CwTypedBox *box);

G_END_DECLS
