/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The project: everything an estimator says about a job. One struct for each
 * element of the file, with the same names; lengths in nanometres, other
 * numbers in millionths, choices and counts as they are. All are CwNodes.
 */
#pragma once

#include "cw-arch.h"
#include "cw-decimal.h"
#include "cw-money.h"
#include "cw-node.h"
#include "cw-outline.h"

G_BEGIN_DECLS

typedef struct
{
  CwNode node;
  char *name, *number, *address, *client, *estimator, *date, *revision;
} CwInfo;

typedef enum
{
  CW_MEASURE_NET,
  CW_MEASURE_THROUGH,
  CW_MEASURE_HALF,
  CW_MEASURE_IS1200,
} CwMeasureRule;

/* What becomes of an opening of exactly the limit. */
typedef enum { CW_AT_LIMIT_THROUGH, CW_AT_LIMIT_DEDUCTED } CwAtLimit;

/* How the reveal on this face lies to that on the other; or that the other
 * face is not treated at all and has the narrower one. */
typedef enum
{
  CW_FACE_NARROWER,     /* deducts */
  CW_FACE_EQUAL,        /* both faces treated alike: half each */
  CW_FACE_WIDER,        /* does not deduct */
} CwMeasuredFace;

typedef struct
{
  CwNode node;
  gint64 rule;          /* CwMeasureRule */
  CwDecimal limit;      /* m²; CW_MEASURE_THROUGH */
  gint64 at_limit;      /* CwAtLimit; CW_MEASURE_THROUGH */
  gint64 face;          /* CwMeasuredFace; CW_MEASURE_IS1200 */
} CwMeasure;

/* What the checks compare with. */
typedef struct
{
  CwNode node;
  CwDecimal control_area;  /* m² */
  CwLength control_side;
  CwDecimal control_ratio;
  CwLength stub_out_edge;
  CwDecimal scale_difference;  /* % */
  CwLength barrier_lap;
  CwLength barrier_end_lap;
  CwLength mesh_lap;
  CwLength fall_height;
} CwLimits;

typedef enum { CW_GRIP_GOOD, CW_GRIP_FAIR, CW_GRIP_POOR } CwGrip;

/* How a panel is lifted, as the revised NIOSH lifting equation asks. */
typedef struct
{
  CwNode node;
  CwDecimal index;
  CwLength reach;
  CwLength height;
  CwLength to_reach;
  CwLength to_height;
  CwDecimal turn;  /* ° */
  CwDecimal frequency;
  gint64 hours;  /* 1, 2, 8 */
  gint64 grip;  /* CwGrip */
} CwLifting;

typedef enum { CW_WIND_NONE, CW_WIND_GIVEN, CW_WIND_GUIDE } CwWindBasis;
typedef enum { CW_EXPOSURE_B, CW_EXPOSURE_C, CW_EXPOSURE_D } CwExposure;

typedef struct
{
  CwNode node;
  gint64 basis;  /* CwWindBasis */
  CwDecimal pressure;  /* Pa */
  CwDecimal speed;  /* m/s */
  gint64 exposure;  /* CwExposure */
  CwLength mean_height;
  CwDecimal topography;
  CwDecimal direction;
  CwDecimal ground;
  CwDecimal internal;
  gint64 zone;  /* 4, 5 */
  CwDecimal factor;
} CwWind;

/* A check that the user lets pass. Elevation and item may be gone. */
typedef struct
{
  CwNode node;
  char *check;
  char *elevation;
  char *item;
  char *reason;
  char *by;
  char *date;
  char *figures;
} CwWaiver;

/* mm of building per point of the page as turned. 0: not set. */
typedef struct
{
  CwNode node;
  CwDecimal across, along;
} CwScale;

typedef struct
{
  CwNode node;
  char *id, *name, *file, *sha256;
  gint64 page;          /* from 1 */
  gint64 turn;          /* 0, 90, 180, 270: clockwise, on top of the page's own */
  CwNode *scale;        /* CwScale; NULL when none was set */
} CwSheet;

typedef enum { CW_STUDS_WOOD, CW_STUDS_STEEL } CwStudMaterial;

typedef struct
{
  CwNode node;
  CwLength spacing, first;
  gint64 at_jambs;      /* yes/no */
  gint64 material;      /* CwStudMaterial */
} CwStuds;

