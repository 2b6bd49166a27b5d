/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The different sizes among blanks, and how many blanks have each: blanks of
 * one size stand for each other.
 */
#pragma once

#include "cw-cut-tree.h"

G_BEGIN_DECLS

typedef struct
{
  guint n;
  CwCutSize *sizes;          /* by width, then by height, ascending */
  guint *counts;
} CwCutSizes;

/*
 * cw_cut_sizes_init:
 * @times: (nullable): how often each blank is needed; NULL: once
 * @size_of: (nullable) (out): the size of each blank, as a place in the array
 */
void cw_cut_sizes_init (CwCutSizes *sizes, const CwCutSize *blanks,
                        const guint *times, guint n_blanks, guint *size_of);
void cw_cut_sizes_clear (CwCutSizes *sizes);

G_END_DECLS
