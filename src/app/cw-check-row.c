/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-check-row.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwCheckRow
{
  GtkListBoxRow parent;
  const CwCheck *check;
};

G_DEFINE_FINAL_TYPE (CwCheckRow, cw_check_row, GTK_TYPE_LIST_BOX_ROW)

enum { WAIVE, N_SIGNALS };
static guint signals[N_SIGNALS];

const CwCheck *
cw_check_row_check (CwCheckRow *row)
{
  g_return_val_if_fail (CW_IS_CHECK_ROW (row), NULL);
  return row->check;
}

static GtkWidget *
append_text (GtkWidget *box, const char *text, const char *style)
{
  GtkWidget *label = gtk_label_new (text);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
  gtk_label_set_width_chars (GTK_LABEL (label), 12);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 24);
  if (style)
    gtk_widget_add_css_class (label, style);
  gtk_box_append (GTK_BOX (box), label);
  return label;
}

/* The letter that marks it on the drawing. */
static GtkWidget *
new_letter (const CwCheck *check)
{
  GtkWidget *letter = gtk_label_new (
      g_dpgettext2 (GETTEXT_PACKAGE, "check letter",
                    cw_check_severity_letter (check->type->severity)));
  gtk_widget_set_valign (letter, GTK_ALIGN_START);
  gtk_widget_add_css_class (letter, "cw-check-letter");
  if (!check->waiver && check->type->severity != CW_CHECK_NOTE)
    gtk_widget_add_css_class (letter, "cw-trouble");
  if (check->type->severity == CW_CHECK_ERROR)
    gtk_widget_add_css_class (letter, "cw-heading");
  return letter;
}

/* "South, W1, in 3 places"; NULL for the project. (transfer full) */
static char *
place_text (const CwCheck *check, const CwProject *project)
{
  const CwElevation *elevation
      = check->elevation_id
            ? cw_project_elevation (project, check->elevation_id)
            : NULL;
  const guint n = check->places->len;
  if (!check->elevation_id)
    return NULL;
  const char *name = elevation && *elevation->name ? elevation->name
                                                   : check->elevation_id;
  if (n < 2)
    return g_strdup (name);
  return g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%s, in %u place",
                                       "%s, in %u places", n),
                          name, n);
}

static char *
waiver_text (const CwCheck *check)
{
  GString *text = g_string_new (NULL);
  g_string_append_printf (text, _("Waived: %s"), check->waiver->reason);
  if (*check->waiver->by || *check->waiver->date)
    g_string_append_printf (text, " (%s%s%s)", check->waiver->by,
                            *check->waiver->by && *check->waiver->date ? ", "
                                                                       : "",
                            check->waiver->date);
  if (check->is_changed)
    g_string_append (text, _(" – the figures have changed since."));
  return g_string_free (text, FALSE);
}

static void
strike (GtkWidget *label)
{
  PangoAttrList *attributes = pango_attr_list_new ();
  pango_attr_list_insert (attributes, pango_attr_strikethrough_new (TRUE));
  gtk_label_set_attributes (GTK_LABEL (label), attributes);
  pango_attr_list_unref (attributes);
}

static void
append_words (GtkWidget *box, const CwCheck *check, const CwProject *project)
{
  g_autofree char *place = place_text (check, project);
  GtkWidget *title = append_text (
      box, _(check->type->title), check->waiver ? "cw-dim" : "cw-heading");
  if (check->waiver)
    strike (title);
  if (place)
    append_text (box, place, check->waiver ? "cw-dim" : "cw-accent");
  if (check->waiver)
    {
      g_autofree char *waiver = waiver_text (check);
      append_text (box, waiver, check->is_changed ? "cw-trouble" : "cw-dim");
      return;
    }
  append_text (box, check->text, "cw-dim");
}

static void
pressed (CwCheckRow *row)
{
  g_signal_emit (row, signals[WAIVE], 0);
}

static GtkWidget *
new_button (CwCheckRow *row)
{
  GtkWidget *button = gtk_button_new_with_label (
      row->check->waiver ? _("Take back") : _("Waive…"));
  g_autofree char *name = g_strdup_printf (
      row->check->waiver ? _("Take the waiver back: %s") : _("Waive: %s"),
      _(row->check->type->title));
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  gtk_widget_add_css_class (button, "cw-framed");
  gtk_widget_add_css_class (button, "cw-small");
  cw_widget_set_name (button, name);
  g_signal_connect_object (button, "clicked", G_CALLBACK (pressed), row,
                           G_CONNECT_SWAPPED);
  return button;
}

/* The inputs, what to do, the source and the button: only of the one that is
 * chosen. */
static void
add_details (CwCheckRow *row, GtkWidget *box)
{
  GtkWidget *revealer = gtk_revealer_new ();
  GtkWidget *details = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  if (row->check->waiver)
    append_text (details, row->check->text, "cw-dim");
  if (row->check->detail)
    append_text (details, row->check->detail, "cw-dim");
  append_text (details, _(row->check->type->remedy), NULL);
  gtk_widget_add_css_class (
      append_text (details, _(row->check->type->source), "cw-dim"),
      "cw-small");
  gtk_box_append (GTK_BOX (details), new_button (row));
  gtk_revealer_set_child (GTK_REVEALER (revealer), details);
  gtk_box_append (GTK_BOX (box), revealer);
  g_object_set_data (G_OBJECT (row), "details", revealer);
}

static void
state_changed (GtkWidget *widget, GtkStateFlags former)
{
  gboolean is_chosen = (gtk_widget_get_state_flags (widget)
                        & GTK_STATE_FLAG_SELECTED) != 0;
  GtkRevealer *details = g_object_get_data (G_OBJECT (widget), "details");
  if (details)
    gtk_revealer_set_reveal_child (details, is_chosen);
  GTK_WIDGET_CLASS (cw_check_row_parent_class)
      ->state_flags_changed (widget, former);
}

static void
cw_check_row_class_init (CwCheckRowClass *class)
{
  GTK_WIDGET_CLASS (class)->state_flags_changed = state_changed;
  signals[WAIVE]
      = g_signal_new ("waive", CW_TYPE_CHECK_ROW, G_SIGNAL_RUN_LAST, 0, NULL,
                      NULL, NULL, G_TYPE_NONE, 0);
}

static void
cw_check_row_init (CwCheckRow *row)
{
}

GtkWidget *
cw_check_row_new (const CwCheck *check, const CwProject *project)
{
  CwCheckRow *row = g_object_new (CW_TYPE_CHECK_ROW, NULL);
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 6);
  GtkWidget *words = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  row->check = check;
  gtk_widget_set_hexpand (words, TRUE);
  append_words (words, check, project);
  add_details (row, words);
  gtk_box_append (GTK_BOX (line), new_letter (check));
  gtk_box_append (GTK_BOX (line), words);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), line);
  g_autofree char *name = g_strdup_printf (
      "%s: %s. %s", _(cw_check_severity_label (check->type->severity)),
      _(check->type->title), check->text);
  cw_widget_set_name (GTK_WIDGET (row), name);
  return GTK_WIDGET (row);
}
