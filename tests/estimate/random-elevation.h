/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Random walls for the tests of the estimate: a base on the origin, an
 * outside corner on the right, a rake and an eave that lean, an abutment on
 * the left; openings that touch, overlap and stick out, an unclad area.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

/* @with_more: also a stub-out and a band. (transfer full) */
CwNode *random_elevation (GRand *random, const char *name,
                          gboolean with_more);

G_END_DECLS
