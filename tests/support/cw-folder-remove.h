/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The end of a test's folder.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Removes a folder and all in it; links are removed, never followed.
 * Returns: whether nothing of it is left */
gboolean cw_folder_remove (const char *folder);

G_END_DECLS
