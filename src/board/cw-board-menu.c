/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Asking for a menu, with the right button or the Menu key: selects what is
 * there and tells whoever has a menu.
 */
#include "cw-board-private.h"

#include "cw-hit.h"

CwPoint
cw_board_get_menu_point (CwBoard *self)
{
  g_return_val_if_fail (CW_IS_BOARD (self), cw_point (0, 0));

  return self->menu_at;
}

gboolean
cw_board_get_pointer (CwBoard *self, CwPoint *at)
{
  g_return_val_if_fail (CW_IS_BOARD (self) && at, FALSE);

  *at = cw_view_point (&self->view, self->x, self->y);
  return self->has_pointer;
}

/* What is selected together stays so. */
static void
select_there (CwBoard *self, CwPoint at)
{
  CwLength reach = (CwLength) (8 * self->view.nm_per_pixel);
  const CwNode *hit = self->wall ? cw_hit_at (self->wall, at, reach) : NULL;
  const char *id = hit ? cw_node_id (hit) : NULL;

  if (id && cw_document_is_selected (self->document, id))
    return;
  cw_document_select (self->document, (const char *const[]) { id, NULL });
}

static void
want_menu (CwBoard *self, double x, double y)
{
  self->menu_at = cw_view_point (&self->view, x, y);
  g_signal_emit (self, cw_board_signals[CW_BOARD_MENU_WANTED], 0, x, y);
}

/* In the middle of drawing it gives up, as Escape does. */
static void
on_secondary (GtkGestureClick *gesture, int n_press, double x, double y,
              CwBoard *self)
{
  if (self->tool == NULL || self->pressed)
    return;
  gtk_widget_grab_focus (GTK_WIDGET (self));
  if (self->kind != CW_TOOL_SELECT && cw_tool_cancel (self->tool))
    {
      cw_board_after_tool (self);
      return;
    }
  select_there (self, cw_view_point (&self->view, x, y));
  want_menu (self, x, y);
}

static gboolean
middle_of_selected (CwBoard *self, double *x, double *y)
{
  const char *const *ids = cw_document_selection (self->document);
  CwBox box;

  if (self->wall == NULL || !ids[0]
      || !cw_hit_bounds (self->wall, ids[0], &box))
    return FALSE;
  cw_view_to_widget (&self->view, (double) (box.left + box.right) / 2,
                     (double) (box.bottom + box.top) / 2, x, y);
  return TRUE;
}

gboolean
cw_board_menu_by_key (CwBoard *self, guint key, GdkModifierType state)
{
  gboolean asks = key == GDK_KEY_Menu
                  || (key == GDK_KEY_F10 && (state & GDK_SHIFT_MASK));
  double x = self->x, y = self->y;

  if (!asks || self->pressed)
    return FALSE;
  if (self->by_keys)
    select_there (self, cw_view_point (&self->view, x, y));
  else if (!middle_of_selected (self, &x, &y) && !self->has_pointer)
    {
      x = gtk_widget_get_width (GTK_WIDGET (self)) / 2;
      y = gtk_widget_get_height (GTK_WIDGET (self)) / 2;
    }
  want_menu (self, x, y);
  return TRUE;
}

void
cw_board_listen_for_menu (CwBoard *self)
{
  GtkGesture *click = gtk_gesture_click_new ();

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (click),
                                 GDK_BUTTON_SECONDARY);
  g_signal_connect (click, "pressed", G_CALLBACK (on_secondary), self);
  gtk_widget_add_controller (GTK_WIDGET (self),
                             GTK_EVENT_CONTROLLER (click));
}
