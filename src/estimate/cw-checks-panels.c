/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Rules of setting out that the layout could not keep, once for each rule and
 * wall, with all its places.
 */
#include "cw-checks-private.h"

#define N_TROUBLES (CW_TROUBLE_AT_CORNER + 1)

static const char *const codes[N_TROUBLES] = {
  [CW_TROUBLE_NO_PANEL] = "panel-no-size",
  [CW_TROUBLE_TOO_MANY] = "panel-too-small",
  [CW_TROUBLE_LEAST_PIECE] = "least-piece",
  [CW_TROUBLE_LEAST_STAGGER] = "least-stagger",
  [CW_TROUBLE_OFF_STUD] = "joint-off-stud",
  [CW_TROUBLE_AT_CORNER] = "joint-at-corner",
};

static CwLength
narrow_side (const CwPiece *piece)
{
  return MIN (cw_box_width (&piece->box), cw_box_height (&piece->box));
}

static void
add_small_pieces (CwChecking *checking, CwCheck *check, CwLength least,
                  CwLength *narrowest)
{
  const GArray *pieces = checking->wall->layout->pieces;

  for (guint i = 0; i < pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (pieces, CwPiece, i);

      if (narrow_side (piece) >= least)
        continue;
      cw_check_add_place (check, piece->box);
      *narrowest = MIN (*narrowest, narrow_side (piece));
    }
}

static void
check_pieces (CwChecking *checking, guint n)
{
  const CwSettingOut *rules
      = (const CwSettingOut *) checking->wall->wall->buildup->setting_out;
  CwLength narrowest = CW_LENGTH_MOST;
  CwCheck *check = cw_check_add (checking, codes[CW_TROUBLE_LEAST_PIECE],
                                 NULL, NULL);

  add_small_pieces (checking, check, rules->least_piece, &narrowest);
  g_autofree char *least = cw_check_length (checking, rules->least_piece);
  g_autofree char *found = cw_check_length (checking, narrowest);
  check->text = g_strdup_printf (
      g_dngettext (GETTEXT_PACKAGE,
                   "%u piece is under %s: it has %s.",
                   "%u pieces are under %s: the narrowest has %s.", n),
      n, least, found);
  cw_check_add_figure (check, n);
  cw_check_add_figure (check, cw_length_in_m (narrowest));
}

/* The joint through its course; its middle where courses stand upright. */
static CwBox
joint_place (const CwLayout *layout, const CwLayoutTrouble *trouble)
{
  const CwSettingOut *rules
      = (const CwSettingOut *) layout->wall->buildup->setting_out;
  CwBox place = { trouble->place.x, trouble->place.y, trouble->place.x,
                  trouble->place.y };

  if (trouble->course == 0 || trouble->course > layout->courses->len
      || rules->run != CW_RUN_HORIZONTAL)
    return place;
  const CwCourse *course
      = &g_array_index (layout->courses, CwCourse, trouble->course - 1);
  place.bottom = course->low;
  place.top = course->high;
  return place;
}

static void
add_joint_places (CwCheck *check, const CwLayout *layout, CwTroubleKind kind)
{
  for (guint i = 0; i < layout->troubles->len; i++)
    {
      const CwLayoutTrouble *trouble
          = &g_array_index (layout->troubles, CwLayoutTrouble, i);

      if (trouble->kind == kind)
        cw_check_add_place (check, joint_place (layout, trouble));
    }
}

static char *
joints_text (CwChecking *checking, CwTroubleKind kind, guint n)
{
  const CwSettingOut *rules
      = (const CwSettingOut *) checking->wall->wall->buildup->setting_out;
  g_autofree char *stagger
      = cw_check_length (checking, rules->least_stagger);

  switch (kind)
    {
    case CW_TROUBLE_LEAST_STAGGER:
      return g_strdup_printf (
          g_dngettext (GETTEXT_PACKAGE,
                       "%u head joint is nearer than %s to one of the course "
                       "before.",
                       "%u head joints are nearer than %s to one of the "
                       "course before.",
                       n),
          n, stagger);
    case CW_TROUBLE_OFF_STUD:
      return g_strdup_printf (
          g_dngettext (GETTEXT_PACKAGE, "%u joint stands off the studs.",
                       "%u joints stand off the studs.", n),
          n);
    default:
      return g_strdup_printf (
          g_dngettext (GETTEXT_PACKAGE,
                       "%u joint meets the corner of an opening.",
                       "%u joints meet the corner of an opening.", n),
          n);
    }
}

static void
check_joints (CwChecking *checking, CwTroubleKind kind, guint n)
{
  CwCheck *check = cw_check_add (checking, codes[kind], NULL,
                                 joints_text (checking, kind, n));

  cw_check_add_figure (check, n);
  add_joint_places (check, checking->wall->layout, kind);
}

static void
check_trouble (CwChecking *checking, CwTroubleKind kind, guint n)
{
  switch (kind)
    {
    case CW_TROUBLE_NO_PANEL:
      cw_check_add (checking, codes[kind], NULL,
                    g_strdup (_ ("The panel has no size, so none is laid.")));
      break;
    case CW_TROUBLE_TOO_MANY:
      cw_check_add (checking, codes[kind], NULL,
                    g_strdup (_ ("The wall would take more than 200 000 "
                                "panels; none is laid.")));
      break;
    case CW_TROUBLE_LEAST_PIECE:
      check_pieces (checking, n);
      break;
    case CW_TROUBLE_LEAST_STAGGER:
    case CW_TROUBLE_OFF_STUD:
    case CW_TROUBLE_AT_CORNER:
      check_joints (checking, kind, n);
      break;
    }
}

void
cw_check_panels (CwChecking *checking)
{
  const GArray *troubles = checking->wall->layout->troubles;
  guint n[N_TROUBLES] = { 0 };

  for (guint i = 0; i < troubles->len; i++)
    n[g_array_index (troubles, CwLayoutTrouble, i).kind]++;
  for (guint kind = 0; kind < N_TROUBLES; kind++)
    if (n[kind] > 0)
      check_trouble (checking, (CwTroubleKind) kind, n[kind]);
}
