/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Pages: size, margins, what stands on what, heads and feet.
 */
#include <math.h>
#include <string.h>

#include "paper-house.h"
#include "paper-pages.h"

#define MARGIN 36.0
#define HAIR 0.75       /* points that boxes of letters may share */

static const char long_name[]
    = "The house with the very long name that somebody gave it because the "
      "lane, the hill, the well and the orchard were all to be remembered";

static const char unbroken_name[]
    = "Donaudampfschifffahrtsgesellschaftskapitänskajütentürschlosswerkstattdach"
      "bodenfensterlaibungsinnenseitenverkleidungsplattenfugenmörtelsackvorrat";

static PopplerDocument *
read_house (CwUnits units, guint n, const char *name, const char *wall)
{
  const PaperHouse house = { .units = units, .n_elevations = n, .name = name,
                             .wall_name = wall };
  g_autoptr (CwTakeoff) takeoff = paper_house_takeoff (&house);
  return paper_read (takeoff);
}

static void
check_size (CwUnits units, double width, double height)
{
  g_autoptr (PaperDocument) document = read_house (units, 2, "House", NULL);
  guint n_turned = 0;
  for (int i = 0; i < poppler_document_get_n_pages (document); i++)
    {
      double across, up;
      g_autoptr (PaperPage) page = poppler_document_get_page (document, i);
      poppler_page_get_size (page, &across, &up);
      n_turned += across > up;
      g_assert_cmpfloat_with_epsilon (MIN (across, up), width, 0.01);
      g_assert_cmpfloat_with_epsilon (MAX (across, up), height, 0.01);
    }
  /* The gable, which can be larger so. */
  g_assert_cmpuint (n_turned, >=, 1);
}

static void
test_size (void)
{
  check_size (CW_UNITS_METRIC, 595.276, 841.890);
  check_size (CW_UNITS_US, 612, 792);
}

static void
test_count (void)
{
  g_autoptr (PaperDocument) document
      = read_house (CW_UNITS_METRIC, 3, "House", NULL);
  const int n = poppler_document_get_n_pages (document);
  g_assert_cmpint (n, >=, 6);
  for (int i = 0; i < n; i++)
    {
      g_autofree char *text = paper_text (document, i, i + 1);
      g_autofree char *foot
          = g_strdup_printf ("house.cladwright Page %d of %d ", i + 1, n);
      g_assert_true (g_str_has_suffix (text, foot));
      g_assert_true (g_str_has_prefix (text, "House · P-7 "));
    }
}

static gboolean
overlap (const PopplerRectangle *a, const PopplerRectangle *b)
{
  return MIN (a->x2, b->x2) - MAX (a->x1, b->x1) > HAIR
         && MIN (a->y2, b->y2) - MAX (a->y1, b->y1) > 2 * HAIR;
}

static void
check_boxes (PopplerDocument *document)
{
  for (int i = 0; i < poppler_document_get_n_pages (document); i++)
    {
      double width, height;
      g_autoptr (PaperPage) page = poppler_document_get_page (document, i);
      g_autoptr (GPtrArray) words = paper_words (document, i);
      poppler_page_get_size (page, &width, &height);
      g_assert_cmpuint (words->len, >, 5);
      for (guint j = 0; j < words->len; j++)
        {
          const PaperWord *word = words->pdata[j];
          g_assert_cmpfloat (word->box.x1, >=, MARGIN - HAIR);
          g_assert_cmpfloat (word->box.x2, <=, width - MARGIN + HAIR);
          g_assert_cmpfloat (word->box.y1, >=, MARGIN - HAIR);
          g_assert_cmpfloat (word->box.y2, <=, height - MARGIN + HAIR);
          for (guint k = 0; k < j; k++)
            {
              const PaperWord *other = words->pdata[k];
              if (overlap (&word->box, &other->box))
                g_error ("page %d: “%s” stands on “%s”", i + 1, word->text,
                         other->text);
            }
        }
    }
}

static void
test_boxes (void)
{
  g_autoptr (PaperDocument) metric
      = read_house (CW_UNITS_METRIC, 4, "House", NULL);
  g_autoptr (PaperDocument) us = read_house (CW_UNITS_US, 4, "House", NULL);
  check_boxes (metric);
  check_boxes (us);
}

