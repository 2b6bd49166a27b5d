/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-document.h"

#include <string.h>

/* A state of the project and how it came about. */
typedef struct
{
  CwProject *project;
  char *name;           /* of the edit that made it; NULL for the first */
  char *merge;          /* (nullable) */
  char **selection;
  char *elevation_id;   /* (nullable) */
} Step;

struct _CwDocument
{
  GObject parent_instance;

  GPtrArray *steps;     /* Step, oldest first; never empty */
  guint present;        /* index of the one being worked on */
  gboolean sealed;      /* the next edit is a step of its own */
  CwProject *saved;     /* (nullable) */
  GHashTable *selected; /* set of the strings of the present selection */
};

enum
{
  CHANGED,
  SELECTION_CHANGED,
  SAVED_CHANGED,
  N_SIGNALS,
};

static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (CwDocument, cw_document, G_TYPE_OBJECT)

static void
step_free (gpointer data)
{
  Step *step = data;

  cw_node_unref (step->project);
  g_free (step->name);
  g_free (step->merge);
  g_strfreev (step->selection);
  g_free (step->elevation_id);
  g_free (step);
}

static Step *
step_new (const CwProject *project, const char *name, const char *merge)
{
  Step *step = g_new0 (Step, 1);

  step->project = cw_node_ref (project);
  step->name = g_strdup (name);
  step->merge = g_strdup (merge);
  step->selection = g_new0 (char *, 1);
  return step;
}

static Step *
step_at (CwDocument *self, guint index)
{
  return g_ptr_array_index (self->steps, index);
}

static Step *
present (CwDocument *self)
{
  return step_at (self, self->present);
}

static void
cw_document_finalize (GObject *object)
{
  CwDocument *self = CW_DOCUMENT (object);

  g_hash_table_unref (self->selected);
  g_ptr_array_unref (self->steps);
  g_clear_pointer (&self->saved, cw_node_unref);
  G_OBJECT_CLASS (cw_document_parent_class)->finalize (object);
}

static guint
add_signal (CwDocumentClass *klass, const char *name)
{
  return g_signal_new (name, G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                       NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
cw_document_class_init (CwDocumentClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = cw_document_finalize;
  signals[CHANGED] = add_signal (klass, "changed");
  signals[SELECTION_CHANGED] = add_signal (klass, "selection-changed");
  signals[SAVED_CHANGED] = add_signal (klass, "saved-changed");
}

static void
cw_document_init (CwDocument *self)
{
  self->steps = g_ptr_array_new_with_free_func (step_free);
  self->selected = g_hash_table_new (g_str_hash, g_str_equal);
}

CwDocument *
cw_document_new (const CwProject *project)
{
  CwDocument *self;

  g_return_val_if_fail (project != NULL, NULL);

  self = g_object_new (CW_TYPE_DOCUMENT, NULL);
  g_ptr_array_add (self->steps, step_new (project, NULL, NULL));
  self->saved = cw_node_ref (project);
  return self;
}

const CwProject *
cw_document_project (CwDocument *self)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), NULL);

  return present (self)->project;
}

/* What listeners know, held while something changes: to tell them afterwards
 * what is new, each thing once. */
typedef struct
{
  CwProject *project;
  char **selection;
  char *elevation_id;
  gboolean saved;
} Before;

static Before
before_change (CwDocument *self)
{
  Step *step = present (self);

  return (Before) {
    cw_node_ref (step->project),
    g_strdupv (step->selection),
    g_strdup (step->elevation_id),
    cw_document_is_saved (self),
  };
}

static gboolean
selection_differs (const Before *before, const Step *step)
{
  return g_strcmp0 (before->elevation_id, step->elevation_id) != 0
         || !g_strv_equal ((const char *const *) before->selection,
                           (const char *const *) step->selection);
}

static void
index_selection (CwDocument *self)
{
  g_hash_table_remove_all (self->selected);
  for (char **id = present (self)->selection; *id; id++)
    g_hash_table_add (self->selected, *id);
}

