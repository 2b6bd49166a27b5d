/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-list.h"

typedef struct
{
  CwCutList *list;
  const CwPanelStock *stock;
  const CwPanelShare *share;
  GHashTable *walls;         /* elevation's id → its place + 1 */
  GHashTable *alike;         /* what a panel is → CwCutListPanel */
} Listing;

static void
append_face (GString *key, const CwRegion *face)
{
  for (gsize i = 0; i < cw_region_n_loops (face); i++)
    {
      const CwLoop loop = cw_region_loop (face, i);
      g_string_append_c (key, '|');
      for (gsize j = 0; j < loop.n_sides; j++)
        {
          const CwSide *side = &loop.sides[j];
          g_string_append_printf (
              key, " %" G_GINT64_FORMAT ",%" G_GINT64_FORMAT, side->start.x,
              side->start.y);
          if (side->is_arc)
            g_string_append_printf (key, "a%.0f,%.0f,%.0f,%.0f,%.6f,%.6f",
                                    side->cx, side->cy, side->rx, side->ry,
                                    side->from, side->to);
        }
    }
}

static void
append_placement (GString *key, const CwPanelPlan *plan,
                  const CwCutPlacement *it)
{
  const CwPiece *piece;

  cw_cut_piece (plan, it->blank, &piece);
  g_string_append_printf (
      key,
      ";%" G_GINT64_FORMAT ",%" G_GINT64_FORMAT ",%" G_GINT64_FORMAT
      ",%" G_GINT64_FORMAT,
      it->x, it->y, it->width, it->height);
  if (piece->shape || (piece->cuts & CW_CUT_HOLE))
    {
      g_autoptr (CwRegion) face = cw_cut_face (plan, it);
      append_face (key, face);
    }
}

static void
append_cut (GString *key, const CwCut *cut)
{
  g_string_append_printf (key,
                          "%c%" G_GINT64_FORMAT ",%" G_GINT64_FORMAT
                          ",%" G_GINT64_FORMAT,
                          cut->upright ? 'x' : 'y', cut->at, cut->from,
                          cut->to);
}

/* All that makes panels alike. (transfer full) */
static char *
key_of (const Listing *listing, const CwCutWhole *panel)
{
  const CwPanelPlan *plan = listing->share->plan;
  const CwCutRules *rules = &plan->cut->rules;
  GString *key = g_string_new (listing->stock->buildup->id);

  g_string_append_printf (key,
                          ":%u:%" G_GINT64_FORMAT ",%" G_GINT64_FORMAT,
                          listing->stock->panel, rules->length,
                          rules->height);
  for (guint i = 0; i < panel->placements->len; i++)
    append_placement (
        key, plan, &g_array_index (panel->placements, CwCutPlacement, i));
  for (guint i = 0; i < panel->cuts->len; i++)
    append_cut (key, &g_array_index (panel->cuts, CwCut, i));
  return g_string_free (key, FALSE);
}

static CwCutListPanel *
panel_new (const Listing *listing, guint panel, CwCutWhole *whole)
{
  CwCutListPanel *it = g_new0 (CwCutListPanel, 1);

  it->number = listing->list->panels->len + 1;
  it->buildup = listing->stock->buildup;
  it->plan = cw_panel_plan_ref (listing->share->plan);
  it->panel = panel;
  it->whole = whole;
  it->pieces = g_array_new (FALSE, FALSE, sizeof (CwCutListPiece));
  g_ptr_array_add (listing->list->panels, it);
  return it;
}

static void
panel_free (gpointer data)
{
  CwCutListPanel *panel = data;

  cw_panel_plan_unref ((CwPanelPlan *) panel->plan);
  cw_cut_whole_free (panel->whole);
  g_array_unref (panel->pieces);
  g_free (panel);
}

static guint
wall_of (const Listing *listing, const CwLayout *layout)
{
  const guint place = GPOINTER_TO_UINT (g_hash_table_lookup (
      listing->walls, layout->wall->elevation->id));

  g_assert (place > 0);
  return place - 1;
}

static void
add_pieces (const Listing *listing, CwCutListPanel *to,
            const CwCutWhole *panel)
{
  const CwPanelPlan *plan = listing->share->plan;

  for (guint i = 0; i < panel->placements->len; i++)
    {
      const guint blank
          = g_array_index (panel->placements, CwCutPlacement, i).blank;
      const CwPanelPiece *name
          = &g_array_index (plan->pieces, CwPanelPiece, blank);
      const CwCutListPiece piece
          = { wall_of (listing, cw_cut_piece (plan, blank, NULL)),
              name->piece, i, listing->share->times };

      g_array_append_val (to->pieces, piece);
    }
}

