/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fasteners of all pieces.
 */
#include "cw-estimate-private.h"

void
cw_estimate_fasteners (CwWallEstimate *estimate)
{
  const CwFastener *fastener
      = (const CwFastener *) estimate->wall->buildup->fastener;
  const CwLayout *layout = estimate->layout;
  double n = 0;

  if (fastener == NULL)
    return;
  for (guint i = 0; i < layout->pieces->len; i++)
    n += cw_layout_piece_fasteners (
        layout, &g_array_index (layout->pieces, CwPiece, i));
  estimate->figures->fasteners = n;
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "fastener.count", n),
      N_ ("{0} pieces on {1} studs, where each crosses: at most {2} apart, "
          "{3} from its edges, at least two"),
      { layout->pieces->len, "" }, { layout->studs->len, "" },
      { cw_estimate_mm (fastener->spacing), "mm" },
      { cw_estimate_mm (fastener->edge), "mm" });
}

static double
box_size (const CwNode *layer)
{
  return (double) ((const CwFastener *) layer)->per_box;
}

void
cw_estimate_fastener_packages (CwProjectEstimate *estimate)
{
  static const CwPackaging packaging = {
    .key = "fastener.boxes",
    .slot = CW_BUILDUP_FASTENER,
    .figure = G_STRUCT_OFFSET (CwWallFigures, fasteners),
    .order_unit = N_ ("box"),
    .sentence = N_ ("{0} fasteners, {2} a box: {3} boxes"),
    .unit = "",
    .size = box_size,
  };

  cw_estimate_add_packages (estimate, &packaging);
}
