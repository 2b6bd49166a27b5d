/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Decimal numbers with six places in 64 bits: masses, prices, percentages.
 * Exact in decimal, unlike binary fractions.
 */
#pragma once

#include <glib.h>

#include "cw-text-style.h"

G_BEGIN_DECLS

typedef gint64 CwDecimal;   /* millionths */

#define CW_DECIMAL_ONE G_GINT64_CONSTANT (1000000)
#define CW_DECIMAL(n) ((CwDecimal) (n) * CW_DECIMAL_ONE)
#define CW_DECIMAL_MOST (G_GINT64_CONSTANT (1000000000000) * CW_DECIMAL_ONE)

/* As the project file writes it: optional minus, digits, at most six places
 * after a point, no exponent. FALSE when @text is anything else or out of
 * bounds (CW_DECIMAL_MOST either sign). */
gboolean cw_decimal_from_text (const char *text, CwDecimal *value);

/* No trailing zeros, no point for whole numbers. Returns: (transfer full) */
char *cw_decimal_to_text (CwDecimal value);

/* As somebody types it in @style; errors as cw_length_parse(). */
gboolean cw_decimal_parse (const char *text, const CwTextStyle *style,
                           CwDecimal *value, GError **error);
char *cw_decimal_format (CwDecimal value, const CwTextStyle *style);

static inline double
cw_decimal_to_double (CwDecimal value)
{
  return (double) value / 1e6;
}

G_END_DECLS
