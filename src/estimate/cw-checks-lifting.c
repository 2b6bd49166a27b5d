/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Panels and what one or two persons may lift.
 */
#include "cw-checks-private.h"
#include "cw-lifting-equation.h"

/* The inputs, and the limits at both ends. */
static char *
inputs_text (const CwChecking *checking, const CwLifting *lifting)
{
  const CwUnits units = (CwUnits) checking->takeoff->project->units;
  const CwLift begun = cw_lifting_end (lifting, units, FALSE);
  const CwLift ended = cw_lifting_end (lifting, units, TRUE);
  const int grip = cw_node_type_field (lifting->node.type, "grip");
  const CwChoice *choice = cw_field_choice_by_value (
      &lifting->node.type->fields[grip], lifting->grip);
  g_autofree char *h = cw_check_length (checking, lifting->reach);
  g_autofree char *v = cw_check_length (checking, lifting->height);
  g_autofree char *to_h = cw_check_length (checking, lifting->to_reach);
  g_autofree char *to_v = cw_check_length (checking, lifting->to_height);
  g_autofree char *d = cw_check_length (
      checking, ABS (lifting->to_height - lifting->height));
  g_autofree char *f
      = cw_check_number (checking, cw_decimal_to_double (lifting->frequency));
  g_autofree char *rwl
      = cw_check_amount (checking, cw_lifting_limit (&begun), "kg");
  g_autofree char *to_rwl
      = cw_check_amount (checking, cw_lifting_limit (&ended), "kg");
  g_autofree char *a = cw_text_style_number (
      checking->style, cw_decimal_to_double (lifting->turn), 0);

  return g_strdup_printf (
      _ ("H %s, V %s where the lift begins: RWL %s; H %s, V %s where it ends: "
        "RWL %s; D %s, A %s°, F %s a minute for up to %d h, C %s"),
      h, v, rwl, to_h, to_v, to_rwl, d, a, f, (int) lifting->hours,
      _ (choice->label));
}

static char *
index_text (const CwChecking *checking, double mass, double limit)
{
  return limit > 0 ? cw_text_style_number (checking->style, mass / limit, 1)
                   : g_strdup ("∞");
}

static char *
detail_text (const CwChecking *checking, const CwLifting *lifting,
             double mass, double limit)
{
  g_autofree char *one = index_text (checking, mass, limit);
  g_autofree char *two = index_text (checking, mass / 2, limit);
  g_autofree char *most = cw_text_style_number (
      checking->style, cw_decimal_to_double (lifting->index), 1);
  g_autofree char *inputs = inputs_text (checking, lifting);

  return g_strdup_printf (
      _ ("One person: lifting index %s; the limit set is %s. Two persons, half "
        "each: %s, which is common practice: the equation is for one person, "
        "and two together can do less than twice as much. Wet panels are "
        "heavier. %s."),
      one, most, two, inputs);
}

static void
check_panel (CwChecking *checking, const CwBuildup *buildup, guint index,
             const CwPanel *panel)
{
  const CwLifting *lifting
      = (const CwLifting *) checking->takeoff->project->lifting;
  const double mass = cw_decimal_to_double (panel->mass);
  const double limit = cw_lifting_limit_of (
      lifting, (CwUnits) checking->takeoff->project->units);

  if (mass <= limit * cw_decimal_to_double (lifting->index))
    return;
  g_autofree char *has = cw_check_amount (checking, mass, "kg");
  g_autofree char *rwl = cw_check_amount (checking, limit, "kg");
  g_autofree char *item = g_strdup_printf ("%s/%u", buildup->id, index + 1);
  CwCheck *check = cw_check_add (
      checking, "panel-mass", item,
      g_strdup_printf (
          _ ("%s has %s; the recommended limit for one person is %s."),
          *panel->name ? panel->name : cw_check_buildup_name (buildup), has,
          rwl));
  cw_check_set_detail (check, detail_text (checking, lifting, mass, limit));
  cw_check_add_figure (check, mass);
  cw_check_add_figure (check, limit);
}

void
cw_check_lifting (CwChecking *checking)
{
  g_autoptr (GPtrArray) buildups = cw_check_used_buildups (checking);

  for (guint i = 0; i < buildups->len; i++)
    {
      const CwBuildup *buildup = buildups->pdata[i];

      for (guint j = 0; j < cw_list_length (buildup->panels); j++)
        check_panel (checking, buildup, j, cw_list_at (buildup->panels, j));
    }
}
