/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a panel is sawn, as a picture as wide as it is asked to be.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-cut-item.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

#define CW_TYPE_CUT_PICTURE (cw_cut_picture_get_type ())
G_DECLARE_FINAL_TYPE (CwCutPicture, cw_cut_picture, CW, CUT_PICTURE,
                      GtkWidget)

/* @width: of the picture at the usual size of text, pixels. */
GtkWidget *cw_cut_picture_new (int width);

/* @item: (nullable) */
void cw_cut_picture_show (CwCutPicture *picture, CwCutItem *item,
                          const CwTextStyle *style);

G_END_DECLS
