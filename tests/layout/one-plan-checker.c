/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "one-plan-checker.h"

#include "cut-plan-checker.h"
#include "geos-shape.h"

/* Each blank is the bounding box of the piece that it is for. */
static void
check_blanks (const CwPanelPlan *plan)
{
  for (guint i = 0; i < plan->pieces->len; i++)
    {
      const CwPanelPiece *name
          = &g_array_index (plan->pieces, CwPanelPiece, i);
      const CwCutBlank *blank
          = &g_array_index (plan->blanks, CwCutBlank, i);
      const CwLayout *layout = plan->layouts->pdata[name->wall];
      const CwPiece *piece
          = &g_array_index (layout->pieces, CwPiece, name->piece);
      const CwSettingOut *setting_out
          = (const CwSettingOut *) layout->wall->buildup->setting_out;
      const gboolean is_upright = setting_out->run == CW_RUN_VERTICAL;

      g_assert_cmpint (piece->kind, ==, CW_PIECE_CUT);
      g_assert_cmpint (is_upright ? blank->height : blank->width, ==,
                       piece->box.right - piece->box.left);
      g_assert_cmpint (is_upright ? blank->width : blank->height, ==,
                       piece->box.top - piece->box.bottom);
    }
}

/* The rest as it lies on the wall, a kerf larger all round, and the waste of
 * its host as GEOS sees it: nothing of the piece is within that. */
static void
check_clear_of_piece (const CwPanelPlan *plan, const CwPanelRest *rest)
{
  const CwPanelPiece *name
      = &g_array_index (plan->pieces, CwPanelPiece, rest->host);
  const CwLayout *layout = plan->layouts->pdata[name->wall];
  const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, name->piece);
  const CwSettingOut *setting_out
      = (const CwSettingOut *) layout->wall->buildup->setting_out;
  const gboolean is_upright = setting_out->run == CW_RUN_VERTICAL;
  const CwLength kerf = plan->cut->rules.kerf;
  const CwLength left
      = piece->box.left + (is_upright ? rest->y : rest->x);
  const CwLength bottom
      = piece->box.bottom + (is_upright ? rest->x : rest->y);
  const CwLength right
      = left + (is_upright ? rest->height : rest->width);
  const CwLength top = bottom + (is_upright ? rest->width : rest->height);
  const CwBox around
      = { left - kerf, bottom - kerf, right + kerf, top + kerf };
  g_autoptr (GeosShape) shape = geos_shape_new (piece->shape, 100);
  g_autoptr (GeosShape) box = geos_shape_box (&around);
  g_autoptr (GeosShape) common = geos_shape_intersect (shape, box);

  g_assert_true (left >= piece->box.left && right <= piece->box.right
                 && bottom >= piece->box.bottom && top <= piece->box.top);
  g_assert_cmpfloat (geos_shape_area (common), <, 1e-6);
}

static gboolean
are_apart (const CwPanelRest *a, const CwPanelRest *b, CwLength kerf)
{
  return a->host != b->host || a->x + a->width + kerf <= b->x
         || b->x + b->width + kerf <= a->x || a->y + a->height + kerf <= b->y
         || b->y + b->height + kerf <= a->y;
}

/* Rasping makes up for the little that a blank is larger than the panel that
 * the wall is set out for; blanks that lie across a panel may be longer than
 * it is. */
static CwCutRules
largest_blank (const CwPanelPlan *plan)
{
  const CwLayout *layout = plan->layouts->pdata[0];
  const CwPanel *first = cw_list_at (layout->wall->buildup->panels, 0);
  CwCutRules rules = plan->cut->rules;

  rules.length = MAX (rules.length, first->length);
  rules.height = MAX (rules.height, first->height);
  return rules;
}

static void
check_rest (const CwPanelPlan *plan, guint index, guint8 *seen)
{
  const CwPanelRest *rest = &g_array_index (plan->rests, CwPanelRest, index);
  const CwCutBlank *blanks = (const CwCutBlank *) plan->blanks->data;
  const CwCutRules largest = largest_blank (plan);
  CwCutRules rules = plan->cut->rules;

  if (rest->cut == NULL)
    return;
  g_assert_cmpuint (rest->host, <, plan->pieces->len);
  check_clear_of_piece (plan, rest);
  for (guint i = 0; i < index; i++)
    g_assert_true (are_apart (
        rest, &g_array_index (plan->rests, CwPanelRest, i), rules.kerf));
  rules.length = rest->width;
  rules.height = rest->height;
  g_assert_cmpuint (rest->cut->placements->len, >, 0);
  g_assert_cmpuint (rest->cut->group, ==, blanks[rest->host].group);
  /* A little larger by rasping is for whole panels alone. */
  for (guint i = 0; i < rest->cut->placements->len; i++)
    {
      const CwCutPlacement *placement
          = &g_array_index (rest->cut->placements, CwCutPlacement, i);

      g_assert_cmpint (placement->width * placement->height, ==,
                       blanks[placement->blank].width
                           * blanks[placement->blank].height);
      g_assert_cmpuint (placement->blank, !=, rest->host);
    }
  check_cut_panel (rest->cut, &rules, &largest, blanks, plan->blanks->len,
                   seen);
}

static void
check_cuts (const CwPanelPlan *plan)
{
  const CwCutRules largest = largest_blank (plan);
  const guint n = plan->blanks->len;
  g_autofree guint8 *seen = g_new0 (guint8, n + 1);

  for (guint i = 0; i < plan->cut->panels->len; i++)
    check_cut_panel (plan->cut->panels->pdata[i], &plan->cut->rules,
                     &largest,
                     (const CwCutBlank *) plan->blanks->data, n, seen);
  for (guint i = 0; i < plan->rests->len; i++)
    check_rest (plan, i, seen);
  for (guint i = 0; i < n; i++)
    g_assert_cmpuint (seen[i], ==, 1);
}

/* No piece comes out of its own waste, by way of others either: its chain of
 * hosts ends on a panel. */
static void
check_chains (const CwPanelPlan *plan)
{
  const guint n = plan->blanks->len;
  g_autofree guint *host_of = g_new (guint, n + 1);

  for (guint i = 0; i < n; i++)
    host_of[i] = n;
  for (guint i = 0; i < plan->rests->len; i++)
    {
      const CwPanelRest *rest = &g_array_index (plan->rests, CwPanelRest, i);

      for (guint j = 0; rest->cut && j < rest->cut->placements->len; j++)
        host_of[g_array_index (rest->cut->placements, CwCutPlacement, j)
                    .blank]
            = rest->host;
    }
  for (guint i = 0; i < n; i++)
    {
      guint steps = 0;

      for (guint at = i; at < n; at = host_of[at])
        g_assert_cmpuint (steps++, <=, n);
    }
}

void
check_one_plan (const CwPanelPlan *plan)
{
  g_assert_cmpuint (plan->pieces->len, ==, plan->blanks->len);
  check_blanks (plan);
  if (plan->cut)
    {
      check_cuts (plan);
      check_chains (plan);
    }
  else
    g_assert_cmpuint (plan->blanks->len, ==, 0);
  g_assert_cmpuint (plan->n_panels, ==,
                    plan->n_whole + (plan->cut ? plan->cut->panels->len : 0));
  g_assert_cmpuint (plan->least, <=, plan->n_panels);
}
