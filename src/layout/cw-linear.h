/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * GLPK solves linear programs and knows one set of them for each thread, or
 * for the whole process where it was built without thread storage. Whatever
 * calls it stands between these two, so that searches on several threads do
 * not meet.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Nothing is printed from here on. */
void cw_linear_begin (void);

/* Everything GLPK holds in this thread is freed: problems are void. */
void cw_linear_end (void);

G_END_DECLS
