/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-inspector.h"

#include "cw-bid-edits.h"
#include "cw-edits.h"
#include "cw-field-group.h"
#include "cw-i18n.h"

/* Parts that stay folded until they are wanted. */
typedef enum
{
  FOLD_SIDES,
  FOLD_BUILDUP,
  FOLD_MARKS,
  FOLD_PROJECT,
  FOLD_BID,
  N_FOLDS,
} Fold;

struct _CwInspector
{
  GtkWidget parent;
  GtkWidget *scroller, *box;
  CwJob *job;
  char *shape;              /* what is shown; equal: only values changed */
  GPtrArray *groups;        /* CwFieldGroup, borrowed */
  gboolean open[N_FOLDS];
  /* While a list changes: which one, and its button that adds. */
  gconstpointer changing;
  GtkWidget *adder;
};

G_DEFINE_FINAL_TYPE (CwInspector, cw_inspector, GTK_TYPE_WIDGET)

static const CwProject *
project_of (CwInspector *inspector)
{
  return cw_document_project (cw_job_document (inspector->job));
}

static void
add_group (CwInspector *inspector, GtkWidget *box, const char *title,
           GPtrArray *paths)
{
  GtkWidget *group = cw_field_group_new (inspector->job, title, paths);
  g_ptr_array_add (inspector->groups, group);
  gtk_box_append (GTK_BOX (box), group);
}

/* Takes @path. */
static void
add_single (CwInspector *inspector, GtkWidget *box, const char *title,
            CwNodePath *path)
{
  GPtrArray *paths
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_path_free);
  g_ptr_array_add (paths, path);
  add_group (inspector, box, title, paths);
}

static const CwElevation *
shown_elevation (CwInspector *inspector)
{
  const char *id
      = cw_document_elevation_id (cw_job_document (inspector->job));
  return id ? cw_project_elevation (project_of (inspector), id) : NULL;
}

/* The one unclad area that is selected, or NULL. */
static const CwNode *
selected_unclad (CwInspector *inspector)
{
  const char *const *ids
      = cw_document_selection (cw_job_document (inspector->job));
  const CwNode *node
      = ids[0] && !ids[1] ? cw_node_find (&project_of (inspector)->node, ids[0])
                          : NULL;
  return node && node->type == &cw_unclad_type ? node : NULL;
}

static void
add_corners (CwInspector *inspector, GtkWidget *box, const CwNodePath *path,
             guint slot, const CwList *corners)
{
  for (gsize i = 0; i < cw_list_length (corners); i++)
    {
      g_autofree char *title
          = g_strdup_printf (_("Side %u, from its corner"), (guint) i + 1);
      add_single (inspector, box, title,
                  cw_node_path_down (path, slot, (int) i));
    }
}

static void
add_sides (CwInspector *inspector, GtkWidget *box)
{
  const CwNode *unclad = selected_unclad (inspector);
  const CwElevation *elevation = shown_elevation (inspector);
  g_autoptr (CwNodePath) base
      = cw_node_path_new (unclad ? cw_node_id (unclad) : elevation->id);
  if (unclad)
    {
      add_corners (inspector, box, base, CW_UNCLAD_CORNERS,
                   cw_node_list (unclad, CW_UNCLAD_CORNERS));
      return;
    }
  const CwOutline *outline = (const CwOutline *) elevation->outline;
  g_autoptr (CwNodePath) to_outline
      = cw_node_path_down (base, CW_ELEVATION_OUTLINE, -1);
  add_corners (inspector, box, to_outline, CW_OUTLINE_CORNERS,
               outline->corners);
}

static void
add_child_groups (CwInspector *inspector, GtkWidget *box,
                  const CwNodePath *path, const CwNode *node)
{
  for (guint slot = 0; slot < node->type->n_slots; slot++)
    if (node->type->slots[slot].is_list)
      {
        const CwList *list = cw_node_list (node, slot);
        for (gsize i = 0; i < cw_list_length (list); i++)
          {
            const CwNode *child = cw_list_at (list, i);
            add_single (inspector, box, _(child->type->label),
                        cw_node_path_down (path, slot, (int) i));
          }
      }
    else if (cw_node_child (node, slot))
      add_single (inspector, box, _(cw_node_child (node, slot)->type->label),
                  cw_node_path_down (path, slot, -1));
}

