/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The table of choices of setting out, the best first, the present one marked.
 *
 * Signals: "chosen" (a row was), "taken" (Enter or a double click).
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-setting-words.h"

G_BEGIN_DECLS

#define CW_TYPE_SETTING_TABLE (cw_setting_table_get_type ())
G_DECLARE_FINAL_TYPE (CwSettingTable, cw_setting_table, CW, SETTING_TABLE,
                      GtkWidget)

GtkWidget *cw_setting_table_new (void);

/* @choices: (element-type CwSettingChoice): copied. None is chosen. */
void cw_setting_table_show (CwSettingTable *table, const GArray *choices,
                            const CwTextStyle *style,
                            const CwCurrency *currency);

/* The chosen one, borrowed; NULL when none is. */
const CwSettingChoice *cw_setting_table_chosen (CwSettingTable *table);
/* @index counts from the top. */
void cw_setting_table_choose (CwSettingTable *table, guint index);
guint cw_setting_table_n_choices (CwSettingTable *table);

G_END_DECLS
