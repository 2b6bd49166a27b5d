/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the tests of windows share.
 */
#pragma once

#include "app-cases.h"
#include "cw-window.h"

/* FALSE, with the reason told, where there is no display. */
gboolean case_start_toolkit (void);

/* The one application of the test program. Borrowed. */
CwApplication *case_application (void);

/* A window with the example project in a folder of its own, on screen. */
CwWindow *case_demo_window (GFile *folder);
CwWindow *case_empty_window (void);

/* Until it is gone. */
void case_close (GtkWindow *window);

/* A window with the example, as a fixture. */
typedef struct
{
  GFile *folder;
  CwWindow *window;
  CwJob *job;                 /* borrowed */
} CaseDesk;

void case_desk_lay (CaseDesk *desk);

/* Without a question: what a test leaves unsaved is of no worth. The window
 * may be closed already, and NULL. */
void case_desk_clear (CaseDesk *desk);

/* Does what a menu of the window would, and waits for it. */
void case_desk_act (CaseDesk *desk, const char *action);

/* A window of that type, or NULL. Borrowed. */
GtkWindow *case_open_window (GType type);

/* Some turns of the main loop: layouts and idle work. */
void case_settle (void);

/* The first widget of that type below @root, or NULL. */
gpointer case_find (GtkWidget *root, GType type);

/* Calls @each for @root and every widget below it. */
typedef void (*CaseWidgetFunc) (GtkWidget *widget, gpointer data);
void case_walk (GtkWidget *root, CaseWidgetFunc each, gpointer data);
