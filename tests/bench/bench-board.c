/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the board costs on a large job: some 50 000 panels on 200 walls, the
 * one shown 200 x 36 m with some 5 000 panels. Counted is our own work, from
 * the view to the render node, in a window of 1600 x 1000 pixels, as time of
 * the processor:
 *
 *   pan     a frame while the paper is moved by 12 pixels a frame
 *   anew    the same with every node made anew: the baseline
 *   zoom    a frame in the middle of a zoom
 *   still   the frames after it, until all is sharp again
 *   drag    a move of the pointer with an opening in the hand, and the frame
 *
 * and how many nodes were made for it. Then hit tests and snapping, with a
 * look at every corner and joint by turns as the baseline, and memory.
 *
 *   bench-board [FRAMES]
 */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "cw-board-private.h"

#include "cw-hit.h"
#include "large-job.h"

#define FRAMES 300
#define N_WALLS 200
#define WIDTH 1600
#define HEIGHT 1000
#define PAN_STEP 12

/* What was aimed at, milliseconds and megabytes; printed beside. */
#define AIM_PAN 2.0
#define AIM_STILL 16.0
#define AIM_POINT 0.2
#define AIM_MEMORY 200.0

typedef struct
{
  guint n;
  double sum, worst;
  guint nodes;
} Cost;

static CwBoard *board;

/* Of this thread alone: what others do on the machine at the time does not
 * count. */
static double
now (void)
{
  struct timespec time;

  clock_gettime (CLOCK_THREAD_CPUTIME_ID, &time);
  return (double) time.tv_sec * 1e3 + (double) time.tv_nsec / 1e6;
}

static void
count (Cost *cost, double ms, guint nodes)
{
  cost->n++;
  cost->sum += ms;
  cost->worst = MAX (cost->worst, ms);
  cost->nodes += nodes;
}

static double
mean (const Cost *cost)
{
  return cost->n ? cost->sum / cost->n : 0;
}

static void
tell (const char *what, const Cost *cost)
{
  printf ("  %-6s %8.3f ms (worst %8.3f), %u frames, %u nodes made\n", what,
          mean (cost), cost->worst, cost->n, cost->nodes);
}

/* One frame, from the view to the render node. */
static void
frame (Cost *cost)
{
  const guint nodes = cw_picture_nodes_made;
  const double start = now ();
  GtkSnapshot *snapshot = gtk_snapshot_new ();
  GskRenderNode *node;

  GTK_WIDGET_GET_CLASS (board)->snapshot (GTK_WIDGET (board), snapshot);
  node = gtk_snapshot_free_to_node (snapshot);
  count (cost, now () - start, cw_picture_nodes_made - nodes);
  g_clear_pointer (&node, gsk_render_node_unref);
}

static void
forget_nodes (void)
{
  for (guint i = 0; i < CW_N_BOARD_PICTURES; i++)
    cw_picture_forget_node (&board->pictures[i]);
}

/* To and fro, in waves, as a hand does that looks over a wall. */
static Cost
pan (guint frames, gboolean anew)
{
  Cost cost = { 0 }, first = { 0 };

  frame (&first);
  for (guint i = 0; i < frames; i++)
    {
      const double way = i / 100 % 2 ? PAN_STEP : -PAN_STEP;

      cw_board_pan_by (board, way, i / 50 % 2 ? 2 : -2);
      if (anew)
        forget_nodes ();
      frame (&cost);
    }
  return cost;
}

static void
stand_still (void)
{
  while (board->still_id != 0)
    g_main_context_iteration (NULL, TRUE);
}

/* A zoom in ten steps out and in again, then the frames until nothing is
 * made any more. */
static void
zoom (guint times, Cost *moving, Cost *still)
{
  for (guint i = 0; i < times; i++)
    {
      guint before;

      for (guint j = 0; j < 10; j++)
        {
          cw_board_zoom_by (board, i % 2 ? 1 / 1.03 : 1.03);
          frame (moving);
        }
      stand_still ();
      do
        {
          before = cw_picture_nodes_made;
          frame (still);
        }
      while (cw_picture_nodes_made != before);
    }
}

