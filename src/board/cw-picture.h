/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One layer of the board: a display list, and the render node that was made
 * of it for what the window showed and a margin. Panning within the margin
 * and zooming by little shows the same node again, moved and scaled; no node
 * is ever much larger than the window.
 */
#pragma once

#include <gtk/gtk.h>

#include "cw-painter.h"
#include "cw-view.h"

G_BEGIN_DECLS

typedef struct
{
  CwDisplayList *list;      /* (nullable) (owned) */
  GskRenderNode *node;      /* (nullable) (owned) */
  CwView view;              /* that the node was made for */
  graphene_rect_t bounds;   /* of the wall that the node shows, pixels of that view */
  gboolean is_whole;        /* the node shows the whole list */
} CwPicture;

/* What pictures are looked at through. */
typedef struct
{
  CwView view;
  double width, height;     /* of the window, pixels */
  CwPalette palette;
  double text_scale;
  gboolean over_sheet;      /* texts stand on patches of paper */
  gboolean moving;          /* in the middle of a zoom: any node will do */
} CwLookout;

/* How many nodes have been made so far; for tests of the caching. */
extern guint cw_picture_nodes_made;

/* Takes @list over; the node is made anew when it is looked at next. */
void cw_picture_set_list (CwPicture *picture, CwDisplayList *list);

/* As after a change of colours. */
void cw_picture_forget_node (CwPicture *picture);
void cw_picture_clear (CwPicture *picture);

void cw_picture_snapshot (CwPicture *picture, GtkSnapshot *snapshot,
                          const CwLookout *lookout);

G_END_DECLS
