/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fields of the project itself, its measuring rule and its plan sheets.
 */
#include "cw-types-private.h"

static const CwField info_fields[] = {
  CW_FIELD_TEXT_IN (CwInfo, name, "name", N_ ("Project"),
                    N_ ("What the job is called on every paper.")),
  CW_FIELD_TEXT_IN (CwInfo, number, "number", N_ ("Number"),
                    N_ ("The job's number in the estimator's own books.")),
  CW_FIELD_TEXT_IN (CwInfo, address, "address", N_ ("Address"),
                    N_ ("Where the building stands.")),
  CW_FIELD_TEXT_IN (CwInfo, client, "client", N_ ("Client"),
                    N_ ("Who asks for the bid.")),
  CW_FIELD_TEXT_IN (CwInfo, estimator, "estimator", N_ ("Estimator"),
                    N_ ("Who made the takeoff.")),
  CW_FIELD_TEXT_IN (CwInfo, date, "date", N_ ("Date"),
                    N_ ("The date on the papers, year-month-day.")),
  CW_FIELD_TEXT_IN (CwInfo, revision, "revision", N_ ("Revision"),
                    N_ ("The letter or number of this issue of the papers.")),
};

static const CwChoice measure_rules[] = {
  { CW_MEASURE_NET, "net", N_ ("Net") },
  { CW_MEASURE_THROUGH, "through", N_ ("Small openings measured through") },
  { CW_MEASURE_HALF, "half", N_ ("Half of each opening") },
  { CW_MEASURE_IS1200, "is1200", N_ ("IS 1200, one face") },
  { 0, NULL, NULL },
};

static const CwChoice at_limits[] = {
  { CW_AT_LIMIT_THROUGH, "through", N_ ("Measured through (at most)") },
  { CW_AT_LIMIT_DEDUCTED, "deducted", N_ ("Deducted (less than)") },
  { 0, NULL, NULL },
};

static const CwChoice measured_faces[] = {
  { CW_FACE_NARROWER, "narrower", N_ ("Narrower reveals: deducts") },
  { CW_FACE_EQUAL, "equal", N_ ("Equal reveals, both faces: half") },
  { CW_FACE_WIDER, "wider", N_ ("Wider reveals: does not deduct") },
  { 0, NULL, NULL },
};

static const CwField measure_fields[] = {
  CW_FIELD_CHOICE_IN (CwMeasure, rule, "rule", CW_MEASURE_NET, measure_rules,
                      N_ ("Measuring rule"),
                      N_ ("How openings are deducted from the measured area; "
                          "net deducts all of each.")),
  CW_FIELD_DECIMAL_IN (CwMeasure, limit, "limit", CW_DECIMAL (5) / 2, 0,
                       CW_DECIMAL (1000000), N_ ("Measured through up to"),
                       "m²",
                       N_ ("An opening of at most this area is not deducted; "
                           "2.5 m² by ATV DIN 18345, section 5.2.")),
  CW_FIELD_CHOICE_IN (CwMeasure, at_limit, "at-limit", CW_AT_LIMIT_THROUGH,
                      at_limits, N_ ("An opening of just the limit"),
                      N_ ("Books differ: at most by ATV DIN 18345, section "
                          "5.2; less than by other trade rules.")),
  CW_FIELD_CHOICE_IN (CwMeasure, face, "face", CW_FACE_NARROWER,
                      measured_faces, N_ ("This face"),
                      N_ ("For openings over 0.5 and up to 3 m² by IS 1200 "
                          "part 13:1994, clause 3.2 (b).")),
};

static const CwField scale_fields[] = {
  CW_FIELD_DECIMAL_IN (CwScale, across, "across", 0, 0, CW_DECIMAL (1000000),
                       N_ ("Scale across"), "mm/pt",
                       N_ ("Millimetres of building for a point (1/72 in) "
                           "across the page as turned; 0 is not set.")),
  CW_FIELD_DECIMAL_IN (CwScale, along, "along", 0, 0, CW_DECIMAL (1000000),
                       N_ ("Scale along"), "mm/pt",
                       N_ ("Millimetres of building for a point (1/72 in) up "
                           "the page as turned; 0 is not set.")),
};

