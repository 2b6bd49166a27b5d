/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-picture.h"

#include <math.h>

/* Of the window, on each side. */
#define MARGIN_SHARE 0.25
/* Room for texts and line widths, which the list's bounds leave out. */
#define TEXT_ROOM 120.0
/* How far a node may be scaled in the middle of a zoom. */
#define MOST_SCALED 2.5

guint cw_picture_nodes_made;

void
cw_picture_forget_node (CwPicture *picture)
{
  g_clear_pointer (&picture->node, gsk_render_node_unref);
}

void
cw_picture_set_list (CwPicture *picture, CwDisplayList *list)
{
  cw_picture_forget_node (picture);
  g_clear_pointer (&picture->list, cw_display_list_unref);
  picture->list = list;
}

void
cw_picture_clear (CwPicture *picture)
{
  cw_picture_set_list (picture, NULL);
}

/* Where everything in the list is, in pixels of @view. */
static graphene_rect_t
drawn_bounds (const CwDisplayList *list, const CwView *view)
{
  double left, bottom, right, top, x0, y0, x1, y1;

  if (!cw_display_list_bounds (list, &left, &bottom, &right, &top))
    return *graphene_rect_zero ();
  cw_view_to_widget (view, left * 1e6, top * 1e6, &x0, &y0);
  cw_view_to_widget (view, right * 1e6, bottom * 1e6, &x1, &y1);
  x0 = CLAMP (x0 - TEXT_ROOM, -1e6, 1e6);
  y0 = CLAMP (y0 - TEXT_ROOM, -1e6, 1e6);
  x1 = CLAMP (x1 + TEXT_ROOM, -1e6, 1e6);
  y1 = CLAMP (y1 + TEXT_ROOM, -1e6, 1e6);
  return GRAPHENE_RECT_INIT ((float) floor (x0), (float) floor (y0),
                             (float) ceil (x1 - x0), (float) ceil (y1 - y0));
}

static graphene_rect_t
window_with_margin (const CwLookout *lookout)
{
  float across = (float) ceil (MARGIN_SHARE * lookout->width);
  float along = (float) ceil (MARGIN_SHARE * lookout->height);

  return GRAPHENE_RECT_INIT (-across, -along,
                             (float) lookout->width + 2 * across,
                             (float) lookout->height + 2 * along);
}

static void
paint (CwPicture *picture, const CwLookout *lookout)
{
  cairo_t *cr = gsk_cairo_node_get_draw_context (picture->node);
  CwPaint paint = {
    .scale = 1e6 / picture->view.nm_per_pixel,
    .x = picture->view.x,
    .y = picture->view.y,
    .palette = lookout->palette,
    .text_scale = lookout->text_scale,
    .patches = lookout->over_sheet,
  };

  cw_paint (cr, picture->list, &paint);
  cairo_destroy (cr);
}

static void
make_node (CwPicture *picture, const CwLookout *lookout)
{
  graphene_rect_t drawn = drawn_bounds (picture->list, &lookout->view);
  graphene_rect_t room = window_with_margin (lookout);

  cw_picture_forget_node (picture);
  picture->view = lookout->view;
  picture->is_whole = graphene_rect_contains_rect (&room, &drawn);
  if (!graphene_rect_intersection (&drawn, &room, &picture->bounds))
    {
      picture->bounds = room;
      picture->node = gsk_container_node_new (NULL, 0);
      return;
    }
  picture->node = gsk_cairo_node_new (&picture->bounds);
  cw_picture_nodes_made++;
  paint (picture, lookout);
}

static double
scale_of (const CwPicture *picture, const CwLookout *lookout)
{
  return picture->view.nm_per_pixel / lookout->view.nm_per_pixel;
}

/* Whether the node, moved and scaled, shows all that there is to see. */
static gboolean
covers (const CwPicture *picture, const CwLookout *lookout)
{
  double scale = scale_of (picture, lookout);
  double x = lookout->view.x - picture->view.x * scale;
  double y = lookout->view.y - picture->view.y * scale;
  graphene_rect_t room = window_with_margin (lookout);
  double slack_x = MARGIN_SHARE * lookout->width;
  double slack_y = MARGIN_SHARE * lookout->height;

  if (picture->is_whole)
    return TRUE;
  return x + room.origin.x * scale <= room.origin.x + slack_x
         && y + room.origin.y * scale <= room.origin.y + slack_y
         && x + (room.origin.x + room.size.width) * scale
                >= room.origin.x + room.size.width - slack_x
         && y + (room.origin.y + room.size.height) * scale
                >= room.origin.y + room.size.height - slack_y;
}

static gboolean
is_usable (const CwPicture *picture, const CwLookout *lookout)
{
  double scale = scale_of (picture, lookout);

  if (picture->node == NULL)
    return FALSE;
  if (fabs (scale - 1) > 1e-9
      && (!lookout->moving || scale > MOST_SCALED || scale < 1 / MOST_SCALED))
    return FALSE;
  return covers (picture, lookout);
}

void
cw_picture_snapshot (CwPicture *picture, GtkSnapshot *snapshot,
                     const CwLookout *lookout)
{
  double scale;

  if (picture->list == NULL || cw_display_list_length (picture->list) == 0)
    return;
  if (!is_usable (picture, lookout))
    make_node (picture, lookout);
  scale = scale_of (picture, lookout);
  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (
      snapshot,
      &GRAPHENE_POINT_INIT (
          (float) (lookout->view.x - picture->view.x * scale),
          (float) (lookout->view.y - picture->view.y * scale)));
  if (fabs (scale - 1) > 1e-9)
    gtk_snapshot_scale (snapshot, (float) scale, (float) scale);
  gtk_snapshot_append_node (snapshot, picture->node);
  gtk_snapshot_restore (snapshot);
}
