/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is typed into separate fields at the pointer.
 */
#include <string.h>

#include "board-cases.h"
#include "cw-dimension.h"
#include "cw-tool-typed.h"

static void
hand_fields (Hand *hand, const char *const *texts)
{
  g_autoptr (GError) error = NULL;
  guint wrong;

  if (!cw_tool_enter_fields (hand->tool, texts, &wrong, &error))
    g_error ("field %u was refused: %s", wrong, error->message);
  g_assert_no_error (error);
  cw_tool_take_shift (hand->tool);
  cw_tool_refresh (hand->tool);
}

static void
assert_wrong (Hand *hand, const char *const *texts, guint field, gsize at)
{
  g_autoptr (GError) error = NULL;
  guint wrong;

  g_assert_false (cw_tool_enter_fields (hand->tool, texts, &wrong, &error));
  g_assert_nonnull (error);
  g_assert_cmpuint (error->domain, ==, CW_TEXT_ERROR);
  g_assert_cmpuint (wrong, ==, field);
  g_assert_cmpuint (cw_text_error_offset (error), ==, at);
}

#define TEXTS(...) ((const char *const[]) { __VA_ARGS__ })

static void
assert_labels (Hand *hand, const char *labels)
{
  CwTypedField fields[CW_TYPED_FIELDS_MOST];
  guint n = cw_tool_fields (hand->tool, fields);
  g_autoptr (GString) found = g_string_new (NULL);

  for (guint i = 0; i < n; i++)
    g_string_append_printf (found, "%s%s", i > 0 ? ", " : "",
                            fields[i].label);
  g_assert_cmpstr (found->str, ==, labels);
}

/* Each tool says what can be typed at each of its steps. */
static void
test_labels (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_wall_on_sheet ());

  assert_labels (&hand, "Length, Height, Along, Up");
  hand_click (&hand, 7000, 0);
  assert_labels (&hand, "Length, Angle or pitch, Along, Up");
  hand_take (&hand, CW_TOOL_WINDOW);
  assert_labels (&hand, "Width, Height, Along, Up");
  hand_take (&hand, CW_TOOL_ARCH);
  assert_labels (&hand, "Width, Full height, Rise, Along, Up");
  hand_take (&hand, CW_TOOL_BAND);
  assert_labels (&hand, "Length, Height, Along, Up");
  hand_take (&hand, CW_TOOL_STUB_OUT);
  assert_labels (&hand, "Diameter or width, Height, Along, Up");
  hand_click (&hand, 1000, 1000);
  assert_labels (&hand, "Diameter or width, Height");
  hand_take (&hand, CW_TOOL_TAPE);
  assert_labels (&hand, "Along, Up");
  hand_click (&hand, 1000, 1000);
  assert_labels (&hand, "Length, Angle or pitch, Along, Up");
  hand_take (&hand, CW_TOOL_DIMENSION);
  assert_labels (&hand, "Along, Up");
  hand_click (&hand, 1000, 900);
  hand_click (&hand, 2200, 900);
  assert_labels (&hand, "Offset");
  hand_take (&hand, CW_TOOL_SCALE);
  assert_labels (&hand, "");
  hand_click (&hand, 1000, 900);
  hand_click (&hand, 2200, 900);
  assert_labels (&hand, "True length");
}

/* From the corner that the pointer is on, to where the size goes on. */
static void
test_window_from_corner (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WINDOW, case_wall ());

  hand_move (&hand, 3, 2);
  hand_fields (&hand, TEXTS ("900", "1100", "3000", "600"));
  case_assert_box (hand.document, "o2", 3000, 600, 900, 1100);
}

/* Toward the left of a corner the jamb that is next to it is meant. */
static void
test_window_from_right (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WINDOW, case_wall ());

  hand_move (&hand, 6000, 3000);
  hand_fields (&hand, TEXTS ("900", "500", "-300", "−400"));
  case_assert_box (hand.document, "o2", 4800, 2100, 900, 500);
}

/* A chosen corner is measured from until the point is set. */
static void
test_reference (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WINDOW, case_wall ());
  CwPoint at;

  g_assert_false (cw_tool_get_reference (hand.tool, &at));
  hand_move (&hand, 2204, 897);
  g_assert_true (cw_tool_choose_reference (hand.tool));
  hand_move (&hand, 3500, 1500);
  g_assert_true (cw_tool_get_reference (hand.tool, &at));
  g_assert_true (cw_point_equal (at, cw_point (CW_MM (2200), CW_MM (900))));
  hand_fields (&hand, TEXTS ("800", "1400", "600", "0"));
  case_assert_box (hand.document, "o2", 2800, 900, 800, 1400);
  g_assert_false (cw_tool_get_reference (hand.tool, &at));
}

/* Escape lets go of the chosen corner first. */
static void
test_reference_given_up (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_TAPE, case_wall ());
  CwPoint at;

  hand_move (&hand, 2204, 897);
  g_assert_true (cw_tool_choose_reference (hand.tool));
  g_assert_true (cw_tool_cancel (hand.tool));
  g_assert_false (cw_tool_get_reference (hand.tool, &at));
  g_assert_false (cw_tool_cancel (hand.tool));
}

static void
test_wall_way (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_empty (CW_UNITS_METRIC));
  const int corners[][2]
      = { { 0, 0 }, { 6000, 0 }, { 6000, 2700 }, { 3000, 4200 } };

  hand_click (&hand, 0, 0);
  hand_move (&hand, 500, 0);
  hand_fields (&hand, TEXTS ("6000", "", "", ""));
  hand_fields (&hand, TEXTS ("", "", "0", "2700"));
  hand_move (&hand, 3000, 4000);
  hand_fields (&hand, TEXTS ("3000 x 6:12", "", "", ""));
  g_assert_true (cw_tool_finish (hand.tool));
  case_assert_outline (hand.document,
                       cw_document_elevation_id (hand.document), 4, corners);
}

