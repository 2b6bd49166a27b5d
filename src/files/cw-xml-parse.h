/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Bytes to an XML tree, with everything off that could reach out of the file:
 * no network, no DTD, no entities, no inclusion, libxml2's limits in force.
 */
#pragma once

#include <libxml/tree.h>

#include "cw-project-file.h"

G_BEGIN_DECLS

typedef xmlDoc CwXml;

/* Refuses what is not well-formed UTF-8 XML without a DTD.
 * (transfer full) (nullable) */
CwXml *cw_xml_parse (GBytes *bytes, GError **error);
void cw_xml_free (CwXml *xml);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwXml, cw_xml_free)

/* The line on which the element's start tag ends, from 1, however long the
 * file; for other nodes that of the element before them. */
guint cw_xml_line (const xmlNode *node);

/* The element as a sentence names it: <window id="o1">. (transfer full) */
char *cw_xml_describe (const xmlNode *element);

G_END_DECLS
