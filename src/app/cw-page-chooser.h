/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pages of a sheet's file as small pictures, one of them chosen. Pictures
 * are drawn on another thread, one after the other.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-sheet-source.h"

G_BEGIN_DECLS

#define CW_TYPE_PAGE_CHOOSER (cw_page_chooser_get_type ())
G_DECLARE_FINAL_TYPE (CwPageChooser, cw_page_chooser, CW, PAGE_CHOOSER,
                      GtkWidget)

GtkWidget *cw_page_chooser_new (CwSheetSource *source);
guint cw_page_chooser_page (CwPageChooser *chooser);    /* from 1 */

G_END_DECLS
