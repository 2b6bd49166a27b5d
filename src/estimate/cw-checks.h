/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What an estimator should still look at: walls that give no figures, rules
 * of setting out that could not be kept, sheets without a scale.
 */
#pragma once

#include "cw-takeoff.h"

G_BEGIN_DECLS

typedef struct
{
  char *elevation_id;     /* (nullable): of the project as a whole */
  guint n_places;         /* 0: the whole of it */
  gboolean awaits_drawing;/* a wall that nothing was drawn of yet */
  char *text;             /* a sentence */
} CwCheck;

/* (transfer full) (element-type CwCheck), in the order of the elevations */
GPtrArray *cw_checks_find (const CwTakeoff *takeoff);

G_END_DECLS
