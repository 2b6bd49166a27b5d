/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fields of the layers that a buildup may have: what fixes, joins, covers and
 * seals the panels.
 */
#include "cw-types-private.h"

#define HUNDREDTHS(n) ((CwDecimal) (n) * (CW_DECIMAL_ONE / 100))

static const CwField fastener_fields[] = {
  CW_FIELD_TEXT_IN (CwFastener, name, "name", N_ ("Fastener"),
                    N_ ("What it is called on the order list.")),
  CW_FIELD_LENGTH_IN (CwFastener, length, "length", CW_MM (90), CW_STEP_LEAST,
                      CW_MM (1000), N_ ("Length"),
                      N_ ("Through panel and barrier into the stud; 90 mm is "
                          "common practice, no source.")),
  CW_FIELD_LENGTH_IN (CwFastener, spacing, "spacing", CW_MM (300),
                      CW_STEP_LEAST, CW_STUFF_MOST, N_ ("Spacing"),
                      N_ ("The most along a stud between two fasteners of a "
                          "piece; 300 mm is common practice, the wind design "
                          "governs.")),
  CW_FIELD_LENGTH_IN (CwFastener, edge, "edge", CW_MM (25), 0, CW_MM (1000),
                      N_ ("Edge distance"),
                      N_ ("From the piece's edge to its first fastener; 25 mm "
                          "is common practice, no source.")),
  CW_FIELD_LENGTH_IN (CwFastener, diameter, "diameter", CW_INCHES (19) / 100,
                      CW_MM (1) / 10, CW_MM (100),
                      N_ ("Diameter"),
                      N_ ("Of the threaded shank; 0.190 in is a No. 10 screw.")),
  CW_FIELD_LENGTH_IN (CwFastener, penetration, "penetration", CW_INCHES (1),
                      0, CW_MM (1000),
                      N_ ("Thread in the stud"),
                      N_ ("Length of thread in a wood stud; 1 in is common "
                          "practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwFastener, gravity, "gravity", HUNDREDTHS (42),
                      HUNDREDTHS (1), CW_DECIMAL (2),
                      N_ ("Wood's specific gravity"), "",
                      N_ ("G of the stud's wood; 0.42 is spruce-pine-fir in "
                          "the NDS (from memory).")),
  CW_FIELD_LENGTH_IN (CwFastener, steel_thickness, "steel-thickness",
                      CW_INCHES (36) / 1000, CW_MM (1) / 100, CW_MM (100),
                      N_ ("Steel stud's thickness"),
                      N_ ("Base metal of a steel stud; 0.036 in is common "
                          "practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwFastener, steel_strength, "steel-strength",
                      310264078,
                      CW_DECIMAL (1), CW_DECIMAL (10000),
                      N_ ("Steel's tensile strength (Fu)"), "MPa",
                      N_ ("Of a steel stud; 45 ksi is common practice, no "
                          "source.")),
  CW_FIELD_DECIMAL_IN (CwFastener, safety, "safety", CW_DECIMAL (3),
                      CW_DECIMAL (1), CW_DECIMAL (100),
                      N_ ("Safety factor in steel"), "",
                      N_ ("The pull-out is divided by it; 3 as in evaluation "
                          "reports by AISI.")),
  CW_FIELD_DECIMAL_IN (CwFastener, duration, "duration", HUNDREDTHS (160),
                      HUNDREDTHS (10), CW_DECIMAL (10),
                      N_ ("Load duration in wood (CD)"), "",
                      N_ ("The withdrawal is multiplied by it; 1.6 for wind "
                          "in the NDS (from memory).")),
  CW_FIELD_COUNT_IN (CwFastener, per_box, "per-box", 500, 1, 1000000,
                     N_ ("Fasteners a box"), "",
                     N_ ("How they are sold; 500 is common practice, no "
                         "source.")),
  CW_FIELD_PRICE_IN (CwFastener, N_ ("Price a box"),
                     N_ ("In the project's currency; 0 until a price is "
                         "entered.")),
};

static const CwField joint_mortar_fields[] = {
  CW_FIELD_TEXT_IN (CwJointMortar, name, "name", N_ ("Mortar"),
                    N_ ("What it is called on the order list.")),
  CW_FIELD_DECIMAL_IN (CwJointMortar, bag, "bag", CW_DECIMAL (20), 1,
                       CW_DECIMAL (100000), N_ ("Bag"), "kg",
                       N_ ("Dry mortar in a bag; 20 kg is common practice, no "
                           "source.")),
  CW_FIELD_DECIMAL_IN (CwJointMortar, yield, "yield", CW_DECIMAL (15), 1,
                       CW_DECIMAL (100000), N_ ("Yield"), "L",
                       N_ ("Wet mortar from a bag; take the maker's figure, "
                           "15 L is common practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwJointMortar, water, "water", HUNDREDTHS (550), 0,
                       CW_DECIMAL (100000), N_ ("Water"), "L",
                       N_ ("Mixing water for a bag; take the maker's figure, "
                           "5.5 L is common practice, no source.")),
  CW_FIELD_WASTE_IN (CwJointMortar, 10),
  CW_FIELD_COUNT_IN (CwJointMortar, pot_life, "pot-life", 240, 1, 100000,
                     N_ ("Pot life"), "min",
                     N_ ("How long a mix can be used; take the maker's "
                         "figure, 240 min is common practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwJointMortar, wetting, "wetting", CW_DECIMAL_ONE / 2,
                       0, CW_DECIMAL (1000), N_ ("Wetting"), "L/m²",
                       N_ ("Water on a square metre of joint faces before the "
                           "mortar; take the maker's figure, 0.5 L is common "
                           "practice, no source.")),
  CW_FIELD_PRICE_IN (CwJointMortar, N_ ("Price a bag"),
                     N_ ("In the project's currency; 0 until a price is "
                         "entered.")),
};

static const CwField barrier_fields[] = {
  CW_FIELD_TEXT_IN (CwBarrier, name, "name", N_ ("Barrier"),
                    N_ ("What it is called on the order list.")),
  CW_FIELD_LENGTH_IN (CwBarrier, roll_width, "roll-width", CW_INCHES (108),
                      CW_STEP_LEAST, CW_STUFF_MOST, N_ ("Roll width"),
                      N_ ("Height of a strip; 9 ft is common practice, no "
                          "source.")),
  CW_FIELD_LENGTH_IN (CwBarrier, roll_length, "roll-length",
                      CW_INCHES (1200), CW_STEP_LEAST, CW_DRAWN_MOST,
                      N_ ("Roll length"),
                      N_ ("100 ft is common practice, no source.")),
  CW_FIELD_LENGTH_IN (CwBarrier, lap, "lap", CW_INCHES (2), 0, CW_STUFF_MOST,
                      N_ ("Lap"),
                      N_ ("How far a strip laps over the one below; 2 in is "
                          "the least of IRC R703.2.")),
  CW_FIELD_LENGTH_IN (CwBarrier, end_lap, "end-lap", CW_INCHES (6), 0,
                      CW_STUFF_MOST, N_ ("End lap"),
                      N_ ("Where a roll ends and the next begins; 6 in is the "
                          "least of IRC R703.2.")),
  CW_FIELD_LENGTH_IN (CwBarrier, wrap, "wrap", CW_INCHES (12), 0,
                      CW_STUFF_MOST, N_ ("Wrap at corners"),
                      N_ ("How far a strip runs round an outside corner; "
                          "12 in is common practice, no source.")),
  CW_FIELD_PRICE_IN (CwBarrier, N_ ("Price a roll"),
                     N_ ("In the project's currency; 0 until a price is "
                         "entered.")),
};

static const CwField base_coat_fields[] = {
  CW_FIELD_TEXT_IN (CwBaseCoat, name, "name", N_ ("Base coat"),
                    N_ ("What it is called on the order list.")),
  /* A text with a default would break the rule that absent texts are empty:
   * an empty list says nothing about what the base coat suits. */
  CW_FIELD_TEXT_IN (CwBaseCoat, suits, "suits", N_ ("Suits"),
                    N_ ("What it may be laid on by its maker's word, such as "
                        "aerated-panel; several with spaces between.")),
  CW_FIELD_TEXT_IN (CwBaseCoat, kind, "kind", N_ ("Kind"),
                    N_ ("A word for what it is, which a coat over it may "
                        "name.")),
  CW_FIELD_TEXT_IN (CwBaseCoat, unsuited, "unsuited", N_ ("Unsuited with"),
                    N_ ("Kinds that it may not be used with by its maker's "
                        "word; several with spaces between.")),
  CW_FIELD_DECIMAL_IN (CwBaseCoat, bag, "bag", CW_DECIMAL (25), 1,
                       CW_DECIMAL (100000), N_ ("Bag"), "kg",
                       N_ ("Dry base coat in a bag; 25 kg is common practice, "
                           "no source.")),
  CW_FIELD_DECIMAL_IN (CwBaseCoat, use, "use", HUNDREDTHS (550), 0,
                       CW_DECIMAL (1000), N_ ("Use"), "kg/m²",
                       N_ ("Dry base coat on a square metre, mesh bedded; "
                           "take the maker's figure, 5.5 kg is common "
                           "practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwBaseCoat, water, "water", CW_DECIMAL (5), 0,
                       CW_DECIMAL (100000), N_ ("Water"), "L",
                       N_ ("Mixing water for a bag; take the maker's figure, "
                           "5 L is common practice, no source.")),
  CW_FIELD_WASTE_IN (CwBaseCoat, 5),
  CW_FIELD_COUNT_IN (CwBaseCoat, pot_life, "pot-life", 120, 1, 100000,
                     N_ ("Pot life"), "min",
                     N_ ("How long a mix can be used; take the maker's "
                         "figure, 120 min is common practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwBaseCoat, wetting, "wetting", CW_DECIMAL_ONE / 2, 0,
                       CW_DECIMAL (1000), N_ ("Wetting"), "L/m²",
                       N_ ("Water on a square metre of wall before the base "
                           "coat; take the maker's figure, 0.5 L is common "
                           "practice, no source.")),
  CW_FIELD_PRICE_IN (CwBaseCoat, N_ ("Price a bag"),
                     N_ ("In the project's currency; 0 until a price is "
                         "entered.")),
};

static const CwField mesh_fields[] = {
  CW_FIELD_TEXT_IN (CwMesh, name, "name", N_ ("Mesh"),
                    N_ ("What it is called on the order list.")),
  CW_FIELD_LENGTH_IN (CwMesh, roll_width, "roll-width", CW_MM (1000),
                      CW_STEP_LEAST, CW_STUFF_MOST, N_ ("Roll width"),
                      N_ ("1 m is common practice, no source.")),
  CW_FIELD_LENGTH_IN (CwMesh, roll_length, "roll-length", CW_MM (50000),
                      CW_STEP_LEAST, CW_DRAWN_MOST, N_ ("Roll length"),
                      N_ ("50 m is common practice, no source.")),
  CW_FIELD_LENGTH_IN (CwMesh, lap, "lap", CW_MM (100), 0, CW_STUFF_MOST,
                      N_ ("Lap"),
                      N_ ("Of one strip over the next; 100 mm is European "
                          "practice, weakly sourced, over the 60 mm of US "
                          "guide specifications.")),
  CW_FIELD_LENGTH_IN (CwMesh, corner_width, "corner-width", CW_MM (200), 0,
                      CW_STUFF_MOST, N_ ("Corner piece width"),
                      N_ ("Of the diagonal piece at each corner of an "
                          "opening; 200 mm is common practice, no source.")),
  CW_FIELD_LENGTH_IN (CwMesh, corner_height, "corner-height", CW_MM (300), 0,
                      CW_STUFF_MOST, N_ ("Corner piece length"),
                      N_ ("Of the diagonal piece at each corner of an "
                          "opening; 300 mm is common practice, no source.")),
  CW_FIELD_LENGTH_IN (CwMesh, edge, "edge", CW_MM (250), 0, CW_STUFF_MOST,
                      N_ ("Edge strip"),
                      N_ ("Width of the strip that wraps the edge of every "
                          "opening and stub-out; 250 mm is common practice, "
                          "no source.")),
  CW_FIELD_PRICE_IN (CwMesh, N_ ("Price a roll"),
                     N_ ("In the project's currency; 0 until a price is "
                         "entered.")),
  CW_FIELD_COUNT_IN (CwMesh, corner_box, "corner-box", 0, 0, 1000000,
                     N_ ("Corner pieces a box"), "",
                     N_ ("Ready-made pieces; 0: they are cut from the roll, "
                         "common practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwMesh, corner_price, "corner-price", 0, 0,
                       CW_PRICE_MOST, N_ ("Price a box of corner pieces"), "",
                       N_ ("In the project's currency; 0 until a price is "
                           "entered.")),
  CW_FIELD_LENGTH_IN (CwMesh, edge_roll, "edge-roll", 0, 0, CW_DRAWN_MOST,
                      N_ ("Roll of edge strip"),
                      N_ ("Length of a roll of ready-made strip; 0: it is cut "
                          "from the roll of mesh, common practice, no "
                          "source.")),
  CW_FIELD_DECIMAL_IN (CwMesh, edge_price, "edge-price", 0, 0, CW_PRICE_MOST,
                       N_ ("Price a roll of edge strip"), "",
                       N_ ("In the project's currency; 0 until a price is "
                           "entered.")),
};

static const CwField finish_fields[] = {
  CW_FIELD_TEXT_IN (CwFinish, name, "name", N_ ("Finish"),
                    N_ ("What it is called on the order list.")),
  CW_FIELD_TEXT_IN (CwFinish, suits, "suits", N_ ("Suits"),
                    N_ ("What it may be laid on by its maker's word; several "
                        "with spaces between.")),
  CW_FIELD_TEXT_IN (CwFinish, kind, "kind", N_ ("Kind"),
                    N_ ("A word for what it is, which a coat over it may "
                        "name.")),
  CW_FIELD_TEXT_IN (CwFinish, unsuited, "unsuited", N_ ("Unsuited with"),
                    N_ ("Kinds that it may not be used with by its maker's "
                        "word; several with spaces between.")),
  CW_FIELD_DECIMAL_IN (CwFinish, pail, "pail", CW_DECIMAL (25), 1,
                       CW_DECIMAL (100000), N_ ("Pail"), "kg",
                       N_ ("Finish in a pail; 25 kg is common practice, no "
                           "source.")),
  CW_FIELD_DECIMAL_IN (CwFinish, use, "use", HUNDREDTHS (240), 0,
                       CW_DECIMAL (1000), N_ ("Use"), "kg/m²",
                       N_ ("Finish on a square metre; take the maker's "
                           "figure, 2.4 kg is common practice, no source.")),
  CW_FIELD_WASTE_IN (CwFinish, 5),
  CW_FIELD_PRICE_IN (CwFinish, N_ ("Price a pail"),
                     N_ ("In the project's currency; 0 until a price is "
                         "entered.")),
};

static const CwField sealant_fields[] = {
  CW_FIELD_TEXT_IN (CwSealant, name, "name", N_ ("Sealant"),
                    N_ ("What it is called on the order list.")),
  CW_FIELD_LENGTH_IN (CwSealant, width, "width", CW_MM (12), CW_STEP_LEAST,
                      CW_MM (1000), N_ ("Joint width"),
                      N_ ("Of the sealed joint; 12 mm is common practice, no "
                          "source.")),
  CW_FIELD_LENGTH_IN (CwSealant, depth, "depth", CW_MM (6), CW_STEP_LEAST,
                      CW_MM (1000), N_ ("Depth"),
                      N_ ("Half the width, at least 6 and at most 13 mm, as "
                          "ASTM C1193 practice has it.")),
  CW_FIELD_DECIMAL_IN (CwSealant, cartridge, "cartridge", CW_DECIMAL (300), 1,
                       CW_DECIMAL (100000), N_ ("Cartridge"), "mL",
                       N_ ("Sealant in a cartridge; 300 mL is common "
                           "practice, no source.")),
  CW_FIELD_WASTE_IN (CwSealant, 5),
  CW_FIELD_PRICE_IN (CwSealant, N_ ("Price a cartridge"),
                     N_ ("In the project's currency; 0 until a price is "
                         "entered.")),
};

CW_LEAF_TYPE (cw_fastener_type, CwFastener, "fastener", N_ ("Fasteners"),
              fastener_fields);
CW_LEAF_TYPE (cw_joint_mortar_type, CwJointMortar, "joint-mortar",
              N_ ("Joint mortar"), joint_mortar_fields);
CW_LEAF_TYPE (cw_barrier_type, CwBarrier, "barrier",
              N_ ("Weather-resistive barrier"), barrier_fields);
CW_LEAF_TYPE (cw_base_coat_type, CwBaseCoat, "base-coat", N_ ("Base coat"),
              base_coat_fields);
CW_LEAF_TYPE (cw_mesh_type, CwMesh, "mesh", N_ ("Mesh"), mesh_fields);
CW_LEAF_TYPE (cw_finish_type, CwFinish, "finish", N_ ("Finish"),
              finish_fields);
CW_LEAF_TYPE (cw_sealant_type, CwSealant, "sealant", N_ ("Sealant"),
              sealant_fields);
