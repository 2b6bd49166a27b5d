/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tapers: under a rake, beside a curve or over a sloping ground the end of a
 * course runs out to nothing, and a first piece that is long enough may still
 * be a sliver.
 *
 *        ____________
 *      /|            |     least: as high as wide
 *    /  |            |
 *   |<->|
 */
#pragma once

#include "cw-row.h"

G_BEGIN_DECLS

/*
 * cw_taper_least:
 * @least: of a piece, either way
 * @most: of a piece along
 * @along: a length of @run that ends where the run does
 * @at_low: the piece at its low end; else at its high end
 *
 * Returns: how long the piece at that end must be so that it is @least long
 *   and, if it can be, @least high; in whole millimetres beyond @least
 */
CwLength cw_taper_least (const CwFrame *frame, const CwRow *row,
                         const CwRowRun *run, CwInterval along,
                         CwLength least, CwLength most, gboolean at_low);

G_END_DECLS
