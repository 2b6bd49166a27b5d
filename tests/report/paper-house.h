/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An invented house for the papers' tests.
 */
#pragma once

#include "cw-takeoff-pdf.h"

G_BEGIN_DECLS

typedef struct
{
  CwUnits units;
  guint n_elevations;
  const char *name;         /* (nullable) of the project */
  const char *wall_name;    /* (nullable) "Wall 1" … otherwise */
  const char *date;         /* (nullable) */
  guint least_piece;        /* mm; 0: 150 */
  guint count;              /* walls that each elevation stands for; 0: 1 */
} PaperHouse;

/* Windows, a door, an arch, a gable, an unclad area, a band and stub-outs on
 * the first elevation; the others differ in width. (transfer full) */
CwTakeoff *paper_house_takeoff (const PaperHouse *house);

/* A wall of @width × @height mm with nothing on it. (transfer full) */
CwTakeoff *paper_plain_wall (CwUnits units, guint width, guint height);

G_END_DECLS
