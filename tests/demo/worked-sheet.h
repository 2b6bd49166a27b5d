/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sheet of quantities worked by hand: rows of a table under tests/data, in
 * which each figure has its own arithmetic.
 *
 *   where      given, aside (each wall's, both only on the way to others),
 *              each wall, project
 *   quantity   a key of the takeoff, "key/variant"; "key:order" is what is
 *              ordered of it, "key:STEP:PLACE" a number of its steps
 *   amount     as a person writes it down, nine digits; of walls "a | b | …"
 *              or one for all of them
 *   working    of walls likewise: 32ft * 9ft, with ft in mm m, + - * / ^ ( ),
 *              pi, sqrt asin acos ceil floor max cents, names of rows above
 *              (in brackets when they have blanks or strokes), sum(…) and
 *              most(…) over the walls, half(r, h): the area of a half circle
 *              up to the height h. "counted": no arithmetic, see the last
 *              column
 *   because    words
 *
 * A name is looked for in its own place, then among what is given, then in
 * the project's rows.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct
{
  guint line;
  const char *where;      /* a wall, "project" or "given" */
  const char *quantity;
  double amount;          /* as worked */
  gboolean is_aside;      /* no figure of the takeoff */
} WorkedFigure;

typedef struct WorkedSheet WorkedSheet;

/*
 * worked_sheet_load:
 * @name: path under tests/data
 * @walls: NULL-ended, in the order of the sheet's figures
 *
 * The test fails, with the line, when a working cannot be read, a name is
 * not known, or a written amount is not what its working comes to.
 */
WorkedSheet *worked_sheet_load (const char *name, const char *const *walls);
void worked_sheet_free (WorkedSheet *sheet);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (WorkedSheet, worked_sheet_free)

/* (element-type WorkedFigure), in the order of the sheet. */
const GPtrArray *worked_sheet_figures (const WorkedSheet *sheet);

/* (nullable) */
const WorkedFigure *worked_sheet_figure (const WorkedSheet *sheet,
                                         const char *where,
                                         const char *quantity);

G_END_DECLS
