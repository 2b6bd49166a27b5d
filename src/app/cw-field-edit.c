/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-field-edit.h"

#include "cw-edit.h"
#include "cw-i18n.h"

static CwNode *
changed_node (const CwNode *node, guint index, const CwFieldChange *change)
{
  CwNode *copy = cw_node_copy (node);
  switch (change->kind)
    {
    case CW_SET_NUMBER:
      cw_node_set (copy, index, change->number);
      break;
    case CW_SET_TEXT:
      cw_node_set_text (copy, index, change->text);
      break;
    case CW_SET_NOTHING:
    default:
      cw_node_unset (copy, index);
    }
  return copy;
}

static void
refuse_rise (const CwOpening *arch, const CwTextStyle *style, GError **error)
{
  CwLength least, most;
  cw_arch_rise_limits ((CwArchHead) arch->head, arch->width, &least, &most);
  g_autofree char *low = cw_length_format (least, style);
  g_autofree char *high = cw_length_format (most, style);
  g_set_error (error, G_IO_ERROR, G_IO_ERROR_INVALID_DATA,
               _("Over this width such a head rises %s to %s."), low, high);
}

/* A half circle's rise follows from its width; other heads have limits.
 * Consumes @node; NULL with @error when it cannot be built. */
static CwNode *
settled (const CwProject *project, CwNode *node, const CwFieldChange *change,
         GError **error)
{
  if (node->type != &cw_arch_type)
    return node;
  g_autoptr (CwNode) arch_node = node;
  g_autoptr (CwOpening) arch
      = cw_project_resolve_opening (project, (CwOpening *) node);
  CwArchHead head = (CwArchHead) arch->head;
  if (cw_arch_is_possible (head, arch->width, arch->rise))
    return g_steal_pointer (&arch_node);
  if (head != CW_ARCH_SEMICIRCULAR || g_strcmp0 (change->field, "rise") == 0)
    {
      refuse_rise (arch, change->style, error);
      return NULL;
    }
  CwNode *fitted = cw_node_copy (node);
  cw_node_put (fitted, "rise", arch->width / 2);
  return fitted;
}

static gboolean
outline_is_sound (const CwProject *project, const CwNodePath *path,
                  GError **error)
{
  const CwNode *owner = path->id ? cw_node_find (&project->node, path->id)
                                 : NULL;
  if (!owner || owner->type != &cw_elevation_type || path->n_steps != 2)
    return TRUE;
  const CwOutline *outline
      = (const CwOutline *) ((const CwElevation *) owner)->outline;
  g_autoptr (GArray) corners = cw_corners_from_list (outline->corners);
  CwOutlineCheck check
      = cw_outline_check ((const CwCorner *) corners->data, corners->len);
  if (check.fault == CW_OUTLINE_VALID)
    return TRUE;
  g_autofree char *text = cw_outline_check_text (&check);
  g_set_error_literal (error, G_IO_ERROR, G_IO_ERROR_INVALID_DATA, text);
  return FALSE;
}

static CwProject *
edit_one (const CwProject *project, const CwNodePath *path,
          const CwFieldChange *change, GError **error)
{
  const CwNode *node = cw_node_path_find (path, project);
  int index = node ? cw_node_type_field (node->type, change->field) : -1;
  if (index < 0)
    return cw_node_ref (project);
  g_autoptr (CwNode) next
      = settled (project, changed_node (node, (guint) index, change), change,
                 error);
  if (!next)
    return NULL;
  if (cw_node_equal (node, next))
    return cw_node_ref (project);
  g_autoptr (CwProject) result = cw_edit_replace (project, node, next);
  return outline_is_sound (result, path, error) ? g_steal_pointer (&result)
                                                : NULL;
}

CwProject *
cw_field_edit (const CwProject *project, const GPtrArray *paths,
               const CwFieldChange *change, GError **error)
{
  g_return_val_if_fail (project != NULL && paths != NULL, NULL);
  CwProject *next = cw_node_ref (project);
  for (guint i = 0; next && i < paths->len; i++)
    {
      g_autoptr (CwNode) former = (CwNode *) next;
      next = edit_one ((CwProject *) former, paths->pdata[i], change, error);
    }
  return next;
}
