/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Scales of plan sheets: stated ones, and ones measured by two points.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

typedef struct
{
  const char *label;      /* "1/4\" = 1'-0\"", "1:100" */
  CwUnits units;
  double ratio;           /* building : paper */
} CwStatedScale;

/* Architects' scales (12 / x) and ISO 5455 reductions. */
extern const CwStatedScale cw_stated_scales[];
extern const guint cw_n_stated_scales;

/* "1:75", "1/4\" = 1'", "1/4\"=1'-0\"": the ratio, or an error that points at
 * the character. */
gboolean cw_sheet_scale_parse (const char *text, double *ratio, GError **error);

/* mm of building per point: ratio × 25.4 / 72. */
double cw_sheet_scale_from_ratio (double ratio);

/* From two page points (in points) and the true length between them.
 * FALSE when they are too near each other to tell (under 1 pt). */
gboolean cw_sheet_scale_measure (double x0, double y0, double x1, double y1,
                                 CwLength length, double *mm_per_point);

G_END_DECLS
