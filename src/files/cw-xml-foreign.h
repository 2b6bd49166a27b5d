/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is not ours in a project file: elements of other namespaces and
 * comments, as text that can stand anywhere.
 */
#pragma once

#include "cw-xml-parse.h"

G_BEGIN_DECLS

/* @node: an element, comment or processing instruction. Every namespace that
 * it uses is declared in the text. The same text comes out when the text is
 * read again. (transfer full) */
char *cw_xml_foreign_text (const xmlNode *node);

G_END_DECLS
