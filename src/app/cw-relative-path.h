/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Paths of sheets as project files write them: relative, with slashes.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

/* From @folder to @file, by way of ".." where needed; the full path when they
 * share no folder but the root, or when either is not local.
 * (transfer full) */
char *cw_relative_path (GFile *folder, GFile *file);

G_END_DECLS
