/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The PDF as a document: stable bytes, metadata, fonts, words of care, and
 * what happens with nothing, without an outline and when it is given up.
 */
#include <string.h>

#include "cw-checks.h"
#include "paper-house.h"
#include "paper-pages.h"

static GBytes *
pdf_of (const PaperHouse *house, CwPaper paper)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (CwTakeoff) takeoff = paper_house_takeoff (house);
  CwTakeoffPdfOptions options;
  cw_takeoff_pdf_options_init (&options, takeoff->project);
  options.paper = paper;
  GBytes *pdf = cw_takeoff_to_pdf (takeoff, &options, NULL, &error);
  g_assert_no_error (error);
  return pdf;
}

static PopplerDocument *
document_of (const PaperHouse *house, CwPaper paper)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) pdf = pdf_of (house, paper);
  PopplerDocument *document
      = poppler_document_new_from_bytes (pdf, NULL, &error);
  g_assert_no_error (error);
  return document;
}

/* More than a second apart: a clock in it would show. */
static void
test_stable (void)
{
  const PaperHouse house
      = { .units = CW_UNITS_METRIC, .n_elevations = 2, .name = "House" };
  g_autoptr (GBytes) first = pdf_of (&house, CW_PAPER_BY_UNITS);
  g_usleep (1100 * 1000);
  g_autoptr (GBytes) second = pdf_of (&house, CW_PAPER_BY_UNITS);
  g_assert_true (g_bytes_equal (first, second));
}

static void
test_metadata (void)
{
  const PaperHouse house = { .units = CW_UNITS_US, .n_elevations = 1,
                             .name = "Fennel & Rüben", .date = "2026-03-04" };
  g_autoptr (PaperDocument) document
      = document_of (&house, CW_PAPER_BY_UNITS);
  g_autofree char *title = poppler_document_get_title (document);
  g_autofree char *author = poppler_document_get_author (document);
  g_autoptr (GDateTime) date
      = poppler_document_get_creation_date_time (document);
  g_assert_cmpstr (title, ==, "Fennel & Rüben: takeoff");
  g_assert_cmpstr (author, ==, "E. Xample");
  g_autofree char *day = g_date_time_format (date, "%F");
  g_assert_cmpstr (day, ==, "2026-03-04");
}

static void
test_no_date (void)
{
  const PaperHouse house = { .units = CW_UNITS_US, .n_elevations = 1 };
  g_autoptr (PaperDocument) document
      = document_of (&house, CW_PAPER_BY_UNITS);
  g_assert_cmpint (poppler_document_get_creation_date (document), ==, -1);
}

static void
test_paper (void)
{
  double width, height;
  const PaperHouse house = { .units = CW_UNITS_US, .n_elevations = 1 };
  g_autoptr (PaperDocument) document = document_of (&house, CW_PAPER_A4);
  g_autoptr (PaperPage) page = poppler_document_get_page (document, 0);
  poppler_page_get_size (page, &width, &height);
  g_assert_cmpfloat_with_epsilon (width, 595.276, 0.01);
  g_assert_cmpfloat_with_epsilon (height, 841.890, 0.01);
}

static void
test_fonts (void)
{
  const PaperHouse house
      = { .units = CW_UNITS_US, .n_elevations = 1, .name = "House" };
  g_autoptr (PaperDocument) document
      = document_of (&house, CW_PAPER_BY_UNITS);
  PopplerFontInfo *info = poppler_font_info_new (document);
  PopplerFontsIter *iter = NULL;
  guint n = 0;
  poppler_font_info_scan (info, poppler_document_get_n_pages (document),
                          &iter);
  g_assert_nonnull (iter);
  do
    {
      g_assert_true (poppler_fonts_iter_is_embedded (iter));
      g_assert_true (poppler_fonts_iter_is_subset (iter));
      n++;
    }
  while (poppler_fonts_iter_next (iter));
  g_assert_cmpuint (n, >=, 2);
  poppler_fonts_iter_free (iter);
  g_object_unref (info);
}

static void
test_words (void)
{
  static const char *const words[]
      = { "silica",    "Lifting:", "43.0 kg",  "Falls",
          "wind",      "designer", "makers",   "local code",
          "Not covered", "Labour and prices", "Example Client",
          "Example Lane", "E. Xample", "P-7" };
  const PaperHouse house
      = { .units = CW_UNITS_METRIC, .n_elevations = 1, .name = "House" };
  g_autoptr (PaperDocument) document
      = document_of (&house, CW_PAPER_BY_UNITS);
  const int to = paper_find_section (document, "Elevation Wall 1", 0);
  g_autofree char *text = paper_text (document, 0, to);
  for (guint i = 0; i < G_N_ELEMENTS (words); i++)
    if (!strstr (text, words[i]))
      g_error ("“%s” is not in: %s", words[i], text);
}

