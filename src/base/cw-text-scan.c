/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-text-scan.h"

#include <string.h>

#include "cw-i18n.h"

/* Eighteen digits fit 64 bits with room to spare. */
#define MOST_DIGITS 18

static gboolean
refuse_bytes (const char *text, const char *bad, GError **error)
{
  cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, bad - text,
                     _ ("The text is not UTF-8 from byte %u on"),
                     (guint)(bad - text) + 1);
  return FALSE;
}

gboolean
cw_text_scan_begin (CwTextScan *scan, const char *text,
                    const CwTextStyle *style, GError **error)
{
  *scan = (CwTextScan){ text, text, style };

  const char *bad;
  if (!g_utf8_validate (text, -1, &bad))
    return refuse_bytes (text, bad, error);

  cw_text_scan_blanks (scan);
  if (*scan->at != '\0')
    return TRUE;
  cw_text_error_set (error, CW_TEXT_ERROR_EMPTY, 0, _ ("Nothing was typed"));
  return FALSE;
}

void
cw_text_scan_blanks (CwTextScan *scan)
{
  while (g_unichar_isspace (g_utf8_get_char (scan->at)))
    scan->at = g_utf8_next_char (scan->at);
}

gboolean
cw_text_scan_sign (CwTextScan *scan, const char *sign)
{
  if (*sign == '\0' || !g_str_has_prefix (scan->at, sign))
    return FALSE;
  scan->at += strlen (sign);
  return TRUE;
}

gboolean
cw_text_scan_dash (CwTextScan *scan)
{
  /* Hyphen-minus, hyphen, hard hyphen, en dash, minus. */
  static const char *const dashes[] = { "-", "‐", "‑", "–", "−" };
  for (gsize i = 0; i < G_N_ELEMENTS (dashes); i++)
    if (cw_text_scan_sign (scan, dashes[i]))
      return TRUE;
  return FALSE;
}

gboolean
cw_text_scan_at_digit (const CwTextScan *scan)
{
  return g_ascii_isdigit (*scan->at);
}

/* Takes a run of digits into @number; tells whether there were any. */
static gboolean
take_digits (CwTextScan *scan, CwScannedNumber *number, guint *n_digits)
{
  const char *start = scan->at;
  for (; cw_text_scan_at_digit (scan); scan->at++)
    {
      if (*n_digits > 0 || *scan->at != '0')
        ++*n_digits;
      if (*n_digits <= MOST_DIGITS)
        number->digits = number->digits * 10 + (*scan->at - '0');
    }
  return scan->at > start;
}

static gboolean
take_places (CwTextScan *scan, CwScannedNumber *number, guint *n_digits,
             GError **error)
{
  const char *start = scan->at;
  if (!take_digits (scan, number, n_digits))
    return cw_text_scan_refuse (scan, scan->at, CW_TEXT_ERROR_UNEXPECTED,
                                _ ("Digits must follow the decimal sign"),
                                error);
  number->places = scan->at - start;
  return TRUE;
}

gboolean
cw_text_scan_number (CwTextScan *scan, CwScannedNumber *number, GError **error)
{
  const char *start = scan->at;
  guint n_digits = 0;
  *number = (CwScannedNumber){ 0 };

  gboolean has_whole = take_digits (scan, number, &n_digits);
  if (cw_text_scan_sign (scan, scan->style->decimal))
    {
      if (!take_places (scan, number, &n_digits, error))
        return FALSE;
    }
  else if (!has_whole)
    return cw_text_scan_refuse (scan, start, CW_TEXT_ERROR_UNEXPECTED,
                                _ ("A number is expected here"), error);

  /* Zeros after the point count as well: they scale the denominator. */
  if (n_digits > MOST_DIGITS || number->places > MOST_DIGITS)
    return cw_text_scan_refuse (scan, start, CW_TEXT_ERROR_RANGE,
                                _ ("The number has too many digits"), error);
  return TRUE;
}

/* A point or comma that is not the style's: likely meant as one. */
static gboolean
refuse_separator (const CwTextScan *scan, GError **error)
{
  g_autofree char *sentence = g_strdup_printf (
      _ ("The decimal sign is “%s” here, and thousands are not set apart"),
      scan->style->decimal);
  return cw_text_scan_refuse (scan, scan->at, CW_TEXT_ERROR_UNEXPECTED,
                              sentence, error);
}

gboolean
cw_text_scan_end (CwTextScan *scan, const char *expected, GError **error)
{
  const char *after = scan->at;
  cw_text_scan_blanks (scan);
  if (*scan->at == '\0')
    return TRUE;
  if (scan->at == after && (*after == '.' || *after == ','))
    return refuse_separator (scan, error);
  return cw_text_scan_refuse (scan, scan->at, CW_TEXT_ERROR_UNEXPECTED,
                              expected, error);
}

gboolean
cw_text_scan_refuse (const CwTextScan *scan, const char *at, CwTextError code,
                     const char *sentence, GError **error)
{
  gsize offset = at - scan->text;
  if (*at == '\0')
    {
      cw_text_error_set (error, code, offset, _ ("%s (at the end)"), sentence);
      return FALSE;
    }

  char character[7] = "";
  g_unichar_to_utf8 (g_utf8_get_char (at), character);
  cw_text_error_set (
      error, code, offset, _ ("%s (at character %u: “%s”)"), sentence,
      (guint)g_utf8_pointer_to_offset (scan->text, at) + 1, character);
  return FALSE;
}
