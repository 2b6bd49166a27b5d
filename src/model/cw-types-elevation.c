/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fields of elevations: outlines, unclad areas and bands.
 */
#include "cw-types-private.h"

static const CwChoice edges[] = {
  { CW_EDGE_BASE, "base", N_ ("Base") },
  { CW_EDGE_EAVE, "eave", N_ ("Eave") },
  { CW_EDGE_RAKE, "rake", N_ ("Rake") },
  { CW_EDGE_OUTSIDE_CORNER, "outside-corner", N_ ("Outside corner") },
  { CW_EDGE_INSIDE_CORNER, "inside-corner", N_ ("Inside corner") },
  { CW_EDGE_ABUTMENT, "abutment", N_ ("Abutment") },
  { CW_EDGE_JOINT, "joint", N_ ("Joint") },
  { 0, NULL, NULL },
};

static const CwField corner_fields[] = {
  CW_FIELD_NUMBER_IN (CwCornerNode, x, "x", CW_FIELD_LENGTH,
                      CW_FIELD_REQUIRED, 0, -CW_DRAWN_MOST, CW_DRAWN_MOST,
                      N_ ("x"), "",
                      N_ ("To the right of the elevation's origin.")),
  CW_FIELD_NUMBER_IN (CwCornerNode, y, "y", CW_FIELD_LENGTH,
                      CW_FIELD_REQUIRED, 0, -CW_DRAWN_MOST, CW_DRAWN_MOST,
                      N_ ("y"), "", N_ ("Over the elevation's origin.")),
  CW_FIELD_CHOICE_IN (CwCornerNode, edge, "edge", CW_EDGE_ABUTMENT, edges,
                      N_ ("Edge"),
                      N_ ("The kind of the side from this corner to the next; "
                          "abutment until it is stated, the cautious choice "
                          "because it is sealed.")),
  CW_FIELD_LENGTH_IN (CwCornerNode, sagitta, "sagitta", 0, -CW_DRAWN_MOST,
                      CW_DRAWN_MOST, N_ ("Bow"),
                      N_ ("Height of the side's arc over its chord, outward "
                          "positive; 0 is a straight side.")),
};

static const CwNodeType *const corner_types[] = { &cw_corner_type, NULL };

static const CwSlot outline_slots[] = {
  [CW_OUTLINE_CORNERS] = { "corners", G_STRUCT_OFFSET (CwOutline, corners), TRUE,
                             corner_types, FALSE },
};

static const CwField unclad_fields[] = {
  CW_FIELD_ID_IN (CwUnclad, N_ ("The area's name in the file; unique in the "
                                "project.")),
  CW_FIELD_TEXT_IN (CwUnclad, name, "name", N_ ("Unclad area"),
                    N_ ("What stands there instead of cladding.")),
};

static const CwSlot unclad_slots[] = {
  [CW_UNCLAD_CORNERS] = { "corners", G_STRUCT_OFFSET (CwUnclad, corners), TRUE,
                            corner_types, FALSE },
};

static const CwField band_fields[] = {
  CW_FIELD_ID_IN (CwBand, N_ ("The band's name in the file; unique in the "
                              "project.")),
  CW_FIELD_TEXT_IN (CwBand, name, "name", N_ ("Band"),
                    N_ ("What it is called on the papers.")),
  CW_FIELD_NUMBER_IN (CwBand, x, "x", CW_FIELD_LENGTH, CW_FIELD_REQUIRED, 0,
                      -CW_DRAWN_MOST, CW_DRAWN_MOST, N_ ("x"), "",
                      N_ ("Of its left end, from the elevation's origin.")),
  CW_FIELD_NUMBER_IN (CwBand, y, "y", CW_FIELD_LENGTH, CW_FIELD_REQUIRED, 0,
                      -CW_DRAWN_MOST, CW_DRAWN_MOST, N_ ("y"), "",
                      N_ ("Of its lower edge, over the elevation's "
                          "origin.")),
  CW_FIELD_NUMBER_IN (CwBand, width, "width", CW_FIELD_LENGTH,
                      CW_FIELD_REQUIRED, CW_MM (1000), 1, CW_DRAWN_MOST,
                      N_ ("Length"), "", N_ ("Along the wall.")),
  CW_FIELD_NUMBER_IN (CwBand, height, "height", CW_FIELD_LENGTH,
                      CW_FIELD_REQUIRED, CW_MM (150), 1, CW_DRAWN_MOST,
                      N_ ("Height"), "", N_ ("Up the wall.")),
  CW_FIELD_LENGTH_IN (CwBand, projection, "projection", 0, 0, CW_STUFF_MOST,
                      N_ ("Projection"),
                      N_ ("How far it stands out of the face; 0 until it is "
                          "stated.")),
};

