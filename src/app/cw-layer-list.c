/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-layer-list.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwLayerList
{
  GtkWidget parent;
  GtkWidget *box;           /* GtkListBox */
  GArray *places;           /* CwLayerPlace, as the rows */
  CwLayerPlace chosen;
  gboolean showing;
};

G_DEFINE_FINAL_TYPE (CwLayerList, cw_layer_list, GTK_TYPE_WIDGET)

static guint chosen_signal;

static void
collect_slot (GArray *places, const CwNode *buildup, guint slot)
{
  CwLayerPlace place = { (int) slot, -1, TRUE };
  if (!buildup->type->slots[slot].is_list)
    {
      place.is_there = cw_node_child (buildup, slot) != NULL;
      g_array_append_val (places, place);
      return;
    }
  const CwList *list = cw_node_list (buildup, slot);
  for (gsize i = 0; i < cw_list_length (list); i++)
    {
      place.index = (int) i;
      g_array_append_val (places, place);
    }
  if (cw_list_length (list) > 0)
    return;
  place.index = 0;
  place.is_there = FALSE;
  g_array_append_val (places, place);
}

static void
collect (CwLayerList *list, const CwNode *buildup)
{
  CwLayerPlace itself = { -1, -1, TRUE };
  g_array_set_size (list->places, 0);
  g_array_append_val (list->places, itself);
  for (guint slot = 0; slot < buildup->type->n_slots; slot++)
    collect_slot (list->places, buildup, slot);
}

static const CwNode *
node_at (const CwNode *buildup, const CwLayerPlace *place)
{
  if (place->slot < 0)
    return buildup;
  if (!place->is_there)
    return NULL;
  return place->index < 0
             ? cw_node_child (buildup, (guint) place->slot)
             : cw_list_at (cw_node_list (buildup, (guint) place->slot),
                           (gsize) place->index);
}

/* Which of its kinds it is; empty when there is but one. */
static const char *
kind_words (const CwNode *node)
{
  int kind = cw_node_type_field (node->type, "kind");
  if (kind < 0 || node->type->fields[kind].kind != CW_FIELD_CHOICE)
    return "";
  return _(cw_field_choice_by_value (&node->type->fields[kind],
                                     cw_node_get (node, (guint) kind))
               ->label);
}

/* What it is called, or that it is not there. */
static const char *
words_for (const CwNode *node)
{
  if (!node)
    return _("not in this buildup");
  int name = cw_node_type_field (node->type, "name");
  const char *words = name >= 0 ? cw_node_get_text (node, (guint) name) : "";
  return *words ? words : kind_words (node);
}

static GtkWidget *
new_line (const char *text, const char *class)
{
  GtkWidget *label = gtk_label_new (text);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  if (class)
    gtk_widget_add_css_class (label, class);
  return label;
}

static GtkWidget *
new_row (const CwNode *buildup, const CwLayerPlace *place)
{
  const CwNode *node = node_at (buildup, place);
  const CwNodeType *type
      = node ? node->type
             : buildup->type->slots[place->slot].types[0];
  const char *words = words_for (node);
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  g_autofree char *spoken
      = *words ? g_strdup_printf ("%s: %s", _(type->label), words)
               : g_strdup (_(type->label));
  gtk_box_append (GTK_BOX (box),
                  new_line (_(type->label), node ? NULL : "cw-dim"));
  if (*words)
    {
      GtkWidget *line = new_line (words, "cw-dim");
      gtk_widget_add_css_class (line, "cw-small");
      gtk_box_append (GTK_BOX (box), line);
    }
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), box);
  cw_widget_set_name (row, spoken);
  return row;
}

static gboolean
same_place (const CwLayerPlace *a, const CwLayerPlace *b)
{
  return a->slot == b->slot && a->index == b->index;
}

/* The chosen place, or the nearest before it. */
static int
row_to_choose (CwLayerList *list)
{
  int best = 0;
  for (guint i = 0; i < list->places->len; i++)
    {
      const CwLayerPlace *place
          = &g_array_index (list->places, CwLayerPlace, i);
      if (place->slot < list->chosen.slot
          || (place->slot == list->chosen.slot
              && place->index <= list->chosen.index))
        best = (int) i;
    }
  return best;
}