/* The first page says how many panels are used and how few might do. */
static void
test_panels_and_bound (void)
{
  const PaperHouse house
      = { .units = CW_UNITS_METRIC, .n_elevations = 2, .name = "House" };
  g_autoptr (CwTakeoff) takeoff = paper_house_takeoff (&house);
  g_autoptr (PaperDocument) document = paper_read (takeoff);
  const CwQuantity *stock = cw_takeoff_quantity (takeoff, NULL, "panel.stock");
  const CwQuantity *least = cw_takeoff_quantity (takeoff, NULL, "panel.least");
  const int to = paper_find_section (document, "Elevation Wall 1", 0);
  g_autofree char *text = paper_text (document, 0, to);
  g_autofree char *sentence
      = g_strdup_printf ("%.0f panels, at least %.0f are needed",
                         stock->amount, least->amount);
  g_assert_cmpfloat (least->amount, >, 1);
  if (!strstr (text, sentence))
    g_error ("“%s” is not in: %s", sentence, text);
}

static void
test_assumptions (void)
{
  static const char *const rows[]
      = { "Panel 50 × 600 × 2400", " 400 mm ", " 43 kg ", " 1200 mm " };
  const PaperHouse house
      = { .units = CW_UNITS_METRIC, .n_elevations = 1, .name = "House" };
  g_autoptr (PaperDocument) document
      = document_of (&house, CW_PAPER_BY_UNITS);
  g_autofree char *text = paper_text (
      document, 0, poppler_document_get_n_pages (document));
  const char *from = strstr (text, "Buildups What the quantities assume.");
  g_assert_nonnull (from);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    if (!strstr (from, rows[i]))
      g_error ("“%s” is not in: %s", rows[i], from);
}

static int
page_of (PopplerDocument *document, const PopplerDest *dest)
{
  if (dest->type != POPPLER_DEST_NAMED)
    return dest->page_num - 1;
  PopplerDest *found
      = poppler_document_find_dest (document, dest->named_dest);
  g_assert_nonnull (found);
  const int page = found->page_num - 1;
  poppler_dest_free (found);
  return page;
}

/* The page's y runs up. */
static guint
links_above (GList *links, const PopplerLinkMapping *mapping)
{
  guint n = 0;
  for (GList *link = links; link; link = link->next)
    n += ((PopplerLinkMapping *) link->data)->area.y1 > mapping->area.y1;
  return n;
}

/* A row of the summary leads to its elevation. */
static void
test_links (void)
{
  guint n = 0;
  const PaperHouse house
      = { .units = CW_UNITS_METRIC, .n_elevations = 3, .name = "House" };
  g_autoptr (PaperDocument) document
      = document_of (&house, CW_PAPER_BY_UNITS);
  g_autoptr (PaperPage) page = poppler_document_get_page (document, 0);
  GList *links = poppler_page_get_link_mapping (page);
  for (GList *link = links; link; link = link->next)
    {
      const PopplerAction *action
          = ((PopplerLinkMapping *) link->data)->action;
      g_assert_cmpint (action->type, ==, POPPLER_ACTION_GOTO_DEST);
      const int to = page_of (document, action->goto_dest.dest);
      g_autofree char *text = paper_text (document, to, to + 1);
      g_autofree char *name = g_strdup_printf (
          "Elevation Wall %u ", 1 + links_above (links, link->data));
      g_assert_nonnull (strstr (text, name));
      g_assert_nonnull (strstr (text, "Scale 1:"));
      n++;
    }
  poppler_page_free_link_mapping (links);
  g_assert_cmpuint (n, ==, 3);
}

static void
test_troubles (void)
{
  const PaperHouse house = { .units = CW_UNITS_METRIC, .n_elevations = 2,
                             .name = "House", .least_piece = 1000 };
  g_autoptr (CwTakeoff) takeoff = paper_house_takeoff (&house);
  const CwWallTakeoff *wall = takeoff->walls->pdata[0];
  g_autoptr (PaperDocument) document = paper_read (takeoff);
  const int to = paper_find_section (document, "Elevation Wall 1", 0);
  g_autofree char *text = paper_text (document, 0, to);
  const CwTextStyle style = cw_text_style_plain (CW_UNITS_METRIC);
  g_autoptr (GPtrArray) checks = cw_checks_find (takeoff, &style, NULL);
  g_assert_cmpuint (wall->layout->troubles->len, >, 0);
  g_assert_nonnull (strstr (text, "Pieces under the least"));
  for (guint i = 0; i < checks->len; i++)
    g_assert_nonnull (
        strstr (text, ((CwCheck *) checks->pdata[i])->type->title));
}

