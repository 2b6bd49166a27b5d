/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fields of a buildup: what the wall is fixed to, the panels, and how they
 * are set out.
 */
#include "cw-types-private.h"

static const CwChoice stud_materials[] = {
  { CW_STUDS_WOOD, "wood", N_ ("Wood") },
  { CW_STUDS_STEEL, "steel", N_ ("Steel") },
  { 0, NULL, NULL },
};

static const CwField studs_fields[] = {
  CW_FIELD_LENGTH_IN (CwStuds, spacing, "spacing", CW_INCHES (16), CW_MM (10),
                      CW_STUFF_MOST, N_ ("Spacing"),
                      N_ ("From centre to centre of two studs; 16 in is "
                          "common practice, no source.")),
  CW_FIELD_LENGTH_IN (CwStuds, first, "first", 0, -CW_DRAWN_MOST,
                      CW_DRAWN_MOST, N_ ("First stud"),
                      N_ ("Where a stud's centre stands, from the elevation's "
                          "origin; 0 is common practice, no source.")),
  CW_FIELD_YES_NO_IN (CwStuds, at_jambs, "at-jambs", 1, N_ ("Studs at jambs"),
                      N_ ("Whether a stud stands at each jamb of an opening; "
                          "common practice, no source.")),
  CW_FIELD_CHOICE_IN (CwStuds, material, "material", CW_STUDS_WOOD,
                      stud_materials, N_ ("Material"),
                      N_ ("What the fasteners are driven into; wood is common "
                          "practice, no source.")),
};

static const CwField panel_fields[] = {
  CW_FIELD_TEXT_IN (CwPanel, name, "name", N_ ("Panel"),
                    N_ ("What the panel is called on the order list.")),
  CW_FIELD_LENGTH_IN (CwPanel, length, "length", CW_MM (2400), CW_STEP_LEAST,
                      CW_STUFF_MOST, N_ ("Length"),
                      N_ ("Along the panel; 2400 mm is common practice, no "
                          "source.")),
  CW_FIELD_LENGTH_IN (CwPanel, height, "height", CW_MM (600), CW_STEP_LEAST,
                      CW_STUFF_MOST, N_ ("Height"),
                      N_ ("Across the panel; 600 mm is common practice, no "
                          "source.")),
  CW_FIELD_LENGTH_IN (CwPanel, thickness, "thickness", CW_MM (50),
                      CW_STEP_LEAST, CW_MM (1000), N_ ("Thickness"),
                      N_ ("Through the panel; 50 mm is common practice, no "
                          "source.")),
  CW_FIELD_LENGTH_IN (CwPanel, joint, "joint", CW_MM (3), 0, CW_MM (100),
                      N_ ("Joint"),
                      N_ ("Width of the mortared joint between panels; 3 mm "
                          "is the widest thin-layer joint of EN 1996-1-1 "
                          "(from memory).")),
  CW_FIELD_LENGTH_IN (CwPanel, kerf, "kerf", CW_MM (4), 0, CW_MM (100),
                      N_ ("Saw kerf"),
                      N_ ("What a saw cut takes away; 4 mm is common "
                          "practice, no source.")),
  CW_FIELD_DECIMAL_IN (CwPanel, mass, "mass", CW_DECIMAL (43), 0,
                       CW_DECIMAL (100000), N_ ("Mass"), "kg",
                       N_ ("Of one panel as delivered; take the maker's "
                           "figure, 43 kg is a density of 600 kg/m³.")),
  CW_FIELD_COUNT_IN (CwPanel, spare, "spare", 0, 0, 1000000, N_ ("Spare"), "",
                     N_ ("Panels ordered beyond the cut plan, for breakage; "
                         "the estimator's choice.")),
  CW_FIELD_COUNT_IN (CwPanel, per_pallet, "per-pallet", 20, 1, 100000,
                     N_ ("Panels a pallet"), "",
                     N_ ("How the supplier packs them; 20 is common practice, "
                         "no source.")),
  CW_FIELD_LENGTH_IN (CwPanel, pallet_length, "pallet-length", CW_MM (2400),
                      CW_STEP_LEAST, CW_STUFF_MOST, N_ ("Pallet length"),
                      N_ ("Ground that a pallet covers, the long way; the "
                          "panel's own length.")),
  CW_FIELD_LENGTH_IN (CwPanel, pallet_width, "pallet-width", CW_MM (1200),
                      CW_STEP_LEAST, CW_STUFF_MOST, N_ ("Pallet width"),
                      N_ ("Ground that a pallet covers, the short way; two "
                          "panels side by side.")),
  CW_FIELD_PRICE_IN (CwPanel, N_ ("Price a panel"),
                     N_ ("In the project's currency; 0 until a price is "
                         "entered.")),
};

