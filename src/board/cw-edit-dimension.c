/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A dimension by its handles.
 */
#include "cw-dimension.h"
#include "cw-edit.h"

CwNode *
cw_edit_dimension_end (const CwNode *dimension, guint end, CwPoint to)
{
  CwNode *by;

  g_return_val_if_fail (dimension && dimension->type == &cw_dimension_type,
                        NULL);

  by = cw_node_copy (dimension);
  cw_node_put (by, end == 0 ? "x" : "to-x", to.x);
  cw_node_put (by, end == 0 ? "y" : "to-y", to.y);
  cw_node_freeze (by);
  return by;
}

CwNode *
cw_edit_dimension_line (const CwNode *dimension, CwPoint at)
{
  const CwDimension *former = (const CwDimension *) dimension;
  CwNode *by;

  g_return_val_if_fail (dimension && dimension->type == &cw_dimension_type,
                        NULL);

  by = cw_node_copy (dimension);
  cw_node_put (by, "offset",
               cw_dimension_offset ((CwDimensionWay) former->way,
                                    cw_dimension_from (former),
                                    cw_dimension_to (former), at));
  cw_node_freeze (by);
  return by;
}
