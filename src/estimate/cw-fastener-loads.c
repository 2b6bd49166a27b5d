/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-fastener-loads.h"

#include <math.h>

#define MM_PER_INCH 25.4
#define M_PER_FOOT 0.3048
#define M_PER_S_PER_MPH 0.44704
#define M2_PER_FT2 0.09290304

double
cw_withdrawal_from_wood (double gravity, double diameter_mm)
{
  return 2850 * gravity * gravity * (diameter_mm / MM_PER_INCH) * CW_N_PER_LBF
         / MM_PER_INCH;
}

double
cw_pull_out_from_steel (double thickness_mm, double diameter_mm,
                        double strength_mpa, double safety)
{
  return 0.85 * thickness_mm * diameter_mm * strength_mpa / safety;
}

static double
in_mm (CwLength length)
{
  return (double) length / CW_NM_PER_MM;
}

double
cw_fastener_allowable (const CwFastener *fastener, CwStudMaterial studs)
{
  const double diameter = in_mm (fastener->diameter);

  if (studs == CW_STUDS_STEEL)
    return cw_pull_out_from_steel (
        in_mm (fastener->steel_thickness), diameter,
        cw_decimal_to_double (fastener->steel_strength),
        cw_decimal_to_double (fastener->safety));
  return cw_withdrawal_from_wood (cw_decimal_to_double (fastener->gravity),
                                  diameter)
         * in_mm (fastener->penetration)
         * cw_decimal_to_double (fastener->duration);
}

double
cw_wind_exposure_coefficient (CwExposure exposure, double height_m)
{
  static const struct
  {
    double alpha, gradient;     /* ft */
  } of[] = {
    [CW_EXPOSURE_B] = { 7.0, 1200 },
    [CW_EXPOSURE_C] = { 9.5, 900 },
    [CW_EXPOSURE_D] = { 11.5, 700 },
  };

  return 2.01
         * pow (MAX (height_m / M_PER_FOOT, 15) / of[exposure].gradient,
                2 / of[exposure].alpha);
}

double
cw_wind_velocity_pressure (const CwWind *wind)
{
  const double mph = cw_decimal_to_double (wind->speed) / M_PER_S_PER_MPH;

  return 0.00256
         * cw_wind_exposure_coefficient ((CwExposure) wind->exposure,
                                         cw_length_in_m (wind->mean_height))
         * cw_decimal_to_double (wind->topography)
         * cw_decimal_to_double (wind->direction)
         * cw_decimal_to_double (wind->ground) * mph * mph * CW_PA_PER_PSF;
}

/* Straight on the logarithm of the area, from 10 to 500 ft². */
double
cw_wind_wall_suction (int zone, double area_m2)
{
  const double small = zone == 5 ? -1.4 : -1.1, large = -0.8;
  const double area = CLAMP (area_m2 / M2_PER_FT2, 10, 500);

  return small + (large - small) * log10 (area / 10) / log10 (50);
}

double
cw_wind_pressure (const CwWind *wind, double area_m2)
{
  if (wind->basis == CW_WIND_GIVEN)
    return cw_decimal_to_double (wind->pressure);
  if (wind->basis == CW_WIND_NONE)
    return 0;
  return cw_wind_velocity_pressure (wind)
         * (cw_decimal_to_double (wind->internal)
            - cw_wind_wall_suction ((int) wind->zone, area_m2))
         * cw_decimal_to_double (wind->factor);
}
