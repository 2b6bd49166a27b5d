/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small seeded generator (xorshift64*, Marsaglia 2003 and Vigna 2016):
 * the same numbers on every machine and in every release of any library, so
 * that the same project always gets the same plan.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct
{
  guint64 state;
} CwRandom;

static inline CwRandom
cw_random (guint64 seed)
{
  /* One round of splitmix64, as a state of zero would stay zero. */
  guint64 z = seed + G_GUINT64_CONSTANT (0x9e3779b97f4a7c15);
  z = (z ^ (z >> 30)) * G_GUINT64_CONSTANT (0xbf58476d1ce4e5b9);
  z = (z ^ (z >> 27)) * G_GUINT64_CONSTANT (0x94d049bb133111eb);
  return (CwRandom) { (z ^ (z >> 31)) | 1 };
}

static inline guint32
cw_random_next (CwRandom *random)
{
  random->state ^= random->state >> 12;
  random->state ^= random->state << 25;
  random->state ^= random->state >> 27;
  return (guint32) ((random->state
                     * G_GUINT64_CONSTANT (0x2545f4914f6cdd1d)) >> 32);
}

/* 0 … n - 1; n > 0. */
static inline guint
cw_random_below (CwRandom *random, guint n)
{
  return (guint) (((guint64) cw_random_next (random) * n) >> 32);
}

/* 0 <= x < 1 */
static inline double
cw_random_unit (CwRandom *random)
{
  return cw_random_next (random) * 0x1p-32;
}

G_END_DECLS
