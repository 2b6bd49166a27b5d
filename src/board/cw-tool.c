/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-tool-private.h"
#include "cw-tool-typed.h"
#include "cw-typed-place.h"

const CwToolInfo cw_tool_infos[CW_N_TOOLS] = {
  [CW_TOOL_SELECT] = { CW_TOOL_SELECT, "select", N_ ("Select"), "v",
                       "cw-select-symbolic" },
  [CW_TOOL_WALL] = { CW_TOOL_WALL, "wall", N_ ("Wall outline"), "w",
                     "cw-wall-symbolic" },
  [CW_TOOL_WINDOW] = { CW_TOOL_WINDOW, "window", N_ ("Window"), "i",
                       "cw-window-symbolic" },
  [CW_TOOL_DOOR] = { CW_TOOL_DOOR, "door", N_ ("Door"), "d",
                     "cw-door-symbolic" },
  [CW_TOOL_ARCH] = { CW_TOOL_ARCH, "arch", N_ ("Arch"), "a",
                     "cw-arch-symbolic" },
  [CW_TOOL_STUB_OUT] = { CW_TOOL_STUB_OUT, "stub-out", N_ ("Stub-out"), "s",
                         "cw-stub-out-symbolic" },
  [CW_TOOL_UNCLAD] = { CW_TOOL_UNCLAD, "unclad", N_ ("Unclad area"), "u",
                       "cw-unclad-symbolic" },
  [CW_TOOL_BAND] = { CW_TOOL_BAND, "band", N_ ("Band"), "b",
                     "cw-band-symbolic" },
  [CW_TOOL_DIMENSION] = { CW_TOOL_DIMENSION, "dimension", N_ ("Dimension"),
                          "m", "cw-dimension-symbolic" },
  [CW_TOOL_TAPE] = { CW_TOOL_TAPE, "tape", N_ ("Tape measure"), "t",
                     "cw-tape-symbolic" },
  [CW_TOOL_SCALE] = { CW_TOOL_SCALE, "scale", N_ ("Scale of the sheet"), "k",
                      "cw-scale-symbolic" },
};

static const CwToolClass *const classes[CW_N_TOOLS] = {
  [CW_TOOL_SELECT] = &cw_tool_select_class,
  [CW_TOOL_WALL] = &cw_tool_wall_class,
  [CW_TOOL_WINDOW] = &cw_tool_rectangle_class,
  [CW_TOOL_DOOR] = &cw_tool_rectangle_class,
  [CW_TOOL_ARCH] = &cw_tool_rectangle_class,
  [CW_TOOL_STUB_OUT] = &cw_tool_stub_out_class,
  [CW_TOOL_UNCLAD] = &cw_tool_rectangle_class,
  [CW_TOOL_BAND] = &cw_tool_rectangle_class,
  [CW_TOOL_DIMENSION] = &cw_tool_dimension_class,
  [CW_TOOL_TAPE] = &cw_tool_two_points_class,
  [CW_TOOL_SCALE] = &cw_tool_two_points_class,
};

CwTool *
cw_tool_new (CwToolKind kind, CwDocument *document)
{
  const CwToolClass *klass;
  CwTool *tool;

  g_return_val_if_fail (kind < CW_N_TOOLS, NULL);
  g_return_val_if_fail (CW_IS_DOCUMENT (document), NULL);

  klass = classes[kind];
  tool = g_malloc0 (klass->size);
  tool->klass = klass;
  tool->kind = kind;
  tool->document = document;
  tool->style = cw_text_style_plain (
      (CwUnits) cw_document_project (document)->units);
  tool->pointer.nm_per_pixel = 1e7;
  if (klass->start)
    klass->start (tool);
  return tool;
}

void
cw_tool_free (CwTool *tool)
{
  if (tool == NULL)
    return;
  if (tool->klass->clear)
    tool->klass->clear (tool);
  g_clear_pointer (&tool->wall, cw_wall_unref);
  g_clear_pointer (&tool->joints, g_array_unref);
  g_clear_pointer (&tool->drawn, cw_drawn_lines_unref);
  g_free (tool->hint);
  g_free (tool);
}

