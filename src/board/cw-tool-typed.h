/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What can be typed at the pointer, in separate fields.
 */
#pragma once

#include "cw-tool.h"
#include "cw-typed-fields.h"

G_BEGIN_DECLS

/* What can be typed now, with what the pointer gives at present. Returns: how
 * many fields there are; 0: nothing can be typed */
guint cw_tool_fields (CwTool *tool, CwTypedField fields[CW_TYPED_FIELDS_MOST]);

/*
 * cw_tool_enter_fields:
 * @texts: one for each of cw_tool_fields(); blank ones are left to the pointer
 * @wrong: (out): the field that an error points into
 *
 * With only the first one filled in, it may hold all that a single text can:
 * see cw_tool_enter_text(). The error (CW_TEXT_ERROR) points at the character
 * of that field's text.
 */
gboolean cw_tool_enter_fields (CwTool *tool, const char *const *texts,
                               guint *wrong, GError **error);

/* While something is typed, what along and up are measured from stays. */
void cw_tool_begin_typing (CwTool *tool);
void cw_tool_end_typing (CwTool *tool);

/* Along and up are measured from what the pointer is on, until the next point
 * has been set. FALSE: no point is wanted. */
gboolean cw_tool_choose_reference (CwTool *tool);

/* What they are measured from, when it was chosen or something is being typed;
 * FALSE: neither. */
gboolean cw_tool_get_reference (CwTool *tool, CwPoint *at);

G_END_DECLS
