/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An elevation as a small true drawing, for lists.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-takeoff.h"

G_BEGIN_DECLS

#define CW_TYPE_ELEVATION_PICTURE (cw_elevation_picture_get_type ())
G_DECLARE_FINAL_TYPE (CwElevationPicture, cw_elevation_picture, CW,
                      ELEVATION_PICTURE, GtkWidget)

GtkWidget *cw_elevation_picture_new (void);

/* @takeoff: (nullable): nothing is drawn without one */
void cw_elevation_picture_show (CwElevationPicture *picture,
                                const CwWallTakeoff *takeoff);

G_END_DECLS
