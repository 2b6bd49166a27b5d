/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A short tour of the place Walls: a note beside one control after another.
 * Whoever ends it is not shown it again unasked.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef struct
{
  GtkWidget *beside;          /* borrowed; a hidden one is passed over. It
                               * lays its children out by a layout manager. */
  GtkPositionType side;       /* where the note stands */
  gboolean inside;            /* in the middle of what is too large for that */
  const char *title, *words;  /* translated, borrowed */
} CwTourStop;

/* From the first of @stops on; a tour that is under way goes on instead. */
void cw_tour_start (GtkWindow *window, const CwTourStop *stops, guint n);

gboolean cw_tour_was_seen (void);

G_END_DECLS
