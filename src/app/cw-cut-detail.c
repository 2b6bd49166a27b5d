/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-detail.h"

#include "cw-cut-words.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwCutDetail
{
  GtkWidget parent;
  GtkWidget *name, *stock, *steps, *pieces_head, *pieces;
  GtkStringList *lines;       /* one for each piece of the panel */
  CwCutItem *item;
};

G_DEFINE_FINAL_TYPE (CwCutDetail, cw_cut_detail, GTK_TYPE_WIDGET)

/* (transfer full) */
static char *
steps_text (const CwCutListPanel *panel, const CwTextStyle *style)
{
  GString *text = g_string_new (NULL);
  for (guint i = 0; i < panel->whole->cuts->len; i++)
    {
      g_autofree char *step = cw_cut_list_step_text (panel, i, style);
      g_string_append_printf (text, "%s%u   %s", i ? "\n" : "", i + 1, step);
    }
  if (text->len == 0)
    g_string_append (text, _("No straight cut right across the panel."));
  return g_string_free (text, FALSE);
}

/* "A   South-3-2 × 4   1840 × 600 mm   notch". (transfer full) */
static char *
piece_line (const CwCutList *list, const CwCutListPiece *piece,
            const CwTextStyle *style)
{
  const CwPiece *it = cw_cut_list_piece (list, piece, NULL);
  g_autofree char *letter = cw_cut_letter (piece->slot);
  g_autofree char *name = cw_cut_piece_text (list, piece);
  g_autofree char *width
      = cw_length_format_dimension (cw_box_width (&it->box), style);
  g_autofree char *height
      = cw_length_format (cw_box_height (&it->box), style);
  g_autofree char *shape = cw_cut_shape_text (it);
  return g_strdup_printf ("%s   %s   %s × %s%s%s", letter, name, width,
                          height, shape ? "   " : "", shape ? shape : "");
}

/* (transfer full) */
static GStrv
piece_lines (CwCutItem *item, const CwTextStyle *style)
{
  const GArray *pieces
      = item ? cw_cut_item_panel (item)->pieces : NULL;
  const guint n = pieces ? pieces->len : 0;
  GStrv lines = g_new0 (char *, n + 1);
  for (guint i = 0; i < n; i++)
    lines[i] = piece_line (cw_cut_item_list (item),
                           &g_array_index (pieces, CwCutListPiece, i),
                           style);
  return lines;
}

void
cw_cut_detail_show (CwCutDetail *detail, CwCutItem *item,
                    const CwTextStyle *style)
{
  g_return_if_fail (CW_IS_CUT_DETAIL (detail));
  const CwCutListPanel *panel = item ? cw_cut_item_panel (item) : NULL;
  g_autofree char *name = panel ? cw_cut_panel_text (panel) : NULL;
  g_autofree char *stock = panel ? cw_cut_stock_text (panel, style) : NULL;
  g_autofree char *steps = panel ? steps_text (panel, style) : NULL;
  g_auto (GStrv) lines = piece_lines (item, style);
  g_set_object (&detail->item, item);
  gtk_label_set_text (GTK_LABEL (detail->name), name ? name : _("No panel"));
  gtk_label_set_text (GTK_LABEL (detail->stock), stock ? stock : "");
  gtk_label_set_text (GTK_LABEL (detail->steps),
                      steps ? steps
                            : _("Choose a panel to see its cuts in order "
                                "and where its pieces go."));
  gtk_widget_set_visible (detail->pieces_head, panel != NULL);
  gtk_string_list_splice (detail->lines, 0, cw_cut_detail_n_pieces (detail),
                          (const char *const *) lines);
}

guint
cw_cut_detail_n_pieces (CwCutDetail *detail)
{
  g_return_val_if_fail (CW_IS_CUT_DETAIL (detail), 0);
  return g_list_model_get_n_items (G_LIST_MODEL (detail->lines));
}

