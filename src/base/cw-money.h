/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Money: whole ten-thousandths of a currency unit. An amount by a price and a
 * percentage are worked out exactly and rounded once, to the smallest unit
 * that the currency has; sums of such amounts are exact.
 */
#pragma once

#include "cw-decimal.h"

G_BEGIN_DECLS

typedef gint64 CwMoney;   /* 1/10000 of the currency's unit */

#define CW_MONEY_ONE G_GINT64_CONSTANT (10000)
#define CW_MONEY(n) ((CwMoney) (n) * CW_MONEY_ONE)
/* What is larger is taken as this, of either sign. */
#define CW_MONEY_MOST (G_GINT64_CONSTANT (100000000000000) * CW_MONEY_ONE)

/* What becomes of a half of the smallest unit. */
typedef enum
{
  CW_HALF_AWAY,         /* from zero: 0.125 is 0.13 */
  CW_HALF_EVEN,         /* to the even neighbour: 0.125 is 0.12 */
} CwHalf;

typedef struct
{
  const char *code;     /* static: three letters by ISO 4217, "" when not known */
  guint places;         /* of its smallest unit: 2 for a cent */
  CwHalf half;
} CwCurrency;

/*
 * cw_currency:
 * @code: three capital letters by ISO 4217, or anything
 *
 * Its minor units by ISO 4217 (from memory): none for JPY and others, three
 * for KWD and others, four for CLF and UYW, two otherwise. Letters that are
 * no code count with two. The code is interned.
 */
CwCurrency cw_currency (const char *code, CwHalf half);

/* Whether @text is three capital letters. */
gboolean cw_currency_is_code (const char *text);

/* @amount × @price, rounded once to the currency's smallest unit. */
CwMoney cw_money_of (CwDecimal amount, CwDecimal price,
                     const CwCurrency *currency);

/* @percent of @of, rounded once. */
CwMoney cw_money_percent (CwMoney of, CwDecimal percent,
                          const CwCurrency *currency);

/* What must be added to @cost so that it is @percent of the sum; @percent is
 * under 100. Rounded once. */
CwMoney cw_money_margin (CwMoney cost, CwDecimal percent,
                         const CwCurrency *currency);

/* @of over @amount, rounded once; 0 over nothing. */
CwMoney cw_money_per (CwMoney of, CwDecimal amount,
                      const CwCurrency *currency);

/* Up to the next multiple of @step; @step 0: as it is. */
CwMoney cw_money_round_up (CwMoney money, CwDecimal step);

/* An amount as it is priced: to six places, half away from zero. What no
 * CwDecimal can hold is taken as the largest. */
CwDecimal cw_money_amount (double amount);

/* With the currency's places and a point: "1234.50". (transfer full) */
char *cw_money_to_text (CwMoney money, const CwCurrency *currency);

/* For a reader: grouped, with the code after it, "1,234.50 USD".
 * (transfer full) */
char *cw_money_format (CwMoney money, const CwCurrency *currency,
                       const CwTextStyle *style);

/* For drawing and comparing; exact up to 15 digits. */
static inline double
cw_money_to_double (CwMoney money)
{
  return (double) money / 1e4;
}

G_END_DECLS
