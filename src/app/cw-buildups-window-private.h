/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window's parts: what is seen (cw-buildups-window.c), what is done with a
 * whole buildup (cw-buildups-window-actions.c).
 */
#pragma once

#include "cw-buildups-window.h"

G_BEGIN_DECLS

struct _CwBuildupsWindow
{
  GtkWindow parent;
  CwJob *job;
  GtkWidget *box;             /* GtkListBox of buildups */
  CwLayerList *layers;
  CwLayerForm *form;
  char *chosen;               /* id */
  GSimpleActionGroup *actions;        /* "buildups" */
  GSimpleActionGroup *main_actions;   /* "win": the main window's */
  gboolean showing;
};

const CwProject *cw_buildups_window_project (CwBuildupsWindow *window);

/* Takes @next; then shows @id, where given. */
void cw_buildups_window_edit (CwBuildupsWindow *window, CwProject *next,
                              const char *name, const char *id);

/* The groups "buildups" and "win". */
void cw_buildups_window_add_actions (CwBuildupsWindow *window);
/* What can be done now. */
void cw_buildups_window_enable (CwBuildupsWindow *window);

G_END_DECLS
