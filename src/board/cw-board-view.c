/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How the view follows the project: with a sheet, the sheet stays where it is
 * in the window whatever happens to the wall's origin or to the scale.
 */
#include "cw-board-private.h"
#include "cw-hit.h"

#include <math.h>

/* Room for dimension chains about what is fitted. */
#define FIT_MARGIN 96
#define STILL_AFTER 150

static double
width_of (CwBoard *self)
{
  return gtk_widget_get_width (GTK_WIDGET (self));
}

static double
height_of (CwBoard *self)
{
  return gtk_widget_get_height (GTK_WIDGET (self));
}

void
cw_board_view_changed (CwBoard *self)
{
  cw_board_spoil (self, 1 << CW_BOARD_OVERLAY);
  g_signal_emit (self, cw_board_signals[CW_BOARD_VIEW_CHANGED], 0);
  cw_board_tell_pointer (self);
}

static gboolean
stand_still (gpointer data)
{
  CwBoard *self = data;

  self->still_id = 0;
  gtk_widget_queue_draw (GTK_WIDGET (self));
  return G_SOURCE_REMOVE;
}

void
cw_board_zoom_at (CwBoard *self, double factor, double x, double y)
{
  if (self->wants_fit || !(factor > 0))
    return;
  cw_view_zoom (&self->view, factor, x, y);
  g_clear_handle_id (&self->still_id, g_source_remove);
  self->still_id = g_timeout_add (STILL_AFTER, stand_still, self);
  cw_board_view_changed (self);
}

void
cw_board_pan_by (CwBoard *self, double dx, double dy)
{
  if (self->wants_fit)
    return;
  cw_view_pan (&self->view, dx, dy);
  cw_board_view_changed (self);
}

gboolean
cw_board_page_size (CwBoard *self, double *width, double *height)
{
  const CwSheet *sheet
      = self->sheet_id && self->document
            ? cw_project_sheet (cw_document_project (self->document),
                                self->sheet_id)
            : NULL;
  CwSheetSource *source
      = sheet ? g_hash_table_lookup (self->sources, sheet->id) : NULL;

  if (source == NULL || sheet->page < 1
      || sheet->page > cw_sheet_source_n_pages (source))
    return FALSE;
  cw_sheet_source_size (source, (guint) sheet->page, (guint) sheet->turn,
                        width, height);
  return *width > 0 && *height > 0;
}

static gboolean
page_box (CwBoard *self, CwBox *box)
{
  double width, height, x0, y0, x1, y1;

  if (!self->shows_sheet || self->as_printed
      || !cw_board_page_size (self, &width, &height))
    return FALSE;
  cw_placing_to_wall (&self->placing, 0, height, &x0, &y0);
  cw_placing_to_wall (&self->placing, width, 0, &x1, &y1);
  *box = (CwBox) { llround (x0), llround (y0), llround (x1), llround (y1) };
  return TRUE;
}

static gboolean
wall_box (CwBoard *self, CwBox *box)
{
  if (self->wall == NULL || self->wall->outline == NULL)
    return FALSE;
  *box = cw_region_box (self->wall->outline);
  return TRUE;
}

static gboolean
is_same_view (const CwView *a, const CwView *b)
{
  return fabs (a->x - b->x) < 0.5 && fabs (a->y - b->y) < 0.5
         && fabs (a->nm_per_pixel / b->nm_per_pixel - 1) < 1e-6;
}

/* The wall; with the wall in view already, or none yet, the whole sheet. */
static void
fit (CwBoard *self)
{
  CwBox box = { CW_MM (-1000), CW_MM (-1000), CW_MM (11000), CW_MM (6000) };
  CwView view = self->view;
  gboolean has_wall = wall_box (self, &box);

  if (!has_wall && page_box (self, &box))
    {
      cw_view_fit (&self->view, &box, width_of (self), height_of (self), 12);
      return;
    }
  cw_view_fit (&view, &box, width_of (self), height_of (self), FIT_MARGIN);
  if (is_same_view (&view, &self->view) && page_box (self, &box))
    cw_view_fit (&view, &box, width_of (self), height_of (self), 12);
  self->view = view;
}

void
cw_board_zoom_fit (CwBoard *self)
{
  g_return_if_fail (CW_IS_BOARD (self));

  if (width_of (self) < 1)
    {
      self->wants_fit = TRUE;
      return;
    }
  self->wants_fit = FALSE;
  fit (self);
  cw_board_view_changed (self);
}

/* Near enough to be seen, with room about it; as it is when it is in view and
 * not too small. */
