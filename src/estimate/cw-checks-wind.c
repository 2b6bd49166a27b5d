/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fasteners and the wind that pulls at them. Never a design.
 */
#include "cw-checks-private.h"
#include "cw-fastener-loads.h"

typedef struct
{
  double area;          /* m² a fastener */
  double pressure;      /* Pa */
  double demand;        /* N */
  double allowable;     /* N */
} Load;

static Load
load_of (const CwBuildup *buildup, const CwWind *wind)
{
  const CwStuds *studs = (const CwStuds *) buildup->studs;
  const CwFastener *fastener = (const CwFastener *) buildup->fastener;
  Load load = { .area = cw_length_in_m (studs->spacing)
                        * cw_length_in_m (fastener->spacing),
                .allowable = cw_fastener_allowable (
                    fastener, (CwStudMaterial) studs->material) };

  load.pressure = cw_wind_pressure (wind, load.area);
  load.demand = load.pressure * load.area;
  return load;
}

/* The pressure's inputs. */
static char *
guide_text (const CwChecking *checking, const CwWind *wind, double area)
{
  static const char *const exposures[]
      = { [CW_EXPOSURE_B] = "B", [CW_EXPOSURE_C] = "C", [CW_EXPOSURE_D] = "D" };
  g_autofree char *speed = cw_check_amount (
      checking, cw_decimal_to_double (wind->speed), "m/s");
  g_autofree char *height = cw_check_length (checking, wind->mean_height);
  g_autofree char *kz = cw_check_number (
      checking,
      cw_wind_exposure_coefficient ((CwExposure) wind->exposure,
                                    cw_length_in_m (wind->mean_height)));
  g_autofree char *kzt
      = cw_check_number (checking, cw_decimal_to_double (wind->topography));
  g_autofree char *kd
      = cw_check_number (checking, cw_decimal_to_double (wind->direction));
  g_autofree char *ke
      = cw_check_number (checking, cw_decimal_to_double (wind->ground));
  g_autofree char *inside
      = cw_check_number (checking, cw_decimal_to_double (wind->internal));
  g_autofree char *outside = cw_check_number (
      checking, cw_wind_wall_suction ((int) wind->zone, area));
  g_autofree char *factor
      = cw_check_number (checking, cw_decimal_to_double (wind->factor));

  return g_strdup_printf (
      _ ("worked out after ASCE 7, as a guide: V %s, exposure %s, height %s, "
        "Kz %s, Kzt %s, Kd %s, Ke %s, GCpi %s, GCp %s in zone %d, load factor "
        "%s"),
      speed, exposures[wind->exposure], height, kz, kzt, kd, ke, inside,
      outside, (int) wind->zone, factor);
}

static char *
basis_text (const CwChecking *checking, const CwWind *wind, double area)
{
  return wind->basis == CW_WIND_GIVEN
             ? g_strdup (_ ("given by the designer"))
             : guide_text (checking, wind, area);
}

static char *
steel_text (const CwChecking *checking, const CwFastener *fastener)
{
  g_autofree char *t = cw_check_length (checking, fastener->steel_thickness);
  g_autofree char *d = cw_check_length (checking, fastener->diameter);
  g_autofree char *fu = cw_check_amount (
      checking, cw_decimal_to_double (fastener->steel_strength), "MPa");
  g_autofree char *safety
      = cw_check_number (checking, cw_decimal_to_double (fastener->safety));

  return g_strdup_printf (_ ("pull-out from steel, 0.85 t d Fu over a factor "
                            "of %s: t %s, d %s, Fu %s"),
                          safety, t, d, fu);
}

static char *
wood_text (const CwChecking *checking, const CwFastener *fastener)
{
  g_autofree char *g
      = cw_check_number (checking, cw_decimal_to_double (fastener->gravity));
  g_autofree char *d = cw_check_length (checking, fastener->diameter);
  g_autofree char *thread = cw_check_length (checking, fastener->penetration);
  g_autofree char *duration
      = cw_check_number (checking, cw_decimal_to_double (fastener->duration));

  return g_strdup_printf (_ ("withdrawal from wood, 2850 G² D by the length of "
                            "thread and CD: G %s, D %s, thread %s, CD %s"),
                          g, d, thread, duration);
}

static char *
hold_text (const CwChecking *checking, const CwBuildup *buildup)
{
  const CwFastener *fastener = (const CwFastener *) buildup->fastener;

  return ((const CwStuds *) buildup->studs)->material == CW_STUDS_STEEL
             ? steel_text (checking, fastener)
             : wood_text (checking, fastener);
}

static char *
detail_text (const CwChecking *checking, const CwBuildup *buildup,
             const CwWind *wind, const Load *load)
{
  g_autofree char *area = cw_check_amount (checking, load->area, "m²");
  g_autofree char *pressure
      = cw_check_amount (checking, load->pressure, "Pa");
  g_autofree char *basis = basis_text (checking, wind, load->area);
  g_autofree char *hold = hold_text (checking, buildup);

  return g_strdup_printf (
      /* Translators: area, pressure, where the pressure is from, by which
       * formula a fastener holds. */
      _ ("Each holds %s of wall at %s, %s. Allowable: %s. Pull-over and the "
        "fastener itself are not looked at."),
      area, pressure, basis, hold);
}

static void
tell (CwChecking *checking, const CwBuildup *buildup, const CwWind *wind,
      const Load *load)
{
  g_autofree char *demand = cw_check_amount (checking, load->demand, "N");
  g_autofree char *holds = cw_check_amount (checking, load->allowable, "N");
  const gboolean is_over = load->demand > load->allowable;
  CwCheck *check = cw_check_add (
      checking, is_over ? "fastener-demand" : "fastener-compared",
      buildup->id,
      g_strdup_printf (
          /* Translators: buildup, demand, allowable. */
          _ ("%s: %s on each fastener, %s allowable. No design: the licensed "
            "designer decides."),
          cw_check_buildup_name (buildup), demand, holds));

  cw_check_set_detail (check, detail_text (checking, buildup, wind, load));
  cw_check_add_figure (check, load->demand);
  cw_check_add_figure (check, load->allowable);
}

void
cw_check_wind (CwChecking *checking)
{
  const CwWind *wind = (const CwWind *) checking->takeoff->project->wind;
  g_autoptr (GPtrArray) buildups = cw_check_used_buildups (checking);

  if (wind->basis == CW_WIND_NONE)
    return;
  if (cw_wind_pressure (wind, 1) <= 0)
    {
      cw_check_add (checking, "wind-unstated", NULL,
                    g_strdup (_ ("Fasteners are not compared with the wind "
                                "yet.")));
      return;
    }
  for (guint i = 0; i < buildups->len; i++)
    {
      const CwBuildup *buildup = buildups->pdata[i];

      if (buildup->fastener)
        {
          const Load load = load_of (buildup, wind);
          tell (checking, buildup, wind, &load);
        }
    }
}
