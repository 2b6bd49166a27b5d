/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One attribute in the inspector: its words, the entry that suits its kind,
 * its unit, and what is wrong with what was typed.
 *
 * Signals: "number-given" (gint64, in the field's own unit), "text-given"
 * (string), "taken-back" (the value is to come from elsewhere again), "left"
 * (the entry was left: the edit is finished).
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-field.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

#define CW_TYPE_FIELD_ROW (cw_field_row_get_type ())
G_DECLARE_FINAL_TYPE (CwFieldRow, cw_field_row, CW, FIELD_ROW, GtkWidget)

/* @field lives as long as the program. */
GtkWidget *cw_field_row_new (const CwField *field, const CwTextStyle *style);

const CwField *cw_field_row_field (CwFieldRow *row);

/* What a reference may point at, NULL-ended and of equal length; the first
 * is usually "" with a word for nothing. */
void cw_field_row_set_targets (CwFieldRow *row, const char *const *ids,
                               const char *const *labels);

/* What is shown until the next call; an entry in which somebody types is left
 * alone. */
void cw_field_row_show_number (CwFieldRow *row, gint64 value);
void cw_field_row_show_text (CwFieldRow *row, const char *text);
void cw_field_row_show_mixed (CwFieldRow *row);   /* several values */

/* The value comes from elsewhere (a mark) or overrides that. */
void cw_field_row_set_origin (CwFieldRow *row, gboolean from_elsewhere,
                              gboolean overrides);

/* What it is for stands under it for good, not in a tooltip. */
void cw_field_row_show_help (CwFieldRow *row);

/* What is wrong, under the entry; NULL: nothing. */
void cw_field_row_set_trouble (CwFieldRow *row, const char *trouble);

G_END_DECLS
