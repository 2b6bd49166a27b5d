/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fields of what turns quantities into a bid: the crew's rates, the trucks,
 * what is hired, the estimator's own lines, and what is put on top.
 */
#include "cw-types-private.h"

#define CW_RATE_IN(member, name_, fallback_, label_, unit_, help_)            \
  CW_FIELD_DECIMAL_IN (CwLabour, member, name_, CW_DECIMAL (fallback_), 0,    \
                       CW_DECIMAL (1000000), label_, unit_, help_)
#define CW_PERCENT_IN(of, member, name_, label_, help_)                       \
  CW_FIELD_DECIMAL_IN (of, member, name_, 0, 0, CW_DECIMAL (1000), label_,    \
                       "%", help_)

static const CwField labour_fields[] = {
  CW_FIELD_COUNT_IN (CwLabour, crew, "crew", 3, 1, 1000, N_ ("Crew"), "",
                     N_ ("Persons who work together; 3 is common practice, "
                         "no source.")),
  CW_FIELD_DECIMAL_IN (CwLabour, day, "day", CW_DECIMAL (8),
                       CW_DECIMAL_ONE / 10, CW_DECIMAL (24),
                       N_ ("Working day"), "h",
                       N_ ("Hours of work in a day; 8 h is common practice, "
                           "no source.")),
  CW_FIELD_DECIMAL_IN (CwLabour, wage, "wage", 0, 0, CW_PRICE_MOST,
                       N_ ("Wage"), "",
                       N_ ("Of one person for an hour with all that is paid on "
                           "top of it, in the project's currency; 0 until it "
                           "is entered.")),
  CW_RATE_IN (barrier, "barrier", 25, N_ ("Barrier laid"), "m²/h",
              N_ ("By the crew in an hour, of barrier as laid; 25 m² is "
                  "common practice, no source.")),
  CW_RATE_IN (sawing, "sawing", 20, N_ ("Sawn"), "m/h",
              N_ ("By the crew in an hour, with marking out; 20 m is common "
                  "practice, no source.")),
  CW_RATE_IN (panels, "panels", 8, N_ ("Panels set"), "m²/h",
              N_ ("By the crew in an hour, of panel on the wall, with "
                  "fastening; 8 m² is common practice, no source.")),
  CW_RATE_IN (joints, "joints", 30, N_ ("Joints mortared"), "m/h",
              N_ ("By the crew in an hour, of bed and head joints and edges "
                  "at openings; 30 m is common practice, no source.")),
  CW_RATE_IN (base_coat, "base-coat", 10, N_ ("Base coat and mesh"), "m²/h",
              N_ ("By the crew in an hour, of coated area; 10 m² is common "
                  "practice, no source.")),
  CW_RATE_IN (finish, "finish", 12, N_ ("Finish laid"), "m²/h",
              N_ ("By the crew in an hour, of coated area; 12 m² is common "
                  "practice, no source.")),
  CW_RATE_IN (sealant, "sealant", 20, N_ ("Sealed"), "m/h",
              N_ ("By the crew in an hour, with the backer rod; 20 m is "
                  "common practice, no source.")),
  CW_RATE_IN (beads, "beads", 30, N_ ("Beads set"), "m/h",
              N_ ("By the crew in an hour, of corner, starter, drip and "
                  "control joint; 30 m is common practice, no source.")),
};

static const CwChoice bead_kinds[] = {
  { CW_BEAD_CORNER, "corner", N_ ("Corner bead") },
  { CW_BEAD_STARTER, "starter", N_ ("Starter") },
  { CW_BEAD_DRIP, "drip", N_ ("Drip bead") },
  { CW_BEAD_CONTROL_JOINT, "control-joint", N_ ("Control joint") },
  { 0, NULL, NULL },
};

static const CwField bead_fields[] = {
  CW_FIELD_CHOICE_IN (CwBead, kind, "kind", CW_BEAD_CORNER, bead_kinds,
                      N_ ("Kind"), N_ ("Which length of the wall it covers.")),
  CW_FIELD_TEXT_IN (CwBead, name, "name", N_ ("Bead"),
                    N_ ("What it is called on the order list.")),
  CW_FIELD_LENGTH_IN (CwBead, length, "length", CW_MM (2500), CW_STEP_LEAST,
                      CW_STUFF_MOST, N_ ("Stock length"),
                      N_ ("How long it is sold; 2500 mm is common practice, "
                          "no source.")),
  CW_FIELD_WASTE_IN (CwBead, 5),
  CW_FIELD_PRICE_IN (CwBead, N_ ("Price a length"),
                     N_ ("In the project's currency; 0 until a price is "
                         "entered.")),
};

