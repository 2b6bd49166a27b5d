/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is said of the search for fewer panels.
 */
#pragma once

#include "cw-text-style.h"

G_BEGIN_DECLS

/* "Looking for fewer panels: 69 so far, 40 %". (transfer full) */
char *cw_search_words (guint n_panels, double share,
                       const CwTextStyle *style);

G_END_DECLS
