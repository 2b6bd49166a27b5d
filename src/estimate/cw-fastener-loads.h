/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What pulls at a fastener and what it may hold, by published formulas. A
 * guide for the estimator and no design: the licensed designer decides.
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

#define CW_PA_PER_PSF 47.880259
#define CW_N_PER_LBF 4.4482216152605

/* N per mm of thread in side grain, of wood of specific gravity @gravity:
 * W = 2850 G² D in pounds an inch, D the diameter in inches (wood screws,
 * NDS; Civil Engineering Formulas, eq. 6.37). Without the load duration. */
double cw_withdrawal_from_wood (double gravity, double diameter_mm);

/* N: 0.85 t d Fu / @safety (AISI; code evaluation reports print it with a
 * factor of 3). Pull-over and the screw itself are not in it. */
double cw_pull_out_from_steel (double thickness_mm, double diameter_mm,
                               double strength_mpa, double safety);

/* N that @fastener may hold in a stud of that material. */
double cw_fastener_allowable (const CwFastener *fastener,
                              CwStudMaterial studs);

/* Kz of ASCE 7: 2.01 (max (z, 15 ft) / zg)^(2 / alpha). */
double cw_wind_exposure_coefficient (CwExposure exposure, double height_m);

/* Pa: q = 0.00256 Kz Kzt Kd Ke V² in psf, V in miles an hour. */
double cw_wind_velocity_pressure (const CwWind *wind);

/* The coefficient outward of a wall zone, 4 or 5, of buildings up to 60 ft,
 * for that much of wall; negative. (ASCE 7, figure 30.3-1, from memory) */
double cw_wind_wall_suction (int zone, double area_m2);

/* Pa, outward and positive, over @area_m2 of wall: what the designer gave, or
 * worked out; 0 when what it takes is not stated. */
double cw_wind_pressure (const CwWind *wind, double area_m2);

G_END_DECLS
