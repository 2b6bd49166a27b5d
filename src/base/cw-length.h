/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lengths: whole nanometres in 64 bits. 1/64 in is 396 875 nm and 1 mm is
 * 1 000 000 nm, so that what an estimator types in either system is exact.
 */
#pragma once

#include <glib.h>

#include "cw-text-style.h"

G_BEGIN_DECLS

typedef gint64 CwLength;

#define CW_NM_PER_MM G_GINT64_CONSTANT (1000000)
#define CW_NM_PER_INCH G_GINT64_CONSTANT (25400000)
#define CW_NM_PER_FOOT (12 * CW_NM_PER_INCH)

/* The longest length accepted anywhere, either sign: 1000 km. Sums of a
 * thousand of them stay far inside 64 bits. */
#define CW_LENGTH_MOST (G_GINT64_CONSTANT (1000000000) * CW_NM_PER_MM)

/* A whole number of millimetres (or inches) as a length; a constant
 * expression when @n is one. */
#define CW_MM(n) ((CwLength) (n) * CW_NM_PER_MM)
#define CW_INCHES(n) ((CwLength) (n) * CW_NM_PER_INCH)

/*
 * cw_length_parse:
 * @text: what somebody typed, UTF-8
 * @style: units that a bare number stands for, and the decimal sign
 * @length: (out): the length in nanometres; untouched on failure
 * @error: domain CW_TEXT_ERROR; the message points at the character, and
 *   cw_text_error_offset() gives its byte offset
 *
 * Reads every form that estimators write: 12' 6 1/2", 12-6.5, 12ft 6in,
 * 150 1/2", 3810, 3.81 m, 381 cm, a leading minus, typographic primes and
 * fractions. A bare number is millimetres in metric style and inches in US
 * style. A value that is not a whole number of nanometres (1/3") is rounded
 * half away from zero. Anything doubtful is refused, never guessed: 6-1/2 (inches,
 * or feet and inches?), inches of 12 or more after feet, thousands set apart,
 * a bare fraction in metric style.
 *
 * Returns: TRUE when @text was a length
 */
gboolean cw_length_parse (const char *text, const CwTextStyle *style,
                          CwLength *length, GError **error);

/*
 * cw_length_format:
 * Writes @length as a person reads it in @style: 12′ 6 1/2″ to the style's
 * fraction (marked ≈ nowhere: the nearest fraction is written), or 3810 mm
 * with as many decimals as the style allows and it needs. Thousands are not
 * set apart.
 *
 * Returns: (transfer full): UTF-8 text that cw_length_parse() reads back to
 *   the same length whenever the length is a whole number of the style's
 *   smallest steps
 */
char *cw_length_format (CwLength length, const CwTextStyle *style);

/* As cw_length_format(), but millimetres stand without their unit, as they do
 * on dimension lines. (transfer full) */
char *cw_length_format_dimension (CwLength length, const CwTextStyle *style);

/*
 * cw_length_format_exact:
 * As cw_length_format(), but a length that is no whole number of the style's
 * steps is written in 64ths, or else with decimals of an inch or of a
 * millimetre, so that reading the text back always gives the very same
 * length. For entry fields.
 */
char *cw_length_format_exact (CwLength length, const CwTextStyle *style);

/* Millimetres as the project file writes them: a plain decimal with at most
 * six places and a point, no exponent, no trailing zeros. Exact both ways. */
gboolean cw_length_from_mm_text (const char *text, CwLength *length);
char *cw_length_to_mm_text (CwLength length);

/* For arithmetic that leaves whole numbers: metres as a double. */
static inline double
cw_length_in_m (CwLength length)
{
  return (double) length / 1e9;
}

G_END_DECLS