static const CwChoice runs[] = {
  { CW_RUN_HORIZONTAL, "horizontal", N_ ("Horizontal") },
  { CW_RUN_VERTICAL, "vertical", N_ ("Vertical") },
  { 0, NULL, NULL },
};

static const CwChoice starts[] = {
  { CW_START_LEFT, "left", N_ ("Left corner") },
  { CW_START_RIGHT, "right", N_ ("Right corner") },
  { CW_START_BOTH, "both", N_ ("Both corners, closer in the middle") },
  { 0, NULL, NULL },
};

static const CwChoice bonds[] = {
  { CW_BOND_STACKED, "stacked", N_ ("Stacked") },
  { CW_BOND_STAGGER, "stagger", N_ ("Staggered") },
  { CW_BOND_OFFCUT, "offcut", N_ ("Begun with the offcut") },
  { 0, NULL, NULL },
};

static const CwChoice at_openings[] = {
  { CW_AT_OPENINGS_NOTCH, "notch", N_ ("Panels notched") },
  { CW_AT_OPENINGS_BREAK, "break", N_ ("Joint at each jamb") },
  { 0, NULL, NULL },
};

static const CwChoice offcuts[] = {
  { CW_OFFCUTS_NONE, "none", N_ ("Not used again") },
  { CW_OFFCUTS_COURSE, "course", N_ ("In the course") },
  { CW_OFFCUTS_ELEVATION, "elevation", N_ ("In the elevation") },
  { CW_OFFCUTS_PROJECT, "project", N_ ("In the whole project") },
  { 0, NULL, NULL },
};

static const CwField setting_out_fields[] = {
  CW_FIELD_CHOICE_IN (CwSettingOut, run, "run", CW_RUN_HORIZONTAL, runs,
                      N_ ("Run"),
                      N_ ("Which way the panels lie; horizontal is common "
                          "practice, no source.")),
  CW_FIELD_CHOICE_IN (CwSettingOut, start, "start", CW_START_LEFT, starts,
                      N_ ("Start"),
                      N_ ("The corner in which each course is begun; the left "
                          "is common practice, no source.")),
  CW_FIELD_LENGTH_IN (CwSettingOut, offset, "offset", 0, -CW_STUFF_MOST,
                      CW_STUFF_MOST, N_ ("Offset"),
                      N_ ("How far from the corner the first panel starts.")),
  CW_FIELD_LENGTH_IN (CwSettingOut, base, "base", 0, -CW_DRAWN_MOST,
                      CW_DRAWN_MOST, N_ ("Base"),
                      N_ ("Height over the elevation's origin from which the "
                          "courses rise.")),
  CW_FIELD_CHOICE_IN (CwSettingOut, bond, "bond", CW_BOND_STACKED, bonds,
                      N_ ("Bond"),
                      N_ ("How the head joints of a course lie to those of "
                          "the one below; stacked is the plainest, no "
                          "source. The maker's instructions govern.")),
  CW_FIELD_LENGTH_IN (CwSettingOut, stagger, "stagger", 0, 0, CW_STUFF_MOST,
                      N_ ("Stagger"),
                      N_ ("How far each course is moved on, for the staggered "
                          "bond.")),
  CW_FIELD_LENGTH_IN (CwSettingOut, least_piece, "least-piece", CW_MM (150),
                      0, CW_STUFF_MOST, N_ ("Least piece"),
                      N_ ("A narrower piece is avoided by shortening its "
                          "neighbour; 150 mm is common practice, no "
                          "source.")),
  CW_FIELD_LENGTH_IN (CwSettingOut, least_stagger, "least-stagger",
                      CW_MM (200), 0, CW_STUFF_MOST, N_ ("Least stagger"),
                      N_ ("Head joints of neighbouring courses keep this far "
                          "apart where the bond asks it; 200 mm is common "
                          "practice, no source.")),
  CW_FIELD_YES_NO_IN (CwSettingOut, joints_on_studs, "joints-on-studs", 0,
                      N_ ("Joints on studs"),
                      N_ ("Whether a head joint is moved back to the nearest "
                          "stud; not moving it is common practice, no "
                          "source.")),
  CW_FIELD_CHOICE_IN (CwSettingOut, at_openings, "at-openings",
                      CW_AT_OPENINGS_NOTCH, at_openings, N_ ("At openings"),
                      N_ ("Notched panels keep joints away from the corners "
                          "of openings; common practice, no source.")),
  CW_FIELD_LENGTH_IN (CwSettingOut, rasp, "rasp", CW_MM (25), 0,
                      CW_STUFF_MOST, N_ ("Rasp up to"),
                      N_ ("A piece too large by at most this is rasped, "
                          "otherwise sawn; 25 mm is common practice, no "
                          "source.")),
  CW_FIELD_CHOICE_IN (CwSettingOut, offcuts, "offcuts", CW_OFFCUTS_PROJECT,
                      offcuts, N_ ("Offcuts"),
                      N_ ("How far an offcut may travel to be used again; in "
                          "the whole project it saves most, no source.")),
  CW_FIELD_YES_NO_IN (CwSettingOut, turn, "turn", 0, N_ ("Turn blanks"),
                      N_ ("Whether a piece may be cut across the panel; not "
                          "unless the maker allows it.")),
};

