/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Money: decimal arithmetic with one rounding.
 */
#include "cw-money.h"

static CwDecimal
decimal (const char *text)
{
  CwDecimal value = 0;

  g_assert_true (cw_decimal_from_text (text, &value));
  return value;
}

static void
assert_money (CwMoney money, const CwCurrency *currency, const char *expected)
{
  g_autofree char *text = cw_money_to_text (money, currency);

  g_assert_cmpstr (text, ==, expected);
}

/* Amount by price. K-12 and A-30 are published, the rest is arithmetic. */
static const struct
{
  const char *id, *amount, *price, *code, *away, *even;
} products[] = {
  /* Schoolbook problem, bissoy.com/mcq/501262. */
  { "A-30", "289", "3.5", "INR", "1011.50", "1011.50" },
  /* ICSE textbook, shaalaa.com question 110309. */
  { "A-31", "63.3", "4.5", "INR", "284.85", "284.85" },
  { "A-31", "22.5", "9", "INR", "202.50", "202.50" },
  /* shaalaa.com question 61561. */
  { "A-33", "66", "8", "INR", "528.00", "528.00" },
  /* A Treatise on Architecture and Building Construction, vol. 4. */
  { "A-35", "5.624", "21.6", "USD", "121.48", "121.48" },
  { "A-36", "18.295", "6.75", "USD", "123.49", "123.49" },
  { "half", "0.5", "0.25", "USD", "0.13", "0.12" },
  { "half", "0.5", "0.27", "USD", "0.14", "0.14" },
  { "half", "-0.5", "0.25", "USD", "-0.13", "-0.12" },
  { "binary", "1", "1.005", "USD", "1.01", "1.00" },
  { "binary", "3", "0.1", "USD", "0.30", "0.30" },
  { "JPY", "3", "33.5", "JPY", "101", "100" },
  { "KWD", "3", "0.3335", "KWD", "1.001", "1.000" },
  { "unknown", "2", "1.125", "", "2.25", "2.25" },
};

static void
test_products (void)
{
  for (gsize i = 0; i < G_N_ELEMENTS (products); i++)
    {
      const CwCurrency away = cw_currency (products[i].code, CW_HALF_AWAY);
      const CwCurrency even = cw_currency (products[i].code, CW_HALF_EVEN);
      const CwDecimal amount = decimal (products[i].amount);
      const CwDecimal price = decimal (products[i].price);

      g_test_message ("%s", products[i].id);
      assert_money (cw_money_of (amount, price, &away), &away,
                    products[i].away);
      assert_money (cw_money_of (amount, price, &even), &even,
                    products[i].even);
    }
}

/* together: 244.97. */
static void
test_sum_of_lines (void)
{
  const CwCurrency usd = cw_currency ("USD", CW_HALF_AWAY);
  CwMoney sum = cw_money_of (decimal ("5.624"), decimal ("21.6"), &usd)
                + cw_money_of (decimal ("18.295"), decimal ("6.75"), &usd);

  assert_money (sum, &usd, "244.97");
}

/* A million dimes are 100000, which binary fractions do not add up to. */
static void
test_many_lines (void)
{
  const CwCurrency usd = cw_currency ("USD", CW_HALF_AWAY);
  CwMoney sum = 0;

  for (guint i = 0; i < 1000000; i++)
    sum += cw_money_of (CW_DECIMAL_ONE, decimal ("0.1"), &usd);
  assert_money (sum, &usd, "100000.00");
}

static void
test_percent_and_margin (void)
{
  const CwCurrency usd = cw_currency ("USD", CW_HALF_AWAY);
  const CwMoney cost = CW_MONEY (800);

  assert_money (cw_money_percent (cost, CW_DECIMAL (20), &usd), &usd,
                "160.00");
  assert_money (cw_money_margin (cost, CW_DECIMAL (20), &usd), &usd,
                "200.00");
  assert_money (cw_money_percent (CW_MONEY (1), decimal ("8.25"), &usd),
                &usd, "0.08");
  assert_money (cw_money_percent (CW_MONEY (-10), decimal ("0.05"), &usd),
                &usd, "-0.01");
}

