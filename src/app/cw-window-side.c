/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the window does with the side of an outline or of an unclad area that
 * the board's menu was asked for at: a corner on it, an arc, straight again.
 */
#include "cw-window-private.h"

#include "cw-edit-corners.h"

/* How near to a side its menu is meant, pixels. */
#define REACH 14

/* The side that the menu was asked for at. */
typedef struct
{
  const char *owner;
  int side;
  CwPoint on;
  CwLength chord, bow;
} Side;

static gboolean
find_side (CwWindow *window, const char *owner, Side *side)
{
  CwBoard *board = cw_window_board (window);
  CwLength reach
      = (CwLength) (REACH * cw_board_get_mm_per_pixel (board) * 1e6);
  g_autoptr (GArray) corners
      = cw_edit_corners (cw_window_project (window), owner);
  if (!corners)
    return FALSE;
  side->owner = owner;
  side->side = cw_corners_side_at (corners, cw_board_get_menu_point (board),
                                   reach, &side->on);
  if (side->side < 0)
    return FALSE;
  const CwCorner *from
      = &g_array_index (corners, CwCorner, (guint) side->side);
  CwPoint to = g_array_index (corners, CwCorner,
                              ((guint) side->side + 1) % corners->len)
                   .at;
  side->bow = from->sagitta;
  side->chord = MAX (ABS (to.x - from->at.x), ABS (to.y - from->at.y));
  return TRUE;
}

/* Of the unclad area that is selected, or of the outline. */
static gboolean
menu_side (CwWindow *window, Side *side)
{
  const char *const *ids
      = cw_document_selection (cw_window_document (window));
  const CwElevation *elevation = cw_window_elevation (window);
  return (ids[0] && !ids[1] && find_side (window, ids[0], side))
         || (elevation && elevation->outline
             && find_side (window, elevation->id, side));
}

/* Takes @next, NULL where it cannot be, and @fault, which is told then. */
static void
take (CwWindow *window, CwProject *next, char *fault, const char *name)
{
  if (fault)
    cw_notice_done (window->notice, fault, NULL);
  if (next)
    cw_window_edit (window, next, name);
  g_free (fault);
}

static void
insert_corner (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  char *fault = NULL;
  Side side;
  if (!menu_side (data, &side))
    return;
  CwProject *next
      = cw_edit_insert_corner (cw_window_project (data), side.owner,
                               (guint) side.side, side.on, &fault);
  take (data, next, fault, _("Insert a corner"));
}

static void
bow (CwWindow *window, const Side *side, CwLength sagitta, const char *name)
{
  char *fault = NULL;
  CwProject *next
      = cw_edit_bow_side (cw_window_project (window), side->owner,
                          (guint) side->side, sagitta, &fault);
  take (window, next, fault, name);
}

/* An eighth of the chord, outward, to a whole millimetre; to be changed by
 * its handle or in the attributes. */
static void
bow_side (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  Side side;
  if (!menu_side (data, &side))
    return;
  CwLength eighth = side.chord / 8;
  bow (data, &side, MAX (eighth - eighth % CW_MM (1), 1),
       _("Make a side an arc"));
}

static void
straighten_side (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  Side side;
  if (menu_side (data, &side))
    bow (data, &side, 0, _("Make a side straight"));
}

void
cw_window_enable_side_actions (CwWindow *window)
{
  Side side = { NULL, -1, { 0, 0 }, 0, 0 };
  gboolean on_side = menu_side (window, &side);
  cw_window_enable (window, "insert-corner", on_side);
  cw_window_enable (window, "bow-side", on_side && side.bow == 0);
  cw_window_enable (window, "straighten-side", on_side && side.bow != 0);
}

void
cw_window_add_side_actions (CwWindow *window)
{
  static const GActionEntry entries[] = {
    { "insert-corner", insert_corner, NULL, NULL, NULL },
    { "bow-side", bow_side, NULL, NULL, NULL },
    { "straighten-side", straighten_side, NULL, NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
  cw_window_enable_side_actions (window);
}
