/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Rules of sense: what the grammar lets pass but no building can be.
 */
#include "cw-file-error.h"
#include "cw-i18n.h"
#include "cw-project-reading.h"
#include "cw-project-value.h"

typedef struct
{
  const CwReading *reading;
  const CwProject *project;
  GError **error;
} Judge;

static gboolean check_node (const Judge *judge, const CwNode *node);

G_GNUC_PRINTF (3, 4)
static gboolean
refuse (const Judge *judge, const CwNode *node, const char *format, ...)
{
  va_list arguments;
  va_start (arguments, format);
  g_autofree char *sentence = g_strdup_vprintf (format, arguments);
  va_end (arguments);
  const xmlNode *element = g_hash_table_lookup (judge->reading->elements, node);
  g_autofree char *name = cw_xml_describe (element);
  cw_file_error_set (judge->error, CW_FILE_ERROR_SENSE, cw_xml_line (element),
                     "%s %s", name, sentence);
  return FALSE;
}

/* References */

static char *
ids_of_type (const CwReading *reading, const char *element)
{
  g_autoptr (GList) ids = g_hash_table_get_keys (reading->ids);
  ids = g_list_sort (ids, (GCompareFunc)g_strcmp0);
  GString *text = g_string_new (NULL);
  for (const GList *at = ids; at; at = at->next)
    {
      const CwNode *node = g_hash_table_lookup (reading->ids, at->data);
      if (g_str_equal (node->type->element, element))
        g_string_append_printf (text, "%s%s", text->len > 0 ? ", " : "",
                                (const char *)at->data);
    }
  return g_string_free (text, FALSE);
}

static gboolean
check_reference (const Judge *judge, const CwNode *node, guint index)
{
  const CwField *field = &node->type->fields[index];
  const char *id = cw_node_get_text (node, index);
  if (*id == '\0')
    return TRUE;
  const CwNode *target = g_hash_table_lookup (judge->reading->ids, id);
  if (target && g_str_equal (target->type->element, field->refers_to))
    return TRUE;

  g_autofree char *known = ids_of_type (judge->reading, field->refers_to);
  if (*known == '\0')
    return refuse (judge, node,
                   _ ("has %s=\"%s\", but the project has no <%s>"),
                   field->name, id, field->refers_to);
  return refuse (judge, node,
                 _ ("has %s=\"%s\", which is no <%s>; there is %s"),
                 field->name, id, field->refers_to, known);
}

static gboolean
check_references (const Judge *judge, const CwNode *node)
{
  for (guint i = 0; i < node->type->n_fields; i++)
    if (node->type->fields[i].kind == CW_FIELD_REFERENCE
        && !check_reference (judge, node, i))
      return FALSE;
  return TRUE;
}

/* Arches */

static char *
rise_allowed (CwArchHead head, CwLength width)
{
  CwLength least, most;
  cw_arch_rise_limits (head, width, &least, &most);
  g_autofree char *low = cw_length_to_mm_text (least);
  g_autofree char *high = cw_length_to_mm_text (most);
  if (least == most)
    return g_strdup_printf (_ ("only %s mm"), low);
  if (most >= CW_LENGTH_MOST)
    return g_strdup_printf (_ ("at least %s mm"), low);
  return g_strdup_printf (_ ("%s to %s mm"), low, high);
}

static gboolean
check_arch (const Judge *judge, const CwNode *node, gint64 head, CwLength width,
            CwLength rise)
{
  if (cw_arch_is_possible ((CwArchHead)head, width, rise))
    return TRUE;
  int index = cw_node_type_field (node->type, "head");
  g_autofree char *name
      = cw_project_number_text (&node->type->fields[index], head);
  g_autofree char *across = cw_length_to_mm_text (width);
  g_autofree char *up = cw_length_to_mm_text (rise);
  g_autofree char *allowed = rise_allowed ((CwArchHead)head, width);
  return refuse (judge, node,
                 _ ("rises %s mm; a %s head over %s mm may rise %s"), up, name,
                 across, allowed);
}

static gboolean
states (const CwNode *node, const char *field)
{
  int index = cw_node_type_field (node->type, field);
  return index >= 0 && cw_node_states (node, (guint)index);
}

static gboolean
check_mark (const Judge *judge, const CwMark *mark)
{
  /* What a mark leaves open, each opening says for itself. */
  if (mark->kind != CW_OPENING_ARCH || !states (&mark->node, "width")
      || !states (&mark->node, "rise"))
    return TRUE;
  return check_arch (judge, &mark->node, mark->head, mark->width, mark->rise);
}