static void
test_empty (void)
{
  const PaperHouse house = { .units = CW_UNITS_METRIC };
  g_autoptr (PaperDocument) document
      = document_of (&house, CW_PAPER_BY_UNITS);
  const int n = poppler_document_get_n_pages (document);
  g_autofree char *text = paper_text (document, 0, n);
  g_assert_cmpint (n, <=, 3);
  g_assert_nonnull (strstr (text, "Project without a name"));
  g_assert_nonnull (strstr (text, "has no elevation yet"));
}

static void
test_no_outline (void)
{
  g_autoptr (CwProject) bare = cw_project_new_default (CW_UNITS_METRIC);
  g_autoptr (CwNode) elevation = cw_node_new (&cw_elevation_type);
  cw_node_put_text (elevation, "id", "e1");
  cw_node_put_text (elevation, "name", "Bare");
  g_autoptr (CwNode) project = cw_node_copy (&bare->node);
  g_autoptr (CwList) list
      = cw_list_append (bare->elevations, elevation);
  cw_node_set_list (project, CW_PROJECT_ELEVATIONS, list);
  g_autoptr (CwTakeoff) takeoff
      = cw_takeoff_new ((CwProject *) project, NULL, NULL);
  g_autoptr (PaperDocument) document = paper_read (takeoff);
  const int page = paper_find_section (document, "Elevation Bare", 0);
  g_autofree char *text = paper_text (document, page, page + 1);
  g_autofree char *summary = paper_text (document, 0, page);
  g_assert_nonnull (strstr (text, "no outline yet"));
  g_assert_nonnull (strstr (summary, "Bare, No outline"));
}

static void
test_cancelled (void)
{
  const PaperHouse house = { .units = CW_UNITS_METRIC, .n_elevations = 3 };
  g_autoptr (CwTakeoff) takeoff = paper_house_takeoff (&house);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  g_autoptr (GError) error = NULL;
  CwTakeoffPdfOptions options;
  cw_takeoff_pdf_options_init (&options, takeoff->project);
  g_cancellable_cancel (cancellable);
  g_assert_null (cw_takeoff_to_pdf (takeoff, &options, cancellable, &error));
  g_assert_error (error, G_IO_ERROR, G_IO_ERROR_CANCELLED);
}

/* Given up at the 7th page drawn: no page comes after it. */
static void
stop_at (guint page, guint n_pages, gpointer data)
{
  guint *last = g_object_get_data (data, "last");
  g_assert_cmpuint (page, <=, n_pages);
  *last = page;
  if (page == 7)
    g_cancellable_cancel (data);
}

static void
test_cancelled_midway (void)
{
  guint last = 0;
  const PaperHouse house = { .units = CW_UNITS_METRIC, .n_elevations = 10 };
  g_autoptr (CwTakeoff) takeoff = paper_house_takeoff (&house);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  g_autoptr (GError) error = NULL;
  CwTakeoffPdfOptions options;
  cw_takeoff_pdf_options_init (&options, takeoff->project);
  g_object_set_data (G_OBJECT (cancellable), "last", &last);
  options.progress = stop_at;
  options.progress_data = cancellable;
  g_assert_null (cw_takeoff_to_pdf (takeoff, &options, cancellable, &error));
  g_assert_error (error, G_IO_ERROR, G_IO_ERROR_CANCELLED);
  g_assert_cmpuint (last, <=, 8);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/report/takeoff/pdf/stable", test_stable);
  g_test_add_func ("/report/takeoff/pdf/metadata", test_metadata);
  g_test_add_func ("/report/takeoff/pdf/no-date", test_no_date);
  g_test_add_func ("/report/takeoff/pdf/paper", test_paper);
  g_test_add_func ("/report/takeoff/pdf/fonts", test_fonts);
  g_test_add_func ("/report/takeoff/pdf/words", test_words);
  g_test_add_func ("/report/takeoff/pdf/panels-and-bound",
                   test_panels_and_bound);
  g_test_add_func ("/report/takeoff/pdf/assumptions", test_assumptions);
  g_test_add_func ("/report/takeoff/pdf/links", test_links);
  g_test_add_func ("/report/takeoff/pdf/troubles", test_troubles);
  g_test_add_func ("/report/takeoff/pdf/empty", test_empty);
  g_test_add_func ("/report/takeoff/pdf/no-outline", test_no_outline);
  g_test_add_func ("/report/takeoff/pdf/cancelled", test_cancelled);
  g_test_add_func ("/report/takeoff/pdf/cancelled-midway",
                   test_cancelled_midway);
  return g_test_run ();
}