typedef struct
{
  CwNode node;
  char *name;
  CwLength length, height, thickness, joint, kerf;
  CwDecimal mass;       /* kg a panel */
  gint64 spare;
  gint64 per_pallet;
  CwLength pallet_length, pallet_width;
  CwDecimal price;
} CwPanel;

typedef enum { CW_RUN_HORIZONTAL, CW_RUN_VERTICAL } CwRun;
typedef enum { CW_START_LEFT, CW_START_RIGHT, CW_START_BOTH } CwStart;
typedef enum { CW_BOND_STACKED, CW_BOND_STAGGER, CW_BOND_OFFCUT } CwBond;
typedef enum { CW_AT_OPENINGS_NOTCH, CW_AT_OPENINGS_BREAK } CwAtOpenings;
typedef enum
{
  CW_OFFCUTS_NONE,
  CW_OFFCUTS_COURSE,
  CW_OFFCUTS_ELEVATION,
  CW_OFFCUTS_PROJECT,
} CwOffcuts;

typedef struct
{
  CwNode node;
  gint64 run, start;
  CwLength offset, base;
  gint64 bond;
  CwLength stagger, least_piece, least_stagger;
  gint64 joints_on_studs, at_openings;
  CwLength rasp;
  gint64 offcuts, turn;
} CwSettingOut;

typedef struct
{
  CwNode node;
  char *name;
  CwLength length, spacing, edge;
  CwLength diameter, penetration;
  CwDecimal gravity;
  CwLength steel_thickness;
  CwDecimal steel_strength;             /* MPa */
  CwDecimal safety, duration;
  gint64 per_box;
  CwDecimal price;
} CwFastener;

typedef struct
{
  CwNode node;
  char *name;
  CwDecimal bag, yield, water, waste;   /* kg, L, L, % */
  gint64 pot_life;                      /* minutes */
  CwDecimal wetting;                    /* L/m² of joint faces */
  CwDecimal price;
} CwJointMortar;

typedef struct
{
  CwNode node;
  char *name;
  CwLength roll_width, roll_length, lap, end_lap, wrap;
  CwDecimal price;
} CwBarrier;

typedef struct
{
  CwNode node;
  char *name, *suits, *kind, *unsuited;
  CwDecimal bag, use, water, waste;     /* kg, kg/m², L, % */
  gint64 pot_life;                      /* minutes */
  CwDecimal wetting;                    /* L/m² */
  CwDecimal price;
} CwBaseCoat;

typedef struct
{
  CwNode node;
  char *name;
  CwLength roll_width, roll_length, lap, corner_width, corner_height, edge;
  CwDecimal price;
  gint64 corner_box;                    /* ready-made pieces; 0: cut from the roll */
  CwDecimal corner_price;
  CwLength edge_roll;                   /* 0: cut from the roll */
  CwDecimal edge_price;
} CwMesh;

typedef struct
{
  CwNode node;
  char *name, *suits, *kind, *unsuited;
  CwDecimal pail, use, waste;           /* kg, kg/m², % */
  CwDecimal price;
} CwFinish;

typedef struct
{
  CwNode node;
  char *name;
  CwLength width, depth;
  CwDecimal cartridge, waste;           /* mL, % */
  CwDecimal price;
} CwSealant;

/* What a crew does in an hour, and what an hour of one of it costs. */
typedef struct
{
  CwNode node;
  gint64 crew;
  CwDecimal day, wage;                  /* h, money/h */
  CwDecimal barrier, sawing, panels, joints, base_coat, finish, sealant,
      beads;                            /* m²/h or m/h; 0: not reckoned */
} CwLabour;

typedef enum
{
  CW_BEAD_CORNER,
  CW_BEAD_STARTER,
  CW_BEAD_DRIP,
  CW_BEAD_CONTROL_JOINT,
  CW_N_BEADS,
} CwBeadKind;

typedef struct
{
  CwNode node;
  gint64 kind;                          /* CwBeadKind */
  char *name;
  CwLength length;
  CwDecimal waste, price;
} CwBead;

typedef struct
{
  CwNode node;
  char *name;
  CwLength diameter, length;
  CwDecimal waste, price;
} CwBackerRod;

