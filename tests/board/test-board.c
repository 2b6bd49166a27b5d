/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The board in a window: what comes in is handed to its controllers as GTK
 * would, what is drawn is looked at pixel by pixel.
 */
#include <string.h>

#include "cw-board.h"

#include "board-cases.h"
#include "sheet-case.h"

#define WIDTH 900
#define HEIGHT 600

typedef struct
{
  CwDocument *document;
  CwBoard *board;
  GtkWidget *window;
  guint hints, tools, views, points, texts;
  char *text;
} Stage;

static void
count (guint *n)
{
  ++*n;
}

static void
text_wanted (Stage *stage, const char *text)
{
  stage->texts++;
  g_free (stage->text);
  stage->text = g_strdup (text);
}

static void
wait_a_while (guint milliseconds)
{
  gint64 until = g_get_monotonic_time () + 1000 * (gint64) milliseconds;

  while (g_get_monotonic_time () < until)
    if (!g_main_context_iteration (NULL, FALSE))
      g_usleep (2000);
}

static void
wait_for_size (Stage *stage)
{
  gint64 until = g_get_monotonic_time () + 20 * G_USEC_PER_SEC;

  while (gtk_widget_get_width (GTK_WIDGET (stage->board)) == 0)
    {
      g_assert_cmpint (g_get_monotonic_time (), <, until);
      g_main_context_iteration (NULL, TRUE);
    }
  wait_a_while (100);
}

static void
listen (Stage *stage)
{
  g_signal_connect_swapped (stage->board, "hint-changed", G_CALLBACK (count),
                            &stage->hints);
  g_signal_connect_swapped (stage->board, "tool-changed", G_CALLBACK (count),
                            &stage->tools);
  g_signal_connect_swapped (stage->board, "view-changed", G_CALLBACK (count),
                            &stage->views);
  g_signal_connect_swapped (stage->board, "two-points", G_CALLBACK (count),
                            &stage->points);
  g_signal_connect_swapped (stage->board, "text-wanted",
                            G_CALLBACK (text_wanted), stage);
}

/* (transfer full) document */
static Stage *
stage_new (CwDocument *document)
{
  Stage *stage = g_new0 (Stage, 1);

  stage->document = document;
  stage->board = CW_BOARD (cw_board_new ());
  stage->window = gtk_window_new ();
  gtk_window_set_default_size (GTK_WINDOW (stage->window), WIDTH, HEIGHT);
  gtk_window_set_decorated (GTK_WINDOW (stage->window), FALSE);
  gtk_window_set_child (GTK_WINDOW (stage->window),
                        GTK_WIDGET (stage->board));
  cw_board_set_document (stage->board, document);
  gtk_window_present (GTK_WINDOW (stage->window));
  wait_for_size (stage);
  listen (stage);
  return stage;
}

static void
stage_free (Stage *stage)
{
  gpointer board = stage->board;

  g_object_add_weak_pointer (G_OBJECT (stage->board), &board);
  gtk_window_destroy (GTK_WINDOW (stage->window));
  wait_a_while (50);
  g_assert_null (board);
  g_assert_cmpuint (G_OBJECT (stage->document)->ref_count, ==, 1);
  g_object_unref (stage->document);
  g_free (stage->text);
  g_free (stage);
}
G_DEFINE_AUTOPTR_CLEANUP_FUNC (Stage, stage_free)

/* ------------------------------------------------------------- what comes in */

/* The controller of that type, and with that button when it has one. */
static gpointer
controller (Stage *stage, GType type, guint button)
{
  g_autoptr (GListModel) all
      = gtk_widget_observe_controllers (GTK_WIDGET (stage->board));

  for (guint i = 0; i < g_list_model_get_n_items (all); i++)
    {
      g_autoptr (GObject) one = g_list_model_get_item (all, i);

      if (G_OBJECT_TYPE (one) == type
          && (!GTK_IS_GESTURE_SINGLE (one)
              || gtk_gesture_single_get_button (GTK_GESTURE_SINGLE (one))
                     == button))
        return one;
    }
  g_assert_not_reached ();
}

