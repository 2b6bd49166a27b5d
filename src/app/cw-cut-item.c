/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-item.h"

struct _CwCutItem
{
  GObject parent;
  CwCutList *list;
  guint index;
};

G_DEFINE_FINAL_TYPE (CwCutItem, cw_cut_item, G_TYPE_OBJECT)

const CwCutList *
cw_cut_item_list (CwCutItem *item)
{
  g_return_val_if_fail (CW_IS_CUT_ITEM (item), NULL);
  return item->list;
}

const CwCutListPanel *
cw_cut_item_panel (CwCutItem *item)
{
  g_return_val_if_fail (CW_IS_CUT_ITEM (item), NULL);
  return item->list->panels->pdata[item->index];
}

static void
cw_cut_item_finalize (GObject *object)
{
  cw_cut_list_unref (CW_CUT_ITEM (object)->list);
  G_OBJECT_CLASS (cw_cut_item_parent_class)->finalize (object);
}

static void
cw_cut_item_class_init (CwCutItemClass *class)
{
  G_OBJECT_CLASS (class)->finalize = cw_cut_item_finalize;
}

static void
cw_cut_item_init (CwCutItem *item)
{
}

CwCutItem *
cw_cut_item_new (const CwCutList *list, guint index)
{
  g_return_val_if_fail (list && index < list->panels->len, NULL);
  CwCutItem *item = g_object_new (CW_TYPE_CUT_ITEM, NULL);
  item->list = cw_cut_list_ref (list);
  item->index = index;
  return item;
}