typedef enum { CW_PROFIT_ON_COST, CW_PROFIT_ON_PRICE } CwProfitOn;
typedef enum { CW_TAX_ON_LINES, CW_TAX_ON_PRICE } CwTaxOn;

/* What is put on the cost, in this order, and how the bid is rounded. */
typedef struct
{
  CwNode node;
  CwDecimal contingency, overhead, profit;   /* % */
  gint64 profit_on;                     /* CwProfitOn */
  CwDecimal tax;                        /* % */
  gint64 tax_on;                        /* CwTaxOn */
  CwDecimal rounding;                   /* money; 0: none */
  gint64 half;                          /* CwHalf */
} CwBid;

typedef struct
{
  CwNode node;
  CwDecimal payload;                    /* kg */
  gint64 pallets;
} CwTruck;

typedef enum { CW_EQUIPMENT_EACH, CW_EQUIPMENT_DAY } CwEquipmentBy;

typedef struct
{
  CwNode node;
  char *name;
  gint64 each, by;                      /* CwEquipmentBy */
  CwDecimal days, price;                /* 0 days: the crew's */
  gint64 taxed;
} CwEquipment;

typedef enum { CW_COST_MATERIAL, CW_COST_LABOUR, CW_COST_EQUIPMENT, CW_N_COSTS } CwCostKind;

/* What an own line is priced by; the names in the file are the quantities'. */
typedef enum
{
  CW_LINE_PROJECT,
  CW_LINE_WALL_GROSS,
  CW_LINE_WALL_NET,
  CW_LINE_WALL_MEASURED,
  CW_LINE_OPENING_COUNT,
  CW_LINE_OPENING_AREA,
  CW_LINE_OPENING_HEAD,
  CW_LINE_OPENING_SILL,
  CW_LINE_REVEAL_AREA,
  CW_LINE_EDGE_BASE,
  CW_LINE_EDGE_EAVE,
  CW_LINE_EDGE_RAKE,
  CW_LINE_EDGE_CORNER,
  CW_LINE_BAND_LENGTH,
  CW_LINE_BARRIER_AREA,
  CW_LINE_PANEL_CUT,
  CW_LINE_PANEL_ORDER,
  CW_LINE_SAW_LENGTH,
  CW_LINE_SEALANT_LENGTH,
  CW_LINE_CONTROL_JOINT,
  CW_LINE_MASS_TOTAL,
  CW_LINE_PALLET_COUNT,
  CW_LINE_TRUCK_COUNT,
  CW_LINE_LABOUR_HOURS,
  CW_LINE_LABOUR_DAYS,
} CwLineKey;

typedef struct
{
  CwNode node;
  char *name;
  gint64 kind, key;                     /* CwCostKind, CwLineKey */
  gint64 units;                         /* CwUnits in which the key is priced */
  CwDecimal amount, price;
  gint64 taxed;
} CwOwnLine;

/* Priced beside the bid: every wall of `buildup` with `by` in its place. */
typedef struct
{
  CwNode node;
  char *name, *buildup, *by;
} CwAlternate;

/* A layer that the file leaves out is NULL: it is not part of the buildup.
 * studs and setting_out are always there, and so is one panel. */
typedef struct
{
  CwNode node;
  char *id, *name;
  CwNode *studs;                        /* CwStuds */
  CwList *panels;                       /* CwPanel, the first is the usual one */
  CwNode *setting_out;                  /* CwSettingOut */
  CwNode *fastener, *joint_mortar, *barrier, *base_coat, *mesh, *finish,
      *sealant, *backer_rod;             /* CwBackerRod */
  CwList *beads;                        /* CwBead */
  CwNode *labour;                       /* CwLabour */
} CwBuildup;

typedef enum { CW_OPENING_WINDOW, CW_OPENING_DOOR, CW_OPENING_ARCH } CwOpeningKind;

typedef struct
{
  CwNode node;
  char *id;
  gint64 kind;                          /* CwOpeningKind */
  char *name;
  CwLength width, height, rise;
  gint64 head;                          /* CwArchHead */
  CwLength reveal;
} CwMark;

/* window, door and arch: three node types, one struct. rise and head are
 * fields of arch alone and stay 0 for the others. */
typedef struct
{
  CwNode node;
  char *id, *mark;
  CwLength x, y, width, height, rise;
  gint64 head;                          /* CwArchHead */
  CwLength reveal;
} CwOpening;

