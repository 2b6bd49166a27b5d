/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Layers that do not go together, laps that are too short.
 */
#include "cw-checks-private.h"

/* What this program's panels are called in the makers' lists. */
#define PANEL_KIND "aerated-panel"

/* Whether a list of words has @word. */
static gboolean
lists (const char *words, const char *word)
{
  g_auto (GStrv) each = g_strsplit_set (words, " ,;", -1);

  if (!*word)
    return FALSE;
  return g_strv_contains ((const char *const *) each, word);
}

static const char *
coat_name (const char *name, const char *otherwise)
{
  return *name ? name : otherwise;
}

static void
check_base_coat (CwChecking *checking, const CwBuildup *buildup)
{
  const CwBaseCoat *coat = (const CwBaseCoat *) buildup->base_coat;

  if (!coat || !*coat->suits || lists (coat->suits, PANEL_KIND))
    return;
  cw_check_add (checking, "base-coat-unsuited", buildup->id,
                g_strdup_printf (_ ("%s: %s is stated to suit %s, and not "
                                   "aerated panels."),
                                 cw_check_buildup_name (buildup),
                                 coat_name (coat->name, _ ("the base coat")),
                                 coat->suits));
}

/* What the finish lies on; "" when the base coat does not say what it is. */
static const char *
under_finish (const CwBuildup *buildup)
{
  const CwBaseCoat *coat = (const CwBaseCoat *) buildup->base_coat;

  return coat ? coat->kind : PANEL_KIND;
}

static void
check_finish (CwChecking *checking, const CwBuildup *buildup)
{
  const CwFinish *finish = (const CwFinish *) buildup->finish;
  const char *under = under_finish (buildup);

  if (!finish || !*finish->suits || !*under || lists (finish->suits, under))
    return;
  cw_check_add (checking, "finish-unsuited", buildup->id,
                g_strdup_printf (_ ("%s: %s is stated to suit %s, and lies on "
                                   "%s."),
                                 cw_check_buildup_name (buildup),
                                 coat_name (finish->name, _ ("the finish")),
                                 finish->suits, under));
}

static void
check_coats (CwChecking *checking, const CwBuildup *buildup)
{
  const CwBaseCoat *coat = (const CwBaseCoat *) buildup->base_coat;
  const CwFinish *finish = (const CwFinish *) buildup->finish;

  if (!coat || !finish
      || !(lists (coat->unsuited, finish->kind)
           || lists (finish->unsuited, coat->kind)))
    return;
  cw_check_add (checking, "coats-unsuited", buildup->id,
                g_strdup_printf (_ ("%s: a base coat of kind %s and a finish "
                                   "of kind %s are listed as unsuited with "
                                   "each other."),
                                 cw_check_buildup_name (buildup), coat->kind,
                                 finish->kind));
}

static void
check_unstated (CwChecking *checking, const CwBuildup *buildup)
{
  const CwBaseCoat *coat = (const CwBaseCoat *) buildup->base_coat;
  const CwFinish *finish = (const CwFinish *) buildup->finish;
  const gboolean no_coat = coat && !*coat->suits;
  const gboolean no_finish = finish && !*finish->suits;

  if (!no_coat && !no_finish)
    return;
  cw_check_add (
      checking, "coats-unstated", buildup->id,
      g_strdup_printf (no_coat && no_finish
                           ? _ ("%s: nothing is stated of what the base coat "
                               "and the finish suit.")
                       : no_coat ? _ ("%s: nothing is stated of what the base "
                                     "coat suits.")
                                 : _ ("%s: nothing is stated of what the "
                                     "finish suits."),
                       cw_check_buildup_name (buildup)));
}

typedef enum
{
  LAP_BARRIER,
  LAP_BARRIER_END,
  LAP_MESH,
} LapKind;

static const struct
{
  const char *code, *item;
} lap_checks[] = {
  [LAP_BARRIER] = { "barrier-lap", "" },
  [LAP_BARRIER_END] = { "barrier-lap", "/end" },
  [LAP_MESH] = { "mesh-lap", "" },
};

static char *
lap_text (LapKind kind, const char *name, const char *lap, const char *least)
{
  switch (kind)
    {
    case LAP_BARRIER:
      return g_strdup_printf (_ ("%s: the barrier laps %s; the limit is %s."),
                              name, lap, least);
    case LAP_BARRIER_END:
      return g_strdup_printf (_ ("%s: the barrier's ends lap %s; the limit is "
                                "%s."),
                              name, lap, least);
    default:
      return g_strdup_printf (_ ("%s: the mesh laps %s; the limit is %s."),
                              name, lap, least);
    }
}

static void
check_lap (CwChecking *checking, const CwBuildup *buildup, LapKind kind,
           CwLength lap, CwLength least)
{
  if (lap >= least)
    return;
  g_autofree char *is = cw_check_length (checking, lap);
  g_autofree char *limit = cw_check_length (checking, least);
  g_autofree char *item
      = g_strconcat (buildup->id, lap_checks[kind].item, NULL);
  CwCheck *check = cw_check_add (
      checking, lap_checks[kind].code, item,
      lap_text (kind, cw_check_buildup_name (buildup), is, limit));
  cw_check_add_figure (check, cw_length_in_m (lap));
  cw_check_add_figure (check, cw_length_in_m (least));
}

static gboolean
is_to_install (const CwChecking *checking, const CwBuildup *buildup)
{
  for (guint i = 0; i < checking->takeoff->walls->len; i++)
    {
      const CwWall *wall
          = ((CwWallTakeoff *) checking->takeoff->walls->pdata[i])->wall;

      if (wall->buildup == buildup && wall->outline
          && wall->elevation->barrier == CW_BARRIER_TO_INSTALL)
        return TRUE;
    }
  return FALSE;
}

static void
check_laps (CwChecking *checking, const CwBuildup *buildup)
{
  const CwLimits *limits
      = (const CwLimits *) checking->takeoff->project->limits;
  const CwBarrier *barrier = (const CwBarrier *) buildup->barrier;
  const CwMesh *mesh = (const CwMesh *) buildup->mesh;

  if (barrier && is_to_install (checking, buildup))
    {
      check_lap (checking, buildup, LAP_BARRIER, barrier->lap,
                 limits->barrier_lap);
      check_lap (checking, buildup, LAP_BARRIER_END, barrier->end_lap,
                 limits->barrier_end_lap);
    }
  if (mesh)
    check_lap (checking, buildup, LAP_MESH, mesh->lap, limits->mesh_lap);
}

void
cw_check_materials (CwChecking *checking)
{
  g_autoptr (GPtrArray) buildups = cw_check_used_buildups (checking);

  for (guint i = 0; i < buildups->len; i++)
    {
      const CwBuildup *buildup = buildups->pdata[i];

      check_base_coat (checking, buildup);
      check_finish (checking, buildup);
      check_coats (checking, buildup);
      check_unstated (checking, buildup);
      check_laps (checking, buildup);
    }
}
