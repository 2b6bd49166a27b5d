/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-status-line.h"

#include "cw-i18n.h"
#include "cw-length.h"
#include "cw-panel-head.h"
#include "cw-search-words.h"

/* Work that is over sooner is not worth a word. */
#define PATIENCE_MS 200
/* Pixels an inch of the toolkit's own measure. */
#define MM_PER_PIXEL (25.4 / 96)

struct _CwStatusLine
{
  GtkWidget parent;
  CwBoard *board;         /* borrowed */
  CwJob *job;
  GtkWidget *hint, *checks, *pointer, *scale, *state;
  CwMoveLabel *moves;     /* borrowed; NULL: follows none */
  GtkWidget *search;      /* button: stops the search or goes on with it */
  guint patience, idle;
};

G_DEFINE_FINAL_TYPE (CwStatusLine, cw_status_line, GTK_TYPE_WIDGET)

static void
hint_changed (CwStatusLine *line)
{
  const char *hint = cw_board_get_hint (line->board);
  gtk_label_set_text (GTK_LABEL (line->hint), hint);
  gtk_widget_set_tooltip_text (line->hint, hint);
}

static void
pointer_moved (CwStatusLine *line, gint64 x, gint64 y)
{
  const CwTextStyle *style = cw_job_style (line->job);
  g_autofree char *across = cw_length_format (x, style);
  g_autofree char *up = cw_length_format (y, style);
  /* Translators: the pointer's place on the wall: across, up. */
  g_autofree char *text = g_strdup_printf (_("→ %s  ↑ %s"), across, up);
  gtk_label_set_text (GTK_LABEL (line->pointer), text);
}

static gboolean
show_scale (gpointer data)
{
  CwStatusLine *line = data;
  line->idle = 0;
  double ratio = cw_board_get_mm_per_pixel (line->board) / MM_PER_PIXEL;
  g_autofree char *number = cw_text_style_number (
      cw_job_style (line->job), ratio, ratio < 10 ? 1 : 0);
  g_autofree char *text = g_strdup_printf (_("shown 1:%s"), number);
  gtk_label_set_text (GTK_LABEL (line->scale), text);
  return G_SOURCE_REMOVE;
}

/* The board may tell of it while it draws, when nothing may be laid out. */
static void
view_changed (CwStatusLine *line)
{
  if (!line->idle)
    line->idle = g_idle_add (show_scale, line);
}

static void
show_search_button (CwStatusLine *line, CwSearch search)
{
  gboolean is_running = search == CW_SEARCH_RUNNING;
  gtk_widget_set_visible (line->search, search != CW_SEARCH_NONE);
  gtk_button_set_label (GTK_BUTTON (line->search),
                        is_running ? _("Stop") : _("Look on"));
  cw_widget_set_name (line->search,
                      is_running ? _("Stop looking for fewer panels")
                                 : _("Look on for fewer panels"));
}

/* What a move changes, while there is one. */
static gboolean
show_move (CwStatusLine *line)
{
  const char *words = line->moves ? cw_move_label_words (line->moves) : NULL;
  if (words)
    gtk_label_set_text (GTK_LABEL (line->state), words);
  return words != NULL;
}

/* What is said once the figures stand. */
static void
search_changed (CwStatusLine *line)
{
  CwEstimator *estimator = cw_job_estimator (line->job);
  guint n_panels;
  double share;
  CwSearch search = cw_estimator_search (estimator, &n_panels, &share);
  g_autofree char *words = NULL;
  if (search == CW_SEARCH_RUNNING)
    words = cw_search_words (n_panels, share, cw_job_style (line->job));
  show_search_button (line, search);
  if (show_move (line) || cw_estimator_is_busy (estimator))
    return;
  gtk_label_set_text (GTK_LABEL (line->state),
                      words                          ? words
                      : search == CW_SEARCH_STOPPED ? _("search stopped")
                                                     : _("up to date"));
  gtk_widget_set_tooltip_text (line->state, words);
}

static void
search_pressed (CwStatusLine *line)
{
  CwEstimator *estimator = cw_job_estimator (line->job);
  if (cw_estimator_search (estimator, NULL, NULL) == CW_SEARCH_RUNNING)
    cw_estimator_stop (estimator);
  else
    cw_estimator_search_on (estimator);
}

