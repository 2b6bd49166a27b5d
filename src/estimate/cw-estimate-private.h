/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the trade steps of the estimate share. Each step is a function that
 * reads a wall and its layout, keeps the bare figures that other steps and
 * the project need, and adds its lines:
 *
 *   wall, layout ──► figures (numbers) and quantities (numbers with words)
 *   figures × count, summed, by product ──► packages, once, at the project
 */
#pragma once

#include <string.h>

#include "cw-cost.h"
#include "cw-i18n.h"
#include "cw-takeoff.h"

G_BEGIN_DECLS

/* What of an opening's sides the cladding meets: cut to the outline, and not
 * where two openings run into each other. m and m². */
typedef struct
{
  double head, jamb, sill;    /* a door's sill is 0 */
  double reveal;              /* area: the three lengths by its depth */
  guint n_corners;            /* that a crack can start from */
} CwOpeningSides;

/* How far pieces are sawn, in m. What brings a blank out of its panel is the
 * cut plan's; the rest is the piece's own. */
typedef struct
{
  double plan;                /* straight cuts of the cut plan */
  double notches;             /* with rectangular holes */
  double rakes;
  double curves;
  double round_holes;
  double rasped;              /* sides that are rasped, not sawn */
} CwSawFigures;

/* What a crew does, by the rates of the buildup's labour. */
typedef enum
{
  CW_TASK_BARRIER,
  CW_TASK_SAWING,
  CW_TASK_PANELS,
  CW_TASK_JOINTS,
  CW_TASK_BASE_COAT,
  CW_TASK_FINISH,
  CW_TASK_SEALANT,
  CW_TASK_BEADS,
  CW_N_TASKS,
} CwTask;

struct CwWallFigures
{
  double gross, openings, unclad, net;         /* m² */
  double measured;                             /* m², by the project's rule */
  double measured_reveals;                     /* m² of reveals in `measured` */
  GArray *sides;                               /* CwOpeningSides, as wall->openings */
  double head, jamb, sill;                     /* m */
  double reveals;                              /* m² */
  double stub_outs;                            /* m round them, as cut */
  double edges[CW_N_EDGES];                    /* m */
  double bands;                                /* m² */
  double placed;                               /* m² of panel on the wall */
  CwSawFigures saw;
  double bed_joints, head_joints;              /* m */
  double mortar;                               /* L */
  double fasteners;
  double barrier_strips;                       /* m of roll, laid */
  double base_coat, finish;                    /* kg, without waste */
  double mesh;                                 /* m², laps in */
  double sealant;                              /* mL, without waste */
  double beads[CW_N_BEADS];                    /* m */
  double mesh_corners, mesh_edges;             /* pieces, m */
  double tasks[CW_N_TASKS];                    /* m or m²; sawing without the cut plan's */
};

typedef struct
{
  const CwWall *wall;
  const CwLayout *layout;
  const CwPanelMix *mix;      /* (nullable): without buildup */
  CwWallFigures *figures;
  GPtrArray *quantities;
} CwWallEstimate;

/* The outline less all openings: its inner sides are where cladding meets
 * them, each with a tag that says whose side it is. (transfer full) */
CwRegion *cw_estimate_opened_outline (const CwWall *wall);
/* FALSE for a side of the outline. @index: of the wall's openings. */
gboolean cw_estimate_opening_of_tag (guint tag, guint *index,
                                     CwOpeningSide *side);

/* How the schedule names a mark: "mark W1". (transfer full) (nullable): NULL
 * for an opening without mark */
char *cw_estimate_mark_variant (const CwMark *mark);

/* The outline less unclad areas and the openings over @limit m².
 * (transfer full) */
CwRegion *cw_estimate_less_openings_over (const CwWall *wall, double limit);
/* By IS 1200 an opening's reveals are measured. */
gboolean cw_estimate_is1200_takes_reveals (const CwWall *wall, guint index);
/* Up to which an opening is not deducted by that rule, m². */
double cw_estimate_through_limit (const CwMeasure *measure);
/* Of those over that, up to which one is deducted by half; 0: none is. */
double cw_estimate_half_limit (const CwMeasure *measure);

/* The strips as they lie, wraps flat beside the wall. (transfer full)
 * (element-type CwBox) (nullable): NULL when none are laid */
GArray *cw_estimate_barrier_boxes (const CwWall *wall);

/* Where control joints stand on the net area. (transfer full)
 * (element-type CwJoint): is_bed for the level ones */
GArray *cw_estimate_control_joint_lines (const CwWall *wall);

