/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Marks for translation: _() for text shown, N_() for tables, C_() with a
 * context; g_dngettext (GETTEXT_PACKAGE, …) for plurals.
 */
#pragma once

#include <glib/gi18n-lib.h>
