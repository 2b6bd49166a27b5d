/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pan and zoom, and how a wall lies on its sheet.
 */
#include <math.h>

#include "board-cases.h"

#include "cw-placing.h"
#include "cw-view.h"

static void
test_round_trip (void)
{
  for (double nm = CW_VIEW_FINEST; nm < CW_VIEW_COARSEST; nm *= 3)
    {
      CwView view = { 123.25, 456.5, nm };
      double x_nm, y_nm, x, y;

      cw_view_to_wall (&view, 700, 80, &x_nm, &y_nm);
      cw_view_to_widget (&view, x_nm, y_nm, &x, &y);
      g_assert_cmpfloat_with_epsilon (x, 700, 1e-6);
      g_assert_cmpfloat_with_epsilon (y, 80, 1e-6);
      g_assert_cmpfloat (y_nm, >, 0);
    }
}

static void
test_pan (void)
{
  CwView view = { 100, 200, 1e6 };

  cw_view_pan (&view, 30, -20);
  g_assert_true (
      cw_point_equal (cw_view_point (&view, 130, 180), cw_point (0, 0)));
}

/* What lies under the pointer stays there, however often. */
static void
test_zoom_about_pointer (void)
{
  CwView view = { 100, 200, 5e6 };
  double x_nm, y_nm, x, y;

  cw_view_to_wall (&view, 417, 93, &x_nm, &y_nm);
  for (guint i = 0; i < 200; i++)
    {
      cw_view_zoom (&view, i % 3 ? 1.2 : 1 / 1.2, 417, 93);
      cw_view_to_widget (&view, x_nm, y_nm, &x, &y);
      g_assert_cmpfloat_with_epsilon (x, 417, 1e-6);
      g_assert_cmpfloat_with_epsilon (y, 93, 1e-6);
    }
}

static void
test_zoom_limits (void)
{
  CwView view = { 100, 200, 5e6 };

  for (guint i = 0; i < 300; i++)
    cw_view_zoom (&view, 2, 0, 0);
  g_assert_cmpfloat_with_epsilon (view.nm_per_pixel, CW_VIEW_FINEST, 1e-9);
  for (guint i = 0; i < 300; i++)
    cw_view_zoom (&view, 0.5, 0, 0);
  g_assert_cmpfloat_with_epsilon (view.nm_per_pixel, CW_VIEW_COARSEST, 1e-9);
}

static void
test_fit (void)
{
  CwView view = { 0, 0, 1e6 };
  CwBox box = case_box (-1000, 500, 5000, 3500);
  double left, top, right, bottom;

  cw_view_fit (&view, &box, 800, 600, 40);
  cw_view_to_widget (&view, -1000e6, 3500e6, &left, &top);
  cw_view_to_widget (&view, 5000e6, 500e6, &right, &bottom);
  g_assert_cmpfloat_with_epsilon (left, 40, 1e-6);
  g_assert_cmpfloat_with_epsilon (right, 760, 1e-6);
  g_assert_cmpfloat_with_epsilon (top + bottom, 600, 1e-6);
  g_assert_cmpfloat (top, >=, 40);
}

static void
test_fit_no_room (void)
{
  CwView view = { 7, 8, 1e6 };
  CwBox box = case_box (0, 0, 5000, 3500);

  cw_view_fit (&view, &box, 60, 600, 40);
  g_assert_cmpfloat_with_epsilon (view.x, 7, 1e-12);
  g_assert_cmpfloat_with_epsilon (view.nm_per_pixel, 1e6, 1e-12);
}

static void
test_shown (void)
{
  CwView view = { 100, 200, 1e6 };
  CwBox shown = cw_view_shown (&view, 800, 600);

  g_assert_cmpint (shown.left, ==, CW_MM (-100));
  g_assert_cmpint (shown.right, ==, CW_MM (700));
  g_assert_cmpint (shown.top, ==, CW_MM (200));
  g_assert_cmpint (shown.bottom, ==, CW_MM (-400));
}

/* At 1:50 a point of the page, 25.4 / 72 mm, is 17.6389 mm of wall; the
 * file keeps that to a millionth. */
static void
test_placing (void)
{
  g_autoptr (CwDocument) document = case_wall_on_sheet ();
  CwPlacing placing = cw_placing_of (cw_document_project (document),
                                     case_elevation (document, "e1"));
  double x, y, x_nm, y_nm;

  g_assert_false (placing.assumed);
  cw_placing_to_page (&placing, 6000e6, 3000e6, &x, &y);
  g_assert_cmpfloat_with_epsilon (x, 100 + 6000 / 50.0 / 25.4 * 72, 1e-4);
  g_assert_cmpfloat_with_epsilon (y, 400 - 3000 / 50.0 / 25.4 * 72, 1e-4);
  cw_placing_to_wall (&placing, x, y, &x_nm, &y_nm);
  g_assert_cmpfloat_with_epsilon (x_nm, 6000e6, 1);
  g_assert_cmpfloat_with_epsilon (y_nm, 3000e6, 1);
}

static void
test_placing_assumed (void)
{
  g_autoptr (CwDocument) document = case_empty (CW_UNITS_METRIC);
  CwPlacing placing = cw_placing_of (cw_document_project (document), NULL);

  g_assert_true (placing.assumed);
  g_assert_null (placing.sheet);
  g_assert_cmpfloat_with_epsilon (placing.across, 100 * 25.4 / 72, 1e-9);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/view/round-trip", test_round_trip);
  g_test_add_func ("/board/view/pan", test_pan);
  g_test_add_func ("/board/view/zoom/about-pointer", test_zoom_about_pointer);
  g_test_add_func ("/board/view/zoom/limits", test_zoom_limits);
  g_test_add_func ("/board/view/fit/margins", test_fit);
  g_test_add_func ("/board/view/fit/no-room", test_fit_no_room);
  g_test_add_func ("/board/view/shown", test_shown);
  g_test_add_func ("/board/placing/scale", test_placing);
  g_test_add_func ("/board/placing/assumed", test_placing_assumed);
  return g_test_run ();
}
