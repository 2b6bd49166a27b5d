/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The table of quantities.
 */
#include "cw-arch.h"
#include "cw-i18n.h"
#include "cw-layout.h"
#include "cw-quantity.h"

#define SIDES(sides) CW_SHOWS_OPENING_SIDES, sides
#define HEAD (1 << CW_OPENING_SIDE_HEAD)
#define JAMB (1 << CW_OPENING_SIDE_JAMB)
#define SILL (1 << CW_OPENING_SIDE_SILL)
#define PIECES(pieces) CW_SHOWS_PIECES, pieces
#define WHOLE (1 << CW_PIECE_WHOLE)
#define RASPED (1 << CW_PIECE_RASPED)
#define CUT (1 << CW_PIECE_CUT)

const CwQuantityType cw_quantity_types[] = {
  { "wall.gross", CW_STEP_WALL, N_ ("Gross wall area"), "m²",
    N_ ("Area of the outline, arcs by formula."), CW_SHOWS_OUTLINE },
  { "opening.area", CW_STEP_WALL, N_ ("Area of openings"), "m²",
    N_ ("Windows, doors and arches, cut to the outline; where they overlap "
        "they count once."),
    CW_SHOWS_OPENED },
  { "unclad.area", CW_STEP_WALL, N_ ("Unclad area"), "m²",
    N_ ("Unclad areas, cut to the outline, less the openings in them."),
    CW_SHOWS_UNCLAD },
  { "wall.net", CW_STEP_WALL, N_ ("Net wall area"), "m²",
    N_ ("Gross area less openings and unclad areas. Stub-outs are never "
        "deducted."),
    CW_SHOWS_NET },
  { "wall.measured", CW_STEP_WALL, N_ ("Measured wall area"), "m²",
    N_ ("By the project's measuring rule. Through: an opening of at most the "
        "limit is not deducted (2.5 m² by ATV DIN 18345, section 5.2). Half: "
        "half of each opening is (a trade custom of the early 20th century). "
        "IS 1200, one face: up to 0.5 m² an opening is not deducted; up to "
        "3 m² it is, by half or not at all, as this face's reveals are "
        "narrower than, equal to or wider than the other's; above 3 m² it is "
        "and its reveals are added (IS 1200 part 13:1994, clause 3.2)."),
    CW_SHOWS_MEASURED },
  { "opening.head", CW_STEP_OPENINGS, N_ ("Heads of openings"), "m",
    N_ ("Length of heads that meet cladding; an arch's head is its curve."),
    SIDES (HEAD) },
  { "opening.jamb", CW_STEP_OPENINGS, N_ ("Jambs of openings"), "m",
    N_ ("Length of jambs that meet cladding."), SIDES (JAMB) },
  { "opening.sill", CW_STEP_OPENINGS, N_ ("Sills of openings"), "m",
    N_ ("Length of sills that meet cladding; a door has none."),
    SIDES (SILL) },
  { "opening.count", CW_STEP_OPENINGS, N_ ("Openings"), "",
    N_ ("All openings, then by kind and by mark."), CW_SHOWS_OPENINGS },
  { "reveal.area", CW_STEP_OPENINGS, N_ ("Area of reveals"), "m²",
    N_ ("Head, jambs and sill of each opening by its reveal's depth."),
    CW_SHOWS_REVEALS },
  { "edge.base", CW_STEP_EDGES, N_ ("Base"), "m",
    N_ ("Length of the outline's sides of this kind."), CW_SHOWS_EDGES,
    CW_EDGE_BASE },
  { "edge.eave", CW_STEP_EDGES, N_ ("Eaves"), "m",
    N_ ("Length of the outline's sides of this kind."), CW_SHOWS_EDGES,
    CW_EDGE_EAVE },
  { "edge.rake", CW_STEP_EDGES, N_ ("Rakes"), "m",
    N_ ("Length of the outline's sides of this kind."), CW_SHOWS_EDGES,
    CW_EDGE_RAKE },
  { "edge.outside-corner", CW_STEP_EDGES, N_ ("Outside corners"), "m",
    N_ ("Length of the outline's sides of this kind; a corner that two walls "
        "share counts in each."),
    CW_SHOWS_EDGES, CW_EDGE_OUTSIDE_CORNER },
  { "edge.inside-corner", CW_STEP_EDGES, N_ ("Inside corners"), "m",
    N_ ("Length of the outline's sides of this kind; a corner that two walls "
        "share counts in each."),
    CW_SHOWS_EDGES, CW_EDGE_INSIDE_CORNER },
  { "edge.abutment", CW_STEP_EDGES, N_ ("Abutments"), "m",
    N_ ("Length of the outline's sides against another material."),
    CW_SHOWS_EDGES, CW_EDGE_ABUTMENT },
  { "edge.joint", CW_STEP_EDGES, N_ ("Joints at edges"), "m",
    N_ ("Length of the outline's sides at a control joint or at the next "
        "wall of the same cladding."),
    CW_SHOWS_EDGES, CW_EDGE_JOINT },
  { "band.length", CW_STEP_EDGES, N_ ("Bands"), "m",
    N_ ("Decorative bands along the wall."), CW_SHOWS_BANDS },
  { "band.area", CW_STEP_EDGES, N_ ("Area of bands"), "m²",
    N_ ("Faces of the bands and the two returns of each, above and below."),
    CW_SHOWS_BAND_FACES },
  { "panel.whole", CW_STEP_PANELS, N_ ("Whole panels"), "",
    N_ ("Panels placed uncut."), PIECES (WHOLE) },
  { "panel.rasped", CW_STEP_PANELS, N_ ("Rasped panels"), "",
    N_ ("Panels whose only trim is at most the rasp limit."),
    PIECES (RASPED) },
  { "panel.cut", CW_STEP_PANELS, N_ ("Cut pieces"), "",
    N_ ("All other pieces: sawn to length, notched, cut to a curve or a "
        "rake."),
    PIECES (CUT) },
  { "panel.stock", CW_STEP_PANELS, N_ ("Panels used"), "",
    N_ ("What the cut plan uses: a panel for each whole or rasped piece, and "
        "those that the sawn pieces come out of, offcuts used again as far as "
        "the setting out lets them travel. A wall's own figure is for offcuts "
        "that stay on it, so that walls may add up to more."),
    PIECES (WHOLE | RASPED | CUT) },
  { "panel.least", CW_STEP_PANELS, N_ ("Panels needed at least"), "",
    N_ ("No cut plan can do with fewer panels for the same pieces, whatever "
        "the cuts: proven with dual feasible functions (Fekete and Schepers, "
        "Math. Program. 91, 2001)."),
    PIECES (WHOLE | RASPED | CUT) },
  { "panel.order", CW_STEP_PANELS, N_ ("Panels to order"), "",
    N_ ("Panels used and the buildup's spare ones."),
    PIECES (WHOLE | RASPED | CUT) },
  { "panel.waste", CW_STEP_PANELS, N_ ("Panel waste"), "%",
    N_ ("What of the panels used does not end on the wall: one less area "
        "placed over area of the panels."),
    PIECES (WHOLE | RASPED | CUT) },
  { "saw.length", CW_STEP_PANELS, N_ ("Straight saw cuts"), "m",
    N_ ("The cuts by which the cut plan brings the pieces out of their "
        "panels, each once however many pieces it parts, and what is then "
        "sawn out of them: notches, rakes and rectangular holes. Rasped "
        "sides are not sawn."),
    CW_SHOWS_SAW_CUTS, 0 },
  { "saw.curve", CW_STEP_PANELS, N_ ("Curved saw cuts"), "m",
    N_ ("Cuts of sawn pieces along arcs, and round holes."),
    CW_SHOWS_SAW_CUTS, 1 },
  { "joint.bed", CW_STEP_JOINTS, N_ ("Bed joints"), "m",
    N_ ("Level joints where two pieces meet."), CW_SHOWS_BED_JOINTS },
  { "joint.head", CW_STEP_JOINTS, N_ ("Head joints"), "m",
    N_ ("Upright joints where two pieces meet."), CW_SHOWS_HEAD_JOINTS },
  { "mortar.volume", CW_STEP_JOINTS, N_ ("Joint mortar"), "L",
    N_ ("Bed and head joints and the edges at openings, by the panel's "
        "thickness and the joint's width."),
    CW_SHOWS_MORTAR },
  { "mortar.bags", CW_STEP_JOINTS, N_ ("Bags of joint mortar"), "",
    N_ ("Volume and waste by the yield of a bag, rounded up once for the "
        "project."),
    CW_SHOWS_MORTAR },
  { "mortar.water", CW_STEP_JOINTS, N_ ("Water for joint mortar"), "L",
    N_ ("Mixing water for the mortar with its waste."), CW_SHOWS_MORTAR },
  { "mortar.mixes", CW_STEP_JOINTS, N_ ("Mortar mixes a day"), "",
    N_ ("A mix is what the crew lays within the pot life, in whole bags "
        "where that is one at least; rounded up."),
    CW_SHOWS_MORTAR },
  { "fastener.count", CW_STEP_FASTENERS, N_ ("Fasteners"), "",
    N_ ("For each piece and stud it crosses: the height there less two edge "
        "distances, by the spacing, rounded up, and one; at least two. The "
        "wind design governs."),
    CW_SHOWS_FASTENERS },
  { "fastener.boxes", CW_STEP_FASTENERS, N_ ("Boxes of fasteners"), "",
    N_ ("Rounded up once for the project."), CW_SHOWS_FASTENERS },
  { "barrier.area", CW_STEP_BARRIER, N_ ("Weather-resistive barrier"), "m²",
    N_ ("Strips of the roll's width as laid, with laps and wraps: (height − "
        "lap) ÷ (width − lap) strips, rounded up, each as long as the wall "
        "is wide within its band. Openings and unclad areas run through. "
        "Least laps of IRC R703.2 (2015): 2 in, and 6 in where a roll "
        "ends."),
    CW_SHOWS_BARRIER },
  { "barrier.rolls", CW_STEP_BARRIER, N_ ("Rolls of barrier"), "",
    N_ ("Strips laid on from roll to roll with an end lap where one ends, "
        "rounded up once for the project."),
    CW_SHOWS_BARRIER },
  { "basecoat.mass", CW_STEP_COATS, N_ ("Base coat"), "kg",
    N_ ("Measured area, reveals and bands by the use."), CW_SHOWS_COATED },
  { "basecoat.bags", CW_STEP_COATS, N_ ("Bags of base coat"), "",
    N_ ("With waste, rounded up once for the project."), CW_SHOWS_COATED },
  { "basecoat.water", CW_STEP_COATS, N_ ("Water for base coat"), "L",
    N_ ("Mixing water for the base coat with its waste."), CW_SHOWS_COATED },
  { "basecoat.mixes", CW_STEP_COATS, N_ ("Base coat mixes a day"), "",
    N_ ("A mix is what the crew lays within the pot life, in whole bags "
        "where that is one at least; rounded up."),
    CW_SHOWS_COATED },
  { "water.wetting", CW_STEP_COATS, N_ ("Water for wetting"), "L",
    N_ ("Both faces of the joints before the mortar, and the wall before the "
        "base coat."),
    CW_SHOWS_WATER, 0 },
  { "water.total", CW_STEP_COATS, N_ ("Water in all"), "L",
    N_ ("For mixing joint mortar and base coat with their waste, and for "
        "wetting; what washes the tools is not in it."),
    CW_SHOWS_WATER, 1 },
  { "mesh.field", CW_STEP_COATS, N_ ("Field mesh"), "m²",
    N_ ("Measured area and bands, more by the laps: width ÷ (width − lap)."),
    CW_SHOWS_MESH_FIELD },
  { "mesh.rolls", CW_STEP_COATS, N_ ("Rolls of mesh"), "",
    N_ ("Field mesh, corner pieces and edge strips from the same rolls, "
        "rounded up once for the project."),
    CW_SHOWS_MESH },
  { "mesh.corner", CW_STEP_COATS, N_ ("Mesh pieces at corners"), "",
    N_ ("A diagonal piece at each corner of each opening: four at a window, "
        "two at an opening that stands on the base, four at an arch."),
    CW_SHOWS_MESH_CORNERS },
  { "mesh.edge", CW_STEP_COATS, N_ ("Mesh edge strips"), "m",
    N_ ("Along every opening and stub-out."), CW_SHOWS_MESH_EDGES },
  { "finish.mass", CW_STEP_COATS, N_ ("Finish"), "kg",
    N_ ("Measured area, reveals and bands by the use."), CW_SHOWS_COATED },
  { "finish.pails", CW_STEP_COATS, N_ ("Pails of finish"), "",
    N_ ("With waste, rounded up once for the project."), CW_SHOWS_COATED },
  { "sealant.length", CW_STEP_SEALANT, N_ ("Sealant joints"), "m",
    N_ ("Round openings and stub-outs and along abutments."),
    CW_SHOWS_SEALANT },
  { "sealant.cartridges", CW_STEP_SEALANT, N_ ("Cartridges of sealant"), "",
    N_ ("Length by width by depth with waste, rounded up once for the "
        "project."),
    CW_SHOWS_SEALANT },
  { "backer.length", CW_STEP_SEALANT, N_ ("Backer rod"), "m",
    N_ ("As long as the sealant joints; 25 % thicker than the joint is wide "
        "by UFGS 07240."),
    CW_SHOWS_SEALANT },
  { "backer.coils", CW_STEP_SEALANT, N_ ("Coils of backer rod"), "",
    N_ ("With waste, rounded up once for the project."),
    CW_SHOWS_SEALANT },
  { "bead.corner", CW_STEP_BEADS, N_ ("Corner bead"), "m",
    N_ ("Outside corners, and jambs and sills of openings; their heads take "
        "the drip bead."),
    CW_SHOWS_CORNER_BEADS },
  { "bead.starter", CW_STEP_BEADS, N_ ("Starter"), "m",
    N_ ("Along the base where there is cladding over it."), CW_SHOWS_STARTER },
  { "bead.drip", CW_STEP_BEADS, N_ ("Drip bead"), "m",
    N_ ("Along the heads of openings."), SIDES (HEAD) },
  { "joint.control", CW_STEP_BEADS, N_ ("Control joints"), "m",
    N_ ("The least length of level and upright joints that parts the wall "
        "into fields of at most 144 ft², 18 ft either way and 2.5 : 1 (ASTM "
        "C1063, for plaster on lath; the maker's figures govern)."),
    CW_SHOWS_CONTROL_JOINTS },
  { "mass.total", CW_STEP_DELIVERY, N_ ("Mass delivered"), "kg",
    N_ ("Panels, mortar, base coat and finish as ordered."),
    CW_SHOWS_NOTHING },
  { "pallet.count", CW_STEP_DELIVERY, N_ ("Pallets of panels"), "",
    N_ ("Panels ordered by panels a pallet, rounded up once for the "
        "project."),
    PIECES (WHOLE | RASPED | CUT) },
  { "truck.count", CW_STEP_DELIVERY, N_ ("Trucks"), "",
    N_ ("By the mass that a truck carries or the pallets that it holds, "
        "whichever needs more; rounded up once. The law of the road "
        "governs."),
    CW_SHOWS_NOTHING },
  { "staging.area", CW_STEP_DELIVERY, N_ ("Staging ground"), "m²",
    N_ ("Level ground that the pallets cover, one high, without the way "
        "between them."),
    PIECES (WHOLE | RASPED | CUT) },
  { "labour.hours", CW_STEP_LABOUR, N_ ("Hours of labour"), "h",
    N_ ("Of all persons of the crew: what is laid by what the crew lays in "
        "an hour."),
    CW_SHOWS_WORK },
  { "labour.days", CW_STEP_LABOUR, N_ ("Days of the crew"), "d",
    N_ ("Hours of the whole crew by its working day."), CW_SHOWS_WORK },
  { "cost.material", CW_STEP_COST, N_ ("Material"), "money",
    N_ ("Packages ordered by their price, and own lines of that kind."),
    CW_SHOWS_WORK },
  { "cost.labour", CW_STEP_COST, N_ ("Labour cost"), "money",
    N_ ("Hours by the wage, and own lines of that kind."),
    CW_SHOWS_WORK },
  { "cost.equipment", CW_STEP_COST, N_ ("Equipment"), "money",
    N_ ("What is hired or used up, and own lines of that kind."),
    CW_SHOWS_NOTHING },
  { "cost.contingency", CW_STEP_COST, N_ ("Contingency"), "money",
    N_ ("Part of material, labour and equipment that the estimator puts on "
        "them."),
    CW_SHOWS_NOTHING },
  { "cost.overhead", CW_STEP_COST, N_ ("Overhead"), "money",
    N_ ("Part of all that, with contingency."), CW_SHOWS_NOTHING },
  { "cost.profit", CW_STEP_COST, N_ ("Profit"), "money",
    N_ ("Part of the cost with overhead, or of the price."),
    CW_SHOWS_NOTHING },
  { "cost.tax", CW_STEP_COST, N_ ("Tax"), "money",
    N_ ("On material and the lines said to be taxed, or on the whole price. "
        "The law of the place governs."),
    CW_SHOWS_NOTHING },
  { "cost.bid", CW_STEP_COST, N_ ("Bid"), "money",
    N_ ("All of it, rounded up as the estimator asks."), CW_SHOWS_NOTHING },
  { "cost.unit", CW_STEP_COST, N_ ("Bid for 1 m²"), "money",
    N_ ("The bid over the net wall area."), CW_SHOWS_NOTHING },
  { "cost.unit-foot", CW_STEP_COST, N_ ("Bid for 1 ft²"), "money",
    N_ ("The same for a square foot."), CW_SHOWS_NOTHING },
  { "cost.alternate", CW_STEP_COST, N_ ("Alternate"), "money",
    N_ ("What the bid would be more or, with a minus, less by with the other "
        "buildup."),
    CW_SHOWS_NOTHING },
};

const guint cw_n_quantity_types = G_N_ELEMENTS (cw_quantity_types);

static const char *const step_labels[] = {
  [CW_STEP_WALL] = N_ ("Wall"),
  [CW_STEP_OPENINGS] = N_ ("Openings"),
  [CW_STEP_EDGES] = N_ ("Edges and bands"),
  [CW_STEP_BARRIER] = N_ ("Barrier"),
  [CW_STEP_PANELS] = N_ ("Panels"),
  [CW_STEP_JOINTS] = N_ ("Joints"),
  [CW_STEP_FASTENERS] = N_ ("Fasteners"),
  [CW_STEP_COATS] = N_ ("Coats"),
  [CW_STEP_SEALANT] = N_ ("Sealant"),
  [CW_STEP_BEADS] = N_ ("Beads"),
  [CW_STEP_DELIVERY] = N_ ("Delivery"),
  [CW_STEP_LABOUR] = N_ ("Labour"),
  [CW_STEP_COST] = N_ ("Cost"),
};

const char *
cw_trade_step_label (CwTradeStep step)
{
  g_return_val_if_fail ((guint) step < G_N_ELEMENTS (step_labels), NULL);

  return step_labels[step];
}
