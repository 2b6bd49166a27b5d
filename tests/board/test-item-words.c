/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is on a wall, in words.
 */
#include "board-cases.h"

#include "cw-item-words.h"
#include "cw-takeoff.h"

typedef struct
{
  CwDocument *document;
  CwTakeoff *takeoff;
  const CwWallTakeoff *wall;
} Spoken;

static Spoken
spoken_new (void)
{
  Spoken spoken = { .document = case_wall () };

  spoken.takeoff
      = cw_takeoff_new (cw_document_project (spoken.document), NULL, NULL);
  spoken.wall = cw_takeoff_wall (spoken.takeoff, "e1");
  return spoken;
}

static void
spoken_clear (Spoken *spoken)
{
  g_object_unref (spoken->document);
  cw_takeoff_unref (spoken->takeoff);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Spoken, spoken_clear)

static void
assert_item (const Spoken *spoken, const char *id, const char *name,
             const char *size)
{
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  g_autofree char *its_name = cw_item_name (spoken->wall->wall, id);
  g_autofree char *its_size = cw_item_size (spoken->wall->wall, id, &style);

  g_assert_cmpstr (its_name, ==, name);
  g_assert_cmpstr (its_size, ==, size);
}

static void
test_items (void)
{
  g_auto (Spoken) spoken = spoken_new ();

  assert_item (&spoken, "o1", "Window o1",
               "1200 mm × 1400 mm at 1000 mm, 900 mm");
  assert_item (&spoken, "p1", "Stub-out p1",
               "100 mm × 100 mm at 4450 mm, 550 mm");
  assert_item (&spoken, "t1", "Band t1",
               "3000 mm × 150 mm at 2500 mm, 2600 mm");
  assert_item (&spoken, "u1", "Unclad area u1",
               "800 mm × 500 mm at 5000 mm, 1500 mm");
  assert_item (&spoken, "none", NULL, NULL);
}

/* (transfer full) */
static char *
words_at (const Spoken *spoken, int x, int y, CwLayers layers)
{
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);

  return cw_item_words_at (spoken->wall->wall, spoken->wall,
                           cw_point (CW_MM (x), CW_MM (y)), CW_MM (10),
                           layers, &style);
}

static void
test_under_the_pointer (void)
{
  g_auto (Spoken) spoken = spoken_new ();
  g_autofree char *window = words_at (&spoken, 1500, 1500, CW_LAYER_ALL);
  g_autofree char *beside = words_at (&spoken, -500, 1500, CW_LAYER_ALL);

  g_assert_true (g_str_has_prefix (window, "Window o1: 1200 mm"));
  g_assert_null (beside);
}

/* Of each piece, at its very middle where that is its own. */
static void
test_every_piece (void)
{
  g_auto (Spoken) spoken = spoken_new ();
  const CwLayout *layout = spoken.wall->layout;
  guint n = 0;

  for (guint i = 0; i < layout->pieces->len; i++)
    {
      const CwPiece *piece = &g_array_index (layout->pieces, CwPiece, i);
      const CwPoint middle
          = cw_point ((piece->box.left + piece->box.right) / 2,
                      (piece->box.bottom + piece->box.top) / 2);

      if (piece->shape && !cw_region_contains (piece->shape, middle))
        continue;
      g_assert_true (cw_item_piece_at (layout, middle) == piece);
      n++;
    }
  g_assert_cmpuint (n, >, 5);
}

/* Nobody is told of what is not shown. */
static void
test_only_what_is_shown (void)
{
  g_auto (Spoken) spoken = spoken_new ();
  g_autofree char *piece = words_at (&spoken, 300, 300, CW_LAYER_ALL);
  g_autofree char *nothing
      = words_at (&spoken, 300, 300, CW_LAYER_ALL & ~CW_LAYER_PANELS);
  g_autofree char *no_opening
      = words_at (&spoken, 1500, 1500, CW_LAYER_ALL & ~CW_LAYER_OPENINGS);

  g_assert_true (g_str_has_prefix (piece, "Piece 1-1"));
  g_assert_null (nothing);
  g_assert_null (no_opening);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
#define ADD(path, test) g_test_add_func ("/board/item-words/" path, test)
  ADD ("items", test_items);
  ADD ("under-the-pointer", test_under_the_pointer);
  ADD ("every-piece", test_every_piece);
  ADD ("only-what-is-shown", test_only_what_is_shown);
  return g_test_run ();
}
