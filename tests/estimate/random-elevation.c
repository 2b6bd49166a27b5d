/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "random-elevation.h"

#include "estimate-cases.h"

/* Few places, so that sides lie on one another now and then. */
#define GRID CW_MM (250)
#define REVEAL CW_MM (90)

static CwLength
random_length (GRand *random, int from, int to)
{
  return GRID * g_rand_int_range (random, from, to + 1);
}

static void
put_random_head (GRand *random, CwNode *arch, CwLength width)
{
  CwArchHead head = g_rand_int_range (random, CW_ARCH_SEMICIRCULAR,
                                      CW_ARCH_POINTED + 1);
  CwLength rise = width / 2;

  if (head == CW_ARCH_SEGMENTAL)
    rise = width / g_rand_int_range (random, 2, 8);
  if (head == CW_ARCH_POINTED)
    rise += random_length (random, 0, 3);
  if (head == CW_ARCH_SEMI_ELLIPTICAL)
    rise = random_length (random, 1, 4);
  cw_node_put (arch, "head", head);
  cw_node_put (arch, "rise", rise);
}

static CwNode *
random_opening (GRand *random, guint index, CwLength width, CwLength height)
{
  static const CwNodeType *const types[]
      = { &cw_window_type, &cw_door_type, &cw_arch_type };
  const CwNodeType *type = types[g_rand_int_range (random, 0, 3)];
  CwNode *opening = cw_node_new (type);
  CwLength across = random_length (random, 2, 8);
  g_autofree char *id = g_strdup_printf ("o%u", index);

  cw_node_put_text (opening, "id", id);
  cw_node_put (opening, "x", random_length (random, -1, width / GRID));
  cw_node_put (opening, "y", type == &cw_door_type
                                 ? 0
                                 : random_length (random, 0, height / GRID));
  cw_node_put (opening, "width", across);
  cw_node_put (opening, "height", random_length (random, 2, 8));
  cw_node_put (opening, "reveal", REVEAL);
  if (type == &cw_arch_type)
    put_random_head (random, opening, across);
  return opening;
}

static CwNode *
random_unclad (GRand *random, CwLength width)
{
  CwLength right = random_length (random, 1, width / GRID);
  CwLength top = random_length (random, 1, 5);
  const CwCorner corners[]
      = { { { 0, 0 } }, { { right, 0 } }, { { right, top } }, { { 0, top } } };
  g_autoptr (CwList) list
      = cw_corners_to_list (corners, G_N_ELEMENTS (corners));
  CwNode *unclad = cw_node_new (&cw_unclad_type);

  cw_node_put_text (unclad, "id", "u1");
  cw_node_set_list (unclad, CW_UNCLAD_CORNERS, list);
  return unclad;
}

static CwNode *
random_stub_out (GRand *random, CwLength width, CwLength height)
{
  CwNode *stub_out = cw_node_new (&cw_stub_out_type);
  const gboolean is_round = g_rand_boolean (random);
  const CwLength across = CW_MM (g_rand_int_range (random, 60, 400));

  cw_node_put_text (stub_out, "id", "p");
  cw_node_put (stub_out, "shape",
               is_round ? CW_SHAPE_ROUND : CW_SHAPE_RECTANGULAR);
  cw_node_put (stub_out, "x", random_length (random, 1, width / GRID));
  cw_node_put (stub_out, "y", random_length (random, 1, height / GRID));
  cw_node_put (stub_out, "width", across);
  cw_node_put (stub_out, "height", is_round ? across : across / 2);
  return stub_out;
}

static CwNode *
random_band (GRand *random, CwLength width)
{
  CwNode *band = cw_node_new (&cw_band_type);

  cw_node_put_text (band, "id", "t");
  cw_node_put (band, "y", random_length (random, 1, 6));
  cw_node_put (band, "width", random_length (random, 1, width / GRID));
  cw_node_put (band, "height", CW_MM (150));
  cw_node_put (band, "projection", CW_MM (g_rand_int_range (random, 0, 50)));
  return band;
}

CwNode *
random_elevation (GRand *random, const char *name, gboolean with_more)
{
  CwLength width = random_length (random, 12, 60);
  CwLength left = random_length (random, 10, 24);
  CwLength right = random_length (random, 10, 24);
  CwLength apex = MAX (left, right) + random_length (random, 1, 12);
  const CwCorner corners[]
      = { { { 0, 0 }, 0, CW_EDGE_BASE },
          { { width, 0 }, 0, CW_EDGE_OUTSIDE_CORNER },
          { { width, right }, 0, CW_EDGE_RAKE },
          { { width / 3, apex }, 0, CW_EDGE_EAVE },
          { { 0, left }, 0, CW_EDGE_ABUTMENT } };
  g_autoptr (GPtrArray) items
      = g_ptr_array_new_with_free_func (cw_node_unref);
  guint n = g_rand_int_range (random, 0, 8);

  for (guint i = 0; i < n; i++)
    g_ptr_array_add (items, random_opening (random, i, width, left));
  if (g_rand_boolean (random))
    g_ptr_array_add (items, random_unclad (random, width));
  if (with_more)
    {
      g_ptr_array_add (items, random_stub_out (random, width, left));
      g_ptr_array_add (items, random_band (random, width));
    }
  return case_elevation_of (name, corners, G_N_ELEMENTS (corners), items);
}
