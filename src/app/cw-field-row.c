/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-field-row.h"

#include "cw-field-text.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

/* Long enough that "1200" is not tried as "1" and "12" on the way. */
#define REST_MS 350

struct _CwFieldRow
{
  GtkWidget parent;
  const CwField *field;
  CwTextStyle style;
  GtkWidget *line, *label, *editor, *unit, *back, *trouble;
  GtkWidget *help;        /* (nullable): shown below, else a tooltip */
  GStrv ids;              /* of a reference's targets */
  gboolean showing;       /* a value is being shown, not given */
  gboolean dirty;         /* typed and not given yet */
  gboolean is_mixed;
  guint rest;             /* source: typing came to rest */
};

G_DEFINE_FINAL_TYPE (CwFieldRow, cw_field_row, GTK_TYPE_WIDGET)

enum { NUMBER_GIVEN, TEXT_GIVEN, TAKEN_BACK, LEFT, N_SIGNALS };
static guint signals[N_SIGNALS];

const CwField *
cw_field_row_field (CwFieldRow *row)
{
  g_return_val_if_fail (CW_IS_FIELD_ROW (row), NULL);
  return row->field;
}

void
cw_field_row_set_trouble (CwFieldRow *row, const char *trouble)
{
  g_return_if_fail (CW_IS_FIELD_ROW (row));
  gtk_label_set_text (GTK_LABEL (row->trouble), trouble ? trouble : "");
  gtk_widget_set_visible (row->trouble, trouble != NULL);
  if (trouble)
    gtk_widget_add_css_class (row->editor, "cw-wrong");
  else
    gtk_widget_remove_css_class (row->editor, "cw-wrong");
  gtk_accessible_update_state (GTK_ACCESSIBLE (row->editor),
                               GTK_ACCESSIBLE_STATE_INVALID,
                               trouble ? GTK_ACCESSIBLE_INVALID_TRUE
                                       : GTK_ACCESSIBLE_INVALID_FALSE,
                               -1);
}

static void
give_typed (CwFieldRow *row)
{
  g_clear_handle_id (&row->rest, g_source_remove);
  if (!row->dirty)
    return;
  row->dirty = FALSE;
  const char *text = gtk_editable_get_text (GTK_EDITABLE (row->editor));
  if (cw_field_is_text (row->field))
    {
      g_signal_emit (row, signals[TEXT_GIVEN], 0, text);
      return;
    }
  g_autoptr (GError) error = NULL;
  gint64 value;
  if (cw_field_text_parse (row->field, text, &row->style, &value, &error))
    {
      cw_field_row_set_trouble (row, NULL);
      g_signal_emit (row, signals[NUMBER_GIVEN], 0, value);
    }
  else
    {
      g_autofree char *trouble = cw_field_text_pointed (text, error);
      cw_field_row_set_trouble (row, trouble);
    }
}

static gboolean
typing_rests (gpointer data)
{
  CwFieldRow *row = data;
  row->rest = 0;
  give_typed (row);
  return G_SOURCE_REMOVE;
}

static void
typed (CwFieldRow *row)
{
  if (row->showing)
    return;
  row->dirty = TRUE;
  g_clear_handle_id (&row->rest, g_source_remove);
  row->rest = g_timeout_add (REST_MS, typing_rests, row);
}

static void
left (CwFieldRow *row)
{
  give_typed (row);
  g_signal_emit (row, signals[LEFT], 0);
}

static void
chosen (CwFieldRow *row)
{
  guint index = gtk_drop_down_get_selected (GTK_DROP_DOWN (row->editor));
  if (row->showing || index == GTK_INVALID_LIST_POSITION)
    return;
  if (row->field->kind == CW_FIELD_REFERENCE)
    g_signal_emit (row, signals[TEXT_GIVEN], 0, row->ids[index]);
  else
    g_signal_emit (row, signals[NUMBER_GIVEN], 0,
                   row->field->choices[index].value);
  g_signal_emit (row, signals[LEFT], 0);
}

static void
switched (CwFieldRow *row)
{
  if (row->showing)
    return;
  gint64 value = gtk_switch_get_active (GTK_SWITCH (row->editor));
  g_signal_emit (row, signals[NUMBER_GIVEN], 0, value);
  g_signal_emit (row, signals[LEFT], 0);
}

