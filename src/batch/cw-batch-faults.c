/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A wall whose outline crosses itself can be drawn, saved and opened, so that
 * no work is lost; but a takeoff that leaves it out in silence would be
 * wrong.
 */
#include "cw-batch.h"
#include "cw-file-error.h"
#include "cw-i18n.h"

typedef struct
{
  GHashTable *lines;          /* by id */
  GPtrArray *faults;
} Search;

static void
add_fault (Search *search, const CwNode *node, const char *sentence)
{
  GError *error = NULL;
  const char *id = cw_node_id (node);
  cw_file_error_set (&error, CW_FILE_ERROR_SENSE,
                     cw_project_xml_line (search->lines, id),
                     "<%s id=\"%s\"> %s", node->type->element, id, sentence);
  g_ptr_array_add (search->faults, error);
}

static void
check_corners (Search *search, const CwNode *node, const CwList *list)
{
  g_autoptr (GArray) corners = cw_corners_from_list (list);
  CwOutlineCheck check
      = cw_outline_check ((const CwCorner *)corners->data, corners->len);
  if (check.fault == CW_OUTLINE_VALID)
    return;
  g_autofree char *text = cw_outline_check_text (&check);
  g_autofree char *sentence
      = g_strdup_printf (_ ("cannot be measured: %s"), text);
  add_fault (search, node, sentence);
}

static void
check_elevation (Search *search, const CwElevation *elevation)
{
  if (elevation->outline)
    check_corners (search, &elevation->node,
                   ((CwOutline *)elevation->outline)->corners);
  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      const CwNode *item = cw_list_at (elevation->items, i);
      if (item->type == &cw_unclad_type)
        check_corners (search, item, ((const CwUnclad *)item)->corners);
    }
}

GPtrArray *
cw_batch_faults (const CwProject *project, GHashTable *lines)
{
  Search search
      = { lines,
          g_ptr_array_new_with_free_func ((GDestroyNotify)g_error_free) };
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    check_elevation (&search, cw_list_at (project->elevations, i));
  return search.faults;
}
