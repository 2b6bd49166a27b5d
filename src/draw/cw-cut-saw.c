/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The cuts of a panel: lines with a number at the end, outside the panel
 * where the cut ends at its edge.
 */
#include "cw-cut-private.h"

#include <math.h>

/* Points. */
#define RADIUS 6.5
#define GAP 3.0
#define APART (2 * RADIUS + 1)

typedef struct
{
  const CwCutPicture *picture;
  GArray *marks;              /* Mark, those that stand */
} Marking;

typedef struct
{
  double x, y;
} Mark;

static double
mm (CwLength length)
{
  return (double) length / CW_NM_PER_MM;
}

static gboolean
is_free (const Marking *marking, const Mark *mark)
{
  const double apart = APART * marking->picture->mm_per_unit;

  for (guint i = 0; i < marking->marks->len; i++)
    {
      const Mark *other = &g_array_index (marking->marks, Mark, i);

      if (hypot (other->x - mark->x, other->y - mark->y) < apart - 1e-6)
        return FALSE;
    }
  return TRUE;
}

/* Further along the cut's line until it stands free. */
static Mark
free_mark (const Marking *marking, const Mark *first, gboolean upright,
           gboolean outward, double most)
{
  const double step
      = (outward ? 0.5 : -0.5) * RADIUS * marking->picture->mm_per_unit;
  Mark mark = *first;

  for (guint i = 1; !is_free (marking, &mark) && i * fabs (step) < most; i++)
    mark = upright ? (Mark) { first->x, first->y + i * step }
                   : (Mark) { first->x + i * step, first->y };
  return is_free (marking, &mark) ? mark : *first;
}

static void
draw_mark (const Marking *marking, const Mark *mark, const char *id,
           guint number)
{
  const CwCutPicture *picture = marking->picture;
  const double radius = RADIUS * picture->mm_per_unit;
  CwCutRoom *room = picture->room;
  g_autofree char *text = g_strdup_printf ("%u", number);

  cw_display_list_begin (picture->list, CW_STYLE_SAW_MARK, id);
  cw_display_list_move_to (picture->list, mark->x + radius, mark->y);
  cw_display_list_arc (picture->list, mark->x, mark->y, radius, radius, 0,
                       2 * G_PI);
  cw_display_list_close (picture->list);
  cw_display_list_end (picture->list);
  cw_display_list_add_text (picture->list, CW_STYLE_SAW_NUMBER, id, mark->x,
                            mark->y, 0, CW_ANCHOR_CENTRE, text);
  room->right = MAX (room->right, mark->x + radius);
  room->top = MAX (room->top, mark->y + radius);
}

static void
draw_line (const CwCutPicture *picture, const char *id, double x0, double y0,
           double x1, double y1)
{
  cw_display_list_begin (picture->list, CW_STYLE_SAW, id);
  cw_display_list_move_to (picture->list, x0, y0);
  cw_display_list_line_to (picture->list, x1, y1);
  cw_display_list_end (picture->list);
}

static void
draw_cut (const Marking *marking, const CwCut *cut, guint number)
{
  const CwCutPicture *picture = marking->picture;
  const CwCutRules *rules = &picture->plan->cut->rules;
  const gboolean at_edge
      = cut->to >= (cut->upright ? rules->height : rules->length);
  const double unit = picture->mm_per_unit;
  const double at = mm (cut->at) + mm (rules->kerf) / 2;
  const double from = mm (cut->from), to = mm (cut->to);
  const double end = at_edge ? to + (GAP + RADIUS) * unit : to - RADIUS * unit;
  const Mark first
      = cut->upright ? (Mark) { at, end } : (Mark) { end, at };
  const Mark mark = free_mark (marking, &first, cut->upright, at_edge,
                               at_edge ? G_MAXUINT : to - from);
  g_autofree char *id = g_strdup_printf ("cut-%u", number);

  if (cut->upright)
    draw_line (picture, id, at, from, at, at_edge ? mark.y : to);
  else
    draw_line (picture, id, from, at, at_edge ? mark.x : to, at);
  g_array_append_val (marking->marks, mark);
}

/* Lines first, so that no line runs over a number. */
void
cw_cut_draw_saw (const CwCutPicture *picture)
{
  const GArray *cuts = picture->whole->cuts;
  g_autoptr (GArray) marks = g_array_new (FALSE, FALSE, sizeof (Mark));
  const Marking marking = { picture, marks };

  for (guint i = 0; i < cuts->len; i++)
    draw_cut (&marking, &g_array_index (cuts, CwCut, i), i + 1);
  for (guint i = 0; i < cuts->len; i++)
    {
      g_autofree char *id = g_strdup_printf ("cut-%u", i + 1);
      draw_mark (&marking, &g_array_index (marks, Mark, i), id, i + 1);
    }
}