static void
feed (double x, double y, void (*how) (CwTool *, const CwPointer *))
{
  const CwPointer pointer = cw_board_pointer (board, x, y);

  how (board->tool, &pointer);
  cw_board_after_tool (board);
}

/* The first window, a few centimetres hither and thither. */
static Cost
drag (guint frames)
{
  const CwPoint in_it = { CW_MM (2600), CW_MM (1500) };
  Cost cost = { 0 }, first = { 0 };
  double x, y;

  cw_board_to_widget (board, in_it, &x, &y);
  frame (&first);
  {
    const CwPointer pointer = cw_board_pointer (board, x, y);
    cw_tool_press (board->tool, &pointer, 1);
  }
  for (guint i = 0; i < frames; i++)
    {
      const double start = now ();
      Cost drawn = { 0 };

      feed (x + i % 40, y + i % 7, cw_tool_move);
      frame (&drawn);
      count (&cost, now () - start, drawn.nodes);
    }
  feed (x, y, cw_tool_release);
  while (cw_document_can_undo (board->document))
    cw_document_undo (board->document);
  return cost;
}

static void
look_at (double mm_per_pixel)
{
  cw_board_zoom_fit (board);
  if (mm_per_pixel > 0)
    {
      const CwPoint near = { CW_MM (9000), CW_MM (6000) };
      double x, y;

      board->view.nm_per_pixel = mm_per_pixel * 1e6;
      cw_board_to_widget (board, near, &x, &y);
      cw_board_pan_by (board, WIDTH / 2.0 - x, HEIGHT / 2.0 - y);
    }
  forget_nodes ();
}

static void
measure_frames (double mm_per_pixel, guint frames)
{
  Cost panned, anew, moving = { 0 }, still = { 0 }, dragged;

  look_at (mm_per_pixel);
  printf ("%.1f mm a pixel\n", cw_board_get_mm_per_pixel (board));
  panned = pan (frames, FALSE);
  anew = pan (frames / 10, TRUE);
  zoom (8, &moving, &still);
  look_at (mm_per_pixel);
  dragged = drag (frames / 4);
  tell ("pan", &panned);
  tell ("anew", &anew);
  tell ("zoom", &moving);
  tell ("still", &still);
  tell ("drag", &dragged);
  printf ("  pan to anew %.4f, still to anew %.3f, drag to anew %.3f; "
          "aimed at: pan %g ms, still %g ms\n",
          mean (&panned) / mean (&anew), mean (&still) / mean (&anew),
          mean (&dragged) / mean (&anew), AIM_PAN, AIM_STILL);
}

/* Points spread over the wall, the same in every run. */
static CwPoint
spread (guint i)
{
  return cw_point (CW_MM (i * 7919 % 200000), CW_MM (i * 104729 % 36000));
}

/* All corners and joints by turns, each told by how far away it is. */
static double
baseline (const GArray *joints, guint rounds)
{
  const double start = now ();
  double sum = 0;

  for (guint i = 0; i < rounds; i++)
    for (guint j = 0; j < joints->len; j++)
      {
        const CwJoint *joint = &g_array_index (joints, CwJoint, j);
        const CwPoint at = spread (i);

        sum = MAX (sum, (double) ABS (joint->from.x - at.x)
                            + (double) ABS (joint->from.y - at.y));
      }
  return sum > 0 ? (now () - start) / rounds : 0;
}

static Cost
measure_snap (const CwSnapField *field, guint rounds, guint *found)
{
  Cost cost = { 0 };

  for (guint i = 0; i < rounds; i++)
    {
      const double start = now ();
      const CwPoint at = spread (i);
      const CwBox box = { at.x, at.y, at.x + CW_MM (1800), at.y + CW_MM (1400) };
      CwPoint by;

      *found += cw_snap_box (field, &box, &by).x_kind != CW_SNAP_NONE;
      count (&cost, now () - start, 0);
    }
  return cost;
}

