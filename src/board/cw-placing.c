/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-placing.h"

static const CwSheet *
sheet_of (const CwProject *project, const CwElevation *elevation)
{
  if (elevation)
    return cw_project_sheet (project, elevation->sheet);
  return cw_list_length (project->sheets) > 0 ? cw_list_at (project->sheets, 0)
                                              : NULL;
}

CwPlacing
cw_placing_of (const CwProject *project, const CwElevation *elevation)
{
  double assumed = CW_PLACING_ASSUMED_RATIO * 25.4 / 72;
  CwPlacing placing = { .across = assumed, .along = assumed, .assumed = TRUE };
  const CwScale *scale;

  g_return_val_if_fail (project != NULL, placing);

  placing.sheet = sheet_of (project, elevation);
  if (elevation)
    {
      placing.at_x = cw_decimal_to_double (elevation->at_x);
      placing.at_y = cw_decimal_to_double (elevation->at_y);
    }
  scale = placing.sheet ? (const CwScale *) placing.sheet->scale : NULL;
  if (scale && scale->across > 0 && scale->along > 0)
    {
      placing.across = cw_decimal_to_double (scale->across);
      placing.along = cw_decimal_to_double (scale->along);
      placing.assumed = FALSE;
    }
  return placing;
}

void
cw_placing_to_page (const CwPlacing *placing, double x_nm, double y_nm,
                    double *x, double *y)
{
  *x = placing->at_x + x_nm / 1e6 / placing->across;
  *y = placing->at_y - y_nm / 1e6 / placing->along;
}

void
cw_placing_to_wall (const CwPlacing *placing, double x, double y,
                    double *x_nm, double *y_nm)
{
  *x_nm = (x - placing->at_x) * placing->across * 1e6;
  *y_nm = (placing->at_y - y) * placing->along * 1e6;
}
