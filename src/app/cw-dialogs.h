/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Questions to the user in the toolkit's own dialogs: choosing files, alerts.
 * The one place that knows which kind of dialog the toolkit at hand has.
 * Every dialog is modal for @parent and lives until it is answered.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef enum
{
  CW_FILES_PROJECT,
  CW_FILES_SHEET,     /* PDF and images */
  CW_FILES_PDF,
  CW_FILES_CSV,
} CwFilesKind;

/* @file: the answer, NULL when it was given up; borrowed. */
typedef void (*CwFileFunc) (GFile *file, gpointer data);

void cw_dialogs_open_file (GtkWindow *parent, const char *title,
                           CwFilesKind kind, GFile *folder, CwFileFunc done,
                           gpointer data);
void cw_dialogs_save_file (GtkWindow *parent, const char *title,
                           CwFilesKind kind, GFile *folder, const char *name,
                           CwFileFunc done, gpointer data);

/* @answer: index into the answers; that of the last one (giving up) when the
 * dialog was closed. */
typedef void (*CwAnswerFunc) (guint answer, gpointer data);

/* @answers: NULL-ended, translated, with mnemonics; the first is the likely
 * one, the last gives up. @done may be NULL. */
void cw_dialogs_ask (GtkWindow *parent, const char *message,
                     const char *detail, const char *const *answers,
                     CwAnswerFunc done, gpointer data);

/* What happened and what to do about it. */
void cw_dialogs_tell (GtkWindow *parent, const char *message,
                      const char *detail);

/* Answers for tests, taken instead of showing a dialog; -1 and NULL end it. */
void cw_dialogs_answer_next (int answer);
void cw_dialogs_choose_next (GFile *file);

G_END_DECLS