static void
after_change (CwDocument *self, Before *before)
{
  gboolean changed = before->project != present (self)->project;
  gboolean selected = selection_differs (before, present (self));
  gboolean saved = before->saved != cw_document_is_saved (self);

  index_selection (self);
  cw_node_unref (before->project);
  g_strfreev (before->selection);
  g_free (before->elevation_id);

  g_object_ref (self);
  if (changed)
    g_signal_emit (self, signals[CHANGED], 0);
  if (selected)
    g_signal_emit (self, signals[SELECTION_CHANGED], 0);
  if (saved)
    g_signal_emit (self, signals[SAVED_CHANGED], 0);
  g_object_unref (self);
}

/* Takes the ids of all that is in @node out of @ids. */
static void
strike_out_ids (const CwNode *node, GHashTable *ids)
{
  const char *id = cw_node_id (node);

  if (id)
    g_hash_table_remove (ids, id);
  for (guint slot = 0; slot < node->type->n_slots; slot++)
    if (node->type->slots[slot].is_list)
      {
        const CwList *list = cw_node_list (node, slot);

        for (gsize i = 0; i < cw_list_length (list); i++)
          strike_out_ids (cw_list_at (list, i), ids);
      }
}

/* The ids of @selection that @project holds. */
static char **
surviving (char **selection, const CwProject *project)
{
  g_autoptr (GHashTable) gone = g_hash_table_new (g_str_hash, g_str_equal);
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();

  for (char **id = selection; *id; id++)
    g_hash_table_add (gone, *id);
  if (*selection)
    strike_out_ids (&project->node, gone);
  for (char **id = selection; *id; id++)
    if (!g_hash_table_contains (gone, *id))
      g_strv_builder_add (builder, *id);
  return g_strv_builder_end (builder);
}

/* Goes on with what is selected and shown in @from. */
static void
carry_over (Step *step, const Step *from)
{
  g_auto (GStrv) selection = surviving (from->selection, step->project);
  g_autofree char *elevation_id = g_strdup (from->elevation_id);

  if (!cw_project_elevation (step->project, elevation_id))
    g_clear_pointer (&elevation_id, g_free);
  g_strfreev (step->selection);
  step->selection = g_steal_pointer (&selection);
  g_free (step->elevation_id);
  step->elevation_id = g_steal_pointer (&elevation_id);
}

static gboolean
merges (CwDocument *self, const char *merge)
{
  return merge && !self->sealed && self->present > 0
         && g_strcmp0 (present (self)->merge, merge) == 0;
}

static void
drop_redo (CwDocument *self)
{
  g_ptr_array_set_size (self->steps, (int) self->present + 1);
}

static void
add_step (CwDocument *self, const CwProject *project, const char *name,
          const char *merge)
{
  Step *step = step_new (project, name, merge);

  carry_over (step, present (self));
  drop_redo (self);
  g_ptr_array_add (self->steps, step);
  if (self->steps->len > CW_DOCUMENT_STEPS_MOST + 1)
    g_ptr_array_remove_index (self->steps, 0);
  self->present = self->steps->len - 1;
  self->sealed = FALSE;
}

static void
merge_step (CwDocument *self, const CwProject *project)
{
  Step *step = present (self);
  Step *former = step_at (self, self->present - 1);
  CwProject *replaced = step->project;

  drop_redo (self);
  step->project = cw_node_ref (project);
  cw_node_unref (replaced);
  carry_over (step, step);
  if (former->project != project)
    return;
  carry_over (former, step);
  self->present--;
  drop_redo (self);
  self->sealed = TRUE;
}

void
cw_document_edit (CwDocument *self, const CwProject *project, const char *name,
                  const char *merge)
{
  Before before;

  g_return_if_fail (CW_IS_DOCUMENT (self));
  g_return_if_fail (project != NULL && name != NULL);

  if (project == present (self)->project)
    return;
  before = before_change (self);
  if (merges (self, merge))
    merge_step (self, project);
  else
    add_step (self, project, name, merge);
  after_change (self, &before);
}