static void
move (Stage *stage, double x, double y)
{
  g_signal_emit_by_name (
      controller (stage, GTK_TYPE_EVENT_CONTROLLER_MOTION, 0), "motion", x,
      y);
}

static void
press (Stage *stage, double x, double y)
{
  g_signal_emit_by_name (
      controller (stage, GTK_TYPE_GESTURE_CLICK, GDK_BUTTON_PRIMARY),
      "pressed", 1, x, y);
}

static void
release (Stage *stage)
{
  g_signal_emit_by_name (
      controller (stage, GTK_TYPE_GESTURE_DRAG, GDK_BUTTON_PRIMARY),
      "drag-end", 0.0, 0.0);
}

/* At a point of the wall, mm. */
static void
move_on_wall (Stage *stage, int x_mm, int y_mm)
{
  double x, y;

  cw_board_to_widget (stage->board, cw_point (CW_MM (x_mm), CW_MM (y_mm)), &x,
                      &y);
  move (stage, x, y);
}

static void
click (Stage *stage, int x_mm, int y_mm)
{
  double x, y;

  move_on_wall (stage, x_mm, y_mm);
  cw_board_to_widget (stage->board, cw_point (CW_MM (x_mm), CW_MM (y_mm)), &x,
                      &y);
  press (stage, x, y);
  release (stage);
}

static gboolean
key (Stage *stage, guint key, GdkModifierType state)
{
  gboolean taken = FALSE;

  g_signal_emit_by_name (
      controller (stage, GTK_TYPE_EVENT_CONTROLLER_KEY, 0), "key-pressed",
      key, 0, state, &taken);
  return taken;
}

static void
wheel (Stage *stage, double dy)
{
  gboolean taken;

  g_signal_emit_by_name (
      controller (stage, GTK_TYPE_EVENT_CONTROLLER_SCROLL, 0), "scroll", 0.0,
      dy, &taken);
}

/* ------------------------------------------------------------ what is drawn */

static cairo_surface_t *
look (Stage *stage)
{
  g_autoptr (GdkPaintable) paintable
      = gtk_widget_paintable_new (GTK_WIDGET (stage->board));
  cairo_surface_t *surface
      = cairo_image_surface_create (CAIRO_FORMAT_RGB24, WIDTH, HEIGHT);
  cairo_t *cr = cairo_create (surface);
  GtkSnapshot *snapshot = gtk_snapshot_new ();
  GskRenderNode *node;

  gtk_widget_queue_draw (GTK_WIDGET (stage->board));
  wait_a_while (250);
  gdk_paintable_snapshot (paintable, GDK_SNAPSHOT (snapshot),
                          gtk_widget_get_width (GTK_WIDGET (stage->board)),
                          gtk_widget_get_height (GTK_WIDGET (stage->board)));
  node = gtk_snapshot_free_to_node (snapshot);
  g_assert_nonnull (node);
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  gsk_render_node_draw (node, cr);
  gsk_render_node_unref (node);
  cairo_destroy (cr);
  cairo_surface_flush (surface);
  return surface;
}

static guint
lightness (cairo_surface_t *surface, int x, int y)
{
  const guchar *row = cairo_image_surface_get_data (surface)
                      + y * cairo_image_surface_get_stride (surface);
  guint32 pixel = ((const guint32 *) (gconstpointer) row)[x];

  return ((pixel & 0xff) + (pixel >> 8 & 0xff) + (pixel >> 16 & 0xff)) / 3;
}

/* The darkest pixel about a point of the wall. */
static guint
darkest (Stage *stage, cairo_surface_t *surface, int x_mm, int y_mm)
{
  double x, y;
  guint dark = 255;

  cw_board_to_widget (stage->board, cw_point (CW_MM (x_mm), CW_MM (y_mm)), &x,
                      &y);
  for (int i = -3; i <= 3; i++)
    for (int j = -3; j <= 3; j++)
      dark = MIN (dark, lightness (surface, (int) x + i, (int) y + j));
  return dark;
}