static void
vary_buildup (CwInspector *inspector)
{
  const CwElevation *elevation = shown_elevation (inspector);
  const CwBuildup *buildup
      = cw_project_buildup (project_of (inspector), elevation->buildup);
  /* Translators: a new buildup that begins as the one named. */
  g_autofree char *name = g_strdup_printf (_("%s, varied"), buildup->name);
  g_autoptr (CwProject) next = cw_edit_vary_buildup (
      project_of (inspector), elevation->id, name);
  cw_document_edit (cw_job_document (inspector->job), next,
                    _("Vary a buildup"), NULL);
}

static void
add_button (CwInspector *inspector, GtkWidget *box, const char *label,
            const char *tip, void (*pressed) (CwInspector *))
{
  GtkWidget *button = gtk_button_new_with_label (label);
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  gtk_widget_add_css_class (button, "cw-framed");
  gtk_widget_set_tooltip_text (button, tip);
  g_signal_connect_object (button, "clicked", G_CALLBACK (pressed),
                           inspector, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (box), button);
}

static void
add_action_button (GtkWidget *box, const char *label, const char *action)
{
  GtkWidget *button = gtk_button_new_with_label (label);
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  gtk_widget_add_css_class (button, "cw-framed");
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  gtk_box_append (GTK_BOX (box), button);
}

static void
add_buildup (CwInspector *inspector, GtkWidget *box)
{
  const CwElevation *elevation = shown_elevation (inspector);
  const CwBuildup *buildup
      = cw_project_buildup (project_of (inspector), elevation->buildup);
  CwNodePath *path = cw_node_path_new (buildup->id);
  add_single (inspector, box, NULL, path);
  add_button (inspector, box, _("Vary it for this wall"),
              _("Makes a buildup like this one that only this wall has"),
              vary_buildup);
  add_action_button (box, _("Edit buildups…"), "win.buildups");
  add_child_groups (inspector, box, path, &buildup->node);
}

static void
new_mark (CwInspector *inspector)
{
  g_autoptr (CwProject) next = cw_edit_add_mark (project_of (inspector));
  cw_document_edit (cw_job_document (inspector->job), next, _("Add a mark"),
                    NULL);
}

static void
add_marks (CwInspector *inspector, GtkWidget *box)
{
  const CwList *marks = project_of (inspector)->marks;
  for (gsize i = 0; i < cw_list_length (marks); i++)
    {
      const CwMark *mark = cw_list_at (marks, i);
      add_single (inspector, box, *mark->name ? mark->name : mark->id,
                  cw_node_path_new (mark->id));
    }
  add_button (inspector, box, _("New mark"),
              _("A mark gives its size to every opening that has it"),
              new_mark);
}

static void
add_project (CwInspector *inspector, GtkWidget *box)
{
  g_autoptr (CwNodePath) root = cw_node_path_new (NULL);
  add_single (inspector, box, NULL,
              cw_node_path_down (root, CW_PROJECT_INFO, -1));
  add_single (inspector, box, NULL, cw_node_path_new (NULL));
  add_single (inspector, box, _("Measuring"),
              cw_node_path_down (root, CW_PROJECT_MEASURE, -1));
  add_single (inspector, box, _("Limits of the checks"),
              cw_node_path_down (root, CW_PROJECT_LIMITS, -1));
  add_single (inspector, box, _("Lifting"),
              cw_node_path_down (root, CW_PROJECT_LIFTING, -1));
  add_single (inspector, box, _("Wind"),
              cw_node_path_down (root, CW_PROJECT_WIND, -1));
}

/* A list of the project that grows and shrinks, in words. */
typedef struct
{
  guint slot;
  const char *add, *tip, *added, *remove, *removed;   /* N_() */
} GrowingList;

static const GrowingList growing_lists[] = {
  { CW_PROJECT_EQUIPMENT, N_ ("New equipment"),
    N_ ("What is hired or used up, once or by the day"),
    N_ ("Add equipment"), N_ ("Remove this equipment"),
    N_ ("Remove equipment") },
  { CW_PROJECT_OWN_LINES, N_ ("New line"),
    N_ ("A line of your own, for the project or by a quantity"),
    N_ ("Add an own line"), N_ ("Remove this line"),
    N_ ("Remove an own line") },
  { CW_PROJECT_ALTERNATES, N_ ("New alternate"),
    N_ ("Another buildup, priced beside the bid"), N_ ("Add an alternate"),
    N_ ("Remove this alternate"), N_ ("Remove an alternate") },
};

/* The edit takes the button away that was clicked, so it is made when GTK is
 * done with the click. */
