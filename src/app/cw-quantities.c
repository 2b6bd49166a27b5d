/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-quantities.h"

#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-quantity-row.h"

/* Work that is over sooner needs no sign. */
#define PATIENCE_MS 200

struct _CwQuantities
{
  GtkWidget parent;
  CwJob *job;
  GtkWidget *of_wall, *of_project;    /* GtkToggleButton */
  GtkWidget *box;                     /* GtkListBox */
  GtkWidget *steps_revealer, *steps;
  char *keys;                         /* of the rows that stand there */
  char *scope;                        /* that they are of; NULL: the project */
  guint patience;
};

G_DEFINE_FINAL_TYPE (CwQuantities, cw_quantities, GTK_TYPE_WIDGET)

enum { LIT, N_SIGNALS };
static guint signals[N_SIGNALS];

/* Borrowed; NULL: the whole project. */
static const char *
scope_now (CwQuantities *self)
{
  return gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (self->of_project))
             ? NULL
             : cw_document_elevation_id (cw_job_document (self->job));
}

/* (nullable) (element-type CwQuantity) */
static GPtrArray *
amounts_of (const CwTakeoff *takeoff, const char *scope)
{
  if (!takeoff)
    return NULL;
  if (!scope)
    return takeoff->quantities;
  const CwWallTakeoff *wall = cw_takeoff_wall (takeoff, scope);
  return wall ? wall->quantities : NULL;
}

static char *
keys_of (const GPtrArray *amounts)
{
  GString *keys = g_string_new (NULL);
  for (guint i = 0; amounts && i < amounts->len; i++)
    {
      const CwQuantity *quantity = amounts->pdata[i];
      g_string_append_printf (keys, "%s/%s ", quantity->type->key,
                              quantity->variant ? quantity->variant : "");
    }
  return g_string_free (keys, FALSE);
}

static CwQuantityRow *
row_at (CwQuantities *self, guint index)
{
  return CW_QUANTITY_ROW (gtk_list_box_get_row_at_index (
      GTK_LIST_BOX (self->box), (int) index));
}

static void
remake_rows (CwQuantities *self, const GPtrArray *amounts)
{
  GtkWidget *row;
  while ((row = GTK_WIDGET (gtk_list_box_get_row_at_index (
              GTK_LIST_BOX (self->box), 0))))
    gtk_list_box_remove (GTK_LIST_BOX (self->box), row);
  for (guint i = 0; amounts && i < amounts->len; i++)
    {
      const CwQuantity *quantity = amounts->pdata[i];
      gtk_list_box_append (GTK_LIST_BOX (self->box),
                           cw_quantity_row_new (quantity->type,
                                                quantity->variant));
    }
}

static void
show_steps (CwQuantities *self)
{
  GtkListBoxRow *row
      = gtk_list_box_get_selected_row (GTK_LIST_BOX (self->box));
  const char *steps = row ? cw_quantity_row_steps (CW_QUANTITY_ROW (row))
                          : NULL;
  gboolean has_steps = steps && *steps;
  if (has_steps)
    {
      const char *help = cw_quantity_row_type (CW_QUANTITY_ROW (row))->help;
      /* How the figure came about, then what it is and whose rule it is. */
      g_autofree char *text
          = g_strdup_printf ("%s.\n%s", steps, help ? _(help) : "");
      gtk_label_set_text (GTK_LABEL (self->steps), g_strchomp (text));
    }
  gtk_revealer_set_reveal_child (GTK_REVEALER (self->steps_revealer),
                                 has_steps);
}

static void
refresh (CwQuantities *self)
{
  const char *scope = scope_now (self);
  GPtrArray *amounts = amounts_of (cw_job_takeoff (self->job), scope);
  gboolean same_scope = g_strcmp0 (scope, self->scope) == 0;
  g_autofree char *keys = keys_of (amounts);
  gboolean same_rows = g_strcmp0 (keys, self->keys) == 0;
  if (!same_rows)
    remake_rows (self, amounts);
  for (guint i = 0; amounts && i < amounts->len; i++)
    cw_quantity_row_show (row_at (self, i), amounts->pdata[i],
                          cw_job_style (self->job), same_scope && same_rows);
  gtk_list_box_invalidate_headers (GTK_LIST_BOX (self->box));
  g_free (self->keys);
  self->keys = g_steal_pointer (&keys);
  g_free (self->scope);
  self->scope = g_strdup (scope);
  show_steps (self);
}