/* ---------------------------------------------------------------- the tests */

static gboolean
has_display (void)
{
  if (gdk_display_get_default ())
    return TRUE;
  g_test_skip ("there is no display");
  return FALSE;
}

static void
test_shows_wall (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  cairo_surface_t *surface = look (stage);

  g_assert_cmpuint (darkest (stage, surface, 0, 1500), <, 100);
  g_assert_cmpuint (darkest (stage, surface, 6000, 800), <, 100);
  g_assert_cmpuint (darkest (stage, surface, 1000, 1100), <, 160);
  g_assert_cmpuint (darkest (stage, surface, 3300, 1200), >, 180);
  cairo_surface_destroy (surface);
}

static void
test_has_keys (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  g_assert_true (gtk_root_get_focus (GTK_ROOT (stage->window))
                 == GTK_WIDGET (stage->board));
}

/* The wall as a whole is in the window from the start. */
static void
test_fits (void)
{
  double x, y;

  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  cw_board_to_widget (stage->board, cw_point (0, 0), &x, &y);
  g_assert_cmpfloat (x, >, 20);
  g_assert_cmpfloat (y, <, HEIGHT - 20);
  cw_board_to_widget (stage->board, cw_point (CW_MM (6000), CW_MM (3000)), &x,
                      &y);
  g_assert_cmpfloat (x, <, WIDTH - 20);
  g_assert_cmpfloat (y, >, 20);
}

static void
test_draws_wall (void)
{
  const int corners[][2]
      = { { 0, 0 }, { 4000, 0 }, { 4000, 2500 }, { 0, 2500 } };
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_empty (CW_UNITS_METRIC));

  g_assert_true (key (stage, GDK_KEY_w, 0));
  g_assert_cmpint (cw_board_get_tool (stage->board), ==, CW_TOOL_WALL);
  click (stage, 0, 0);
  click (stage, 4000, 0);
  click (stage, 4000, 2500);
  click (stage, 0, 2500);
  g_assert_true (key (stage, GDK_KEY_Return, 0));
  case_assert_outline (stage->document, "e1", G_N_ELEMENTS (corners),
                       corners);
  g_assert_cmpint (cw_board_get_tool (stage->board), ==, CW_TOOL_SELECT);
  g_assert_cmpuint (stage->tools, ==, 2);
  g_assert_cmpuint (stage->hints, >=, 3);
}

/* The first figure begins a typed length; the rest is given as a whole. */
static void
test_typed (void)
{
  g_autoptr (GError) error = NULL;

  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_empty (CW_UNITS_METRIC));
  cw_board_set_tool (stage->board, CW_TOOL_WALL);
  g_assert_true (key (stage, GDK_KEY_6, 0));
  g_assert_cmpuint (stage->texts, ==, 1);
  g_assert_cmpstr (stage->text, ==, "6");
  g_assert_false (cw_board_enter_text (stage->board, "6 x", &error));
  g_assert_nonnull (error);
  g_assert_true (cw_board_enter_text (stage->board, "6000 x 3000", NULL));
  g_assert_nonnull (case_elevation (stage->document, "e1")->outline);
}

static void
test_select_and_nudge (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  click (stage, 1500, 1500);
  case_assert_selected (stage->document, "o1");
  g_assert_true (key (stage, GDK_KEY_Right, 0));
  g_assert_true (key (stage, GDK_KEY_Up, GDK_SHIFT_MASK));
  case_assert_box (stage->document, "o1", 1010, 1000, 1200, 1400);
  g_assert_true (key (stage, GDK_KEY_Delete, 0));
  g_assert_null (case_item (stage->document, "o1"));
  g_assert_false (key (stage, GDK_KEY_Escape, 0));
}

