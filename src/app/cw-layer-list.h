/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The layers of one buildup from the studs outward, also those that it does
 * not have.
 *
 * Signal "layer-chosen".
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-project.h"

G_BEGIN_DECLS

/* One place in a buildup. */
typedef struct
{
  int slot;         /* of cw_buildup_type; -1: the buildup itself */
  int index;        /* in the slot's list; -1: a single layer */
  gboolean is_there;
} CwLayerPlace;

#define CW_TYPE_LAYER_LIST (cw_layer_list_get_type ())
G_DECLARE_FINAL_TYPE (CwLayerList, cw_layer_list, CW, LAYER_LIST, GtkWidget)

GtkWidget *cw_layer_list_new (void);

/* @buildup: (nullable). What was chosen stays chosen where it is still
 * there. */
void cw_layer_list_show (CwLayerList *list, const CwBuildup *buildup);

CwLayerPlace cw_layer_list_chosen (CwLayerList *list);
void cw_layer_list_choose (CwLayerList *list, int slot, int index);

G_END_DECLS
