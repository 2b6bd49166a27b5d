/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-label-place.h"

#include <glib.h>

/* Two steps and three: clear of the pointer's picture. */
#define BESIDE 18.0f

static gboolean
is_on_board (const graphene_rect_t *label, const graphene_size_t *board)
{
  graphene_rect_t all = GRAPHENE_RECT_INIT (0, 0, board->width,
                                            board->height);
  return graphene_rect_contains_rect (&all, label);
}

static graphene_point_t
kept_on_board (float x, float y, float width, float height,
               const graphene_size_t *board)
{
  return GRAPHENE_POINT_INIT (
      CLAMP (x, 0, MAX (board->width - width, 0)),
      CLAMP (y, 0, MAX (board->height - height, 0)));
}

/* Right and below of the pointer or of what is to stay free, whichever is
 * further, and so on round. */
static void
list_places (graphene_point_t places[4], const graphene_point_t *pointer,
             const graphene_rect_t *keep, float width, float height)
{
  float right = MAX (pointer->x, keep->origin.x + keep->size.width);
  float left = MIN (pointer->x, keep->origin.x);
  float bottom = MAX (pointer->y, keep->origin.y + keep->size.height);
  float top = MIN (pointer->y, keep->origin.y);
  places[0] = GRAPHENE_POINT_INIT (right + BESIDE, pointer->y + BESIDE);
  places[1] = GRAPHENE_POINT_INIT (pointer->x + BESIDE, bottom + BESIDE);
  places[2] = GRAPHENE_POINT_INIT (left - BESIDE - width,
                                   pointer->y + BESIDE);
  places[3] = GRAPHENE_POINT_INIT (pointer->x + BESIDE,
                                   top - BESIDE - height);
}

graphene_point_t
cw_label_place (const graphene_point_t *pointer,
                const graphene_rect_t *keep_free, float width, float height,
                const graphene_size_t *board)
{
  graphene_rect_t keep
      = keep_free ? *keep_free
                  : GRAPHENE_RECT_INIT (pointer->x, pointer->y, 0, 0);
  graphene_point_t places[4];
  list_places (places, pointer, &keep, width, height);
  for (guint i = 0; i < G_N_ELEMENTS (places); i++)
    if (is_on_board (&GRAPHENE_RECT_INIT (places[i].x, places[i].y, width,
                                          height),
                     board))
      return places[i];
  return kept_on_board (pointer->x + BESIDE, pointer->y + BESIDE, width,
                        height, board);
}
