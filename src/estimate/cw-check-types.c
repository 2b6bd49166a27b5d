/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All checks there are. Codes are kept in files and never change.
 */
#include <string.h>

#include "cw-checks.h"
#include "cw-i18n.h"

#define NO_SOURCE N_ ("Common practice, no source.")
#define SENSE N_ ("A rule of sense: figures would be wrong or lacking.")
#define NIOSH                                                                 \
  N_ ("Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, revised 9/2021.")
#define DESIGNER                                                              \
  N_ ("This is a guide and no design: the licensed designer decides on loads, " \
      "fasteners and their spacing, by the local code and the makers' "       \
      "instructions.")

const CwCheckType cw_check_types[] = {
  { "outline-missing", CW_CHECK_ERROR, N_ ("No outline"),
    N_ ("Draw the wall's outline."), SENSE },
  { "outline-invalid", CW_CHECK_ERROR, N_ ("Outline is none"),
    N_ ("Move its corners until it closes round one area."), SENSE },
  { "buildup-missing", CW_CHECK_ERROR, N_ ("No buildup"),
    N_ ("Choose a buildup for the wall."), SENSE },
  { "unclad-invalid", CW_CHECK_ERROR, N_ ("Unclad area is none"),
    N_ ("Move its corners until it closes round one area."), SENSE },
  { "sheet-no-scale", CW_CHECK_ERROR, N_ ("Sheet without a scale"),
    N_ ("Set its scale by a length that is known, and verify it by another."),
    SENSE },
  { "sheet-scales-differ", CW_CHECK_WARNING,
    N_ ("Sheet with two scales"),
    N_ ("Verify both by lengths that are known; a copy may be stretched."),
    N_ ("The tolerance is a setting; its default is common practice, no "
        "source.") },
  { "panel-no-size", CW_CHECK_ERROR, N_ ("Panel without a size"),
    N_ ("Give its length and height in the buildup."), SENSE },
  { "panel-too-small", CW_CHECK_ERROR, N_ ("Too many panels"),
    N_ ("Check the panel's size in the buildup."), SENSE },
  { "opening-outside", CW_CHECK_ERROR, N_ ("Opening off the wall"),
    N_ ("Move it onto the wall, or take it away."), SENSE },
  { "opening-crosses-outline", CW_CHECK_WARNING,
    N_ ("Opening across the outline"),
    N_ ("Move it, or draw the outline round it."), SENSE },
  { "opening-overlap", CW_CHECK_ERROR, N_ ("Openings overlap"),
    N_ ("Move one of them; if they are one opening, draw it as one."),
    SENSE },
  { "arch-rise", CW_CHECK_ERROR, N_ ("Arch cannot rise so"),
    N_ ("Change its rise, its width or its head."),
    N_ ("Geometry of the head.") },
  { "least-piece", CW_CHECK_WARNING, N_ ("Pieces under the least"),
    N_ ("Move the offset or the base, or choose another bond."),
    N_ ("The least piece is a setting of the buildup; its default is common "
        "practice, no source.") },
  { "least-stagger", CW_CHECK_WARNING, N_ ("Stagger too small"),
    N_ ("Change the stagger or the bond."),
    N_ ("The least stagger is a setting of the buildup; its default is "
        "common practice, no source.") },
  { "joint-off-stud", CW_CHECK_WARNING, N_ ("Joint off the studs"),
    N_ ("Add a stud there, or move the offset."),
    N_ ("Joints on studs are a setting of the buildup; common practice, no "
        "source.") },
  { "joint-at-corner", CW_CHECK_WARNING,
    N_ ("Joint at an opening's corner"),
    N_ ("Move the offset, so that the coat is less likely to crack there."),
    NO_SOURCE },
  { "stub-out-outside", CW_CHECK_WARNING, N_ ("Stub-out off the cladding"),
    N_ ("Move it onto the cladding, or take it away."), SENSE },
  { "stub-out-across-joint", CW_CHECK_WARNING,
    N_ ("Stub-out across a joint"),
    N_ ("Move the joint or have the stub-out moved; otherwise two pieces are "
        "cut out."),
    NO_SOURCE },
  { "stub-out-near-edge", CW_CHECK_WARNING,
    N_ ("Stub-out near a panel's edge"),
    N_ ("Move the joint: the strip that is left is likely to break."),
    N_ ("The distance is a setting; its default is common practice, no "
        "source.") },
  { "services-behind", CW_CHECK_NOTE, N_ ("Pipes and cables behind"),
    N_ ("Have them found and made dead by the trade they belong to before "
        "fasteners are driven or panels cut there."),
    NO_SOURCE },
  { "control-joints", CW_CHECK_WARNING, N_ ("Control joints wanted"),
    N_ ("Plan control joints with the designer, and draw walls that end at "
        "them with edges of that kind."),
    N_ ("ASTM C1063 for plaster on lath: 144 ft², 18 ft, 2.5 : 1; the limits "
        "are settings.") },
  { "base-coat-unsuited", CW_CHECK_ERROR,
    N_ ("Base coat not for these panels"),
    N_ ("Choose a base coat whose maker has it suit the panel."),
    N_ ("The makers' words, as typed in the buildup.") },
  { "finish-unsuited", CW_CHECK_ERROR,
    N_ ("Finish not for what is under it"),
    N_ ("Choose a finish whose maker has it suit what is under it."),
    N_ ("The makers' words, as typed in the buildup.") },
  { "coats-unsuited", CW_CHECK_ERROR, N_ ("Coats unsuited with each other"),
    N_ ("Choose another finish or another base coat."),
    N_ ("The makers' words, as typed in the buildup.") },
  { "coats-unstated", CW_CHECK_NOTE, N_ ("Nothing says what a coat suits"),
    N_ ("Look it up in the maker's instructions and type it in."),
    N_ ("The makers' words, as typed in the buildup.") },
  { "barrier-lap", CW_CHECK_WARNING, N_ ("Barrier laps too little"),
    N_ ("Give the barrier the lap that the code asks for."),
    N_ ("IRC R703.2: 2 in, and 6 in where a roll ends; the limits are "
        "settings.") },
  { "mesh-lap", CW_CHECK_WARNING, N_ ("Mesh laps too little"),
    N_ ("Give the mesh the lap that its maker asks for."),
    N_ ("US military guide specification UFGS 07240: 60 mm; the limit is a "
        "setting.") },
  { "panel-mass", CW_CHECK_WARNING, N_ ("Panel heavy to lift by hand"),
    N_ ("Plan a hoist, a lifter or more hands, and have a competent person "
        "judge the work."),
    NIOSH },
  { "fastener-demand", CW_CHECK_WARNING,
    N_ ("Fasteners over their load"),
    N_ ("Bring the fasteners closer, or choose others, with the licensed "
        "designer."),
    DESIGNER },
  { "fastener-compared", CW_CHECK_NOTE, N_ ("Fasteners compared with wind"),
    N_ ("Have the licensed designer decide."), DESIGNER },
  { "wind-unstated", CW_CHECK_NOTE, N_ ("Wind not stated"),
    N_ ("Type in the designer's pressure, or the wind speed."), DESIGNER },
  { "silica", CW_CHECK_NOTE, N_ ("Silica dust"),
    N_ ("Plan wet cutting or extraction, and protection for the lungs."),
    N_ ("29 CFR 1926.1153, table 1: aerated concrete is not named there, so "
        "the row for handheld power saws is taken unless a competent person "
        "decides otherwise.") },
  { "falls", CW_CHECK_NOTE, N_ ("Work at height"),
    N_ ("Plan scaffold, guards and who looks after them."),
    N_ ("29 CFR 1926.501(b)(13): 6 ft; the height is a setting.") },
};
const guint cw_n_check_types = G_N_ELEMENTS (cw_check_types);

const CwCheckType *
cw_check_type (const char *code)
{
  for (guint i = 0; i < cw_n_check_types; i++)
    if (strcmp (cw_check_types[i].code, code) == 0)
      return &cw_check_types[i];
  return NULL;
}

const char *
cw_check_severity_label (CwCheckSeverity severity)
{
  static const char *const labels[]
      = { N_ ("Error"), N_ ("Warning"), N_ ("Note") };

  g_return_val_if_fail (severity < CW_N_CHECK_SEVERITIES, "");
  return labels[severity];
}

const char *
cw_check_severity_letter (CwCheckSeverity severity)
{
  static const char *const letters[]
      = { NC_ ("check letter", "E"), NC_ ("check letter", "W"),
          NC_ ("check letter", "N") };

  g_return_val_if_fail (severity < CW_N_CHECK_SEVERITIES, "");
  return letters[severity];
}