/* An angle in its own field needs no sign for degrees. */
static void
test_slopes (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_TAPE, case_wall ());
  CwPoint first, second;
  static const char *const slopes[]
      = { "6:12", "6/12", "26.565051", "26.565051°" };

  for (guint i = 0; i < G_N_ELEMENTS (slopes); i++)
    {
      hand_click (&hand, 0, 0);
      hand_move (&hand, 2000, 1100);
      hand_fields (&hand, TEXTS ("3000", slopes[i], "", ""));
      g_assert_true (cw_tool_two_points (hand.tool, &first, &second));
      /* 3000 × 2/√5 and 3000 × 1/√5 */
      g_assert_cmpfloat_with_epsilon ((double) second.x / 1e6, 2683.281573,
                                      1e-4);
      g_assert_cmpfloat_with_epsilon ((double) second.y / 1e6, 1341.640786,
                                      1e-4);
    }
}

/* Without a sign to where the pointer is; with one as it says. */
static void
test_signs (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_TAPE, case_wall ());
  CwPoint first, second;

  hand_click (&hand, 3000, 1000);
  hand_move (&hand, 2500, 400);
  hand_fields (&hand, TEXTS ("", "", "800", "+100"));
  g_assert_true (cw_tool_two_points (hand.tool, &first, &second));
  g_assert_cmpint (second.x, ==, CW_MM (2200));
  g_assert_cmpint (second.y, ==, CW_MM (1100));
}

/* What is left blank is as the pointer gives it. */
static void
test_blank (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WINDOW, case_wall ());

  hand_click (&hand, 3000, 600);
  hand_move (&hand, 3900, 1800);
  hand_fields (&hand, TEXTS ("", "1100", "", ""));
  case_assert_box (hand.document, "o2", 3000, 600, 900, 1100);
}

static void
test_errors (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_ARCH, case_wall ());

  assert_wrong (&hand, TEXTS ("", "", "", "", ""), 0, 0);
  assert_wrong (&hand, TEXTS ("1200", "14q0", "300", "", ""), 1, 2);
  assert_wrong (&hand, TEXTS ("1200", "1400", "  3w", "", ""), 2, 3);
  assert_wrong (&hand, TEXTS ("1200", "1400", "", "100", "-7z"), 4, 2);
  assert_wrong (&hand, TEXTS ("", "1400", "", "", ""), 0, 0);
  g_assert_false (cw_document_can_undo (hand.document));
  /* The corner that went with a wrong size is not left behind. */
  assert_wrong (&hand, TEXTS ("12 00q", "1400", "", "100", "100"), 0, 3);
  assert_labels (&hand, "Width, Full height, Rise, Along, Up");
  g_assert_false (cw_tool_cancel (hand.tool));
  hand_click (&hand, 3000, 600);
  assert_wrong (&hand, TEXTS ("900", "1400", "", "100", ""), 3, 0);
}

/* A wall's first corner and its size together. */
static void
test_wall_rectangle (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_WALL, case_wall ());
  const int corners[][2]
      = { { 0, 0 }, { 4000, 0 }, { 4000, 2500 }, { 0, 2500 } };

  hand_move (&hand, 6003, 2);
  hand_fields (&hand, TEXTS ("4000", "2500", "500", "0"));
  case_assert_outline (hand.document,
                       cw_document_elevation_id (hand.document), 4, corners);
}

static void
test_stub_out (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_STUB_OUT, case_wall ());

  hand_move (&hand, 0, 0);
  hand_fields (&hand, TEXTS ("110", "", "3000", "450"));
  case_assert_box (hand.document, "p2", 3000, 450, 110, 110);
}

static void
test_dimension (void)
{
  g_auto (Hand) hand = hand_new (CW_TOOL_DIMENSION, case_wall ());
  const CwDimension *made;

  hand_move (&hand, 0, 0);
  hand_fields (&hand, TEXTS ("1000", "900"));
  hand_fields (&hand, TEXTS ("", "", "+1200", "0"));
  hand_move (&hand, 1500, 2000);
  hand_fields (&hand, TEXTS ("350"));
  made = (const CwDimension *) case_item (hand.document, "d1");
  g_assert_nonnull (made);
  g_assert_cmpint (cw_dimension_length (made), ==, CW_MM (1200));
  g_assert_cmpint (made->offset, ==, CW_MM (350));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/board/typed-fields/labels", test_labels);
  g_test_add_func ("/board/typed-fields/window-from-corner",
                   test_window_from_corner);
  g_test_add_func ("/board/typed-fields/window-from-right",
                   test_window_from_right);
  g_test_add_func ("/board/typed-fields/reference", test_reference);
  g_test_add_func ("/board/typed-fields/reference-given-up",
                   test_reference_given_up);
  g_test_add_func ("/board/typed-fields/wall-way", test_wall_way);
  g_test_add_func ("/board/typed-fields/slopes", test_slopes);
  g_test_add_func ("/board/typed-fields/signs", test_signs);
  g_test_add_func ("/board/typed-fields/blank", test_blank);
  g_test_add_func ("/board/typed-fields/errors", test_errors);
  g_test_add_func ("/board/typed-fields/wall-rectangle", test_wall_rectangle);
  g_test_add_func ("/board/typed-fields/stub-out", test_stub_out);
  g_test_add_func ("/board/typed-fields/dimension", test_dimension);
  return g_test_run ();
}
