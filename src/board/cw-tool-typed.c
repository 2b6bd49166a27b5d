/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is typed at the pointer, for every tool: fields of its own, and where
 * a point is wanted how far along and up it is, from the last point or from a
 * corner that was chosen.
 */
#include "cw-tool-private.h"
#include "cw-tool-typed.h"

#define MOST_OWN (CW_TYPED_FIELDS_MOST - 2)

static CwToolWants
wants (CwTool *tool, CwPoint *last, CwPoint *now)
{
  return tool->klass->wants_point ? tool->klass->wants_point (tool, last, now)
                                  : CW_TOOL_WANTS_NONE;
}

static gboolean
is_point (CwSnapKind kind)
{
  return kind >= CW_SNAP_CORNER && kind <= CW_SNAP_MIDDLE;
}

/* Before there is a last point: the corner that the pointer is on, or the
 * lower left of the wall. */
static CwPoint
usual_reference (CwTool *tool)
{
  const CwWall *wall = cw_tool_wall (tool);
  CwBox box;

  if (tool->shows_snap && is_point (tool->snap.x_kind)
      && is_point (tool->snap.y_kind))
    return tool->snap.at;
  if (wall == NULL || wall->outline == NULL)
    return cw_point (0, 0);
  box = cw_region_box (wall->outline);
  return cw_point (box.left, box.bottom);
}

/* While something is typed it stays, wherever the pointer goes. */
static CwPoint
reference (CwTool *tool, CwToolWants wanted, CwPoint last)
{
  if (tool->has_reference)
    return tool->reference;
  if (wanted == CW_TOOL_WANTS_NEXT)
    return last;
  return tool->typing ? tool->typed_from : usual_reference (tool);
}

gboolean
cw_tool_place_point (CwTool *tool, CwPoint at)
{
  CwPoint last, now;

  return wants (tool, &last, &now) != CW_TOOL_WANTS_NONE
         && tool->klass->place_point (tool, at, at);
}

void
cw_tool_begin_typing (CwTool *tool)
{
  g_return_if_fail (tool != NULL);

  tool->typed_from = usual_reference (tool);
  tool->typing = TRUE;
}

void
cw_tool_end_typing (CwTool *tool)
{
  g_return_if_fail (tool != NULL);

  tool->typing = FALSE;
}

gboolean
cw_tool_choose_reference (CwTool *tool)
{
  CwPoint last, now;

  g_return_val_if_fail (tool != NULL, FALSE);

  if (wants (tool, &last, &now) == CW_TOOL_WANTS_NONE || !tool->has_pointer)
    return FALSE;
  if (tool->klass->move == NULL || !tool->shows_snap)
    cw_tool_snap (tool, &tool->pointer, NULL, 0, NULL);
  tool->reference = tool->snap.at;
  tool->has_reference = TRUE;
  return TRUE;
}

gboolean
cw_tool_get_reference (CwTool *tool, CwPoint *at)
{
  CwPoint last = { 0, 0 }, now = { 0, 0 };
  CwToolWants wanted;

  g_return_val_if_fail (tool != NULL && at != NULL, FALSE);

  wanted = wants (tool, &last, &now);
  if (wanted == CW_TOOL_WANTS_NONE
      || (!tool->has_reference && !tool->typing))
    return FALSE;
  *at = reference (tool, wanted, last);
  return TRUE;
}

static guint
add_offsets (CwTool *tool, CwTypedField *fields, CwToolWants wanted,
             CwPoint last, CwPoint now)
{
  CwPoint from = reference (tool, wanted, last);
  gboolean has_now = tool->has_pointer || wanted == CW_TOOL_WANTS_NEXT;

  fields[0] = (CwTypedField) { N_ ("Along"), CW_TYPED_OFFSET, has_now,
                               now.x - from.x, 0 };
  fields[1] = (CwTypedField) { N_ ("Up"), CW_TYPED_OFFSET, has_now,
                               now.y - from.y, 0 };
  return 2;
}

