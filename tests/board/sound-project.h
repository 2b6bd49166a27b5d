/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What must hold for a project whatever was done to it. Each fails the test
 * otherwise.
 */
#pragma once

#include "cw-document.h"

G_BEGIN_DECLS

/* Every id once, every outline and unclad area a shape, every item a size. */
void sound_assert_project (const CwProject *project);

/* Nothing is selected or shown that is not there. */
void sound_assert_selection (CwDocument *document);

/* What is wrong with a wall, found by points and boxes and not by the
 * program's own cuts, is among the checks. Returns how many faults it had. */
guint sound_assert_checked (const CwProject *project);

/* It is written and read again, and is the same. */
void sound_assert_file (const CwProject *project);

/* Undo to the beginning gives the very project @first, redo to the end the
 * very last. */
void sound_assert_history (CwDocument *document, const CwProject *first);

G_END_DECLS
