/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The crosshair: arrows move it, Space or Enter clicks there, Control with
 * Space takes hold there and lets go again, as a drag. With something selected
 * the arrows move that instead, and with Control the crosshair all the same.
 */
#include "cw-board-private.h"

#include <math.h>

#define STEP 10
#define LARGE_STEP 50
#define ARM 14.0f
#define GAP 4.0f

static gboolean
has_crosshair (CwBoard *self, GdkModifierType state)
{
  return self->held || state & GDK_CONTROL_MASK || self->kind != CW_TOOL_SELECT
         || cw_document_selection (self->document)[0] == NULL;
}

static double
step_of (GdkModifierType state)
{
  if (state & GDK_SHIFT_MASK)
    return LARGE_STEP;
  return state & GDK_ALT_MASK ? 1 : STEP;
}

static gboolean
find_way (guint key, int *across, int *down)
{
  *across = key == GDK_KEY_Right || key == GDK_KEY_KP_Right;
  *across -= key == GDK_KEY_Left || key == GDK_KEY_KP_Left;
  *down = key == GDK_KEY_Down || key == GDK_KEY_KP_Down;
  *down -= key == GDK_KEY_Up || key == GDK_KEY_KP_Up;
  return *across != 0 || *down != 0;
}

/* Out of the window the paper moves instead. */
static void
step_by (CwBoard *self, double dx, double dy)
{
  double width = gtk_widget_get_width (GTK_WIDGET (self));
  double height = gtk_widget_get_height (GTK_WIDGET (self));
  double x = CLAMP (self->x + dx, 0, width - 1);
  double y = CLAMP (self->y + dy, 0, height - 1);

  if (fabs (x - self->x - dx) > 0.5 || fabs (y - self->y - dy) > 0.5)
    cw_board_pan_by (self, x - self->x - dx, y - self->y - dy);
  self->x = x;
  self->y = y;
}

/* From where the pointer was, or from the middle. */
static void
begin (CwBoard *self)
{
  if (!self->has_pointer)
    {
      self->x = gtk_widget_get_width (GTK_WIDGET (self)) / 2;
      self->y = gtk_widget_get_height (GTK_WIDGET (self)) / 2;
    }
  self->has_pointer = TRUE;
  self->by_keys = TRUE;
}

gboolean
cw_board_move_crosshair (CwBoard *self, guint key, GdkModifierType state)
{
  int across, down;

  if ((self->pressed && !self->held) || !has_crosshair (self, state)
      || !find_way (key, &across, &down))
    return FALSE;
  begin (self);
  step_by (self, across * step_of (state), down * step_of (state));
  /* The modifiers say how far, not what is held. */
  self->hold = CW_HOLD_NONE;
  cw_board_feed_again (self);
  cw_board_tell_pointer (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
  return TRUE;
}

void
cw_board_crosshair_to (CwBoard *self, CwPoint at)
{
  double x, y;

  g_return_if_fail (CW_IS_BOARD (self));

  cw_board_to_widget (self, at, &x, &y);
  begin (self);
  step_by (self, x - self->x, y - self->y);
  self->hold = CW_HOLD_NONE;
  cw_board_feed_again (self);
  cw_board_tell_pointer (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

/* What a button that is pressed, dragged and let go does. */
void
cw_board_hold_crosshair (CwBoard *self)
{
  CwPointer pointer;

  begin (self);
  self->hold = CW_HOLD_NONE;
  pointer = cw_board_pointer (self, self->x, self->y);
  self->held = self->pressed = !self->held;
  if (self->held)
    cw_tool_press (self->tool, &pointer, 1);
  else
    cw_tool_release (self->tool, &pointer);
  cw_board_after_tool (self);
  cw_board_tell_pointer (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
cw_board_click_crosshair (CwBoard *self)
{
  CwPointer pointer = cw_board_pointer (self, self->x, self->y);

  if (self->held)
    {
      cw_board_hold_crosshair (self);
      return;
    }
  cw_tool_press (self->tool, &pointer, 1);
  cw_tool_release (self->tool, &pointer);
  cw_board_after_tool (self);
}

static void
show_bar (GtkSnapshot *snapshot, const GdkRGBA *colour, float x, float y,
          float width, float height)
{
  gtk_snapshot_append_color (snapshot, colour,
                             &GRAPHENE_RECT_INIT (x, y, width, height));
}

/* Four bars that leave the place itself free to be seen. */
void
cw_board_show_crosshair (CwBoard *self, GtkSnapshot *snapshot)
{
  const CwColour *line
      = &cw_style_values (self->palette, CW_STYLE_SELECTION)->line;
  GdkRGBA colour = { (float) line->red, (float) line->green,
                     (float) line->blue, 1 };
  float x = (float) self->x, y = (float) self->y;
  float wide = self->held ? 4 : 2;

  if (!self->by_keys)
    return;
  show_bar (snapshot, &colour, x - ARM, y - wide / 2, ARM - GAP, wide);
  show_bar (snapshot, &colour, x + GAP, y - wide / 2, ARM - GAP, wide);
  show_bar (snapshot, &colour, x - wide / 2, y - ARM, wide, ARM - GAP);
  show_bar (snapshot, &colour, x - wide / 2, y + GAP, wide, ARM - GAP);
}
