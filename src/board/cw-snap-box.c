/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-snap.h"

static gboolean
is_of_note (CwSnapKind kind)
{
  return kind != CW_SNAP_NONE && kind != CW_SNAP_GRID;
}

/* Whether moving by @a is the better choice over @b. */
static gboolean
is_better (CwSnapKind a_kind, CwLength a, CwSnapKind b_kind, CwLength b)
{
  if (is_of_note (a_kind) != is_of_note (b_kind))
    return is_of_note (a_kind);
  return is_of_note (a_kind) && ABS (a) < ABS (b);
}

CwSnap
cw_snap_box (const CwSnapField *field, const CwBox *box, CwPoint *move)
{
  CwPoint corners[] = {
    { box->left, box->bottom },
    { box->right, box->top },
    { box->left, box->top },
    { box->right, box->bottom },
  };
  CwSnap best = cw_snap (field, corners[0]);

  *move = cw_point (best.at.x - corners[0].x, best.at.y - corners[0].y);
  for (guint i = 1; i < G_N_ELEMENTS (corners); i++)
    {
      CwSnap snap = cw_snap (field, corners[i]);
      CwPoint by = { snap.at.x - corners[i].x, snap.at.y - corners[i].y };

      if (is_better (snap.x_kind, by.x, best.x_kind, move->x))
        {
          move->x = by.x;
          best.at.x = snap.at.x;
          best.x_kind = snap.x_kind;
          best.x_from = snap.x_from;
        }
      if (is_better (snap.y_kind, by.y, best.y_kind, move->y))
        {
          move->y = by.y;
          best.at.y = snap.at.y;
          best.y_kind = snap.y_kind;
          best.y_from = snap.y_from;
        }
    }
  return best;
}

CwLength
cw_snap_grid (CwUnits units, double nm_per_pixel)
{
  static const CwLength metric[]
      = { CW_MM (1),  CW_MM (2),  CW_MM (5),  CW_MM (10),
          CW_MM (20), CW_MM (50), CW_MM (100) };
  static const CwLength us[]
      = { CW_NM_PER_INCH / 16, CW_NM_PER_INCH / 8, CW_NM_PER_INCH / 4,
          CW_NM_PER_INCH / 2,  CW_INCHES (1),      CW_INCHES (2),
          CW_INCHES (3) };
  const CwLength *steps = units == CW_UNITS_US ? us : metric;
  CwLength grid = steps[0];

  G_STATIC_ASSERT (G_N_ELEMENTS (us) == G_N_ELEMENTS (metric));
  for (guint i = 1; i < G_N_ELEMENTS (metric); i++)
    if ((double) steps[i] <= nm_per_pixel)
      grid = steps[i];
  return grid;
}