static const CwChoice barrier_states[] = {
  { CW_BARRIER_TO_INSTALL, "to-install", N_ ("To install") },
  { CW_BARRIER_INSTALLED, "installed", N_ ("Installed by others") },
  { CW_BARRIER_NONE, "none", N_ ("None") },
  { 0, NULL, NULL },
};

static const CwField elevation_fields[] = {
  CW_FIELD_ID_IN (CwElevation, N_ ("The elevation's name in the file and its "
                                   "scope in tables; unique in the "
                                   "project.")),
  CW_FIELD_TEXT_IN (CwElevation, name, "name", N_ ("Elevation"),
                    N_ ("What it is called on the papers.")),
  CW_FIELD_REFERENCE_IN (CwElevation, buildup, "buildup", "buildup",
                         N_ ("Buildup"), N_ ("What the wall is made of.")),
  CW_FIELD_COUNT_IN (CwElevation, count, "count", 1, 1, 100000, N_ ("Count"),
                     "", N_ ("How many identical walls it stands for.")),
  CW_FIELD_CHOICE_IN (CwElevation, barrier, "barrier", CW_BARRIER_TO_INSTALL,
                      barrier_states, N_ ("Barrier"),
                      N_ ("Whether the weather-resistive barrier is part of "
                          "the job; to install until it is stated, so that "
                          "it is not forgotten.")),
  CW_FIELD_REFERENCE_IN (CwElevation, sheet, "sheet", "sheet", N_ ("Sheet"),
                         N_ ("The plan sheet on which it is drawn.")),
  CW_FIELD_DECIMAL_IN (CwElevation, at_x, "at-x", 0, -CW_DECIMAL (1000000),
                       CW_DECIMAL (1000000), N_ ("Origin from the left"),
                       "pt",
                       N_ ("Where its origin lies on the sheet's page as "
                           "turned, in points (1/72 in) from the left.")),
  CW_FIELD_DECIMAL_IN (CwElevation, at_y, "at-y", 0, -CW_DECIMAL (1000000),
                       CW_DECIMAL (1000000), N_ ("Origin from the top"), "pt",
                       N_ ("Where its origin lies on the sheet's page as "
                           "turned, in points (1/72 in) from the top.")),
};

static const CwNodeType *const outline_types[] = { &cw_outline_type, NULL };
static const CwNodeType *const item_types[] = {
  &cw_window_type,   &cw_door_type,   &cw_arch_type,
  &cw_stub_out_type, &cw_unclad_type, &cw_band_type,
  &cw_dimension_type, NULL,
};

static const CwSlot elevation_slots[] = {
  [CW_ELEVATION_OUTLINE] = { "outline", G_STRUCT_OFFSET (CwElevation, outline),
                             FALSE, outline_types, FALSE },
  [CW_ELEVATION_ITEMS] = { "items", G_STRUCT_OFFSET (CwElevation, items), TRUE,
                           item_types, FALSE },
};

CW_LEAF_TYPE (cw_corner_type, CwCornerNode, "corner", N_ ("Corner"),
              corner_fields);
CW_LEAF_TYPE (cw_band_type, CwBand, "band", N_ ("Band"), band_fields);
CW_TREE_TYPE (cw_unclad_type, CwUnclad, "unclad", N_ ("Unclad area"),
              unclad_fields, unclad_slots);
CW_TREE_TYPE (cw_elevation_type, CwElevation, "elevation", N_ ("Elevation"),
              elevation_fields, elevation_slots);

/* An outline has no attributes of its own. */
const CwNodeType cw_outline_type = {
  .element = "outline",
  .label = N_ ("Outline"),
  .size = sizeof (CwOutline),
  .slots = outline_slots,
  .n_slots = G_N_ELEMENTS (outline_slots),
};