static gboolean
lost_patience (gpointer data)
{
  CwStatusLine *line = data;
  line->patience = 0;
  if (!show_move (line))
    gtk_label_set_text (GTK_LABEL (line->state), _("working out…"));
  return G_SOURCE_REMOVE;
}

static void
busy_changed (CwStatusLine *line)
{
  gboolean busy = cw_estimator_is_busy (cw_job_estimator (line->job));
  if (busy && !line->patience)
    line->patience = g_timeout_add (PATIENCE_MS, lost_patience, line);
  if (busy)
    return;
  g_clear_handle_id (&line->patience, g_source_remove);
  search_changed (line);
}

void
cw_status_line_follow_moves (CwStatusLine *line, CwMoveLabel *label)
{
  g_return_if_fail (CW_IS_STATUS_LINE (line));
  line->moves = label;
  g_signal_connect_object (label, "notify::words",
                           G_CALLBACK (search_changed), line,
                           G_CONNECT_SWAPPED);
}

void
cw_status_line_follow (CwStatusLine *line, CwBoard *board, CwJob *job)
{
  g_return_if_fail (CW_IS_STATUS_LINE (line));
  g_return_if_fail (line->job == NULL);
  line->board = board;
  line->job = g_object_ref (job);
  g_signal_connect_object (board, "hint-changed", G_CALLBACK (hint_changed),
                           line, G_CONNECT_SWAPPED);
  g_signal_connect_object (board, "pointer-moved",
                           G_CALLBACK (pointer_moved), line,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (board, "view-changed", G_CALLBACK (view_changed),
                           line, G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_job_estimator (job), "notify::busy",
                           G_CALLBACK (busy_changed), line,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_job_estimator (job), "search-changed",
                           G_CALLBACK (search_changed), line,
                           G_CONNECT_SWAPPED);
  hint_changed (line);
  busy_changed (line);
}

void
cw_status_line_set_checks (CwStatusLine *line, const char *summary)
{
  g_return_if_fail (CW_IS_STATUS_LINE (line));
  gtk_label_set_text (GTK_LABEL (line->checks), summary);
  gtk_widget_set_visible (line->checks, *summary != '\0');
}

static void
cw_status_line_dispose (GObject *object)
{
  CwStatusLine *line = CW_STATUS_LINE (object);
  GtkWidget *child;
  g_clear_handle_id (&line->patience, g_source_remove);
  g_clear_handle_id (&line->idle, g_source_remove);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (line))))
    gtk_widget_unparent (child);
  g_clear_object (&line->job);
  G_OBJECT_CLASS (cw_status_line_parent_class)->dispose (object);
}

static void
cw_status_line_class_init (CwStatusLineClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_status_line_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_BOX_LAYOUT);
}

/* Wide enough that the line does not tremble as numbers change. */
static GtkWidget *
add_label (CwStatusLine *line, int chars)
{
  GtkWidget *label = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_label_set_width_chars (GTK_LABEL (label), chars);
  gtk_widget_add_css_class (label, "cw-figure");
  gtk_widget_set_parent (label, GTK_WIDGET (line));
  return label;
}

static void
cw_status_line_init (CwStatusLine *line)
{
  gtk_box_layout_set_spacing (
      GTK_BOX_LAYOUT (gtk_widget_get_layout_manager (GTK_WIDGET (line))), 18);
  gtk_widget_add_css_class (GTK_WIDGET (line), "cw-status");
  line->hint = add_label (line, 20);
  gtk_widget_set_hexpand (line->hint, TRUE);
  line->checks = add_label (line, 0);
  line->pointer = add_label (line, 26);
  cw_widget_keep_direction (line->pointer);
  line->scale = add_label (line, 11);
  line->state = add_label (line, 12);
  line->search = gtk_button_new ();
  gtk_widget_set_visible (line->search, FALSE);
  gtk_widget_add_css_class (line->search, "cw-in-line");
  g_signal_connect_swapped (line->search, "clicked",
                            G_CALLBACK (search_pressed), line);
  gtk_widget_set_parent (line->search, GTK_WIDGET (line));
}
