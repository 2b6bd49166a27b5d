/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cut-plan-checker.h"

/* What is in hand after some cuts: a rectangle of the panel. */
typedef struct
{
  CwLength left, bottom, right, top;
} Part;

static void
check_size (const CwCutPlacement *placement, const CwCutBlank *blank,
            const CwCutRules *rules, const CwCutRules *largest)
{
  /* Rasping makes up for the little that a blank is larger than a panel. */
  const CwLength width = MIN (blank->width, largest->length);
  const CwLength height = MIN (blank->height, largest->height);

  if (placement->turned && !rules->turn)
    g_error ("blank %u is turned", placement->blank);
  if (placement->width != (placement->turned ? height : width)
      || placement->height != (placement->turned ? width : height))
    g_error ("blank %u has another size", placement->blank);
  if (placement->x < 0 || placement->y < 0
      || placement->x + placement->width > rules->length
      || placement->y + placement->height > rules->height)
    g_error ("blank %u leaves its panel", placement->blank);
}

static void
check_apart (const CwCutPlacement *a, const CwCutPlacement *b, CwLength kerf)
{
  if (a->x < b->x + b->width + kerf && b->x < a->x + a->width + kerf
      && a->y < b->y + b->height + kerf && b->y < a->y + a->height + kerf)
    g_error ("blanks %u and %u are nearer than a kerf", a->blank, b->blank);
}

/* The part that a cut runs right across, or -1. The saw may run out at the
 * far side of the part by less than a kerf. */
static int
part_under_cut (const GArray *parts, const CwCut *cut)
{
  for (guint i = 0; i < parts->len; i++)
    {
      const Part *part = &g_array_index (parts, Part, i);
      const CwLength low = cut->upright ? part->left : part->bottom;
      const CwLength high = cut->upright ? part->right : part->top;
      const CwLength from = cut->upright ? part->bottom : part->left;
      const CwLength to = cut->upright ? part->top : part->right;
      if (low < cut->at && cut->at < high && cut->from == from
          && cut->to == to)
        return (int) i;
    }
  return -1;
}

static void
make_cut (GArray *parts, const CwCut *cut, CwLength kerf)
{
  const int index = part_under_cut (parts, cut);
  if (index < 0)
    g_error ("a cut does not run right across a part in hand");
  Part near = g_array_index (parts, Part, index), far = near;
  if (cut->upright)
    {
      near.right = cut->at;
      far.left = cut->at + kerf;
    }
  else
    {
      near.top = cut->at;
      far.bottom = cut->at + kerf;
    }
  g_array_index (parts, Part, index) = near;
  if (far.left < far.right && far.bottom < far.top)
    g_array_append_val (parts, far);
}

static gboolean
is_part (const GArray *parts, const CwCutPlacement *placement)
{
  for (guint i = 0; i < parts->len; i++)
    {
      const Part *part = &g_array_index (parts, Part, i);
      if (part->left == placement->x && part->bottom == placement->y
          && part->right == placement->x + placement->width
          && part->top == placement->y + placement->height)
        return TRUE;
    }
  return FALSE;
}

static void
check_cuts (const CwCutPanel *panel, const CwCutRules *rules)
{
  g_autoptr (GArray) parts = g_array_new (FALSE, FALSE, sizeof (Part));
  const Part whole = { 0, 0, rules->length, rules->height };
  g_array_append_val (parts, whole);
  for (guint i = 0; i < panel->cuts->len; i++)
    make_cut (parts, &g_array_index (panel->cuts, CwCut, i), rules->kerf);
  for (guint i = 0; i < panel->placements->len; i++)
    {
      const CwCutPlacement *placement
          = &g_array_index (panel->placements, CwCutPlacement, i);
      if (!is_part (parts, placement))
        g_error ("blank %u does not come free", placement->blank);
    }
}

void
check_cut_panel (const CwCutPanel *panel, const CwCutRules *rules,
                 const CwCutRules *largest, const CwCutBlank *blanks,
                 guint n_blanks, guint8 *seen)
{
  for (guint i = 0; i < panel->placements->len; i++)
    {
      const CwCutPlacement *placement
          = &g_array_index (panel->placements, CwCutPlacement, i);
      if (placement->blank >= n_blanks || seen[placement->blank]++)
        g_error ("blank %u is unknown or lies twice", placement->blank);
      if (blanks[placement->blank].group != panel->group)
        g_error ("blank %u lies on a panel of another group",
                 placement->blank);
      check_size (placement, &blanks[placement->blank], rules, largest);
      for (guint j = 0; j < i; j++)
        check_apart (
            placement,
            &g_array_index (panel->placements, CwCutPlacement, j),
            rules->kerf);
    }
  check_cuts (panel, rules);
}

void
check_cut_plan (const CwCutPlan *plan, const CwCutBlank *blanks,
                guint n_blanks)
{
  g_autofree guint8 *seen = g_new0 (guint8, n_blanks + 1);
  for (guint i = 0; i < plan->panels->len; i++)
    check_cut_panel (g_ptr_array_index (plan->panels, i), &plan->rules,
                     &plan->rules, blanks, n_blanks, seen);
  for (guint i = 0; i < n_blanks; i++)
    if (!seen[i])
      g_error ("blank %u lies nowhere", i);
  if (plan->panels->len < plan->least)
    g_error ("the plan goes below its bound");
}
