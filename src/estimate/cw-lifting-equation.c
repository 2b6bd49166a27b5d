/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-lifting-equation.h"

#include <math.h>

#define N_ROWS 18

/* Table 5, page 15: lifts a minute; then up to 1, 2 and 8 hours, each with
 * the hands low and high. */
static const double frequencies[N_ROWS][7] = {
  { 0.2, 1.00, 1.00, .95, .95, .85, .85 },
  { 0.5, .97, .97, .92, .92, .81, .81 },
  { 1, .94, .94, .88, .88, .75, .75 },
  { 2, .91, .91, .84, .84, .65, .65 },
  { 3, .88, .88, .79, .79, .55, .55 },
  { 4, .84, .84, .72, .72, .45, .45 },
  { 5, .80, .80, .60, .60, .35, .35 },
  { 6, .75, .75, .50, .50, .27, .27 },
  { 7, .70, .70, .42, .42, .22, .22 },
  { 8, .60, .60, .35, .35, .18, .18 },
  { 9, .52, .52, .30, .30, .00, .15 },
  { 10, .45, .45, .26, .26, .00, .13 },
  { 11, .41, .41, .00, .23, .00, .00 },
  { 12, .37, .37, .00, .21, .00, .00 },
  { 13, .00, .34, .00, .00, .00, .00 },
  { 14, .00, .31, .00, .00, .00, .00 },
  { 15, .00, .28, .00, .00, .00, .00 },
  { 16, .00, .00, .00, .00, .00, .00 },
};

double
cw_lifting_frequency_multiplier (double frequency, int hours, gboolean is_low)
{
  const guint column
      = (hours <= 1 ? 1 : hours <= 2 ? 3 : 5) + (is_low ? 0 : 1);
  guint row = 1;

  if (frequency > 15)
    return 0;
  frequency = MAX (frequency, frequencies[0][0]);
  while (frequencies[row][0] < frequency)
    row++;
  const double *below = frequencies[row - 1], *above = frequencies[row];
  return below[column]
         + (above[column] - below[column]) * (frequency - below[0])
               / (above[0] - below[0]);
}

/* Page 7; the lengths of both forms in cm. */
typedef struct
{
  double load;                          /* kg */
  double reach, most_reach;
  double height, slope, most_height;    /* the best V, and what a cm off it costs */
  double least_way, way, most_way;
} Form;

static const Form forms[] = {
  { 23, 25, 63, 75, 0.003, 175, 25, 4.5, 175 },
  { 51 * 0.45359237, 25.4, 63.5, 76.2, 0.0075 / 2.54, 177.8, 25.4,
    1.8 * 2.54, 177.8 },
};

/* Inches come as cm with noise in the last digit. */
static gboolean
is_over (double cm, double most)
{
  return cm > most * (1 + 1e-9);
}

static double
horizontal_multiplier (const Form *form, double cm)
{
  return is_over (cm, form->most_reach) ? 0
                                        : form->reach / MAX (cm, form->reach);
}

static double
vertical_multiplier (const Form *form, double cm)
{
  return is_over (cm, form->most_height)
             ? 0
             : 1 - form->slope * fabs (cm - form->height);
}

static double
distance_multiplier (const Form *form, double cm)
{
  return is_over (cm, form->most_way)
             ? 0
             : 0.82 + form->way / MAX (cm, form->least_way);
}

static gboolean
is_low (const Form *form, double cm)
{
  return cm < form->height * (1 - 1e-9);
}

static double
angle_multiplier (double degrees)
{
  return degrees > 135 ? 0 : 1 - 0.0032 * degrees;
}

/* Table 7, page 18. */
static double
grip_multiplier (CwGrip grip, gboolean low)
{
  switch (grip)
    {
    case CW_GRIP_GOOD:
      return 1;
    case CW_GRIP_FAIR:
      return low ? 0.95 : 1;
    default:
      return 0.90;
    }
}

double
cw_lifting_limit (const CwLift *lift)
{
  const Form *form;

  g_return_val_if_fail (lift != NULL, 0);

  form = &forms[lift->us ? 1 : 0];
  return form->load * horizontal_multiplier (form, lift->horizontal)
         * vertical_multiplier (form, lift->vertical)
         * distance_multiplier (form, lift->distance)
         * angle_multiplier (lift->angle)
         * cw_lifting_frequency_multiplier (lift->frequency, lift->hours,
                                            is_low (form, lift->origin))
         * grip_multiplier (lift->grip, is_low (form, lift->vertical));
}

static double
in_cm (CwLength length)
{
  return (double) length / (10 * CW_NM_PER_MM);
}

CwLift
cw_lifting_end (const CwLifting *lifting, CwUnits units, gboolean at_end)
{
  return (CwLift) {
    .horizontal = in_cm (at_end ? lifting->to_reach : lifting->reach),
    .vertical = in_cm (at_end ? lifting->to_height : lifting->height),
    .origin = in_cm (lifting->height),
    .distance = fabs (in_cm (lifting->to_height) - in_cm (lifting->height)),
    .angle = cw_decimal_to_double (lifting->turn),
    .frequency = cw_decimal_to_double (lifting->frequency),
    .hours = (int) lifting->hours,
    .grip = (CwGrip) lifting->grip,
    .us = units == CW_UNITS_US,
  };
}

double
cw_lifting_limit_of (const CwLifting *lifting, CwUnits units)
{
  const CwLift begun = cw_lifting_end (lifting, units, FALSE);
  const CwLift ended = cw_lifting_end (lifting, units, TRUE);

  return MIN (cw_lifting_limit (&begun), cw_lifting_limit (&ended));
}