static void
test_per (void)
{
  const CwCurrency usd = cw_currency ("USD", CW_HALF_AWAY);

  assert_money (cw_money_per (CW_MONEY (39), CW_DECIMAL (100), &usd), &usd,
                "0.39");
  /* K-12: 39.28 per 100 sq yd is 39 to 40 cents (Cyclopedia of Architecture,
   * Carpentry and Building, vol. 4). */
  assert_money (cw_money_per (392800, CW_DECIMAL (100), &usd), &usd, "0.39");
  assert_money (cw_money_per (CW_MONEY (2), CW_DECIMAL (3), &usd), &usd,
                "0.67");
  assert_money (cw_money_per (CW_MONEY (2), 0, &usd), &usd, "0.00");
}

static void
test_round_up (void)
{
  g_assert_cmpint (cw_money_round_up (CW_MONEY (101), CW_DECIMAL (100)), ==,
                   CW_MONEY (200));
  g_assert_cmpint (cw_money_round_up (CW_MONEY (200), CW_DECIMAL (100)), ==,
                   CW_MONEY (200));
  g_assert_cmpint (cw_money_round_up (CW_MONEY (-101), CW_DECIMAL (100)), ==,
                   CW_MONEY (-100));
  g_assert_cmpint (cw_money_round_up (12345, 0), ==, 12345);
}

static void
test_ends (void)
{
  const CwCurrency usd = cw_currency ("USD", CW_HALF_AWAY);

  g_assert_cmpint (cw_money_of (CW_DECIMAL_MOST, CW_DECIMAL_MOST, &usd), ==,
                   CW_MONEY_MOST);
  g_assert_cmpint (cw_money_of (-CW_DECIMAL_MOST, CW_DECIMAL_MOST, &usd), ==,
                   -CW_MONEY_MOST);
  g_assert_cmpint (cw_money_amount (1e300), ==, CW_DECIMAL_MOST);
  g_assert_cmpint (cw_money_amount (0.1 + 0.2), ==, 300000);
}

static void
test_shown (void)
{
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  const CwCurrency eur = cw_currency ("EUR", CW_HALF_AWAY);
  const CwCurrency jpy = cw_currency ("JPY", CW_HALF_AWAY);
  const CwCurrency none = cw_currency ("shells", CW_HALF_AWAY);
  g_autofree char *plain = cw_money_format (12345670, &eur, &style);
  g_autofree char *grouped = NULL, *yen = NULL, *nameless = NULL;

  g_assert_cmpstr (plain, ==, "1234.56 EUR");
  g_strlcpy (style.decimal, ",", sizeof style.decimal);
  g_strlcpy (style.thousands, ".", sizeof style.thousands);
  grouped = cw_money_format (-CW_MONEY (1234567), &eur, &style);
  g_assert_cmpstr (grouped, ==, "−1.234.567,00 EUR");
  yen = cw_money_format (CW_MONEY (1234), &jpy, &style);
  g_assert_cmpstr (yen, ==, "1.234 JPY");
  nameless = cw_money_format (CW_MONEY (5), &none, &style);
  g_assert_cmpstr (nameless, ==, "5,00");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/base/money/products", test_products);
  g_test_add_func ("/base/money/sum-of-lines", test_sum_of_lines);
  g_test_add_func ("/base/money/many-lines", test_many_lines);
  g_test_add_func ("/base/money/percent-and-margin", test_percent_and_margin);
  g_test_add_func ("/base/money/per", test_per);
  g_test_add_func ("/base/money/round-up", test_round_up);
  g_test_add_func ("/base/money/ends", test_ends);
  g_test_add_func ("/base/money/shown", test_shown);
  return g_test_run ();
}