static void
take_back (CwFieldRow *row)
{
  g_signal_emit (row, signals[TAKEN_BACK], 0);
}

static GtkWidget *
new_choice_editor (CwFieldRow *row)
{
  g_autoptr (GtkStringList) labels = gtk_string_list_new (NULL);
  for (const CwChoice *choice = row->field->choices;
       choice && choice->name; choice++)
    gtk_string_list_append (labels, _(choice->label));
  GtkWidget *editor = gtk_drop_down_new (
      G_LIST_MODEL (g_steal_pointer (&labels)), NULL);
  g_signal_connect_swapped (editor, "notify::selected", G_CALLBACK (chosen),
                            row);
  return editor;
}

static GtkWidget *
new_switch_editor (CwFieldRow *row)
{
  GtkWidget *editor = gtk_switch_new ();
  gtk_widget_set_halign (editor, GTK_ALIGN_END);
  gtk_widget_set_valign (editor, GTK_ALIGN_CENTER);
  g_signal_connect_swapped (editor, "notify::active", G_CALLBACK (switched),
                            row);
  return editor;
}

static GtkWidget *
new_entry_editor (CwFieldRow *row)
{
  GtkWidget *editor = gtk_entry_new ();
  gtk_editable_set_width_chars (GTK_EDITABLE (editor), 6);
  if (!cw_field_is_text (row->field))
    {
      gtk_editable_set_alignment (GTK_EDITABLE (editor), 1);
      gtk_widget_add_css_class (editor, "cw-figure");
      cw_widget_keep_direction (editor);
    }
  GtkEventController *focus = gtk_event_controller_focus_new ();
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (left), row);
  gtk_widget_add_controller (editor, focus);
  g_signal_connect_swapped (editor, "changed", G_CALLBACK (typed), row);
  g_signal_connect_swapped (editor, "activate", G_CALLBACK (left), row);
  return editor;
}

static GtkWidget *
new_editor (CwFieldRow *row)
{
  switch (row->field->kind)
    {
    case CW_FIELD_CHOICE:
    case CW_FIELD_REFERENCE:
      return new_choice_editor (row);
    case CW_FIELD_YES_NO:
      return new_switch_editor (row);
    case CW_FIELD_ID:
      {
        GtkWidget *label = gtk_label_new (NULL);
        gtk_label_set_xalign (GTK_LABEL (label), 1);
        gtk_label_set_selectable (GTK_LABEL (label), TRUE);
        gtk_widget_add_css_class (label, "cw-dim");
        return label;
      }
    default:
      return new_entry_editor (row);
    }
}

static void
show_in_list (CwFieldRow *row, guint index)
{
  gtk_drop_down_set_selected (GTK_DROP_DOWN (row->editor), index);
}

static void
show_in_entry (CwFieldRow *row, const char *text, const char *placeholder)
{
  if (row->dirty)
    return;
  if (g_strcmp0 (gtk_editable_get_text (GTK_EDITABLE (row->editor)), text)
      != 0)
    gtk_editable_set_text (GTK_EDITABLE (row->editor), text);
  gtk_entry_set_placeholder_text (GTK_ENTRY (row->editor), placeholder);
  cw_field_row_set_trouble (row, NULL);
}

static guint
choice_index (const CwField *field, gint64 value)
{
  for (guint i = 0; field->choices[i].name; i++)
    if (field->choices[i].value == value)
      return i;
  return GTK_INVALID_LIST_POSITION;
}

/* While the user is in the entry, what he typed means the same and stays. */
static gboolean
says_already (CwFieldRow *row, gint64 value)
{
  gint64 typed_value;
  return gtk_widget_get_focus_child (row->line) == row->editor
         && cw_field_text_parse (
             row->field, gtk_editable_get_text (GTK_EDITABLE (row->editor)),
             &row->style, &typed_value, NULL)
         && typed_value == value;
}

void
cw_field_row_show_number (CwFieldRow *row, gint64 value)
{
  g_return_if_fail (CW_IS_FIELD_ROW (row));
  row->showing = TRUE;
  if (row->field->kind == CW_FIELD_CHOICE)
    show_in_list (row, choice_index (row->field, value));
  else if (row->field->kind == CW_FIELD_YES_NO)
    gtk_switch_set_active (GTK_SWITCH (row->editor), value != 0);
  else if (!says_already (row, value))
    {
      g_autofree char *text
          = cw_field_text_format (row->field, value, &row->style);
      show_in_entry (row, text, NULL);
    }
  row->showing = FALSE;
}

