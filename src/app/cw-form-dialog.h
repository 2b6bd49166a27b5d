/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small modal window: fields, a button that takes them, one that gives up.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define CW_TYPE_FORM_DIALOG (cw_form_dialog_get_type ())
G_DECLARE_FINAL_TYPE (CwFormDialog, cw_form_dialog, CW, FORM_DIALOG,
                      GtkWindow)

/* Signal "taken": the button was pressed. Whoever handles it closes the
 * window when all is well. @take: with a mnemonic. */
CwFormDialog *cw_form_dialog_new (GtkWindow *parent, const char *title,
                                  const char *take);

/* One under the other; @label names @field for a screen reader too. */
void cw_form_dialog_add (CwFormDialog *dialog, const char *label,
                         GtkWidget *field);
/* The label, borrowed. */
GtkWidget *cw_form_dialog_add_words (CwFormDialog *dialog, const char *words);
/* What names itself. */
void cw_form_dialog_append (CwFormDialog *dialog, GtkWidget *field);

void cw_form_dialog_set_trouble (CwFormDialog *dialog, const char *trouble);

G_END_DECLS