static void
choose_row (CwLayerList *list, int index)
{
  list->chosen
      = g_array_index (list->places, CwLayerPlace, (guint) index);
  GtkListBoxRow *row
      = gtk_list_box_get_row_at_index (GTK_LIST_BOX (list->box), index);
  gtk_list_box_select_row (GTK_LIST_BOX (list->box), row);
}

/* Removing a row takes the focus with it: it goes to what is chosen. */
void
cw_layer_list_show (CwLayerList *list, const CwBuildup *buildup)
{
  g_return_if_fail (CW_IS_LAYER_LIST (list));
  GtkWidget *row;
  gboolean had_focus = gtk_widget_get_focus_child (list->box) != NULL;
  list->showing = TRUE;
  while ((row = gtk_widget_get_first_child (list->box)))
    gtk_list_box_remove (GTK_LIST_BOX (list->box), row);
  g_array_set_size (list->places, 0);
  if (buildup)
    {
      collect (list, &buildup->node);
      for (guint i = 0; i < list->places->len; i++)
        gtk_list_box_append (
            GTK_LIST_BOX (list->box),
            new_row (&buildup->node,
                     &g_array_index (list->places, CwLayerPlace, i)));
      choose_row (list, row_to_choose (list));
      if (had_focus)
        gtk_widget_grab_focus (GTK_WIDGET (gtk_list_box_get_selected_row (
            GTK_LIST_BOX (list->box))));
    }
  list->showing = FALSE;
}

CwLayerPlace
cw_layer_list_chosen (CwLayerList *list)
{
  g_return_val_if_fail (CW_IS_LAYER_LIST (list),
                        ((CwLayerPlace) { -1, -1, FALSE }));
  return list->chosen;
}

void
cw_layer_list_choose (CwLayerList *list, int slot, int index)
{
  g_return_if_fail (CW_IS_LAYER_LIST (list));
  CwLayerPlace wanted = { slot, index, TRUE };
  for (guint i = 0; i < list->places->len; i++)
    if (same_place (&g_array_index (list->places, CwLayerPlace, i), &wanted))
      choose_row (list, (int) i);
}

static void
row_selected (CwLayerList *list, GtkListBoxRow *row)
{
  if (list->showing || !row)
    return;
  guint index = (guint) gtk_list_box_row_get_index (row);
  list->chosen = g_array_index (list->places, CwLayerPlace, index);
  g_signal_emit (list, chosen_signal, 0);
}

static void
cw_layer_list_dispose (GObject *object)
{
  CwLayerList *list = CW_LAYER_LIST (object);
  GtkWidget *child;
  list->showing = TRUE;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (list))))
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (cw_layer_list_parent_class)->dispose (object);
}

static void
cw_layer_list_finalize (GObject *object)
{
  g_array_unref (CW_LAYER_LIST (object)->places);
  G_OBJECT_CLASS (cw_layer_list_parent_class)->finalize (object);
}

static void
cw_layer_list_class_init (CwLayerListClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_layer_list_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_layer_list_finalize;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BIN_LAYOUT);
  chosen_signal = g_signal_new ("layer-chosen", CW_TYPE_LAYER_LIST,
                                G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                G_TYPE_NONE, 0);
}

static void
cw_layer_list_init (CwLayerList *list)
{
  list->places = g_array_new (FALSE, FALSE, sizeof (CwLayerPlace));
  list->chosen = (CwLayerPlace) { -1, -1, TRUE };
  list->box = gtk_list_box_new ();
  cw_widget_set_name (list->box, _("Layers"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list->box),
                                   GTK_SELECTION_BROWSE);
  g_signal_connect_swapped (list->box, "row-selected",
                            G_CALLBACK (row_selected), list);
  gtk_widget_set_parent (list->box, GTK_WIDGET (list));
}

GtkWidget *
cw_layer_list_new (void)
{
  return g_object_new (CW_TYPE_LAYER_LIST, NULL);
}
