/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the families of checks share; this folder only.
 */
#pragma once

#include "cw-checks.h"
#include "cw-i18n.h"

G_BEGIN_DECLS

typedef struct
{
  const CwTakeoff *takeoff;
  const CwTextStyle *style;
  const CwWallTakeoff *wall;    /* NULL: the project as a whole */
  GPtrArray *checks;
} CwChecking;

/* Of one wall. */
void cw_check_outline (CwChecking *checking);
void cw_check_openings (CwChecking *checking);
void cw_check_panels (CwChecking *checking);
void cw_check_stub_outs (CwChecking *checking);
void cw_check_control_joints (CwChecking *checking);

/* Of the project. */
void cw_check_sheets (CwChecking *checking);
void cw_check_materials (CwChecking *checking);
void cw_check_lifting (CwChecking *checking);
void cw_check_wind (CwChecking *checking);
void cw_check_site (CwChecking *checking);

/* Takes @text. A code that the table does not know aborts. Borrowed. */
CwCheck *cw_check_add (CwChecking *checking, const char *code,
                       const char *item, char *text);
/* Takes @detail. */
void cw_check_set_detail (CwCheck *check, char *detail);
void cw_check_add_place (CwCheck *check, CwBox place);
void cw_check_add_point (CwCheck *check, CwPoint place);
/* A number that a waiver of the check is for, to three digits. */
void cw_check_add_figure (CwCheck *check, double figure);

/* For sentences; all (transfer full). @unit as cw_text_style_amount(). */
char *cw_check_amount (const CwChecking *checking, double amount,
                       const char *unit);
char *cw_check_length (const CwChecking *checking, CwLength length);
char *cw_check_number (const CwChecking *checking, double number);

const char *cw_check_buildup_name (const CwBuildup *buildup);
/* The buildups that an elevation with an outline has. (transfer container)
 * (element-type CwBuildup) */
GPtrArray *cw_check_used_buildups (const CwChecking *checking);

G_END_DECLS
