/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Cut, copy and paste, by the clipboard of the desktop: what is copied is
 * text in the project's own format, and goes to other windows as well.
 */
#include "cw-window-private.h"

#include <string.h>

#include "cw-clip.h"
#include "cw-project-file.h"

static GdkClipboard *
clipboard (CwWindow *window)
{
  return gtk_widget_get_clipboard (GTK_WIDGET (window));
}

static void
copy (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  const CwElevation *elevation = cw_window_elevation (data);
  g_autoptr (CwProject) clip
      = elevation ? cw_clip_new (cw_window_project (data), elevation,
                                 cw_document_selection (
                                     cw_window_document (data)))
                  : NULL;
  if (!clip)
    return;
  g_autoptr (GBytes) bytes = cw_project_to_xml (clip);
  gsize size;
  const char *from = g_bytes_get_data (bytes, &size);
  g_autofree char *text = g_strndup (from, size);
  gdk_clipboard_set_text (clipboard (data), text);
}

static void
cut (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  const CwElevation *elevation = cw_window_elevation (data);
  if (!elevation)
    return;
  copy (action, parameter, data);
  cw_window_edit (data,
                  cw_edit_remove (cw_window_project (data), elevation,
                                  cw_document_selection (
                                      cw_window_document (data))),
                  _("Cut"));
}

/* Whether something of @elevation stands just where the copy would. */
static gboolean
is_covered (const CwElevation *elevation, const CwProject *clip)
{
  const CwElevation *from = cw_list_at (clip->elevations, 0);
  for (gsize i = 0; i < cw_list_length (from->items); i++)
    {
      const CwNode *node = cw_node_find (
          &elevation->node, cw_node_id (cw_list_at (from->items, i)));
      if (node)
        return TRUE;
    }
  return FALSE;
}

/* About the pointer; without one, where it was copied, or beside that when
 * the original is there. */
static CwPoint
way_to (CwWindow *window, const CwProject *clip)
{
  CwLength beside = cw_window_project (window)->units == CW_UNITS_US
                        ? CW_INCHES (12)
                        : CW_MM (300);
  CwPoint at;
  CwBox box;
  if (!is_covered (cw_window_elevation (window), clip))
    return cw_point (0, 0);
  if (!cw_board_get_pointer (cw_window_board (window), &at)
      || !cw_clip_bounds (clip, &box))
    return cw_point (beside, 0);
  CwLength step = cw_snap_grid (
      (CwUnits) cw_window_project (window)->units,
      cw_board_get_mm_per_pixel (cw_window_board (window)) * 1e6);
  CwPoint way = { at.x - (box.left + box.right) / 2,
                  at.y - (box.bottom + box.top) / 2 };
  return cw_point (way.x - way.x % step, way.y - way.y % step);
}

static void
put_down (CwWindow *window, const CwProject *clip)
{
  const CwElevation *elevation = cw_window_elevation (window);
  CwDocument *document = cw_window_document (window);
  g_auto (GStrv) ids = NULL;
  if (!elevation)
    return;
  g_autoptr (CwProject) next
      = cw_edit_paste (cw_window_project (window), elevation, clip,
                       way_to (window, clip), &ids);
  if (!cw_edit_is_in_bounds (next, (const char *const *) ids))
    return;
  cw_board_set_tool (cw_window_board (window), CW_TOOL_SELECT);
  cw_window_edit (window, g_steal_pointer (&next), _("Paste"));
  cw_document_select (document, (const char *const *) ids);
}

static void
text_read (GObject *source, GAsyncResult *result, gpointer data)
{
  g_autoptr (CwWindow) window = data;
  g_autofree char *text = gdk_clipboard_read_text_finish (
      GDK_CLIPBOARD (source), result, NULL);
  g_autoptr (GBytes) bytes
      = text ? g_bytes_new (text, strlen (text)) : NULL;
  g_autoptr (CwProject) clip
      = bytes ? cw_project_from_xml (bytes, NULL) : NULL;
  if (clip && cw_clip_is_one (clip))
    put_down (window, clip);
  else
    cw_notice_done (window->notice,
                    _("There is nothing to paste: copy openings or other "
                      "items of a wall first"),
                    NULL);
}

static void
paste (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  gdk_clipboard_read_text_async (clipboard (data), NULL, text_read,
                                 g_object_ref (data));
}

void
cw_window_add_clip_actions (CwWindow *window)
{
  static const GActionEntry entries[] = {
    { "cut", cut, NULL, NULL, NULL },
    { "copy", copy, NULL, NULL, NULL },
    { "paste", paste, NULL, NULL, NULL },
  };
  g_action_map_add_action_entries (G_ACTION_MAP (window), entries,
                                   G_N_ELEMENTS (entries), window);
}
