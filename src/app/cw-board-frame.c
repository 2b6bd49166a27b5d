/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-board-frame.h"

#include "cw-hover-label.h"
#include "cw-move-label.h"
#include "cw-panel-head.h"
#include "cw-ruler.h"
#include "cw-typed-box.h"

/* From the pointer to the entry, so that it covers nothing looked at. */
#define BESIDE 18

struct _CwBoardFrame
{
  GtkWidget parent;
  CwJob *job;
  CwBoard *board;
  GtkWidget *overlay, *typed, *move, *hover, *across, *along;
  CwTakeoff *preview;     /* (nullable): shown instead of the job's */
  CwPoint pointer;
  gboolean has_pointer;
};

G_DEFINE_FINAL_TYPE (CwBoardFrame, cw_board_frame, GTK_TYPE_WIDGET)

CwBoard *
cw_board_frame_board (CwBoardFrame *frame)
{
  g_return_val_if_fail (CW_IS_BOARD_FRAME (frame), NULL);
  return frame->board;
}

CwMoveLabel *
cw_board_frame_move_label (CwBoardFrame *frame)
{
  g_return_val_if_fail (CW_IS_BOARD_FRAME (frame), NULL);
  return CW_MOVE_LABEL (frame->move);
}

static void
pointer_moved (CwBoardFrame *frame, gint64 x, gint64 y)
{
  frame->pointer = cw_point (x, y);
  frame->has_pointer = TRUE;
}

/* Before the pointer has been there: in the middle. */
static void
centre_typed (CwBoardFrame *frame, gboolean centre)
{
  GtkAlign align = centre ? GTK_ALIGN_CENTER : GTK_ALIGN_START;
  gtk_widget_set_halign (frame->typed, align);
  gtk_widget_set_valign (frame->typed, align);
}

/* Inside the board, whatever its size. */
static void
place_typed (CwBoardFrame *frame)
{
  double x, y;
  int wide, tall;
  gtk_widget_measure (frame->typed, GTK_ORIENTATION_HORIZONTAL, -1, NULL,
                      &wide, NULL, NULL);
  gtk_widget_measure (frame->typed, GTK_ORIENTATION_VERTICAL, -1, NULL, &tall,
                      NULL, NULL);
  cw_board_to_widget (frame->board, frame->pointer, &x, &y);
  int right = gtk_widget_get_width (GTK_WIDGET (frame->board)) - wide;
  int foot = gtk_widget_get_height (GTK_WIDGET (frame->board)) - tall;
  gtk_widget_set_margin_start (frame->typed,
                               (int) CLAMP (x + BESIDE, 0, MAX (right, 0)));
  gtk_widget_set_margin_top (frame->typed,
                             (int) CLAMP (y + BESIDE, 0, MAX (foot, 0)));
}

void
cw_board_frame_type (CwBoardFrame *frame, const char *text)
{
  g_return_if_fail (CW_IS_BOARD_FRAME (frame));
  gtk_widget_set_visible (frame->typed, TRUE);
  centre_typed (frame, !frame->has_pointer);
  if (frame->has_pointer)
    place_typed (frame);
  cw_typed_box_open (CW_TYPED_BOX (frame->typed), text);
}

static void
close_typed (CwBoardFrame *frame)
{
  cw_typed_box_close (CW_TYPED_BOX (frame->typed));
}

static void
style_changed (CwBoardFrame *frame)
{
  const CwTextStyle *style = cw_job_style (frame->job);
  cw_board_set_text_style (frame->board, style);
  cw_ruler_set_style (CW_RULER (frame->across), style);
  cw_ruler_set_style (CW_RULER (frame->along), style);
}

static void
takeoff_changed (CwBoardFrame *frame)
{
  cw_board_set_takeoff (frame->board,
                        frame->preview ? frame->preview
                                       : cw_job_takeoff (frame->job));
}

void
cw_board_frame_preview (CwBoardFrame *frame, const CwTakeoff *takeoff)
{
  g_return_if_fail (CW_IS_BOARD_FRAME (frame));
  g_clear_pointer (&frame->preview, cw_takeoff_unref);
  frame->preview = takeoff ? cw_takeoff_ref (takeoff) : NULL;
  cw_board_set_previews (frame->board, takeoff != NULL);
  if (frame->job)
    takeoff_changed (frame);
}

static void
sheet_ready (CwBoardFrame *frame, const char *id)
{
  cw_board_set_sheet_source (
      frame->board, id,
      cw_sheet_store_source (cw_job_sheets (frame->job), id));
}

