/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-grid.h"

#include "cw-cut-picture.h"
#include "cw-cut-words.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

#define PICTURE_WIDTH 300

struct _CwCutGrid
{
  GtkWidget parent;
  GtkWidget *head, *stack, *words, *view;
  GListStore *items;          /* CwCutItem */
  GtkSingleSelection *selection;
  CwTextStyle style;
};

enum
{
  CHOSEN,
  N_SIGNALS,
};

static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (CwCutGrid, cw_cut_grid, GTK_TYPE_WIDGET)

CwCutItem *
cw_cut_grid_chosen (CwCutGrid *grid)
{
  g_return_val_if_fail (CW_IS_CUT_GRID (grid), NULL);
  return gtk_single_selection_get_selected_item (grid->selection);
}

guint
cw_cut_grid_n_panels (CwCutGrid *grid)
{
  g_return_val_if_fail (CW_IS_CUT_GRID (grid), 0);
  return g_list_model_get_n_items (G_LIST_MODEL (grid->items));
}

static guint
place_of (CwCutGrid *grid, guint number)
{
  for (guint i = 0; i < cw_cut_grid_n_panels (grid); i++)
    {
      g_autoptr (CwCutItem) item
          = g_list_model_get_item (G_LIST_MODEL (grid->items), i);
      if (cw_cut_item_panel (item)->number == number)
        return i;
    }
  return GTK_INVALID_LIST_POSITION;
}

void
cw_cut_grid_choose (CwCutGrid *grid, guint number)
{
  g_return_if_fail (CW_IS_CUT_GRID (grid));
  const guint place = place_of (grid, number);
  if (place == GTK_INVALID_LIST_POSITION)
    return;
  gtk_single_selection_set_selected (grid->selection, place);
  gtk_widget_activate_action (grid->view, "list.scroll-to-item", "u", place);
}

static int
wall_of (const CwCutList *list, const char *elevation_id)
{
  for (guint i = 0; i < list->takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = list->takeoff->walls->pdata[i];
      if (g_strcmp0 (wall->wall->elevation->id, elevation_id) == 0)
        return (int) i;
    }
  return -1;
}

/* (transfer full): CwCutItem */
static GPtrArray *
items_of (const CwCutList *list, const char *elevation_id)
{
  GPtrArray *items = g_ptr_array_new_with_free_func (g_object_unref);
  const int wall = elevation_id ? wall_of (list, elevation_id) : -1;
  for (guint i = 0; i < list->panels->len; i++)
    if (!elevation_id
        || (wall >= 0
            && cw_cut_list_panel_is_for (list->panels->pdata[i],
                                         (guint) wall)))
      g_ptr_array_add (items, cw_cut_item_new (list, i));
  return items;
}

static guint
n_sawn (const GPtrArray *items)
{
  guint n = 0;
  for (guint i = 0; i < items->len; i++)
    n += cw_cut_item_panel (items->pdata[i])->n;
  return n;
}

static void
show_head (CwCutGrid *grid, const GPtrArray *items)
{
  const guint n = n_sawn (items);
  g_autofree char *sawn = g_strdup_printf (
      g_dngettext (GETTEXT_PACKAGE, "%u panel is sawn", "%u panels are sawn",
                   n),
      n);
  /* Translators: how many panels, then how many of them differ. */
  g_autofree char *text
      = n == items->len
            ? g_strdup (sawn)
            : g_strdup_printf (_("%s, %u different ones"), sawn, items->len);
  gtk_label_set_text (GTK_LABEL (grid->head), text);
}

static void
show_words (CwCutGrid *grid, const char *words)
{
  gtk_label_set_text (GTK_LABEL (grid->head), "");
  gtk_label_set_text (GTK_LABEL (grid->words), words);
  gtk_stack_set_visible_child (GTK_STACK (grid->stack),
                               gtk_widget_get_parent (grid->words));
}

static const char *
words_for_none (const CwCutList *list, const char *elevation_id)
{
  if (!list)
    return _("The cuts are being worked out…");
  if (list->takeoff->walls->len == 0)
    return _("No wall yet. Trace one on a sheet or type its size in the "
             "place Walls; how its panels are sawn is then shown here.");
  return elevation_id
             ? _("No panel is sawn for this wall: all of them go on whole, "
                 "or it has no outline or buildup yet.")
             : _("No panel is sawn: all of them go on whole, or no wall has "
                 "an outline and a buildup yet.");
}

static void
fill (CwCutGrid *grid, const GPtrArray *items)
{
  CwCutItem *chosen = cw_cut_grid_chosen (grid);
  const guint number = chosen ? cw_cut_item_panel (chosen)->number : 0;
  guint place;
  g_list_store_splice (grid->items, 0, cw_cut_grid_n_panels (grid),
                       items->pdata, items->len);
  place = place_of (grid, number);
  if (place != GTK_INVALID_LIST_POSITION)
    gtk_single_selection_set_selected (grid->selection, place);
}

