/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is typed at the pointer: one length, or some with a multiplication
 * sign between them: "3600", "12' 6\"", "1200 x 1400", "1500 × 1800 × 300".
 */
#pragma once

#include "cw-length.h"
#include "cw-text-error.h"

G_BEGIN_DECLS

#define CW_TYPED_MOST 3

/*
 * cw_typed_lengths:
 * @least, @most: how many are wanted, up to CW_TYPED_MOST
 *
 * Lengths must be more than 0. The error (CW_TEXT_ERROR) points at the
 * character of @text. Returns: how many there are; 0 on failure
 */
guint cw_typed_lengths (const char *text, const CwTextStyle *style,
                        guint least, guint most,
                        CwLength lengths[CW_TYPED_MOST], GError **error);

G_END_DECLS
