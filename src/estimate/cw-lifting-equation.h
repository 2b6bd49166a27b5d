/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The revised NIOSH lifting equation, DHHS (NIOSH) 94-110, revised 9/2021:
 *
 *   RWL = LC × HM × VM × DM × AM × FM × CM
 *
 * in its metric or its US form with full precision, which differ by up to 3 %; the manual's own answers take
 * multipliers rounded to two places and differ by up to 2 %. It is for one
 * person lifting with both hands.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

typedef struct
{
  double horizontal;    /* cm (H) */
  double vertical;      /* cm (V), at the end that is looked at */
  double origin;        /* cm (V where the lift begins): it picks the column of the frequency table */
  double distance;      /* cm (D) */
  double angle;         /* degrees (A) */
  double frequency;     /* lifts a minute (F) */
  int hours;            /* 1, 2 or 8 */
  CwGrip grip;
  gboolean us;          /* by the form for pounds and inches */
} CwLift;

/* The recommended weight limit, kg; 0 beyond the equation's limits. */
double cw_lifting_limit (const CwLift *lift);

/* FM of table 5, between its rows by a straight line. */
double cw_lifting_frequency_multiplier (double frequency, int hours,
                                        gboolean is_low);

/* The lower of the limits at both ends of the lift, kg. */
double cw_lifting_limit_of (const CwLifting *lifting, CwUnits units);

/* The lift as it begins, or as it ends. */
CwLift cw_lifting_end (const CwLifting *lifting, CwUnits units,
                       gboolean at_end);

G_END_DECLS
