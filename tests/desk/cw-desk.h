/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A desk for tests that use the real window as a person does: a screen of its
 * own (Xvfb), a window manager, a pointer and a keyboard (xdotool), and eyes
 * (a picture of the screen).
 */
#pragma once

#include <cairo.h>
#include <glib.h>

G_BEGIN_DECLS

typedef struct CwDesk CwDesk;

/* NULL, with the test skipped, when the machine lacks a tool for it. */
CwDesk *cw_desk_new (int width, int height);
void cw_desk_free (CwDesk *desk);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwDesk, cw_desk_free)

/* A folder of the desk's own, removed with it. (transfer none) */
const char *cw_desk_folder (const CwDesk *desk);

/* Starts a program on the desk; it must show a window whose title contains
 * @title. NULL-ended @argv. */
void cw_desk_start (CwDesk *desk, const char *const *argv, const char *title);
gboolean cw_desk_program_runs (const CwDesk *desk);

/* Fails the test when no window's title contains @title within 20 s. The
 * window gets the keyboard. */
void cw_desk_await_window (CwDesk *desk, const char *title);
void cw_desk_await_no_window (CwDesk *desk, const char *title);

/* A key or chord by its X name, "ctrl+s", "Tab". */
void cw_desk_key (CwDesk *desk, const char *chord);
void cw_desk_type (CwDesk *desk, const char *text);
void cw_desk_move (CwDesk *desk, double x, double y);
void cw_desk_click (CwDesk *desk, double x, double y);
void cw_desk_drag (CwDesk *desk, double x0, double y0, double x1, double y1);

/* The screen as it is once nothing has moved on it for a moment.
 * (transfer full) */
cairo_surface_t *cw_desk_look (CwDesk *desk);

/* Keeps a picture of the screen in the file that the environment variable
 * CW_DESK_PICTURES names a folder for; does nothing when it is not set. */
void cw_desk_keep_picture (CwDesk *desk, const char *name);

/* Waits until the file is there and no longer grows. */
void cw_desk_await_file (CwDesk *desk, const char *path);

G_END_DECLS