static void
tap_space (Stage *stage)
{
  key (stage, GDK_KEY_space, 0);
  g_signal_emit_by_name (
      controller (stage, GTK_TYPE_EVENT_CONTROLLER_KEY, 0), "key-released",
      GDK_KEY_space, 0, 0);
}

static void
step (Stage *stage, guint arrow, guint times)
{
  for (guint i = 0; i < times; i++)
    g_assert_true (key (stage, arrow, 0));
}

/* A whole wall without a pointer: arrows and Space, then a typed length. */
static void
test_crosshair (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_empty (CW_UNITS_METRIC));
  const CwOutline *outline;
  const CwCornerNode *corner;

  key (stage, GDK_KEY_w, 0);
  step (stage, GDK_KEY_Left, 20);
  tap_space (stage);
  step (stage, GDK_KEY_Right, 30);
  g_assert_true (cw_board_enter_text (stage->board, "5000", NULL));
  step (stage, GDK_KEY_Up, 12);
  g_assert_true (cw_board_enter_text (stage->board, "2500 x 2500", NULL));
  g_assert_true (key (stage, GDK_KEY_Return, 0));
  outline
      = (const CwOutline *) case_elevation (stage->document, "e1")->outline;
  g_assert_cmpuint (cw_list_length (outline->corners), ==, 3);
  corner = cw_list_at (outline->corners, 1);
  g_assert_cmpint (corner->x, ==, CW_MM (5000));
  g_assert_cmpint (corner->y, ==, 0);
}

static void
step_with (Stage *stage, guint arrow, guint times, GdkModifierType state)
{
  for (guint i = 0; i < times; i++)
    g_assert_true (key (stage, arrow, state));
}

/* Takes hold of a window, carries it ten steps and lets go: no pointer. */
static void
test_crosshair_drags (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  const CwNode *window;
  gint64 x;

  cw_board_set_layers (stage->board, CW_LAYER_WALL, FALSE);
  g_assert_true (cw_board_enter_text (stage->board, "1600; 1600", NULL));
  case_assert_selected (stage->document, "o1");
  cw_board_crosshair_to (stage->board, cw_point (CW_MM (1600), CW_MM (1600)));
  g_assert_true (key (stage, GDK_KEY_space, GDK_CONTROL_MASK));
  g_assert_true (cw_board_is_dragging (stage->board));
  step_with (stage, GDK_KEY_Right, 5, GDK_SHIFT_MASK);
  g_assert_true (key (stage, GDK_KEY_space, GDK_CONTROL_MASK));
  g_assert_false (cw_board_is_dragging (stage->board));
  window = case_item (stage->document, "o1");
  x = case_get (window, "x");
  g_assert_cmpint (x, >, CW_MM (1100));
  g_assert_true (cw_document_can_undo (stage->document));
  cw_document_undo (stage->document);
  case_assert_box (stage->document, "o1", 1000, 900, 1200, 1400);
}

/* With something selected arrows move it; with Control the crosshair. */
static void
test_crosshair_beside_selection (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  CwPoint before, after;

  cw_document_select (stage->document, (const char *const[]) { "o1", NULL });
  cw_board_get_pointer (stage->board, &before);
  g_assert_true (key (stage, GDK_KEY_Right, GDK_CONTROL_MASK));
  cw_board_get_pointer (stage->board, &before);
  g_assert_true (key (stage, GDK_KEY_Right, GDK_CONTROL_MASK));
  cw_board_get_pointer (stage->board, &after);
  g_assert_cmpint (after.x, >, before.x);
  case_assert_box (stage->document, "o1", 1000, 900, 1200, 1400);
}

/* Enter clicks where there is nothing to finish. */
static void
test_enter_clicks (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());

  cw_board_crosshair_to (stage->board, cw_point (CW_MM (1600), CW_MM (1600)));
  g_assert_true (key (stage, GDK_KEY_Return, 0));
  case_assert_selected (stage->document, "o1");
}

