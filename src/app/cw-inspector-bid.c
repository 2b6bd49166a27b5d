/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The inspector's fold of the bid: what the price is made of, and the lists
 * of equipment, own lines and alternates.
 */
#include "cw-inspector-private.h"

#include "cw-bid-edits.h"
#include "cw-i18n.h"
#include "cw-late-button.h"

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

typedef struct
{
  const GrowingList *list;
  gssize index;               /* -1: a new one */
} ListChange;

/* (transfer full) (nullable): NULL when the element is gone by now */
static CwProject *
changed_list (const CwProject *project, const ListChange *change)
{
  const guint slot = change->list->slot;
  const gsize n = cw_list_length (cw_node_list (&project->node, slot));
  if (change->index < 0)
    return cw_edit_add_to_list (project, slot);
  return (gsize) change->index < n
             ? cw_edit_remove_from_list (project, slot, (gsize) change->index)
             : NULL;
}

static void
change_list (gpointer owner, gpointer data)
{
  CwInspector *inspector = owner;
  const ListChange *change = data;
  const GrowingList *list = change->list;
  g_autoptr (CwProject) next
      = changed_list (cw_inspector_project (inspector), change);
  if (!next)
    return;
  inspector->changing = list;
  cw_document_edit (cw_job_document (inspector->job), next,
                    change->index < 0 ? _(list->added) : _(list->removed),
                    NULL);
  inspector->changing = NULL;
  if (inspector->adder)
    gtk_widget_grab_focus (inspector->adder);
  inspector->adder = NULL;
}

static GtkWidget *
add_list_button (CwInspector *inspector, GtkWidget *box,
                 const GrowingList *list, const char *label, gssize index)
{
  ListChange *change = g_new (ListChange, 1);
  *change = (ListChange){ list, index };
  GtkWidget *button = cw_late_button_new (label, change_list,
                                          G_OBJECT (inspector), change);
  gtk_box_append (GTK_BOX (box), button);
  return button;
}

static void
add_growing_list (CwInspector *inspector, GtkWidget *box,
                  const CwNodePath *root, const GrowingList *list)
{
  const CwList *nodes
      = cw_node_list (&cw_inspector_project (inspector)->node, list->slot);
  for (gsize i = 0; i < cw_list_length (nodes); i++)
    {
      const CwNode *node = cw_list_at (nodes, i);
      cw_inspector_add_single (inspector, box, _(node->type->label),
                  cw_node_path_down (root, list->slot, (int) i));
      add_list_button (inspector, box, list, _(list->remove), (gssize) i);
    }
  GtkWidget *button = add_list_button (inspector, box, list, _(list->add), -1);
  gtk_widget_set_tooltip_text (button, _(list->tip));
  if (inspector->changing == list)
    inspector->adder = button;
}

void
cw_inspector_add_bid (CwInspector *inspector, GtkWidget *box)
{
  g_autoptr (CwNodePath) root = cw_node_path_new (NULL);
  cw_inspector_add_single (inspector, box, NULL,
              cw_node_path_down (root, CW_PROJECT_BID, -1));
  cw_inspector_add_single (inspector, box, _("Truck"),
              cw_node_path_down (root, CW_PROJECT_TRUCK, -1));
  for (guint i = 0; i < G_N_ELEMENTS (growing_lists); i++)
    add_growing_list (inspector, box, root, &growing_lists[i]);
}

void
cw_inspector_append_bid_shape (GString *shape, const CwProject *project)
{
  for (guint i = 0; i < G_N_ELEMENTS (growing_lists); i++)
    g_string_append_printf (
        shape, " %d",
        (int) cw_list_length (
            cw_node_list (&project->node, growing_lists[i].slot)));
}
