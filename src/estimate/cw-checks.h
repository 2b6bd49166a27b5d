/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What an estimator should still look at: what makes figures wrong, rules of
 * setting out that could not be kept, layers that do not go together, loads
 * and dangers. A pure function of the takeoff. A check never says that
 * something is safe; what applies on a site is for the local code, the
 * makers' instructions and licensed practice.
 */
#pragma once

#include "cw-takeoff.h"

G_BEGIN_DECLS

typedef enum
{
  CW_CHECK_ERROR,       /* figures are wrong or lacking */
  CW_CHECK_WARNING,     /* should be changed, or decided by somebody */
  CW_CHECK_NOTE,        /* to be known */
  CW_N_CHECK_SEVERITIES,
} CwCheckSeverity;

/* N_() "Error"; and the letter that stands for it on the drawing. */
const char *cw_check_severity_label (CwCheckSeverity severity);
const char *cw_check_severity_letter (CwCheckSeverity severity);

/* All N_() but the code, which files keep and which never changes. */
typedef struct
{
  const char *code;     /* "opening-overlap" */
  CwCheckSeverity severity;
  const char *title;    /* "Openings overlap" */
  const char *remedy;   /* a sentence: what to do */
  const char *source;   /* of the rule: a standard, common practice … */
} CwCheckType;

extern const CwCheckType cw_check_types[];
extern const guint cw_n_check_types;
const CwCheckType *cw_check_type (const char *code);    /* NULL if unknown */

typedef struct
{
  const CwCheckType *type;
  char *elevation_id;   /* (nullable): of the project as a whole */
  char *item;           /* id of the opening, sheet, buildup …; "" for the whole of it */
  GArray *places;       /* CwBox on the elevation: a point has no size, a line no width */
  char *text;           /* a short sentence with its numbers in the reader's units */
  char *detail;         /* (nullable): sentences with the inputs, and what follows */
  char *figures;        /* the numbers in a plain form that waivers keep */
  const CwWaiver *waiver;   /* (nullable) (owned) */
  gboolean is_changed;  /* its numbers are no longer those that were waived */
} CwCheck;

/*
 * cw_checks_find:
 * @style: how numbers in the sentences look
 * @cancellable: (nullable): looked at between walls
 *
 * By severity, then in the order of the elevations; the project's own first.
 * Waived ones are among them.
 *
 * Returns: (transfer full) (nullable) (element-type CwCheck): NULL only when
 *   cancelled
 */
GPtrArray *cw_checks_find (const CwTakeoff *takeoff, const CwTextStyle *style,
                           GCancellable *cancellable);

/* Of that severity and not waived. */
guint cw_checks_count (const GPtrArray *checks, CwCheckSeverity severity);

/* Whether it is of a wall that nothing was drawn of yet. */
gboolean cw_check_awaits_drawing (const CwCheck *check);

/* The waiver that is for it in @project, or NULL. Borrowed. */
const CwWaiver *cw_check_waiver (const CwCheck *check,
                                 const CwProject *project);

/* Waivers of @project that no check is for any more.
 * (transfer container) (element-type CwWaiver) */
GPtrArray *cw_waivers_idle (const CwProject *project,
                            const GPtrArray *checks);

G_END_DECLS
