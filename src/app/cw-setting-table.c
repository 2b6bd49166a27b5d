/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-setting-table.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"

/* One row: a choice with its cells in words. */
#define CW_TYPE_SETTING_ROW (cw_setting_row_get_type ())
G_DECLARE_FINAL_TYPE (CwSettingRow, cw_setting_row, CW, SETTING_ROW, GObject)

struct _CwSettingRow
{
  GObject parent;
  CwSettingChoice choice;
  char *cells[CW_N_SETTING_COLUMNS];
  char *words;
};

G_DEFINE_FINAL_TYPE (CwSettingRow, cw_setting_row, G_TYPE_OBJECT)

struct _CwSettingTable
{
  GtkWidget parent;
  GListStore *rows;
  GtkSingleSelection *selection;
  GtkWidget *scroller, *view;
};

G_DEFINE_FINAL_TYPE (CwSettingTable, cw_setting_table, GTK_TYPE_WIDGET)

enum { CHOSEN, TAKEN, N_SIGNALS };
static guint signals[N_SIGNALS];

static void
cw_setting_row_finalize (GObject *object)
{
  CwSettingRow *row = CW_SETTING_ROW (object);
  for (guint i = 0; i < CW_N_SETTING_COLUMNS; i++)
    g_free (row->cells[i]);
  g_free (row->words);
  G_OBJECT_CLASS (cw_setting_row_parent_class)->finalize (object);
}

static void
cw_setting_row_class_init (CwSettingRowClass *class)
{
  G_OBJECT_CLASS (class)->finalize = cw_setting_row_finalize;
}

static void
cw_setting_row_init (CwSettingRow *row)
{
}

/* (transfer full) */
static CwSettingRow *
row_new (const CwSettingChoice *choice, const CwTextStyle *style,
         const CwCurrency *currency)
{
  CwSettingRow *row = g_object_new (CW_TYPE_SETTING_ROW, NULL);
  row->choice = *choice;
  for (guint i = 0; i < CW_N_SETTING_COLUMNS; i++)
    row->cells[i] = cw_setting_cell (choice, i, style, currency);
  row->words = cw_setting_row_words (choice, style, currency);
  return row;
}

void
cw_setting_table_show (CwSettingTable *table, const GArray *choices,
                       const CwTextStyle *style, const CwCurrency *currency)
{
  g_return_if_fail (CW_IS_SETTING_TABLE (table));
  g_list_store_remove_all (table->rows);
  for (guint i = 0; choices && i < choices->len; i++)
    {
      g_autoptr (CwSettingRow) row = row_new (
          &g_array_index (choices, CwSettingChoice, i), style, currency);
      g_list_store_append (table->rows, row);
    }
  gtk_single_selection_set_selected (table->selection,
                                     GTK_INVALID_LIST_POSITION);
}

const CwSettingChoice *
cw_setting_table_chosen (CwSettingTable *table)
{
  g_return_val_if_fail (CW_IS_SETTING_TABLE (table), NULL);
  CwSettingRow *row
      = gtk_single_selection_get_selected_item (table->selection);
  return row ? &row->choice : NULL;
}

void
cw_setting_table_choose (CwSettingTable *table, guint index)
{
  g_return_if_fail (CW_IS_SETTING_TABLE (table));
  gtk_single_selection_set_selected (table->selection, index);
  gtk_widget_grab_focus (table->view);
}

guint
cw_setting_table_n_choices (CwSettingTable *table)
{
  g_return_val_if_fail (CW_IS_SETTING_TABLE (table), 0);
  return g_list_model_get_n_items (G_LIST_MODEL (table->rows));
}

static void
chosen (CwSettingTable *table)
{
  g_signal_emit (table, signals[CHOSEN], 0);
}

static void
activated (CwSettingTable *table, guint position)
{
  gtk_single_selection_set_selected (table->selection, position);
  g_signal_emit (table, signals[TAKEN], 0);
}

static void
set_up_cell (GtkListItemFactory *factory, GtkListItem *item, gpointer column)
{
  GtkWidget *label = gtk_label_new (NULL);
  gboolean is_figure
      = cw_setting_column_is_figure (GPOINTER_TO_UINT (column));
  gtk_label_set_xalign (GTK_LABEL (label), is_figure ? 1 : 0);
  if (!is_figure)
    {
      gtk_label_set_width_chars (GTK_LABEL (label), 12);
      gtk_label_set_max_width_chars (GTK_LABEL (label), 24);
      gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
    }
  gtk_widget_add_css_class (label, "cw-figure");
  gtk_list_item_set_child (item, label);
}