void
cw_document_seal (CwDocument *self)
{
  g_return_if_fail (CW_IS_DOCUMENT (self));

  self->sealed = TRUE;
}

const CwProject *
cw_document_run_base (CwDocument *self)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), NULL);

  return self->present > 0 && !self->sealed && present (self)->merge
             ? step_at (self, self->present - 1)->project
             : NULL;
}

gboolean
cw_document_can_undo (CwDocument *self)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), FALSE);

  return self->present > 0;
}

gboolean
cw_document_can_redo (CwDocument *self)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), FALSE);

  return self->present + 1 < self->steps->len;
}

const char *
cw_document_undo_name (CwDocument *self)
{
  return cw_document_can_undo (self) ? present (self)->name : NULL;
}

const char *
cw_document_redo_name (CwDocument *self)
{
  return cw_document_can_redo (self) ? step_at (self, self->present + 1)->name
                                     : NULL;
}

static void
go_to (CwDocument *self, guint step)
{
  Before before = before_change (self);

  self->present = step;
  self->sealed = TRUE;
  after_change (self, &before);
}

void
cw_document_undo (CwDocument *self)
{
  if (cw_document_can_undo (self))
    go_to (self, self->present - 1);
}

void
cw_document_redo (CwDocument *self)
{
  if (cw_document_can_redo (self))
    go_to (self, self->present + 1);
}

guint
cw_document_n_states (CwDocument *self)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), 0);

  return self->steps->len;
}

guint
cw_document_present_state (CwDocument *self)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), 0);

  return self->present;
}

const char *
cw_document_state_name (CwDocument *self, guint state)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), NULL);
  g_return_val_if_fail (state < self->steps->len, NULL);

  return step_at (self, state)->name;
}

void
cw_document_go_to_state (CwDocument *self, guint state)
{
  g_return_if_fail (CW_IS_DOCUMENT (self));
  g_return_if_fail (state < self->steps->len);

  if (state != self->present)
    go_to (self, state);
}

const char *const *
cw_document_selection (CwDocument *self)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), NULL);

  return (const char *const *) present (self)->selection;
}

void
cw_document_select (CwDocument *self, const char *const *ids)
{
  static const char *const nothing[] = { NULL };
  char **selection;
  Before before;

  g_return_if_fail (CW_IS_DOCUMENT (self));

  before = before_change (self);
  selection = g_strdupv ((char **) (ids ? ids : nothing));
  g_strfreev (present (self)->selection);
  present (self)->selection = selection;
  after_change (self, &before);
}

gboolean
cw_document_is_selected (CwDocument *self, const char *id)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), FALSE);

  return g_hash_table_contains (self->selected, id);
}

const char *
cw_document_elevation_id (CwDocument *self)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), NULL);

  return present (self)->elevation_id;
}

const CwElevation *
cw_document_elevation (CwDocument *self)
{
  const char *id = cw_document_elevation_id (self);

  return id ? cw_project_elevation (cw_document_project (self), id) : NULL;
}

void
cw_document_show_elevation (CwDocument *self, const char *id)
{
  char *shown;
  Before before;

  g_return_if_fail (CW_IS_DOCUMENT (self));

  before = before_change (self);
  shown = g_strdup (id);
  g_free (present (self)->elevation_id);
  present (self)->elevation_id = shown;
  after_change (self, &before);
}

void
cw_document_mark_saved (CwDocument *self, const CwProject *project)
{
  Before before;
  CwProject *former;

  g_return_if_fail (CW_IS_DOCUMENT (self));

  before = before_change (self);
  former = self->saved;
  self->saved = project ? cw_node_ref (project) : NULL;
  self->sealed = TRUE;
  g_clear_pointer (&former, cw_node_unref);
  after_change (self, &before);
}

gboolean
cw_document_is_saved (CwDocument *self)
{
  g_return_val_if_fail (CW_IS_DOCUMENT (self), FALSE);

  return present (self)->project == self->saved;
}