static void
test_zoom_to_selection (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  double mm = cw_board_get_mm_per_pixel (stage->board);
  graphene_rect_t area;

  g_assert_false (cw_board_zoom_to_selection (stage->board));
  cw_document_select (stage->document, (const char *const[]) { "p1", NULL });
  g_assert_true (key (stage, GDK_KEY_z, 0));
  g_assert_cmpfloat (cw_board_get_mm_per_pixel (stage->board), <, mm / 4);
  g_assert_true (cw_board_get_selected_area (stage->board, &area));
  g_assert_cmpfloat (area.origin.x, >, 0);
  g_assert_cmpfloat (area.origin.x + area.size.width, <, WIDTH);
}

static guint
lightness_at (Stage *stage, int x_mm, int y_mm)
{
  cairo_surface_t *surface = look (stage);
  double x, y;
  guint light;

  cw_board_to_widget (stage->board, cw_point (CW_MM (x_mm), CW_MM (y_mm)), &x,
                      &y);
  light = lightness (surface, (int) x, (int) y);
  cairo_surface_destroy (surface);
  return light;
}

/* The clad face in the print's own tone instead of the screen's. */
static void
test_as_printed (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());

  g_assert_cmpuint (lightness_at (stage, 300, 300), ==,
                    (0xf1 + 0xee + 0xe6) / 3);
  cw_board_set_as_printed (stage->board, TRUE);
  g_assert_cmpuint (lightness_at (stage, 300, 300), ==,
                    (0xf7 + 0xf5 + 0xf0) / 3);
  g_assert_cmpuint (lightness_at (stage, -300, 3400), ==, 255);
  cw_board_set_as_printed (stage->board, FALSE);
  g_assert_cmpuint (lightness_at (stage, 300, 300), ==,
                    (0xf1 + 0xee + 0xe6) / 3);
}

/* At the edge of the window the paper moves under it. */
static void
test_crosshair_at_edge (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  CwPoint before = cw_board_to_wall (stage->board, 0, 0);

  step (stage, GDK_KEY_Left, 100);
  g_assert_cmpint (cw_board_to_wall (stage->board, 0, 0).x, <, before.x);
  g_assert_cmpint (cw_board_to_wall (stage->board, 0, 0).y, ==, before.y);
}

/* What is under the pointer stays there. */
static void
test_wheel (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  double former = cw_board_get_mm_per_pixel (stage->board);
  CwPoint before, after;

  move (stage, 200, 150);
  before = cw_board_to_wall (stage->board, 200, 150);
  wheel (stage, -1);
  wheel (stage, -1);
  after = cw_board_to_wall (stage->board, 200, 150);
  g_assert_cmpfloat (cw_board_get_mm_per_pixel (stage->board), <, former);
  g_assert_cmpint (ABS (after.x - before.x), <, 1000);
  g_assert_cmpint (ABS (after.y - before.y), <, 1000);
  g_assert_cmpuint (stage->views, ==, 2);
}

static void
test_zoom_keys (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  double former = cw_board_get_mm_per_pixel (stage->board);

  g_assert_true (key (stage, GDK_KEY_plus, 0));
  g_assert_cmpfloat (cw_board_get_mm_per_pixel (stage->board), <, former);
  g_assert_true (key (stage, GDK_KEY_minus, 0));
  g_assert_true (key (stage, GDK_KEY_minus, 0));
  g_assert_cmpfloat (cw_board_get_mm_per_pixel (stage->board), >, former);
  cw_board_zoom_fit (stage->board);
  g_assert_cmpfloat_with_epsilon (cw_board_get_mm_per_pixel (stage->board),
                                  former, 1e-9);
}

static guint
sheet_lightness (Stage *stage, int x_mm, int y_mm)
{
  cairo_surface_t *surface = look (stage);
  guint dark = darkest (stage, surface, x_mm, y_mm);

  cairo_surface_destroy (surface);
  return dark;
}