typedef struct
{
  CwInspector *inspector;
  const GrowingList *list;
  gssize index;               /* -1: a new one */
} ListChange;

static void
list_change_free (gpointer data)
{
  ListChange *change = data;
  g_object_unref (change->inspector);
  g_free (change);
}

static gboolean
change_list (gpointer data)
{
  const ListChange *change = data;
  const GrowingList *list = change->list;
  CwInspector *inspector = change->inspector;
  const CwProject *project = project_of (inspector);
  const gsize n = cw_list_length (cw_node_list (&project->node, list->slot));
  if (change->index >= 0 && (gsize) change->index >= n)
    return G_SOURCE_REMOVE;
  g_autoptr (CwProject) next
      = change->index < 0
            ? cw_edit_add_to_list (project, list->slot)
            : cw_edit_remove_from_list (project, list->slot,
                                        (gsize) change->index);
  inspector->changing = list;
  gtk_root_set_focus (gtk_widget_get_root (GTK_WIDGET (inspector)), NULL);
  cw_document_edit (cw_job_document (inspector->job), next,
                    change->index < 0 ? _(list->added) : _(list->removed),
                    NULL);
  inspector->changing = NULL;
  if (inspector->adder)
    gtk_widget_grab_focus (inspector->adder);
  inspector->adder = NULL;
  return G_SOURCE_REMOVE;
}

static void
list_clicked (GtkWidget *button, CwInspector *inspector)
{
  ListChange *change = g_new0 (ListChange, 1);
  change->inspector = g_object_ref (inspector);
  change->list = g_object_get_data (G_OBJECT (button), "list");
  change->index = GPOINTER_TO_INT (g_object_get_data (G_OBJECT (button),
                                                      "index"));
  g_idle_add_full (G_PRIORITY_DEFAULT, change_list, change,
                   list_change_free);
}

static GtkWidget *
add_list_button (CwInspector *inspector, GtkWidget *box,
                 const GrowingList *list, const char *label, gssize index)
{
  GtkWidget *button = gtk_button_new_with_label (label);
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  gtk_widget_add_css_class (button, "cw-framed");
  g_object_set_data (G_OBJECT (button), "list", (gpointer) list);
  g_object_set_data (G_OBJECT (button), "index", GINT_TO_POINTER (index));
  g_signal_connect_object (button, "clicked", G_CALLBACK (list_clicked),
                           inspector, 0);
  gtk_box_append (GTK_BOX (box), button);
  return button;
}

static void
add_growing_list (CwInspector *inspector, GtkWidget *box,
                  const CwNodePath *root, const GrowingList *list)
{
  const CwList *nodes
      = cw_node_list (&project_of (inspector)->node, list->slot);
  for (gsize i = 0; i < cw_list_length (nodes); i++)
    {
      const CwNode *node = cw_list_at (nodes, i);
      add_single (inspector, box, _(node->type->label),
                  cw_node_path_down (root, list->slot, (int) i));
      add_list_button (inspector, box, list, _(list->remove), (gssize) i);
    }
  GtkWidget *button = add_list_button (inspector, box, list, _(list->add), -1);
  gtk_widget_set_tooltip_text (button, _(list->tip));
  if (inspector->changing == list)
    inspector->adder = button;
}

static void
add_bid (CwInspector *inspector, GtkWidget *box)
{
  g_autoptr (CwNodePath) root = cw_node_path_new (NULL);
  add_single (inspector, box, NULL,
              cw_node_path_down (root, CW_PROJECT_BID, -1));
  add_single (inspector, box, _("Truck"),
              cw_node_path_down (root, CW_PROJECT_TRUCK, -1));
  for (guint i = 0; i < G_N_ELEMENTS (growing_lists); i++)
    add_growing_list (inspector, box, root, &growing_lists[i]);
}

static void
append_growing_lists (GString *shape, const CwProject *project)
{
  for (guint i = 0; i < G_N_ELEMENTS (growing_lists); i++)
    g_string_append_printf (
        shape, " %d",
        (int) cw_list_length (
            cw_node_list (&project->node, growing_lists[i].slot)));
}

static void (*const fold_fillers[N_FOLDS]) (CwInspector *, GtkWidget *) = {
  [FOLD_SIDES] = add_sides,
  [FOLD_BUILDUP] = add_buildup,
  [FOLD_MARKS] = add_marks,
  [FOLD_PROJECT] = add_project,
  [FOLD_BID] = add_bid,
};

