/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-text-scale.h"

double
cw_text_scale_of (GtkWidget *widget)
{
  int dpi = 0;

  g_object_get (gtk_widget_get_settings (widget), "gtk-xft-dpi", &dpi, NULL);
  return dpi > 0 ? CLAMP (dpi / (96.0 * 1024), 0.5, 4) : 1;
}
