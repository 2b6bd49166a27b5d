/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-quantity-row.h"

#include <math.h>

#include "cw-amount-text.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

/* So long a change is readable before it fades. */
#define FRESH_MS 2500

struct _CwQuantityRow
{
  GtkListBoxRow parent;
  const CwQuantityType *type;
  char *variant;            /* (nullable) */
  const char *amount_unit;  /* static, or a currency's code */
  GtkWidget *name, *change, *figure, *unit, *order, *note;
  double amount;
  char *steps;
  guint fading;
};

G_DEFINE_FINAL_TYPE (CwQuantityRow, cw_quantity_row, GTK_TYPE_LIST_BOX_ROW)

const CwQuantityType *
cw_quantity_row_type (CwQuantityRow *row)
{
  g_return_val_if_fail (CW_IS_QUANTITY_ROW (row), NULL);
  return row->type;
}

const char *
cw_quantity_row_variant (CwQuantityRow *row)
{
  g_return_val_if_fail (CW_IS_QUANTITY_ROW (row), NULL);
  return row->variant;
}

const char *
cw_quantity_row_steps (CwQuantityRow *row)
{
  g_return_val_if_fail (CW_IS_QUANTITY_ROW (row), NULL);
  return row->steps;
}

const char *
cw_quantity_row_figure (CwQuantityRow *row)
{
  g_return_val_if_fail (CW_IS_QUANTITY_ROW (row), NULL);
  return gtk_label_get_text (GTK_LABEL (row->figure));
}

static gboolean
fade (gpointer data)
{
  CwQuantityRow *row = data;
  row->fading = 0;
  gtk_widget_remove_css_class (row->change, "cw-fresh");
  return G_SOURCE_REMOVE;
}

static void
tell (CwQuantityRow *row, double difference, const CwTextStyle *style)
{
  g_autofree char *number = cw_amount_text (style, fabs (difference),
                                            row->amount_unit, NULL);
  g_autofree char *text
      = g_strconcat (difference < 0 ? "−" : "+", number, NULL);
  gtk_label_set_text (GTK_LABEL (row->change), text);
  gtk_widget_add_css_class (row->change, "cw-fresh");
  g_clear_handle_id (&row->fading, g_source_remove);
  row->fading = g_timeout_add (FRESH_MS, fade, row);
}

/* (transfer full) */
static char *
name_of (const CwQuantity *quantity)
{
  const char *label = _(quantity->type->label);
  return quantity->variant && *quantity->variant
             /* Translators: a quantity and the part of it that is meant. */
             ? g_strdup_printf (_("%s, %s"), label, _(quantity->variant))
             : g_strdup (label);
}

/* A line below the figure, when there is something to say. */
static void
show_below (GtkWidget *label, const char *text)
{
  gtk_widget_set_visible (label, text != NULL);
  gtk_label_set_text (GTK_LABEL (label), text ? text : "");
}

static void
show_order_and_note (CwQuantityRow *row, const CwQuantity *quantity,
                     const CwTextStyle *style)
{
  g_autofree char *order = cw_amount_order_text (style, quantity);
  g_autofree char *note = cw_quantity_note_text (quantity, style);
  show_below (row->order, order);
  show_below (row->note, note);
}

static void
name_for_reader (CwQuantityRow *row, const char *name, const char *figure,
                 const char *unit)
{
  g_autofree char *spoken = g_strdup_printf (
      "%s: %s %s %s%s", name, figure, unit,
      gtk_label_get_text (GTK_LABEL (row->order)),
      gtk_label_get_text (GTK_LABEL (row->note)));
  cw_widget_set_name (GTK_WIDGET (row), g_strchomp (spoken));
}

void
cw_quantity_row_show (CwQuantityRow *row, const CwQuantity *quantity,
                      const CwTextStyle *style, gboolean tell_change)
{
  g_return_if_fail (CW_IS_QUANTITY_ROW (row));
  const char *unit;
  row->amount_unit = quantity->unit;
  g_autofree char *name = name_of (quantity);
  g_autofree char *figure = cw_amount_text (style, quantity->amount,
                                            quantity->unit, &unit);
  gboolean differs = g_strcmp0 (figure, cw_quantity_row_figure (row)) != 0;
  gtk_label_set_text (GTK_LABEL (row->name), name);
  gtk_label_set_text (GTK_LABEL (row->figure), figure);
  gtk_label_set_text (GTK_LABEL (row->unit), unit);
  show_order_and_note (row, quantity, style);
  if (tell_change && differs)
    tell (row, quantity->amount - row->amount, style);
  row->amount = quantity->amount;
  g_free (row->steps);
  row->steps = cw_quantity_steps_text (quantity, style);
  name_for_reader (row, name, figure, unit);
  gtk_widget_set_visible (GTK_WIDGET (row), fabs (quantity->amount) > 0);
}

static void
cw_quantity_row_dispose (GObject *object)
{
  g_clear_handle_id (&CW_QUANTITY_ROW (object)->fading, g_source_remove);
  G_OBJECT_CLASS (cw_quantity_row_parent_class)->dispose (object);
}

static void
cw_quantity_row_finalize (GObject *object)
{
  g_free (CW_QUANTITY_ROW (object)->steps);
  g_free (CW_QUANTITY_ROW (object)->variant);
  G_OBJECT_CLASS (cw_quantity_row_parent_class)->finalize (object);
}

static void
cw_quantity_row_class_init (CwQuantityRowClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_quantity_row_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_quantity_row_finalize;
}

static GtkWidget *
add_label (GtkWidget *grid, int column, int row, double xalign,
           const char *style)
{
  GtkWidget *label = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (label), (float) xalign);
  if (style)
    gtk_widget_add_css_class (label, style);
  gtk_grid_attach (GTK_GRID (grid), label, column, row, 1, 1);
  return label;
}

static GtkWidget *
add_label_below (GtkWidget *grid, int row)
{
  GtkWidget *label = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (label), 1);
  gtk_widget_add_css_class (label, "cw-dim");
  gtk_widget_add_css_class (label, "cw-small");
  gtk_grid_attach (GTK_GRID (grid), label, 0, row, 4, 1);
  return label;
}

static void
cw_quantity_row_init (CwQuantityRow *row)
{
  GtkWidget *grid = gtk_grid_new ();
  gtk_grid_set_column_spacing (GTK_GRID (grid), 6);
  row->name = add_label (grid, 0, 0, 0, NULL);
  gtk_label_set_wrap (GTK_LABEL (row->name), TRUE);
  gtk_widget_set_hexpand (row->name, TRUE);
  row->change = add_label (grid, 1, 0, 1, "cw-change");
  gtk_widget_add_css_class (row->change, "cw-figure");
  row->figure = add_label (grid, 2, 0, 1, "cw-figure");
  row->unit = add_label (grid, 3, 0, 0, "cw-dim");
  gtk_label_set_width_chars (GTK_LABEL (row->unit), 3);
  row->order = add_label_below (grid, 1);
  row->note = add_label_below (grid, 2);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), grid);
}

GtkWidget *
cw_quantity_row_new (const CwQuantityType *type, const char *variant)
{
  CwQuantityRow *row = g_object_new (CW_TYPE_QUANTITY_ROW, NULL);
  row->type = type;
  row->variant = g_strdup (variant);
  if (type->help)
    gtk_widget_set_tooltip_text (GTK_WIDGET (row), _(type->help));
  return GTK_WIDGET (row);
}
