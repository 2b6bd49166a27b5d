/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The scales that people name, and the choice among them.
 */
#include <math.h>

#include "cw-i18n.h"
#include "cw-takeoff-pdf.h"

#define POINTS_PER_MM (72 / 25.4)

typedef struct
{
  double ratio;
  const char *label;
} NamedScale;

/* ISO 5455: full size, then reductions; the last row of the standard is
 * 1 : 10 000 and it allows whole powers of ten beyond. */
static const NamedScale metric_scales[] = {
  { 1, "1:1" },       { 2, "1:2" },       { 5, "1:5" },
  { 10, "1:10" },     { 20, "1:20" },     { 50, "1:50" },
  { 100, "1:100" },   { 200, "1:200" },   { 500, "1:500" },
  { 1000, "1:1000" }, { 2000, "1:2000" }, { 5000, "1:5000" },
  { 10000, "1:10 000" },
};

/* The architects' scales: x inches on paper to a foot, so the ratio is
 * 12 / x. 1/16 is found on many rules beside the usual ten. */
static const NamedScale us_scales[] = {
  { 4, "3″ = 1′-0″" },       { 8, "1 1/2″ = 1′-0″" },
  { 12, "1″ = 1′-0″" },      { 16, "3/4″ = 1′-0″" },
  { 24, "1/2″ = 1′-0″" },    { 32, "3/8″ = 1′-0″" },
  { 48, "1/4″ = 1′-0″" },    { 64, "3/16″ = 1′-0″" },
  { 96, "1/8″ = 1′-0″" },    { 128, "3/32″ = 1′-0″" },
  { 192, "1/16″ = 1′-0″" },
};

static const struct
{
  const NamedScale *scales;
  guint n;
} series[] = {
  [CW_UNITS_US] = { us_scales, G_N_ELEMENTS (us_scales) },
  [CW_UNITS_METRIC] = { metric_scales, G_N_ELEMENTS (metric_scales) },
};

double
cw_named_scale_that_fits (CwUnits units, double width, double height,
                          double room_width, double room_height,
                          const char **label)
{
  g_return_val_if_fail ((guint) units < G_N_ELEMENTS (series), 0);
  g_return_val_if_fail (room_width > 0 && room_height > 0, 0);

  const double least = POINTS_PER_MM
                       * MAX (width / room_width, height / room_height);
  for (guint i = 0; i < series[units].n; i++)
    {
      const NamedScale *scale = &series[units].scales[i];
      if (scale->ratio < least * (1 - 1e-9))
        continue;
      if (label)
        *label = scale->label;
      return scale->ratio;
    }
  if (label)
    *label = N_ ("fitted to the page, no named scale");
  return ceil (least);
}