void
cw_tool_set_text_style (CwTool *tool, const CwTextStyle *style)
{
  g_return_if_fail (tool != NULL && style != NULL);

  tool->style = *style;
}

void
cw_tool_set_joints (CwTool *tool, GArray *joints)
{
  GArray *former;

  g_return_if_fail (tool != NULL);

  former = tool->joints;
  tool->joints = joints ? g_array_ref (joints) : NULL;
  g_clear_pointer (&former, g_array_unref);
}

void
cw_tool_set_drawn (CwTool *tool, const CwDrawnLines *lines,
                   const CwPlacing *placing)
{
  CwDrawnLines *former;

  g_return_if_fail (tool != NULL && placing != NULL);

  former = tool->drawn;
  tool->drawn = lines ? cw_drawn_lines_ref (lines) : NULL;
  tool->drawn_at = *placing;
  tool->drawn_at.sheet = NULL;
  g_clear_pointer (&former, cw_drawn_lines_unref);
}

CwToolKind
cw_tool_kind (CwTool *tool)
{
  g_return_val_if_fail (tool != NULL, CW_TOOL_SELECT);

  return tool->kind;
}

static void
see_pointer (CwTool *tool, const CwPointer *pointer)
{
  tool->pointer = *pointer;
  tool->has_pointer = TRUE;
}

void
cw_tool_press (CwTool *tool, const CwPointer *pointer, guint n_press)
{
  g_return_if_fail (tool != NULL && pointer != NULL);

  see_pointer (tool, pointer);
  tool->has_reference = FALSE;
  if (tool->klass->press)
    tool->klass->press (tool, pointer, n_press);
}

void
cw_tool_move (CwTool *tool, const CwPointer *pointer)
{
  g_return_if_fail (tool != NULL && pointer != NULL);

  see_pointer (tool, pointer);
  if (tool->klass->move)
    tool->klass->move (tool, pointer);
}

void
cw_tool_release (CwTool *tool, const CwPointer *pointer)
{
  g_return_if_fail (tool != NULL && pointer != NULL);

  see_pointer (tool, pointer);
  if (tool->klass->release)
    tool->klass->release (tool, pointer);
}

void
cw_tool_nudge (CwTool *tool, CwLength dx, CwLength dy)
{
  g_return_if_fail (tool != NULL);

  if (tool->klass->nudge && (dx != 0 || dy != 0))
    tool->klass->nudge (tool, dx, dy);
}

/* As a click there would do, but exactly there. */
static gboolean
click_at_text (CwTool *tool, const char *text, GError **error)
{
  CwPointer pointer = { .nm_per_pixel = tool->has_pointer
                                            ? tool->pointer.nm_per_pixel
                                            : (double) CW_NM_PER_MM,
                        .hold = CW_HOLD_FREE };

  if (!cw_typed_place (text, &tool->style, &pointer.at, error))
    return FALSE;
  if (cw_tool_place_point (tool, pointer.at))
    return TRUE;
  cw_tool_move (tool, &pointer);
  cw_tool_press (tool, &pointer, 1);
  cw_tool_release (tool, &pointer);
  return TRUE;
}

gboolean
cw_tool_enter_text (CwTool *tool, const char *text, GError **error)
{
  g_return_val_if_fail (tool != NULL && text != NULL, FALSE);

  if (cw_typed_is_place (text))
    return click_at_text (tool, text, error);
  if (tool->klass->enter_text)
    return tool->klass->enter_text (tool, text, error);
  cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, 0,
                     _ ("There is nothing to type here"));
  return FALSE;
}

void
cw_tool_next_form (CwTool *tool)
{
  g_return_if_fail (tool != NULL);

  if (tool->klass->next_form)
    tool->klass->next_form (tool);
}

guint
cw_tool_get_form (CwTool *tool)
{
  g_return_val_if_fail (tool != NULL, 0);

  return tool->form;
}