static void
show_target (CwFieldRow *row, const char *id)
{
  guint found = GTK_INVALID_LIST_POSITION;
  for (guint i = 0; row->ids && row->ids[i]; i++)
    if (g_strcmp0 (row->ids[i], id) == 0)
      found = i;
  show_in_list (row, found);
}

void
cw_field_row_show_text (CwFieldRow *row, const char *text)
{
  g_return_if_fail (CW_IS_FIELD_ROW (row));
  row->showing = TRUE;
  if (row->field->kind == CW_FIELD_REFERENCE)
    show_target (row, text);
  else if (row->field->kind == CW_FIELD_ID)
    gtk_label_set_text (GTK_LABEL (row->editor), text);
  else
    show_in_entry (row, text, NULL);
  row->showing = FALSE;
}

void
cw_field_row_show_mixed (CwFieldRow *row)
{
  g_return_if_fail (CW_IS_FIELD_ROW (row));
  row->showing = TRUE;
  if (GTK_IS_DROP_DOWN (row->editor))
    show_in_list (row, GTK_INVALID_LIST_POSITION);
  else if (GTK_IS_LABEL (row->editor))
    gtk_label_set_text (GTK_LABEL (row->editor), _("several"));
  else if (GTK_IS_ENTRY (row->editor))
    show_in_entry (row, "", _("several values"));
  row->showing = FALSE;
}

void
cw_field_row_set_origin (CwFieldRow *row, gboolean from_elsewhere,
                         gboolean overrides)
{
  g_return_if_fail (CW_IS_FIELD_ROW (row));
  gtk_widget_set_visible (row->back, overrides);
  if (from_elsewhere)
    gtk_widget_add_css_class (row->editor, "cw-dim");
  else
    gtk_widget_remove_css_class (row->editor, "cw-dim");
}

void
cw_field_row_set_targets (CwFieldRow *row, const char *const *ids,
                          const char *const *labels)
{
  g_return_if_fail (CW_IS_FIELD_ROW (row));
  g_return_if_fail (row->field->kind == CW_FIELD_REFERENCE);
  row->showing = TRUE;
  g_strfreev (row->ids);
  row->ids = g_strdupv ((GStrv) ids);
  g_autoptr (GtkStringList) list = gtk_string_list_new (labels);
  gtk_drop_down_set_model (GTK_DROP_DOWN (row->editor), G_LIST_MODEL (list));
  row->showing = FALSE;
}

static void
add_label (CwFieldRow *row)
{
  row->label = gtk_label_new (_(row->field->label));
  gtk_label_set_xalign (GTK_LABEL (row->label), 0);
  gtk_label_set_wrap (GTK_LABEL (row->label), TRUE);
  gtk_widget_set_hexpand (row->label, TRUE);
  gtk_widget_add_css_class (row->label, "cw-dim");
  gtk_box_append (GTK_BOX (row->line), row->label);
}

static void
add_back_button (CwFieldRow *row)
{
  row->back = gtk_button_new_from_icon_name ("cw-from-mark-symbolic");
  gtk_widget_set_tooltip_text (row->back, _("Take this from the mark again"));
  gtk_accessible_update_property (
      GTK_ACCESSIBLE (row->back), GTK_ACCESSIBLE_PROPERTY_LABEL,
      _("Take this from the mark again"), -1);
  gtk_widget_set_visible (row->back, FALSE);
  g_signal_connect_swapped (row->back, "clicked", G_CALLBACK (take_back),
                            row);
  gtk_box_append (GTK_BOX (row->line), row->back);
}

static void
add_unit (CwFieldRow *row)
{
  row->unit = gtk_label_new (cw_field_text_unit (row->field, &row->style));
  gtk_label_set_xalign (GTK_LABEL (row->unit), 0);
  gtk_label_set_width_chars (GTK_LABEL (row->unit), 4);
  gtk_widget_add_css_class (row->unit, "cw-dim");
  gtk_box_append (GTK_BOX (row->line), row->unit);
}

