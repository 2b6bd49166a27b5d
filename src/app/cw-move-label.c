/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-move-label.h"

#include "cw-change-words.h"
#include "cw-label-place.h"
#include "cw-marginal.h"

/* To be read when the button is up. */
#define STAYS_MS 2500
/* Figures that come sooner need no sign that they are coming. */
#define PATIENCE_MS 200

struct _CwMoveLabel
{
  GtkWidget parent;
  CwBoard *board;         /* borrowed */
  CwJob *job;
  CwMarginal *marginal;
  GtkWidget *label;
  char *words;            /* NULL: nothing is shown */
  gboolean by_pointer;    /* placed while it dragged: there it stays */
  int width;              /* the widest of this move: no trembling */
  guint going, patience;
};

G_DEFINE_FINAL_TYPE (CwMoveLabel, cw_move_label, GTK_TYPE_WIDGET)

enum { PROP_0, PROP_WORDS, N_PROPS };
static GParamSpec *props[N_PROPS];

const char *
cw_move_label_words (CwMoveLabel *self)
{
  g_return_val_if_fail (CW_IS_MOVE_LABEL (self), NULL);
  return self->words;
}

static void
set_words (CwMoveLabel *self, char *words)
{
  gboolean same = g_strcmp0 (words, self->words) == 0;
  g_free (self->words);
  self->words = words;
  gtk_widget_set_visible (GTK_WIDGET (self), words != NULL);
  if (words && !same)
    gtk_label_set_text (GTK_LABEL (self->label), words);
  if (!same)
    g_object_notify_by_pspec (G_OBJECT (self), props[PROP_WORDS]);
}

static void
hide (CwMoveLabel *self)
{
  g_clear_handle_id (&self->going, g_source_remove);
  g_clear_handle_id (&self->patience, g_source_remove);
  gtk_widget_remove_css_class (self->label, "cw-stale");
  self->width = 0;
  self->by_pointer = FALSE;
  set_words (self, NULL);
}

static gboolean
go (gpointer data)
{
  CwMoveLabel *self = data;
  if (cw_board_is_dragging (self->board))
    return G_SOURCE_CONTINUE;
  self->going = 0;
  hide (self);
  return G_SOURCE_REMOVE;
}

static void
stay (CwMoveLabel *self)
{
  g_clear_handle_id (&self->going, g_source_remove);
  self->going = g_timeout_add (STAYS_MS, go, self);
}

/* The pointer where it drags; else below what is moved by keys. */
static graphene_point_t
point_at (CwMoveLabel *self, const graphene_rect_t *moved)
{
  double x, y;
  CwPoint at;
  gboolean has_pointer = cw_board_get_pointer (self->board, &at);
  if (moved && !(has_pointer && cw_board_is_dragging (self->board)))
    return GRAPHENE_POINT_INIT (
        moved->origin.x, moved->origin.y + moved->size.height);
  cw_board_to_widget (self->board, at, &x, &y);
  return GRAPHENE_POINT_INIT ((float) x, (float) y);
}

static void
place (CwMoveLabel *self)
{
  GtkWidget *board = GTK_WIDGET (self->board);
  if (self->by_pointer && !cw_board_is_dragging (self->board))
    return;
  self->by_pointer = cw_board_is_dragging (self->board);
  graphene_size_t size
      = GRAPHENE_SIZE_INIT ((float) gtk_widget_get_width (board),
                            (float) gtk_widget_get_height (board));
  graphene_rect_t moved;
  gboolean has_moved = cw_board_get_selected_area (self->board, &moved);
  int wide, tall;
  gtk_widget_measure (self->label, GTK_ORIENTATION_HORIZONTAL, -1, NULL,
                      &wide, NULL, NULL);
  gtk_widget_measure (self->label, GTK_ORIENTATION_VERTICAL, -1, NULL, &tall,
                      NULL, NULL);
  self->width = MAX (self->width, wide);
  gtk_widget_set_size_request (GTK_WIDGET (self), self->width, -1);
  graphene_point_t pointer = point_at (self, has_moved ? &moved : NULL);
  graphene_point_t at
      = cw_label_place (&pointer, has_moved ? &moved : NULL,
                        (float) self->width, (float) tall, &size);
  gtk_widget_set_margin_start (GTK_WIDGET (self), (int) at.x);
  gtk_widget_set_margin_top (GTK_WIDGET (self), (int) at.y);
}

