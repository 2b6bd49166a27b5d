/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The project file: XML both ways.
 */
#pragma once

#include <gio/gio.h>

#include "cw-project.h"

G_BEGIN_DECLS

/* What a project file may weigh. */
#define CW_PROJECT_FILE_MOST (64 * 1024 * 1024)

#define CW_PROJECT_NAMESPACE "urn:cladwright:project:1"

/* The format number that this program reads and writes. */
#define CW_PROJECT_FORMAT 1

#define CW_FILE_ERROR (cw_file_error_quark ())
GQuark cw_file_error_quark (void);

typedef enum
{
  CW_FILE_ERROR_READ,         /* cannot be read from disk */
  CW_FILE_ERROR_TOO_LARGE,
  CW_FILE_ERROR_XML,          /* not well-formed, or a DTD */
  CW_FILE_ERROR_NEWER,        /* a higher format number */
  CW_FILE_ERROR_GRAMMAR,      /* an element or attribute that cannot stand there */
  CW_FILE_ERROR_VALUE,        /* no number, out of bounds, not a choice */
  CW_FILE_ERROR_SENSE,        /* an id twice, a reference to nothing, an impossible arch */
  CW_FILE_ERROR_WRITE,
  CW_FILE_ERROR_CHANGED,      /* another program changed it */
} CwFileError;

/* The line of an error of this domain, from 1; 0 when it has none. */
guint cw_file_error_line (const GError *error);

/* The message without the line or path before it; of any error. */
const char *cw_file_error_sentence (const GError *error);

/*
 * cw_project_from_xml:
 * @bytes: the whole file
 *
 * Well-formed XML without a DTD, then the grammar and every value, then rules
 * of sense (ids once, references to what is there, arches that can stand).
 * Errors name line, element and what is allowed. Elements, attributes and
 * comments that are not the format's own are kept where they stand within the
 * project.
 *
 * Returns: (transfer full) (nullable)
 */
CwProject *cw_project_from_xml (GBytes *bytes, GError **error);

/* Canonical: two calls on equal projects give the same bytes. What is stated
 * is written; a layer or a child that says nothing but defaults is left out
 * where the reader puts it back. */
GBytes *cw_project_to_xml (const CwProject *project);

/* The lines of the elements by their ids, for messages about a project that
 * was read. (transfer full) */
GHashTable *cw_project_xml_lines (GBytes *bytes);
/* From 1; 0 when there is no such element. */
guint cw_project_xml_line (GHashTable *lines, const char *id);

/* Reads a file of at most 64 MiB. @etag: (out) (optional): for saving. */
CwProject *cw_project_load (GFile *file, char **etag, GError **error);

/*
 * cw_project_save:
 * @etag: (inout) (nullable): the one of the last load or save of @file; when
 *   the file has another one now, nothing is written and the error is
 *   CW_FILE_ERROR_CHANGED. Set to the new one.
 *
 * Makes all bytes first and reads them back; writes a temporary file in the
 * same folder, fsync, keeps the former file as NAME~, rename, fsync of the
 * folder. A symbolic link is followed, not replaced.
 */
gboolean cw_project_save (const CwProject *project, GFile *file, char **etag,
                          GError **error);

G_END_DECLS
