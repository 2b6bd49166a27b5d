/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A project file being read: from the tree of elements to nodes of the model,
 * in steps that each refuse their own kind of fault.
 */
#pragma once

#include "cw-xml-parse.h"

G_BEGIN_DECLS

typedef struct
{
  GHashTable *elements;   /* CwNode → the xmlNode it was read from */
  GHashTable *ids;        /* id → CwNode, both borrowed */
} CwReading;

/* Elements, attributes and values, by the tables of the model. The nodes of
 * the project stay alive as long as it does. (transfer full) (nullable) */
CwProject *cw_reading_project (CwReading *reading, const CwXml *xml,
                               GError **error);

/* Rules of sense that no grammar can hold. */
gboolean cw_reading_check_sense (const CwReading *reading,
                                 const CwProject *project, GError **error);

/* The tree against a RELAX NG schema of the program's resources. */
gboolean cw_xml_check_schema (const CwXml *xml, const char *resource,
                              GError **error);

/* The tree against the RELAX NG schema that is built into the program. */
gboolean cw_reading_check_schema (const CwXml *xml, GError **error);

/* The children of @node that a file holds, in file order: all but those that
 * say nothing and are there in any case. (transfer container) */
GPtrArray *cw_project_written_children (const CwNode *node);

G_END_DECLS