static void
fold_turned (GtkExpander *expander, GParamSpec *pspec, CwInspector *inspector)
{
  Fold fold = GPOINTER_TO_UINT (g_object_get_data (G_OBJECT (expander),
                                                   "fold"));
  inspector->open[fold] = gtk_expander_get_expanded (expander);
  GtkWidget *box = gtk_expander_get_child (expander);
  if (inspector->open[fold] && !gtk_widget_get_first_child (box))
    fold_fillers[fold](inspector, box);
}

static void
add_fold (CwInspector *inspector, Fold fold, const char *title)
{
  GtkWidget *expander = gtk_expander_new (title);
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  gtk_widget_set_margin_top (box, 6);
  gtk_widget_set_margin_start (box, 12);
  gtk_expander_set_child (GTK_EXPANDER (expander), box);
  g_object_set_data (G_OBJECT (expander), "fold", GUINT_TO_POINTER (fold));
  g_signal_connect_object (expander, "notify::expanded",
                           G_CALLBACK (fold_turned), inspector, 0);
  gtk_box_append (GTK_BOX (inspector->box), expander);
  gtk_expander_set_expanded (GTK_EXPANDER (expander), inspector->open[fold]);
}

static void
show_elevation (CwInspector *inspector)
{
  const CwElevation *elevation = shown_elevation (inspector);
  if (elevation)
    {
      add_single (inspector, inspector->box, _("Elevation"),
                  cw_node_path_new (elevation->id));
      if (elevation->outline)
        add_fold (inspector, FOLD_SIDES, _("Sides"));
      if (cw_project_buildup (project_of (inspector), elevation->buildup))
        add_fold (inspector, FOLD_BUILDUP, _("Buildup"));
    }
  add_fold (inspector, FOLD_MARKS, _("Marks"));
  add_fold (inspector, FOLD_PROJECT, _("Project"));
  add_fold (inspector, FOLD_BID, _("Bid"));
}

/* What is selected and still there; the elevation itself counts as nothing
 * selected. */
static GPtrArray *
selected_paths (CwInspector *inspector)
{
  GPtrArray *paths
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_path_free);
  for (const char *const *id
       = cw_document_selection (cw_job_document (inspector->job));
       *id; id++)
    {
      const CwNode *node = cw_node_find (&project_of (inspector)->node, *id);
      if (node && node->type != &cw_elevation_type)
        g_ptr_array_add (paths, cw_node_path_new (*id));
    }
  return paths;
}

static char *
selection_title (CwInspector *inspector, const GPtrArray *paths)
{
  const CwNode *first
      = cw_node_path_find (paths->pdata[0], project_of (inspector));
  if (paths->len == 1)
    return g_strdup (_(first->type->label));
  return g_strdup_printf (
      g_dngettext (GETTEXT_PACKAGE, "%u selected", "%u selected", paths->len),
      paths->len);
}

static void
show_selection (CwInspector *inspector, GPtrArray *paths)
{
  g_autofree char *title = selection_title (inspector, paths);
  add_group (inspector, inspector->box, title, g_ptr_array_ref (paths));
  if (selected_unclad (inspector))
    add_fold (inspector, FOLD_SIDES, _("Sides"));
}

/* Which layers the buildup has, and how many of each. */
static void
append_layers (GString *shape, const CwBuildup *buildup)
{
  for (guint slot = 0; buildup && slot < cw_buildup_type.n_slots; slot++)
    g_string_append_printf (
        shape, " %d",
        cw_buildup_type.slots[slot].is_list
            ? (int) cw_list_length (cw_node_list (&buildup->node, slot))
            : cw_node_child (&buildup->node, slot) != NULL);
}

/* Changes when other rows are needed, stays when only values changed. */
static char *
shape_now (CwInspector *inspector, const GPtrArray *paths)
{
  const CwProject *project = project_of (inspector);
  GString *shape = g_string_new (NULL);
  for (guint i = 0; i < paths->len; i++)
    {
      const CwNode *node = cw_node_path_find (paths->pdata[i], project);
      const guint n_corners
          = node->type == &cw_unclad_type
                ? (guint) cw_list_length (
                      cw_node_list (node, CW_UNCLAD_CORNERS))
                : 0;
      g_string_append_printf (shape, "%s=%s/%u ", cw_node_id (node),
                              node->type->element, n_corners);
    }
  const CwElevation *elevation = shown_elevation (inspector);
  if (elevation)
    {
      const CwOutline *outline = (const CwOutline *) elevation->outline;
      g_string_append_printf (
          shape, "in %s %s %d", elevation->id, elevation->buildup,
          outline ? (int) cw_list_length (outline->corners) : -1);
    }
  if (elevation)
    append_layers (shape, cw_project_buildup (project, elevation->buildup));
  g_string_append_printf (shape, " %d %d", (int) project->units,
                          (int) cw_list_length (project->marks));
  append_growing_lists (shape, project);
  return g_string_free (shape, FALSE);
}

