/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-checks.h"

#include "cw-i18n.h"

#define N_TROUBLES (CW_TROUBLE_AT_CORNER + 1)

static void
check_free (CwCheck *check)
{
  g_free (check->elevation_id);
  g_free (check->text);
  g_free (check);
}

static CwCheck *
add (GPtrArray *checks, const char *elevation_id, guint n_places, char *text)
{
  CwCheck *check = g_new0 (CwCheck, 1);
  check->elevation_id = g_strdup (elevation_id);
  check->n_places = n_places;
  check->text = text;
  g_ptr_array_add (checks, check);
  return check;
}

static void
check_layout (GPtrArray *checks, const CwLayout *layout)
{
  guint n_places[N_TROUBLES] = { 0 };
  for (guint i = 0; i < layout->troubles->len; i++)
    n_places[g_array_index (layout->troubles, CwLayoutTrouble, i).kind]++;
  for (guint kind = 0; kind < N_TROUBLES; kind++)
    if (n_places[kind] > 0)
      add (checks, layout->wall->elevation->id,
           kind <= CW_TROUBLE_TOO_MANY ? 0 : n_places[kind],
           g_strdup (_ (cw_trouble_text ((CwTroubleKind) kind))));
}

static void
check_wall (GPtrArray *checks, const CwWallTakeoff *takeoff)
{
  const CwWall *wall = takeoff->wall;
  if (!wall->elevation->outline)
    add (checks, wall->elevation->id, 0,
         g_strdup (_ ("It has no outline, so nothing of it is counted. Draw "
                     "one.")))
        ->awaits_drawing = TRUE;
  else if (!wall->outline)
    add (checks, wall->elevation->id, 0,
         g_strdup (_ ("Its outline crosses itself or has a side of no length, "
                     "so nothing of it is counted. Move its corners.")));
  else if (!wall->buildup)
    add (checks, wall->elevation->id, 0,
         g_strdup (_ ("It names no buildup, so no panels and no materials are "
                     "counted. Choose one.")));
  check_layout (checks, takeoff->layout);
}

static void
check_sheet (GPtrArray *checks, const CwSheet *sheet)
{
  if (!sheet->scale)
    add (checks, NULL, 0,
         g_strdup_printf (_ ("Sheet %s has no scale, so nothing traced on it "
                            "is true yet. Set its scale."),
                          sheet->name));
}

GPtrArray *
cw_checks_find (const CwTakeoff *takeoff)
{
  GPtrArray *checks
      = g_ptr_array_new_with_free_func ((GDestroyNotify) check_free);
  const CwList *sheets = takeoff->project->sheets;
  for (gsize i = 0; i < cw_list_length (sheets); i++)
    check_sheet (checks, cw_list_at (sheets, i));
  for (guint i = 0; i < takeoff->walls->len; i++)
    check_wall (checks, takeoff->walls->pdata[i]);
  return checks;
}
