/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The whole-number program behind cw-cut-cover.
 */
#pragma once

#include <gio/gio.h>

#include "cw-cut-pattern.h"

G_BEGIN_DECLS

/*
 * cw_cut_choose:
 * @below, @effort: as for cw_cut_cover_choose()
 *
 * Returns: (transfer full) (nullable): how often each pattern is taken
 */
guint *cw_cut_choose (const CwCutCovering *covering, guint64 below,
                      guint64 effort, GCancellable *cancellable);

G_END_DECLS
