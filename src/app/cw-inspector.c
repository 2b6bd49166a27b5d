/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-inspector-private.h"

#include "cw-edits.h"
#include "cw-field-group.h"
#include "cw-i18n.h"
#include "cw-late-button.h"

G_DEFINE_FINAL_TYPE (CwInspector, cw_inspector, GTK_TYPE_WIDGET)

const CwProject *
cw_inspector_project (CwInspector *inspector)
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

void
cw_inspector_add_single (CwInspector *inspector, GtkWidget *box,
                         const char *title, CwNodePath *path)
{
  GPtrArray *paths
      = g_ptr_array_new_with_free_func ((GDestroyNotify) cw_node_path_free);
  g_ptr_array_add (paths, path);
  add_group (inspector, box, title, paths);
}

static const CwElevation *
shown_elevation (CwInspector *inspector)
{
  return cw_document_elevation (cw_job_document (inspector->job));
}

/* The one unclad area that is selected, or NULL. */
static const CwNode *
selected_unclad (CwInspector *inspector)
{
  const char *const *ids
      = cw_document_selection (cw_job_document (inspector->job));
  const CwNode *node
      = ids[0] && !ids[1] ? cw_node_find (&cw_inspector_project (inspector)->node, ids[0])
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
      cw_inspector_add_single (inspector, box, title,
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
            cw_inspector_add_single (inspector, box, _(child->type->label),
                        cw_node_path_down (path, slot, (int) i));
          }
      }
    else if (cw_node_child (node, slot))
      cw_inspector_add_single (inspector, box, _(cw_node_child (node, slot)->type->label),
                  cw_node_path_down (path, slot, -1));
}

static void
vary_buildup (gpointer owner, gpointer data)
{
  CwInspector *inspector = owner;
  const CwElevation *elevation = shown_elevation (inspector);
  const CwBuildup *buildup
      = cw_project_buildup (cw_inspector_project (inspector), elevation->buildup);
  /* Translators: a new buildup that begins as the one named. */
  g_autofree char *name = g_strdup_printf (_("%s, varied"), buildup->name);
  g_autoptr (CwProject) next = cw_edit_vary_buildup (
      cw_inspector_project (inspector), elevation->id, name);
  cw_document_edit (cw_job_document (inspector->job), next,
                    _("Vary a buildup"), NULL);
}

static void
add_button (CwInspector *inspector, GtkWidget *box, const char *label,
            const char *tip, CwLateFunc pressed)
{
  GtkWidget *button
      = cw_late_button_new (label, pressed, G_OBJECT (inspector), NULL);
  gtk_widget_set_tooltip_text (button, tip);
  gtk_box_append (GTK_BOX (box), button);
}

static void
add_action_button (GtkWidget *box, const char *label, const char *action)
{
  GtkWidget *button = cw_framed_button_new (label);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  gtk_box_append (GTK_BOX (box), button);
}

static void
add_buildup (CwInspector *inspector, GtkWidget *box)
{
  const CwElevation *elevation = shown_elevation (inspector);
  const CwBuildup *buildup
      = cw_project_buildup (cw_inspector_project (inspector), elevation->buildup);
  CwNodePath *path = cw_node_path_new (buildup->id);
  cw_inspector_add_single (inspector, box, NULL, path);
  add_button (inspector, box, _("Vary it for this wall"),
              _("Makes a buildup like this one that only this wall has"),
              vary_buildup);
  add_action_button (box, _("Edit buildups…"), "win.buildups");
  add_child_groups (inspector, box, path, &buildup->node);
}

static void
new_mark (gpointer owner, gpointer data)
{
  CwInspector *inspector = owner;
  g_autoptr (CwProject) next = cw_edit_add_mark (cw_inspector_project (inspector));
  cw_document_edit (cw_job_document (inspector->job), next, _("Add a mark"),
                    NULL);
}

static void
add_marks (CwInspector *inspector, GtkWidget *box)
{
  const CwList *marks = cw_inspector_project (inspector)->marks;
  for (gsize i = 0; i < cw_list_length (marks); i++)
    {
      const CwMark *mark = cw_list_at (marks, i);
      cw_inspector_add_single (inspector, box, *mark->name ? mark->name : mark->id,
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
  cw_inspector_add_single (inspector, box, NULL,
              cw_node_path_down (root, CW_PROJECT_INFO, -1));
  cw_inspector_add_single (inspector, box, NULL, cw_node_path_new (NULL));
  cw_inspector_add_single (inspector, box, _("Measuring"),
              cw_node_path_down (root, CW_PROJECT_MEASURE, -1));
  cw_inspector_add_single (inspector, box, _("Limits of the checks"),
              cw_node_path_down (root, CW_PROJECT_LIMITS, -1));
  cw_inspector_add_single (inspector, box, _("Lifting"),
              cw_node_path_down (root, CW_PROJECT_LIFTING, -1));
  cw_inspector_add_single (inspector, box, _("Wind"),
              cw_node_path_down (root, CW_PROJECT_WIND, -1));
}

static void (*const fold_fillers[N_FOLDS]) (CwInspector *, GtkWidget *) = {
  [FOLD_SIDES] = add_sides,
  [FOLD_BUILDUP] = add_buildup,
  [FOLD_MARKS] = add_marks,
  [FOLD_PROJECT] = add_project,
  [FOLD_BID] = cw_inspector_add_bid,
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
      cw_inspector_add_single (inspector, inspector->box, _("Elevation"),
                  cw_node_path_new (elevation->id));
      if (elevation->outline)
        add_fold (inspector, FOLD_SIDES, _("Sides"));
      if (cw_project_buildup (cw_inspector_project (inspector), elevation->buildup))
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
      const CwNode *node = cw_node_find (&cw_inspector_project (inspector)->node, *id);
      if (node && node->type != &cw_elevation_type)
        g_ptr_array_add (paths, cw_node_path_new (*id));
    }
  return paths;
}

static char *
selection_title (CwInspector *inspector, const GPtrArray *paths)
{
  const CwNode *first
      = cw_node_path_find (paths->pdata[0], cw_inspector_project (inspector));
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
  const CwProject *project = cw_inspector_project (inspector);
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
  cw_inspector_append_bid_shape (shape, project);
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

/* A row that is taken away must not hold the focus. */
static void
drop_focus (CwInspector *inspector)
{
  GtkRoot *root = gtk_widget_get_root (GTK_WIDGET (inspector));
  GtkWidget *focus = root ? gtk_root_get_focus (root) : NULL;
  if (focus && gtk_widget_is_ancestor (focus, inspector->box))
    gtk_root_set_focus (root, NULL);
}

static void
rebuild (CwInspector *inspector, GPtrArray *paths)
{
  GtkWidget *child;
  if (!inspector->changing)
    scroll_to_top (inspector);
  drop_focus (inspector);
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
