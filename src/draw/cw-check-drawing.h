/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where checks point, on the drawing of their elevation.
 */
#pragma once

#include "cw-checks.h"
#include "cw-display-list.h"

G_BEGIN_DECLS

/* A quiet sign with the letter of its severity at the first place of each
 * check of that elevation that is not waived: checks (element-type CwCheck). */
CwDisplayList *cw_check_drawing (const GPtrArray *checks,
                                 const char *elevation_id);

/* Places (element-type CwBox), all of them, lit. */
CwDisplayList *cw_check_drawing_lit (const GArray *places);

G_END_DECLS