/* What is selected next is read from its beginning. */
static void
scroll_to_top (CwInspector *inspector)
{
  gtk_adjustment_set_value (
      gtk_scrolled_window_get_vadjustment (
          GTK_SCROLLED_WINDOW (inspector->scroller)),
      0);
}

static void
rebuild (CwInspector *inspector, GPtrArray *paths)
{
  GtkWidget *child;
  if (!inspector->changing)
    scroll_to_top (inspector);
  g_ptr_array_set_size (inspector->groups, 0);
  while ((child = gtk_widget_get_first_child (inspector->box)))
    gtk_box_remove (GTK_BOX (inspector->box), child);
  if (paths->len > 0)
    show_selection (inspector, paths);
  else
    show_elevation (inspector);
}

static void
update (CwInspector *inspector)
{
  g_autoptr (GPtrArray) paths = selected_paths (inspector);
  g_autofree char *shape = shape_now (inspector, paths);
  if (g_strcmp0 (shape, inspector->shape) == 0)
    {
      for (guint i = 0; i < inspector->groups->len; i++)
        cw_field_group_refresh (inspector->groups->pdata[i]);
      return;
    }
  g_free (inspector->shape);
  inspector->shape = g_steal_pointer (&shape);
  rebuild (inspector, paths);
}

GtkWidget *
cw_inspector_row (CwInspector *inspector, const char *field)
{
  g_return_val_if_fail (CW_IS_INSPECTOR (inspector), NULL);
  for (guint i = 0; i < inspector->groups->len; i++)
    {
      GtkWidget *row = cw_field_group_row (inspector->groups->pdata[i], field);
      if (row)
        return row;
    }
  return NULL;
}

void
cw_inspector_set_job (CwInspector *inspector, CwJob *job)
{
  g_return_if_fail (CW_IS_INSPECTOR (inspector));
  g_return_if_fail (inspector->job == NULL);
  inspector->job = g_object_ref (job);
  CwDocument *document = cw_job_document (job);
  g_signal_connect_object (document, "changed", G_CALLBACK (update),
                           inspector, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "selection-changed",
                           G_CALLBACK (update), inspector,
                           G_CONNECT_SWAPPED);
  update (inspector);
}

static void
cw_inspector_dispose (GObject *object)
{
  CwInspector *inspector = CW_INSPECTOR (object);
  g_ptr_array_set_size (inspector->groups, 0);
  g_clear_pointer (&inspector->scroller, gtk_widget_unparent);
  G_OBJECT_CLASS (cw_inspector_parent_class)->dispose (object);
}

static void
cw_inspector_finalize (GObject *object)
{
  CwInspector *inspector = CW_INSPECTOR (object);
  g_ptr_array_unref (inspector->groups);
  g_clear_object (&inspector->job);
  g_free (inspector->shape);
  G_OBJECT_CLASS (cw_inspector_parent_class)->finalize (object);
}

static void
cw_inspector_class_init (CwInspectorClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_inspector_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_inspector_finalize;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class),
                                        GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
cw_inspector_init (CwInspector *inspector)
{
  inspector->groups = g_ptr_array_new ();
  inspector->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);
  gtk_widget_set_margin_start (inspector->box, 12);
  gtk_widget_set_margin_end (inspector->box, 12);
  gtk_widget_set_margin_top (inspector->box, 12);
  gtk_widget_set_margin_bottom (inspector->box, 12);
  inspector->scroller = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (inspector->scroller),
                                  GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (inspector->scroller),
                                 inspector->box);
  gtk_widget_set_parent (inspector->scroller, GTK_WIDGET (inspector));
  gtk_accessible_update_property (GTK_ACCESSIBLE (inspector),
                                  GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  _("Attributes"), -1);
}

GtkWidget *
cw_inspector_new (void)
{
  return g_object_new (CW_TYPE_INSPECTOR, NULL);
}
