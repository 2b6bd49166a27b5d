/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What comes in from pointer and keys. The board owns the arithmetic of pan
 * and zoom; all else is handed to the tool as plain structs.
 */
#include "cw-board-private.h"

#include <math.h>

#define WHEEL_FACTOR 1.2
#define KEY_FACTOR 1.25
/* A finger's way over a touchpad that doubles the scale, pixels. */
#define TOUCH_DOUBLES 150.0

static CwHold
hold_of (GdkModifierType state)
{
  CwHold hold = CW_HOLD_NONE;

  if (state & GDK_SHIFT_MASK)
    hold |= CW_HOLD_ADD;
  if (state & GDK_ALT_MASK)
    hold |= CW_HOLD_FREE;
  if (state & GDK_CONTROL_MASK)
    hold |= CW_HOLD_STRAIGHT;
  return hold;
}

/* Window managers keep Alt with a drag to themselves, so F holds too. */
static CwHold
present_hold (CwBoard *self, GdkModifierType state)
{
  return hold_of (state) | (self->freed ? CW_HOLD_FREE : CW_HOLD_NONE);
}

CwPointer
cw_board_pointer (CwBoard *self, double x, double y)
{
  return (CwPointer) {
    .at = cw_view_point (&self->view, x, y),
    .nm_per_pixel = self->view.nm_per_pixel,
    .hold = self->hold,
  };
}

static void
see_pointer (CwBoard *self, GtkEventController *controller, double x,
             double y)
{
  self->x = self->seen_x = x;
  self->y = self->seen_y = y;
  self->has_pointer = TRUE;
  self->by_keys = self->held = FALSE;
  self->hold = present_hold (
      self, gtk_event_controller_get_current_event_state (controller));
}

/* Also when the wall moved under it. */
void
cw_board_tell_pointer (CwBoard *self)
{
  CwPoint at = cw_view_point (&self->view, self->x, self->y);

  if (!self->has_pointer || self->tool == NULL)
    return;
  g_signal_emit (self, cw_board_signals[CW_BOARD_POINTER_MOVED], 0, at.x,
                 at.y);
}

/* For a new tool, or after the view moved under a resting pointer. */
void
cw_board_feed_again (CwBoard *self)
{
  CwPointer pointer;

  if (self->tool == NULL || !self->has_pointer || self->wants_fit)
    return;
  pointer = cw_board_pointer (self, self->x, self->y);
  cw_tool_move (self->tool, &pointer);
}

/* --------------------------------------------------------------- pointer */

static void
pan_to (CwBoard *self, double x, double y)
{
  cw_board_pan_by (self, x - self->pan_x, y - self->pan_y);
  self->pan_x = x;
  self->pan_y = y;
}

static void
begin_pan (CwBoard *self, double x, double y)
{
  self->panning = TRUE;
  self->pan_x = x;
  self->pan_y = y;
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), "grabbing");
}

static void
end_pan (CwBoard *self)
{
  self->panning = FALSE;
  gtk_widget_set_cursor_from_name (
      GTK_WIDGET (self),
      self->kind == CW_TOOL_SELECT ? "default" : "crosshair");
}

/* The toolkit makes up motions of a pointer that rests; the crosshair stays. */
static gboolean
is_at_rest (CwBoard *self, double x, double y)
{
  return self->by_keys && fabs (x - self->seen_x) < 1
         && fabs (y - self->seen_y) < 1;
}

static void
on_motion (GtkEventController *controller, double x, double y, CwBoard *self)
{
  if (is_at_rest (self, x, y))
    return;
  see_pointer (self, controller, x, y);
  if (self->panning)
    pan_to (self, x, y);
  if (self->tool == NULL)
    return;
  cw_board_feed_again (self);
  cw_board_after_tool (self);
  cw_board_tell_pointer (self);
}

static void
on_pressed (GtkGestureClick *gesture, int n_press, double x, double y,
            CwBoard *self)
{
  CwPointer pointer;

  gtk_widget_grab_focus (GTK_WIDGET (self));
  see_pointer (self, GTK_EVENT_CONTROLLER (gesture), x, y);
  self->space_used |= self->space;
  if (self->space)
    begin_pan (self, x, y);
  if (self->panning || self->tool == NULL)
    return;
  self->pressed = TRUE;
  pointer = cw_board_pointer (self, x, y);
  cw_tool_press (self->tool, &pointer, (guint) n_press);
  cw_board_after_tool (self);
}

