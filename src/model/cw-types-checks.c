/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fields of what the checks compare with, and of what was waived.
 */
#include "cw-types-private.h"

#define MILLIONTHS(n) ((CwDecimal)(n))

static const CwField limits_fields[] = {
  CW_FIELD_DECIMAL_IN (
      CwLimits, control_area, "control-area", MILLIONTHS (13378038),
      MILLIONTHS (10000), CW_DECIMAL (1000000),
      N_ ("Field between control joints"), "m²",
      N_ ("At most so large; 144 ft² for walls by ASTM C1063.")),
  CW_FIELD_LENGTH_IN (CwLimits, control_side, "control-side", CW_INCHES (216),
                      CW_STEP_LEAST, CW_STUFF_MOST, N_ ("Control joints apart"),
                      N_ ("At most so far either way; 18 ft by ASTM C1063.")),
  CW_FIELD_DECIMAL_IN (CwLimits, control_ratio, "control-ratio",
                       MILLIONTHS (2500000), CW_DECIMAL (1), CW_DECIMAL (1000),
                       N_ ("Length to width of a field"), "",
                       N_ ("Of a field between control joints, at most; 2.5 : "
                           "1 by ASTM C1063.")),
  CW_FIELD_LENGTH_IN (CwLimits, stub_out_edge, "stub-out-edge", CW_MM (50), 0,
                      CW_STUFF_MOST, N_ ("Stub-out from a joint"),
                      N_ ("From the hole for a stub-out to the panel's edge, "
                          "at least; 50 mm is common practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwLimits, scale_difference, "scale-difference",
                       CW_DECIMAL (1), 0, CW_DECIMAL (100),
                       N_ ("Scales may differ by"), "%",
                       N_ ("A sheet's scale along from its scale across; more "
                           "is told of. 1 % is common practice, no source.")),
  CW_FIELD_LENGTH_IN (
      CwLimits, barrier_lap, "barrier-lap", CW_INCHES (2), 0, CW_STUFF_MOST,
      N_ ("Least lap of the barrier"),
      N_ ("Of a strip over the one below; 2 in by IRC R703.2.")),
  CW_FIELD_LENGTH_IN (CwLimits, barrier_end_lap, "barrier-end-lap",
                      CW_INCHES (6), 0, CW_STUFF_MOST,
                      N_ ("Least end lap of the barrier"),
                      N_ ("Where a roll ends and the next begins; 6 in by "
                          "IRC R703.2.")),
  CW_FIELD_LENGTH_IN (CwLimits, mesh_lap, "mesh-lap", CW_MM (60), 0,
                      CW_STUFF_MOST, N_ ("Least lap of the mesh"),
                      N_ ("Of one strip over the next; 60 mm by the US "
                          "military guide specification UFGS 07240.")),
  CW_FIELD_LENGTH_IN (CwLimits, fall_height, "fall-height", CW_INCHES (72), 0,
                      CW_STUFF_MOST,
                      N_ ("Height that calls for fall protection"),
                      N_ ("From the lowest point of the wall; 6 ft by 29 CFR "
                          "1926.501(b)(13).")),
};

static const CwChoice lifting_hours[] = {
  { 1, "1", N_ ("Up to 1 hour") },
  { 2, "2", N_ ("Up to 2 hours") },
  { 8, "8", N_ ("Up to 8 hours") },
  { 0, NULL, NULL },
};

static const CwChoice lifting_grips[] = {
  { CW_GRIP_GOOD, "good", N_ ("Good") },
  { CW_GRIP_FAIR, "fair", N_ ("Fair") },
  { CW_GRIP_POOR, "poor", N_ ("Poor") },
  { 0, NULL, NULL },
};

static const CwField lifting_fields[] = {
  CW_FIELD_DECIMAL_IN (CwLifting, index, "index", CW_DECIMAL (1),
                       MILLIONTHS (100000), CW_DECIMAL (10),
                       N_ ("Lifting index at most"), "",
                       N_ ("Mass to recommended weight limit; over 1 the risk "
                           "grows, by the revised NIOSH lifting equation, "
                           "94-110.")),
  CW_FIELD_LENGTH_IN (CwLifting, reach, "reach", CW_MM (400), 0, CW_MM (10000),
                      N_ ("Reach (H)"),
                      N_ ("From between the ankles out to the hands where "
                          "the lift begins; 400 mm is common practice, no "
                          "source.")),
  CW_FIELD_LENGTH_IN (CwLifting, height, "height", CW_MM (750), 0,
                      CW_MM (10000), N_ ("Hands over the floor (V)"),
                      N_ ("Where the lift begins; 750 mm is the best height "
                          "of the equation.")),
  CW_FIELD_LENGTH_IN (CwLifting, to_reach, "to-reach", CW_MM (400), 0,
                      CW_MM (10000), N_ ("Reach at the end"),
                      N_ ("Where the lift ends; 400 mm is common practice, "
                          "no source.")),
  CW_FIELD_LENGTH_IN (
      CwLifting, to_height, "to-height", CW_MM (1200), 0, CW_MM (10000),
      N_ ("Hands over the floor at the end"),
      N_ ("Where the lift ends; the way between (D) is the "
          "difference. 1200 mm is common practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwLifting, turn, "turn", CW_DECIMAL (0), 0,
                       CW_DECIMAL (180), N_ ("Turn of the body (A)"), "°",
                       N_ ("Out of the straight, at either end; 0 when the "
                           "work is set up for it.")),
  CW_FIELD_DECIMAL_IN (CwLifting, frequency, "frequency", MILLIONTHS (500000),
                       0, CW_DECIMAL (100), N_ ("Lifts a minute (F)"), "",
                       N_ ("Over 15 minutes; 0.5 is common practice, no "
                           "source.")),
  CW_FIELD_CHOICE_IN (CwLifting, hours, "hours", 8, lifting_hours,
                      N_ ("Lifting goes on for"),
                      N_ ("With the rests that the equation asks for; 8 "
                          "hours is the most careful choice.")),
  CW_FIELD_CHOICE_IN (CwLifting, grip, "grip", CW_GRIP_POOR, lifting_grips,
                      N_ ("Grip (C)"),
                      N_ ("How well the hands hold; a panel without handles "
                          "is taken as poor.")),
};

static const CwChoice wind_bases[] = {
  { CW_WIND_NONE, "none", N_ ("Not looked at") },
  { CW_WIND_GIVEN, "given", N_ ("Pressure given by the designer") },
  { CW_WIND_GUIDE, "guide", N_ ("Worked out, as a guide") },
  { 0, NULL, NULL },
};

static const CwChoice wind_exposures[] = {
  { CW_EXPOSURE_B, "B", N_ ("B: suburbs and woods") },
  { CW_EXPOSURE_C, "C", N_ ("C: open land") },
  { CW_EXPOSURE_D, "D", N_ ("D: flat shores") },
  { 0, NULL, NULL },
};

static const CwChoice wind_zones[] = {
  { 4, "4", N_ ("4: away from corners") },
  { 5, "5", N_ ("5: at corners") },
  { 0, NULL, NULL },
};

static const CwField wind_fields[] = {
  CW_FIELD_CHOICE_IN (CwWind, basis, "basis", CW_WIND_NONE, wind_bases,
                      N_ ("Wind"),
                      N_ ("Where the pressure comes from that the fasteners "
                          "are compared with. It is no design: the licensed "
                          "designer decides.")),
  CW_FIELD_DECIMAL_IN (CwWind, pressure, "pressure", CW_DECIMAL (0), 0,
                       CW_DECIMAL (1000000), N_ ("Design pressure"), "Pa",
                       N_ ("Given by the licensed designer for these walls, "
                           "as allowable stress; 0 until it is given.")),
  CW_FIELD_DECIMAL_IN (CwWind, speed, "speed", CW_DECIMAL (0), 0,
                       CW_DECIMAL (1000), N_ ("Wind speed"), "m/s",
                       N_ ("Basic wind speed from the local code's map, for "
                           "the guide; 0 until it is given.")),
  CW_FIELD_CHOICE_IN (CwWind, exposure, "exposure", CW_EXPOSURE_C,
                      wind_exposures, N_ ("Exposure"),
                      N_ ("Category of ASCE 7; C is open land.")),
  CW_FIELD_LENGTH_IN (CwWind, mean_height, "mean-height", CW_INCHES (360),
                      CW_STEP_LEAST, CW_INCHES (720), N_ ("Mean roof height"),
                      N_ ("For the guide, which holds to 60 ft; 30 ft is "
                          "common practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwWind, topography, "topography", CW_DECIMAL (1),
                       MILLIONTHS (100000), CW_DECIMAL (10),
                       N_ ("Topography (Kzt)"), "",
                       N_ ("Factor of ASCE 7; 1 on level land.")),
  CW_FIELD_DECIMAL_IN (
      CwWind, direction, "direction", MILLIONTHS (850000), MILLIONTHS (100000),
      CW_DECIMAL (10), N_ ("Direction (Kd)"), "",
      N_ ("Factor of ASCE 7; 0.85 for cladding of buildings.")),
  CW_FIELD_DECIMAL_IN (CwWind, ground, "ground", CW_DECIMAL (1),
                       MILLIONTHS (100000), CW_DECIMAL (10),
                       N_ ("Ground elevation (Ke)"), "",
                       N_ ("Factor of ASCE 7; 1 at any height is on the "
                           "careful side.")),
  CW_FIELD_DECIMAL_IN (CwWind, internal, "internal", MILLIONTHS (180000), 0,
                       CW_DECIMAL (10), N_ ("Inside pressure (GCpi)"), "",
                       N_ ("Coefficient of ASCE 7; 0.18 for an enclosed "
                           "building (from memory).")),
  CW_FIELD_CHOICE_IN (CwWind, zone, "zone", 5, wind_zones, N_ ("Wall zone"),
                      N_ ("Of ASCE 7; 5, at corners, is the more careful.")),
  CW_FIELD_DECIMAL_IN (CwWind, factor, "factor", CW_DECIMAL (1),
                       MILLIONTHS (100000), CW_DECIMAL (10), N_ ("Load factor"),
                       "",
                       N_ ("The worked-out pressure is multiplied by it to "
                           "compare with allowable loads; 1 is on the careful "
                           "side, the designer may say 0.6.")),
};

static const CwField waiver_fields[] = {
  CW_FIELD_TEXT_IN (CwWaiver, check, "check", N_ ("Check"),
                    N_ ("The code of the check that is waived.")),
  CW_FIELD_TEXT_IN (CwWaiver, elevation, "elevation", N_ ("Elevation"),
                    N_ ("The id of the elevation that it is waived on; "
                        "empty for the project.")),
  CW_FIELD_TEXT_IN (CwWaiver, item, "item", N_ ("On"),
                    N_ ("The id of the item that it is waived for; empty "
                        "for the whole elevation.")),
  CW_FIELD_TEXT_IN (CwWaiver, reason, "reason", N_ ("Reason"),
                    N_ ("Why the estimator lets it pass; printed.")),
  CW_FIELD_TEXT_IN (CwWaiver, by, "by", N_ ("By"), N_ ("Who waived it.")),
  CW_FIELD_TEXT_IN (CwWaiver, date, "date", N_ ("Date"),
                    N_ ("When, year-month-day.")),
  CW_FIELD_TEXT_IN (CwWaiver, figures, "figures", N_ ("Figures"),
                    N_ ("The numbers of the check when it was waived, to "
                        "notice that they have changed.")),
};

CW_LEAF_TYPE (cw_limits_type, CwLimits, "limits", N_ ("Limits of the checks"),
              limits_fields);
CW_LEAF_TYPE (cw_lifting_type, CwLifting, "lifting", N_ ("Lifting"),
              lifting_fields);
CW_LEAF_TYPE (cw_wind_type, CwWind, "wind", N_ ("Wind"), wind_fields);
CW_LEAF_TYPE (cw_waiver_type, CwWaiver, "waiver", N_ ("Waiver"), waiver_fields);