static const CwChoice sheet_turns[] = {
  { 0, "0", N_ ("As it is") },
  { 90, "90", N_ ("A quarter clockwise") },
  { 180, "180", N_ ("Upside down") },
  { 270, "270", N_ ("A quarter anticlockwise") },
  { 0, NULL, NULL },
};

static const CwField sheet_fields[] = {
  CW_FIELD_ID_IN (CwSheet, N_ ("The name by which elevations lie on the "
                               "sheet; unique in the project.")),
  CW_FIELD_TEXT_IN (CwSheet, name, "name", N_ ("Sheet"),
                    N_ ("The sheet's number in the plan set.")),
  CW_FIELD_TEXT_IN (CwSheet, file, "file", N_ ("File"),
                    N_ ("Path of the PDF or image, from the project's "
                        "folder.")),
  CW_FIELD_TEXT_IN (CwSheet, sha256, "sha256", N_ ("SHA-256"),
                    N_ ("Checksum of the file when it was added, to notice "
                        "that it has changed.")),
  CW_FIELD_COUNT_IN (CwSheet, page, "page", 1, 1, 100000, N_ ("Page"), "",
                     N_ ("Which page of the file, from 1.")),
  CW_FIELD_CHOICE_IN (CwSheet, turn, "turn", 0, sheet_turns, N_ ("Turn"),
                      N_ ("How far the page is turned clockwise, on top of "
                          "its own turn.")),
};

static const CwNodeType *const scale_types[] = { &cw_scale_type, NULL };

static const CwSlot sheet_slots[] = {
  [CW_SHEET_SCALE] = { "scale", G_STRUCT_OFFSET (CwSheet, scale), FALSE,
                       scale_types, FALSE },
};

static const CwChoice project_units[] = {
  { CW_UNITS_US, "us", N_ ("Feet and inches") },
  { CW_UNITS_METRIC, "metric", N_ ("Metric") },
  { 0, NULL, NULL },
};

static const CwField project_fields[] = {
  CW_FIELD_NUMBER_IN (CwProject, format, "format", CW_FIELD_COUNT,
                      CW_FIELD_REQUIRED, 1, 1, 1, N_ ("Format"), "",
                      N_ ("Number of the file format; this program knows "
                          "1.")),
  CW_FIELD_CHOICE_IN (CwProject, units, "units", CW_UNITS_US, project_units,
                      N_ ("Units"),
                      N_ ("What lengths and amounts are shown in; the project "
                          "itself does not depend on it.")),
  CW_FIELD_TEXT_IN (CwProject, currency, "currency", N_ ("Currency"),
                    N_ ("Three letters by ISO 4217, for prices.")),
};

static const CwNodeType *const info_types[] = { &cw_info_type, NULL };
static const CwNodeType *const measure_types[] = { &cw_measure_type, NULL };
static const CwNodeType *const limits_types[] = { &cw_limits_type, NULL };
static const CwNodeType *const lifting_types[] = { &cw_lifting_type, NULL };
static const CwNodeType *const wind_types[] = { &cw_wind_type, NULL };
static const CwNodeType *const waiver_types[] = { &cw_waiver_type, NULL };
static const CwNodeType *const sheet_types[] = { &cw_sheet_type, NULL };
static const CwNodeType *const buildup_types[] = { &cw_buildup_type, NULL };
static const CwNodeType *const mark_types[] = { &cw_mark_type, NULL };
static const CwNodeType *const elevation_types[]
    = { &cw_elevation_type, NULL };

static const CwNodeType *const bid_types[] = { &cw_bid_type, NULL };
static const CwNodeType *const truck_types[] = { &cw_truck_type, NULL };
static const CwNodeType *const equipment_types[]
    = { &cw_equipment_type, NULL };
static const CwNodeType *const own_line_types[] = { &cw_own_line_type, NULL };
static const CwNodeType *const alternate_types[]
    = { &cw_alternate_type, NULL };

