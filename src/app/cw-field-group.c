/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-field-group.h"

#include "cw-field-edit.h"
#include "cw-field-row.h"
#include "cw-i18n.h"

/* No id has a blank in it. */
#define FROM_LIBRARY "from library"

struct _CwFieldGroup
{
  GtkWidget parent;
  CwJob *job;               /* borrowed */
  GPtrArray *paths;         /* CwNodePath */
  GPtrArray *rows;          /* CwFieldRow, borrowed from the widget tree */
};

G_DEFINE_FINAL_TYPE (CwFieldGroup, cw_field_group, GTK_TYPE_WIDGET)

static const CwProject *
project_of (CwFieldGroup *group)
{
  return cw_document_project (cw_job_document (group->job));
}

static const CwNode *
node_at (CwFieldGroup *group, guint i)
{
  return cw_node_path_find (group->paths->pdata[i], project_of (group));
}

/* Successive edits of one field of the same nodes are one step. */
static char *
merge_key (CwFieldGroup *group, const char *field)
{
  GString *key = g_string_new ("field:");
  for (guint i = 0; i < group->paths->len; i++)
    {
      g_autofree char *text = cw_node_path_text (group->paths->pdata[i]);
      g_string_append_printf (key, "%s:", text);
    }
  g_string_append (key, field);
  return g_string_free (key, FALSE);
}

static void
apply (CwFieldGroup *group, CwFieldRow *row, CwFieldChange *change)
{
  const CwField *field = cw_field_row_field (row);
  change->field = field->name;
  change->style = cw_job_style (group->job);
  g_autoptr (GError) error = NULL;
  g_autoptr (CwProject) next
      = cw_field_edit (project_of (group), group->paths, change, &error);
  cw_field_row_set_trouble (row, error ? error->message : NULL);
  if (!next)
    return;
  g_autofree char *name = g_strdup_printf (_("Change %s"), _(field->label));
  g_autofree char *key = merge_key (group, field->name);
  /* The edit may rebuild the inspector and drop this group. */
  g_autoptr (CwFieldGroup) alive = g_object_ref (group);
  cw_document_edit (cw_job_document (alive->job), next, name, key);
}

static void
number_given (CwFieldRow *row, gint64 value, CwFieldGroup *group)
{
  apply (group, row, &(CwFieldChange) { .kind = CW_SET_NUMBER,
                                        .number = value });
}

/* The window asks which, and gives it to the wall; until then the former one
 * is shown again. */
static void
choose_from_library (CwFieldGroup *group)
{
  gtk_widget_activate_action (GTK_WIDGET (group), "win.buildup-from-library",
                              NULL);
  cw_field_group_refresh (group);
}

static void
text_given (CwFieldRow *row, const char *text, CwFieldGroup *group)
{
  if (g_strcmp0 (text, FROM_LIBRARY) == 0)
    {
      choose_from_library (group);
      return;
    }
  apply (group, row, &(CwFieldChange) { .kind = CW_SET_TEXT, .text = text });
}

static void
taken_back (CwFieldRow *row, CwFieldGroup *group)
{
  apply (group, row, &(CwFieldChange) { .kind = CW_SET_NOTHING });
}

static void
row_left (CwFieldRow *row, CwFieldGroup *group)
{
  cw_document_seal (cw_job_document (group->job));
}

/* Everything that a reference may name, with words for it. */
static const CwList *
target_list (const CwProject *project, const char *kind)
{
  if (g_strcmp0 (kind, "buildup") == 0)
    return project->buildups;
  if (g_strcmp0 (kind, "sheet") == 0)
    return project->sheets;
  g_return_val_if_fail (g_strcmp0 (kind, "mark") == 0, project->marks);
  return project->marks;
}

static const char *
target_label (const CwNode *node)
{
  int name = cw_node_type_field (node->type, "name");
  const char *label = name >= 0 ? cw_node_get_text (node, (guint) name) : "";
  return *label ? label : cw_node_id (node);
}

