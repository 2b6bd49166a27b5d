/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The checks as RFC 4180 CSV.
 */
#pragma once

#include "cw-checks.h"

G_BEGIN_DECLS

/*
 * cw_checks_to_csv:
 * @checks: (element-type CwCheck)
 *
 * Columns code,severity,scope,item,places,text,detail,remedy,source,waived,
 * waived_by,waived_on,changed; "severity" is error, warning or note in every
 * language; "places" are left, bottom, right and top in millimetres on the
 * elevation, one after the other with "; " between; "waived" is the reason;
 * "changed" is yes when the figures are no longer those that were waived.
 *
 * Returns: (transfer full)
 */
char *cw_checks_to_csv (const GPtrArray *checks);

G_END_DECLS