void
cw_cut_grid_show (CwCutGrid *grid, const CwCutList *list,
                  const char *elevation_id, const CwTextStyle *style)
{
  g_return_if_fail (CW_IS_CUT_GRID (grid));
  g_autoptr (GPtrArray) items
      = list ? items_of (list, elevation_id)
             : g_ptr_array_new_with_free_func (g_object_unref);
  grid->style = *style;
  fill (grid, items);
  if (items->len == 0)
    show_words (grid, words_for_none (list, elevation_id));
  else
    {
      show_head (grid, items);
      gtk_stack_set_visible_child (GTK_STACK (grid->stack),
                                   gtk_widget_get_parent (grid->view));
    }
  g_signal_emit (grid, signals[CHOSEN], 0);
}

static void
set_up_cell (GtkSignalListItemFactory *factory, GtkListItem *cell)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  GtkWidget *name = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (name), 0);
  gtk_widget_add_css_class (name, "cw-heading");
  gtk_box_append (GTK_BOX (box), name);
  gtk_box_append (GTK_BOX (box), cw_cut_picture_new (PICTURE_WIDTH));
  gtk_list_item_set_child (cell, box);
}

static void
bind_cell (CwCutGrid *grid, GtkListItem *cell)
{
  CwCutItem *item = gtk_list_item_get_item (cell);
  GtkWidget *box = gtk_list_item_get_child (cell);
  g_autofree char *name = cw_cut_panel_text (cw_cut_item_panel (item));
  gtk_label_set_text (GTK_LABEL (gtk_widget_get_first_child (box)), name);
  cw_cut_picture_show (CW_CUT_PICTURE (gtk_widget_get_last_child (box)), item,
                       &grid->style);
}

static void
unbind_cell (CwCutGrid *grid, GtkListItem *cell)
{
  GtkWidget *box = gtk_list_item_get_child (cell);
  cw_cut_picture_show (CW_CUT_PICTURE (gtk_widget_get_last_child (box)),
                       NULL, NULL);
}

static void
choice_changed (CwCutGrid *grid)
{
  g_signal_emit (grid, signals[CHOSEN], 0);
}

static void
cw_cut_grid_dispose (GObject *object)
{
  CwCutGrid *grid = CW_CUT_GRID (object);
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (grid))))
    gtk_widget_unparent (child);
  g_clear_object (&grid->selection);
  g_clear_object (&grid->items);
  G_OBJECT_CLASS (cw_cut_grid_parent_class)->dispose (object);
}

static void
cw_cut_grid_class_init (CwCutGridClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_cut_grid_dispose;
  signals[CHOSEN]
      = g_signal_new ("chosen", CW_TYPE_CUT_GRID, G_SIGNAL_RUN_LAST, 0, NULL,
                      NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
}

/* (transfer full) */
static GtkWidget *
new_view (CwCutGrid *grid)
{
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();
  GtkWidget *scrolled = gtk_scrolled_window_new ();
  g_signal_connect (factory, "setup", G_CALLBACK (set_up_cell), NULL);
  g_signal_connect_swapped (factory, "bind", G_CALLBACK (bind_cell), grid);
  g_signal_connect_swapped (factory, "unbind", G_CALLBACK (unbind_cell),
                            grid);
  grid->view = gtk_grid_view_new (
      GTK_SELECTION_MODEL (g_object_ref (grid->selection)), factory);
  gtk_grid_view_set_max_columns (GTK_GRID_VIEW (grid->view), 6);
  cw_widget_set_name (grid->view, _("Sawn panels"));
  gtk_widget_add_css_class (grid->view, "cw-cut-grid");
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), grid->view);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled),
                                  GTK_POLICY_AUTOMATIC, GTK_POLICY_AUTOMATIC);
  gtk_widget_set_vexpand (scrolled, TRUE);
  return scrolled;
}

/* (transfer full) */
static GtkWidget *
new_words (CwCutGrid *grid)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  grid->words = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (grid->words), TRUE);
  gtk_label_set_xalign (GTK_LABEL (grid->words), 0);
  gtk_label_set_max_width_chars (GTK_LABEL (grid->words), 60);
  gtk_widget_set_halign (grid->words, GTK_ALIGN_START);
  gtk_widget_add_css_class (grid->words, "cw-dim");
  gtk_widget_add_css_class (grid->words, "cw-placeholder");
  gtk_box_append (GTK_BOX (box), grid->words);
  return box;
}

static void
cw_cut_grid_init (CwCutGrid *grid)
{
  GtkWidget *head = cw_panel_head_new ("");
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (grid))),
      GTK_ORIENTATION_VERTICAL);
  grid->items = g_list_store_new (CW_TYPE_CUT_ITEM);
  grid->selection = gtk_single_selection_new (
      G_LIST_MODEL (g_object_ref (grid->items)));
  g_signal_connect_object (grid->selection, "notify::selected",
                           G_CALLBACK (choice_changed), grid,
                           G_CONNECT_SWAPPED);
  grid->head = gtk_widget_get_first_child (head);
  grid->stack = gtk_stack_new ();
  gtk_stack_add_child (GTK_STACK (grid->stack), new_words (grid));
  gtk_stack_add_child (GTK_STACK (grid->stack), new_view (grid));
  gtk_widget_set_vexpand (grid->stack, TRUE);
  gtk_widget_set_hexpand (grid->stack, TRUE);
  gtk_widget_set_parent (head, GTK_WIDGET (grid));
  gtk_widget_set_parent (grid->stack, GTK_WIDGET (grid));
}

GtkWidget *
cw_cut_grid_new (void)
{
  return g_object_new (CW_TYPE_CUT_GRID, NULL);
}
