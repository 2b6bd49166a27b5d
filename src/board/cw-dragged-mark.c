/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-dragged-mark.h"

struct CwDraggedMark
{
  char *id;
};

CwDraggedMark *
cw_dragged_mark_new (const char *id)
{
  CwDraggedMark *mark = g_new0 (CwDraggedMark, 1);

  mark->id = g_strdup (id);
  return mark;
}

static CwDraggedMark *
copy (CwDraggedMark *mark)
{
  return cw_dragged_mark_new (mark->id);
}

void
cw_dragged_mark_free (CwDraggedMark *mark)
{
  g_free (mark->id);
  g_free (mark);
}

const char *
cw_dragged_mark_id (const CwDraggedMark *mark)
{
  g_return_val_if_fail (mark != NULL, NULL);

  return mark->id;
}

G_DEFINE_BOXED_TYPE (CwDraggedMark, cw_dragged_mark, copy,
                     cw_dragged_mark_free)