/* Comes also when the button goes up outside the board. */
static void
on_drag_end (GtkGestureDrag *gesture, double dx, double dy, CwBoard *self)
{
  double x = self->x - dx, y = self->y - dy;
  CwPointer pointer;

  if (self->panning)
    end_pan (self);
  if (!self->pressed || self->tool == NULL)
    return;
  self->pressed = FALSE;
  gtk_gesture_drag_get_start_point (gesture, &x, &y);
  see_pointer (self, GTK_EVENT_CONTROLLER (gesture), x + dx, y + dy);
  pointer = cw_board_pointer (self, x + dx, y + dy);
  cw_tool_release (self->tool, &pointer);
  cw_board_after_tool (self);
}

/* A tap is over before the toolkit asks where the pointer is, and the motion
 * it then makes up has no button: the drag ends, as with a release. */
static gboolean
is_up_unseen (GtkGesture *gesture)
{
  GdkEvent *event = gtk_event_controller_get_current_event (
      GTK_EVENT_CONTROLLER (gesture));

  return event && gdk_event_get_event_type (event) == GDK_MOTION_NOTIFY
         && !(gdk_event_get_modifier_state (event) & GDK_BUTTON1_MASK);
}

static void
on_cancel (GtkGesture *gesture, GdkEventSequence *sequence, CwBoard *self)
{
  if (!self->pressed || self->tool == NULL || is_up_unseen (gesture))
    return;
  self->pressed = FALSE;
  cw_tool_cancel (self->tool);
  cw_board_after_tool (self);
}

static void
on_pan_begin (GtkGestureDrag *gesture, double x, double y, CwBoard *self)
{
  gtk_widget_grab_focus (GTK_WIDGET (self));
  begin_pan (self, x, y);
}

static void
on_pan_update (GtkGestureDrag *gesture, double dx, double dy, CwBoard *self)
{
  double x, y;

  gtk_gesture_drag_get_start_point (gesture, &x, &y);
  pan_to (self, x + dx, y + dy);
}

static void
on_pan_end (GtkGestureDrag *gesture, double dx, double dy, CwBoard *self)
{
  end_pan (self);
}

static void
scroll_wheel (CwBoard *self, double dx, double dy, GdkModifierType state)
{
  if (state & GDK_SHIFT_MASK)
    cw_board_pan_by (self, -60 * (dx + dy), 0);
  else
    cw_board_zoom_at (self, pow (WHEEL_FACTOR, -dy), self->x, self->y);
}

static void
scroll_fingers (CwBoard *self, double dx, double dy, GdkModifierType state)
{
  if (state & GDK_CONTROL_MASK)
    cw_board_zoom_at (self, exp2 (-dy / TOUCH_DOUBLES), self->x, self->y);
  else
    cw_board_pan_by (self, -dx, -dy);
}

static gboolean
on_scroll (GtkEventControllerScroll *controller, double dx, double dy,
           CwBoard *self)
{
  GdkModifierType state = gtk_event_controller_get_current_event_state (
      GTK_EVENT_CONTROLLER (controller));

  if (gtk_event_controller_scroll_get_unit (controller)
      == GDK_SCROLL_UNIT_WHEEL)
    scroll_wheel (self, dx, dy, state);
  else
    scroll_fingers (self, dx, dy, state);
  cw_board_feed_again (self);
  return TRUE;
}

static void
on_pinch_begin (GtkGesture *gesture, GdkEventSequence *sequence,
                CwBoard *self)
{
  gtk_gesture_get_bounding_box_center (gesture, &self->pinch_x,
                                       &self->pinch_y);
  self->pinch_scale = 1;
  on_cancel (gesture, sequence, self);
}

/* What was between the fingers stays between them. */
static void
on_pinch (GtkGestureZoom *gesture, double scale, CwBoard *self)
{
  double x, y;

  if (!gtk_gesture_get_bounding_box_center (GTK_GESTURE (gesture), &x, &y))
    return;
  cw_board_pan_by (self, x - self->pinch_x, y - self->pinch_y);
  cw_board_zoom_at (self, scale / self->pinch_scale, x, y);
  self->pinch_x = x;
  self->pinch_y = y;
  self->pinch_scale = scale;
}

/* ------------------------------------------------------------------- keys */

static gboolean
zoom_by_key (CwBoard *self, guint key)
{
  switch (key)
    {
    case GDK_KEY_plus:
    case GDK_KEY_equal:
    case GDK_KEY_KP_Add:
      cw_board_zoom_by (self, KEY_FACTOR);
      return TRUE;
    case GDK_KEY_minus:
    case GDK_KEY_KP_Subtract:
      cw_board_zoom_by (self, 1 / KEY_FACTOR);
      return TRUE;
    case GDK_KEY_0:
    case GDK_KEY_KP_0:
      cw_board_zoom_fit (self);
      return TRUE;
    default:
      return FALSE;
    }
}

