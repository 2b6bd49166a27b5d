/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-ruler-steps.h"

#define MARK_ROOM 6.0

static const CwRulerSteps metric[] = {
  { CW_MM (10), CW_MM (1) },         { CW_MM (50), CW_MM (10) },
  { CW_MM (100), CW_MM (10) },       { CW_MM (200), CW_MM (50) },
  { CW_MM (500), CW_MM (100) },      { CW_MM (1000), CW_MM (100) },
  { CW_MM (2000), CW_MM (500) },     { CW_MM (5000), CW_MM (1000) },
  { CW_MM (10000), CW_MM (1000) },   { CW_MM (20000), CW_MM (5000) },
  { CW_MM (50000), CW_MM (10000) },  { CW_MM (100000), CW_MM (10000) },
  { CW_MM (500000), CW_MM (100000) },
};

static const CwRulerSteps us[] = {
  { CW_INCHES (1), CW_INCHES (1) / 8 },  { CW_INCHES (3), CW_INCHES (1) / 2 },
  { CW_INCHES (6), CW_INCHES (1) },      { CW_INCHES (12), CW_INCHES (1) },
  { CW_INCHES (12), CW_INCHES (3) },     { CW_INCHES (24), CW_INCHES (6) },
  { CW_INCHES (60), CW_INCHES (12) },    { CW_INCHES (120), CW_INCHES (12) },
  { CW_INCHES (240), CW_INCHES (60) },   { CW_INCHES (600), CW_INCHES (120) },
  { CW_INCHES (1200), CW_INCHES (120) }, { CW_INCHES (6000), CW_INCHES (1200) },
};

CwRulerSteps
cw_ruler_steps (CwUnits units, double nm_per_pixel, double label_room)
{
  const CwRulerSteps *steps = units == CW_UNITS_METRIC ? metric : us;
  gsize n = units == CW_UNITS_METRIC ? G_N_ELEMENTS (metric)
                                     : G_N_ELEMENTS (us);
  gsize i = 0;
  while (i + 1 < n
         && ((double) steps[i].labelled < label_room * nm_per_pixel
             || (double) steps[i].fine < MARK_ROOM * nm_per_pixel))
    i++;
  return steps[i];
}