static const CwSlot project_slots[] = {
  [CW_PROJECT_INFO] = { "info", G_STRUCT_OFFSET (CwProject, info), FALSE,
                        info_types, TRUE },
  [CW_PROJECT_MEASURE] = { "measure", G_STRUCT_OFFSET (CwProject, measure),
                           FALSE, measure_types, TRUE },
  [CW_PROJECT_LIMITS] = { "limits", G_STRUCT_OFFSET (CwProject, limits), FALSE,
                          limits_types, TRUE },
  [CW_PROJECT_LIFTING] = { "lifting", G_STRUCT_OFFSET (CwProject, lifting),
                           FALSE, lifting_types, TRUE },
  [CW_PROJECT_WIND] = { "wind", G_STRUCT_OFFSET (CwProject, wind), FALSE,
                        wind_types, TRUE },
  [CW_PROJECT_SHEETS] = { "sheets", G_STRUCT_OFFSET (CwProject, sheets), TRUE,
                          sheet_types, FALSE },
  [CW_PROJECT_BUILDUPS] = { "buildups", G_STRUCT_OFFSET (CwProject, buildups),
                            TRUE, buildup_types, FALSE },
  [CW_PROJECT_MARKS] = { "marks", G_STRUCT_OFFSET (CwProject, marks), TRUE,
                         mark_types, FALSE },
  [CW_PROJECT_ELEVATIONS]
  = { "elevations", G_STRUCT_OFFSET (CwProject, elevations), TRUE,
      elevation_types, FALSE },
  [CW_PROJECT_BID] = { "bid", G_STRUCT_OFFSET (CwProject, bid), FALSE,
                       bid_types, TRUE },
  [CW_PROJECT_TRUCK] = { "truck", G_STRUCT_OFFSET (CwProject, truck), FALSE,
                         truck_types, TRUE },
  [CW_PROJECT_EQUIPMENT]
  = { "equipment", G_STRUCT_OFFSET (CwProject, equipment), TRUE,
      equipment_types, FALSE },
  [CW_PROJECT_OWN_LINES]
  = { "own-lines", G_STRUCT_OFFSET (CwProject, own_lines), TRUE,
      own_line_types, FALSE },
  [CW_PROJECT_ALTERNATES]
  = { "alternates", G_STRUCT_OFFSET (CwProject, alternates), TRUE,
      alternate_types, FALSE },
  [CW_PROJECT_WAIVERS] = { "waivers", G_STRUCT_OFFSET (CwProject, waivers),
                           TRUE, waiver_types, FALSE },
};

CW_LEAF_TYPE (cw_info_type, CwInfo, "info", N_ ("Project information"),
              info_fields);
CW_LEAF_TYPE (cw_measure_type, CwMeasure, "measure", N_ ("Measuring"),
              measure_fields);
CW_LEAF_TYPE (cw_scale_type, CwScale, "scale", N_ ("Scale"), scale_fields);
CW_TREE_TYPE (cw_sheet_type, CwSheet, "sheet", N_ ("Plan sheet"),
              sheet_fields, sheet_slots);
CW_TREE_TYPE (cw_project_type, CwProject, "project", N_ ("Project"),
              project_fields, project_slots);

const CwNodeType *const cw_node_types[] = {
  &cw_project_type,
  &cw_info_type,
  &cw_measure_type,
  &cw_limits_type,
  &cw_lifting_type,
  &cw_wind_type,
  &cw_sheet_type,
  &cw_scale_type,
  &cw_buildup_type,
  &cw_studs_type,
  &cw_panel_type,
  &cw_setting_out_type,
  &cw_fastener_type,
  &cw_joint_mortar_type,
  &cw_barrier_type,
  &cw_base_coat_type,
  &cw_mesh_type,
  &cw_finish_type,
  &cw_sealant_type,
  &cw_mark_type,
  &cw_elevation_type,
  &cw_outline_type,
  &cw_corner_type,
  &cw_window_type,
  &cw_door_type,
  &cw_arch_type,
  &cw_stub_out_type,
  &cw_unclad_type,
  &cw_band_type,
  &cw_dimension_type,
  &cw_waiver_type,
  &cw_labour_type,
  &cw_bead_type,
  &cw_backer_rod_type,
  &cw_bid_type,
  &cw_truck_type,
  &cw_equipment_type,
  &cw_own_line_type,
  &cw_alternate_type,
  NULL,
};
