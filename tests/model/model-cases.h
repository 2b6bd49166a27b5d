/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Projects for the tests of the model.
 */
#pragma once

#include "cw-project.h"

/* A closed outline of straight sides of one kind. Sizes in mm. */
CwNode *case_outline (gsize n, const int (*corners)[2], CwEdge edge);

/* An elevation of @width x @height mm with @n windows in it, all with ids. */
CwNode *case_elevation (const char *id, int width, int height, guint n);

/* A window 1000 x 1000 mm at @x, @y mm. */
CwNode *case_window (const char *id, int x, int y);

CwProject *case_project (guint n_elevations, guint n_windows_each);

/* A new project: that one with @item put into, or changed in, its first
 * elevation. */
CwProject *case_project_with_item (const CwProject *project, CwNode *item);
