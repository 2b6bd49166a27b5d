/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The text of a field's value as an entry shows it, and back.
 */
#pragma once

#include "cw-field.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

/* Lengths, decimals and counts; decimals in the reader's units.
 * (transfer full) */
char *cw_field_text_format (const CwField *field, gint64 value,
                            const CwTextStyle *style);

/* Within the field's bounds, or an error that says what is allowed. A decimal
 * may have its unit after it, of either system. */
gboolean cw_field_text_parse (const CwField *field, const char *text,
                              const CwTextStyle *style, gint64 *value,
                              GError **error);

/* What an absent value means and why: "300 mm unless stated. The most along a
 * stud …". (transfer full) */
char *cw_field_text_help (const CwField *field, const CwTextStyle *style);

/* The reader's unit to stand beside the entry; "" where the text names it
 * itself, as lengths do. */
const char *cw_field_text_unit (const CwField *field,
                                const CwTextStyle *style);

/* The text again with a mark under the character that @error points at.
 * (transfer full) */
char *cw_field_text_pointed (const char *text, const GError *error);

G_END_DECLS
