/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-typed-box.h"

#include <string.h>

#include "cw-field-text.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwTypedBox
{
  GtkWidget parent;
  CwBoard *board;         /* borrowed */
  GtkWidget *rows[2], *note, *trouble;
  GtkWidget *entries[CW_TYPED_FIELDS_MOST];
  guint n;
};

G_DEFINE_FINAL_TYPE (CwTypedBox, cw_typed_box, GTK_TYPE_WIDGET)

/* In the field with that number; NULL: there is none. */
static void
show_trouble (CwTypedBox *box, guint wrong, const char *trouble)
{
  gtk_label_set_text (GTK_LABEL (box->trouble), trouble ? trouble : "");
  gtk_widget_set_visible (box->trouble, trouble != NULL);
  for (guint i = 0; i < box->n; i++)
    if (trouble && i == wrong)
      gtk_widget_add_css_class (box->entries[i], "cw-wrong");
    else
      gtk_widget_remove_css_class (box->entries[i], "cw-wrong");
}

/* What each is as the pointer gives it stands where nothing is typed. */
static void
show_now (CwTypedBox *box)
{
  CwTypedField fields[CW_TYPED_FIELDS_MOST];
  guint n = cw_board_get_fields (box->board, fields);
  for (guint i = 0; i < MIN (n, box->n); i++)
    {
      g_autofree char *now
          = cw_typed_field_text (&fields[i], cw_board_get_text_style (box->board));
      gtk_entry_set_placeholder_text (GTK_ENTRY (box->entries[i]), now);
    }
}

static void
pointer_moved (CwTypedBox *box)
{
  if (gtk_widget_get_visible (GTK_WIDGET (box)))
    show_now (box);
}

void
cw_typed_box_close (CwTypedBox *box)
{
  g_return_if_fail (CW_IS_TYPED_BOX (box));
  if (!gtk_widget_get_visible (GTK_WIDGET (box)))
    return;
  cw_board_end_typing (box->board);
  gtk_widget_set_visible (GTK_WIDGET (box), FALSE);
  gtk_widget_grab_focus (GTK_WIDGET (box->board));
}

/* The cursor stands at the character that cannot be read. */
static void
point_at (CwTypedBox *box, guint wrong, const GError *error)
{
  GtkEditable *entry = GTK_EDITABLE (box->entries[wrong]);
  const char *text = gtk_editable_get_text (entry);
  gsize at = MIN (cw_text_error_offset (error), strlen (text));
  gtk_widget_grab_focus (box->entries[wrong]);
  gtk_editable_set_position (entry,
                             (int) g_utf8_strlen (text, (gssize) at));
}

static void
give (CwTypedBox *box)
{
  const char *texts[CW_TYPED_FIELDS_MOST];
  g_autoptr (GError) error = NULL;
  guint wrong = 0;
  for (guint i = 0; i < box->n; i++)
    texts[i] = gtk_editable_get_text (GTK_EDITABLE (box->entries[i]));
  if (cw_board_enter_fields (box->board, texts, box->n, &wrong, &error))
    {
      cw_typed_box_close (box);
      return;
    }
  wrong = MIN (wrong, box->n - 1);
  g_autofree char *trouble = cw_field_text_pointed (texts[wrong], error);
  show_trouble (box, wrong, trouble);
  point_at (box, wrong, error);
}

static int
focused (CwTypedBox *box)
{
  for (guint i = 0; i < box->n; i++)
    if (gtk_widget_get_focus_child (
            gtk_widget_get_parent (box->entries[i]))
        == box->entries[i]
        && gtk_widget_get_state_flags (box->entries[i])
               & GTK_STATE_FLAG_FOCUS_WITHIN)
      return (int) i;
  return 0;
}

static void
go_round (CwTypedBox *box, int way)
{
  int next = (focused (box) + way + (int) box->n) % (int) box->n;
  gtk_widget_grab_focus (box->entries[next]);
}

static gboolean
key_pressed (CwTypedBox *box, guint key, guint code, GdkModifierType state)
{
  if (key == GDK_KEY_Tab || key == GDK_KEY_ISO_Left_Tab)
    {
      go_round (box, state & GDK_SHIFT_MASK ? -1 : 1);
      return TRUE;
    }
  if (key == GDK_KEY_Return || key == GDK_KEY_KP_Enter)
    {
      cw_board_set_keeps_on (box->board, state & GDK_SHIFT_MASK);
      give (box);
      return TRUE;
    }
  if (key != GDK_KEY_Escape)
    return FALSE;
  cw_typed_box_close (box);
  return TRUE;
}

