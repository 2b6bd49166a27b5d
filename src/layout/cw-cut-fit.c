/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-fit.h"

static void
look_at (CwCutTree *tree, CwCutSize size, gboolean turned, CwCutFit *best)
{
  for (gint32 i = 0; i < tree->n_free; i++)
    {
      const CwCutNode *node = &tree->nodes[tree->free[i]];
      const double room = (double) node->width * (double) node->height;

      if (size.width <= node->width && size.height <= node->height
          && (best->tree == NULL || room < best->room))
        *best = (CwCutFit) { tree, tree->free[i], size, turned, room };
    }
}

void
cw_cut_fit_look (CwCutTree *tree, CwCutSize size, gboolean turn,
                 CwCutFit *best)
{
  look_at (tree, size, FALSE, best);
  if (turn)
    look_at (tree, (CwCutSize) { size.height, size.width }, TRUE, best);
}

void
cw_cut_fit_put (const CwCutFit *fit, guint blank)
{
  const CwCutNode *node = &fit->tree->nodes[fit->node];
  const gboolean is_wide
      = node->width - fit->size.width > node->height - fit->size.height;

  cw_cut_tree_place (fit->tree, fit->node, (gint32) blank, fit->size.width,
                     fit->size.height, fit->turned,
                     is_wide ? CW_CUT_NODE_ACROSS : CW_CUT_NODE_ALONG);
}