static void
offer_targets (CwFieldGroup *group, CwFieldRow *row)
{
  const CwList *list = target_list (project_of (group),
                                    cw_field_row_field (row)->refers_to);
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();
  g_autoptr (GPtrArray) labels = g_ptr_array_new ();
  g_ptr_array_add (ids, (gpointer) "");
  g_ptr_array_add (labels, (gpointer) _("none"));
  for (gsize i = 0; i < cw_list_length (list); i++)
    {
      const CwNode *node = cw_list_at (list, i);
      g_ptr_array_add (ids, (gpointer) cw_node_id (node));
      g_ptr_array_add (labels, (gpointer) target_label (node));
    }
  if (list == project_of (group)->buildups)
    {
      g_ptr_array_add (ids, (gpointer) FROM_LIBRARY);
      g_ptr_array_add (labels, (gpointer) _("From the library…"));
    }
  g_ptr_array_add (ids, NULL);
  g_ptr_array_add (labels, NULL);
  cw_field_row_set_targets (row, (const char *const *) ids->pdata,
                            (const char *const *) labels->pdata);
}

/* An opening as its mark fills it in; any other node as it is. */
static CwNode *
resolved (CwFieldGroup *group, const CwNode *node)
{
  if (cw_node_is_opening (node))
    return (CwNode *) cw_project_resolve_opening (project_of (group),
                                                  (const CwOpening *) node);
  return cw_node_ref (node);
}

static gboolean
same_value (const CwField *field, const CwNode *a, const CwNode *b)
{
  int i = cw_node_type_field (a->type, field->name);
  int j = cw_node_type_field (b->type, field->name);
  if (i < 0 || j < 0)
    return FALSE;
  return cw_field_is_text (field)
             ? g_strcmp0 (cw_node_get_text (a, (guint) i),
                          cw_node_get_text (b, (guint) j)) == 0
             : cw_node_get (a, (guint) i) == cw_node_get (b, (guint) j);
}

static gboolean
all_alike (CwFieldGroup *group, const CwField *field, const CwNode *first)
{
  for (guint i = 1; i < group->paths->len; i++)
    {
      const CwNode *node = node_at (group, i);
      if (!node)
        continue;
      g_autoptr (CwNode) other = resolved (group, node);
      if (!same_value (field, first, other))
        return FALSE;
    }
  return TRUE;
}

static void
refresh_origin (CwFieldRow *row, const CwNode *node)
{
  const CwField *field = cw_field_row_field (row);
  if (!(field->flags & CW_FIELD_FROM_MARK))
    return;
  int index = cw_node_type_field (node->type, field->name);
  int mark = cw_node_type_field (node->type, "mark");
  gboolean has_mark = mark >= 0 && *cw_node_get_text (node, (guint) mark);
  gboolean stated = cw_node_states (node, (guint) index);
  cw_field_row_set_origin (row, has_mark && !stated, has_mark && stated);
}

static void
refresh_row (CwFieldGroup *group, CwFieldRow *row, const CwNode *node)
{
  const CwField *field = cw_field_row_field (row);
  g_autoptr (CwNode) first = resolved (group, node);
  guint index = (guint) cw_node_type_field (first->type, field->name);
  if (field->kind == CW_FIELD_REFERENCE)
    offer_targets (group, row);
  if (!all_alike (group, field, first))
    cw_field_row_show_mixed (row);
  else if (cw_field_is_text (field))
    cw_field_row_show_text (row, cw_node_get_text (first, index));
  else
    cw_field_row_show_number (row, cw_node_get (first, index));
  refresh_origin (row, node);
}

void
cw_field_group_refresh (CwFieldGroup *group)
{
  g_return_if_fail (CW_IS_FIELD_GROUP (group));
  const CwNode *node = node_at (group, 0);
  if (!node)
    return;
  for (guint i = 0; i < group->rows->len; i++)
    refresh_row (group, group->rows->pdata[i], node);
}

GtkWidget *
cw_field_group_row (CwFieldGroup *group, const char *field)
{
  g_return_val_if_fail (CW_IS_FIELD_GROUP (group), NULL);
  for (guint i = 0; i < group->rows->len; i++)
    if (g_strcmp0 (cw_field_row_field (group->rows->pdata[i])->name, field)
        == 0)
      return group->rows->pdata[i];
  return NULL;
}

