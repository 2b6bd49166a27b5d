/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-hover-label.h"

#include "cw-label-place.h"

/* A pointer on its way elsewhere is not told everything it passes. */
#define RESTS_MS 350

struct _CwHoverLabel
{
  GtkWidget parent;
  CwBoard *board;         /* borrowed */
  GtkWidget *label;
  char *words;            /* NULL: nothing is shown */
  guint rest;
};

G_DEFINE_FINAL_TYPE (CwHoverLabel, cw_hover_label, GTK_TYPE_WIDGET)

const char *
cw_hover_label_words (CwHoverLabel *self)
{
  g_return_val_if_fail (CW_IS_HOVER_LABEL (self), NULL);
  return self->words;
}

static void
hide (CwHoverLabel *self)
{
  g_clear_handle_id (&self->rest, g_source_remove);
  g_clear_pointer (&self->words, g_free);
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

static void
place (CwHoverLabel *self)
{
  GtkWidget *board = GTK_WIDGET (self->board);
  graphene_size_t size
      = GRAPHENE_SIZE_INIT ((float) gtk_widget_get_width (board),
                            (float) gtk_widget_get_height (board));
  double x, y;
  CwPoint at;
  int wide, tall;
  gtk_widget_set_margin_start (GTK_WIDGET (self), 0);
  gtk_widget_set_margin_top (GTK_WIDGET (self), 0);
  cw_board_get_pointer (self->board, &at);
  cw_board_to_widget (self->board, at, &x, &y);
  gtk_widget_measure (GTK_WIDGET (self), GTK_ORIENTATION_HORIZONTAL, -1, NULL,
                      &wide, NULL, NULL);
  gtk_widget_measure (GTK_WIDGET (self), GTK_ORIENTATION_VERTICAL, -1, NULL,
                      &tall, NULL, NULL);
  graphene_point_t pointer = GRAPHENE_POINT_INIT ((float) x, (float) y);
  graphene_point_t to = cw_label_place (&pointer, NULL, (float) wide,
                                        (float) tall, &size);
  gtk_widget_set_margin_start (GTK_WIDGET (self), (int) to.x);
  gtk_widget_set_margin_top (GTK_WIDGET (self), (int) to.y);
}

static gboolean
rested (gpointer data)
{
  CwHoverLabel *self = data;
  self->rest = 0;
  self->words = cw_board_words_at_pointer (self->board);
  if (!self->words)
    return G_SOURCE_REMOVE;
  gtk_label_set_text (GTK_LABEL (self->label), self->words);
  gtk_widget_set_visible (GTK_WIDGET (self), TRUE);
  place (self);
  return G_SOURCE_REMOVE;
}

/* Still over the same: it follows. */
static void
pointer_moved (CwHoverLabel *self)
{
  g_autofree char *words
      = self->words ? cw_board_words_at_pointer (self->board) : NULL;
  if (words && g_str_equal (words, self->words))
    {
      place (self);
      return;
    }
  hide (self);
  self->rest = g_timeout_add (RESTS_MS, rested, self);
}

static void
cw_hover_label_dispose (GObject *object)
{
  CwHoverLabel *self = CW_HOVER_LABEL (object);
  g_clear_handle_id (&self->rest, g_source_remove);
  g_clear_pointer (&self->label, gtk_widget_unparent);
  g_clear_pointer (&self->words, g_free);
  G_OBJECT_CLASS (cw_hover_label_parent_class)->dispose (object);
}

static void
cw_hover_label_class_init (CwHoverLabelClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_hover_label_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class),
                                        GTK_ACCESSIBLE_ROLE_TOOLTIP);
}

static void
cw_hover_label_init (CwHoverLabel *self)
{
  self->label = gtk_label_new (NULL);
  gtk_widget_add_css_class (self->label, "cw-figure");
  gtk_widget_set_parent (self->label, GTK_WIDGET (self));
  gtk_widget_add_css_class (GTK_WIDGET (self), "cw-hover-label");
  gtk_widget_set_halign (GTK_WIDGET (self), GTK_ALIGN_START);
  gtk_widget_set_valign (GTK_WIDGET (self), GTK_ALIGN_START);
  gtk_widget_set_can_target (GTK_WIDGET (self), FALSE);
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

GtkWidget *
cw_hover_label_new (CwBoard *board)
{
  CwHoverLabel *self = g_object_new (CW_TYPE_HOVER_LABEL, NULL);
  self->board = board;
  g_signal_connect_object (board, "pointer-moved",
                           G_CALLBACK (pointer_moved), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (board, "hint-changed", G_CALLBACK (hide), self,
                           G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}