void
cw_cut_detail_choose_piece (CwCutDetail *detail, guint index)
{
  g_return_if_fail (CW_IS_CUT_DETAIL (detail));
  g_return_if_fail (index < cw_cut_detail_n_pieces (detail));
  const CwLayout *layout;
  const CwCutListPiece *piece = &g_array_index (
      cw_cut_item_panel (detail->item)->pieces, CwCutListPiece, index);
  const CwPiece *it = cw_cut_list_piece (cw_cut_item_list (detail->item),
                                         piece, &layout);
  gtk_widget_activate_action (GTK_WIDGET (detail), "win.show-piece", "(suu)",
                              layout->wall->elevation->id, it->course,
                              it->number);
}

static void
piece_chosen (CwCutDetail *detail, guint index)
{
  cw_cut_detail_choose_piece (detail, index);
}

static void
set_up_line (GtkSignalListItemFactory *factory, GtkListItem *cell)
{
  GtkWidget *label = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 42);
  gtk_widget_add_css_class (label, "cw-figure");
  gtk_list_item_set_child (cell, label);
}

static void
bind_line (GtkSignalListItemFactory *factory, GtkListItem *cell)
{
  gtk_label_set_text (
      GTK_LABEL (gtk_list_item_get_child (cell)),
      gtk_string_object_get_string (gtk_list_item_get_item (cell)));
}

static void
cw_cut_detail_dispose (GObject *object)
{
  CwCutDetail *detail = CW_CUT_DETAIL (object);
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (detail))))
    gtk_widget_unparent (child);
  g_clear_object (&detail->item);
  g_clear_object (&detail->lines);
  G_OBJECT_CLASS (cw_cut_detail_parent_class)->dispose (object);
}

static void
cw_cut_detail_class_init (CwCutDetailClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_cut_detail_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
}

static GtkWidget *
add_words (CwCutDetail *detail, const char *style)
{
  GtkWidget *label = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 42);
  gtk_widget_add_css_class (label, style);
  gtk_widget_add_css_class (label, "cw-placeholder");
  gtk_widget_set_parent (label, GTK_WIDGET (detail));
  return label;
}

static GtkWidget *
new_pieces (CwCutDetail *detail)
{
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();
  GtkSingleSelection *selection = gtk_single_selection_new (
      G_LIST_MODEL (g_object_ref (detail->lines)));
  GtkWidget *scrolled = gtk_scrolled_window_new ();
  gtk_single_selection_set_autoselect (selection, FALSE);
  gtk_single_selection_set_can_unselect (selection, TRUE);
  g_signal_connect (factory, "setup", G_CALLBACK (set_up_line), NULL);
  g_signal_connect (factory, "bind", G_CALLBACK (bind_line), NULL);
  detail->pieces
      = gtk_list_view_new (GTK_SELECTION_MODEL (selection), factory);
  gtk_list_view_set_single_click_activate (GTK_LIST_VIEW (detail->pieces),
                                           TRUE);
  g_signal_connect_swapped (detail->pieces, "activate",
                            G_CALLBACK (piece_chosen), detail);
  cw_widget_set_name (detail->pieces,
                      _("Pieces of the panel; choosing one shows it on its "
                        "wall"));
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled),
                                 detail->pieces);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled),
                                  GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_widget_set_vexpand (scrolled, TRUE);
  return scrolled;
}

static void
cw_cut_detail_init (CwCutDetail *detail)
{
  GtkWidget *head = cw_panel_head_new ("");
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (detail))),
      GTK_ORIENTATION_VERTICAL);
  detail->lines = gtk_string_list_new (NULL);
  detail->name = gtk_widget_get_first_child (head);
  gtk_widget_set_parent (head, GTK_WIDGET (detail));
  detail->stock = add_words (detail, "cw-dim");
  detail->steps = add_words (detail, "cw-figure");
  detail->pieces_head
      = cw_panel_head_new (_("Pieces, to be shown on their walls"));
  gtk_widget_set_parent (detail->pieces_head, GTK_WIDGET (detail));
  gtk_widget_set_parent (new_pieces (detail), GTK_WIDGET (detail));
}

GtkWidget *
cw_cut_detail_new (void)
{
  return g_object_new (CW_TYPE_CUT_DETAIL, NULL);
}
