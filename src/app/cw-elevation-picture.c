/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-elevation-picture.h"

#include "cw-elevation-drawing.h"
#include "cw-look.h"
#include "cw-painter.h"

#define WIDTH 66
#define HEIGHT 42

struct _CwElevationPicture
{
  GtkWidget parent;
  CwWallTakeoff *takeoff;
  CwDisplayList *list;
};

G_DEFINE_FINAL_TYPE (CwElevationPicture, cw_elevation_picture,
                     GTK_TYPE_WIDGET)

void
cw_elevation_picture_show (CwElevationPicture *picture,
                           const CwWallTakeoff *takeoff)
{
  g_return_if_fail (CW_IS_ELEVATION_PICTURE (picture));
  if (picture->takeoff == takeoff)
    return;
  g_clear_pointer (&picture->takeoff, cw_wall_takeoff_unref);
  g_clear_pointer (&picture->list, cw_display_list_unref);
  if (takeoff)
    {
      CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
      picture->takeoff = cw_wall_takeoff_ref (takeoff);
      picture->list = cw_elevation_drawing (
          takeoff, CW_LAYER_WALL | CW_LAYER_BANDS | CW_LAYER_OPENINGS,
          &style, 1);
    }
  gtk_widget_queue_draw (GTK_WIDGET (picture));
}

/* The whole drawing in the middle of the widget. */
static gboolean
fit (CwElevationPicture *picture, CwPaint *paint)
{
  double left, bottom, right, top;
  double width = gtk_widget_get_width (GTK_WIDGET (picture)) - 2;
  double height = gtk_widget_get_height (GTK_WIDGET (picture)) - 2;
  if (!picture->list
      || !cw_display_list_bounds (picture->list, &left, &bottom, &right, &top)
      || !(right > left) || !(top > bottom))
    return FALSE;
  double scale = MIN (width / (right - left), height / (top - bottom));
  *paint = (CwPaint) {
    .scale = scale,
    .x = 1 + (width - scale * (left + right)) / 2,
    .y = 1 + (height + scale * (bottom + top)) / 2,
    .palette = cw_look_is_dark () ? CW_PALETTE_DARK : CW_PALETTE_LIGHT,
    .text_scale = 1,
  };
  return TRUE;
}

static void
cw_elevation_picture_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  CwElevationPicture *picture = CW_ELEVATION_PICTURE (widget);
  CwPaint paint;
  if (!fit (picture, &paint))
    return;
  graphene_rect_t bounds = GRAPHENE_RECT_INIT (
      0, 0, (float) gtk_widget_get_width (widget),
      (float) gtk_widget_get_height (widget));
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  cw_paint (cr, picture->list, &paint);
  cairo_destroy (cr);
}

static void
cw_elevation_picture_finalize (GObject *object)
{
  CwElevationPicture *picture = CW_ELEVATION_PICTURE (object);
  g_clear_pointer (&picture->takeoff, cw_wall_takeoff_unref);
  g_clear_pointer (&picture->list, cw_display_list_unref);
  G_OBJECT_CLASS (cw_elevation_picture_parent_class)->finalize (object);
}

static void
cw_elevation_picture_class_init (CwElevationPictureClass *class)
{
  G_OBJECT_CLASS (class)->finalize = cw_elevation_picture_finalize;
  GTK_WIDGET_CLASS (class)->snapshot = cw_elevation_picture_snapshot;
  /* The row beside it says all in words. */
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class),
                                        GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
cw_elevation_picture_init (CwElevationPicture *picture)
{
  gtk_widget_set_size_request (GTK_WIDGET (picture), WIDTH, HEIGHT);
  gtk_widget_set_overflow (GTK_WIDGET (picture), GTK_OVERFLOW_HIDDEN);
}

GtkWidget *
cw_elevation_picture_new (void)
{
  return g_object_new (CW_TYPE_ELEVATION_PICTURE, NULL);
}