typedef enum { CW_TRADE_PLUMBING, CW_TRADE_ELECTRICAL, CW_TRADE_MECHANICAL, CW_TRADE_OTHER } CwTrade;
typedef enum { CW_SHAPE_ROUND, CW_SHAPE_RECTANGULAR } CwShape;

typedef struct
{
  CwNode node;
  char *id;
  gint64 trade, shape;
  CwLength x, y, width, height, clearance;
} CwStubOut;

typedef enum
{
  CW_EDGE_BASE,
  CW_EDGE_EAVE,
  CW_EDGE_RAKE,
  CW_EDGE_OUTSIDE_CORNER,
  CW_EDGE_INSIDE_CORNER,
  CW_EDGE_ABUTMENT,
  CW_EDGE_JOINT,
  CW_N_EDGES,
} CwEdge;

/* `corner` of an outline (with edge) or of an unclad area (edge ignored). */
typedef struct
{
  CwNode node;
  CwLength x, y;
  gint64 edge;
  CwLength sagitta;
} CwCornerNode;

typedef struct
{
  CwNode node;
  CwList *corners;                      /* CwCornerNode */
} CwOutline;

typedef struct
{
  CwNode node;
  char *id, *name;
  CwList *corners;                      /* CwCornerNode */
} CwUnclad;

typedef struct
{
  CwNode node;
  char *id, *name;
  CwLength x, y, width, height, projection;
} CwBand;

typedef enum { CW_DIMENSION_ALIGNED, CW_DIMENSION_LEVEL, CW_DIMENSION_UPRIGHT } CwDimensionWay;

/* A dimension that somebody drew: it stands where it was put and follows
 * nothing. See cw-dimension.h for what it measures. */
typedef struct
{
  CwNode node;
  char *id;
  gint64 way;                           /* CwDimensionWay */
  CwLength x, y, to_x, to_y;            /* the two points */
  CwLength offset;                      /* of its line, see cw_dimension_line() */
} CwDimension;

typedef enum { CW_BARRIER_TO_INSTALL, CW_BARRIER_INSTALLED, CW_BARRIER_NONE } CwBarrierState;

typedef struct
{
  CwNode node;
  char *id, *name, *buildup;
  gint64 count;
  gint64 barrier;                       /* CwBarrierState */
  char *sheet;                          /* "" when it lies on none */
  CwDecimal at_x, at_y;                 /* its origin on the page as turned: points from the top left, y down */
  CwNode *outline;                      /* CwOutline; NULL before it is drawn */
  CwList *items;                        /* openings, stub-outs, unclad areas, bands and dimensions in file order */
} CwElevation;

typedef struct
{
  CwNode node;
  gint64 format;
  gint64 units;                         /* CwUnits */
  char *currency;
  CwNode *info, *measure;               /* CwInfo, CwMeasure; always there */
  CwNode *limits, *lifting, *wind;      /* CwLimits, CwLifting, CwWind; always there */
  CwList *sheets, *buildups, *marks, *elevations;
  CwList *waivers;                      /* CwWaiver */
  CwNode *bid, *truck;                  /* CwBid, CwTruck; always there */
  CwList *equipment, *own_lines, *alternates;
} CwProject;

extern const CwNodeType cw_project_type, cw_info_type, cw_measure_type,
    cw_limits_type, cw_lifting_type, cw_wind_type, cw_waiver_type,
    cw_labour_type, cw_bead_type, cw_backer_rod_type, cw_bid_type,
    cw_truck_type, cw_equipment_type, cw_own_line_type, cw_alternate_type,
    cw_sheet_type, cw_scale_type, cw_buildup_type, cw_studs_type,
    cw_panel_type, cw_setting_out_type, cw_fastener_type,
    cw_joint_mortar_type, cw_barrier_type, cw_base_coat_type, cw_mesh_type,
    cw_finish_type, cw_sealant_type, cw_mark_type, cw_elevation_type,
    cw_outline_type, cw_corner_type, cw_window_type, cw_door_type,
    cw_arch_type, cw_stub_out_type, cw_unclad_type, cw_band_type,
    cw_dimension_type;

