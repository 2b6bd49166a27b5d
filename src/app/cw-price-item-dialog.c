/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-price-item-dialog.h"

#include <string.h>

#include "cw-form-dialog.h"
#include "cw-i18n.h"
#include "cw-price-text.h"

typedef struct
{
  CwFormDialog *dialog;
  GtkWidget *kind, *name, *unit, *price, *currency, *date, *note;
  CwTextStyle style;
  CwPriceItemFunc taken;
  gpointer data;
  GDestroyNotify free_data;
} Typing;

static void
typing_free (Typing *typing)
{
  if (typing->free_data)
    typing->free_data (typing->data);
  g_free (typing);
}

/* (transfer full) */
static char *
text_of (GtkWidget *entry)
{
  return g_strstrip (
      g_strdup (gtk_editable_get_text (GTK_EDITABLE (entry))));
}

static gboolean
is_currency (const char *text)
{
  return strlen (text) == 3 && g_ascii_isupper (text[0])
         && g_ascii_isupper (text[1]) && g_ascii_isupper (text[2]);
}

/* What is wrong, (transfer full), or NULL. */
static char *
read_item (Typing *typing, CwPriceItem *item)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *price = text_of (typing->price);
  guint kind = gtk_drop_down_get_selected (GTK_DROP_DOWN (typing->kind));
  item->kind = g_strdup (cw_product_types ()[kind]->element);
  item->name = text_of (typing->name);
  item->unit = text_of (typing->unit);
  item->currency = text_of (typing->currency);
  item->date = text_of (typing->date);
  item->note = text_of (typing->note);
  if (!*item->name)
    return g_strdup (_("Give it the name that it has on the order list."));
  if (!cw_decimal_parse (price, &typing->style, &item->price, &error))
    return g_strdup_printf (_("Price: %s"), error->message);
  if (item->price < 0 || item->price > CW_DECIMAL (1000000000))
    return g_strdup (_("A price is from 0 to 1000000000."));
  if (!is_currency (item->currency))
    return g_strdup (_("A currency is three capital letters, such as USD."));
  return NULL;
}

static void
taken (Typing *typing)
{
  g_autoptr (CwPriceItem) item = g_new0 (CwPriceItem, 1);
  g_autofree char *trouble = read_item (typing, item);
  if (!trouble)
    trouble = typing->taken (item, typing->data);
  cw_form_dialog_set_trouble (typing->dialog, trouble);
  if (!trouble)
    gtk_window_destroy (GTK_WINDOW (typing->dialog));
}

static GtkWidget *
add_entry (Typing *typing, const char *label, const char *text)
{
  GtkWidget *entry = gtk_entry_new ();
  gtk_editable_set_text (GTK_EDITABLE (entry), text);
  gtk_entry_set_activates_default (GTK_ENTRY (entry), TRUE);
  cw_form_dialog_add (typing->dialog, label, entry);
  return entry;
}

/* The unit follows the kind, as the project prices it. */
static void
kind_chosen (Typing *typing)
{
  guint kind = gtk_drop_down_get_selected (GTK_DROP_DOWN (typing->kind));
  gtk_editable_set_text (
      GTK_EDITABLE (typing->unit),
      cw_product_unit (cw_product_types ()[kind]->element));
}

static GtkWidget *
new_kinds (const char *chosen)
{
  g_autoptr (GtkStringList) labels = gtk_string_list_new (NULL);
  const CwNodeType *const *types = cw_product_types ();
  guint selected = 0;
  for (guint i = 0; types[i]; i++)
    {
      gtk_string_list_append (labels, _(types[i]->label));
      if (g_strcmp0 (types[i]->element, chosen) == 0)
        selected = i;
    }
  GtkWidget *list
      = gtk_drop_down_new (G_LIST_MODEL (g_steal_pointer (&labels)), NULL);
  gtk_drop_down_set_selected (GTK_DROP_DOWN (list), selected);
  return list;
}

static void
fill (Typing *typing, const CwPriceItem *item)
{
  g_autofree char *price
      = cw_price_entry_text (item->price, item->currency, &typing->style);
  typing->kind = new_kinds (item->kind);
  cw_form_dialog_add (typing->dialog, _("Kind"), typing->kind);
  typing->name = add_entry (typing, _("Name"), item->name);
  typing->price = add_entry (typing, _("Price"), price);
  typing->unit = add_entry (typing, _("For one"), item->unit);
  typing->currency = add_entry (typing, _("Currency"), item->currency);
  typing->date = add_entry (typing, _("Date"), item->date);
  typing->note = add_entry (typing, _("Supplier and terms"), item->note);
  g_signal_connect_swapped (typing->kind, "notify::selected",
                            G_CALLBACK (kind_chosen), typing);
}

void
cw_price_item_dialog_open (GtkWindow *parent, const char *title,
                           const CwPriceItem *item, const CwTextStyle *style,
                           CwPriceItemFunc done, gpointer data,
                           GDestroyNotify free_data)
{
  Typing *typing = g_new0 (Typing, 1);
  typing->style = *style;
  typing->taken = done;
  typing->data = data;
  typing->free_data = free_data;
  typing->dialog = cw_form_dialog_new (parent, title, _("_Keep it"));
  g_object_set_data_full (G_OBJECT (typing->dialog), "typing", typing,
                          (GDestroyNotify) typing_free);
  fill (typing, item);
  g_signal_connect_swapped (typing->dialog, "taken", G_CALLBACK (taken),
                            typing);
  gtk_window_present (GTK_WINDOW (typing->dialog));
  gtk_widget_grab_focus (typing->name);
}