static GtkWidget *
new_entry (CwTypedBox *box, const char *name)
{
  GtkWidget *entry = gtk_entry_new ();
  gtk_editable_set_width_chars (GTK_EDITABLE (entry), 11);
  gtk_editable_set_max_width_chars (GTK_EDITABLE (entry), 11);
  cw_widget_set_name (entry, name);
  g_signal_connect_swapped (entry, "activate", G_CALLBACK (give), box);
  return entry;
}

static GtkWidget *
new_column (const char *title, GtkWidget *entry)
{
  GtkWidget *column = gtk_box_new (GTK_ORIENTATION_VERTICAL, 3);
  GtkWidget *label = gtk_label_new (title);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, "cw-dim");
  gtk_box_append (GTK_BOX (column), label);
  gtk_box_append (GTK_BOX (column), entry);
  return column;
}

static void
clear_row (GtkWidget *row)
{
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (row)))
    gtk_box_remove (GTK_BOX (row), child);
}

/* Sizes stand in the first row, along and up in the second. */
static void
lay_out (CwTypedBox *box)
{
  CwTypedField fields[CW_TYPED_FIELDS_MOST];
  gboolean offsets = FALSE;
  clear_row (box->rows[0]);
  clear_row (box->rows[1]);
  box->n = cw_board_get_fields (box->board, fields);
  if (box->n == 0)
    {
      fields[0] = (CwTypedField) { N_("Length, size or place"), CW_TYPED_SIZE,
                                   FALSE, 0, 0 };
      box->n = 1;
    }
  for (guint i = 0; i < box->n; i++)
    {
      const gboolean offset = fields[i].kind == CW_TYPED_OFFSET;
      box->entries[i] = new_entry (box, _(fields[i].label));
      gtk_box_append (GTK_BOX (box->rows[offset]),
                      new_column (_(fields[i].label), box->entries[i]));
      offsets |= offset;
    }
  gtk_widget_set_visible (box->rows[0],
                          fields[0].kind != CW_TYPED_OFFSET);
  gtk_widget_set_visible (box->rows[1], offsets);
  gtk_widget_set_visible (box->note, offsets);
}

void
cw_typed_box_open (CwTypedBox *box, const char *text)
{
  g_return_if_fail (CW_IS_TYPED_BOX (box));
  cw_board_begin_typing (box->board);
  lay_out (box);
  show_trouble (box, 0, NULL);
  show_now (box);
  gtk_widget_set_visible (GTK_WIDGET (box), TRUE);
  gtk_editable_set_text (GTK_EDITABLE (box->entries[0]), text);
  gtk_widget_grab_focus (box->entries[0]);
  gtk_editable_set_position (GTK_EDITABLE (box->entries[0]), -1);
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
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class),
                                        GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
add_row (CwTypedBox *box, guint row)
{
  box->rows[row] = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  gtk_widget_set_parent (box->rows[row], GTK_WIDGET (box));
}

static GtkWidget *
add_label (CwTypedBox *box, const char *text, const char *class)
{
  GtkWidget *label = gtk_label_new (text);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 36);
  gtk_widget_add_css_class (label, class);
  gtk_widget_set_parent (label, GTK_WIDGET (box));
  return label;
}

static void
listen (CwTypedBox *box)
{
  GtkEventController *keys = gtk_event_controller_key_new ();
  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (key_pressed),
                            box);
  gtk_widget_add_controller (GTK_WIDGET (box), keys);
}

static void
cw_typed_box_init (CwTypedBox *box)
{
  GtkBoxLayout *layout
      = GTK_BOX_LAYOUT (gtk_widget_get_layout_manager (GTK_WIDGET (box)));
  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout),
                                  GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (layout, 6);
  gtk_widget_add_css_class (GTK_WIDGET (box), "cw-at-pointer");
  gtk_widget_set_visible (GTK_WIDGET (box), FALSE);
  gtk_widget_set_halign (GTK_WIDGET (box), GTK_ALIGN_START);
  gtk_widget_set_valign (GTK_WIDGET (box), GTK_ALIGN_START);
  add_row (box, 0);
  add_row (box, 1);
  box->note = add_label (box, _("Along and up from the crossed square; O "
                                "measures from where the pointer is"),
                         "cw-dim");
  box->trouble = add_label (box, NULL, "cw-trouble");
  cw_widget_set_name (GTK_WIDGET (box), _("Typed at the pointer"));
  listen (box);
}

GtkWidget *
cw_typed_box_new (CwBoard *board)
{
  CwTypedBox *box = g_object_new (CW_TYPE_TYPED_BOX, NULL);
  box->board = board;
  g_signal_connect_object (board, "pointer-moved", G_CALLBACK (pointer_moved),
                           box, G_CONNECT_SWAPPED);
  return GTK_WIDGET (box);
}
