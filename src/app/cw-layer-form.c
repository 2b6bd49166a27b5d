/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-layer-form.h"

#include "cw-buildup-edits.h"
#include "cw-field-group.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwLayerForm
{
  GtkWidget parent;
  GtkWidget *box;
  GtkWidget *group;         /* CwFieldGroup; NULL: the layer is not there */
  CwJob *job;               /* borrowed */
  char *id;                 /* of the buildup; NULL: nothing is shown */
  CwLayerPlace place;
  gsize n_items;            /* in the place's list */
  CwUnits units;
};

G_DEFINE_FINAL_TYPE (CwLayerForm, cw_layer_form, GTK_TYPE_WIDGET)

static guint wanted_signal;

static const CwProject *
project_of (CwLayerForm *form)
{
  return cw_document_project (cw_job_document (form->job));
}

static const CwSlot *
slot_of (CwLayerForm *form)
{
  return form->place.slot < 0 ? NULL
                              : &cw_buildup_type.slots[form->place.slot];
}

static const CwNodeType *
type_of (CwLayerForm *form)
{
  return form->place.slot < 0 ? &cw_buildup_type : slot_of (form)->types[0];
}

/* Takes @next; then shows what stands at @index. */
static void
edit (CwLayerForm *form, CwProject *next, const char *name, int index)
{
  g_autoptr (CwProject) owned = next;
  g_autoptr (CwLayerForm) alive = g_object_ref (form);
  int slot = form->place.slot;
  cw_document_edit (cw_job_document (form->job), owned, name, NULL);
  g_signal_emit (alive, wanted_signal, 0, slot, index);
}

static void
add_layer (CwLayerForm *form)
{
  edit (form,
        cw_buildup_add_layer (project_of (form), form->id,
                              (guint) form->place.slot),
        _("Add a layer"), -1);
}

static void
remove_layer (CwLayerForm *form)
{
  edit (form,
        cw_buildup_remove_layer (project_of (form), form->id,
                                 (guint) form->place.slot),
        _("Take out a layer"), -1);
}

static void
add_item (CwLayerForm *form)
{
  edit (form,
        cw_buildup_add_item (project_of (form), form->id,
                             (guint) form->place.slot,
                             (gsize) form->place.index),
        _("Add a layer"), form->place.index + 1);
}

static void
remove_item (CwLayerForm *form)
{
  edit (form,
        cw_buildup_remove_item (project_of (form), form->id,
                                (guint) form->place.slot,
                                (gsize) form->place.index),
        _("Take out a layer"), MAX (form->place.index - 1, 0));
}

static void
move_item (CwLayerForm *form, int by)
{
  edit (form,
        cw_buildup_move_item (project_of (form), form->id,
                              (guint) form->place.slot,
                              (gsize) form->place.index, by),
        _("Move a layer"), form->place.index + by);
}

static void
move_up (CwLayerForm *form)
{
  move_item (form, -1);
}

static void
move_down (CwLayerForm *form)
{
  move_item (form, 1);
}

static GtkWidget *
add_button (CwLayerForm *form, GtkWidget *line, const char *label,
            void (*pressed) (CwLayerForm *))
{
  GtkWidget *button = gtk_button_new_with_mnemonic (label);
  gtk_widget_add_css_class (button, "cw-framed");
  g_signal_connect_object (button, "clicked", G_CALLBACK (pressed), form,
                           G_CONNECT_SWAPPED);
  gtk_flow_box_append (GTK_FLOW_BOX (line), button);
  GtkWidget *child = gtk_widget_get_parent (button);
  gtk_widget_set_focusable (child, FALSE);
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  return button;
}

static void
add_item_buttons (CwLayerForm *form, GtkWidget *line)
{
  gsize last = form->n_items - 1;
  add_button (form, line, _("_Add one like it"), add_item);
  gtk_widget_set_sensitive (
      add_button (form, line, _("Move _up"), move_up),
      form->place.index > 0);
  gtk_widget_set_sensitive (
      add_button (form, line, _("Move do_wn"), move_down),
      (gsize) form->place.index < last);
  gtk_widget_set_sensitive (
      add_button (form, line, _("_Take it out"), remove_item),
      form->n_items > 1);
}