static const CwField buildup_fields[] = {
  CW_FIELD_ID_IN (CwBuildup, N_ ("The name by which elevations use the "
                                 "buildup; unique in the project.")),
  CW_FIELD_TEXT_IN (CwBuildup, name, "name", N_ ("Buildup"),
                    N_ ("What the buildup is called on the papers.")),
};

static const CwNodeType *const studs_types[] = { &cw_studs_type, NULL };
static const CwNodeType *const panel_types[] = { &cw_panel_type, NULL };
static const CwNodeType *const setting_out_types[]
    = { &cw_setting_out_type, NULL };
static const CwNodeType *const fastener_types[] = { &cw_fastener_type, NULL };
static const CwNodeType *const joint_mortar_types[]
    = { &cw_joint_mortar_type, NULL };
static const CwNodeType *const barrier_types[] = { &cw_barrier_type, NULL };
static const CwNodeType *const base_coat_types[]
    = { &cw_base_coat_type, NULL };
static const CwNodeType *const mesh_types[] = { &cw_mesh_type, NULL };
static const CwNodeType *const finish_types[] = { &cw_finish_type, NULL };
static const CwNodeType *const sealant_types[] = { &cw_sealant_type, NULL };

static const CwNodeType *const backer_rod_types[]
    = { &cw_backer_rod_type, NULL };
static const CwNodeType *const bead_types[] = { &cw_bead_type, NULL };
static const CwNodeType *const labour_types[] = { &cw_labour_type, NULL };

#define SINGLE(name, member, types, always)                                   \
  {                                                                           \
    name, G_STRUCT_OFFSET (CwBuildup, member), FALSE, types, always           \
  }

static const CwSlot buildup_slots[] = {
  [CW_BUILDUP_STUDS] = SINGLE ("studs", studs, studs_types, TRUE),
  [CW_BUILDUP_PANELS] = { "panels", G_STRUCT_OFFSET (CwBuildup, panels), TRUE,
                          panel_types, TRUE },
  [CW_BUILDUP_SETTING_OUT]
  = SINGLE ("setting-out", setting_out, setting_out_types, TRUE),
  [CW_BUILDUP_FASTENER] = SINGLE ("fastener", fastener, fastener_types, FALSE),
  [CW_BUILDUP_JOINT_MORTAR]
  = SINGLE ("joint-mortar", joint_mortar, joint_mortar_types, FALSE),
  [CW_BUILDUP_BARRIER] = SINGLE ("barrier", barrier, barrier_types, FALSE),
  [CW_BUILDUP_BASE_COAT]
  = SINGLE ("base-coat", base_coat, base_coat_types, FALSE),
  [CW_BUILDUP_MESH] = SINGLE ("mesh", mesh, mesh_types, FALSE),
  [CW_BUILDUP_FINISH] = SINGLE ("finish", finish, finish_types, FALSE),
  [CW_BUILDUP_SEALANT] = SINGLE ("sealant", sealant, sealant_types, FALSE),
  [CW_BUILDUP_BACKER_ROD]
  = SINGLE ("backer-rod", backer_rod, backer_rod_types, FALSE),
  [CW_BUILDUP_BEADS] = { "beads", G_STRUCT_OFFSET (CwBuildup, beads), TRUE,
                         bead_types, FALSE },
  [CW_BUILDUP_LABOUR] = SINGLE ("labour", labour, labour_types, FALSE),
};

CW_LEAF_TYPE (cw_studs_type, CwStuds, "studs", N_ ("Studs"), studs_fields);
CW_LEAF_TYPE (cw_panel_type, CwPanel, "panel", N_ ("Panel"), panel_fields);
CW_LEAF_TYPE (cw_setting_out_type, CwSettingOut, "setting-out",
              N_ ("Setting out"), setting_out_fields);
CW_TREE_TYPE (cw_buildup_type, CwBuildup, "buildup", N_ ("Buildup"),
              buildup_fields, buildup_slots);