void
cw_tool_set_form (CwTool *tool, guint form)
{
  g_return_if_fail (tool != NULL);

  tool->form = form;
}

void
cw_tool_set_keeps_on (CwTool *tool, gboolean keeps_on)
{
  g_return_if_fail (tool != NULL);

  tool->pointer.hold &= ~(guint) CW_HOLD_ADD;
  if (keeps_on)
    tool->pointer.hold |= CW_HOLD_ADD;
}

const char *
cw_tool_snap_words (CwTool *tool)
{
  g_return_val_if_fail (tool != NULL, NULL);

  if (tool->has_pointer && tool->pointer.hold & CW_HOLD_FREE)
    return _ ("Snapping held off");
  return tool->shows_snap ? cw_snap_words (&tool->snap) : NULL;
}

gboolean
cw_tool_finish (CwTool *tool)
{
  g_return_val_if_fail (tool != NULL, FALSE);

  return tool->klass->finish && tool->klass->finish (tool);
}

gboolean
cw_tool_cancel (CwTool *tool)
{
  g_return_val_if_fail (tool != NULL, FALSE);

  tool->shows_snap = FALSE;
  if (tool->has_reference)
    {
      tool->has_reference = FALSE;
      return TRUE;
    }
  return tool->klass->cancel && tool->klass->cancel (tool);
}

gboolean
cw_tool_delete (CwTool *tool)
{
  g_return_val_if_fail (tool != NULL, FALSE);

  return tool->klass->remove && tool->klass->remove (tool);
}

void
cw_tool_refresh (CwTool *tool)
{
  g_return_if_fail (tool != NULL);

  if (tool->klass->refresh)
    tool->klass->refresh (tool);
}

/* Where something can be placed: how to place more than one. */
static char *
with_keeping_on (CwTool *tool, char *words)
{
  g_autofree char *former = words;
  gboolean kept = (tool->pointer.hold & CW_HOLD_ADD) != 0;

  if (!tool->klass->places
      || (cw_tool_elevation (tool) == NULL && tool->kind != CW_TOOL_WALL))
    return g_steal_pointer (&former);
  /* Translators: first what the next click does. */
  return g_strdup_printf (kept ? _ ("%s · The tool stays on")
                               : _ ("%s · Shift keeps the tool on"),
                          former);
}

const char *
cw_tool_hint (CwTool *tool)
{
  g_return_val_if_fail (tool != NULL, "");

  g_free (tool->hint);
  if (tool->has_reference)
    tool->hint = g_strdup (_ ("Type how far along and up from the crossed "
                              "square; Escape lets go of it"));
  else if (tool->klass->hint)
    tool->hint = with_keeping_on (tool, tool->klass->hint (tool));
  else
    tool->hint = g_strdup ("");
  return tool->hint;
}

CwDisplayList *
cw_tool_overlay (CwTool *tool, double nm_per_pixel)
{
  CwDisplayList *list;
  CwPoint from;

  g_return_val_if_fail (tool != NULL, NULL);

  list = cw_display_list_new ();
  if (tool->klass->overlay)
    tool->klass->overlay (tool, list, nm_per_pixel);
  if (cw_tool_get_reference (tool, &from))
    cw_tool_draw_reference (list, from, nm_per_pixel);
  return list;
}

gboolean
cw_tool_take_done (CwTool *tool)
{
  gboolean done;

  g_return_val_if_fail (tool != NULL, FALSE);

  done = tool->done;
  tool->done = FALSE;
  return done;
}

CwPoint
cw_tool_take_shift (CwTool *tool)
{
  CwPoint shift;

  g_return_val_if_fail (tool != NULL, cw_point (0, 0));

  shift = tool->shift;
  tool->shift = cw_point (0, 0);
  return shift;
}

gboolean
cw_tool_two_points (CwTool *tool, CwPoint *first, CwPoint *second)
{
  g_return_val_if_fail (tool != NULL && first && second, FALSE);

  return tool->klass->two_points
         && tool->klass->two_points (tool, first, second);
}