/* The first cell speaks for the row: cells have no row to be read with. */
static void
bind_cell (GtkListItemFactory *factory, GtkListItem *item, gpointer column)
{
  CwSettingRow *row = gtk_list_item_get_item (item);
  GtkWidget *label = gtk_list_item_get_child (item);
  gtk_label_set_text (GTK_LABEL (label),
                      row->cells[GPOINTER_TO_UINT (column)]);
  if (gtk_label_get_ellipsize (GTK_LABEL (label)) != PANGO_ELLIPSIZE_NONE)
    gtk_widget_set_tooltip_text (label,
                                 row->cells[GPOINTER_TO_UINT (column)]);
  if (row->choice.is_present)
    gtk_widget_add_css_class (label, "cw-heading");
  else
    gtk_widget_remove_css_class (label, "cw-heading");
  if (GPOINTER_TO_UINT (column) == 0)
    cw_widget_set_name (label, row->words);
}

static void
bind_mark (GtkListItemFactory *factory, GtkListItem *item, gpointer data)
{
  CwSettingRow *row = gtk_list_item_get_item (item);
  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (item)),
                      row->choice.is_present ? _("present") : "");
}

static void
set_up_mark (GtkListItemFactory *factory, GtkListItem *item, gpointer data)
{
  GtkWidget *label = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, "cw-dim");
  gtk_list_item_set_child (item, label);
}

/* (transfer none) */
static GtkColumnViewColumn *
append_column (CwSettingTable *table, const char *title, GCallback set_up,
               GCallback bind, gpointer data)
{
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();
  g_signal_connect (factory, "setup", set_up, data);
  g_signal_connect (factory, "bind", bind, data);
  g_autoptr (GtkColumnViewColumn) column
      = gtk_column_view_column_new (title, factory);
  gtk_column_view_append_column (GTK_COLUMN_VIEW (table->view), column);
  return column;
}

/* Titles stand over their figures. GTK leaves titles at the left and has no
 * call for it; the header's buttons are in the order of the columns. */
static void
align_titles (CwSettingTable *table)
{
  GtkWidget *title
      = gtk_widget_get_first_child (gtk_widget_get_first_child (table->view));
  for (guint i = 0; (title = gtk_widget_get_next_sibling (title))
                    && i < CW_N_SETTING_COLUMNS;
       i++)
    if (cw_setting_column_is_figure (i))
      gtk_widget_set_halign (gtk_widget_get_first_child (title),
                             GTK_ALIGN_END);
}

static void
append_columns (CwSettingTable *table)
{
  append_column (table, "", G_CALLBACK (set_up_mark), G_CALLBACK (bind_mark),
                 NULL);
  for (guint i = 0; i < CW_N_SETTING_COLUMNS; i++)
    gtk_column_view_column_set_expand (
        append_column (table, cw_setting_column_title (i),
                       G_CALLBACK (set_up_cell), G_CALLBACK (bind_cell),
                       GUINT_TO_POINTER (i)),
        !cw_setting_column_is_figure (i));
  align_titles (table);
}

static void
cw_setting_table_dispose (GObject *object)
{
  CwSettingTable *table = CW_SETTING_TABLE (object);
  g_clear_pointer (&table->scroller, gtk_widget_unparent);
  g_clear_object (&table->rows);
  G_OBJECT_CLASS (cw_setting_table_parent_class)->dispose (object);
}

static void
cw_setting_table_class_init (CwSettingTableClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_setting_table_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BIN_LAYOUT);
  signals[CHOSEN] = g_signal_new ("chosen", CW_TYPE_SETTING_TABLE,
                                  G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                  G_TYPE_NONE, 0);
  signals[TAKEN] = g_signal_new ("taken", CW_TYPE_SETTING_TABLE,
                                 G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_NONE, 0);
}

static void
cw_setting_table_init (CwSettingTable *table)
{
  table->rows = g_list_store_new (CW_TYPE_SETTING_ROW);
  table->selection = gtk_single_selection_new (
      G_LIST_MODEL (g_object_ref (table->rows)));
  gtk_single_selection_set_autoselect (table->selection, FALSE);
  gtk_single_selection_set_can_unselect (table->selection, TRUE);
  g_signal_connect_object (table->selection, "notify::selected",
                           G_CALLBACK (chosen), table, G_CONNECT_SWAPPED);
  table->view = gtk_column_view_new (GTK_SELECTION_MODEL (table->selection));
  gtk_column_view_set_reorderable (GTK_COLUMN_VIEW (table->view), FALSE);
  cw_widget_set_name (table->view, _("Choices of setting out"));
  /* The list in it is what gets the keyboard. */
  cw_widget_set_name (gtk_widget_get_last_child (table->view),
                      _("Choices of setting out"));
  g_signal_connect_object (table->view, "activate", G_CALLBACK (activated),
                           table, G_CONNECT_SWAPPED);
  append_columns (table);
  table->scroller = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (table->scroller),
                                 table->view);
  gtk_widget_set_parent (table->scroller, GTK_WIDGET (table));
}

GtkWidget *
cw_setting_table_new (void)
{
  return g_object_new (CW_TYPE_SETTING_TABLE, NULL);
}
