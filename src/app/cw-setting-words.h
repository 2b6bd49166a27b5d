/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Choices of setting out in words.
 */
#pragma once

#include "cw-money.h"
#include "cw-setting-search.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

typedef enum
{
  CW_SETTING_COLUMN_START,
  CW_SETTING_COLUMN_BOND,
  CW_SETTING_COLUMN_OFFSET,
  CW_SETTING_COLUMN_BASE,
  CW_SETTING_COLUMN_PANELS,
  CW_SETTING_COLUMN_SAW,
  CW_SETTING_COLUMN_COST,     /* of what depends on it; without prices empty */
  CW_SETTING_COLUMN_TROUBLES,
  CW_N_SETTING_COLUMNS,
} CwSettingColumn;

/* Static, translated. */
const char *cw_setting_column_title (CwSettingColumn column);
gboolean cw_setting_column_is_figure (CwSettingColumn column);

/* A cell: "at least 15" stands beside the panels when they are more.
 * (transfer full) */
char *cw_setting_cell (const CwSettingChoice *choice, CwSettingColumn column,
                       const CwTextStyle *style, const CwCurrency *currency);

/* The whole row for a screen reader. (transfer full) */
char *cw_setting_row_words (const CwSettingChoice *choice,
                            const CwTextStyle *style,
                            const CwCurrency *currency);

G_END_DECLS
