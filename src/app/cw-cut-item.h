/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A panel of the cut list as a row of a list model.
 */
#pragma once

#include <gio/gio.h>

#include "cw-cut-list.h"

G_BEGIN_DECLS

#define CW_TYPE_CUT_ITEM (cw_cut_item_get_type ())
G_DECLARE_FINAL_TYPE (CwCutItem, cw_cut_item, CW, CUT_ITEM, GObject)

CwCutItem *cw_cut_item_new (const CwCutList *list, guint index);

/* Both borrowed. */
const CwCutList *cw_cut_item_list (CwCutItem *item);
const CwCutListPanel *cw_cut_item_panel (CwCutItem *item);

G_END_DECLS