static Cost
measure_hit (const CwWall *wall, guint rounds, guint *found)
{
  Cost cost = { 0 };

  for (guint i = 0; i < rounds; i++)
    {
      const double start = now ();

      *found += cw_hit_at (wall, spread (i), CW_MM (160)) != NULL;
      count (&cost, now () - start, 0);
    }
  return cost;
}

static void
measure_aiming (const CwWallTakeoff *takeoff, guint rounds)
{
  const CwSnapField field = { .wall = takeoff->wall,
                              .joints = takeoff->layout->joints,
                              .radius = CW_MM (160),
                              .grid = CW_MM (20) };
  const double base = baseline (field.joints, rounds);
  guint found = 0;
  const Cost snap = measure_snap (&field, rounds, &found);
  const Cost hit = measure_hit (takeoff->wall, rounds, &found);

  printf ("snap of a box %.4f ms (worst %.3f), hit %.4f ms (worst %.3f), "
          "a look at all %u joints %.4f ms; ratios %.2f, %.3f; "
          "aimed at %g ms (%u found)\n",
          mean (&snap), snap.worst, mean (&hit), hit.worst,
          field.joints->len, base, mean (&snap) / base, mean (&hit) / base,
          AIM_POINT, found);
}

/* What the process holds now, and the most it held, megabytes. */
static double
memory (const char *field)
{
  g_autofree char *status = NULL;
  const char *at;

  if (!g_file_get_contents ("/proc/self/status", &status, NULL, NULL))
    return 0;
  at = strstr (status, field);
  return at ? g_ascii_strtod (at + strlen (field), NULL) / 1024 : 0;
}

static void
tell_memory (const char *when)
{
  printf ("memory %s: %.0f MB (most %.0f)", when, memory ("VmRSS:"),
          memory ("VmHWM:"));
  printf ("; aimed at %g MB\n", AIM_MEMORY);
}

/* On no window: nothing but what is asked for here is drawn. */
static void
lay_board (CwDocument *document, CwTakeoff *takeoff)
{
  board = CW_BOARD (g_object_ref_sink (cw_board_new ()));
  cw_board_set_document (board, document);
  cw_board_set_takeoff (board, takeoff);
  gtk_widget_measure (GTK_WIDGET (board), GTK_ORIENTATION_HORIZONTAL, -1,
                      NULL, NULL, NULL, NULL);
  gtk_widget_allocate (GTK_WIDGET (board), WIDTH, HEIGHT, -1, NULL);
}

static void
run (guint frames)
{
  static const double zooms[] = { 0, 60, 20, 8, 2 };
  g_autoptr (CwProject) project
      = large_job (N_WALLS, LARGE_JOB_WITH_BIG_WALL);
  g_autoptr (CwTakeoff) takeoff = cw_takeoff_new (project, NULL, NULL);
  g_autoptr (CwDocument) document = cw_document_new (project);
  const CwWallTakeoff *shown = cw_takeoff_wall (takeoff, "e1");

  cw_document_show_elevation (document, "e1");
  printf ("%.0f panels; %u pieces and %u joints on the wall shown\n",
          case_amount (takeoff, NULL, "panel.stock"),
          shown->layout->pieces->len, shown->layout->joints->len);
  lay_board (document, takeoff);
  tell_memory ("with the job and its takeoff");
  for (guint i = 0; i < G_N_ELEMENTS (zooms); i++)
    measure_frames (zooms[i], frames);
  measure_aiming (shown, 10 * frames);
  tell_memory ("after all that");
  g_object_unref (board);
}

int
main (int argc, char *argv[])
{
  const guint frames = argc > 1 ? (guint) MAX (atoi (argv[1]), 1) : FRAMES;

  if (!gtk_init_check ())
    {
      fprintf (stderr, "there is no display; run it under xvfb-run\n");
      return EXIT_FAILURE;
    }
  tell_memory ("at the start");
  run (frames);
  return EXIT_SUCCESS;
}