/* The places of children in the types that have any; see CwSlot. */
enum
{
  CW_PROJECT_INFO,
  CW_PROJECT_MEASURE,
  CW_PROJECT_LIMITS,
  CW_PROJECT_LIFTING,
  CW_PROJECT_WIND,
  CW_PROJECT_BID,
  CW_PROJECT_TRUCK,
  CW_PROJECT_SHEETS,
  CW_PROJECT_BUILDUPS,
  CW_PROJECT_MARKS,
  CW_PROJECT_ELEVATIONS,
  CW_PROJECT_EQUIPMENT,
  CW_PROJECT_OWN_LINES,
  CW_PROJECT_ALTERNATES,
  CW_PROJECT_WAIVERS,
};
enum
{
  CW_SHEET_SCALE,
};
enum
{
  CW_BUILDUP_STUDS,
  CW_BUILDUP_PANELS,
  CW_BUILDUP_SETTING_OUT,
  CW_BUILDUP_FASTENER,
  CW_BUILDUP_JOINT_MORTAR,
  CW_BUILDUP_BARRIER,
  CW_BUILDUP_BASE_COAT,
  CW_BUILDUP_MESH,
  CW_BUILDUP_FINISH,
  CW_BUILDUP_SEALANT,
  CW_BUILDUP_BACKER_ROD,
  CW_BUILDUP_BEADS,
  CW_BUILDUP_LABOUR,
};
enum
{
  CW_ELEVATION_OUTLINE,
  CW_ELEVATION_ITEMS,
};
enum
{
  CW_OUTLINE_CORNERS = 0,
  CW_UNCLAD_CORNERS = 0,
};

/* All node types, NULL-ended. */
extern const CwNodeType *const cw_node_types[];

/* g_autoptr for every struct: a reference to its node. */
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwProject, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwWaiver, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwSheet, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwBuildup, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwMark, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwElevation, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwOutline, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwOpening, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwStubOut, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwUnclad, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwBand, cw_node_unref)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwDimension, cw_node_unref)

static inline gboolean
cw_node_is_opening (const CwNode *node)
{
  return node->type == &cw_window_type || node->type == &cw_door_type
         || node->type == &cw_arch_type;
}

/* A project to start from: the units given, one generic buildup whose
 * defaults are those of the schema, no elevation. (transfer full) */
CwProject *cw_project_new_default (CwUnits units);

/* Borrowed; NULL when there is none with that id. */
const CwElevation *cw_project_elevation (const CwProject *project, const char *id);
const CwBuildup *cw_project_buildup (const CwProject *project, const char *id);
const CwSheet *cw_project_sheet (const CwProject *project, const char *id);
const CwMark *cw_project_mark (const CwProject *project, const char *id);

/* @project with @list, which it takes, in a slot of its own. (transfer full) */
CwProject *cw_project_with_list (const CwProject *project, guint slot,
                                 CwList *list);

/* An id that is free in @project: @stem and a number, higher than those in
 * use, so that the id of what was deleted is not given again at once.
 * (transfer full) */
char *cw_project_free_id (const CwProject *project, const char *stem);

/* @opening with what its mark states and it does not state itself filled in
 * and marked as stated. Without a mark it comes back as it is.
 * (transfer full) */
CwOpening *cw_project_resolve_opening (const CwProject *project,
                                       const CwOpening *opening);

/*
 * Shapes as regions; (transfer full).
 * An opening's sides are tagged by CwOpeningSide, an outline's by CwEdge. A
 * rise that the head cannot have is taken as the nearest that it can, so that
 * a faulty arch is still drawn and measured; a check tells of it.
 */
CwRegion *cw_opening_shape (const CwOpening *resolved);
CwRegion *cw_stub_out_shape (const CwStubOut *stub_out, gboolean with_clearance);
CwRegion *cw_outline_shape (const CwOutline *outline);       /* NULL when invalid */
CwRegion *cw_unclad_shape (const CwUnclad *unclad);          /* NULL when invalid */
/* The corners of a list of CwCornerNode. (transfer full) (element-type CwCorner) */
GArray *cw_corners_from_list (const CwList *corners);
/* The reverse, for tools: corners with edge kinds as tags. (transfer full) */
CwList *cw_corners_to_list (const CwCorner *corners, gsize n);

/* CwOpeningKind of a window, door or arch node. */
CwOpeningKind cw_opening_kind (const CwOpening *opening);

G_END_DECLS
