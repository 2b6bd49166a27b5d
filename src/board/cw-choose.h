/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Choosing what belongs together on an elevation.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

/* Ids of every item. (transfer full) */
char **cw_choose_all (const CwElevation *elevation);

/* Of every item of a kind that is among @ids: all windows, all stub-outs …
 * (transfer full) */
char **cw_choose_kind (const CwElevation *elevation, const char *const *ids);

/* Of every opening that has a mark which one of @ids has. (transfer full) */
char **cw_choose_mark (const CwElevation *elevation, const char *const *ids);

G_END_DECLS
