/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A mark dropped on the board from the schedule of openings becomes an
 * opening there. While it is held over the board its outline shows where it
 * would fall; what snaps to other things snaps here too.
 */
#include "cw-board-private.h"

#include "cw-dragged-mark.h"
#include "cw-edit-marks.h"
#include "cw-tool-private.h"

static const CwMark *
find_mark (CwBoard *self, const char *id)
{
  return self->document
             ? cw_project_mark (cw_document_project (self->document), id)
             : NULL;
}

/* About the pointer; a door stands on the wall's base. */
static CwBox
box_at (CwBoard *self, const CwMark *mark, double x, double y)
{
  const CwPointer pointer = cw_board_pointer (self, x, y);
  const CwSnapField field = cw_tool_snap_field (self->tool, &pointer);
  CwBox box = { pointer.at.x - mark->width / 2,
                pointer.at.y - mark->height / 2, 0, 0 };
  CwPoint by;

  if (mark->kind == CW_OPENING_DOOR && self->wall && self->wall->outline)
    box.bottom = cw_region_box (self->wall->outline).bottom;
  box.right = box.left + mark->width;
  box.top = box.bottom + mark->height;
  cw_snap_box (&field, &box, &by);
  if (mark->kind == CW_OPENING_DOOR)
    by.y = 0;
  return (CwBox) { box.left + by.x, box.bottom + by.y, box.right + by.x,
                   box.top + by.y };
}

static void
stop_showing (CwBoard *self)
{
  self->dropping = FALSE;
  cw_board_spoil (self, 1 << CW_BOARD_OVERLAY);
}

gboolean
cw_board_place_mark (CwBoard *self, const char *id, double x, double y)
{
  const CwElevation *elevation;
  const CwMark *mark;
  g_autoptr (CwProject) next = NULL;
  g_autofree char *made = NULL, *name = NULL;
  CwBox box;

  g_return_val_if_fail (CW_IS_BOARD (self) && id != NULL, FALSE);

  mark = find_mark (self, id);
  elevation = cw_board_elevation (self);
  if (mark == NULL || elevation == NULL || self->tool == NULL)
    return FALSE;
  box = box_at (self, mark, x, y);
  if (!cw_edit_box_is_sound (&box))
    return FALSE;
  next = cw_edit_place_mark (cw_document_project (self->document), elevation,
                             mark, cw_point (box.left, box.bottom), &made);
  name = g_strdup_printf (_ ("Place %s"), mark->name);
  cw_document_seal (self->document);
  cw_document_edit (self->document, next, name, NULL);
  cw_document_select (self->document, (const char *const[]) { made, NULL });
  return TRUE;
}

void
cw_board_draw_drop (CwBoard *self, CwDisplayList *list)
{
  if (self->dropping)
    cw_display_list_add_box (list, CW_STYLE_DRAFT, NULL, &self->drop);
}

static const char *
held_mark (const GValue *value)
{
  const CwDraggedMark *mark = value ? g_value_get_boxed (value) : NULL;

  return mark ? cw_dragged_mark_id (mark) : NULL;
}

static GdkDragAction
on_motion (GtkDropTarget *target, double x, double y, CwBoard *self)
{
  const char *id = held_mark (gtk_drop_target_get_value (target));
  const CwMark *mark = id ? find_mark (self, id) : NULL;

  if (cw_board_elevation (self) == NULL || self->tool == NULL)
    return 0;
  if (mark)
    {
      self->dropping = TRUE;
      self->drop = box_at (self, mark, x, y);
      cw_board_spoil (self, 1 << CW_BOARD_OVERLAY);
    }
  return GDK_ACTION_COPY;
}

static void
on_leave (GtkDropTarget *target, CwBoard *self)
{
  stop_showing (self);
}

static gboolean
on_drop (GtkDropTarget *target, const GValue *value, double x, double y,
         CwBoard *self)
{
  const char *id = held_mark (value);

  stop_showing (self);
  gtk_widget_grab_focus (GTK_WIDGET (self));
  return id && cw_board_place_mark (self, id, x, y);
}

void
cw_board_listen_for_drops (CwBoard *self)
{
  GtkDropTarget *target
      = gtk_drop_target_new (CW_TYPE_DRAGGED_MARK, GDK_ACTION_COPY);

  gtk_drop_target_set_preload (target, TRUE);
  g_signal_connect (target, "enter", G_CALLBACK (on_motion), self);
  g_signal_connect (target, "motion", G_CALLBACK (on_motion), self);
  g_signal_connect (target, "leave", G_CALLBACK (on_leave), self);
  g_signal_connect (target, "drop", G_CALLBACK (on_drop), self);
  gtk_widget_add_controller (GTK_WIDGET (self),
                             GTK_EVENT_CONTROLLER (target));
}
