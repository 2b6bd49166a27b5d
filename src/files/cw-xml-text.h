/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Text as XML 1.0 writes it. A character that XML cannot hold is written as
 * the replacement character.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Between double quotes: blanks other than the space are kept by number. */
void cw_xml_append_value (GString *xml, const char *text);

/* Between tags. */
void cw_xml_append_content (GString *xml, const char *text);

/* " name="value"" */
void cw_xml_append_attribute (GString *xml, const char *name,
                              const char *value);

G_END_DECLS
