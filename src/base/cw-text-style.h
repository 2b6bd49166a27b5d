/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How numbers and lengths look to the reader of a screen or a paper. Files
 * never depend on it.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef enum
{
  CW_UNITS_US,
  CW_UNITS_METRIC,
} CwUnits;

typedef struct
{
  CwUnits units;
  guint fraction;      /* US: the smallest step is 1 / fraction inch; a power of two up to 64 */
  guint decimals;      /* metric: decimals of a millimetre, 0 to 6 */
  char decimal[8];     /* decimal sign, UTF-8 */
  char thousands[8];   /* grouping sign, UTF-8, may be empty */
} CwTextStyle;

/* Point as the decimal sign, no grouping, 1/64 in or 0.1 mm. */
CwTextStyle cw_text_style_plain (CwUnits units);

/* The signs of the process's locale, 1/16 in or whole millimetres. */
CwTextStyle cw_text_style_for_locale (CwUnits units);

/*
 * A number with @decimals places in @style, grouped by thousands, rounded
 * half away from zero. Returns: (transfer full)
 */
char *cw_text_style_number (const CwTextStyle *style, double value,
                            guint decimals);

/* Appends a whole number's first @n digits to @text, grouped by thousands. */
void cw_text_style_append_whole (const CwTextStyle *style, GString *text,
                                 const char *digits, gsize n);

/* A quantity kept in one unit (m, m², L, kg, …), as it is read. */
typedef struct
{
  double value;        /* in @unit */
  const char *unit;    /* static: "ft²", "m²" … */
  guint decimals;      /* a sensible number of places for reading */
} CwShownAmount;

/*
 * cw_text_style_amount:
 * @value: an amount in the estimate's own unit
 * @unit: "m", "m²", "L", "kg", "h", "d", "%", "" (a count), a currency's code;
 *   of attributes and checks also "mL", "kg/m²", "L/m²", "m/h", "m²/h", "Pa",
 *   "MPa", "N", "m/s"
 *
 * What a reader in @style is shown: metric as it is, US in ft, ft², gal, lb,
 * psf, mph and so on. By the exact factors of NIST SP 811, appendix B (from
 * memory).
 */
CwShownAmount cw_text_style_amount (const CwTextStyle *style, double value,
                                    const char *unit);

G_END_DECLS
