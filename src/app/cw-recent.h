/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The projects opened lately, shared with the desktop's own list.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define CW_MEDIA_TYPE "application/vnd.cladwright.project+xml"

void cw_recent_add (GFile *file);

/* A menu of the latest projects, newest first, that follows the list; its
 * entries call "app.open-recent" with the URI. (transfer full) */
GMenuModel *cw_recent_menu_new (void);

G_END_DECLS
