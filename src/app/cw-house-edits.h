/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls from typed sizes: a rectangular house with a gable roof, or walls of
 * one size. Pure functions.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

typedef struct
{
  gboolean is_house;      /* else walls of one size */
  CwLength length;        /* along the front, or of each wall */
  CwLength width;         /* of a house: along its gable ends */
  CwLength height;        /* to the eaves */
  double pitch;           /* of a house: rise over run; 0: no gable */
  guint n_walls;          /* else */
} CwHouse;

#define CW_HOUSE_MOST_WALLS 50

/* How high the gable rises over the eaves: half the width by the pitch, to
 * the step that lengths are shown in (1/16 in, 1 mm). */
CwLength cw_house_rise (const CwHouse *house, CwUnits units);

/*
 * cw_edit_add_house:
 * @id: (out): of the first new elevation, owned by the caller
 *
 * Front and back by the length, two ends by the width, named for where they
 * are as seen from the front; or @n_walls walls. What lies longer or higher
 * than anything can be is for the caller to refuse. (transfer full)
 */
CwProject *cw_edit_add_house (const CwProject *project, const CwHouse *house,
                              char **id);

G_END_DECLS
