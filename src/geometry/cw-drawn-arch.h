/* SPDX-License-Identifier: GPL-3.0-or-later */
#pragma once

#include "cw-drawn-shapes.h"

G_BEGIN_DECLS

/* Follows the lines from the top of one jamb to that of the other. FALSE when
 * they are not joined by an arch that is one; else @shape gets its top and
 * head, with left, right and springing given. */
gboolean cw_drawn_arch_follow (const CwDrawnLines *lines,
                               CwDrawnShape *shape);

G_END_DECLS
