/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where the example project is: installed, or in the tree the program was
 * built in.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

/* (transfer full) (nullable): NULL when it was not installed */
GFile *cw_example_file (void);

G_END_DECLS