static const CwField backer_rod_fields[] = {
  CW_FIELD_TEXT_IN (CwBackerRod, name, "name", N_ ("Backer rod"),
                    N_ ("What it is called on the order list.")),
  CW_FIELD_LENGTH_IN (CwBackerRod, diameter, "diameter", CW_MM (15),
                      CW_STEP_LEAST, CW_MM (1000), N_ ("Diameter"),
                      N_ ("A quarter wider than the joint by the US military "
                          "guide specification UFGS 07240; 15 mm for a joint "
                          "of 12 mm.")),
  CW_FIELD_LENGTH_IN (CwBackerRod, length, "length", CW_MM (50000),
                      CW_STEP_LEAST, CW_DRAWN_MOST, N_ ("Coil length"),
                      N_ ("How it is sold; 50 m is common practice, no "
                          "source.")),
  CW_FIELD_WASTE_IN (CwBackerRod, 5),
  CW_FIELD_PRICE_IN (CwBackerRod, N_ ("Price a coil"),
                     N_ ("In the project's currency; 0 until a price is "
                         "entered.")),
};

static const CwChoice profit_on[] = {
  { CW_PROFIT_ON_COST, "cost", N_ ("Of cost (markup)") },
  { CW_PROFIT_ON_PRICE, "price", N_ ("Of the price (margin)") },
  { 0, NULL, NULL },
};

static const CwChoice tax_on[] = {
  { CW_TAX_ON_LINES, "lines", N_ ("Material and lines said to be taxed") },
  { CW_TAX_ON_PRICE, "price", N_ ("The whole price") },
  { 0, NULL, NULL },
};

static const CwChoice halves[] = {
  { CW_HALF_AWAY, "away", N_ ("Away from zero") },
  { CW_HALF_EVEN, "even", N_ ("To the even neighbour") },
  { 0, NULL, NULL },
};

static const CwField bid_fields[] = {
  CW_PERCENT_IN (CwBid, contingency, "contingency", N_ ("Contingency"),
                 N_ ("On material, labour and equipment; 0 until the "
                     "estimator says.")),
  CW_PERCENT_IN (CwBid, overhead, "overhead", N_ ("Overhead"),
                 N_ ("On material, labour, equipment and contingency; 0 until "
                     "the estimator says.")),
  CW_FIELD_DECIMAL_IN (CwBid, profit, "profit", 0, 0, CW_DECIMAL (95),
                       N_ ("Profit"), "%",
                       N_ ("On all of that with overhead; 0 until the "
                           "estimator says.")),
  CW_FIELD_CHOICE_IN (CwBid, profit_on, "profit-on", CW_PROFIT_ON_COST,
                      profit_on, N_ ("Profit is a part"),
                      N_ ("20 % of cost is less than 20 % of the price: 800 "
                          "becomes 960 or 1000.")),
  CW_PERCENT_IN (CwBid, tax, "tax", N_ ("Tax"),
                 N_ ("By the law of the place; 0 until the estimator "
                     "says.")),
  CW_FIELD_CHOICE_IN (CwBid, tax_on, "tax-on", CW_TAX_ON_LINES, tax_on,
                      N_ ("Tax is on"),
                      N_ ("What the tax is reckoned on; the law of the place "
                          "governs.")),
  CW_FIELD_DECIMAL_IN (CwBid, rounding, "rounding", 0, 0, CW_DECIMAL (1000000),
                       N_ ("Round the bid up to"), "",
                       N_ ("A multiple of this in the project's currency; 0: "
                           "not rounded.")),
  CW_FIELD_CHOICE_IN (CwBid, half, "half", CW_HALF_AWAY, halves,
                      N_ ("Half a smallest unit"),
                      N_ ("Each line is rounded once to the currency's "
                          "smallest unit; common practice, no source.")),
};

