/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the parts of a desk share.
 */
#pragma once

#include <gio/gio.h>

#include "cw-desk.h"

G_BEGIN_DECLS

struct CwDesk
{
  char *folder, *home;
  char *display;              /* ":99" */
  GSubprocess *screen, *manager, *program;
};

/* Runs a tool to its end. @must: the test fails when it fails; else NULL is
 * returned. What it wrote. (transfer full) */
char *cw_desk_run (CwDesk *desk, gboolean must, const char *const *argv);

G_END_DECLS
