/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan sheet of our own: white, 600 x 400 points, with one black box.
 */
#pragma once

#include "cw-sheet-source.h"

/* The box on it, points from the top left. */
#define SHEET_CASE_WIDTH 600
#define SHEET_CASE_HEIGHT 400
#define SHEET_CASE_BOX_X 100
#define SHEET_CASE_BOX_Y 120
#define SHEET_CASE_BOX_WIDTH 150
#define SHEET_CASE_BOX_HEIGHT 80

/* Written to a file in the test's own folder. (transfer full) */
CwSheetSource *sheet_case_open (void);
