/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a frame of the board costs: a wall of 60 x 9 m with 60 openings and
 * its panels is panned through a window of 1600 x 1000 pixels. Counted is our
 * own work, from the view to the render node. The baseline, in the same run:
 * every frame made anew. Then what snapping and hit tests cost there.
 *
 *   bench-board [FRAMES]
 *
 * Prints for each zoom "MM mm a pixel: pan MS (worst MS), anew MS, ratio R",
 * then "snap MS, hit MS".
 */
#include <stdio.h>
#include <stdlib.h>

#include "cw-elevation-drawing.h"
#include "cw-picture.h"

#include "board-cases.h"
#include "cw-hit.h"

#define FRAMES 400
#define WIDTH 1600
#define HEIGHT 1000

static const double zooms[] = { 42, 20, 8, 2 };

static double
milliseconds (gint64 since)
{
  return (double) (g_get_monotonic_time () - since) / 1e3;
}

/* Level with the middle of the wall, so far along it. */
static CwLookout
lookout_at (double mm_per_pixel, double share)
{
  double way = 60000 / mm_per_pixel - WIDTH + 80;

  return (CwLookout) {
    .view = { 40 - share * MAX (way, 0),
              HEIGHT / 2.0 + 4500 / mm_per_pixel, mm_per_pixel * 1e6 },
    .width = WIDTH,
    .height = HEIGHT,
    .palette = CW_PALETTE_LIGHT,
    .text_scale = 1,
  };
}

static double
frame (CwPicture *picture, const CwLookout *lookout)
{
  gint64 start = g_get_monotonic_time ();
  GtkSnapshot *snapshot = gtk_snapshot_new ();
  GskRenderNode *node;
  double ms;

  cw_picture_snapshot (picture, snapshot, lookout);
  node = gtk_snapshot_free_to_node (snapshot);
  ms = milliseconds (start);
  g_clear_pointer (&node, gsk_render_node_unref);
  return ms;
}

typedef struct
{
  double mean, worst;
} Cost;

static Cost
pan (CwPicture *picture, double mm_per_pixel, guint frames, gboolean anew)
{
  Cost cost = { 0, 0 };

  cw_picture_forget_node (picture);
  for (guint i = 0; i < frames; i++)
    {
      CwLookout lookout = lookout_at (mm_per_pixel, (double) i / frames);
      double ms;

      if (anew)
        cw_picture_forget_node (picture);
      ms = frame (picture, &lookout);
      cost.mean += ms / frames;
      cost.worst = MAX (cost.worst, ms);
    }
  return cost;
}

static void
measure_frames (const CwWall *wall, guint frames)
{
  g_autoptr (CwWallTakeoff) takeoff = cw_wall_takeoff_new (wall);
  CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);

  for (guint i = 0; i < G_N_ELEMENTS (zooms); i++)
    {
      CwPicture picture = { NULL };
      Cost kept, anew;

      cw_picture_set_list (&picture,
                           cw_elevation_drawing (takeoff, CW_LAYER_ALL,
                                                 &style, zooms[i]));
      kept = pan (&picture, zooms[i], frames, FALSE);
      anew = pan (&picture, zooms[i], frames, TRUE);
      printf ("%g mm a pixel: pan %.4f (worst %.2f), anew %.3f, ratio %.3f\n",
              zooms[i], kept.mean, kept.worst, anew.mean,
              kept.mean / anew.mean);
      cw_picture_clear (&picture);
    }
}

/* Points spread over the wall, the same in every run. */
static CwPoint
spread (guint i)
{
  return cw_point (CW_MM (i * 7919 % 60000), CW_MM (i * 104729 % 9000));
}

static void
measure_aiming (const CwWall *wall, guint rounds)
{
  CwSnapField field = { .wall = wall, .radius = CW_MM (160), .grid = CW_MM (20) };
  gint64 start = g_get_monotonic_time ();
  guint found = 0;
  double snap, hit;

  for (guint i = 0; i < rounds; i++)
    found += cw_snap (&field, spread (i)).x_kind != CW_SNAP_NONE;
  snap = milliseconds (start) / rounds;
  start = g_get_monotonic_time ();
  for (guint i = 0; i < rounds; i++)
    found += cw_hit_at (wall, spread (i), CW_MM (160)) != NULL;
  hit = milliseconds (start) / rounds;
  printf ("snap %.4f, hit %.4f (%u found)\n", snap, hit, found);
}

int
main (int argc, char *argv[])
{
  guint frames = argc > 1 ? (guint) MAX (atoi (argv[1]), 1) : FRAMES;
  g_autoptr (CwProject) project = case_long_wall ();
  g_autoptr (CwWall) wall
      = cw_wall_new (project, cw_project_elevation (project, "e1"));

  gtk_init_check (); /* render nodes need it, a display they do not */
  measure_frames (wall, frames);
  measure_aiming (wall, 50 * frames);
  return EXIT_SUCCESS;
}