/* The middle of the sheet's box lies 75 points right of the wall's origin
 * and 240 up: at 1:50, 1323 and 4233 mm. */
static void
test_sheet (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall_on_sheet ());
  g_autoptr (CwSheetSource) source = sheet_case_open ();
  gint64 until = g_get_monotonic_time () + 20 * G_USEC_PER_SEC;

  cw_board_set_sheet_source (stage->board, "s1", source);
  cw_board_zoom_by (stage->board, 0.5);
  while (sheet_lightness (stage, 1323, 4233) > 40)
    g_assert_cmpint (g_get_monotonic_time (), <, until);
  cw_board_set_layers (stage->board, CW_LAYER_ALL, FALSE);
  g_assert_cmpuint (sheet_lightness (stage, 1323, 4233), >, 150);
  cw_board_set_layers (stage->board, CW_LAYER_ALL, TRUE);
  g_assert_cmpuint (sheet_lightness (stage, 1323, 4233), <, 40);
  cw_board_set_sheet_source (stage->board, "s1", NULL);
  g_assert_cmpuint (sheet_lightness (stage, 1323, 4233), >, 150);
}

/* A file of fewer pages than the project thinks: it is told, not hidden. */
static void
test_sheet_without_page (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall_on_sheet ());
  g_autoptr (CwSheetSource) source = sheet_case_open ();
  const CwSheet *sheet
      = cw_project_sheet (cw_document_project (stage->document), "s1");
  g_autoptr (CwNode) other = cw_node_copy (&sheet->node);
  g_autoptr (CwProject) project = NULL;

  cw_node_put (other, "page", 7);
  project = (CwProject *) cw_node_replace (
      &cw_document_project (stage->document)->node, &sheet->node, other);
  cw_document_edit (stage->document, project, "Page", NULL);
  g_assert_null (strstr (cw_board_get_hint (stage->board), "no such page"));
  cw_board_set_sheet_source (stage->board, "s1", source);
  g_assert_nonnull (strstr (cw_board_get_hint (stage->board), "no such page"));
}

/* Points of the page, whatever scale it has: what the scale is made from. */
static void
test_scale_points (void)
{
  double x0, y0, x1, y1;

  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall_on_sheet ());
  cw_board_set_tool (stage->board, CW_TOOL_SCALE);
  g_assert_false (cw_board_get_sheet_points (stage->board, &x0, &y0, &x1, &y1));
  click (stage, 0, 0);
  click (stage, 6000, 0);
  g_assert_cmpuint (stage->points, ==, 1);
  g_assert_true (cw_board_get_sheet_points (stage->board, &x0, &y0, &x1, &y1));
  g_assert_cmpfloat_with_epsilon (x0, 100, 1e-3);
  g_assert_cmpfloat_with_epsilon (y0, 400, 1e-3);
  g_assert_cmpfloat_with_epsilon (x1, 100 + 6000 / 50.0 / 25.4 * 72, 1e-3);
  g_assert_cmpfloat_with_epsilon (y1, 400, 1e-3);
}

/* A wall traced on the sheet gets an origin of its own; the sheet stays where
 * it is in the window. */
static void
test_sheet_stays (void)
{
  double page_x, page_y, x, y;

  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall_on_sheet ());
  cw_board_zoom_by (stage->board, 0.4);
  cw_board_to_widget (stage->board, cw_point (CW_MM (2000), CW_MM (4000)),
                      &page_x, &page_y);
  cw_board_set_tool (stage->board, CW_TOOL_WALL);
  click (stage, 2000, 4000);
  click (stage, 4000, 4000);
  click (stage, 4000, 5000);
  g_assert_true (key (stage, GDK_KEY_Return, 0));
  g_assert_cmpstr (cw_document_elevation_id (stage->document), ==, "e2");
  cw_board_to_widget (stage->board, cw_point (0, 0), &x, &y);
  g_assert_cmpfloat_with_epsilon (x, page_x, 1);
  g_assert_cmpfloat_with_epsilon (y, page_y, 1);
}

