/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Dust and falls.
 */
#include "cw-checks-private.h"

static guint
n_cut_pieces (const CwTakeoff *takeoff)
{
  guint n = 0;

  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];

      n += (cw_layout_count (wall->layout, CW_PIECE_CUT)
            + cw_layout_count (wall->layout, CW_PIECE_RASPED))
           * (guint) wall->wall->elevation->count;
    }
  return n;
}

static void
tell_of_silica (CwChecking *checking)
{
  const guint n = n_cut_pieces (checking->takeoff);

  if (n == 0)
    return;
  CwCheck *check = cw_check_add (
      checking, "silica", NULL,
      g_strdup_printf (
          g_dngettext (
              GETTEXT_PACKAGE,
              "Sawing or rasping %u piece sets free respirable crystalline "
              "silica.",
              "Sawing or rasping %u pieces sets free respirable crystalline "
              "silica.",
              n),
          n));
  cw_check_set_detail (
      check,
      g_strdup (_ ("For a handheld power saw table 1 has water fed to the "
                  "blade, and protection for the lungs indoors and, outdoors, "
                  "beyond 4 hours a shift.")));
  cw_check_add_figure (check, n);
}

typedef struct
{
  guint n;
  const CwWallTakeoff *highest;
  CwLength height;
} Falls;

static Falls
find_falls (const CwTakeoff *takeoff)
{
  const CwLength limit
      = ((const CwLimits *) takeoff->project->limits)->fall_height;
  Falls falls = { 0 };

  for (guint i = 0; i < takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = takeoff->walls->pdata[i];

      if (!wall->wall->outline)
        continue;
      const CwBox box = cw_region_box (wall->wall->outline);
      const CwLength height = cw_box_height (&box);
      falls.n += height >= limit;
      if (height < limit || height <= falls.height)
        continue;
      falls.height = height;
      falls.highest = wall;
    }
  return falls;
}

static void
tell_of_falls (CwChecking *checking)
{
  const CwLimits *limits
      = (const CwLimits *) checking->takeoff->project->limits;
  const Falls falls = find_falls (checking->takeoff);

  if (!falls.highest)
    return;
  const CwElevation *elevation = falls.highest->wall->elevation;
  g_autofree char *limit = cw_check_length (checking, limits->fall_height);
  g_autofree char *height = cw_check_length (checking, falls.height);
  CwCheck *check = cw_check_add (
      checking, "falls", NULL,
      g_strdup_printf (
          g_dngettext (GETTEXT_PACKAGE,
                       "%u wall reaches %s or more over its lowest point.",
                       "%u walls reach %s or more over their lowest point.",
                       falls.n),
          falls.n, limit));
  cw_check_set_detail (
      check, g_strdup_printf (
                 _ ("The highest, %s, has %s."),
                 *elevation->name ? elevation->name : elevation->id, height));
  cw_check_add_figure (check, falls.n);
  cw_check_add_figure (check, cw_length_in_m (falls.height));
}

void
cw_check_site (CwChecking *checking)
{
  tell_of_silica (checking);
  tell_of_falls (checking);
}