static void
add_share (const Listing *listing)
{
  const CwCutPlan *cut = listing->share->plan->cut;

  for (guint i = 0; cut && i < cut->panels->len; i++)
    {
      CwCutWhole *whole = cw_cut_whole_new (listing->share->plan, i);
      g_autofree char *key = key_of (listing, whole);
      CwCutListPanel *to = g_hash_table_lookup (listing->alike, key);

      if (!to)
        {
          to = panel_new (listing, i, whole);
          g_hash_table_insert (listing->alike, g_steal_pointer (&key), to);
        }
      to->n += listing->share->times;
      listing->list->n_panels += listing->share->times;
      add_pieces (listing, to, whole);
      if (to->whole != whole)
        cw_cut_whole_free (whole);
    }
}

static int
compare_pieces (gconstpointer a, gconstpointer b)
{
  const CwCutListPiece *one = a, *other = b;

  if (one->slot != other->slot)
    return one->slot < other->slot ? -1 : 1;
  if (one->wall != other->wall)
    return one->wall < other->wall ? -1 : 1;
  return one->piece < other->piece ? -1 : one->piece > other->piece;
}

/* In order, each once. */
static void
join_pieces (gpointer data, gpointer unused)
{
  GArray *pieces = ((CwCutListPanel *) data)->pieces;
  guint n = 0;

  g_array_sort (pieces, compare_pieces);
  for (guint i = 0; i < pieces->len; i++)
    {
      const CwCutListPiece piece
          = g_array_index (pieces, CwCutListPiece, i);
      CwCutListPiece *last
          = n ? &g_array_index (pieces, CwCutListPiece, n - 1) : NULL;

      if (last && compare_pieces (last, &piece) == 0)
        last->n += piece.n;
      else
        g_array_index (pieces, CwCutListPiece, n++) = piece;
    }
  g_array_set_size (pieces, n);
}

static CwCutList *
list_begin (const CwTakeoff *takeoff)
{
  CwCutList *list = g_new0 (CwCutList, 1);

  g_atomic_ref_count_init (&list->count);
  list->takeoff = cw_takeoff_ref (takeoff);
  list->panels = g_ptr_array_new_with_free_func (panel_free);
  return list;
}

/* Elevation's id → its place + 1. (transfer full) */
static GHashTable *
places_of_walls (const CwTakeoff *takeoff)
{
  GHashTable *places = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];
      g_hash_table_insert (places, wall->wall->elevation->id,
                           GUINT_TO_POINTER (i + 1));
    }
  return places;
}

CwCutList *
cw_cut_list_new (const CwTakeoff *takeoff, GCancellable *cancellable)
{
  g_return_val_if_fail (takeoff != NULL, NULL);

  g_autoptr (CwCutList) list = list_begin (takeoff);
  g_autoptr (GHashTable) walls = places_of_walls (takeoff);
  g_autoptr (GHashTable) alike
      = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (guint i = 0; i < takeoff->stocks->len; i++)
    {
      const CwPanelStock *stock = takeoff->stocks->pdata[i];

      for (guint j = 0; j < stock->shares->len; j++)
        {
          const CwPanelShare *share
              = &g_array_index (stock->shares, CwPanelShare, j);

          if (g_cancellable_is_cancelled (cancellable))
            return NULL;
          add_share (&(Listing) { list, stock, share, walls, alike });
        }
    }
  g_ptr_array_foreach (list->panels, join_pieces, NULL);
  return g_steal_pointer (&list);
}

CwCutList *
cw_cut_list_ref (const CwCutList *list)
{
  g_return_val_if_fail (list != NULL, NULL);

  g_atomic_ref_count_inc (&((CwCutList *) list)->count);
  return (CwCutList *) list;
}

void
cw_cut_list_unref (CwCutList *list)
{
  g_return_if_fail (list != NULL);

  if (!g_atomic_ref_count_dec (&list->count))
    return;
  g_ptr_array_unref (list->panels);
  cw_takeoff_unref (list->takeoff);
  g_free (list);
}

gboolean
cw_cut_list_panel_is_for (const CwCutListPanel *panel, guint wall)
{
  g_return_val_if_fail (panel != NULL, FALSE);

  for (guint i = 0; i < panel->pieces->len; i++)
    if (g_array_index (panel->pieces, CwCutListPiece, i).wall == wall)
      return TRUE;
  return FALSE;
}

const CwPiece *
cw_cut_list_piece (const CwCutList *list, const CwCutListPiece *piece,
                   const CwLayout **layout)
{
  g_return_val_if_fail (list != NULL && piece != NULL, NULL);

  const CwWallTakeoff *wall = list->takeoff->walls->pdata[piece->wall];

  if (layout)
    *layout = wall->layout;
  return &g_array_index (wall->layout->pieces, CwPiece, piece->piece);
}
