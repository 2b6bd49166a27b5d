/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-point.h"
#include "cw-exact.h"

double
cw_box_area (const CwBox *box)
{
  g_return_val_if_fail (box != NULL, 0);

  if (box->left >= box->right || box->bottom >= box->top)
    return 0;
  return (double) ((CwWide) cw_box_width (box) * cw_box_height (box)) / 1e18;
}
