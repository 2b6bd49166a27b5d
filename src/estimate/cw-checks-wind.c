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

static const char *
basis_text (const CwWind *wind)
{
  return wind->basis == CW_WIND_GIVEN
             ? _ ("the design pressure given")
             : _ ("the pressure worked out after ASCE 7, as a guide");
}

static const char *
hold_text (const CwBuildup *buildup)
{
  return ((const CwStuds *) buildup->studs)->material == CW_STUDS_STEEL
             ? _ ("pull-out from steel, 0.85 t d Fu over its factor")
             : _ ("withdrawal from wood, 2850 G² D by the length of thread and "
                 "the load duration");
}

static void
tell (CwChecking *checking, const CwBuildup *buildup, const CwWind *wind,
      const Load *load)
{
  g_autofree char *area = cw_check_amount (checking, load->area, "m²");
  g_autofree char *pressure
      = cw_check_amount (checking, load->pressure, "Pa");
  g_autofree char *demand = cw_check_amount (checking, load->demand, "N");
  g_autofree char *holds = cw_check_amount (checking, load->allowable, "N");
  const gboolean is_over = load->demand > load->allowable;
  CwCheck *check = cw_check_add (
      checking, is_over ? "fastener-demand" : "fastener-compared",
      buildup->id,
      g_strdup_printf (
          /* Translators: buildup, demand, area, pressure, where the pressure
           * is from, allowable, by which formula, over or within. */
          _ ("%s: %s on each fastener from %s at %s, %s; allowable %s, %s: %s. "
            "No design: the licensed designer decides."),
          cw_check_buildup_name (buildup), demand, area, pressure,
          basis_text (wind), holds, hold_text (buildup),
          is_over ? _ ("over the limit") : _ ("within the limit set")));

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
                    g_strdup (_ ("Fasteners cannot be compared with the wind: "
                                "what its pressure takes is not stated.")));
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
