/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-panel-scopes.h"

#include "cw-amount-text.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

/* Lines of the quantities that speak of panels. */
static const char *const keys[]
    = { "panel.stock", "panel.least", "panel.whole", "panel.rasped",
        "panel.cut",   "panel.waste", "saw.length",  "saw.curve" };

struct _CwPanelScopes
{
  GtkWidget parent;
  CwJob *job;
  GtkWidget *box;             /* GtkListBox */
  GtkWidget *figures[G_N_ELEMENTS (keys)];
  GtkWidget *names[G_N_ELEMENTS (keys)];
  char *chosen;
  gboolean showing;
};

enum
{
  CHOSEN,
  N_SIGNALS,
};

static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (CwPanelScopes, cw_panel_scopes, GTK_TYPE_WIDGET)

const char *
cw_panel_scopes_chosen (CwPanelScopes *scopes)
{
  g_return_val_if_fail (CW_IS_PANEL_SCOPES (scopes), NULL);
  return scopes->chosen;
}

const char *
cw_panel_scopes_figure (CwPanelScopes *scopes, const char *key)
{
  g_return_val_if_fail (CW_IS_PANEL_SCOPES (scopes), NULL);
  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    if (g_str_equal (keys[i], key))
      return gtk_label_get_text (GTK_LABEL (scopes->figures[i]));
  return NULL;
}

static void
show_figure (CwPanelScopes *scopes, guint index, const CwTakeoff *takeoff)
{
  const CwQuantity *quantity
      = takeoff ? cw_takeoff_quantity (takeoff, scopes->chosen, keys[index])
                : NULL;
  g_autofree char *text
      = quantity ? cw_amount_text_with_unit (cw_job_style (scopes->job),
                                             quantity->amount,
                                             quantity->type->unit)
                 : g_strdup (takeoff ? "–" : "…");
  gtk_label_set_text (GTK_LABEL (scopes->figures[index]), text);
  if (quantity)
    gtk_widget_set_tooltip_text (scopes->names[index],
                                 _(quantity->type->help));
}

static void
show_figures (CwPanelScopes *scopes)
{
  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    show_figure (scopes, i, cw_job_takeoff (scopes->job));
}

static const char *
id_of (GtkListBoxRow *row)
{
  return g_object_get_data (G_OBJECT (row), "elevation");
}

static void
row_chosen (CwPanelScopes *scopes, GtkListBoxRow *row)
{
  if (!row || scopes->showing)
    return;
  g_free (scopes->chosen);
  scopes->chosen = g_strdup (id_of (row));
  show_figures (scopes);
  g_signal_emit (scopes, signals[CHOSEN], 0);
}

static void
add_row (CwPanelScopes *scopes, const char *name, const char *id)
{
  GtkWidget *row = gtk_list_box_row_new ();
  GtkWidget *label = gtk_label_new (name);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), label);
  cw_widget_set_name (row, name);
  g_object_set_data_full (G_OBJECT (row), "elevation", g_strdup (id), g_free);
  gtk_list_box_append (GTK_LIST_BOX (scopes->box), row);
  if (g_strcmp0 (id, scopes->chosen) == 0)
    gtk_list_box_select_row (GTK_LIST_BOX (scopes->box),
                             GTK_LIST_BOX_ROW (row));
}

/* TRUE when the rows are those of @project, with their names. */
static gboolean
has_rows_of (CwPanelScopes *scopes, const CwProject *project)
{
  const int n = (int) cw_list_length (project->elevations);
  for (int i = 0; i < n; i++)
    {
      const CwElevation *elevation
          = cw_list_at (project->elevations, (gsize) i);
      GtkListBoxRow *row
          = gtk_list_box_get_row_at_index (GTK_LIST_BOX (scopes->box), i + 1);
      if (!row || g_strcmp0 (id_of (row), elevation->id) != 0
          || g_strcmp0 (gtk_label_get_text (GTK_LABEL (
                            gtk_list_box_row_get_child (row))),
                        *elevation->name ? elevation->name : elevation->id)
                 != 0)
        return FALSE;
    }
  return gtk_list_box_get_row_at_index (GTK_LIST_BOX (scopes->box), 0)
         && !gtk_list_box_get_row_at_index (GTK_LIST_BOX (scopes->box),
                                            n + 1);
}

static void
remake_rows (CwPanelScopes *scopes, const CwProject *project)
{
  GtkWidget *row;
  while ((row = gtk_widget_get_first_child (scopes->box)))
    gtk_list_box_remove (GTK_LIST_BOX (scopes->box), row);
  add_row (scopes, _("Whole project"), NULL);
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    {
      const CwElevation *elevation = cw_list_at (project->elevations, i);
      add_row (scopes, *elevation->name ? elevation->name : elevation->id,
               elevation->id);
    }
}

