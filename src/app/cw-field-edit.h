/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Changing one attribute of one or many nodes: from a project to the next.
 * What cannot be built (an arch that rises more than it can, an outline that
 * crosses itself) is refused with a sentence that says what can.
 */
#pragma once

#include <gio/gio.h>

#include "cw-node-path.h"

G_BEGIN_DECLS

typedef enum { CW_SET_NUMBER, CW_SET_TEXT, CW_SET_NOTHING } CwSetKind;

typedef struct
{
  const char *field;        /* its name; nodes without it are left alone */
  CwSetKind kind;           /* CW_SET_NOTHING: back to the default or mark */
  gint64 number;
  const char *text;
  const CwTextStyle *style; /* for lengths in errors */
} CwFieldChange;

/* @paths: (element-type CwNodePath). (transfer full) (nullable) */
CwProject *cw_field_edit (const CwProject *project, const GPtrArray *paths,
                          const CwFieldChange *change, GError **error);

G_END_DECLS
