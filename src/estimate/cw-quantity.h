/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One line of the estimate, and the table of all lines there are.
 */
#pragma once

#include "cw-length.h"
#include "cw-money.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

/* What on the drawing a line comes from, so that choosing it lights it up. */
typedef enum
{
  CW_SHOWS_NOTHING,
  CW_SHOWS_OUTLINE,
  CW_SHOWS_NET,
  CW_SHOWS_MEASURED,          /* by the project's rule */
  CW_SHOWS_OPENINGS,          /* each whole: they are counted */
  CW_SHOWS_OPENED,            /* cut to the outline, overlaps once */
  CW_SHOWS_OPENING_SIDES,     /* where they meet cladding; detail: mask of 1 << CwOpeningSide */
  CW_SHOWS_REVEALS,
  CW_SHOWS_UNCLAD,
  CW_SHOWS_EDGES,             /* detail: CwEdge */
  CW_SHOWS_BANDS,             /* along them */
  CW_SHOWS_BAND_FACES,
  CW_SHOWS_PIECES,            /* detail: mask of 1 << CwPieceKind */
  CW_SHOWS_SAW_CUTS,          /* a piece's own; detail: 1 for curved ones */
  CW_SHOWS_BED_JOINTS,
  CW_SHOWS_HEAD_JOINTS,
  CW_SHOWS_MORTAR,            /* joints, and edges at openings */
  CW_SHOWS_FASTENERS,
  CW_SHOWS_BARRIER,           /* strips with laps and wraps */
  CW_SHOWS_COATED,            /* measured, reveals, bands */
  CW_SHOWS_WATER,             /* joints and what is coated; detail: 1 with the
                                 mixing water */
  CW_SHOWS_WORK,              /* of a variant: what the task is done on */
  CW_SHOWS_MESH,              /* all of: */
  CW_SHOWS_MESH_FIELD,
  CW_SHOWS_MESH_CORNERS,
  CW_SHOWS_MESH_EDGES,
  CW_SHOWS_SEALANT,
  CW_SHOWS_CORNER_BEADS,
  CW_SHOWS_STARTER,           /* the base where there is cladding */
  CW_SHOWS_CONTROL_JOINTS,
} CwShows;

/* The trade steps that group the lines, in the order of the work. */
typedef enum
{
  CW_STEP_WALL,
  CW_STEP_OPENINGS,
  CW_STEP_EDGES,
  CW_STEP_BARRIER,
  CW_STEP_PANELS,
  CW_STEP_JOINTS,
  CW_STEP_FASTENERS,
  CW_STEP_COATS,
  CW_STEP_SEALANT,
  CW_STEP_BEADS,
  CW_STEP_DELIVERY,
  CW_STEP_LABOUR,
  CW_STEP_COST,
} CwTradeStep;

const char *cw_trade_step_label (CwTradeStep step);   /* N_(), untranslated */

typedef struct
{
  const char *key;            /* "wall.net" */
  CwTradeStep step;
  const char *label;          /* N_() "Net wall area" */
  const char *unit;           /* "m²", "m", "L", "kg", "%", "h", "d", "money", "" for counts */
  const char *help;           /* N_() definition and the source of its rule */
  CwShows shows;
  guint detail;
} CwQuantityType;

/* The order of every table and export. */
extern const CwQuantityType cw_quantity_types[];
extern const guint cw_n_quantity_types;
const CwQuantityType *cw_quantity_type (const char *key);   /* NULL if unknown */

/*
 * A step of the way to an amount, in words: a sentence with places {0} … {5}
 * for numbers with units. Rendered for a reader by cw_quantity_steps_text().
 */
typedef struct
{
  const char *sentence;       /* N_() static */
  struct
  {
    double value;
    const char *unit;         /* as a quantity's, or "mm": a length to be shown in the reader's units */
  } places[6];
} CwStepWords;

typedef struct
{
  const CwQuantityType *type;
  char *variant;              /* (nullable): what splits a key, "window" or "mark W1" */
  const char *unit;           /* static: type->unit, a currency's code for money */
  gboolean is_money;
  CwMoney money;              /* exact; amount is its nearest double */
  double amount;              /* in unit */
  double order_amount;        /* NAN when nothing is ordered of it */
  const char *order_unit;     /* "panel", "box", "roll" … N_(); "" when not ordered */
  GArray *steps;              /* CwStepWords */
  gboolean has_note;          /* the last step belongs beside the figure */
} CwQuantity;

/* Steps as sentences, joined by "; ". (transfer full) */
char *cw_quantity_steps_text (const CwQuantity *quantity,
                              const CwTextStyle *style);

/* What belongs beside the figure wherever it stands: "38 panels, at least 37
 * are needed". (transfer full) (nullable) */
char *cw_quantity_note_text (const CwQuantity *quantity,
                             const CwTextStyle *style);

/* Plain English with SI units whatever the locale, for files. */
char *cw_quantity_steps_plain (const CwQuantity *quantity);

void cw_quantity_free (CwQuantity *quantity);

G_END_DECLS