static void
lines_ready (CwBoardFrame *frame, const char *id)
{
  cw_board_set_sheet_lines (
      frame->board, id,
      cw_sheet_store_lines (cw_job_sheets (frame->job), id));
}

static void
show_sheets (CwBoardFrame *frame)
{
  const CwList *sheets
      = cw_document_project (cw_job_document (frame->job))->sheets;
  for (gsize i = 0; i < cw_list_length (sheets); i++)
    {
      const char *id = cw_node_id (cw_list_at (sheets, i));
      sheet_ready (frame, id);
      lines_ready (frame, id);
    }
}

void
cw_board_frame_set_job (CwBoardFrame *frame, CwJob *job)
{
  g_return_if_fail (CW_IS_BOARD_FRAME (frame));
  g_return_if_fail (frame->job == NULL);
  frame->job = g_object_ref (job);
  cw_board_set_document (frame->board, cw_job_document (job));
  cw_move_label_set_job (CW_MOVE_LABEL (frame->move), job);
  g_signal_connect_object (job, "style-changed", G_CALLBACK (style_changed),
                           frame, G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_job_estimator (job), "takeoff-changed",
                           G_CALLBACK (takeoff_changed), frame,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_job_sheets (job), "sheet-ready",
                           G_CALLBACK (sheet_ready), frame,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (cw_job_sheets (job), "lines-ready",
                           G_CALLBACK (lines_ready), frame,
                           G_CONNECT_SWAPPED);
  style_changed (frame);
  takeoff_changed (frame);
  show_sheets (frame);
}

static void
cw_board_frame_dispose (GObject *object)
{
  CwBoardFrame *frame = CW_BOARD_FRAME (object);
  GtkWidget *child;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (frame))))
    gtk_widget_unparent (child);
  g_clear_object (&frame->job);
  g_clear_pointer (&frame->preview, cw_takeoff_unref);
  G_OBJECT_CLASS (cw_board_frame_parent_class)->dispose (object);
}

static void
cw_board_frame_class_init (CwBoardFrameClass *class)
{
  G_OBJECT_CLASS (class)->dispose = cw_board_frame_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (class),
                                            GTK_TYPE_GRID_LAYOUT);
}

static void
attach (CwBoardFrame *frame, GtkWidget *child, int column, int row)
{
  GtkLayoutManager *grid = gtk_widget_get_layout_manager (GTK_WIDGET (frame));
  gtk_widget_set_parent (child, GTK_WIDGET (frame));
  g_object_set (gtk_layout_manager_get_layout_child (grid, child), "column",
                column, "row", row, NULL);
}

static void
cw_board_frame_init (CwBoardFrame *frame)
{
  frame->board = CW_BOARD (cw_board_new ());
  frame->overlay = gtk_overlay_new ();
  gtk_overlay_set_child (GTK_OVERLAY (frame->overlay),
                         GTK_WIDGET (frame->board));
  frame->typed = cw_typed_box_new (frame->board);
  gtk_overlay_add_overlay (GTK_OVERLAY (frame->overlay), frame->typed);
  frame->move = cw_move_label_new (frame->board);
  gtk_overlay_add_overlay (GTK_OVERLAY (frame->overlay), frame->move);
  frame->hover = cw_hover_label_new (frame->board);
  gtk_overlay_add_overlay (GTK_OVERLAY (frame->overlay), frame->hover);
  frame->across = cw_ruler_new (GTK_ORIENTATION_HORIZONTAL, frame->board);
  frame->along = cw_ruler_new (GTK_ORIENTATION_VERTICAL, frame->board);
  gtk_widget_set_hexpand (frame->overlay, TRUE);
  gtk_widget_set_vexpand (frame->overlay, TRUE);
  GtkWidget *const drawn[] = { GTK_WIDGET (frame), frame->overlay,
                               frame->typed, frame->move, frame->hover,
                               frame->across, frame->along,
                               GTK_WIDGET (frame->board) };
  for (gsize i = 0; i < G_N_ELEMENTS (drawn); i++)
    cw_widget_keep_direction (drawn[i]);
  attach (frame, frame->across, 1, 0);
  attach (frame, frame->along, 0, 1);
  attach (frame, frame->overlay, 1, 1);
  g_signal_connect_object (frame->board, "pointer-moved",
                           G_CALLBACK (pointer_moved), frame,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (frame->board, "text-wanted",
                           G_CALLBACK (cw_board_frame_type), frame,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (frame->board, "tool-changed",
                           G_CALLBACK (close_typed), frame,
                           G_CONNECT_SWAPPED);
}
