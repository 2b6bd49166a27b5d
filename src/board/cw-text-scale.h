/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* How much larger than usual the user wants texts in all programs. */
double cw_text_scale_of (GtkWidget *widget);

G_END_DECLS
