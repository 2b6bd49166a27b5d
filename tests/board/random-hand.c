/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "random-hand.h"

#include "cw-choose.h"
#include "cw-clip.h"
#include "cw-edit-arrange.h"
#include "cw-edit-corners.h"
#include "cw-edit-marks.h"

/* No more than so many on a wall. */
#define ITEMS_MOST 40

static const char *const texts[] = {
  "1200", "900 x 2100", "6000x3000", "1000 x 2000 x 300", "0", "-5", "x",
  "12' 6\"", "3 m", "99 km", "1/0", "4 x 4", "",
  "6:12", "3000 x 6:12", "2000 26.57°", "45 deg",
};

static double
somewhere (void)
{
  return g_test_rand_double_range (-2000, 9000);
}

static CwLength
some_mm (int least, int most)
{
  return CW_MM (g_test_rand_int_range (least, most));
}

static void
type (Hand *hand)
{
  const char *text = texts[g_test_rand_int_range (0, G_N_ELEMENTS (texts))];
  g_autoptr (GError) error = NULL;

  if (!cw_tool_enter_text (hand->tool, text, &error))
    g_assert_nonnull (error);
  cw_tool_refresh (hand->tool);
}

static void
change_history (Hand *hand)
{
  switch (g_test_rand_int_range (0, 5))
    {
    case 0:
    case 1:
      cw_document_undo (hand->document);
      break;
    case 2:
    case 3:
      cw_document_redo (hand->document);
      break;
    default:
      cw_document_go_to_state (
          hand->document,
          (guint) g_test_rand_int_range (
              0, (gint32) cw_document_n_states (hand->document)));
    }
  cw_tool_refresh (hand->tool);
}

static void
press_key (Hand *hand)
{
  switch (g_test_rand_int_range (0, 4))
    {
    case 0:
      cw_tool_finish (hand->tool);
      break;
    case 1:
      cw_tool_cancel (hand->tool);
      break;
    case 2:
      cw_tool_delete (hand->tool);
      break;
    default:
      cw_tool_nudge (hand->tool, some_mm (-50, 50), some_mm (-50, 50));
    }
  cw_tool_refresh (hand->tool);
}

/* -------------------------------------------- the menus and the inspector */

typedef CwProject *(*Change) (const CwProject *project,
                              const CwElevation *elevation,
                              const char *const *ids);

static CwProject *
paste_again (const CwProject *project, const CwElevation *elevation,
             const char *const *ids)
{
  g_autoptr (CwProject) clip = cw_clip_new (project, elevation, ids);
  g_auto (GStrv) made = NULL;

  return clip ? cw_edit_paste (project, elevation, clip,
                               cw_point (some_mm (-90, 90), CW_MM (-30)),
                               &made)
              : NULL;
}

/* Of the outline, or of an unclad area that is selected. */
static const char *
corner_owner (const CwElevation *elevation, const char *const *ids)
{
  const CwNode *item = ids[0] ? cw_node_find (&elevation->node, ids[0]) : NULL;

  if (item && item->type == &cw_unclad_type)
    return ids[0];
  return elevation->outline ? elevation->id : NULL;
}

static CwProject *
change_corners (const CwProject *project, const CwElevation *elevation,
                const char *const *ids)
{
  const char *owner = corner_owner (elevation, ids);
  g_autoptr (GArray) corners = NULL;
  g_autofree char *fault = NULL;
  CwProject *next;
  guint side;

  if (owner == NULL)
    return NULL;
  corners = cw_edit_corners (project, owner);
  side = (guint) g_test_rand_int_range (0, (gint32) corners->len);
  switch (g_test_rand_int_range (0, 3))
    {
    case 0:
      next = cw_edit_insert_corner (
          project, owner, side,
          cw_point (some_mm (-500, 7000), some_mm (-500, 4000)), &fault);
      break;
    case 1:
      next = cw_edit_remove_corner (project, owner, side, &fault);
      break;
    default:
      next = cw_edit_bow_side (project, owner, side, some_mm (-700, 700),
                               &fault);
    }
  /* What is refused says why. */
  g_assert_true ((next == NULL) == (fault != NULL));
  return next;
}

static CwProject *
align (const CwProject *project, const CwElevation *elevation,
       const char *const *ids)
{
  return cw_edit_align (project, elevation, ids,
                        (CwAlign) g_test_rand_int_range (0, 6));
}

static CwProject *
distribute (const CwProject *project, const CwElevation *elevation,
            const char *const *ids)
{
  return cw_edit_distribute (project, elevation, ids, g_test_rand_bit ());
}

static CwProject *
mirror_all (const CwProject *project, const CwElevation *elevation,
            const char *const *ids)
{
  return cw_edit_mirror_elevation (project, elevation);
}