/* With Shift ten times, with Alt a tenth of the step. */
static CwLength
nudge_step (CwBoard *self, GdkModifierType state)
{
  gboolean us = self->style.units == CW_UNITS_US;

  if (state & GDK_SHIFT_MASK)
    return us ? CW_INCHES (6) : CW_MM (100);
  if (state & GDK_ALT_MASK)
    return us ? CW_NM_PER_INCH / 16 : CW_MM (1);
  return us ? CW_NM_PER_INCH / 2 : CW_MM (10);
}

static gboolean
nudge_by_key (CwBoard *self, guint key, GdkModifierType state)
{
  CwLength step = nudge_step (self, state);
  CwPoint way;

  switch (key)
    {
    case GDK_KEY_Left:
    case GDK_KEY_KP_Left:
      way = cw_point (-step, 0);
      break;
    case GDK_KEY_Right:
    case GDK_KEY_KP_Right:
      way = cw_point (step, 0);
      break;
    case GDK_KEY_Up:
    case GDK_KEY_KP_Up:
      way = cw_point (0, step);
      break;
    case GDK_KEY_Down:
    case GDK_KEY_KP_Down:
      way = cw_point (0, -step);
      break;
    default:
      return FALSE;
    }
  cw_tool_nudge (self->tool, way.x, way.y);
  return TRUE;
}

/* With nothing left to give up, back to selecting. */
static gboolean
escape (CwBoard *self)
{
  if (self->held)
    self->held = self->pressed = FALSE;
  if (cw_tool_cancel (self->tool))
    return TRUE;
  if (self->kind == CW_TOOL_SELECT)
    return FALSE;
  cw_board_set_tool (self, CW_TOOL_SELECT);
  return TRUE;
}

/* Enter is as good as Space where there is nothing to finish. */
static gboolean
press_by_key (CwBoard *self)
{
  if (self->by_keys)
    cw_board_click_crosshair (self);
  return self->by_keys;
}

static gboolean
edit_by_key (CwBoard *self, guint key)
{
  switch (key)
    {
    case GDK_KEY_Return:
    case GDK_KEY_KP_Enter:
      return cw_tool_finish (self->tool) || press_by_key (self);
    case GDK_KEY_Escape:
      return escape (self);
    case GDK_KEY_BackSpace:
    case GDK_KEY_Delete:
    case GDK_KEY_KP_Delete:
      return cw_tool_delete (self->tool);
    default:
      return FALSE;
    }
}

static gboolean
choose_by_key (CwBoard *self, gunichar letter)
{
  for (guint i = 0; i < CW_N_TOOLS; i++)
    if (letter == (gunichar) cw_tool_infos[i].key[0])
      {
        if ((CwToolKind) i == self->kind)
          cw_tool_next_form (self->tool);
        cw_board_set_tool (self, (CwToolKind) i);
        return TRUE;
      }
  return FALSE;
}

/* The beginning of a typed length; whoever shows the entry takes it on. */
static gboolean
type_by_key (CwBoard *self, gunichar letter)
{
  char text[7] = "";

  if (!g_unichar_isdigit (letter) && letter != '.' && letter != ',')
    return FALSE;
  text[g_unichar_to_utf8 (letter, text)] = '\0';
  g_signal_emit (self, cw_board_signals[CW_BOARD_TEXT_WANTED], 0, text);
  return TRUE;
}

/* A figure belongs to what is typed then, and zooms at other times. */
static gboolean
wants_text (CwBoard *self)
{
  CwTypedField fields[CW_TYPED_FIELDS_MOST];

  return cw_board_get_fields (self, fields) > 0;
}

static gboolean
plain_key (CwBoard *self, guint key)
{
  gunichar letter = gdk_keyval_to_unicode (key);

  if (letter == '0' && wants_text (self))
    return type_by_key (self, letter);
  if (zoom_by_key (self, key))
    return TRUE;
  if (letter == 'z')
    return cw_board_zoom_to_selection (self);
  if (letter == 'o')
    return cw_board_choose_reference (self);
  return letter
         && (choose_by_key (self, letter) || type_by_key (self, letter));
}

static gboolean
hold_free (CwBoard *self, guint key, gboolean held)
{
  if (key != GDK_KEY_f && key != GDK_KEY_F)
    return FALSE;
  self->freed = held;
  self->hold = held ? self->hold | CW_HOLD_FREE
                    : self->hold & ~(guint) CW_HOLD_FREE;
  cw_board_feed_again (self);
  cw_board_spoil (self, 1 << CW_BOARD_OVERLAY);
  return TRUE;
}