static gboolean
check_sizes (const Judge *judge, const CwNode *drawn, const CwNode *resolved)
{
  for (guint i = 0; i < drawn->type->n_fields; i++)
    {
      const CwField *field = &drawn->type->fields[i];
      if ((field->flags & CW_FIELD_REQUIRED)
          && (field->flags & CW_FIELD_FROM_MARK)
          && !cw_node_states (resolved, i))
        return refuse (judge, drawn,
                       _ ("states no %s and has no mark that does"),
                       field->name);
    }
  return TRUE;
}

static gboolean
check_opening (const Judge *judge, const CwOpening *opening)
{
  g_autoptr (CwOpening) resolved
      = cw_project_resolve_opening (judge->project, opening);
  if (!check_sizes (judge, &opening->node, &resolved->node))
    return FALSE;
  return opening->node.type != &cw_arch_type
         || check_arch (judge, &opening->node, resolved->head, resolved->width,
                        resolved->rise);
}

/* Outlines, stub-outs */

/* Half the chord, rounded down to whole nanometres: |sagitta| may be it. */
static CwLength
half_chord (const CwCornerNode *from, const CwCornerNode *to)
{
  __int128 dx = to->x - from->x, dy = to->y - from->y;
  __int128 square = dx * dx + dy * dy;
  CwLength low = 0, high = 2 * CW_LENGTH_MOST;
  while (low < high)
    {
      CwLength middle = low + (high - low + 1) / 2;
      if ((__int128)4 * middle * middle <= square)
        low = middle;
      else
        high = middle - 1;
    }
  return low;
}

static gboolean
check_corners (const Judge *judge, const CwList *corners)
{
  gsize n = cw_list_length (corners);
  for (gsize i = 0; i < n; i++)
    {
      const CwCornerNode *corner = cw_list_at (corners, i);
      if (corner->sagitta == 0)
        continue;
      CwLength most = half_chord (corner, cw_list_at (corners, (i + 1) % n));
      g_autofree char *given = cw_length_to_mm_text (corner->sagitta);
      g_autofree char *allowed = cw_length_to_mm_text (most);
      if (corner->sagitta > most || corner->sagitta < -most)
        return refuse (judge, &corner->node,
                       _ ("has sagitta=\"%s\"; half the chord to the next "
                          "corner, %s mm either way, is the most"),
                       given, allowed);
    }
  return TRUE;
}

static gboolean
check_stub_out (const Judge *judge, const CwStubOut *stub_out)
{
  if (stub_out->shape != CW_SHAPE_ROUND || stub_out->width == stub_out->height)
    return TRUE;
  return refuse (judge, &stub_out->node,
                 _ ("is round, so its width and height must be the same: its "
                    "diameter"));
}

static gboolean
check_kind (const Judge *judge, const CwNode *node)
{
  if (node->type == &cw_mark_type)
    return check_mark (judge, (const CwMark *)node);
  if (cw_node_is_opening (node))
    return check_opening (judge, (const CwOpening *)node);
  if (node->type == &cw_outline_type)
    return check_corners (judge, ((const CwOutline *)node)->corners);
  if (node->type == &cw_unclad_type)
    return check_corners (judge, ((const CwUnclad *)node)->corners);
  if (node->type == &cw_stub_out_type)
    return check_stub_out (judge, (const CwStubOut *)node);
  return TRUE;
}

static gboolean
check_slot (const Judge *judge, const CwNode *node, guint slot)
{
  if (!node->type->slots[slot].is_list)
    {
      const CwNode *child = cw_node_child (node, slot);
      return child == NULL || check_node (judge, child);
    }
  const CwList *list = cw_node_list (node, slot);
  for (gsize i = 0; i < cw_list_length (list); i++)
    if (!check_node (judge, cw_list_at (list, i)))
      return FALSE;
  return TRUE;
}

static gboolean
check_node (const Judge *judge, const CwNode *node)
{
  /* Children that the file leaves out hold nothing but defaults. */
  if (!g_hash_table_contains (judge->reading->elements, node))
    return TRUE;
  if (!check_references (judge, node) || !check_kind (judge, node))
    return FALSE;
  for (guint i = 0; i < node->type->n_slots; i++)
    if (!check_slot (judge, node, i))
      return FALSE;
  return TRUE;
}

gboolean
cw_reading_check_sense (const CwReading *reading, const CwProject *project,
                        GError **error)
{
  Judge judge = { reading, project, error };
  return check_node (&judge, &project->node);
}
