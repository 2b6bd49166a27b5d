/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Edits of a project's buildups and their layers: pure functions from a
 * project to the next. All return a new project, (transfer full).
 */
#pragma once

#include "cw-project.h"

G_BEGIN_DECLS

/* The elevations that have the buildup. (transfer container)
 * (element-type CwElevation) */
GPtrArray *cw_buildup_users (const CwProject *project, const char *id);

/* A buildup from elsewhere, under an id and a name that are free. @id: (out):
 * owned by the caller. */
CwProject *cw_buildup_add (const CwProject *project, const CwBuildup *buildup,
                           char **id);
CwProject *cw_buildup_duplicate (const CwProject *project, const char *id,
                                 char **new_id);

/* @instead: (nullable): what the elevations that have it get; without one
 * there must be none. */
CwProject *cw_buildup_remove (const CwProject *project, const char *id,
                              const char *instead);

CwProject *cw_buildup_give (const CwProject *project,
                            const char *elevation_id, const char *id);

/* A layer that a buildup may have or not, by its slot: with its defaults, or
 * out of it. */
CwProject *cw_buildup_add_layer (const CwProject *project, const char *id,
                                 guint slot);
CwProject *cw_buildup_remove_layer (const CwProject *project, const char *id,
                                    guint slot);

/* One of the layers of which there may be several, such as panels. A further
 * one begins as the one at @like and stands after it; the last one stays. */
CwProject *cw_buildup_add_item (const CwProject *project, const char *id,
                                guint slot, gsize like);
CwProject *cw_buildup_remove_item (const CwProject *project, const char *id,
                                   guint slot, gsize index);
CwProject *cw_buildup_move_item (const CwProject *project, const char *id,
                                 guint slot, gsize index, int by);

/* A project that holds the buildup and nothing else, to be written to a file;
 * units and currency are those of @project. */
CwProject *cw_buildup_alone (const CwProject *project, const char *id);

G_END_DECLS