static void
refresh (CwPanelScopes *scopes)
{
  const CwProject *project
      = cw_document_project (cw_job_document (scopes->job));
  const char *former = scopes->chosen;
  scopes->showing = TRUE;
  if (former && !cw_project_elevation (project, former))
    g_clear_pointer (&scopes->chosen, g_free);
  if (!has_rows_of (scopes, project))
    remake_rows (scopes, project);
  scopes->showing = FALSE;
  show_figures (scopes);
  if (former && !scopes->chosen)
    g_signal_emit (scopes, signals[CHOSEN], 0);
}

void
cw_panel_scopes_choose (CwPanelScopes *scopes, const char *elevation_id)
{
  g_return_if_fail (CW_IS_PANEL_SCOPES (scopes));
  for (int i = 0;; i++)
    {
      GtkListBoxRow *row
          = gtk_list_box_get_row_at_index (GTK_LIST_BOX (scopes->box), i);
      if (!row)
        return;
      if (g_strcmp0 (id_of (row), elevation_id) == 0)
        gtk_list_box_select_row (GTK_LIST_BOX (scopes->box), row);
    }
}

void
cw_panel_scopes_set_job (CwPanelScopes *scopes, CwJob *job)
{
  g_return_if_fail (CW_IS_PANEL_SCOPES (scopes));
  g_return_if_fail (scopes->job == NULL);
  scopes->job = g_object_ref (job);
  g_signal_connect_object (cw_job_document (job), "changed",
                           G_CALLBACK (refresh), scopes, G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_job_estimator (job), "takeoff-changed",
                           G_CALLBACK (refresh), scopes, G_CONNECT_SWAPPED);
  g_signal_connect_object (job, "style-changed", G_CALLBACK (refresh),
                           scopes, G_CONNECT_SWAPPED);
  refresh (scopes);
}

static void
cw_panel_scopes_dispose (GObject *object)
{
  CwPanelScopes *scopes = CW_PANEL_SCOPES (object);
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (scopes))))
    gtk_widget_unparent (child);
  g_clear_object (&scopes->job);
  g_clear_pointer (&scopes->chosen, g_free);
  G_OBJECT_CLASS (cw_panel_scopes_parent_class)->dispose (object);
}

static void
cw_panel_scopes_class_init (CwPanelScopesClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_panel_scopes_dispose;
  signals[CHOSEN]
      = g_signal_new ("chosen", CW_TYPE_PANEL_SCOPES, G_SIGNAL_RUN_LAST, 0,
                      NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
}

static const char *
label_of (const char *key)
{
  for (guint i = 0; i < cw_n_quantity_types; i++)
    if (g_str_equal (cw_quantity_types[i].key, key))
      return _(cw_quantity_types[i].label);
  g_assert_not_reached ();
}

static GtkWidget *
new_figures (CwPanelScopes *scopes)
{
  GtkWidget *grid = gtk_grid_new ();
  gtk_grid_set_row_spacing (GTK_GRID (grid), 6);
  gtk_grid_set_column_spacing (GTK_GRID (grid), 12);
  gtk_widget_add_css_class (grid, "cw-placeholder");
  for (guint i = 0; i < G_N_ELEMENTS (keys); i++)
    {
      scopes->names[i] = gtk_label_new (label_of (keys[i]));
      scopes->figures[i] = gtk_label_new ("…");
      gtk_label_set_xalign (GTK_LABEL (scopes->names[i]), 0);
      gtk_label_set_wrap (GTK_LABEL (scopes->names[i]), TRUE);
      gtk_label_set_xalign (GTK_LABEL (scopes->figures[i]), 1);
      gtk_widget_set_hexpand (scopes->names[i], TRUE);
      gtk_widget_set_valign (scopes->figures[i], GTK_ALIGN_START);
      gtk_widget_add_css_class (scopes->names[i], "cw-dim");
      gtk_widget_add_css_class (scopes->figures[i], "cw-figure");
      gtk_grid_attach (GTK_GRID (grid), scopes->names[i], 0, (int) i, 1, 1);
      gtk_grid_attach (GTK_GRID (grid), scopes->figures[i], 1, (int) i, 1, 1);
    }
  return grid;
}

static void
cw_panel_scopes_init (CwPanelScopes *scopes)
{
  gtk_orientable_set_orientation (
      GTK_ORIENTABLE (gtk_widget_get_layout_manager (GTK_WIDGET (scopes))),
      GTK_ORIENTATION_VERTICAL);
  gtk_widget_set_parent (cw_panel_head_new (_("Panels for")),
                         GTK_WIDGET (scopes));
  scopes->box = gtk_list_box_new ();
  cw_widget_set_name (scopes->box, _("Panels for"));
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (scopes->box),
                                   GTK_SELECTION_BROWSE);
  g_signal_connect_swapped (scopes->box, "row-selected",
                            G_CALLBACK (row_chosen), scopes);
  gtk_widget_set_parent (scopes->box, GTK_WIDGET (scopes));
  gtk_widget_set_parent (cw_panel_head_new (_("In figures")),
                         GTK_WIDGET (scopes));
  gtk_widget_set_parent (new_figures (scopes), GTK_WIDGET (scopes));
}

GtkWidget *
cw_panel_scopes_new (void)
{
  return g_object_new (CW_TYPE_PANEL_SCOPES, NULL);
}
