/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* The day it is here, "2026-03-31", as projects and price books keep days.
 * (transfer full) */
char *cw_today (void);

G_END_DECLS
