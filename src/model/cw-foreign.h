/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Attributes and elements of other namespaces, kept where they stand when a
 * file is opened and saved again. The model carries them unread.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct CwForeign CwForeign;

typedef struct
{
  guint before;       /* stands before the child at this place, counting all own children in file order */
  char *xml;          /* one canonical element, namespaces declared on it */
} CwForeignElement;

typedef struct
{
  char *prefix, *uri, *name, *value;
} CwForeignAttribute;

CwForeign *cw_foreign_new (void);
CwForeign *cw_foreign_ref (const CwForeign *foreign);
void cw_foreign_unref (CwForeign *foreign);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (CwForeign, cw_foreign_unref)

/* Either may be NULL: nothing foreign. */
gboolean cw_foreign_equal (const CwForeign *a, const CwForeign *b);

/* While building, before it is shared. */
void cw_foreign_add_attribute (CwForeign *foreign, const char *prefix,
                               const char *uri, const char *name,
                               const char *value);
void cw_foreign_add_element (CwForeign *foreign, guint before,
                             const char *xml);

gsize cw_foreign_n_attributes (const CwForeign *foreign);
const CwForeignAttribute *cw_foreign_attribute (const CwForeign *foreign,
                                                gsize index);
gsize cw_foreign_n_elements (const CwForeign *foreign);
const CwForeignElement *cw_foreign_element (const CwForeign *foreign,
                                            gsize index);

G_END_DECLS
