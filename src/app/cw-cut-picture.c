/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-picture.h"

#include "cw-cut-drawing.h"
#include "cw-look.h"
#include "cw-painter.h"
#include "cw-text-scale.h"

/* Of the width, what the figures leave at either side of the panel, and the
 * most of it that a panel's height takes. */
#define PANEL_SHARE 0.76
#define MOST_HEIGHT_SHARE 0.5

struct _CwCutPicture
{
  GtkWidget parent;
  CwCutItem *item;
  CwTextStyle style;
  int width;
  double text_scale;          /* that the list was made for */
  double scale;
  CwDisplayList *list;        /* (nullable): made when it is first needed */
  CwCutRoom room;
};

G_DEFINE_FINAL_TYPE (CwCutPicture, cw_cut_picture, GTK_TYPE_WIDGET)

static void
forget (CwCutPicture *picture)
{
  g_clear_pointer (&picture->list, cw_display_list_unref);
}

static void
draw_so_wide (CwCutPicture *picture, double width)
{
  const CwCutListPanel *panel = cw_cut_item_panel (picture->item);
  const CwCutRules *rules = &panel->plan->cut->rules;

  picture->scale
      = MIN (width / ((double) rules->length / CW_NM_PER_MM),
             MOST_HEIGHT_SHARE * picture->width * picture->text_scale
                 / ((double) rules->height / CW_NM_PER_MM));
  picture->list = cw_cut_drawing (
      panel->plan, panel->panel, panel->n == 1, &picture->style,
      picture->text_scale / picture->scale, &picture->room);
}

/* The panel becomes smaller where its figures want more room. */
static void
need_list (CwCutPicture *picture)
{
  const double text_scale
      = cw_text_scale_of (GTK_WIDGET (picture));
  const double width = picture->width * text_scale;
  double beyond;

  if (picture->list && ABS (text_scale - picture->text_scale) < 1e-6)
    return;
  forget (picture);
  picture->text_scale = text_scale;
  draw_so_wide (picture, PANEL_SHARE * width);
  beyond = (picture->room.right - picture->room.left) * picture->scale
           - width + 2;
  if (beyond <= 0)
    return;
  forget (picture);
  draw_so_wide (picture, PANEL_SHARE * width - beyond);
}

void
cw_cut_picture_show (CwCutPicture *picture, CwCutItem *item,
                     const CwTextStyle *style)
{
  g_return_if_fail (CW_IS_CUT_PICTURE (picture));
  g_return_if_fail (!item || style);
  if (item && picture->item == item)
    return;
  forget (picture);
  g_set_object (&picture->item, item);
  if (style)
    picture->style = *style;
  gtk_widget_queue_resize (GTK_WIDGET (picture));
}

static void
cw_cut_picture_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  CwCutPicture *picture = CW_CUT_PICTURE (widget);
  const graphene_rect_t bounds = GRAPHENE_RECT_INIT (
      0, 0, (float) gtk_widget_get_width (widget),
      (float) gtk_widget_get_height (widget));
  if (!picture->item)
    return;
  need_list (picture);
  const CwPaint paint
      = { .scale = picture->scale,
          .x = 1 - picture->room.left * picture->scale,
          .y = 1 + picture->room.top * picture->scale,
          .palette = cw_look_is_dark () ? CW_PALETTE_DARK : CW_PALETTE_LIGHT,
          .text_scale = picture->text_scale };
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  cw_paint (cr, picture->list, &paint);
  cairo_destroy (cr);
}

static void
cw_cut_picture_measure (GtkWidget *widget, GtkOrientation orientation,
                        int for_size, int *minimum, int *natural,
                        int *minimum_baseline, int *natural_baseline)
{
  CwCutPicture *picture = CW_CUT_PICTURE (widget);
  double size = 0;
  if (picture->item)
    {
      need_list (picture);
      size = orientation == GTK_ORIENTATION_HORIZONTAL
                 ? picture->width * picture->text_scale
                 : (picture->room.top - picture->room.bottom)
                           * picture->scale
                       + 2;
    }
  *minimum = *natural = (int) size + 1;
}

static void
cw_cut_picture_finalize (GObject *object)
{
  CwCutPicture *picture = CW_CUT_PICTURE (object);
  forget (picture);
  g_clear_object (&picture->item);
  G_OBJECT_CLASS (cw_cut_picture_parent_class)->finalize (object);
}

static void
cw_cut_picture_class_init (CwCutPictureClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  G_OBJECT_CLASS (class)->finalize = cw_cut_picture_finalize;
  widget_class->snapshot = cw_cut_picture_snapshot;
  widget_class->measure = cw_cut_picture_measure;
  /* The words beside it say all of it. */
  gtk_widget_class_set_accessible_role (widget_class,
                                        GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
cw_cut_picture_init (CwCutPicture *picture)
{
  gtk_widget_set_overflow (GTK_WIDGET (picture), GTK_OVERFLOW_HIDDEN);
  gtk_widget_set_halign (GTK_WIDGET (picture), GTK_ALIGN_START);
}

GtkWidget *
cw_cut_picture_new (int width)
{
  CwCutPicture *picture = g_object_new (CW_TYPE_CUT_PICTURE, NULL);
  picture->width = width;
  return GTK_WIDGET (picture);
}
