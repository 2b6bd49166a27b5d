/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-scale-chooser.h"

#include "cw-field-text.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-sheet-scale.h"

struct _CwScaleChooser
{
  GtkWidget parent;
  GArray *ratios;         /* double; 0: measured, -1: typed */
  GtkWidget *list, *entry, *trouble;
};

G_DEFINE_FINAL_TYPE (CwScaleChooser, cw_scale_chooser, GTK_TYPE_WIDGET)

static double
chosen_ratio (CwScaleChooser *chooser)
{
  return g_array_index (
      chooser->ratios, double,
      gtk_drop_down_get_selected (GTK_DROP_DOWN (chooser->list)));
}

static void
show_trouble (CwScaleChooser *chooser, const char *trouble)
{
  gtk_label_set_text (GTK_LABEL (chooser->trouble), trouble ? trouble : "");
  gtk_widget_set_visible (chooser->trouble, trouble != NULL);
}

static void
chosen (CwScaleChooser *chooser)
{
  gboolean typed = chosen_ratio (chooser) < 0;
  gtk_widget_set_visible (chooser->entry, typed);
  if (typed)
    gtk_widget_grab_focus (chooser->entry);
  show_trouble (chooser, NULL);
}

gboolean
cw_scale_chooser_get (CwScaleChooser *chooser, double *mm_per_point)
{
  g_return_val_if_fail (CW_IS_SCALE_CHOOSER (chooser), FALSE);
  double ratio = chosen_ratio (chooser);
  const char *text = gtk_editable_get_text (GTK_EDITABLE (chooser->entry));
  g_autoptr (GError) error = NULL;
  if (ratio < 0 && !cw_sheet_scale_parse (text, &ratio, &error))
    {
      g_autofree char *trouble = cw_field_text_pointed (text, error);
      show_trouble (chooser, trouble);
      gtk_widget_grab_focus (chooser->entry);
      return FALSE;
    }
  *mm_per_point = ratio > 0 ? cw_sheet_scale_from_ratio (ratio) : 0;
  return TRUE;
}

static void
offer (CwScaleChooser *chooser, GtkStringList *labels, const char *label,
       double ratio)
{
  gtk_string_list_append (labels, label);
  g_array_append_val (chooser->ratios, ratio);
}

static void
offer_units (CwScaleChooser *chooser, GtkStringList *labels, CwUnits units)
{
  for (guint i = 0; i < cw_n_stated_scales; i++)
    if (cw_stated_scales[i].units == units)
      offer (chooser, labels, cw_stated_scales[i].label,
             cw_stated_scales[i].ratio);
}

static void
cw_scale_chooser_dispose (GObject *object)
{
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (object))))
    gtk_widget_unparent (child);
  g_clear_pointer (&CW_SCALE_CHOOSER (object)->ratios, g_array_unref);
  G_OBJECT_CLASS (cw_scale_chooser_parent_class)->dispose (object);
}

static void
cw_scale_chooser_class_init (CwScaleChooserClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_scale_chooser_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
}

static void
cw_scale_chooser_init (CwScaleChooser *chooser)
{
  GtkLayoutManager *layout
      = gtk_widget_get_layout_manager (GTK_WIDGET (chooser));
  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout),
                                  GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 6);
  chooser->ratios = g_array_new (FALSE, FALSE, sizeof (double));
}

static void
build (CwScaleChooser *chooser, GtkStringList *labels)
{
  chooser->list = gtk_drop_down_new (G_LIST_MODEL (labels), NULL);
  cw_widget_set_name (chooser->list, _("Scale of the sheet"));
  gtk_widget_set_parent (chooser->list, GTK_WIDGET (chooser));

  chooser->entry = gtk_entry_new ();
  gtk_entry_set_placeholder_text (GTK_ENTRY (chooser->entry),
                                  _("1:75 or 1/4\" = 1'-0\""));
  gtk_entry_set_activates_default (GTK_ENTRY (chooser->entry), TRUE);
  cw_widget_set_name (chooser->entry, _("Scale in numbers"));
  gtk_widget_set_visible (chooser->entry, FALSE);
  gtk_widget_set_parent (chooser->entry, GTK_WIDGET (chooser));

  chooser->trouble = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (chooser->trouble), 0);
  gtk_label_set_wrap (GTK_LABEL (chooser->trouble), TRUE);
  gtk_widget_add_css_class (chooser->trouble, "cw-trouble");
  gtk_widget_set_parent (chooser->trouble, GTK_WIDGET (chooser));
  show_trouble (chooser, NULL);
  g_signal_connect_swapped (chooser->list, "notify::selected",
                            G_CALLBACK (chosen), chooser);
}

GtkWidget *
cw_scale_chooser_new (CwUnits units)
{
  CwScaleChooser *chooser = g_object_new (CW_TYPE_SCALE_CHOOSER, NULL);
  GtkStringList *labels = gtk_string_list_new (NULL);
  offer (chooser, labels, _("Measure it on the sheet"), 0);
  offer_units (chooser, labels, units);
  offer_units (chooser, labels,
               units == CW_UNITS_US ? CW_UNITS_METRIC : CW_UNITS_US);
  offer (chooser, labels, _("Another…"), -1);
  build (chooser, labels);
  return GTK_WIDGET (chooser);
}
