/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-whole.h"

#include "cw-cut-face.h"

typedef struct
{
  const CwPanelPlan *plan;
  CwCutWhole *whole;
} Gathering;

/* Where a rest lies on the panel. */
typedef struct
{
  CwLength x, y;
  gboolean turned;
  guint host;
} Place;

/* The first of the rests of @piece or of a later one. */
static guint
first_rest (const CwPanelPlan *plan, guint piece)
{
  guint low = 0, high = plan->rests->len;

  while (low < high)
    {
      const guint middle = (low + high) / 2;

      if (g_array_index (plan->rests, CwPanelRest, middle).host < piece)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}

/* A rest is told from the corner of its host that is lower left on the wall,
 * or where panels stand, with up and right for along and across; on the panel
 * a standing host lies with its foot at the left. */
static Place
place_of (const CwPanelPlan *plan, const CwPanelRest *rest,
          const CwCutPlacement *host, guint slot)
{
  const gboolean stands
      = cw_layout_stands (cw_cut_piece (plan, rest->host, NULL));
  Place place = { host->x, host->y, host->turned, slot };

  if (!stands && !host->turned)
    place = (Place) { rest->x, rest->y, FALSE, slot };
  else if (stands && !host->turned)
    place = (Place) { rest->x, host->height - rest->y - rest->height, FALSE,
                      slot };
  else if (!stands)
    place = (Place) { rest->y, host->height - rest->x - rest->width, TRUE,
                      slot };
  else
    place = (Place) { rest->y, rest->x, TRUE, slot };
  place.x += host->x;
  place.y += host->y;
  return place;
}

static CwCutPlacement
placed (const CwCutPlacement *it, const Place *place)
{
  CwCutPlacement result = *it;

  if (place->turned)
    {
      result.x = it->y;
      result.y = it->x;
      result.width = it->height;
      result.height = it->width;
      result.turned = !it->turned;
    }
  result.x += place->x;
  result.y += place->y;
  return result;
}

static CwCut
sawn_there (const CwCut *cut, const Place *place)
{
  CwCut result = *cut;

  result.upright = !cut->upright != !place->turned;
  result.at += result.upright ? place->x : place->y;
  result.from += result.upright ? place->y : place->x;
  result.to += result.upright ? place->y : place->x;
  return result;
}

static void
add_panel (const Gathering *gathering, const CwCutPanel *panel,
           const Place *place)
{
  CwCutWhole *whole = gathering->whole;

  for (guint i = 0; i < panel->placements->len; i++)
    {
      const CwCutPlacement it = placed (
          &g_array_index (panel->placements, CwCutPlacement, i), place);
      g_array_append_val (whole->placements, it);
    }
  for (guint i = 0; i < panel->cuts->len; i++)
    {
      const CwCut cut
          = sawn_there (&g_array_index (panel->cuts, CwCut, i), place);
      g_array_append_val (whole->cuts, cut);
      g_array_append_val (whole->hosts, place->host);
    }
}

static void
add_rest (const Gathering *gathering, const CwPanelRest *rest, guint slot)
{
  const CwCutPlacement *host = &g_array_index (
      gathering->whole->placements, CwCutPlacement, slot);
  const Place place = place_of (gathering->plan, rest, host, slot);
  const CwBox box
      = { place.x, place.y,
          place.x + (place.turned ? rest->height : rest->width),
          place.y + (place.turned ? rest->width : rest->height) };

  g_array_append_val (gathering->whole->rests, box);
  add_panel (gathering, rest->cut, &place);
}

/* Appends to the placements, which may have rests in turn. */
static void
add_rests_of (const Gathering *gathering, guint slot)
{
  const CwPanelPlan *plan = gathering->plan;
  const guint piece = g_array_index (gathering->whole->placements,
                                     CwCutPlacement, slot)
                          .blank;

  for (guint i = first_rest (plan, piece); i < plan->rests->len; i++)
    {
      const CwPanelRest *rest
          = &g_array_index (plan->rests, CwPanelRest, i);

      if (rest->host != piece)
        break;
      if (rest->cut)
        add_rest (gathering, rest, slot);
    }
}

CwCutWhole *
cw_cut_whole_new (const CwPanelPlan *plan, guint panel)
{
  g_return_val_if_fail (plan != NULL && plan->cut != NULL, NULL);
  g_return_val_if_fail (panel < plan->cut->panels->len, NULL);

  const Place origin = { 0, 0, FALSE, CW_CUT_NO_HOST };
  CwCutWhole *whole = g_new (CwCutWhole, 1);
  const Gathering gathering = { plan, whole };

  whole->placements = g_array_new (FALSE, FALSE, sizeof (CwCutPlacement));
  whole->cuts = g_array_new (FALSE, FALSE, sizeof (CwCut));
  whole->hosts = g_array_new (FALSE, FALSE, sizeof (guint));
  whole->rests = g_array_new (FALSE, FALSE, sizeof (CwBox));
  add_panel (&gathering, plan->cut->panels->pdata[panel], &origin);
  for (guint i = 0; i < whole->placements->len; i++)
    add_rests_of (&gathering, i);
  return whole;
}

void
cw_cut_whole_free (CwCutWhole *whole)
{
  g_return_if_fail (whole != NULL);

  g_array_unref (whole->placements);
  g_array_unref (whole->cuts);
  g_array_unref (whole->hosts);
  g_array_unref (whole->rests);
  g_free (whole);
}
