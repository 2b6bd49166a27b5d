/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-choose.h"

#include <string.h>

typedef gboolean (*Alike) (const CwNode *a, const CwNode *b);

static gboolean
is_same_kind (const CwNode *a, const CwNode *b)
{
  return a->type == b->type;
}

static gboolean
has_same_mark (const CwNode *a, const CwNode *b)
{
  return cw_node_is_opening (a) && cw_node_is_opening (b)
         && *((const CwOpening *) a)->mark
         && strcmp (((const CwOpening *) a)->mark,
                    ((const CwOpening *) b)->mark)
                == 0;
}

static gboolean
is_like_any (const CwElevation *elevation, const CwNode *item,
             const char *const *ids, Alike alike)
{
  for (; *ids; ids++)
    {
      const CwNode *other = cw_node_find (&elevation->node, *ids);

      if (other && other != &elevation->node && alike (item, other))
        return TRUE;
    }
  return FALSE;
}

static char **
choose (const CwElevation *elevation, const char *const *ids, Alike alike)
{
  g_autoptr (GStrvBuilder) found = g_strv_builder_new ();

  for (gsize i = 0; i < cw_list_length (elevation->items); i++)
    {
      const CwNode *item = cw_list_at (elevation->items, i);

      if (alike == NULL || is_like_any (elevation, item, ids, alike))
        g_strv_builder_add (found, cw_node_id (item));
    }
  return g_strv_builder_end (found);
}

char **
cw_choose_all (const CwElevation *elevation)
{
  g_return_val_if_fail (elevation != NULL, NULL);

  return choose (elevation, NULL, NULL);
}

char **
cw_choose_kind (const CwElevation *elevation, const char *const *ids)
{
  g_return_val_if_fail (elevation && ids, NULL);

  return choose (elevation, ids, is_same_kind);
}

char **
cw_choose_mark (const CwElevation *elevation, const char *const *ids)
{
  g_return_val_if_fail (elevation && ids, NULL);

  return choose (elevation, ids, has_same_mark);
}
