/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-page-chooser.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-thread.h"

#define PICTURE_SIZE 180
/* More pages than a set of drawings has are chosen by number elsewhere. */
#define PICTURES_MOST 400

struct _CwPageChooser
{
  GtkWidget parent;
  CwSheetSource *source;
  GtkWidget *flow;            /* GtkFlowBox */
  GCancellable *ending;
};

G_DEFINE_FINAL_TYPE (CwPageChooser, cw_page_chooser, GTK_TYPE_WIDGET)

guint
cw_page_chooser_page (CwPageChooser *chooser)
{
  g_return_val_if_fail (CW_IS_PAGE_CHOOSER (chooser), 1);
  g_autoptr (GList) chosen
      = gtk_flow_box_get_selected_children (GTK_FLOW_BOX (chooser->flow));
  return chosen ? (guint) gtk_flow_box_child_get_index (chosen->data) + 1 : 1;
}

static void draw_next (CwPageChooser *chooser, guint page);

/* One page to be drawn. */
typedef struct
{
  CwSheetSource *source;
  guint page;
} Drawing;

static void
drawing_free (Drawing *drawing)
{
  g_object_unref (drawing->source);
  g_free (drawing);
}

static void
draw_in_thread (GTask *task, gpointer source, gpointer data,
                GCancellable *cancellable)
{
  const Drawing *drawing = data;
  double width, height;
  cw_sheet_source_size (drawing->source, drawing->page, 0, &width, &height);
  double scale = width > 0 && height > 0
                     ? PICTURE_SIZE / MAX (width, height)
                     : 0;
  cairo_surface_t *surface
      = scale > 0 ? cw_sheet_source_render (
                        drawing->source, drawing->page, 0, scale, 0, 0,
                        MAX (1, (int) (width * scale)),
                        MAX (1, (int) (height * scale)), NULL)
                  : NULL;
  g_task_return_pointer (task, surface,
                         (GDestroyNotify) cairo_surface_destroy);
}

static GdkTexture *
texture_of (cairo_surface_t *surface)
{
  int width = cairo_image_surface_get_width (surface);
  int height = cairo_image_surface_get_height (surface);
  g_autoptr (GdkPixbuf) pixbuf
      = gdk_pixbuf_get_from_surface (surface, 0, 0, width, height);
  return gdk_texture_new_for_pixbuf (pixbuf);
}

static void
drawn (GObject *object, GAsyncResult *result, gpointer data)
{
  CwPageChooser *chooser = CW_PAGE_CHOOSER (object);
  const Drawing *drawing = g_task_get_task_data (G_TASK (result));
  cairo_surface_t *surface
      = g_task_propagate_pointer (G_TASK (result), NULL);
  if (surface && chooser->flow)
    {
      GtkFlowBoxChild *child = gtk_flow_box_get_child_at_index (
          GTK_FLOW_BOX (chooser->flow), (int) drawing->page - 1);
      GtkWidget *picture = g_object_get_data (G_OBJECT (child), "picture");
      g_autoptr (GdkTexture) texture = texture_of (surface);
      gtk_picture_set_paintable (GTK_PICTURE (picture),
                                 GDK_PAINTABLE (texture));
    }
  g_clear_pointer (&surface, cairo_surface_destroy);
  if (!g_cancellable_is_cancelled (chooser->ending))
    draw_next (chooser, drawing->page + 1);
}

static void
draw_next (CwPageChooser *chooser, guint page)
{
  if (page > MIN (cw_sheet_source_n_pages (chooser->source), PICTURES_MOST))
    return;
  Drawing *drawing = g_new (Drawing, 1);
  *drawing = (Drawing) { g_object_ref (chooser->source), page };
  cw_thread_run (chooser, draw_in_thread, drawing,
                 (GDestroyNotify) drawing_free, chooser->ending, drawn, NULL);
}

static void
add_page (CwPageChooser *chooser, guint page)
{
  g_autofree char *name = g_strdup_printf (_("Page %u"), page);
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 3);
  GtkWidget *picture = gtk_picture_new ();
  gtk_widget_set_size_request (picture, PICTURE_SIZE, PICTURE_SIZE * 3 / 4);
  gtk_widget_add_css_class (picture, "cw-sheet-of-paper");
  gtk_picture_set_alternative_text (GTK_PICTURE (picture), name);
  gtk_box_append (GTK_BOX (box), picture);
  gtk_box_append (GTK_BOX (box), gtk_label_new (name));
  GtkWidget *child = gtk_flow_box_child_new ();
  gtk_flow_box_child_set_child (GTK_FLOW_BOX_CHILD (child), box);
  cw_widget_set_name (child, name);
  g_object_set_data (G_OBJECT (child), "picture", picture);
  gtk_flow_box_append (GTK_FLOW_BOX (chooser->flow), child);
}

static void
cw_page_chooser_dispose (GObject *object)
{
  CwPageChooser *chooser = CW_PAGE_CHOOSER (object);
  GtkWidget *child;
  g_cancellable_cancel (chooser->ending);
  chooser->flow = NULL;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (chooser))))
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (cw_page_chooser_parent_class)->dispose (object);
}

static void
cw_page_chooser_finalize (GObject *object)
{
  CwPageChooser *chooser = CW_PAGE_CHOOSER (object);
  g_clear_object (&chooser->source);
  g_clear_object (&chooser->ending);
  G_OBJECT_CLASS (cw_page_chooser_parent_class)->finalize (object);
}

static void
cw_page_chooser_class_init (CwPageChooserClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_page_chooser_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_page_chooser_finalize;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BIN_LAYOUT);
}

static void
cw_page_chooser_init (CwPageChooser *chooser)
{
  chooser->ending = g_cancellable_new ();
  chooser->flow = gtk_flow_box_new ();
  gtk_flow_box_set_selection_mode (GTK_FLOW_BOX (chooser->flow),
                                   GTK_SELECTION_BROWSE);
  gtk_flow_box_set_homogeneous (GTK_FLOW_BOX (chooser->flow), TRUE);
  cw_widget_set_name (chooser->flow, _("Pages"));
  GtkWidget *scroller = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller),
                                  GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (
      GTK_SCROLLED_WINDOW (scroller), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroller),
                                              420);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller),
                                 chooser->flow);
  gtk_widget_set_parent (scroller, GTK_WIDGET (chooser));
}

GtkWidget *
cw_page_chooser_new (CwSheetSource *source)
{
  CwPageChooser *chooser = g_object_new (CW_TYPE_PAGE_CHOOSER, NULL);
  chooser->source = g_object_ref (source);
  guint n = MIN (cw_sheet_source_n_pages (source), PICTURES_MOST);
  for (guint page = 1; page <= n; page++)
    add_page (chooser, page);
  GtkFlowBox *flow = GTK_FLOW_BOX (chooser->flow);
  gtk_flow_box_select_child (flow, gtk_flow_box_get_child_at_index (flow, 0));
  draw_next (chooser, 1);
  return GTK_WIDGET (chooser);
}
