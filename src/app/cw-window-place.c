/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The places of the window, in the order of the work, and the ways between
 * them.
 */
#include "cw-window-private.h"

#include "cw-tour.h"

static const char *
place_shown (CwWindow *window)
{
  return gtk_stack_get_visible_child_name (GTK_STACK (window->stack));
}

/* Once the place has come into view. */
#define TOUR_AFTER_MS 400

static gboolean
begin_tour (gpointer data)
{
  CwWindow *window = data;
  if (gtk_widget_get_mapped (GTK_WIDGET (window->walls)))
    cw_walls_place_tour (window->walls);
  return G_SOURCE_REMOVE;
}

/* As soon as the walls are laid out. */
void
cw_window_tour_if_new (CwWindow *window)
{
  g_return_if_fail (CW_IS_WINDOW (window));
  if (!cw_tour_was_seen ())
    g_timeout_add_full (G_PRIORITY_DEFAULT_IDLE, TOUR_AFTER_MS, begin_tour,
                        g_object_ref (window), g_object_unref);
}

/* A project that was opened does not begin with the ways to begin: the window
 * is not seen yet when it goes to its walls. */
static void
go (CwWindow *window, const char *place)
{
  gboolean begins = gtk_widget_get_mapped (window->stack)
                    && g_str_equal (place, "walls")
                    && g_strcmp0 (place_shown (window), "start") == 0;
  GAction *action
      = g_action_map_lookup_action (G_ACTION_MAP (window), "place");
  gtk_stack_set_visible_child_name (GTK_STACK (window->stack), place);
  if (g_strcmp0 (place, "start") != 0)
    g_simple_action_set_state (G_SIMPLE_ACTION (action),
                               g_variant_new_string (place));
  if (begins)
    cw_window_tour_if_new (window);
}

static void
tour (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  cw_window_go_to_walls (data);
  cw_walls_place_tour (CW_WINDOW (data)->walls);
}

void
cw_window_go_to_walls (CwWindow *window)
{
  g_return_if_fail (CW_IS_WINDOW (window));
  go (window, "walls");
  gtk_widget_grab_focus (GTK_WIDGET (cw_window_board (window)));
}

void
cw_window_go_to_panels (CwWindow *window)
{
  g_return_if_fail (CW_IS_WINDOW (window));
  go (window, "panels");
  cw_panels_place_enter (window->panels);
}

void
cw_window_leave_start (CwWindow *window)
{
  if (g_strcmp0 (place_shown (window), "start") == 0)
    go (window, "walls");
}

static void
place_chosen (GSimpleAction *action, GVariant *state, gpointer data)
{
  const char *place = g_variant_get_string (state, NULL);
  if (g_str_equal (place, "panels"))
    cw_window_go_to_panels (data);
  else if (g_str_equal (place, "walls"))
    cw_window_go_to_walls (data);
}

static const CwPiece *
piece_of (const CwWallTakeoff *wall, guint course, guint number)
{
  for (guint i = 0; wall && i < wall->layout->pieces->len; i++)
    {
      const CwPiece *piece
          = &g_array_index (wall->layout->pieces, CwPiece, i);
      if (piece->course == course && piece->number == number)
        return piece;
    }
  return NULL;
}

/* Where a piece of a cut panel goes. */
static void
show_piece (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  CwWindow *window = data;
  const char *id;
  guint course, number;
  g_variant_get (parameter, "(&suu)", &id, &course, &number);
  const CwTakeoff *takeoff = cw_job_takeoff (window->job);
  const CwPiece *piece
      = takeoff ? piece_of (cw_takeoff_wall (takeoff, id), course, number)
                : NULL;
  if (!piece)
    return;
  cw_document_show_elevation (cw_window_document (window), id);
  cw_document_select (cw_window_document (window),
                      (const char *const[]) { NULL });
  cw_window_go_to_walls (window);
  cw_board_light_box (cw_window_board (window), id, &piece->box);
}

void
cw_window_add_place_actions (CwWindow *window)
{
  static const GActionEntry entries[] = {
    { "place", NULL, "s", "'walls'", place_chosen },
    { "tour", tour, NULL, NULL, NULL },
    { "show-piece", show_piece, "(suu)", NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
}