static void
test_undo_keeps_view (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  double before;

  cw_board_zoom_by (stage->board, 3);
  before = cw_board_get_mm_per_pixel (stage->board);
  click (stage, 1500, 1500);
  key (stage, GDK_KEY_Delete, 0);
  cw_document_undo (stage->document);
  g_assert_nonnull (case_item (stage->document, "o1"));
  g_assert_cmpfloat_with_epsilon (cw_board_get_mm_per_pixel (stage->board),
                                  before, 1e-12);
}

static void
test_accessible (void)
{
  if (!has_display ())
    return;

  g_autoptr (Stage) stage = stage_new (case_wall ());
  g_autofree char *named = NULL;
  g_autofree char *described = NULL;

  g_assert_cmpint (
      gtk_accessible_get_accessible_role (GTK_ACCESSIBLE (stage->board)), ==,
      GTK_ACCESSIBLE_ROLE_IMG);
  click (stage, 1500, 1500);
  named = gtk_test_accessible_check_property (
      GTK_ACCESSIBLE (stage->board), GTK_ACCESSIBLE_PROPERTY_LABEL,
      "Drawing board: Select");
  g_assert_null (named);
  g_assert_true (gtk_test_accessible_has_property (
      GTK_ACCESSIBLE (stage->board), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION));
  g_assert_true (gtk_widget_get_focusable (GTK_WIDGET (stage->board)));
}

/* Without a document it says nothing and breaks nothing. */
static void
test_without_document (void)
{
  GtkWidget *board;

  if (!has_display ())
    return;
  board = g_object_ref_sink (cw_board_new ());
  cw_board_set_tool (CW_BOARD (board), CW_TOOL_WALL);
  g_assert_false (cw_board_enter_text (CW_BOARD (board), "6000", NULL));
  g_assert_cmpstr (cw_board_get_hint (CW_BOARD (board)), ==, "");
  cw_board_zoom_by (CW_BOARD (board), 2);
  cw_board_zoom_fit (CW_BOARD (board));
  g_object_unref (board);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  gtk_init_check ();
  g_test_add_func ("/board/widget/without-document", test_without_document);
  g_test_add_func ("/board/widget/shows-wall", test_shows_wall);
  g_test_add_func ("/board/widget/has-keys", test_has_keys);
  g_test_add_func ("/board/widget/fits", test_fits);
  g_test_add_func ("/board/widget/draws-wall", test_draws_wall);
  g_test_add_func ("/board/widget/typed", test_typed);
  g_test_add_func ("/board/widget/select-and-nudge", test_select_and_nudge);
  g_test_add_func ("/board/widget/crosshair/wall", test_crosshair);
  g_test_add_func ("/board/widget/crosshair/edge", test_crosshair_at_edge);
  g_test_add_func ("/board/widget/crosshair/drags", test_crosshair_drags);
  g_test_add_func ("/board/widget/crosshair/beside-selection",
                   test_crosshair_beside_selection);
  g_test_add_func ("/board/widget/crosshair/enter", test_enter_clicks);
  g_test_add_func ("/board/widget/zoom-to-selection", test_zoom_to_selection);
  g_test_add_func ("/board/widget/as-printed", test_as_printed);
  g_test_add_func ("/board/widget/wheel", test_wheel);
  g_test_add_func ("/board/widget/zoom-keys", test_zoom_keys);
  g_test_add_func ("/board/widget/sheet/shown", test_sheet);
  g_test_add_func ("/board/widget/sheet/without-page",
                   test_sheet_without_page);
  g_test_add_func ("/board/widget/sheet/scale-points", test_scale_points);
  g_test_add_func ("/board/widget/sheet/stays", test_sheet_stays);
  g_test_add_func ("/board/widget/undo-keeps-view", test_undo_keeps_view);
  g_test_add_func ("/board/widget/accessible", test_accessible);
  return g_test_run ();
}
