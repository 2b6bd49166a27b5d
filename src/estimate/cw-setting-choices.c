/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Which settings are worth a try on a wall.
 */
#include "cw-setting-private.h"

/* Beside those that every wall has. The places that most jambs (sills, heads,
 * corners) share come first, so that a long wall keeps the useful ones. */
#define MOST_OFFSETS 16
#define MOST_BASES 8

/* Where rows of panels may begin, all within one panel and joint. */
typedef struct
{
  CwLength length, joint;     /* of a panel in this direction */
  CwLength wall;              /* the wall's extent */
  CwLength least;             /* from a corner that joints must not meet; or 0 */
  GArray *starts;             /* CwLength, no twins */
  GArray *places;             /* Place */
} Starts;

typedef struct
{
  CwLength at;
  guint n;                    /* how many things of the wall ask for it */
} Place;

static CwLength
within_pitch (const Starts *starts, CwLength at)
{
  CwLength pitch = starts->length + starts->joint;
  CwLength into = at % pitch;

  return into < 0 ? into + pitch : into;
}

static void
add_start (Starts *starts, CwLength at)
{
  at = within_pitch (starts, at);
  for (guint i = 0; i < starts->starts->len; i++)
    if (g_array_index (starts->starts, CwLength, i) == at)
      return;
  g_array_append_val (starts->starts, at);
}

static void
ask_for (Starts *starts, CwLength at)
{
  Place place = { within_pitch (starts, at), 1 };

  for (guint i = 0; i < starts->places->len; i++)
    {
      Place *former = &g_array_index (starts->places, Place, i);

      if (former->at == place.at)
        {
          former->n++;
          return;
        }
    }
  g_array_append_val (starts->places, place);
}

/* A panel that ends at @at and one that begins there, as near as joints may
 * come. */
static void
ask_for_joint (Starts *starts, CwLength at)
{
  ask_for (starts, at - starts->least);
  ask_for (starts, at + starts->joint + starts->least);
}

static int
compare_places (gconstpointer a, gconstpointer b)
{
  const Place *one = a, *other = b;

  if (one->n != other->n)
    return one->n < other->n ? 1 : -1;
  return (one->at > other->at) - (one->at < other->at);
}

/* What every wall has: whole panels from the corner, half a panel, and what
 * is left over at the near end or shared by both. */
static void
add_common_starts (Starts *starts)
{
  CwLength pitch = starts->length + starts->joint;
  CwLength rest = (starts->wall + starts->joint) % pitch;

  add_start (starts, 0);
  add_start (starts, pitch / 2);
  add_start (starts, rest);
  add_start (starts, (rest + starts->joint) / 2);
  add_start (starts, (rest + starts->joint + pitch) / 2);
}

static void
add_asked_starts (Starts *starts, guint most)
{
  g_array_sort (starts->places, compare_places);
  for (guint i = 0; i < MIN (starts->places->len, most); i++)
    add_start (starts, g_array_index (starts->places, Place, i).at);
}

static const CwSettingOut *
setting_out_of (const CwBuildup *buildup)
{
  return (const CwSettingOut *) buildup->setting_out;
}

static gboolean
is_upright (const CwWall *wall)
{
  return setting_out_of (wall->buildup)->run == CW_RUN_VERTICAL;
}

static Starts
starts_new (const CwWall *wall, gboolean along, CwLength extent,
            CwLength present)
{
  const CwPanel *panel = cw_list_at (wall->buildup->panels, 0);
  const CwSettingOut *setting_out = setting_out_of (wall->buildup);
  Starts starts = {
    .length = along ? panel->length : panel->height,
    .joint = panel->joint,
    .wall = extent,
    .least = along && setting_out->at_openings == CW_AT_OPENINGS_NOTCH
                 ? setting_out->least_piece
                 : 0,
    .starts = g_array_new (FALSE, FALSE, sizeof (CwLength)),
    .places = g_array_new (FALSE, FALSE, sizeof (Place)),
  };

  g_array_append_val (starts.starts, present);
  return starts;
}

/* Calls ask_for_joint() for every corner of the outline, seen in @axis and
 * counted from @origin, in the direction of @sign. */
static void
ask_for_corners (Starts *starts, const CwRegion *outline, CwAxis axis,
                 CwLength origin, int sign)
{
  for (gsize l = 0; l < cw_region_n_loops (outline); l++)
    {
      CwLoop loop = cw_region_loop (outline, l);

      for (gsize i = 0; i < loop.n_sides; i++)
        {
          CwPoint at = loop.sides[i].start;
          CwLength place = axis == CW_AXIS_X ? at.x : at.y;

          ask_for_joint (starts, sign * (place - origin));
        }
    }
}

