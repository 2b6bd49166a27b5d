/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-ruler.h"

#include "cw-length.h"
#include "cw-ruler-steps.h"

#define LONG_MARK 9
#define SHORT_MARK 3
#define GAP 3

struct _CwRuler
{
  GtkWidget parent;
  GtkOrientation orientation;
  CwBoard *board;             /* borrowed */
  CwTextStyle style;
  PangoLayout *layout;
  CwPoint pointer;
  gboolean has_pointer;
};

G_DEFINE_FINAL_TYPE (CwRuler, cw_ruler, GTK_TYPE_WIDGET)

static gboolean
is_level (CwRuler *ruler)
{
  return ruler->orientation == GTK_ORIENTATION_HORIZONTAL;
}

/* Along the ruler, pixels from its start. */
static double
place_of (CwRuler *ruler, CwLength length)
{
  double x, y;
  cw_board_to_widget (ruler->board, cw_point (length, length), &x, &y);
  return is_level (ruler) ? x : y;
}

static CwLength
length_at (CwRuler *ruler, double place)
{
  CwPoint at = cw_board_to_wall (ruler->board, place, place);
  return is_level (ruler) ? at.x : at.y;
}

static int
text_size (CwRuler *ruler, const char *text, gboolean height)
{
  int width, tall;
  pango_layout_set_text (ruler->layout, text, -1);
  pango_layout_get_pixel_size (ruler->layout, &width, &tall);
  return height ? tall : width;
}

/* @across: how far the mark reaches in from the board's side. */
static void
draw_mark (CwRuler *ruler, GtkSnapshot *snapshot, const GdkRGBA *ink,
           double place, double across)
{
  float width = (float) gtk_widget_get_width (GTK_WIDGET (ruler));
  float height = (float) gtk_widget_get_height (GTK_WIDGET (ruler));
  float at = (float) (int) place;
  graphene_rect_t mark
      = is_level (ruler)
            ? GRAPHENE_RECT_INIT (at, height - (float) across, 1,
                                  (float) across)
            : GRAPHENE_RECT_INIT (width - (float) across, at, (float) across,
                                  1);
  gtk_snapshot_append_color (snapshot, ink, &mark);
}

static void
draw_number (CwRuler *ruler, GtkSnapshot *snapshot, const GdkRGBA *ink,
             double place, CwLength length)
{
  g_autofree char *text
      = cw_length_format_dimension (length, &ruler->style);
  pango_layout_set_text (ruler->layout, text, -1);
  gtk_snapshot_save (snapshot);
  if (is_level (ruler))
    gtk_snapshot_translate (snapshot,
                            &GRAPHENE_POINT_INIT ((float) place + GAP, 0));
  else
    {
      gtk_snapshot_translate (
          snapshot, &GRAPHENE_POINT_INIT (0, (float) place - GAP));
      gtk_snapshot_rotate (snapshot, -90);
    }
  gtk_snapshot_append_layout (snapshot, ruler->layout, ink);
  gtk_snapshot_restore (snapshot);
}

static CwLength
round_down (CwLength length, CwLength step)
{
  CwLength rest = length % step;
  return length - (rest < 0 ? rest + step : rest);
}

static void
draw_marks (CwRuler *ruler, GtkSnapshot *snapshot, const GdkRGBA *ink)
{
  int size = is_level (ruler) ? gtk_widget_get_width (GTK_WIDGET (ruler))
                              : gtk_widget_get_height (GTK_WIDGET (ruler));
  CwLength a = length_at (ruler, 0), b = length_at (ruler, size);
  CwLength low = MIN (a, b), high = MAX (a, b);
  double room = 2 * GAP + 1.4 * text_size (ruler, "-00000", FALSE);
  CwRulerSteps steps = cw_ruler_steps (
      ruler->style.units, cw_board_get_mm_per_pixel (ruler->board) * 1e6,
      room);
  for (CwLength at = round_down (low, steps.labelled); at <= high;
       at += steps.fine)
    {
      gboolean labelled = at % steps.labelled == 0;
      double place = place_of (ruler, at);
      draw_mark (ruler, snapshot, ink, place,
                 labelled ? LONG_MARK : SHORT_MARK);
      if (labelled)
        draw_number (ruler, snapshot, ink, place, at);
    }
}

