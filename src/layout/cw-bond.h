/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The bond: where the panels of a course begin, and where its head joints
 * must not stand.
 */
#pragma once

#include "cw-row.h"
#include "cw-set-out.h"

G_BEGIN_DECLS

/* What every course of a wall has in common, and what each hands on to the
 * next: its joints and what was left of its last panel. */
typedef struct
{
  CwFrame frame;
  const CwWall *wall;
  const CwSettingOut *setting_out;
  const CwPanel *panel;
  GArray *studs;            /* (nullable): CwLength along, for head joints */
  guint course;             /* from 0 */
  GArray *joints;           /* CwLength: where joints of the course before begin */
  CwLength rest;            /* of its last panel; <= 0: none */
} CwBonding;

void cw_bond_init (CwBonding *bond, const CwWall *wall, const CwFrame *frame,
                   const GArray *studs);
void cw_bond_clear (CwBonding *bond);
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (CwBonding, cw_bond_clear)

/* Stud lines seen in @frame, for joints that stand on studs; NULL when they
 * need not or when the line runs upward. */
GArray *cw_bond_studs (const CwFrame *frame, const CwSettingOut *setting_out,
                       const GArray *studs, gboolean line_is_upright);

/*
 * cw_bond_set_out:
 * Sets out the next course: @out gets one stretch after the other, run by
 * run, and @n_stretches (CwRowRun's by index) how many each run has.
 */
void cw_bond_set_out (CwBonding *bond, const CwRow *row, CwSetOut *out,
                      GArray *n_stretches);

G_END_DECLS
