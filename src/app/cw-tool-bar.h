/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The tools of the board, each a picture over its name, and what is seen of
 * the drawing. Works through the actions "win.tool", "win.fit", "win.closer",
 * "win.farther" and those of the menu of layers.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define CW_TYPE_TOOL_BAR (cw_tool_bar_get_type ())
G_DECLARE_FINAL_TYPE (CwToolBar, cw_tool_bar, CW, TOOL_BAR, GtkWidget)

G_END_DECLS
