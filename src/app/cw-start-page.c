/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-start-page.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-recent.h"

static GtkWidget *
new_text (const char *text, const char *style)
{
  GtkWidget *label = gtk_label_new (text);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_natural_wrap_mode (GTK_LABEL (label), GTK_NATURAL_WRAP_NONE);
  gtk_widget_add_css_class (label, style);
  return label;
}

/* A way to begin: a picture, what it is, what comes of it. */
static void
add_way (GtkWidget *box, const char *icon, const char *title,
         const char *words, const char *action)
{
  GtkWidget *button = gtk_button_new ();
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 18);
  GtkWidget *texts = gtk_box_new (GTK_ORIENTATION_VERTICAL, 3);
  GtkWidget *image = gtk_image_new_from_icon_name (icon);
  gtk_image_set_pixel_size (GTK_IMAGE (image), 36);
  gtk_widget_add_css_class (image, "cw-accent");
  gtk_box_append (GTK_BOX (texts), new_text (title, "cw-heading"));
  gtk_box_append (GTK_BOX (texts), new_text (words, "cw-dim"));
  gtk_box_append (GTK_BOX (line), image);
  gtk_box_append (GTK_BOX (line), texts);
  gtk_button_set_child (GTK_BUTTON (button), line);
  gtk_widget_add_css_class (button, "cw-way");
  cw_widget_set_name (button, title);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  gtk_box_append (GTK_BOX (box), button);
}

static void
add_ways (GtkWidget *box)
{
  add_way (box, "cw-sheet-symbolic", _("From a plan sheet"),
           _("Open a PDF or a picture, set its scale and trace the walls."),
           "win.add-sheet");
  add_way (box, "cw-typed-symbolic", _("From typed sizes"),
           _("Type how large a house or a wall is, then place what is in "
             "it."),
           "win.type-sizes");
  add_way (box, "cw-house-symbolic", _("From the example"),
           _("Look round a small house that is drawn already."),
           "win.open-example");
  add_way (box, "cw-open-symbolic", _("Go on with a project"),
           _("Open a project that was saved before."), "win.open");
}

static void
recent_changed (GMenuModel *recent, int position, int removed, int added,
                GtkWidget *box)
{
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (box)))
    gtk_box_remove (GTK_BOX (box), child);
  int n = g_menu_model_get_n_items (recent);
  if (n > 0)
    gtk_box_append (GTK_BOX (box), new_text (_("Opened lately"), "cw-dim"));
  for (int i = 0; i < n; i++)
    {
      g_autofree char *label = NULL;
      g_autoptr (GVariant) target = g_menu_model_get_item_attribute_value (
          recent, i, G_MENU_ATTRIBUTE_TARGET, NULL);
      g_menu_model_get_item_attribute (recent, i, G_MENU_ATTRIBUTE_LABEL,
                                       "s", &label);
      GtkWidget *button = gtk_button_new_with_label (label);
      gtk_widget_set_halign (button, GTK_ALIGN_START);
      gtk_widget_add_css_class (button, "cw-recent");
      gtk_actionable_set_action_name (GTK_ACTIONABLE (button),
                                      "app.open-recent");
      gtk_actionable_set_action_target_value (GTK_ACTIONABLE (button),
                                              target);
      gtk_box_append (GTK_BOX (box), button);
    }
}

static void
add_recent (GtkWidget *box)
{
  GMenuModel *recent = cw_recent_menu_new ();
  GtkWidget *list = gtk_box_new (GTK_ORIENTATION_VERTICAL, 3);
  gtk_box_append (GTK_BOX (box), list);
  g_object_set_data_full (G_OBJECT (list), "recent", recent, g_object_unref);
  g_signal_connect_object (recent, "items-changed",
                           G_CALLBACK (recent_changed), list, 0);
  recent_changed (recent, 0, 0, 0, list);
}

GtkWidget *
cw_start_page_new (void)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  gtk_widget_set_halign (box, GTK_ALIGN_CENTER);
  gtk_widget_set_valign (box, GTK_ALIGN_CENTER);
  gtk_widget_add_css_class (box, "cw-start");
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller),
                                  GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_box_append (GTK_BOX (box), new_text (_("Begin a takeoff"), "cw-title"));
  add_ways (box);
  add_recent (box);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), box);
  return scroller;
}