void
cw_board_show_box (CwBoard *self, const CwBox *box)
{
  const CwLength room
      = MAX (MAX (cw_box_width (box), cw_box_height (box)), CW_MM (600)) / 2;
  const CwBox wide = { box->left - room, box->bottom - room,
                       box->right + room, box->top + room };
  const CwBox shown
      = cw_view_shown (&self->view, width_of (self), height_of (self));

  if (self->wants_fit || width_of (self) < 1
      || (box->left >= shown.left && box->right <= shown.right
          && box->bottom >= shown.bottom && box->top <= shown.top))
    return;
  cw_view_fit (&self->view, &wide, width_of (self), height_of (self), 48);
  cw_board_view_changed (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
cw_board_zoom_by (CwBoard *self, double factor)
{
  g_return_if_fail (CW_IS_BOARD (self));

  cw_board_zoom_at (self, factor, width_of (self) / 2, height_of (self) / 2);
}

double
cw_board_get_mm_per_pixel (CwBoard *self)
{
  g_return_val_if_fail (CW_IS_BOARD (self), 1);

  return self->view.nm_per_pixel / 1e6;
}

void
cw_board_to_widget (CwBoard *self, CwPoint at, double *x, double *y)
{
  g_return_if_fail (CW_IS_BOARD (self));

  cw_view_to_widget (&self->view, (double) at.x, (double) at.y, x, y);
}

CwPoint
cw_board_to_wall (CwBoard *self, double x, double y)
{
  g_return_val_if_fail (CW_IS_BOARD (self), cw_point (0, 0));

  return cw_view_point (&self->view, x, y);
}

/* The view in which the page lies as it did, after its placing changed. */
static void
keep_page_still (CwBoard *self, const CwPlacing *former)
{
  CwView view = self->view;
  double page_x, page_y, x_nm, y_nm, x, y;

  cw_view_to_wall (&view, width_of (self) / 2, height_of (self) / 2, &x_nm,
                   &y_nm);
  cw_placing_to_page (former, x_nm, y_nm, &page_x, &page_y);
  view.nm_per_pixel *= self->placing.across / former->across;
  cw_placing_to_wall (&self->placing, page_x, page_y, &x_nm, &y_nm);
  cw_view_to_widget (&view, x_nm, y_nm, &x, &y);
  view.x += width_of (self) / 2 - x;
  view.y += height_of (self) / 2 - y;
  self->view = view;
}

static gboolean
is_wall_in_view (CwBoard *self)
{
  CwBox shown = cw_view_shown (&self->view, width_of (self),
                               height_of (self));
  CwBox box;

  return !wall_box (self, &box)
         || (box.left + cw_box_width (&box) / 2 > shown.left
             && box.left + cw_box_width (&box) / 2 < shown.right
             && box.bottom + cw_box_height (&box) / 2 > shown.bottom
             && box.bottom + cw_box_height (&box) / 2 < shown.top);
}

static gboolean
is_same_placing (const CwPlacing *a, const CwPlacing *b)
{
  return fabs (a->at_x - b->at_x) < 1e-9 && fabs (a->at_y - b->at_y) < 1e-9
         && fabs (a->across / b->across - 1) < 1e-12
         && fabs (a->along / b->along - 1) < 1e-12;
}

static CwPlacing
present_placing (CwBoard *self)
{
  static const CwPlacing none
      = { .across = CW_PLACING_ASSUMED_RATIO * 25.4 / 72,
          .along = CW_PLACING_ASSUMED_RATIO * 25.4 / 72,
          .assumed = TRUE };

  return self->document
             ? cw_placing_of (cw_document_project (self->document),
                              cw_board_elevation (self))
             : none;
}

/* The window stays over the same place of the paper; TRUE when it could. */
static gboolean
hold_view (CwBoard *self, const CwPlacing *former, gboolean same_sheet,
           gboolean same_elevation, CwPoint shift)
{
  if (same_sheet && self->sheet_id)
    {
      if (!is_same_placing (former, &self->placing))
        keep_page_still (self, former);
      return same_elevation || is_wall_in_view (self);
    }
  if (shift.x != 0 || shift.y != 0)
    {
      self->view.x += (double) shift.x / self->view.nm_per_pixel;
      self->view.y -= (double) shift.y / self->view.nm_per_pixel;
      return TRUE;
    }
  return same_elevation && same_sheet;
}

void
cw_board_follow_document (CwBoard *self, CwPoint shift)
{
  CwPlacing former = self->placing;
  const CwElevation *elevation = cw_board_elevation (self);
  const char *id = elevation ? elevation->id : NULL;
  gboolean same_elevation = g_strcmp0 (id, self->elevation_id) == 0;
  const char *sheet_id;
  gboolean same_sheet;

  self->placing = present_placing (self);
  sheet_id = self->placing.sheet ? self->placing.sheet->id : NULL;
  same_sheet = g_strcmp0 (sheet_id, self->sheet_id) == 0;
  if (!same_elevation)
    {
      g_free (self->elevation_id);
      self->elevation_id = g_strdup (id);
    }
  if (!same_sheet)
    {
      g_free (self->sheet_id);
      self->sheet_id = g_strdup (sheet_id);
    }
  if (self->wants_fit)
    return;
  if (!hold_view (self, &former, same_sheet, same_elevation, shift))
    cw_board_zoom_fit (self);
  else if (!is_same_placing (&former, &self->placing) || shift.x || shift.y)
    cw_board_view_changed (self);
}

gboolean
cw_board_is_dragging (CwBoard *self)
{
  g_return_val_if_fail (CW_IS_BOARD (self), FALSE);

  return self->pressed;
}

static graphene_rect_t
area_of (CwBoard *self, const CwBox *box)
{
  double left, top, right, bottom;

  cw_board_to_widget (self, cw_point (box->left, box->top), &left, &top);
  cw_board_to_widget (self, cw_point (box->right, box->bottom), &right,
                      &bottom);
  return GRAPHENE_RECT_INIT ((float) left, (float) top,
                             (float) (right - left), (float) (bottom - top));
}

gboolean
cw_board_get_selected_area (CwBoard *self, graphene_rect_t *area)
{
  const char *const *ids;
  gboolean found = FALSE;

  g_return_val_if_fail (CW_IS_BOARD (self), FALSE);

  if (self->wall == NULL)
    return FALSE;
  for (ids = cw_document_selection (self->document); *ids; ids++)
    {
      graphene_rect_t one;
      CwBox box;

      if (g_strcmp0 (*ids, self->wall->elevation->id) == 0
          || !cw_hit_bounds (self->wall, *ids, &box))
        continue;
      one = area_of (self, &box);
      if (found)
        graphene_rect_union (area, &one, area);
      else
        *area = one;
      found = TRUE;
    }
  return found;
}