static void
add_buttons (CwLayerForm *form)
{
  const CwSlot *slot = slot_of (form);
  if (!slot || (slot->always && !slot->is_list))
    return;
  GtkWidget *line = gtk_flow_box_new ();
  gtk_flow_box_set_selection_mode (GTK_FLOW_BOX (line), GTK_SELECTION_NONE);
  cw_widget_set_name (line, _("What can be done"));
  gtk_flow_box_set_max_children_per_line (GTK_FLOW_BOX (line), 4);
  if (slot->is_list && form->place.is_there)
    add_item_buttons (form, line);
  else if (form->place.is_there)
    add_button (form, line, _("_Take it out of the buildup"), remove_layer);
  else
    add_button (form, line, _("_Add it to the buildup"), add_layer);
  gtk_box_append (GTK_BOX (form->box), line);
}

static GtkWidget *
add_words (CwLayerForm *form, const char *words, const char *class)
{
  GtkWidget *label = gtk_label_new (words);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_add_css_class (label, class);
  gtk_box_append (GTK_BOX (form->box), label);
  return label;
}

static CwNodePath *
path_of (CwLayerForm *form)
{
  g_autoptr (CwNodePath) base = cw_node_path_new (form->id);
  if (form->place.slot < 0)
    return g_steal_pointer (&base);
  return cw_node_path_down (base, (guint) form->place.slot,
                            form->place.index);
}

static void
add_fields (CwLayerForm *form)
{
  GPtrArray *paths
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_path_free);
  g_ptr_array_add (paths, path_of (form));
  form->group = cw_field_group_new (form->job, NULL, paths);
  cw_field_group_show_help (CW_FIELD_GROUP (form->group));
  gtk_box_append (GTK_BOX (form->box), form->group);
}

static void
build (CwLayerForm *form)
{
  GtkWidget *child;
  form->group = NULL;
  while ((child = gtk_widget_get_first_child (form->box)))
    gtk_box_remove (GTK_BOX (form->box), child);
  if (!form->id)
    return;
  add_words (form, _(type_of (form)->label), "cw-title");
  add_buttons (form);
  if (form->place.is_there)
    add_fields (form);
  else
    add_words (form, _("This buildup has none: nothing of it is counted or "
                       "ordered."),
               "cw-dim");
}

static gsize
n_items (CwLayerForm *form, const char *id, const CwLayerPlace *place)
{
  const CwBuildup *buildup
      = id ? cw_project_buildup (project_of (form), id) : NULL;
  return buildup && place->index >= 0
             ? cw_list_length (
                 cw_node_list (&buildup->node, (guint) place->slot))
             : 0;
}

void
cw_layer_form_show (CwLayerForm *form, const char *id, CwLayerPlace place)
{
  g_return_if_fail (CW_IS_LAYER_FORM (form));
  gsize n = n_items (form, id, &place);
  CwUnits units = cw_job_style (form->job)->units;
  if (g_strcmp0 (id, form->id) == 0 && place.slot == form->place.slot
      && place.index == form->place.index
      && place.is_there == form->place.is_there && n == form->n_items
      && units == form->units)
    {
      if (form->group)
        cw_field_group_refresh (CW_FIELD_GROUP (form->group));
      return;
    }
  g_free (form->id);
  form->id = g_strdup (id);
  form->place = place;
  form->n_items = n;
  form->units = units;
  build (form);
}

GtkWidget *
cw_layer_form_row (CwLayerForm *form, const char *field)
{
  g_return_val_if_fail (CW_IS_LAYER_FORM (form), NULL);
  return form->group
             ? cw_field_group_row (CW_FIELD_GROUP (form->group), field)
             : NULL;
}

static void
cw_layer_form_dispose (GObject *object)
{
  CwLayerForm *form = CW_LAYER_FORM (object);
  form->group = NULL;
  g_clear_pointer (&form->box, gtk_widget_unparent);
  G_OBJECT_CLASS (cw_layer_form_parent_class)->dispose (object);
}

static void
cw_layer_form_finalize (GObject *object)
{
  g_free (CW_LAYER_FORM (object)->id);
  G_OBJECT_CLASS (cw_layer_form_parent_class)->finalize (object);
}

static void
cw_layer_form_class_init (CwLayerFormClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_layer_form_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_layer_form_finalize;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BIN_LAYOUT);
  wanted_signal = g_signal_new ("layer-wanted", CW_TYPE_LAYER_FORM,
                                G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                G_TYPE_NONE, 2, G_TYPE_INT, G_TYPE_INT);
}

static void
cw_layer_form_init (CwLayerForm *form)
{
  form->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  gtk_widget_add_css_class (form->box, "cw-form");
  gtk_widget_set_parent (form->box, GTK_WIDGET (form));
}

GtkWidget *
cw_layer_form_new (CwJob *job)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  CwLayerForm *form = g_object_new (CW_TYPE_LAYER_FORM, NULL);
  form->job = job;
  return GTK_WIDGET (form);
}
