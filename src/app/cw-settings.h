/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the program remembers of how somebody likes it, from one start to the
 * next: small answers under a name each, in a file of the user's settings.
 * Nothing of a project is kept here. Where the file cannot be read or written
 * the program goes on with what it has: likings are no reason to stop.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* @otherwise: where nothing has been said yet. */
gboolean cw_settings_get_flag (const char *name, gboolean otherwise);
void cw_settings_set_flag (const char *name, gboolean value);

/* (transfer full) */
char *cw_settings_get_text (const char *name, const char *otherwise);
void cw_settings_set_text (const char *name, const char *value);

/* Forgets what was read, as at a start; for tests. */
void cw_settings_reload (void);

G_END_DECLS
