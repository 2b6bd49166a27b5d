/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The value of an attribute as text, both ways.
 */
#pragma once

#include "cw-node.h"

G_BEGIN_DECLS

/* Sets field @index of the unfrozen @node from the file's text.
 * Returns: NULL, or (transfer full) what is allowed there */
char *cw_project_value_read (CwNode *node, guint index, const char *text);

/* As the file writes it. (transfer full) */
char *cw_project_value_write (const CwNode *node, guint index);

/* As the file writes @value of a number, choice or yes-no. (transfer full) */
char *cw_project_number_text (const CwField *field, gint64 value);

/* The names that stand in a choice: "net, through or half". */
char *cw_project_choices_text (const CwField *field);

G_END_DECLS
