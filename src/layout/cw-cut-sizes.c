/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-sizes.h"

static int
compare_blanks (gconstpointer a, gconstpointer b, gpointer data)
{
  const CwCutSize *blanks = data;
  const CwCutSize *first = &blanks[*(const guint *) a];
  const CwCutSize *second = &blanks[*(const guint *) b];
  if (first->width != second->width)
    return first->width < second->width ? -1 : 1;
  return (first->height > second->height) - (first->height < second->height);
}

static guint *
sort_blanks (const CwCutSize *blanks, guint n_blanks)
{
  guint *order = g_new (guint, n_blanks);
  for (guint i = 0; i < n_blanks; i++)
    order[i] = i;
  g_qsort_with_data (order, (gint) n_blanks, sizeof (guint), compare_blanks,
                     (gpointer) blanks);
  return order;
}

void
cw_cut_sizes_init (CwCutSizes *sizes, const CwCutSize *blanks,
                   const guint *times, guint n_blanks, guint *size_of)
{
  g_autofree guint *order = sort_blanks (blanks, n_blanks);
  sizes->n = 0;
  sizes->sizes = g_new (CwCutSize, n_blanks);
  sizes->counts = g_new0 (guint, n_blanks);
  for (guint i = 0; i < n_blanks; i++)
    {
      const guint blank = order[i];
      if (i == 0
          || compare_blanks (&order[i - 1], &blank, (gpointer) blanks) != 0)
        sizes->sizes[sizes->n++] = blanks[blank];
      sizes->counts[sizes->n - 1] += times ? times[blank] : 1;
      if (size_of)
        size_of[blank] = sizes->n - 1;
    }
}

void
cw_cut_sizes_clear (CwCutSizes *sizes)
{
  g_free (sizes->sizes);
  g_free (sizes->counts);
}