static const CwField truck_fields[] = {
  CW_FIELD_DECIMAL_IN (CwTruck, payload, "payload", CW_DECIMAL (19958), 1,
                       CW_DECIMAL (1000000), N_ ("Payload"), "kg",
                       N_ ("What a truck carries; 44,000 lb is common "
                           "practice, no source. The law of the road "
                           "governs.")),
  CW_FIELD_COUNT_IN (CwTruck, pallets, "pallets", 22, 1, 10000,
                     N_ ("Pallets a truck"), "",
                     N_ ("Of panels, that its bed holds; 22 is common "
                         "practice, no source.")),
};

static const CwChoice equipment_by[] = {
  { CW_EQUIPMENT_EACH, "each", N_ ("Each, once") },
  { CW_EQUIPMENT_DAY, "day", N_ ("Each, a day") },
  { 0, NULL, NULL },
};

static const CwField equipment_fields[] = {
  CW_FIELD_TEXT_IN (CwEquipment, name, "name", N_ ("Equipment"),
                    N_ ("What is hired or used up.")),
  CW_FIELD_COUNT_IN (CwEquipment, each, "count", 1, 0, 100000, N_ ("Count"),
                     "", N_ ("How many of them.")),
  CW_FIELD_CHOICE_IN (CwEquipment, by, "by", CW_EQUIPMENT_DAY, equipment_by,
                      N_ ("Priced"), N_ ("Once, or for each day.")),
  CW_FIELD_DECIMAL_IN (CwEquipment, days, "days", 0, 0, CW_DECIMAL (100000),
                       N_ ("Days"), "d",
                       N_ ("How long; 0: as many whole days as the crew "
                           "works.")),
  CW_FIELD_PRICE_IN (CwEquipment, N_ ("Price"),
                     N_ ("Of one, once or a day, in the project's currency; 0 "
                         "until a price is entered.")),
  CW_FIELD_YES_NO_IN (CwEquipment, taxed, "taxed", 0, N_ ("Taxed"),
                      N_ ("Whether the tax is reckoned on it; the law of the "
                          "place governs.")),
};

static const CwChoice cost_kinds[] = {
  { CW_COST_MATERIAL, "material", N_ ("Material") },
  { CW_COST_LABOUR, "labour", N_ ("Labour") },
  { CW_COST_EQUIPMENT, "equipment", N_ ("Equipment") },
  { 0, NULL, NULL },
};

/* The names are those of the quantities. */
static const CwChoice line_keys[] = {
  { CW_LINE_PROJECT, "project", N_ ("The project, once") },
  { CW_LINE_WALL_GROSS, "wall.gross", N_ ("Gross wall area") },
  { CW_LINE_WALL_NET, "wall.net", N_ ("Net wall area") },
  { CW_LINE_WALL_MEASURED, "wall.measured", N_ ("Measured wall area") },
  { CW_LINE_OPENING_COUNT, "opening.count", N_ ("Opening") },
  { CW_LINE_OPENING_AREA, "opening.area", N_ ("Area of openings") },
  { CW_LINE_OPENING_HEAD, "opening.head", N_ ("Heads of openings") },
  { CW_LINE_OPENING_SILL, "opening.sill", N_ ("Sills of openings") },
  { CW_LINE_REVEAL_AREA, "reveal.area", N_ ("Area of reveals") },
  { CW_LINE_EDGE_BASE, "edge.base", N_ ("Base") },
  { CW_LINE_EDGE_EAVE, "edge.eave", N_ ("Eaves") },
  { CW_LINE_EDGE_RAKE, "edge.rake", N_ ("Rakes") },
  { CW_LINE_EDGE_CORNER, "edge.outside-corner", N_ ("Outside corners") },
  { CW_LINE_BAND_LENGTH, "band.length", N_ ("Bands") },
  { CW_LINE_BARRIER_AREA, "barrier.area", N_ ("Barrier") },
  { CW_LINE_PANEL_CUT, "panel.cut", N_ ("Cut piece") },
  { CW_LINE_PANEL_ORDER, "panel.order", N_ ("Panel ordered") },
  { CW_LINE_SAW_LENGTH, "saw.length", N_ ("Straight saw cuts") },
  { CW_LINE_SEALANT_LENGTH, "sealant.length", N_ ("Sealant joints") },
  { CW_LINE_CONTROL_JOINT, "joint.control", N_ ("Control joints") },
  { CW_LINE_MASS_TOTAL, "mass.total", N_ ("Mass delivered") },
  { CW_LINE_PALLET_COUNT, "pallet.count", N_ ("Pallet") },
  { CW_LINE_TRUCK_COUNT, "truck.count", N_ ("Truck") },
  { CW_LINE_LABOUR_HOURS, "labour.hours", N_ ("Person's hour") },
  { CW_LINE_LABOUR_DAYS, "labour.days", N_ ("Crew's day") },
  { 0, NULL, NULL },
};

