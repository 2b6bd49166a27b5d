/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A project being worked on: a list of projects that undo and redo walk, each
 * with the name of the edit that made it and the selection that went with
 * it; which of them is on disk. Undo gives back the very same pointers.
 *
 * Emits "changed" (the project is another one), "selection-changed" (other
 * things are selected or another elevation is shown) and "saved-changed", on
 * the thread that edits, each once and after all has changed.
 */
#pragma once

#include <glib-object.h>

#include "cw-project.h"

G_BEGIN_DECLS

#define CW_TYPE_DOCUMENT (cw_document_get_type ())
G_DECLARE_FINAL_TYPE (CwDocument, cw_document, CW, DOCUMENT, GObject)

/* The oldest steps are forgotten beyond so many. */
#define CW_DOCUMENT_STEPS_MOST 2000

/* @project counts as saved: it holds no work of the user's that could be lost.
 * A recovered one does: cw_document_mark_saved() with NULL says so. */
CwDocument *cw_document_new (const CwProject *project);

const CwProject *cw_document_project (CwDocument *document);     /* borrowed */

/*
 * cw_document_edit:
 * @project: what the edit made; (transfer none)
 * @name: for the history, translated: "Move window W1"
 * @merge: (nullable): consecutive edits with an equal key become one step
 *   (a drag, typing in a field); cw_document_seal() ends the run
 *
 * Does nothing when @project is the present one. Drops redo. What @project no
 * longer holds is no longer selected or shown. A run of merged edits that ends
 * at the very project it began with leaves no step behind.
 */
void cw_document_edit (CwDocument *document, const CwProject *project,
                       const char *name, const char *merge);
void cw_document_seal (CwDocument *document);
/* The project before the run of merged edits that goes on (a drag, steps of
 * the arrow keys). (nullable): the next edit is a step of its own. */
const CwProject *cw_document_run_base (CwDocument *document);

gboolean cw_document_can_undo (CwDocument *document);
gboolean cw_document_can_redo (CwDocument *document);
const char *cw_document_undo_name (CwDocument *document);        /* NULL when there is none */
const char *cw_document_redo_name (CwDocument *document);
void cw_document_undo (CwDocument *document);
void cw_document_redo (CwDocument *document);

/* The history as a list: state 0 is where it began, and has no name; every
 * other one has the name of the edit that made it. Going to one is as undoing
 * or redoing so many times, and keeps the rest. */
guint cw_document_n_states (CwDocument *document);
guint cw_document_present_state (CwDocument *document);
const char *cw_document_state_name (CwDocument *document, guint state);
void cw_document_go_to_state (CwDocument *document, guint state);

/* The ids of what is selected, in the order of choosing; NULL-ended, borrowed
 * until the selection changes. */
const char *const *cw_document_selection (CwDocument *document);
void cw_document_select (CwDocument *document, const char *const *ids);
gboolean cw_document_is_selected (CwDocument *document, const char *id);

/* The elevation on the board; its id is part of what undo restores. */
const char *cw_document_elevation_id (CwDocument *document);     /* NULL: none */
const CwElevation *cw_document_elevation (CwDocument *document); /* NULL: none */
void cw_document_show_elevation (CwDocument *document, const char *id);

/* Which state is on disk: (nullable) none is. Ends a run of merged edits, so
 * that undo can come back to the saved state. */
void cw_document_mark_saved (CwDocument *document, const CwProject *project);
gboolean cw_document_is_saved (CwDocument *document);

G_END_DECLS
