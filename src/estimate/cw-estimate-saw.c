/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Saw cuts, as the crew makes them: those of the cut plan, that bring a blank
 * out of its panel, and then what is sawn out of the blank. A side of a blank
 * is a cut of the plan, or no cut at all where it is the panel's own edge.
 */
#include "cw-estimate-private.h"
#include "cw-piece-cuts.h"

static void
add_cut (CwSawFigures *saw, const CwPieceCut *cut)
{
  if (cut->is_rasped)
    saw->rasped += cut->length;
  else if (cut->kind == CW_CUT_CURVE)
    saw->curves += cut->length;
  else if (cut->kind == CW_CUT_RAKE)
    saw->rakes += cut->length;
  else if (cut->kind == CW_CUT_NOTCH)
    saw->notches += cut->length;
  else if (cut->kind == CW_CUT_HOLE)
    {
      saw->round_holes += cut->curved;
      saw->notches += cut->length - cut->curved;
    }
}

/* Most pieces are boxes that the plan alone saws. */
static gboolean
has_own_cuts (const CwPiece *piece)
{
  return piece->kind == CW_PIECE_RASPED || piece->shape
         || (piece->cuts & CW_CUT_HOLE);
}

static void
saw_piece (CwSawFigures *saw, const CwLayout *layout, const CwPiece *piece)
{
  g_autoptr (GArray) cuts = NULL;

  if (!has_own_cuts (piece))
    return;
  cuts = cw_piece_cuts (layout, piece);
  for (guint i = 0; i < cuts->len; i++)
    add_cut (saw, &g_array_index (cuts, CwPieceCut, i));
}

static void
add_lines (GPtrArray *quantities, const CwSawFigures *saw)
{
  CwQuantity *straight = cw_quantity_add (
      quantities, "saw.length", saw->plan + saw->notches + saw->rakes);

  cw_quantity_step (straight,
                    N_ ("cuts of the plan {0}, notches and rectangular holes "
                        "{1}, rakes {2}"),
                    { saw->plan, "m" }, { saw->notches, "m" },
                    { saw->rakes, "m" });
  cw_quantity_step (straight, N_ ("rasped sides of {0} are not in it"),
                    { saw->rasped, "m" });
  cw_quantity_step (cw_quantity_add (quantities, "saw.curve",
                                     saw->curves + saw->round_holes),
                    N_ ("arcs {0}, round holes {1}"), { saw->curves, "m" },
                    { saw->round_holes, "m" });
}

void
cw_estimate_saw (CwWallEstimate *estimate)
{
  const GArray *pieces = estimate->layout->pieces;
  CwSawFigures *saw = &estimate->figures->saw;

  for (guint i = 0; i < estimate->mix->plans->len; i++)
    saw->plan += cw_panel_plan_saw (estimate->mix->plans->pdata[i]);
  for (guint i = 0; i < pieces->len; i++)
    saw_piece (saw, estimate->layout,
               &g_array_index (pieces, CwPiece, i));
  add_lines (estimate->quantities, saw);
}

static void
add_wall (CwSawFigures *sum, const CwWallTakeoff *wall)
{
  const double count = cw_estimate_count (wall);
  const CwSawFigures *saw = &wall->figures->saw;

  sum->notches += saw->notches * count;
  sum->rakes += saw->rakes * count;
  sum->curves += saw->curves * count;
  sum->round_holes += saw->round_holes * count;
  sum->rasped += saw->rasped * count;
}

static void
add_stock (CwSawFigures *sum, const CwPanelStock *stock)
{
  for (guint i = 0; i < stock->shares->len; i++)
    {
      const CwPanelShare *share
          = &g_array_index (stock->shares, CwPanelShare, i);

      sum->plan += cw_panel_plan_saw (share->plan) * share->times;
    }
}

void
cw_estimate_project_saw (CwProjectEstimate *estimate)
{
  const CwTakeoff *takeoff = estimate->takeoff;
  CwSawFigures sum = { .plan = 0 };
  guint n_pieces = 0;

  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];

      n_pieces += wall->layout->pieces->len;
      add_wall (&sum, wall);
    }
  for (guint i = 0; i < takeoff->stocks->len; i++)
    add_stock (&sum, takeoff->stocks->pdata[i]);
  if (n_pieces > 0)
    add_lines (estimate->quantities, &sum);
}