static const CwChoice line_units[] = {
  { CW_UNITS_METRIC, "metric", N_ ("m, m², kg") },
  { CW_UNITS_US, "us", N_ ("ft, ft², lb") },
  { 0, NULL, NULL },
};

static const CwField own_line_fields[] = {
  CW_FIELD_TEXT_IN (CwOwnLine, name, "name", N_ ("Line"),
                    N_ ("What it is called on the papers.")),
  CW_FIELD_CHOICE_IN (CwOwnLine, kind, "kind", CW_COST_MATERIAL, cost_kinds,
                      N_ ("Kind"), N_ ("The sum that it belongs to.")),
  CW_FIELD_CHOICE_IN (CwOwnLine, key, "per", CW_LINE_PROJECT, line_keys,
                      N_ ("For each"),
                      N_ ("What it is priced by: the project's figure of that "
                          "quantity.")),
  CW_FIELD_CHOICE_IN (CwOwnLine, units, "units", CW_UNITS_METRIC, line_units,
                      N_ ("Measured in"),
                      N_ ("The units in which the quantity is priced, whatever "
                          "those of the screen are.")),
  CW_FIELD_DECIMAL_IN (CwOwnLine, amount, "amount", CW_DECIMAL_ONE, 0,
                       CW_DECIMAL (1000000), N_ ("Amount"), "",
                       N_ ("How many for each; 1 until it is entered.")),
  CW_FIELD_DECIMAL_IN (CwOwnLine, price, "price", 0, -CW_PRICE_MOST,
                       CW_PRICE_MOST, N_ ("Price"), "",
                       N_ ("Of one, in the project's currency; a negative one "
                           "takes off. 0 until a price is entered.")),
  CW_FIELD_YES_NO_IN (CwOwnLine, taxed, "taxed", 0, N_ ("Taxed"),
                      N_ ("Whether the tax is reckoned on it; the law of the "
                          "place governs.")),
};

static const CwField alternate_fields[] = {
  CW_FIELD_TEXT_IN (CwAlternate, name, "name", N_ ("Alternate"),
                    N_ ("What it is called on the papers.")),
  CW_FIELD_REFERENCE_IN (CwAlternate, buildup, "buildup", "buildup",
                         N_ ("Instead of"),
                         N_ ("The buildup that is replaced on every wall that "
                             "has it.")),
  CW_FIELD_REFERENCE_IN (CwAlternate, by, "by", "buildup", N_ ("Take"),
                         N_ ("The buildup that is priced in its place.")),
};

CW_LEAF_TYPE (cw_labour_type, CwLabour, "labour", N_ ("Labour"),
              labour_fields);
CW_LEAF_TYPE (cw_bead_type, CwBead, "bead", N_ ("Bead"), bead_fields);
CW_LEAF_TYPE (cw_backer_rod_type, CwBackerRod, "backer-rod",
              N_ ("Backer rod"), backer_rod_fields);
CW_LEAF_TYPE (cw_bid_type, CwBid, "bid", N_ ("Bid"), bid_fields);
CW_LEAF_TYPE (cw_truck_type, CwTruck, "truck", N_ ("Truck"), truck_fields);
CW_LEAF_TYPE (cw_equipment_type, CwEquipment, "equipment", N_ ("Equipment"),
              equipment_fields);
CW_LEAF_TYPE (cw_own_line_type, CwOwnLine, "own-line", N_ ("Own line"),
              own_line_fields);
CW_LEAF_TYPE (cw_alternate_type, CwAlternate, "alternate", N_ ("Alternate"),
              alternate_fields);
