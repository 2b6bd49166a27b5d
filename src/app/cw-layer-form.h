/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One layer of a buildup as a form: every attribute with its unit, what it is
 * for and where its default comes from; and buttons that add the layer to the
 * buildup, take it out, or add and order those of which there may be several.
 *
 * Signal "layer-wanted" (int slot, int index): that one should be shown next.
 */
#pragma once

#include "cw-job.h"
#include "cw-layer-list.h"

G_BEGIN_DECLS

#define CW_TYPE_LAYER_FORM (cw_layer_form_get_type ())
G_DECLARE_FINAL_TYPE (CwLayerForm, cw_layer_form, CW, LAYER_FORM, GtkWidget)

/* @job outlives the form. */
GtkWidget *cw_layer_form_new (CwJob *job);

/* @id: (nullable): of the buildup; NULL: nothing is shown. */
void cw_layer_form_show (CwLayerForm *form, const char *id,
                         CwLayerPlace place);

/* (nullable): the row of that attribute, for tests. */
GtkWidget *cw_layer_form_row (CwLayerForm *form, const char *field);

G_END_DECLS
