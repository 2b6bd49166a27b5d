/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is typed at the pointer goes to the tool.
 */
#include "cw-board-private.h"
#include "cw-text-error.h"

static gboolean
has_tool (CwBoard *self, GError **error)
{
  if (self->tool == NULL)
    cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, 0, "%s",
                       _ ("There is no project yet"));
  return self->tool != NULL;
}

static void
after_typing (CwBoard *self)
{
  cw_board_feed_again (self);
  cw_board_after_tool (self);
}

gboolean
cw_board_enter_text (CwBoard *self, const char *text, GError **error)
{
  gboolean taken;

  g_return_val_if_fail (CW_IS_BOARD (self) && text != NULL, FALSE);

  if (!has_tool (self, error))
    return FALSE;
  taken = cw_tool_enter_text (self->tool, text, error);
  after_typing (self);
  return taken;
}

guint
cw_board_get_fields (CwBoard *self,
                     CwTypedField fields[CW_TYPED_FIELDS_MOST])
{
  g_return_val_if_fail (CW_IS_BOARD (self) && fields != NULL, 0);

  return self->tool ? cw_tool_fields (self->tool, fields) : 0;
}

/* The tool may have come to another step since the fields were shown. */
gboolean
cw_board_enter_fields (CwBoard *self, const char *const *texts, guint n,
                       guint *wrong, GError **error)
{
  CwTypedField fields[CW_TYPED_FIELDS_MOST];
  gboolean taken;

  g_return_val_if_fail (CW_IS_BOARD (self) && texts && wrong, FALSE);

  *wrong = 0;
  if (!has_tool (self, error))
    return FALSE;
  if (cw_tool_fields (self->tool, fields) == n)
    taken = cw_tool_enter_fields (self->tool, texts, wrong, error);
  else
    taken = cw_tool_enter_text (self->tool, texts[0], error);
  after_typing (self);
  return taken;
}

void
cw_board_set_keeps_on (CwBoard *self, gboolean keeps_on)
{
  g_return_if_fail (CW_IS_BOARD (self));

  if (self->tool)
    cw_tool_set_keeps_on (self->tool, keeps_on);
}

void
cw_board_begin_typing (CwBoard *self)
{
  g_return_if_fail (CW_IS_BOARD (self));

  if (self->tool)
    cw_tool_begin_typing (self->tool);
  cw_board_spoil (self, 1 << CW_BOARD_OVERLAY);
}

void
cw_board_end_typing (CwBoard *self)
{
  g_return_if_fail (CW_IS_BOARD (self));

  if (self->tool)
    cw_tool_end_typing (self->tool);
  cw_board_spoil (self, 1 << CW_BOARD_OVERLAY);
}

gboolean
cw_board_choose_reference (CwBoard *self)
{
  return cw_tool_choose_reference (self->tool);
}

const CwTextStyle *
cw_board_get_text_style (CwBoard *self)
{
  g_return_val_if_fail (CW_IS_BOARD (self), NULL);

  return &self->style;
}