/* Figures in other units are no change of what they measure. */
static void
style_changed (CwQuantities *self)
{
  g_clear_pointer (&self->keys, g_free);
  refresh (self);
}

static void
scope_changed (CwQuantities *self)
{
  if (self->job && g_strcmp0 (scope_now (self), self->scope) != 0)
    refresh (self);
}

static gboolean
lost_patience (gpointer data)
{
  CwQuantities *self = data;
  self->patience = 0;
  gtk_widget_add_css_class (self->box, "cw-stale");
  return G_SOURCE_REMOVE;
}

static void
busy_changed (CwQuantities *self)
{
  gboolean busy = cw_estimator_is_busy (cw_job_estimator (self->job));
  if (busy && !self->patience)
    self->patience = g_timeout_add (PATIENCE_MS, lost_patience, self);
  if (busy)
    return;
  g_clear_handle_id (&self->patience, g_source_remove);
  gtk_widget_remove_css_class (self->box, "cw-stale");
}

static void
row_selected (CwQuantities *self, GtkListBoxRow *row)
{
  g_signal_emit (self, signals[LIT], 0,
                 row ? cw_quantity_row_type (CW_QUANTITY_ROW (row)) : NULL,
                 row ? cw_quantity_row_variant (CW_QUANTITY_ROW (row)) : NULL);
  show_steps (self);
}

/* A second click on a line puts its light out again. */
static void
row_activated (CwQuantities *self, GtkListBoxRow *row)
{
  if (g_object_get_data (G_OBJECT (self->box), "lit") == row)
    {
      g_object_set_data (G_OBJECT (self->box), "lit", NULL);
      gtk_list_box_unselect_all (GTK_LIST_BOX (self->box));
    }
  else
    g_object_set_data (G_OBJECT (self->box), "lit", row);
}

static CwTradeStep
step_of (GtkListBoxRow *row)
{
  return cw_quantity_row_type (CW_QUANTITY_ROW (row))->step;
}

/* @before is hidden rows too, so the header goes to the first one seen. */
static gboolean
is_first_seen (GtkListBoxRow *row)
{
  GtkWidget *before = gtk_widget_get_prev_sibling (GTK_WIDGET (row));
  while (before && !CW_IS_QUANTITY_ROW (before))
    before = gtk_widget_get_prev_sibling (before);
  for (; before && CW_IS_QUANTITY_ROW (before)
         && step_of (GTK_LIST_BOX_ROW (before)) == step_of (row);
       before = gtk_widget_get_prev_sibling (before))
    if (gtk_widget_get_visible (before))
      return FALSE;
  return TRUE;
}

static void
add_header (GtkListBoxRow *row, GtkListBoxRow *before, gpointer data)
{
  if (!gtk_widget_get_visible (GTK_WIDGET (row)) || !is_first_seen (row))
    {
      gtk_list_box_row_set_header (row, NULL);
      return;
    }
  if (gtk_list_box_row_get_header (row))
    return;
  GtkWidget *label = gtk_label_new (_(cw_trade_step_label (step_of (row))));
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, "cw-heading");
  gtk_widget_add_css_class (label, "cw-group");
  gtk_list_box_row_set_header (row, label);
}

const char *
cw_quantities_figure (CwQuantities *self, const char *key)
{
  g_return_val_if_fail (CW_IS_QUANTITIES (self), NULL);
  CwQuantityRow *row;
  for (guint i = 0; (row = (CwQuantityRow *) gtk_list_box_get_row_at_index (
                         GTK_LIST_BOX (self->box), (int) i));
       i++)
    if (g_strcmp0 (cw_quantity_row_type (row)->key, key) == 0)
      return cw_quantity_row_figure (row);
  return NULL;
}