static gboolean
lost_patience (gpointer data)
{
  CwMoveLabel *self = data;
  self->patience = 0;
  gtk_widget_add_css_class (self->label, "cw-stale");
  return G_SOURCE_REMOVE;
}

static void
show_stale (CwMoveLabel *self)
{
  gboolean is_stale = cw_marginal_is_stale (self->marginal);
  if (is_stale && !self->patience)
    self->patience = g_timeout_add (PATIENCE_MS, lost_patience, self);
  if (is_stale)
    return;
  g_clear_handle_id (&self->patience, g_source_remove);
  gtk_widget_remove_css_class (self->label, "cw-stale");
}

/* A move back to where it began, or another kind of edit. */
static void
marginal_changed (CwMoveLabel *self)
{
  const CwTakeoffChange *figures = cw_marginal_figures (self->marginal);
  if (!figures)
    {
      hide (self);
      return;
    }
  const CwProject *project
      = cw_document_project (cw_job_document (self->job));
  CwCurrency currency = cw_currency (project->currency, CW_HALF_AWAY);
  set_words (self, cw_change_words (figures, cw_job_style (self->job),
                                    &currency));
  place (self);
  show_stale (self);
  stay (self);
}

static void
pointer_moved (CwMoveLabel *self)
{
  if (self->words && cw_board_is_dragging (self->board))
    place (self);
}

void
cw_move_label_set_job (CwMoveLabel *self, CwJob *job)
{
  g_return_if_fail (CW_IS_MOVE_LABEL (self));
  g_return_if_fail (self->job == NULL);
  self->job = g_object_ref (job);
  self->marginal = cw_marginal_new (cw_job_document (job));
  g_signal_connect_object (self->marginal, "changed",
                           G_CALLBACK (marginal_changed), self,
                           G_CONNECT_SWAPPED);
}

static void
cw_move_label_get_property (GObject *object, guint id, GValue *value,
                            GParamSpec *pspec)
{
  if (id == PROP_WORDS)
    g_value_set_string (value, cw_move_label_words (CW_MOVE_LABEL (object)));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
cw_move_label_dispose (GObject *object)
{
  CwMoveLabel *self = CW_MOVE_LABEL (object);
  g_clear_handle_id (&self->going, g_source_remove);
  g_clear_handle_id (&self->patience, g_source_remove);
  g_clear_pointer (&self->label, gtk_widget_unparent);
  g_clear_object (&self->marginal);
  g_clear_object (&self->job);
  g_clear_pointer (&self->words, g_free);
  G_OBJECT_CLASS (cw_move_label_parent_class)->dispose (object);
}

static void
cw_move_label_class_init (CwMoveLabelClass *class)
{
  GObjectClass *object_class = G_OBJECT_CLASS (class);
  object_class->get_property = cw_move_label_get_property;
  object_class->dispose = cw_move_label_dispose;
  props[PROP_WORDS] = g_param_spec_string (
      "words", NULL, NULL, NULL, G_PARAM_READABLE | G_PARAM_STATIC_STRINGS);
  g_object_class_install_properties (object_class, N_PROPS, props);
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class),
                                        GTK_ACCESSIBLE_ROLE_STATUS);
}

static void
cw_move_label_init (CwMoveLabel *self)
{
  self->label = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->label), 0);
  gtk_widget_add_css_class (self->label, "cw-figure");
  gtk_widget_set_parent (self->label, GTK_WIDGET (self));
  gtk_widget_add_css_class (GTK_WIDGET (self), "cw-move-label");
  gtk_widget_set_halign (GTK_WIDGET (self), GTK_ALIGN_START);
  gtk_widget_set_valign (GTK_WIDGET (self), GTK_ALIGN_START);
  gtk_widget_set_can_target (GTK_WIDGET (self), FALSE);
  gtk_widget_set_visible (GTK_WIDGET (self), FALSE);
}

GtkWidget *
cw_move_label_new (CwBoard *board)
{
  CwMoveLabel *self = g_object_new (CW_TYPE_MOVE_LABEL, NULL);
  self->board = board;
  g_signal_connect_object (board, "pointer-moved",
                           G_CALLBACK (pointer_moved), self,
                           G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}
