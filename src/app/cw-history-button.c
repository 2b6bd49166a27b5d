/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-history-button.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"

/* As many as anybody looks through. */
#define MOST 200

static GtkWidget *
new_row (CwDocument *document, guint state)
{
  guint present = cw_document_present_state (document);
  const char *name = cw_document_state_name (document, state);
  GtkWidget *label = gtk_label_new (name ? name : _("As it was opened"));
  GtkWidget *row = gtk_list_box_row_new ();
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  if (state > present)
    gtk_widget_add_css_class (label, "cw-dim");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), label);
  g_object_set_data (G_OBJECT (row), "state", GUINT_TO_POINTER (state));
  return row;
}

static GtkWidget *
new_list (CwDocument *document)
{
  GtkWidget *list = gtk_list_box_new ();
  guint n = cw_document_n_states (document);
  guint present = cw_document_present_state (document);
  cw_widget_set_name (list, _("Steps, the latest first"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list),
                                   GTK_SELECTION_BROWSE);
  for (guint i = 0; i < MIN (n, MOST); i++)
    {
      guint state = n - 1 - i;
      GtkWidget *row = new_row (document, state);
      gtk_list_box_append (GTK_LIST_BOX (list), row);
      if (state == present)
        gtk_list_box_select_row (GTK_LIST_BOX (list),
                                 GTK_LIST_BOX_ROW (row));
    }
  return list;
}

static void
activated (GtkListBox *list, GtkListBoxRow *row, GtkMenuButton *button)
{
  int state
      = GPOINTER_TO_INT (g_object_get_data (G_OBJECT (row), "state"));
  gtk_menu_button_popdown (button);
  gtk_widget_activate_action (GTK_WIDGET (button), "win.go-to-state", "i",
                              state);
}

static void
fill (GtkMenuButton *button, gpointer data)
{
  GtkWidget *popover = gtk_popover_new ();
  GtkWidget *scroller = gtk_scrolled_window_new ();
  GtkWidget *list = new_list (data);
  g_signal_connect_object (list, "row-activated", G_CALLBACK (activated),
                           button, 0);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller),
                                  GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (
      GTK_SCROLLED_WINDOW (scroller), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroller),
                                              420);
  gtk_scrolled_window_set_min_content_width (GTK_SCROLLED_WINDOW (scroller),
                                             240);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), list);
  gtk_popover_set_child (GTK_POPOVER (popover), scroller);
  gtk_menu_button_set_popover (button, popover);
}

void
cw_history_button_follow (GtkMenuButton *button, CwDocument *document)
{
  g_return_if_fail (GTK_IS_MENU_BUTTON (button));
  g_return_if_fail (CW_IS_DOCUMENT (document));
  gtk_menu_button_set_create_popup_func (button, fill,
                                         g_object_ref (document),
                                         g_object_unref);
}
