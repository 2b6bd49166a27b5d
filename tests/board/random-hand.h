/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A hand that does anything, by the test's random numbers: every tool, typed
 * text, keys, what the menus and the inspector do, undo and redo.
 */
#pragma once

#include "board-cases.h"

/* One gesture. TRUE: it walked the history and made no step of its own. */
gboolean random_gesture (Hand *hand);
