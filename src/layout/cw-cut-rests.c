/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-rests.h"

static gboolean
cuts_part (const CwCut *cut, const CwBox *part)
{
  const CwLength middle = cut->from + (cut->to - cut->from) / 2;

  return cut->upright ? part->left < cut->at && cut->at < part->right
                            && part->bottom < middle && middle < part->top
                      : part->bottom < cut->at && cut->at < part->top
                            && part->left < middle && middle < part->right;
}

/* The near part stays where it is in @parts, the far one is added. */
static void
saw_part (GArray *parts, guint index, const CwCut *cut, CwLength kerf)
{
  CwBox *near = &g_array_index (parts, CwBox, index);
  CwBox far = *near;

  if (cut->upright)
    {
      near->right = cut->at;
      far.left = cut->at + kerf;
    }
  else
    {
      near->top = cut->at;
      far.bottom = cut->at + kerf;
    }
  if (far.left < far.right && far.bottom < far.top)
    g_array_append_val (parts, far);
}

static gboolean
holds_blank (const CwCutPanel *panel, const CwBox *part)
{
  for (guint i = 0; i < panel->placements->len; i++)
    {
      const CwCutPlacement *it
          = &g_array_index (panel->placements, CwCutPlacement, i);
      const CwBox box = { it->x, it->y, it->x + it->width,
                          it->y + it->height };

      if (cw_box_overlaps (part, &box))
        return TRUE;
    }
  return FALSE;
}

GArray *
cw_cut_rests (const CwCutPanel *panel, const CwCutRules *rules)
{
  g_return_val_if_fail (panel != NULL && rules != NULL, NULL);

  const CwBox whole = { 0, 0, rules->length, rules->height };
  GArray *parts = g_array_new (FALSE, FALSE, sizeof (CwBox));

  g_array_append_val (parts, whole);
  for (guint i = 0; i < panel->cuts->len; i++)
    {
      const CwCut *cut = &g_array_index (panel->cuts, CwCut, i);
      guint part = 0;

      while (part < parts->len
             && !cuts_part (cut, &g_array_index (parts, CwBox, part)))
        part++;
      if (part < parts->len)
        saw_part (parts, part, cut, rules->kerf);
    }
  for (guint i = parts->len; i-- > 0;)
    if (holds_blank (panel, &g_array_index (parts, CwBox, i)))
      g_array_remove_index (parts, i);
  return parts;
}
