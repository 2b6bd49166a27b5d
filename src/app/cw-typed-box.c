/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-typed-box.h"

#include "cw-field-text.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwTypedBox
{
  GtkWidget parent;
  CwBoard *board;         /* borrowed */
  GtkWidget *entry, *trouble;
};

G_DEFINE_FINAL_TYPE (CwTypedBox, cw_typed_box, GTK_TYPE_WIDGET)

static void
show_trouble (CwTypedBox *box, const char *trouble)
{
  gtk_label_set_text (GTK_LABEL (box->trouble), trouble ? trouble : "");
  gtk_widget_set_visible (box->trouble, trouble != NULL);
  if (trouble)
    gtk_widget_add_css_class (box->entry, "cw-wrong");
  else
    gtk_widget_remove_css_class (box->entry, "cw-wrong");
}

void
cw_typed_box_open (CwTypedBox *box, const char *text)
{
  g_return_if_fail (CW_IS_TYPED_BOX (box));
  show_trouble (box, NULL);
  gtk_widget_set_visible (GTK_WIDGET (box), TRUE);
  gtk_editable_set_text (GTK_EDITABLE (box->entry), text);
  gtk_widget_grab_focus (box->entry);
  gtk_editable_set_position (GTK_EDITABLE (box->entry), -1);
}

void
cw_typed_box_close (CwTypedBox *box)
{
  g_return_if_fail (CW_IS_TYPED_BOX (box));
  if (!gtk_widget_get_visible (GTK_WIDGET (box)))
    return;
  gtk_widget_set_visible (GTK_WIDGET (box), FALSE);
  gtk_widget_grab_focus (GTK_WIDGET (box->board));
}

static void
give (CwTypedBox *box)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (box->entry));
  g_autoptr (GError) error = NULL;
  if (cw_board_enter_text (box->board, text, &error))
    {
      cw_typed_box_close (box);
      return;
    }
  g_autofree char *trouble = cw_field_text_pointed (text, error);
  show_trouble (box, trouble);
}

static gboolean
is_sign (gunichar letter)
{
  return letter == 'x' || letter == 'X' || letter == '*' || letter == 0xd7;
}

/* The characters before the sign that is the next one from @at on. */
static int
end_of_part (const char *text, int at)
{
  const char *place = g_utf8_offset_to_pointer (text, at);
  for (; *place && !is_sign (g_utf8_get_char (place)); at++)
    place = g_utf8_next_char (place);
  return at;
}

/* Round the sizes that stand there; after a single one comes a second. */
static void
go_round (CwTypedBox *box)
{
  GtkEditable *entry = GTK_EDITABLE (box->entry);
  const char *text = gtk_editable_get_text (entry);
  int length = (int) g_utf8_strlen (text, -1);
  int end = end_of_part (text, gtk_editable_get_position (entry));
  if (end == length && end_of_part (text, 0) == length)
    {
      gtk_editable_insert_text (entry, " × ", -1, &length);
      gtk_editable_set_position (entry, -1);
      return;
    }
  int start = end == length ? 0 : end + 1;
  while (g_utf8_get_char (g_utf8_offset_to_pointer (text, start)) == ' ')
    start++;
  gtk_editable_select_region (entry, start, end_of_part (text, start));
}

static gboolean
key_pressed (CwTypedBox *box, guint key)
{
  if (key == GDK_KEY_Tab || key == GDK_KEY_ISO_Left_Tab)
    {
      go_round (box);
      return TRUE;
    }
  if (key != GDK_KEY_Escape)
    return FALSE;
  cw_typed_box_close (box);
  return TRUE;
}

static void
cw_typed_box_dispose (GObject *object)
{
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))))
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (cw_typed_box_parent_class)->dispose (object);
}

static void
cw_typed_box_class_init (CwTypedBoxClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_typed_box_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
}

static void
add_entry (CwTypedBox *box)
{
  box->entry = gtk_entry_new ();
  gtk_editable_set_width_chars (GTK_EDITABLE (box->entry), 14);
  cw_widget_set_name (box->entry, _("Length, size or place"));
  g_signal_connect_swapped (box->entry, "activate", G_CALLBACK (give), box);
  GtkEventController *keys = gtk_event_controller_key_new ();
  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (key_pressed),
                            box);
  gtk_widget_add_controller (box->entry, keys);
  gtk_widget_set_parent (box->entry, GTK_WIDGET (box));
}

static void
cw_typed_box_init (CwTypedBox *box)
{
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (box))),
      GTK_ORIENTATION_VERTICAL);
  gtk_widget_add_css_class (GTK_WIDGET (box), "cw-at-pointer");
  gtk_widget_set_visible (GTK_WIDGET (box), FALSE);
  gtk_widget_set_halign (GTK_WIDGET (box), GTK_ALIGN_START);
  gtk_widget_set_valign (GTK_WIDGET (box), GTK_ALIGN_START);
  add_entry (box);
  box->trouble = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (box->trouble), 0);
  gtk_label_set_wrap (GTK_LABEL (box->trouble), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (box->trouble), 36);
  gtk_widget_add_css_class (box->trouble, "cw-trouble");
  gtk_widget_set_parent (box->trouble, GTK_WIDGET (box));
}

GtkWidget *
cw_typed_box_new (CwBoard *board)
{
  CwTypedBox *box = g_object_new (CW_TYPE_TYPED_BOX, NULL);
  box->board = board;
  return GTK_WIDGET (box);
}
