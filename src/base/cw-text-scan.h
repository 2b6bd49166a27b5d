/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walking over typed text character by character, for the readers of lengths
 * and numbers. Every refusal points at the character where it stands.
 */
#pragma once

#include "cw-text-error.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

typedef struct
{
  const char *text;
  const char *at; /* what comes next */
  const CwTextStyle *style;
} CwTextScan;

/* A plain decimal number: digits / 10^places. */
typedef struct
{
  gint64 digits;
  guint places;
} CwScannedNumber;

/* Refuses text that is blank or no UTF-8; stands on its first character. */
gboolean cw_text_scan_begin (CwTextScan *scan, const char *text,
                             const CwTextStyle *style, GError **error);

void cw_text_scan_blanks (CwTextScan *scan);

/* Steps over @sign when it comes next. */
gboolean cw_text_scan_sign (CwTextScan *scan, const char *sign);

/* Steps over a hyphen, dash or minus when one comes next. */
gboolean cw_text_scan_dash (CwTextScan *scan);

/* Whether an ASCII digit comes next. */
gboolean cw_text_scan_at_digit (const CwTextScan *scan);

/* Digits with at most one decimal sign of the style and digits after it;
 * ".5" too, but not "5.". At most 18 digits in all. */
gboolean cw_text_scan_number (CwTextScan *scan, CwScannedNumber *number,
                              GError **error);

/* Only blanks may follow; refuses anything else with @expected. */
gboolean cw_text_scan_end (CwTextScan *scan, const char *expected,
                           GError **error);

/* Sets @error, which says "@sentence (at character 3: “x”)".
 * Returns: FALSE */
gboolean cw_text_scan_refuse (const CwTextScan *scan, const char *at,
                              CwTextError code, const char *sentence,
                              GError **error);

G_END_DECLS