/* What it is for and its default: as a tooltip, and said by a reader. */
static void
add_help (CwFieldRow *row)
{
  g_autofree char *help = cw_field_text_help (row->field, &row->style);
  if (!*help)
    return;
  gtk_widget_set_tooltip_text (GTK_WIDGET (row), help);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row->editor),
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, help,
                                  -1);
}

void
cw_field_row_show_help (CwFieldRow *row)
{
  g_return_if_fail (CW_IS_FIELD_ROW (row));
  const char *help = gtk_widget_get_tooltip_text (GTK_WIDGET (row));
  if (row->help || !help)
    return;
  row->help = gtk_label_new (help);
  gtk_label_set_xalign (GTK_LABEL (row->help), 0);
  gtk_label_set_wrap (GTK_LABEL (row->help), TRUE);
  gtk_widget_add_css_class (row->help, "cw-dim");
  gtk_widget_add_css_class (row->help, "cw-small");
  gtk_widget_set_parent (row->help, GTK_WIDGET (row));
  gtk_widget_remove_css_class (row->label, "cw-dim");
  /* Texts of a form begin under one another, whatever their labels. */
  gtk_box_set_homogeneous (GTK_BOX (row->line),
                           cw_field_is_text (row->field));
  gtk_widget_set_has_tooltip (GTK_WIDGET (row), FALSE);
}

static void
build (CwFieldRow *row)
{
  row->line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  gtk_widget_set_parent (row->line, GTK_WIDGET (row));
  add_label (row);
  add_back_button (row);
  row->editor = new_editor (row);
  gtk_widget_set_size_request (row->editor, 96, -1);
  gtk_box_append (GTK_BOX (row->line), row->editor);
  if (!cw_field_is_text (row->field) && GTK_IS_ENTRY (row->editor))
    add_unit (row);
  else
    gtk_widget_set_hexpand (row->editor, cw_field_is_text (row->field));

  row->trouble = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (row->trouble), 1);
  gtk_label_set_wrap (GTK_LABEL (row->trouble), TRUE);
  gtk_widget_add_css_class (row->trouble, "cw-trouble");
  gtk_widget_add_css_class (row->trouble, "cw-small");
  gtk_widget_set_visible (row->trouble, FALSE);
  gtk_widget_set_parent (row->trouble, GTK_WIDGET (row));

  add_help (row);
  gtk_accessible_update_property (GTK_ACCESSIBLE (row->editor),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _(row->field->label), -1);
}

static void
cw_field_row_dispose (GObject *object)
{
  CwFieldRow *row = CW_FIELD_ROW (object);
  g_clear_handle_id (&row->rest, g_source_remove);
  g_clear_pointer (&row->line, gtk_widget_unparent);
  g_clear_pointer (&row->trouble, gtk_widget_unparent);
  g_clear_pointer (&row->help, gtk_widget_unparent);
  g_clear_pointer (&row->ids, g_strfreev);
  G_OBJECT_CLASS (cw_field_row_parent_class)->dispose (object);
}

static void
add_signals (void)
{
  signals[NUMBER_GIVEN]
      = g_signal_new ("number-given", CW_TYPE_FIELD_ROW, G_SIGNAL_RUN_LAST, 0,
                      NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_INT64);
  signals[TEXT_GIVEN]
      = g_signal_new ("text-given", CW_TYPE_FIELD_ROW, G_SIGNAL_RUN_LAST, 0,
                      NULL, NULL, NULL, G_TYPE_NONE, 1, G_TYPE_STRING);
  signals[TAKEN_BACK]
      = g_signal_new ("taken-back", CW_TYPE_FIELD_ROW, G_SIGNAL_RUN_LAST, 0,
                      NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[LEFT]
      = g_signal_new ("left", CW_TYPE_FIELD_ROW, G_SIGNAL_RUN_LAST, 0, NULL,
                      NULL, NULL, G_TYPE_NONE, 0);
}

static void
cw_field_row_class_init (CwFieldRowClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_field_row_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (class), "field-row");
  add_signals ();
}

static void
cw_field_row_init (CwFieldRow *row)
{
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (row))),
      GTK_ORIENTATION_VERTICAL);
}

GtkWidget *
cw_field_row_new (const CwField *field, const CwTextStyle *style)
{
  CwFieldRow *row = g_object_new (CW_TYPE_FIELD_ROW, NULL);
  row->field = field;
  row->style = *style;
  build (row);
  return GTK_WIDGET (row);
}