/* The steps, in an order in which each finds what it needs. All but the first
 * two are for walls with an outline; from the panels on, with a buildup. */
void cw_estimate_opening_count (CwWallEstimate *estimate);
void cw_estimate_bands (CwWallEstimate *estimate);
void cw_estimate_openings (CwWallEstimate *estimate);
void cw_estimate_wall (CwWallEstimate *estimate);
void cw_estimate_edges (CwWallEstimate *estimate);
void cw_estimate_panels (CwWallEstimate *estimate);
void cw_estimate_saw (CwWallEstimate *estimate);
void cw_estimate_joints (CwWallEstimate *estimate);
void cw_estimate_mortar (CwWallEstimate *estimate);
void cw_estimate_fasteners (CwWallEstimate *estimate);
void cw_estimate_barrier (CwWallEstimate *estimate);
void cw_estimate_coats (CwWallEstimate *estimate);
void cw_estimate_mesh (CwWallEstimate *estimate);
void cw_estimate_sealant (CwWallEstimate *estimate);
void cw_estimate_beads (CwWallEstimate *estimate);
void cw_estimate_control_joints (CwWallEstimate *estimate);
void cw_estimate_labour (CwWallEstimate *estimate);
void cw_estimate_backer_rod (CwWallEstimate *estimate);
void cw_estimate_mixes (CwWallEstimate *estimate);

/* m² that base coat and finish cover; reveals once. */
double cw_estimate_coated_area (const CwWallFigures *figures);

/* The project's lines that are no plain sums. */
typedef struct
{
  const CwTakeoff *takeoff;   /* its walls are worked out */
  GPtrArray *quantities;
  CwCost *cost;               /* its lines are added as things are ordered */
  double panel_mass, package_mass;   /* kg, of what is ordered */
  double pallets, pallet_area;
} CwProjectEstimate;

void cw_estimate_join_walls (CwProjectEstimate *estimate);
void cw_estimate_panel_order (CwProjectEstimate *estimate);
void cw_estimate_project_saw (CwProjectEstimate *estimate);
void cw_estimate_mortar_packages (CwProjectEstimate *estimate);
void cw_estimate_fastener_packages (CwProjectEstimate *estimate);
void cw_estimate_barrier_packages (CwProjectEstimate *estimate);
void cw_estimate_coat_packages (CwProjectEstimate *estimate);
void cw_estimate_mesh_packages (CwProjectEstimate *estimate);
void cw_estimate_sealant_packages (CwProjectEstimate *estimate);
void cw_estimate_delivery (CwProjectEstimate *estimate);
void cw_estimate_rod_packages (CwProjectEstimate *estimate);
void cw_estimate_bead_packages (CwProjectEstimate *estimate);
void cw_estimate_mesh_piece_packages (CwProjectEstimate *estimate);
void cw_estimate_project_labour (CwProjectEstimate *estimate);
void cw_estimate_cost (CwProjectEstimate *estimate);

/* (transfer full) (element-type CwAlternateTakeoff) (nullable): NULL when
 * cancelled */
GPtrArray *cw_alternates_new (const CwTakeoff *takeoff,
                              const CwTakeoff *former,
                              GCancellable *cancellable);
void cw_estimate_alternates (CwProjectEstimate *estimate);

/* A line of money, exact. */
CwQuantity *cw_estimate_add_money (CwProjectEstimate *estimate,
                                   const char *key, const char *variant,
                                   CwMoney money);

/* A line of the order list: @n packages of @layer for @quantity, whose order
 * unit is set, at the price that the layer's field @price says. */
void cw_estimate_buy (CwProjectEstimate *estimate, const CwQuantity *quantity,
                      const CwNode *layer, const char *price, double n);

/* One wall's panels, as if offcuts that travel further stayed on it.
 * @former: (nullable): whose cuts are taken over where the blanks are the same
 * (transfer full) (nullable): NULL when cancelled, or without buildup */
CwPanelMix *cw_estimate_panel_mix (const CwLayout *layout, CwCutEffort effort,
                                   const CwPanelMix *former,
                                   GCancellable *cancellable);

/* @former: (nullable): the wall as it was, whose cuts are taken over where
 * the blanks are the same. (transfer full) */
CwWallTakeoff *cw_wall_takeoff_renew (const CwWall *wall,
                                      const CwWallTakeoff *former);

/* The same wall with better panel plans, see cw_takeoff_improve().
 * Returns: (transfer full) (nullable): NULL when cancelled */
