/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The attributes of one node, or of many of a kind, as rows; an edit goes to
 * all of them as one step of the document.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-job.h"
#include "cw-node-path.h"

G_BEGIN_DECLS

#define CW_TYPE_FIELD_GROUP (cw_field_group_get_type ())
G_DECLARE_FINAL_TYPE (CwFieldGroup, cw_field_group, CW, FIELD_GROUP,
                      GtkWidget)

/* @paths: (transfer full) (element-type CwNodePath), at least one that is
 * there; shown are the fields that all have. @title: (nullable). @job outlives
 * the group. */
GtkWidget *cw_field_group_new (CwJob *job, const char *title,
                               GPtrArray *paths);

/* The values as they are now. */
void cw_field_group_refresh (CwFieldGroup *group);

/* What each attribute is for stands under it, not in a tooltip. */
void cw_field_group_show_help (CwFieldGroup *group);

/* (nullable): the row of that field, for tests. */
GtkWidget *cw_field_group_row (CwFieldGroup *group, const char *field);

G_END_DECLS
