/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-outline.h"

#include <math.h>
#include <string.h>

#include "cw-case-table.h"

#define MOST_CORNERS 16

typedef struct
{
  CwCorner corners[MOST_CORNERS];
  gsize n;
} Corners;

static const char *const fault_names[] = {
  [CW_OUTLINE_VALID] = "valid",
  [CW_OUTLINE_TOO_FEW] = "too-few",
  [CW_OUTLINE_ZERO_SIDE] = "zero-side",
  [CW_OUTLINE_ARC_TOO_HIGH] = "arc-too-high",
  [CW_OUTLINE_CROSSES] = "crosses",
  [CW_OUTLINE_NO_AREA] = "no-area",
};

static CwLength
millimetres (const char *text)
{
  char *end;
  double value = g_ascii_strtod (text, &end);
  if (end == text || *end != '\0')
    g_error ("«%s» is no number", text);
  return llround (value * 1e6);
}

static Corners
read_corners (const char *text)
{
  Corners corners = { 0 };
  if (g_str_equal (text, "-"))
    return corners;
  g_auto (GStrv) words = g_strsplit (text, " ", -1);
  for (char **word = words; *word; word++)
    {
      g_auto (GStrv) numbers = g_strsplit (*word, ",", -1);
      guint n = g_strv_length (numbers);
      g_assert_true (n == 2 || n == 3);
      g_assert_cmpuint (corners.n, <, MOST_CORNERS);
      CwCorner *corner = &corners.corners[corners.n];
      corner->at
          = cw_point (millimetres (numbers[0]), millimetres (numbers[1]));
      corner->sagitta = n == 3 ? millimetres (numbers[2]) : 0;
      corner->tag = (guint) ++corners.n;
    }
  return corners;
}

/* The same outline the other way round: side i of n becomes side n - i, and
 * the last one stays last. */
static Corners
turned_round (const Corners *corners)
{
  Corners turned = { .n = corners->n };
  for (gsize i = 0; i < corners->n; i++)
    {
      const CwCorner *from = &corners->corners[corners->n - 1 - i];
      const gsize side = (2 * corners->n - 2 - i) % corners->n;
      turned.corners[i].at = from->at;
      turned.corners[i].sagitta = corners->corners[side].sagitta;
      turned.corners[i].tag = corners->corners[side].tag;
    }
  return turned;
}

static guint
side_number (const CwCase *row, guint column)
{
  return (guint) g_ascii_strtoull (row->columns[column], NULL, 10);
}

static void
check_fault (const CwCase *row, const Corners *corners, gboolean is_turned)
{
  CwOutlineCheck check = cw_outline_check (corners->corners, corners->n);
  if (!g_str_equal (fault_names[check.fault], row->columns[0]))
    g_error ("Line %u%s, %s: %s, not %s", row->line,
             is_turned ? " turned round" : "", row->columns[5],
             fault_names[check.fault], row->columns[0]);
  if (row->columns[1][0] == '-')
    return;
  /* Tags count the sides as written. */
  guint one = corners->corners[check.side].tag;
  guint other = corners->corners[check.other].tag;
  g_assert_cmpuint (MIN (one, other), ==, side_number (row, 1));
  g_assert_cmpuint (MAX (one, other), ==, side_number (row, 2));
}

/* The region of a valid one, always anticlockwise; none of a faulty one. */
static void
check_region (const CwCase *row, const Corners *corners)
{
  g_autoptr (CwRegion) region
      = cw_outline_region (corners->corners, corners->n);
  g_assert_true ((region != NULL) == g_str_equal (row->columns[0], "valid"));
  if (region == NULL)
    return;
  double expected = g_ascii_strtod (row->columns[3], NULL);
  double area = cw_region_area (region);
  if (!(fabs (area - expected) <= 1e-12 * expected))
    g_error ("Line %u: %.17g m², not %.17g", row->line, area, expected);
}

static void
test_row (gconstpointer data)
{
  const CwCase *row = data;
  Corners corners = read_corners (row->columns[4]);
  Corners turned = turned_round (&corners);
  check_fault (row, &corners, FALSE);
  check_fault (row, &turned, TRUE);
  check_region (row, &corners);
  check_region (row, &turned);
}

/* Sides keep their tags, whichever way round they were given. */
static void
test_tags (void)
{
  Corners corners = read_corners ("0,0 9000,0 9000,2700 4500,4500 0,2700");
  Corners turned = turned_round (&corners);
  const double lengths[] = { 9, 2.7, hypot (4.5, 1.8), hypot (4.5, 1.8), 2.7 };
  for (guint i = 0; i < 2; i++)
    {
      const Corners *given = i ? &turned : &corners;
      g_autoptr (CwRegion) region
          = cw_outline_region (given->corners, given->n);
      for (guint tag = 1; tag <= 5; tag++)
        g_assert_cmpfloat_with_epsilon (cw_region_length_of (region, tag),
                                        lengths[tag - 1], 1e-12);
    }
}

/* Each fault has a sentence of its own that names the side. */
static void
test_sentences (void)
{
  g_autoptr (GHashTable) seen
      = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  for (guint fault = 0; fault < G_N_ELEMENTS (fault_names); fault++)
    {
      CwOutlineCheck check = { (CwOutlineFault) fault, 4, 6 };
      g_autofree char *text = cw_outline_check_text (&check);
      g_assert_true (g_str_has_suffix (text, "."));
      if (fault == CW_OUTLINE_ZERO_SIDE || fault == CW_OUTLINE_ARC_TOO_HIGH
          || fault == CW_OUTLINE_CROSSES)
        g_assert_nonnull (strchr (text, '5'));
      if (fault == CW_OUTLINE_CROSSES)
        g_assert_nonnull (strchr (text, '7'));
      g_assert_true (g_hash_table_add (seen, g_steal_pointer (&text)));
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_autoptr (GPtrArray) table = cw_case_table_load ("geometry/outlines.tsv", 6);
  for (guint i = 0; i < table->len; i++)
    {
      const CwCase *row = table->pdata[i];
      g_autofree char *path = g_strdup_printf ("/geometry/outline/%s/line-%u",
                                               row->columns[0], row->line);
      g_test_add_data_func (path, row, test_row);
    }
  g_test_add_func ("/geometry/outline/tags", test_tags);
  g_test_add_func ("/geometry/outline/sentences", test_sentences);
  return g_test_run ();
}