void
cw_quantities_set_job (CwQuantities *self, CwJob *job)
{
  g_return_if_fail (CW_IS_QUANTITIES (self));
  g_return_if_fail (self->job == NULL);
  self->job = g_object_ref (job);
  CwEstimator *estimator = cw_job_estimator (job);
  g_signal_connect_object (estimator, "takeoff-changed",
                           G_CALLBACK (refresh), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (estimator, "notify::busy",
                           G_CALLBACK (busy_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_job_document (job), "selection-changed",
                           G_CALLBACK (scope_changed), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (job, "style-changed", G_CALLBACK (style_changed),
                           self, G_CONNECT_SWAPPED);
  refresh (self);
  busy_changed (self);
}

static void
cw_quantities_dispose (GObject *object)
{
  CwQuantities *self = CW_QUANTITIES (object);
  GtkWidget *child;
  g_clear_handle_id (&self->patience, g_source_remove);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))))
    gtk_widget_unparent (child);
  g_clear_object (&self->job);
  G_OBJECT_CLASS (cw_quantities_parent_class)->dispose (object);
}

static void
cw_quantities_finalize (GObject *object)
{
  CwQuantities *self = CW_QUANTITIES (object);
  g_free (self->keys);
  g_free (self->scope);
  G_OBJECT_CLASS (cw_quantities_parent_class)->finalize (object);
}

static void
cw_quantities_class_init (CwQuantitiesClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_quantities_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_quantities_finalize;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
  signals[LIT] = g_signal_new ("lit", CW_TYPE_QUANTITIES, G_SIGNAL_RUN_LAST,
                               0, NULL, NULL, NULL, G_TYPE_NONE, 2,
                               G_TYPE_POINTER, G_TYPE_STRING);
}

static void
add_head (CwQuantities *self)
{
  GtkWidget *head = cw_panel_head_new (_("Quantities"));
  self->of_wall = gtk_toggle_button_new_with_label (_("This wall"));
  self->of_project = gtk_toggle_button_new_with_label (_("Project"));
  gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (self->of_project),
                               GTK_TOGGLE_BUTTON (self->of_wall));
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->of_wall), TRUE);
  g_signal_connect_swapped (self->of_project, "toggled",
                            G_CALLBACK (scope_changed), self);
  gtk_box_append (GTK_BOX (head), self->of_wall);
  gtk_box_append (GTK_BOX (head), self->of_project);
  gtk_widget_set_parent (head, GTK_WIDGET (self));
}

static GtkWidget *
new_placeholder (void)
{
  GtkWidget *label
      = gtk_label_new (_("Nothing to count yet. Draw the wall."));
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_set_valign (label, GTK_ALIGN_START);
  gtk_widget_add_css_class (label, "cw-dim");
  gtk_widget_add_css_class (label, "cw-placeholder");
  return label;
}

static void
add_list (CwQuantities *self)
{
  GtkWidget *scroller = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller),
                                  GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_widget_set_vexpand (scroller, TRUE);
  self->box = gtk_list_box_new ();
  cw_widget_set_name (self->box, _("Quantities"));
  gtk_list_box_set_placeholder (GTK_LIST_BOX (self->box),
                                new_placeholder ());
  gtk_list_box_set_header_func (GTK_LIST_BOX (self->box), add_header, NULL,
                                NULL);
  g_signal_connect_swapped (self->box, "row-selected",
                            G_CALLBACK (row_selected), self);
  g_signal_connect_swapped (self->box, "row-activated",
                            G_CALLBACK (row_activated), self);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), self->box);
  gtk_widget_set_parent (scroller, GTK_WIDGET (self));
}

static void
add_steps (CwQuantities *self)
{
  self->steps = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->steps), 0);
  gtk_label_set_wrap (GTK_LABEL (self->steps), TRUE);
  gtk_label_set_selectable (GTK_LABEL (self->steps), TRUE);
  gtk_widget_add_css_class (self->steps, "cw-dim");
  gtk_widget_add_css_class (self->steps, "cw-small");
  gtk_widget_add_css_class (self->steps, "cw-steps");
  cw_widget_set_name (self->steps, _("How this came about"));
  self->steps_revealer = gtk_revealer_new ();
  gtk_revealer_set_child (GTK_REVEALER (self->steps_revealer), self->steps);
  gtk_widget_set_parent (self->steps_revealer, GTK_WIDGET (self));
}

static void
cw_quantities_init (CwQuantities *self)
{
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (self))),
      GTK_ORIENTATION_VERTICAL);
  add_head (self);
  add_list (self);
  add_steps (self);
}
