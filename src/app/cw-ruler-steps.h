/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How far apart the marks of a ruler stand.
 */
#pragma once

#include "cw-length.h"

G_BEGIN_DECLS

typedef struct
{
  CwLength labelled;      /* between marks with a number */
  CwLength fine;          /* between all marks; divides the former */
} CwRulerSteps;

/* The least steps in the trade's own lengths that leave @label_room pixels
 * between numbers and 6 pixels between marks. */
CwRulerSteps cw_ruler_steps (CwUnits units, double nm_per_pixel,
                             double label_room);

G_END_DECLS
