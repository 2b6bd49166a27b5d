/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The steps of an amount as sentences.
 */
#include "cw-i18n.h"
#include "cw-quantity.h"

#include <math.h>
#include <string.h>

/* How a place in a sentence is written; (transfer full). */
typedef char *(*NumberFunc) (double value, const char *unit,
                             const CwTextStyle *style);

static gboolean
is_whole (double value)
{
  return fabs (value - round (value)) < 1e-9;
}

static char *
with_unit (char *number, const char *unit)
{
  char *text = *unit ? g_strconcat (number, " ", unit, NULL)
                     : g_strdup (number);

  g_free (number);
  return text;
}

static char *
reader_number (double value, const char *unit, const CwTextStyle *style)
{
  CwShownAmount shown;

  if (g_str_equal (unit, "mm"))
    return cw_length_format ((CwLength) llround (value * CW_NM_PER_MM), style);
  shown = cw_text_style_amount (style, value, unit);
  if (shown.decimals == 0 && !is_whole (shown.value))
    shown.decimals = 2;
  return with_unit (cw_text_style_number (style, shown.value, shown.decimals),
                    shown.unit);
}

/* To its last cent, however much it is. */
static char *
plain_money (double value, const char *unit)
{
  const CwCurrency currency = cw_currency (unit, CW_HALF_AWAY);

  return with_unit (cw_money_to_text ((CwMoney) llround (value * CW_MONEY_ONE),
                                      &currency),
                    unit);
}

static char *
plain_number (double value, const char *unit, const CwTextStyle *style)
{
  char *number;

  if (cw_currency_is_code (unit))
    return plain_money (value, unit);
  number = g_malloc (G_ASCII_DTOSTR_BUF_SIZE);
  g_ascii_formatd (number, G_ASCII_DTOSTR_BUF_SIZE, "%.9g", value);
  return with_unit (number, unit);
}

/* @sentence with its places filled in, added to @text. */
static void
append_sentence (GString *text, const char *sentence, const CwStepWords *step,
                 NumberFunc number, const CwTextStyle *style)
{
  for (const char *at = sentence; *at; at++)
    {
      int place = at[0] == '{' ? at[1] - '0' : -1;
      g_autofree char *written = NULL;

      if (place < 0 || place >= (int) G_N_ELEMENTS (step->places)
          || at[2] != '}')
        {
          g_string_append_c (text, *at);
          continue;
        }
      written = number (step->places[place].value, step->places[place].unit,
                        style);
      g_string_append (text, written);
      at += 2;
    }
}

static char *
steps_text (const CwQuantity *quantity, guint first, gboolean translate,
            NumberFunc number, const CwTextStyle *style)
{
  GString *text = g_string_new (NULL);

  for (guint i = first; i < quantity->steps->len; i++)
    {
      const CwStepWords *step
          = &g_array_index (quantity->steps, CwStepWords, i);

      if (i > first)
        g_string_append (text, "; ");
      append_sentence (text, translate ? _(step->sentence) : step->sentence,
                       step, number, style);
    }
  return g_string_free (text, FALSE);
}

char *
cw_quantity_steps_text (const CwQuantity *quantity, const CwTextStyle *style)
{
  g_return_val_if_fail (quantity != NULL && style != NULL, NULL);

  return steps_text (quantity, 0, TRUE, reader_number, style);
}

char *
cw_quantity_note_text (const CwQuantity *quantity, const CwTextStyle *style)
{
  g_return_val_if_fail (quantity != NULL && style != NULL, NULL);

  return quantity->has_note && quantity->steps->len > 0
             ? steps_text (quantity, quantity->steps->len - 1, TRUE,
                           reader_number, style)
             : NULL;
}

char *
cw_quantity_steps_plain (const CwQuantity *quantity)
{
  g_return_val_if_fail (quantity != NULL, NULL);

  return steps_text (quantity, 0, FALSE, plain_number, NULL);
}