CwWallTakeoff *cw_wall_takeoff_improve (const CwWallTakeoff *takeoff,
                                        CwCutEffort effort,
                                        GCancellable *cancellable);

/* The same wall with another mix (nullable), which is taken over; the same
 * takeoff when it is the same. (transfer full) */
CwWallTakeoff *cw_wall_takeoff_with_mix (const CwWallTakeoff *takeoff,
                                         CwPanelMix *mix);

/* A takeoff in the making: without walls, stocks and lines. (transfer full) */
CwTakeoff *cw_takeoff_begin (const CwProject *project, CwCutEffort effort);

/* Its stocks and the project's lines, when the walls are there. FALSE when
 * cancelled. */
gboolean cw_takeoff_add_project (CwTakeoff *takeoff, const CwTakeoff *former,
                                 GCancellable *cancellable);

/*
 * cw_panel_stocks_new:
 * @takeoff: its walls are worked out
 * @former: (nullable): an earlier takeoff whose cuts are taken over where
 *   the blanks are the same
 *
 * Returns: (transfer full) (element-type CwPanelStock) (nullable): NULL when
 *   cancelled
 */
GPtrArray *cw_panel_stocks_new (const CwTakeoff *takeoff,
                                const CwTakeoff *former,
                                GCancellable *cancellable);

/* TRUE when looking on for the mixes with @effort can bring nothing. */
gboolean cw_panel_mixes_are_settled (const GPtrArray *mixes,
                                     CwCutEffort effort);

/* How often the wall stands in the project. */
double cw_estimate_count (const CwWallTakeoff *wall);

/*
 * A new line at the end of @quantities, borrowed. A key that the table of
 * quantities does not know aborts.
 */
CwQuantity *cw_quantity_add (GPtrArray *quantities, const char *key,
                             double amount);
CwQuantity *cw_quantity_add_variant (GPtrArray *quantities, const char *key,
                                     const char *variant, double amount);

/* The line of that key and variant (nullable), borrowed; NULL when there is
 * none. */
CwQuantity *cw_quantities_find (const GPtrArray *quantities, const char *key,
                                const char *variant);
/* The same; when there is none, a new one of nothing. */
CwQuantity *cw_quantities_line (GPtrArray *quantities, const char *key,
                                const char *variant);
/* Of the line without a variant; 0 when there is none. */
double cw_quantities_amount (const GPtrArray *quantities, const char *key);

/* Into the order of the table; lines of one key keep theirs. */
void cw_quantities_sort (GPtrArray *quantities);

void cw_quantity_add_step (CwQuantity *quantity, const CwStepWords *step);

/* cw_quantity_step (quantity, N_ ("{0} less {1}"), { 3, "m²" }, { 1, "m²" }) */
#define cw_quantity_step(quantity, sentence, ...)                             \
  cw_quantity_add_step (quantity,                                             \
                        &(CwStepWords) { sentence, { __VA_ARGS__ } })

static inline double
cw_estimate_mm (CwLength length)
{
  return (double) length / CW_NM_PER_MM;
}

/* Whole packages of @size that hold @need. */
double cw_estimate_n_packages (double need, double size);

/* @amount with @waste percent more. */
double cw_estimate_with_waste (double amount, CwDecimal waste);

/* One thing to order: walls whose buildups name it alike share packages. */
typedef struct
{
  const CwNode *layer;
  double need;
} CwProduct;

/* Adds to the product of an equal layer, or a new one, at the end of
 * @products (element-type CwProduct). */
void cw_estimate_add_need (GArray *products, const CwNode *layer,
                           double need);

/*
 * cw_estimate_products:
 * @slot: of the layer in a buildup
 * @figure: offset of a double in CwWallFigures
 *
 * The figure of all walls × count, apart for each layer that differs.
 * Returns: (transfer full) (element-type CwProduct)
 */
GArray *cw_estimate_products (const CwProjectEstimate *estimate, guint slot,
                              gsize figure);

/* How a product is sold. */
typedef struct
{
  const char *key;
  guint slot;
  gsize figure;
  const char *order_unit;
  const char *sentence;       /* {0} need, {1} waste, {2} package, {3} packages */
  const char *unit;           /* of need and package */
  double (*size) (const CwNode *layer);
  CwDecimal (*waste) (const CwNode *layer);   /* (nullable) */
  double (*mass) (const CwNode *layer);       /* (nullable): kg a package */
} CwPackaging;

void cw_estimate_add_packages (CwProjectEstimate *estimate,
                               const CwPackaging *packaging);

G_END_DECLS