static gboolean
on_key (GtkEventControllerKey *controller, guint key, guint code,
        GdkModifierType state, CwBoard *self)
{
  gboolean taken = FALSE;

  if (self->tool == NULL)
    return FALSE;
  self->hold = present_hold (self, state);
  if (key == GDK_KEY_space && state & GDK_CONTROL_MASK)
    {
      cw_board_hold_crosshair (self);
      return TRUE;
    }
  if (key == GDK_KEY_space)
    {
      self->space_used &= self->space;
      self->space = TRUE;
      return TRUE;
    }
  if (cw_board_menu_by_key (self, key, state))
    return TRUE;
  if (!(state & GDK_CONTROL_MASK) && hold_free (self, key, TRUE))
    return TRUE;
  if (state & GDK_CONTROL_MASK)
    taken = zoom_by_key (self, key)
            || cw_board_move_crosshair (self, key, state);
  else if (!cw_board_move_crosshair (self, key, state)
           && !nudge_by_key (self, key, state) && !edit_by_key (self, key))
    taken = !(state & GDK_ALT_MASK) && plain_key (self, key);
  else
    taken = TRUE;
  if (taken)
    cw_board_after_tool (self);
  return taken;
}

static void
on_key_released (GtkEventControllerKey *controller, guint key, guint code,
                 GdkModifierType state, CwBoard *self)
{
  hold_free (self, key, FALSE);
  if (key != GDK_KEY_space)
    return;
  if (self->space && !self->space_used && self->by_keys)
    cw_board_click_crosshair (self);
  self->space = FALSE;
}

/* Holding a modifier shows at once, without waiting for the next motion. */
static gboolean
on_modifiers (GtkEventControllerKey *controller, GdkModifierType state,
              CwBoard *self)
{
  self->hold = present_hold (self, state);
  if (self->tool == NULL)
    return FALSE;
  cw_board_feed_again (self);
  cw_board_spoil (self, 1 << CW_BOARD_OVERLAY);
  return FALSE;
}

static void
on_focus_gone (GtkEventControllerFocus *controller, CwBoard *self)
{
  self->space = FALSE;
  self->freed = FALSE;
}

static void
add_controller (CwBoard *self, gpointer controller)
{
  gtk_widget_add_controller (GTK_WIDGET (self),
                             GTK_EVENT_CONTROLLER (controller));
}

static void
listen_to_buttons (CwBoard *self)
{
  GtkGesture *click = gtk_gesture_click_new ();
  GtkGesture *drag = gtk_gesture_drag_new ();
  GtkGesture *pan = gtk_gesture_drag_new ();

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (pan),
                                 GDK_BUTTON_MIDDLE);
  g_signal_connect (click, "pressed", G_CALLBACK (on_pressed), self);
  g_signal_connect (drag, "drag-end", G_CALLBACK (on_drag_end), self);
  g_signal_connect (drag, "cancel", G_CALLBACK (on_cancel), self);
  g_signal_connect (pan, "drag-begin", G_CALLBACK (on_pan_begin), self);
  g_signal_connect (pan, "drag-update", G_CALLBACK (on_pan_update), self);
  g_signal_connect (pan, "drag-end", G_CALLBACK (on_pan_end), self);
  add_controller (self, click);
  add_controller (self, drag);
  add_controller (self, pan);
  gtk_gesture_group (drag, click);
}

static void
listen_to_motion (CwBoard *self)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();
  GtkEventController *scroll = gtk_event_controller_scroll_new (
      GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES);
  GtkGesture *pinch = gtk_gesture_zoom_new ();

  g_signal_connect (motion, "enter", G_CALLBACK (on_motion), self);
  g_signal_connect (motion, "motion", G_CALLBACK (on_motion), self);
  g_signal_connect (scroll, "scroll", G_CALLBACK (on_scroll), self);
  g_signal_connect (pinch, "begin", G_CALLBACK (on_pinch_begin), self);
  g_signal_connect (pinch, "scale-changed", G_CALLBACK (on_pinch), self);
  add_controller (self, motion);
  add_controller (self, scroll);
  add_controller (self, pinch);
}

static void
listen_to_keys (CwBoard *self)
{
  GtkEventController *keys = gtk_event_controller_key_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  g_signal_connect (keys, "key-pressed", G_CALLBACK (on_key), self);
  g_signal_connect (keys, "key-released", G_CALLBACK (on_key_released), self);
  g_signal_connect (keys, "modifiers", G_CALLBACK (on_modifiers), self);
  g_signal_connect (focus, "leave", G_CALLBACK (on_focus_gone), self);
  add_controller (self, keys);
  add_controller (self, focus);
}

void
cw_board_listen (CwBoard *self)
{
  listen_to_buttons (self);
  listen_to_motion (self);
  listen_to_keys (self);
  cw_board_listen_for_menu (self);
  cw_board_listen_for_drops (self);
}
