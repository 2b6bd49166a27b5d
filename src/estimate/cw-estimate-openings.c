/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Openings: how many there are, and their sides and reveals where they meet
 * cladding.
 */
#include "cw-estimate-private.h"

/* Each side of each opening has a tag of its own while sides are told apart:
 * the lowest two bits are its CwOpeningSide. Far over the tags of a wall. */
#define FIRST_TAG 1024
#define TAG_OF(index, side) (FIRST_TAG + 4 * (index) + (side))

static CwWallOpening *
opening_at (const CwWall *wall, guint index)
{
  return &g_array_index (wall->openings, CwWallOpening, index);
}

static void
count_variant (CwWallEstimate *estimate, const char *variant)
{
  CwQuantity *line = cw_quantities_line (estimate->quantities,
                                         "opening.count", variant);

  if (line->steps->len == 0)
    cw_quantity_step (line, N_ ("counted on the wall"));
  line->amount++;
}

static void
count_kinds (CwWallEstimate *estimate)
{
  static const struct
  {
    const CwNodeType *type;
    const char *variant;
  } kinds[] = {
    { &cw_window_type, "window" },
    { &cw_door_type, "door" },
    { &cw_arch_type, "arch" },
  };
  const CwWall *wall = estimate->wall;

  for (guint kind = 0; kind < G_N_ELEMENTS (kinds); kind++)
    for (guint i = 0; i < wall->openings->len; i++)
      if (opening_at (wall, i)->opening->node.type == kinds[kind].type)
        count_variant (estimate, kinds[kind].variant);
}

char *
cw_estimate_mark_variant (const CwMark *mark)
{
  return mark ? g_strconcat ("mark ", *mark->name ? mark->name : mark->id,
                             NULL)
              : NULL;
}

static void
count_marks (CwWallEstimate *estimate)
{
  const CwWall *wall = estimate->wall;

  for (guint i = 0; i < wall->openings->len; i++)
    {
      g_autofree char *variant
          = cw_estimate_mark_variant (opening_at (wall, i)->mark);

      if (variant)
        count_variant (estimate, variant);
    }
}

void
cw_estimate_opening_count (CwWallEstimate *estimate)
{
  CwQuantity *all = cw_quantity_add (estimate->quantities, "opening.count",
                                     estimate->wall->openings->len);

  cw_quantity_step (all, N_ ("counted on the wall"));
  count_kinds (estimate);
  count_marks (estimate);
}

/* An opening's shape with tags that say whose side each is. */
static CwRegion *
shape_with_tags (const CwWallOpening *opening, guint index)
{
  CwLoop loop = cw_region_loop (opening->shape, 0);
  g_autofree CwSide *sides
      = g_memdup2 (loop.sides, loop.n_sides * sizeof (CwSide));

  for (gsize i = 0; i < loop.n_sides; i++)
    sides[i].tag = TAG_OF (index, sides[i].tag);
  return cw_region_new_loop (sides, loop.n_sides);
}

CwRegion *
cw_estimate_opened_outline (const CwWall *wall)
{
  g_autoptr (GPtrArray) shapes
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_region_unref);
  g_autoptr (CwRegion) joined = NULL;

  for (guint i = 0; i < wall->openings->len; i++)
    g_ptr_array_add (shapes, shape_with_tags (opening_at (wall, i), i));
  joined = cw_region_union ((const CwRegion *const *) shapes->pdata,
                            shapes->len);
  return cw_region_subtract (wall->outline, joined);
}

gboolean
cw_estimate_opening_of_tag (guint tag, guint *index, CwOpeningSide *side)
{
  if (tag < FIRST_TAG)
    return FALSE;
  *index = (tag - FIRST_TAG) / 4;
  *side = (CwOpeningSide) ((tag - FIRST_TAG) % 4);
  return TRUE;
}

static void
add_side (GArray *lengths, const CwLoop *loop, gsize index)
{
  const CwSide *side = &loop->sides[index];
  CwOpeningSides *sides;
  CwOpeningSide which;
  guint opening;
  double length;

  if (!cw_estimate_opening_of_tag (side->tag, &opening, &which))
    return;
  sides = &g_array_index (lengths, CwOpeningSides, opening);
  length = cw_side_length (side, cw_loop_end (loop, index));
  switch (which)
    {
    case CW_OPENING_SIDE_HEAD:
      sides->head += length;
      break;
    case CW_OPENING_SIDE_JAMB:
      sides->jamb += length;
      break;
    case CW_OPENING_SIDE_SILL:
      sides->sill += length;
      break;
    }
}

static void
measure_sides (const CwRegion *opened, GArray *lengths)
{
  for (gsize i = 0; i < cw_region_n_loops (opened); i++)
    {
      CwLoop loop = cw_region_loop (opened, i);

      for (gsize j = 0; j < loop.n_sides; j++)
        add_side (lengths, &loop, j);
    }
}

/* A sill that meets no cladding has no corners: the opening stands on the
 * base. */
static void
finish_sides (CwOpeningSides *sides, const CwOpening *opening)
{
  if (sides->head > 0 || sides->jamb > 0)
    sides->n_corners += 2;
  if (sides->sill > 0)
    sides->n_corners += 2;
  if (opening->node.type == &cw_door_type)
    sides->sill = 0;
  sides->reveal = (sides->head + sides->jamb + sides->sill)
                  * cw_length_in_m (opening->reveal);
}

static void
sum_sides (CwWallFigures *figures)
{
  for (guint i = 0; i < figures->sides->len; i++)
    {
      const CwOpeningSides *sides
          = &g_array_index (figures->sides, CwOpeningSides, i);

      figures->head += sides->head;
      figures->jamb += sides->jamb;
      figures->sill += sides->sill;
      figures->reveals += sides->reveal;
    }
}

static void
add_sides (CwWallEstimate *estimate)
{
  const CwWallFigures *figures = estimate->figures;
  double n = estimate->wall->openings->len;

  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "opening.head", figures->head),
      N_ ("heads of {0} openings where they meet cladding, arches along "
          "their curve"),
      { n, "" });
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "opening.jamb", figures->jamb),
      N_ ("jambs of {0} openings where they meet cladding"), { n, "" });
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "opening.sill", figures->sill),
      N_ ("sills of {0} openings where they meet cladding; doors have none"),
      { n, "" });
  cw_quantity_step (
      cw_quantity_add (estimate->quantities, "reveal.area", figures->reveals),
      N_ ("heads {0}, jambs {1} and sills {2}, each by the depth of its "
          "opening's reveal"),
      { figures->head, "m" }, { figures->jamb, "m" },
      { figures->sill, "m" });
}

void
cw_estimate_openings (CwWallEstimate *estimate)
{
  const CwWall *wall = estimate->wall;
  CwWallFigures *figures = estimate->figures;
  g_autoptr (CwRegion) opened = cw_estimate_opened_outline (wall);

  g_array_set_size (figures->sides, wall->openings->len);
  measure_sides (opened, figures->sides);
  for (guint i = 0; i < wall->openings->len; i++)
    finish_sides (&g_array_index (figures->sides, CwOpeningSides, i),
                  opening_at (wall, i)->opening);
  sum_sides (figures);
  add_sides (estimate);
}