void
cw_field_group_show_help (CwFieldGroup *group)
{
  g_return_if_fail (CW_IS_FIELD_GROUP (group));
  gtk_box_layout_set_spacing (
      GTK_BOX_LAYOUT (gtk_widget_get_layout_manager (GTK_WIDGET (group))),
      12);
  for (guint i = 0; i < group->rows->len; i++)
    cw_field_row_show_help (group->rows->pdata[i]);
}

static gboolean
all_have (CwFieldGroup *group, const CwField *field)
{
  for (guint i = 0; i < group->paths->len; i++)
    {
      const CwNode *node = node_at (group, i);
      int index = node ? cw_node_type_field (node->type, field->name) : -1;
      if (index < 0 || node->type->fields[index].kind != field->kind)
        return FALSE;
    }
  return TRUE;
}

static void
add_row (CwFieldGroup *group, const CwField *field)
{
  GtkWidget *row = cw_field_row_new (field, cw_job_style (group->job));
  g_signal_connect_object (row, "number-given", G_CALLBACK (number_given),
                           group, 0);
  g_signal_connect_object (row, "text-given", G_CALLBACK (text_given), group,
                           0);
  g_signal_connect_object (row, "taken-back", G_CALLBACK (taken_back), group,
                           0);
  g_signal_connect_object (row, "left", G_CALLBACK (row_left), group, 0);
  gtk_widget_set_parent (row, GTK_WIDGET (group));
  g_ptr_array_add (group->rows, row);
}

static void
add_title (CwFieldGroup *group, const char *title)
{
  GtkWidget *label = gtk_label_new (title);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_widget_add_css_class (label, "cw-heading");
  gtk_widget_set_parent (label, GTK_WIDGET (group));
}

static void
cw_field_group_dispose (GObject *object)
{
  CwFieldGroup *group = CW_FIELD_GROUP (object);
  GtkWidget *child;
  g_ptr_array_set_size (group->rows, 0);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (group))))
    gtk_widget_unparent (child);
  G_OBJECT_CLASS (cw_field_group_parent_class)->dispose (object);
}

static void
cw_field_group_finalize (GObject *object)
{
  CwFieldGroup *group = CW_FIELD_GROUP (object);
  g_ptr_array_unref (group->rows);
  g_clear_pointer (&group->paths, g_ptr_array_unref);
  G_OBJECT_CLASS (cw_field_group_parent_class)->finalize (object);
}

static void
cw_field_group_class_init (CwFieldGroupClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_field_group_dispose;
  G_OBJECT_CLASS (class)->finalize = cw_field_group_finalize;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (class),
                                        GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
cw_field_group_init (CwFieldGroup *group)
{
  GtkLayoutManager *layout
      = gtk_widget_get_layout_manager (GTK_WIDGET (group));
  gtk_orientable_set_orientation (GTK_ORIENTABLE (layout),
                                  GTK_ORIENTATION_VERTICAL);
  gtk_box_layout_set_spacing (GTK_BOX_LAYOUT (layout), 6);
  group->rows = g_ptr_array_new ();
}

GtkWidget *
cw_field_group_new (CwJob *job, const char *title, GPtrArray *paths)
{
  g_return_val_if_fail (CW_IS_JOB (job), NULL);
  g_return_val_if_fail (paths != NULL && paths->len > 0, NULL);
  CwFieldGroup *group = g_object_new (CW_TYPE_FIELD_GROUP, NULL);
  group->job = job;
  group->paths = paths;
  if (title)
    add_title (group, title);
  const CwNode *node = node_at (group, 0);
  g_return_val_if_fail (node != NULL, GTK_WIDGET (group));
  for (guint i = 0; i < node->type->n_fields; i++)
    if (all_have (group, &node->type->fields[i]))
      add_row (group, &node->type->fields[i]);
  cw_field_group_refresh (group);
  return GTK_WIDGET (group);
}
