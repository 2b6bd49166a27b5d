/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walls for the tests of setting out.
 */
#pragma once

#include "cw-layout.h"

G_BEGIN_DECLS

/* A wall being described: its corners, its openings and how it is set out. */
typedef struct
{
  CwElevation *elevation;
  CwBuildup *buildup;
  CwSettingOut *setting_out;
  CwPanel *panel;
  CwLength stud_spacing;    /* 0: the default */
} WallMaker;

/* Panels of 2400 × 600 mm with joints of 3 mm and the defaults otherwise. */
void wall_begin (WallMaker *maker, const CwPoint *corners, gsize n);
void wall_begin_box (WallMaker *maker, CwLength width, CwLength height);
void wall_add_opening (WallMaker *maker, CwLength x, CwLength y,
                       CwLength width, CwLength height);
void wall_add_arch (WallMaker *maker, CwLength x, CwLength y, CwLength width,
                    CwLength height, CwLength rise);
void wall_add_stub_out (WallMaker *maker, CwLength x, CwLength y,
                        CwLength diameter);

/* Rectangular, with a clearance. */
void wall_add_box_out (WallMaker *maker, CwLength x, CwLength y,
                       CwLength width, CwLength height, CwLength clearance);
void wall_add_unclad (WallMaker *maker, const CwPoint *corners, gsize n);
void wall_add_band (WallMaker *maker, const CwBox *box);

/* An outline with bows, where corners have a sagitta. */
void wall_begin_bowed (WallMaker *maker, const CwCorner *corners, gsize n);

/* Ends the making. (transfer full) */
CwLayout *wall_layout (WallMaker *maker);

G_END_DECLS
