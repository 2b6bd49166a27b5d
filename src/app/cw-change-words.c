/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-change-words.h"

#include <math.h>
#include <string.h>

#include "cw-amount-text.h"
#include "cw-i18n.h"

/* A true minus sign: as wide as the plus. */
static const char *
sign_of (double value)
{
  return value < 0 ? "−" : "+";
}

static void
add (GString *words, const char *part)
{
  if (words->len)
    g_string_append (words, C_("between parts of a change", ", "));
  g_string_append (words, part);
}

static void
add_panels (GString *words, gint64 panels, const CwTextStyle *style)
{
  if (panels == 0)
    return;
  guint64 n = (guint64) ABS (panels);
  g_autofree char *number = cw_text_style_number (style, (double) n, 0);
  g_autofree char *figure
      = g_strconcat (sign_of ((double) panels), number, NULL);
  g_autofree char *part = g_strdup_printf (
      g_dngettext (GETTEXT_PACKAGE, "%s panel", "%s panels", n), figure);
  add (words, part);
}

static gboolean
is_zero (const char *number)
{
  return strpbrk (number, "123456789") == NULL;
}

static void
add_saw (GString *words, double saw, const CwTextStyle *style)
{
  const char *unit;
  g_autofree char *number = cw_amount_text (style, fabs (saw), "m", &unit);
  if (is_zero (number))
    return;
  /* Translators: sign, length and unit of saw cuts: "+2.3 m of cuts". */
  g_autofree char *part
      = g_strdup_printf (_("%s%s %s of cuts"), sign_of (saw), number, unit);
  add (words, part);
}

static void
add_money (GString *words, double amount, const CwTextStyle *style,
           const CwCurrency *currency)
{
  CwMoney money = llround (fabs (amount) * (double) CW_MONEY_ONE);
  g_autofree char *figure = cw_money_format (money, currency, style);
  if (is_zero (figure))
    return;
  g_autofree char *part = g_strconcat (sign_of (amount), figure, NULL);
  add (words, part);
}

char *
cw_change_words (const CwTakeoffChange *change, const CwTextStyle *style,
                 const CwCurrency *currency)
{
  GString *words = g_string_new (NULL);
  add_panels (words, change->panels, style);
  add_saw (words, change->saw, style);
  if (change->has_money)
    add_money (words, change->money, style, currency);
  if (!words->len)
    g_string_append (words, _("no change"));
  return g_string_free (words, FALSE);
}
