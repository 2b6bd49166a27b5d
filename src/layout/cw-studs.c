/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-studs.h"

/* More studs than this and the spacing is a slip of the pen. */
#define MOST_STUDS 1000000

static void
add_stud (GArray *studs, const CwBox *wall, CwLength x)
{
  if (x >= wall->left && x <= wall->right)
    g_array_append_val (studs, x);
}

/* The row goes on to the left of `first` as well. */
static void
add_row (GArray *studs, const CwBox *wall, const CwStuds *row)
{
  if (row->spacing <= 0 || cw_box_width (wall) / row->spacing > MOST_STUDS)
    return;
  CwLength into = row->first % row->spacing;
  if (into < 0)
    into += row->spacing;
  for (CwLength x = wall->left + into; x <= wall->right; x += row->spacing)
    add_stud (studs, wall, x);
}

static void
add_jambs (GArray *studs, const CwBox *wall, const GArray *openings)
{
  for (guint i = 0; i < openings->len; i++)
    {
      const CwOpening *opening
          = g_array_index (openings, CwWallOpening, i).opening;
      add_stud (studs, wall, opening->x);
      add_stud (studs, wall, opening->x + opening->width);
    }
}

static int
compare_lengths (gconstpointer a, gconstpointer b)
{
  CwLength one = *(const CwLength *) a, other = *(const CwLength *) b;
  return (one > other) - (one < other);
}

static void
sort_and_drop_twins (GArray *studs)
{
  g_array_sort (studs, compare_lengths);
  guint n = 0;
  CwLength *at = (CwLength *) (gpointer) studs->data;
  for (guint i = 0; i < studs->len; i++)
    if (n == 0 || at[n - 1] != at[i])
      at[n++] = at[i];
  g_array_set_size (studs, n);
}

GArray *
cw_studs_of_wall (const CwWall *wall)
{
  GArray *studs = g_array_new (FALSE, FALSE, sizeof (CwLength));
  if (!wall->outline || !wall->buildup)
    return studs;
  const CwStuds *row = (const CwStuds *) wall->buildup->studs;
  CwBox box = cw_region_box (wall->outline);
  add_row (studs, &box, row);
  add_stud (studs, &box, box.left);
  add_stud (studs, &box, box.right);
  if (row->at_jambs)
    add_jambs (studs, &box, wall->openings);
  sort_and_drop_twins (studs);
  return studs;
}

guint
cw_studs_from (const GArray *studs, CwLength x)
{
  guint low = 0, high = studs->len;
  while (low < high)
    {
      guint middle = low + (high - low) / 2;
      if (g_array_index (studs, CwLength, middle) < x)
        low = middle + 1;
      else
        high = middle;
    }
  return low;
}
