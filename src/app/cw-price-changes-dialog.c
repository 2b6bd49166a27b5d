/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-price-changes-dialog.h"

#include "cw-form-dialog.h"
#include "cw-i18n.h"
#include "cw-price-text.h"
#include "cw-panel-head.h"

enum { TICK, ITEM, OLD, NEW, DATE, REMARK, N_COLUMNS };

typedef struct
{
  CwFormDialog *dialog;
  GPtrArray *changes;
  GPtrArray *ticks;           /* GtkCheckButton, as the changes */
  CwTextStyle style;
  CwPriceChangesFunc taken;
  gpointer data;
  GDestroyNotify free_data;
} Choosing;

static void
choosing_free (Choosing *choosing)
{
  if (choosing->free_data)
    choosing->free_data (choosing->data);
  g_ptr_array_unref (choosing->changes);
  g_ptr_array_unref (choosing->ticks);
  g_free (choosing);
}

static void
taken (Choosing *choosing)
{
  g_autofree gboolean *ticked = g_new0 (gboolean, choosing->changes->len);
  for (guint i = 0; i < choosing->changes->len; i++)
    ticked[i] = gtk_check_button_get_active (choosing->ticks->pdata[i]);
  choosing->taken (choosing->changes, ticked, choosing->data);
  gtk_window_destroy (GTK_WINDOW (choosing->dialog));
}

static const char *
remark_of (CwPriceFit fit)
{
  switch (fit)
    {
    case CW_PRICE_OTHER_CURRENCY:
      return _("another currency than the project’s: not taken");
    case CW_PRICE_OTHER_UNIT:
      return _("for another unit than the project’s: not taken");
    case CW_PRICE_FITS:
    default:
      return "";
    }
}

static void
add_label (GtkWidget *grid, int column, int row, const char *text,
           const char *class)
{
  GtkWidget *label = gtk_label_new (text);
  gboolean is_figure = column == OLD || column == NEW;
  gtk_label_set_xalign (GTK_LABEL (label), is_figure ? 1 : 0);
  gtk_label_set_wrap (GTK_LABEL (label), !is_figure && column != DATE);
  gtk_widget_set_hexpand (label, column == ITEM);
  if (is_figure)
    gtk_widget_add_css_class (label, "cw-figure");
  if (class)
    gtk_widget_add_css_class (label, class);
  gtk_grid_attach (GTK_GRID (grid), label, column, row, 1, 1);
}

static void
add_heads (GtkWidget *grid)
{
  const char *const heads[N_COLUMNS]
      = { NULL, _("Item"), _("Old"), _("New"), _("Date"), NULL };
  for (int i = 0; i < N_COLUMNS; i++)
    if (heads[i])
      add_label (grid, i, 0, heads[i], "cw-dim");
}

/* "31.50". (transfer full) */
static char *
price_text (Choosing *choosing, CwDecimal price, const char *currency)
{
  return price == 0 ? g_strdup (_("none"))
                    : cw_price_text (price, currency, &choosing->style);
}

/* A second price of the same thing is left for the user to choose. */
static gboolean
is_first_of_its_name (Choosing *choosing, guint index)
{
  const CwPriceChange *change = choosing->changes->pdata[index];
  for (guint i = 0; i < index; i++)
    {
      const CwPriceChange *before = choosing->changes->pdata[i];
      if (g_str_equal (before->kind, change->kind)
          && g_str_equal (before->name, change->name)
          && before->to != change->to)
        return FALSE;
    }
  return TRUE;
}

static void
add_tick (Choosing *choosing, GtkWidget *grid, guint index,
          const char *spoken)
{
  const CwPriceChange *change = choosing->changes->pdata[index];
  GtkWidget *tick = gtk_check_button_new ();
  gboolean fits = change->fit == CW_PRICE_FITS;
  gtk_check_button_set_active (
      GTK_CHECK_BUTTON (tick),
      fits && is_first_of_its_name (choosing, index));
  gtk_widget_set_sensitive (tick, fits);
  cw_widget_set_name (tick, spoken);
  g_ptr_array_add (choosing->ticks, tick);
  gtk_grid_attach (GTK_GRID (grid), tick, TICK, (int) index + 1, 1, 1);
}

static void
add_change (Choosing *choosing, GtkWidget *grid, guint index)
{
  const CwPriceChange *change = choosing->changes->pdata[index];
  int row = (int) index + 1;
  g_autofree char *old = price_text (choosing, change->from, change->currency);
  g_autofree char *new = price_text (choosing, change->to, change->currency);
  g_autofree char *whole = g_strdup_printf ("%s %s / %s", new,
                                            change->currency, change->unit);
  g_autofree char *spoken
      = g_strdup_printf ("%s: %s, %s %s", change->name, old, whole,
                         remark_of (change->fit));
  add_tick (choosing, grid, index, spoken);
  add_label (grid, ITEM, row, change->name, NULL);
  add_label (grid, OLD, row, old, NULL);
  add_label (grid, NEW, row, whole, NULL);
  add_label (grid, DATE, row, change->date, "cw-dim");
  if (change->fit != CW_PRICE_FITS)
    add_label (grid, REMARK, row, remark_of (change->fit), "cw-trouble");
}

static void
fill (Choosing *choosing)
{
  GtkWidget *grid = gtk_grid_new ();
  GtkWidget *scroller = gtk_scrolled_window_new ();
  gtk_grid_set_column_spacing (GTK_GRID (grid), 18);
  gtk_grid_set_row_spacing (GTK_GRID (grid), 6);
  add_heads (grid);
  for (guint i = 0; i < choosing->changes->len; i++)
    add_change (choosing, grid, i);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), grid);
  gtk_widget_set_vexpand (scroller, TRUE);
  cw_form_dialog_append (choosing->dialog, scroller);
}

void
cw_price_changes_dialog_open (GtkWindow *parent, const char *title,
                              GPtrArray *changes, const CwTextStyle *style,
                              CwPriceChangesFunc done, gpointer data,
                              GDestroyNotify free_data)
{
  Choosing *choosing = g_new0 (Choosing, 1);
  choosing->changes = changes;
  choosing->ticks = g_ptr_array_new ();
  choosing->style = *style;
  choosing->taken = done;
  choosing->data = data;
  choosing->free_data = free_data;
  choosing->dialog = cw_form_dialog_new (parent, title, _("_Take them"));
  g_object_set_data_full (G_OBJECT (choosing->dialog), "choosing", choosing,
                          (GDestroyNotify) choosing_free);
  gtk_window_set_default_size (GTK_WINDOW (choosing->dialog), 720, 480);
  cw_form_dialog_add_words (choosing->dialog,
                            _("What would change. Only what is ticked is "
                              "taken."));
  fill (choosing);
  g_signal_connect_swapped (choosing->dialog, "taken", G_CALLBACK (taken),
                            choosing);
  gtk_window_present (GTK_WINDOW (choosing->dialog));
}
