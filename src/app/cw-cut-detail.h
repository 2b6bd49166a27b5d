/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sawn panel in words: its cuts in order, and its pieces with the walls
 * they go on. Choosing a piece calls "win.show-piece".
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-cut-item.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

#define CW_TYPE_CUT_DETAIL (cw_cut_detail_get_type ())
G_DECLARE_FINAL_TYPE (CwCutDetail, cw_cut_detail, CW, CUT_DETAIL, GtkWidget)

GtkWidget *cw_cut_detail_new (void);

/* @item: (nullable): none is chosen */
void cw_cut_detail_show (CwCutDetail *detail, CwCutItem *item,
                         const CwTextStyle *style);

/* For tests: of the pieces that are listed. */
guint cw_cut_detail_n_pieces (CwCutDetail *detail);
void cw_cut_detail_choose_piece (CwCutDetail *detail, guint index);

G_END_DECLS
