/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-house-edits.h"

#include <math.h>

#include "cw-edit.h"
#include "cw-edits.h"
#include "cw-i18n.h"

CwLength
cw_house_rise (const CwHouse *house, CwUnits units)
{
  CwLength step = units == CW_UNITS_US ? CW_NM_PER_INCH / 16 : CW_MM (1);
  double rise = (double) house->width / 2 * house->pitch;
  return llround (rise / (double) step) * step;
}

/* A wall @wide and @high, with a gable that rises by @rise over its middle.
 * Takes @project; @id (nullable) is of the first and stays. */
static CwProject *
add_wall (CwProject *project, const char *name, CwLength wide, CwLength high,
          CwLength rise, char **id)
{
  const CwSheetPlace nowhere = { NULL, 0, 0 };
  const CwCorner corners[] = {
    { .at = { 0, 0 } },        { .at = { wide, 0 } },
    { .at = { wide, high } },  { .at = { wide / 2, high + rise } },
    { .at = { 0, high } },
  };
  const CwCorner level[] = { corners[0], corners[1], corners[2], corners[4] };
  g_autofree char *its_id = NULL, *same = NULL;
  CwPoint shift;
  g_autoptr (CwProject) before = project;
  g_autoptr (CwProject) begun
      = cw_edit_add_elevation (before, name, &nowhere, &its_id);
  const CwElevation *elevation = cw_project_elevation (begun, its_id);
  CwProject *drawn
      = cw_edit_draw_outline (begun, elevation, rise > 0 ? corners : level,
                              rise > 0 ? G_N_ELEMENTS (corners)
                                       : G_N_ELEMENTS (level),
                              &same, &shift);
  if (!*id)
    *id = g_steal_pointer (&its_id);
  return drawn;
}

/* (transfer full) */
static char *
name_for (const CwProject *project, const char *side)
{
  return cw_edit_is_name_taken (project, side)
             ? cw_edit_free_name (project, side)
             : g_strdup (side);
}

static CwProject *
add_four_sides (CwProject *project, const CwHouse *house, char **id)
{
  /* In the order in which one walks round, from the front to the right. */
  static const struct
  {
    const char *name;
    gboolean is_end;
  } sides[] = {
    { N_("Front"), FALSE },
    { N_("Right end"), TRUE },
    { N_("Back"), FALSE },
    { N_("Left end"), TRUE },
  };
  CwLength rise = cw_house_rise (house, (CwUnits) project->units);
  for (guint i = 0; i < G_N_ELEMENTS (sides); i++)
    {
      g_autofree char *name = name_for (project, _(sides[i].name));
      project = add_wall (project, name,
                          sides[i].is_end ? house->width : house->length,
                          house->height, sides[i].is_end ? rise : 0, id);
    }
  return project;
}

CwProject *
cw_edit_add_house (const CwProject *project, const CwHouse *house, char **id)
{
  g_return_val_if_fail (project != NULL && house != NULL && id != NULL, NULL);
  CwProject *next = cw_node_ref (project);
  *id = NULL;
  if (house->is_house)
    return add_four_sides (next, house, id);
  for (guint i = 0; i < house->n_walls; i++)
    {
      g_autofree char *name = cw_edit_free_name (next, _("Wall"));
      next = add_wall (next, name, house->length, house->height, 0, id);
    }
  return next;
}
