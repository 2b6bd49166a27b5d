/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-library-dialog.h"

#include "cw-buildup-library.h"
#include "cw-form-dialog.h"
#include "cw-i18n.h"
#include "cw-length.h"
#include "cw-panel-head.h"

typedef struct
{
  CwFormDialog *dialog;
  GtkWidget *box;             /* GtkListBox */
  GPtrArray *entries;         /* CwLibraryBuildup, as the rows */
  CwBuildupChosenFunc chosen;
  gpointer data;
  GDestroyNotify free_data;
} Choosing;

static void
choosing_free (Choosing *choosing)
{
  if (choosing->free_data)
    choosing->free_data (choosing->data);
  g_ptr_array_unref (choosing->entries);
  g_free (choosing);
}

static void
taken (Choosing *choosing)
{
  GtkListBoxRow *row
      = gtk_list_box_get_selected_row (GTK_LIST_BOX (choosing->box));
  if (!row)
    return;
  const CwLibraryBuildup *entry = g_ptr_array_index (
      choosing->entries, (guint) gtk_list_box_row_get_index (row));
  choosing->chosen (entry->buildup, choosing->data);
  gtk_window_destroy (GTK_WINDOW (choosing->dialog));
}

/* Those in the project's units first, else in the order of their names. */
static int
compare (gconstpointer a, gconstpointer b, gpointer data)
{
  const CwLibraryBuildup *const *first = a, *const *second = b;
  CwUnits units = (CwUnits) GPOINTER_TO_INT (data);
  int own = ((*second)->units == units) - ((*first)->units == units);
  return own ? own : g_strcmp0 ((*first)->name, (*second)->name);
}

/* "studs at 16", board 2 × 24 × 96" in the units that it is sold in. */
static char *
sizes_of (const CwLibraryBuildup *entry)
{
  const CwTextStyle style = { .units = entry->units };
  const CwPanel *panel = cw_list_at (entry->buildup->panels, 0);
  const CwStuds *studs = (const CwStuds *) entry->buildup->studs;
  const CwFastener *fastener = (const CwFastener *) entry->buildup->fastener;
  g_autofree char *spacing = cw_length_format (studs->spacing, &style);
  g_autofree char *length = cw_length_format (fastener->length, &style);
  return g_strdup_printf (
      /* Translators: a panel's name, the distance of studs, a length. */
      _("%s; studs every %s; fasteners of %s"), panel->name, spacing, length);
}

static GtkWidget *
new_row (const CwLibraryBuildup *entry)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GtkWidget *name = gtk_label_new (entry->buildup->name);
  g_autofree char *sizes = sizes_of (entry);
  GtkWidget *below = gtk_label_new (sizes);
  gtk_label_set_xalign (GTK_LABEL (name), 0);
  gtk_label_set_wrap (GTK_LABEL (name), TRUE);
  gtk_label_set_xalign (GTK_LABEL (below), 0);
  gtk_label_set_wrap (GTK_LABEL (below), TRUE);
  gtk_widget_add_css_class (below, "cw-dim");
  gtk_widget_add_css_class (below, "cw-small");
  gtk_box_append (GTK_BOX (box), name);
  gtk_box_append (GTK_BOX (box), below);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  cw_widget_set_name (row, entry->buildup->name);
  return row;
}

static void
fill (Choosing *choosing)
{
  choosing->box = gtk_list_box_new ();
  cw_widget_set_name (choosing->box, _("Buildups of the library"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (choosing->box),
                                   GTK_SELECTION_BROWSE);
  gtk_list_box_set_activate_on_single_click (GTK_LIST_BOX (choosing->box),
                                             FALSE);
  for (guint i = 0; i < choosing->entries->len; i++)
    gtk_list_box_append (GTK_LIST_BOX (choosing->box),
                         new_row (choosing->entries->pdata[i]));
  gtk_list_box_select_row (
      GTK_LIST_BOX (choosing->box),
      gtk_list_box_get_row_at_index (GTK_LIST_BOX (choosing->box), 0));
  g_signal_connect_swapped (choosing->box, "row-activated",
                            G_CALLBACK (taken), choosing);

  GtkWidget *scroller = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller),
                                  GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller),
                                 choosing->box);
  gtk_widget_set_vexpand (scroller, TRUE);
  cw_form_dialog_append (choosing->dialog, scroller);
}

GtkWindow *
cw_library_dialog_open (GtkWindow *parent, CwUnits units,
                        CwBuildupChosenFunc chosen, gpointer data,
                        GDestroyNotify free_data)
{
  Choosing *choosing = g_new0 (Choosing, 1);
  choosing->chosen = chosen;
  choosing->data = data;
  choosing->free_data = free_data;
  choosing->entries = cw_buildup_library ();
  g_ptr_array_sort_with_data (choosing->entries, compare,
                              GINT_TO_POINTER (units));
  choosing->dialog = cw_form_dialog_new (parent, _("Buildups of the library"),
                                         _("_Take it into the project"));
  g_object_set_data_full (G_OBJECT (choosing->dialog), "choosing", choosing,
                          (GDestroyNotify) choosing_free);
  gtk_window_set_default_size (GTK_WINDOW (choosing->dialog), 540, 600);
  cw_form_dialog_add_words (
      choosing->dialog,
      _("Generic buildups to begin with. What is taken is copied and can be "
        "changed; local codes, the maker’s figures and the wind design "
        "govern."));
  fill (choosing);
  g_signal_connect_swapped (choosing->dialog, "taken", G_CALLBACK (taken),
                            choosing);
  gtk_window_present (GTK_WINDOW (choosing->dialog));
  gtk_widget_grab_focus (GTK_WIDGET (
      gtk_list_box_get_selected_row (GTK_LIST_BOX (choosing->box))));
  return GTK_WINDOW (choosing->dialog);
}
