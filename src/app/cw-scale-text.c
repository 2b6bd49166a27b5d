/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-scale-text.h"

#include <math.h>
#include <string.h>

#define SAME 0.001
#define NEAR 0.01

/* By preference in @units. (nullable) */
static const CwStatedScale *
stated_scale (double ratio, CwUnits units, double slack)
{
  const CwStatedScale *found = NULL;
  for (guint i = 0; i < cw_n_stated_scales; i++)
    {
      const CwStatedScale *scale = &cw_stated_scales[i];
      if (fabs (ratio / scale->ratio - 1) <= slack
          && (!found || scale->units == units))
        found = scale;
    }
  return found;
}

/* In place; @number has a point. */
static void
without_idle_zeros (char *number)
{
  gsize n = strlen (number);
  while (n > 0 && number[n - 1] == '0')
    n--;
  if (n > 0 && number[n - 1] == '.')
    n--;
  number[n] = '\0';
}

char *
cw_scale_text_of (double mm_per_point, CwUnits units)
{
  double ratio = mm_per_point / cw_sheet_scale_from_ratio (1);
  const CwStatedScale *scale = stated_scale (ratio, units, SAME);
  if (scale)
    return g_strdup (scale->label);
  char number[G_ASCII_DTOSTR_BUF_SIZE];
  g_ascii_formatd (number, sizeof number, ratio < 100 ? "%.2f" : "%.1f",
                   ratio);
  without_idle_zeros (number);
  return g_strconcat ("1:", number, NULL);
}

const CwStatedScale *
cw_scale_near (double mm_per_point, CwUnits units)
{
  double ratio = mm_per_point / cw_sheet_scale_from_ratio (1);
  return stated_scale (ratio, units, SAME) ? NULL
                                           : stated_scale (ratio, units, NEAR);
}

char *
cw_scale_text (const CwSheet *sheet, CwUnits units)
{
  const CwScale *scale = (const CwScale *) sheet->scale;
  if (!scale || scale->across <= 0)
    return NULL;
  double one = (double) CW_DECIMAL_ONE;
  g_autofree char *across
      = cw_scale_text_of ((double) scale->across / one, units);
  if (fabs ((double) scale->along / (double) scale->across - 1) <= SAME)
    return g_steal_pointer (&across);
  g_autofree char *along
      = cw_scale_text_of ((double) scale->along / one, units);
  return g_strdup_printf ("%s × %s", across, along);
}