static CwProject *
repeat (const CwProject *project, const CwElevation *elevation,
        const char *const *ids)
{
  const CwPoint way = { some_mm (-900, 900), some_mm (-90, 90) };
  g_auto (GStrv) made = NULL;

  return cw_edit_repeat (project, elevation, ids,
                         (guint) g_test_rand_int_range (1, 4), way,
                         g_test_rand_bit (), &made);
}

static CwProject *
make_mark (const CwProject *project, const CwElevation *elevation,
           const char *const *ids)
{
  g_autofree char *mark = NULL;

  return cw_edit_make_mark (project, elevation, ids, &mark);
}

static const CwMark *
some_mark (const CwProject *project)
{
  const gint32 n = (gint32) cw_list_length (project->marks);

  return n > 0 ? cw_list_at (project->marks,
                             (gsize) g_test_rand_int_range (0, n))
               : NULL;
}

static CwProject *
follow_mark (const CwProject *project, const CwElevation *elevation,
             const char *const *ids)
{
  const CwMark *mark = some_mark (project);

  return mark ? cw_edit_follow_mark (project, elevation, ids, mark->id) : NULL;
}

/* All that have it follow; an arch of it may not be able to. */
static CwProject *
widen_mark (const CwProject *project, const CwElevation *elevation,
            const char *const *ids)
{
  const CwMark *mark = some_mark (project);
  g_autoptr (CwNode) wider = NULL;

  if (mark == NULL || mark->kind == CW_OPENING_ARCH)
    return NULL;
  wider = cw_node_with (&mark->node,
                        (guint) cw_node_type_field (&cw_mark_type, "width"),
                        some_mm (300, 2500));
  return (CwProject *) cw_node_replace (&project->node, &mark->node, wider);
}

static const Change changes[] = {
  align,          distribute,          cw_edit_mirror, mirror_all,
  repeat,         paste_again,         make_mark,      follow_mark,
  widen_mark,     cw_edit_break_away,  cw_edit_remove, change_corners,
  change_corners,
};

static void
choose (Hand *hand, const CwElevation *elevation)
{
  const char *const *ids = cw_document_selection (hand->document);
  g_auto (GStrv) chosen = NULL;

  switch (g_test_rand_int_range (0, 5))
    {
    case 0:
      chosen = cw_choose_all (elevation);
      break;
    case 1:
      chosen = cw_choose_kind (elevation, ids);
      break;
    case 2:
      chosen = cw_choose_mark (elevation, ids);
      break;
    default:
      return;
    }
  cw_document_select (hand->document, (const char *const *) chosen);
}

/* To what is selected; what would lie out of bounds is not done, as the
 * dialogs refuse it. */
static void
arrange (Hand *hand)
{
  const CwElevation *elevation = cw_document_elevation (hand->document);
  const Change change
      = changes[g_test_rand_int_range (0, G_N_ELEMENTS (changes))];
  g_autoptr (CwProject) next = NULL;

  if (elevation == NULL || cw_list_length (elevation->items) > ITEMS_MOST)
    return;
  choose (hand, elevation);
  next = change (cw_document_project (hand->document), elevation,
                 cw_document_selection (hand->document));
  if (next)
    cw_document_edit (hand->document, next, "Arrange", NULL);
  cw_tool_refresh (hand->tool);
}

static void
show_another (Hand *hand)
{
  const CwList *elevations = cw_document_project (hand->document)->elevations;
  const gint32 n = (gint32) cw_list_length (elevations);

  if (n > 0)
    cw_document_show_elevation (
        hand->document,
        ((const CwElevation *) cw_list_at (
             elevations, (gsize) g_test_rand_int_range (0, n)))
            ->id);
  cw_tool_refresh (hand->tool);
}

static void
take_another (Hand *hand)
{
  cw_tool_next_form (hand->tool);
  hand_take (hand, (CwToolKind) g_test_rand_int_range (0, CW_N_TOOLS));
}

gboolean
random_gesture (Hand *hand)
{
  const int what = g_test_rand_int_range (0, 14);

  hand->hold = (CwHold) g_test_rand_int_range (0, 8);
  hand->mm_per_pixel = g_test_rand_double_range (0.5, 20);
  if (what == 0)
    take_another (hand);
  else if (what == 1)
    type (hand);
  else if (what == 2)
    press_key (hand);
  else if (what == 3)
    change_history (hand);
  else if (what == 4)
    show_another (hand);
  else if (what < 8)
    arrange (hand);
  else if (what < 11)
    hand_drag (hand, somewhere (), somewhere (), somewhere (), somewhere ());
  else
    hand_click (hand, somewhere (), somewhere ());
  return what == 3;
}
