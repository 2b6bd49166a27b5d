/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How a sheet gets its scale: measured on the sheet, one that is printed on
 * it, or any other that is typed.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-text-style.h"

G_BEGIN_DECLS

#define CW_TYPE_SCALE_CHOOSER (cw_scale_chooser_get_type ())
G_DECLARE_FINAL_TYPE (CwScaleChooser, cw_scale_chooser, CW, SCALE_CHOOSER,
                      GtkWidget)

/* Offers the scales of @units first. */
GtkWidget *cw_scale_chooser_new (CwUnits units);

/* @mm_per_point: (out): 0: to be measured on the sheet. FALSE: what was typed
 * is no scale, which the chooser shows. */
gboolean cw_scale_chooser_get (CwScaleChooser *chooser, double *mm_per_point);

G_END_DECLS