static void
draw_pointer (CwRuler *ruler, GtkSnapshot *snapshot)
{
  GdkRGBA accent;
  if (!ruler->has_pointer
      || !gtk_style_context_lookup_color (
          gtk_widget_get_style_context (GTK_WIDGET (ruler)), "cw_accent",
          &accent))
    return;
  draw_mark (ruler, snapshot, &accent,
             place_of (ruler, is_level (ruler) ? ruler->pointer.x
                                               : ruler->pointer.y),
             100);
}

static void
cw_ruler_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  CwRuler *ruler = CW_RULER (widget);
  GdkRGBA ink;
  gtk_style_context_get_color (gtk_widget_get_style_context (widget), &ink);
  if (!ruler->layout)
    ruler->layout = gtk_widget_create_pango_layout (widget, NULL);
  draw_marks (ruler, snapshot, &ink);
  draw_pointer (ruler, snapshot);
}

static void
cw_ruler_measure (GtkWidget *widget, GtkOrientation orientation, int for_size,
                  int *minimum, int *natural, int *minimum_baseline,
                  int *natural_baseline)
{
  CwRuler *ruler = CW_RULER (widget);
  if (!ruler->layout)
    ruler->layout = gtk_widget_create_pango_layout (widget, NULL);
  *minimum = orientation == ruler->orientation
                 ? 1
                 : text_size (ruler, "0", TRUE) + LONG_MARK - GAP;
  *natural = *minimum;
}

static void
pointer_moved (CwRuler *ruler, gint64 x, gint64 y)
{
  ruler->pointer = cw_point (x, y);
  ruler->has_pointer = TRUE;
  gtk_widget_queue_draw (GTK_WIDGET (ruler));
}

static void
cw_ruler_css_changed (GtkWidget *widget, GtkCssStyleChange *change)
{
  GTK_WIDGET_CLASS (cw_ruler_parent_class)->css_changed (widget, change);
  g_clear_object (&CW_RULER (widget)->layout);
  gtk_widget_queue_resize (widget);
}

void
cw_ruler_set_style (CwRuler *ruler, const CwTextStyle *style)
{
  g_return_if_fail (CW_IS_RULER (ruler));
  ruler->style = *style;
  gtk_widget_queue_draw (GTK_WIDGET (ruler));
}

static void
cw_ruler_dispose (GObject *object)
{
  g_clear_object (&CW_RULER (object)->layout);
  G_OBJECT_CLASS (cw_ruler_parent_class)->dispose (object);
}

static void
cw_ruler_class_init (CwRulerClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  G_OBJECT_CLASS (class)->dispose = cw_ruler_dispose;
  widget_class->snapshot = cw_ruler_snapshot;
  widget_class->measure = cw_ruler_measure;
  widget_class->css_changed = cw_ruler_css_changed;
  gtk_widget_class_set_accessible_role (widget_class,
                                        GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
cw_ruler_init (CwRuler *ruler)
{
  ruler->style = cw_text_style_plain (CW_UNITS_METRIC);
  gtk_widget_add_css_class (GTK_WIDGET (ruler), "cw-ruler");
  gtk_widget_set_overflow (GTK_WIDGET (ruler), GTK_OVERFLOW_HIDDEN);
}

GtkWidget *
cw_ruler_new (GtkOrientation orientation, CwBoard *board)
{
  CwRuler *ruler = g_object_new (CW_TYPE_RULER, NULL);
  ruler->orientation = orientation;
  ruler->board = board;
  g_signal_connect_object (board, "pointer-moved", G_CALLBACK (pointer_moved),
                           ruler, G_CONNECT_SWAPPED);
  g_signal_connect_object (board, "view-changed",
                           G_CALLBACK (gtk_widget_queue_draw), ruler,
                           G_CONNECT_SWAPPED);
  return GTK_WIDGET (ruler);
}
