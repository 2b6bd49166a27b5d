/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Stub-outs and the pieces that they come through.
 */
#include "cw-checks-private.h"

typedef struct
{
  CwBox box;
  guint n_pieces;       /* that it cuts into */
  CwLength edge;        /* to the nearest edge of its piece */
} Hole;

static CwLength
edge_distance (const CwBox *hole, const CwBox *piece)
{
  return MIN (MIN (hole->left - piece->left, piece->right - hole->right),
              MIN (hole->bottom - piece->bottom, piece->top - hole->top));
}

static Hole
find_hole (const CwLayout *layout, const CwStubOut *stub_out)
{
  g_autoptr (CwRegion) shape = cw_stub_out_shape (stub_out, TRUE);
  Hole hole = { .box = cw_region_box (shape) };

  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);

      if (!cw_box_overlaps (&hole.box, &piece->box))
        continue;
      hole.n_pieces++;
      hole.edge = edge_distance (&hole.box, &piece->box);
    }
  return hole;
}

static void
add_across_joint (CwChecking *checking, const CwStubOut *stub_out,
                  const Hole *hole)
{
  CwCheck *check = cw_check_add (
      checking, "stub-out-across-joint", stub_out->id,
      hole->n_pieces > 1
          ? g_strdup_printf (_ ("The hole for stub-out %s cuts into %u "
                               "pieces."),
                             stub_out->id, hole->n_pieces)
          : g_strdup_printf (_ ("The hole for stub-out %s runs over its "
                               "piece's edge."),
                             stub_out->id));

  cw_check_add_figure (check, hole->n_pieces);
  cw_check_add_place (check, hole->box);
}

static void
add_near_edge (CwChecking *checking, const CwStubOut *stub_out,
               const Hole *hole, CwLength least)
{
  g_autofree char *left = cw_check_length (checking, hole->edge);
  g_autofree char *wanted = cw_check_length (checking, least);
  CwCheck *check = cw_check_add (
      checking, "stub-out-near-edge", stub_out->id,
      g_strdup_printf (_ ("The hole for stub-out %s leaves %s to its piece's "
                         "edge; the limit is %s."),
                       stub_out->id, left, wanted));

  cw_check_add_figure (check, cw_length_in_m (hole->edge));
  cw_check_add_place (check, hole->box);
}

static void
check_one (CwChecking *checking, const CwStubOut *stub_out)
{
  const CwWall *wall = checking->wall->wall;
  const CwLength least = wall->limits->stub_out_edge;
  const Hole hole = find_hole (checking->wall->layout, stub_out);

  if (!cw_region_contains (wall->net, cw_point (stub_out->x, stub_out->y)))
    {
      CwCheck *check = cw_check_add (
          checking, "stub-out-outside", stub_out->id,
          g_strdup_printf (_ ("Stub-out %s does not come through the "
                             "cladding."),
                           stub_out->id));
      cw_check_add_place (check, hole.box);
    }
  else if (hole.n_pieces > 1 || (hole.n_pieces == 1 && hole.edge < 0))
    add_across_joint (checking, stub_out, &hole);
  else if (hole.n_pieces == 1 && hole.edge < least)
    add_near_edge (checking, stub_out, &hole, least);
}

static void
tell_of_services (CwChecking *checking)
{
  const GPtrArray *stub_outs = checking->wall->wall->stub_outs;
  CwCheck *check = cw_check_add (
      checking, "services-behind", NULL,
      g_strdup_printf (g_dngettext (GETTEXT_PACKAGE,
                                    "%u stub-out comes through.",
                                    "%u stub-outs come through.",
                                    stub_outs->len),
                       stub_outs->len));
  cw_check_set_detail (check, g_strdup (_ ("What comes through runs in the "
                                          "wall behind.")));

  cw_check_add_figure (check, stub_outs->len);
  for (guint i = 0; i < stub_outs->len; i++)
    {
      g_autoptr (CwRegion) shape
          = cw_stub_out_shape (stub_outs->pdata[i], TRUE);
      cw_check_add_place (check, cw_region_box (shape));
    }
}

void
cw_check_stub_outs (CwChecking *checking)
{
  const GPtrArray *stub_outs = checking->wall->wall->stub_outs;

  for (guint i = 0; i < stub_outs->len; i++)
    check_one (checking, stub_outs->pdata[i]);
  if (stub_outs->len > 0)
    tell_of_services (checking);
}