/* Letters alone: where a line breaks a hyphen may come in. */
static char *
letters (const char *text)
{
  GString *kept = g_string_new (NULL);
  for (const char *at = text; *at; at = g_utf8_next_char (at))
    if (g_unichar_isalnum (g_utf8_get_char (at)))
      g_string_append_unichar (kept, g_utf8_get_char (at));
  return g_string_free (kept, FALSE);
}

static void
check_long (const char *name)
{
  g_autoptr (PaperDocument) document
      = read_house (CW_UNITS_US, 2, name, name);
  check_boxes (document);
  g_autofree char *text = paper_text (document, 0, 1);
  g_autofree char *wanted = letters (name);
  g_autofree char *found = letters (text);
  const char *title = strstr (found, wanted);
  g_assert_nonnull (title);
  /* A title over the elevation's drawing as well. */
  const int page = paper_find_section (document, "Elevation", 1);
  g_autofree char *elevation = paper_text (document, page, page + 1);
  g_autofree char *on_page = letters (elevation);
  g_assert_nonnull (strstr (on_page, wanted));
}

static void
test_long_names (void)
{
  check_long (long_name);
  check_long (unbroken_name);
}

static void
check_elevations (guint n)
{
  g_autoptr (PaperDocument) document
      = read_house (CW_UNITS_METRIC, n, "House", NULL);
  PopplerIndexIter *iter = poppler_index_iter_new (document);
  guint found = 0;
  g_assert_nonnull (iter);
  do
    {
      PopplerAction *action = poppler_index_iter_get_action (iter);
      g_autofree char *name = g_strdup_printf ("Elevation Wall %u", found + 1);
      if (g_str_equal (action->any.title, name))
        {
          g_assert_cmpint (action->type, ==, POPPLER_ACTION_GOTO_DEST);
          const int page = action->goto_dest.dest->page_num - 1;
          g_assert_cmpint (paper_find_section (document, name, 0), ==, page);
          found++;
        }
      poppler_action_free (action);
    }
  while (poppler_index_iter_next (iter));
  poppler_index_iter_free (iter);
  g_assert_cmpuint (found, ==, n);
}

static void
test_elevations (void)
{
  static const guint numbers[] = { 1, 2, 5, 20 };
  for (guint i = 0; i < G_N_ELEMENTS (numbers); i++)
    check_elevations (numbers[i]);
}

/* Wherever pieces are listed, their columns are named on that page. */
static void
test_heads_repeat (void)
{
  guint n_pages = 0;
  g_autoptr (CwTakeoff) takeoff
      = paper_plain_wall (CW_UNITS_METRIC, 60000, 9000);
  g_autoptr (PaperDocument) document = paper_read (takeoff);
  const int from = paper_find_section (document, "Elevation Plain", 0);
  for (int i = from; i < poppler_document_get_n_pages (document); i++)
    {
      g_autofree char *text = paper_text (document, i, i + 1);
      if (!g_regex_match_simple (" 600 \\d\\.\\d\\d m² ", text, 0, 0))
        continue;
      g_assert_nonnull (strstr (text, "Piece Width Height Area Cut Piece"));
      n_pages++;
    }
  g_assert_cmpuint (n_pages, >=, 3);
}

static void
test_least_type (void)
{
  g_autoptr (PaperDocument) document
      = read_house (CW_UNITS_US, 2, "House", NULL);
  for (int i = 0; i < poppler_document_get_n_pages (document); i++)
    {
      g_autoptr (PaperPage) page = poppler_document_get_page (document, i);
      GList *runs = poppler_page_get_text_attributes (page);
      g_assert_nonnull (runs);
      for (GList *run = runs; run; run = run->next)
        {
          const PopplerTextAttributes *attributes = run->data;
          g_assert_cmpfloat (attributes->font_size, >=, 8 - 1e-3);
        }
      poppler_page_free_text_attributes (runs);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/report/takeoff/pages/size", test_size);
  g_test_add_func ("/report/takeoff/pages/count", test_count);
  g_test_add_func ("/report/takeoff/pages/boxes", test_boxes);
  g_test_add_func ("/report/takeoff/pages/long-names", test_long_names);
  g_test_add_func ("/report/takeoff/pages/elevations", test_elevations);
  g_test_add_func ("/report/takeoff/pages/heads-repeat", test_heads_repeat);
  g_test_add_func ("/report/takeoff/pages/least-type", test_least_type);
  return g_test_run ();
}
