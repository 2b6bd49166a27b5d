/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A place typed instead of pointed at: "1200; 900", across and up from the
 * wall's origin.
 */
#pragma once

#include "cw-point.h"
#include "cw-text-error.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

/* Whether @text means a place at all. */
gboolean cw_typed_is_place (const char *text);

/* Either part may be nought or less. */
gboolean cw_typed_place (const char *text, const CwTextStyle *style,
                         CwPoint *place, GError **error);

G_END_DECLS
