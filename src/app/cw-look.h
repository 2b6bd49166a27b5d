/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The program's own look on a display: colours for light and dark, one sheet
 * of styles, our icons.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define CW_RESOURCE_PATH "/org/cladwright/Cladwright"

typedef enum { CW_LOOK_SYSTEM, CW_LOOK_LIGHT, CW_LOOK_DARK } CwLook;

/* Templates, styles and icons; may be called again. */
void cw_app_register_resources (void);

/* Dresses the default display; may be called again. */
void cw_look_start (void);

void cw_look_choose (CwLook look);
/* More contrast than the look has; a desktop that asks for it has it anyway. */
void cw_look_set_contrast (gboolean more);
CwLook cw_look_from_name (const char *name);   /* "light", "dark", else system */
gboolean cw_look_is_dark (void);

G_END_DECLS