/* How many there are of the tool's own, and in all. */
static guint
list_fields (CwTool *tool, CwTypedField *fields, guint *n_own,
             CwToolWants *wanted, CwPoint *last)
{
  CwPoint now = { 0, 0 };

  *n_own = tool->klass->fields ? tool->klass->fields (tool, fields) : 0;
  g_assert (*n_own <= MOST_OWN);
  *last = cw_point (0, 0);
  *wanted = wants (tool, last, &now);
  if (*wanted == CW_TOOL_WANTS_NONE)
    return *n_own;
  return *n_own + add_offsets (tool, fields + *n_own, *wanted, *last, now);
}

guint
cw_tool_fields (CwTool *tool, CwTypedField fields[CW_TYPED_FIELDS_MOST])
{
  CwToolWants wanted;
  CwPoint last;
  guint n_own;

  g_return_val_if_fail (tool != NULL && fields != NULL, 0);

  return list_fields (tool, fields, &n_own, &wanted, &last);
}

static gboolean
is_any_typed (const char *const *texts, guint n)
{
  for (guint i = 0; i < n; i++)
    if (!cw_typed_field_is_blank (texts[i]))
      return TRUE;
  return FALSE;
}

static gboolean
refuse (GError **error, const char *sentence)
{
  cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, 0, "%s", sentence);
  return FALSE;
}

/* @wrong: (out): of the two. */
static gboolean
enter_offsets (CwTool *tool, const CwTypedField *fields,
               const char *const *texts, CwPoint from, guint *wrong,
               GError **error)
{
  CwPoint by;

  *wrong = 0;
  if (!cw_typed_field_offset (&fields[0], texts[0], &tool->style, &by.x,
                              error))
    return FALSE;
  *wrong = 1;
  if (!cw_typed_field_offset (&fields[1], texts[1], &tool->style, &by.y,
                              error))
    return FALSE;
  *wrong = 0;
  if (!tool->klass->place_point (
          tool, cw_point (from.x + by.x, from.y + by.y), from))
    return refuse (error, _ ("There cannot be a point there"));
  tool->has_reference = FALSE;
  return TRUE;
}

static gboolean
enter_own (CwTool *tool, const CwTypedField *fields, const char *const *texts,
           guint n, guint *wrong, GError **error)
{
  CwTypedJoint joint = { NULL, { 0 } };
  gboolean taken;

  *wrong = 0;
  if (!is_any_typed (texts + 1, n - 1))
    return cw_tool_enter_text (tool, texts[0], error);
  taken = cw_typed_fields_join (fields, texts, n, &joint, wrong, error);
  if (taken && !cw_tool_enter_text (tool, joint.text, error))
    {
      *wrong = cw_typed_joint_find (&joint, texts, n, error);
      taken = FALSE;
    }
  g_free (joint.text);
  return taken;
}

/* What cannot be read takes the point along that went before it. */
static gboolean
enter_after (CwTool *tool, gboolean after_point, const CwTypedField *fields,
             const char *const *texts, guint n, guint *wrong, GError **error)
{
  gboolean taken;

  tool->typed_together = after_point;
  taken = enter_own (tool, fields, texts, n, wrong, error);
  tool->typed_together = FALSE;
  if (!taken && after_point)
    cw_tool_delete (tool);
  return taken;
}

gboolean
cw_tool_enter_fields (CwTool *tool, const char *const *texts, guint *wrong,
                      GError **error)
{
  CwTypedField fields[CW_TYPED_FIELDS_MOST];
  CwToolWants wanted;
  CwPoint last;
  guint n_own, n;
  gboolean own, offsets;

  g_return_val_if_fail (tool && texts && wrong, FALSE);

  n = list_fields (tool, fields, &n_own, &wanted, &last);
  own = is_any_typed (texts, n_own);
  offsets = is_any_typed (texts + n_own, n - n_own);
  *wrong = 0;
  if (!own && !offsets)
    return refuse (error, _ ("Type a measure"));
  if (own && offsets && wanted == CW_TOOL_WANTS_NEXT)
    {
      *wrong = n_own;
      return refuse (error, _ ("Type along and up, or what stands over "
                               "them, not both"));
    }
  if (offsets
      && !enter_offsets (tool, fields + n_own, texts + n_own,
                         reference (tool, wanted, last), wrong, error))
    {
      *wrong += n_own;
      return FALSE;
    }
  return !own
         || enter_after (tool, offsets, fields, texts, n_own, wrong, error);
}
