/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The program: one instance, a window for each job, files from the command
 * line.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define CW_TYPE_APPLICATION (cw_application_get_type ())
G_DECLARE_FINAL_TYPE (CwApplication, cw_application, CW, APPLICATION,
                      GtkApplication)

CwApplication *cw_application_new (void);

/* Opens @file in a window of its own, or shows the one that has it; @from
 * (nullable) is closed when nothing has been done in it. */
void cw_application_open_file (CwApplication *application, GFile *file,
                               GtkWindow *from);

/* The example project in a new window; it has no file, so saving asks. */
void cw_application_open_example (CwApplication *application,
                                  GtkWindow *from);

G_END_DECLS
