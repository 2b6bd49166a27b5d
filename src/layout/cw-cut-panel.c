/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-panel.h"

static CwCutPanel *
panel_new (guint group)
{
  CwCutPanel *panel = g_new0 (CwCutPanel, 1);
  panel->group = group;
  panel->placements = g_array_new (FALSE, FALSE, sizeof (CwCutPlacement));
  panel->cuts = g_array_new (FALSE, FALSE, sizeof (CwCut));
  return panel;
}

void
cw_cut_panel_free (CwCutPanel *panel)
{
  g_array_unref (panel->placements);
  g_array_unref (panel->cuts);
  cw_cut_tree_clear (&panel->tree);
  g_free (panel);
}

CwCutPanel *
cw_cut_panel_new_whole (guint blank, guint group, const CwCutRules *rules)
{
  CwCutPanel *panel = panel_new (group);
  const CwCutPlacement placement
      = { blank, 0, 0, rules->length, rules->height, FALSE };
  g_array_append_val (panel->placements, placement);
  return panel;
}

typedef struct
{
  const CwCutTree *tree;
  const guint *names;
  CwLength kerf;
  CwCutPanel *panel;
} Sawing;

/* What is free goes last, so that the rest is one piece at the far end; among
 * the others the larger part comes off first. */
static int
compare_parts (gconstpointer a, gconstpointer b, gpointer data)
{
  const CwCutNode *nodes = ((const CwCutTree *) data)->nodes;
  const CwCutNode *first = &nodes[*(const gint32 *) a];
  const CwCutNode *second = &nodes[*(const gint32 *) b];
  const gboolean first_free = first->kind == CW_CUT_NODE_FREE;
  const gboolean second_free = second->kind == CW_CUT_NODE_FREE;

  if (first_free != second_free)
    return first_free ? 1 : -1;
  if (first->width != second->width)
    return first->width < second->width ? 1 : -1;
  if (first->height != second->height)
    return first->height < second->height ? 1 : -1;
  return *(const gint32 *) a - *(const gint32 *) b;
}

static GArray *
parts_of (const CwCutTree *tree, gint32 at)
{
  GArray *parts = g_array_new (FALSE, FALSE, sizeof (gint32));
  for (gint32 i = tree->nodes[at].first; i >= 0; i = tree->nodes[i].next)
    g_array_append_val (parts, i);
  g_array_sort_with_data (parts, compare_parts, (gpointer) tree);
  return parts;
}

static void
place_blank (Sawing *sawing, const CwCutNode *node, CwLength x, CwLength y)
{
  const CwCutPlacement placement = {
    sawing->names[node->blank], x, y, node->width - sawing->kerf,
    node->height - sawing->kerf, node->turned
  };
  g_array_append_val (sawing->panel->placements, placement);
}

static void
add_cut (Sawing *sawing, const CwCutNode *whole, gboolean upright,
         CwLength x, CwLength y, CwLength offset)
{
  const CwCut cut = {
    upright, (upright ? x : y) + offset - sawing->kerf, upright ? y : x,
    upright ? y + whole->height - sawing->kerf
            : x + whole->width - sawing->kerf
  };
  g_array_append_val (sawing->panel->cuts, cut);
}

/* All cuts of one set first, then each part by itself: the parts are in hand
 * only after they have come off. */
static void
saw (Sawing *sawing, gint32 at, CwLength x, CwLength y)
{
  const CwCutNode *node = &sawing->tree->nodes[at];
  const gboolean upright = node->kind == CW_CUT_NODE_ACROSS;

  if (node->kind == CW_CUT_NODE_FREE)
    return;
  if (node->kind == CW_CUT_NODE_BLANK)
    {
      place_blank (sawing, node, x, y);
      return;
    }

  GArray *parts = parts_of (sawing->tree, at);
  CwLength offset = 0;
  for (guint i = 0; i + 1 < parts->len; i++)
    {
      const CwCutNode *part
          = &sawing->tree->nodes[g_array_index (parts, gint32, i)];
      offset += upright ? part->width : part->height;
      /* A rest of less than a kerf falls to the same cut. */
      add_cut (sawing, node, upright, x, y, offset);
    }
  offset = 0;
  for (guint i = 0; i < parts->len; i++)
    {
      const gint32 part = g_array_index (parts, gint32, i);
      saw (sawing, part, upright ? x + offset : x,
           upright ? y : y + offset);
      offset += upright ? sawing->tree->nodes[part].width
                        : sawing->tree->nodes[part].height;
    }
  g_array_unref (parts);
}

CwCutPanel *
cw_cut_panel_new (const CwCutTree *tree, const guint *names, guint group,
                  CwLength kerf)
{
  Sawing sawing = { tree, names, kerf, panel_new (group) };
  saw (&sawing, 0, 0, 0);
  cw_cut_tree_copy (&sawing.panel->tree, tree);
  cw_cut_tree_rename (&sawing.panel->tree, names);
  return sawing.panel;
}

void
cw_cut_panel_rename (CwCutPanel *panel, const guint *names)
{
  for (guint i = 0; i < panel->placements->len; i++)
    {
      guint *blank
          = &g_array_index (panel->placements, CwCutPlacement, i).blank;
      *blank = names[*blank];
    }
  cw_cut_tree_rename (&panel->tree, names);
}

CwCutPanel *
cw_cut_panel_renamed (const CwCutPanel *panel, const guint *names)
{
  CwCutPanel *copy = g_new0 (CwCutPanel, 1);
  copy->group = panel->group;
  if (panel->tree.n_nodes > 0)
    cw_cut_tree_copy (&copy->tree, &panel->tree);
  copy->placements = g_array_copy (panel->placements);
  copy->cuts = g_array_ref (panel->cuts);
  cw_cut_panel_rename (copy, names);
  return copy;
}