/* The offsets to try from @start. (transfer full) (element-type CwLength) */
static GArray *
offsets_from (const CwWall *wall, CwStart start, gboolean others)
{
  CwBox box = cw_region_box (wall->outline);
  CwLength origin = start == CW_START_RIGHT ? box.right : box.left;
  int sign = start == CW_START_RIGHT ? -1 : 1;
  Starts starts = starts_new (wall, !is_upright (wall), cw_box_width (&box),
                              setting_out_of (wall->buildup)->offset);

  for (guint i = 0; others && i < wall->openings->len; i++)
    {
      const CwOpening *opening
          = g_array_index (wall->openings, CwWallOpening, i).opening;

      ask_for_joint (&starts, sign * (opening->x - origin));
      ask_for_joint (&starts, sign * (opening->x + opening->width - origin));
    }
  if (others)
    {
      ask_for_corners (&starts, wall->outline, CW_AXIS_X, origin, sign);
      add_common_starts (&starts);
      add_asked_starts (&starts, MOST_OFFSETS);
    }
  g_array_unref (starts.places);
  return starts.starts;
}

static GArray *
bases_of (const CwWall *wall, gboolean others)
{
  CwBox box = cw_region_box (wall->outline);
  Starts starts = starts_new (wall, is_upright (wall), cw_box_height (&box),
                              setting_out_of (wall->buildup)->base);

  for (guint i = 0; others && i < wall->openings->len; i++)
    {
      const CwOpening *opening
          = g_array_index (wall->openings, CwWallOpening, i).opening;

      ask_for_joint (&starts, opening->y - box.bottom);
      ask_for_joint (&starts, opening->y + opening->height - box.bottom);
    }
  if (others)
    {
      ask_for_corners (&starts, wall->outline, CW_AXIS_Y, box.bottom, 1);
      add_common_starts (&starts);
      add_asked_starts (&starts, MOST_BASES);
    }
  g_array_unref (starts.places);
  return starts.starts;
}

/* How far courses may be moved: as now; if bonds are free, by half a panel
 * and by a third too. */
static GArray *
staggers_of (const CwWall *wall, CwBond bond, gboolean others)
{
  const CwPanel *panel = cw_list_at (wall->buildup->panels, 0);
  const CwSettingOut *setting_out = setting_out_of (wall->buildup);
  GArray *staggers = g_array_new (FALSE, FALSE, sizeof (CwLength));
  CwLength pitch = panel->length + panel->joint;
  CwLength tried[] = { setting_out->stagger, pitch / 2, pitch / 3 };

  g_array_append_val (staggers, tried[0]);
  for (guint i = 1; others && i < G_N_ELEMENTS (tried); i++)
    if (bond == CW_BOND_STAGGER && tried[i] != tried[0])
      g_array_append_val (staggers, tried[i]);
  return staggers;
}

CwSettingChoice
cw_setting_choice_present (const CwBuildup *buildup)
{
  const CwSettingOut *setting_out = setting_out_of (buildup);

  return (CwSettingChoice) { .start = (CwStart) setting_out->start,
                             .bond = (CwBond) setting_out->bond,
                             .offset = setting_out->offset,
                             .base = setting_out->base,
                             .stagger = setting_out->stagger,
                             .is_present = TRUE };
}

/* The present one stands first already. */
static void
add_choice (GArray *choices, CwSettingChoice choice)
{
  const CwSettingChoice *present = &g_array_index (choices, CwSettingChoice, 0);

  if (choice.start != present->start || choice.bond != present->bond
      || choice.offset != present->offset || choice.base != present->base
      || choice.stagger != present->stagger)
    g_array_append_val (choices, choice);
}

static void
add_choices_of_bond (GArray *choices, const CwWall *wall, CwStart start,
                     CwBond bond, gboolean others, const GArray *offsets,
                     const GArray *bases)
{
  g_autoptr (GArray) staggers = staggers_of (wall, bond, others);

  for (guint s = 0; s < staggers->len; s++)
    for (guint o = 0; o < offsets->len; o++)
      for (guint b = 0; b < bases->len; b++)
        add_choice (choices, (CwSettingChoice) {
                                 .start = start,
                                 .bond = bond,
                                 .offset = g_array_index (offsets, CwLength, o),
                                 .base = g_array_index (bases, CwLength, b),
                                 .stagger
                                 = g_array_index (staggers, CwLength, s),
                             });
}

GArray *
cw_setting_choices (const CwWall *wall, const CwSettingAllowed *allowed)
{
  GArray *choices = g_array_new (FALSE, FALSE, sizeof (CwSettingChoice));
  CwSettingChoice present = cw_setting_choice_present (wall->buildup);
  guint starts = allowed->starts | 1u << present.start;
  guint bonds = allowed->bonds | 1u << present.bond;
  g_autoptr (GArray) bases = bases_of (wall, allowed->bases);

  g_array_append_val (choices, present);
  for (CwStart start = CW_START_LEFT; start <= CW_START_BOTH; start++)
    {
      g_autoptr (GArray) offsets = NULL;

      if (!(starts & 1u << start))
        continue;
      offsets = offsets_from (wall, start, allowed->offsets);
      for (CwBond bond = CW_BOND_STACKED; bond <= CW_BOND_OFFCUT; bond++)
        if (bonds & 1u << bond)
          add_choices_of_bond (choices, wall, start, bond,
                               (allowed->bonds & 1u << bond) != 0, offsets,
                               bases);
    }
  return choices;
}
