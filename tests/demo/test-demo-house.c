/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The demo house: a valid project whose sheet shows what it holds.
 */
#include <libxml/relaxng.h>
#include <string.h>

#include "cw-project-file.h"
#include "cw-sheet-source.h"
#include "panel-plan-checker.h"

/* Pixels a point of the sheet; a stroke of 0.35 pt is then over 1 px wide. */
#define PIXELS 4.0
#define DARK 160

static char *
in_tree (const char *name)
{
  return g_build_filename (g_getenv ("CW_SOURCE_ROOT"), name, NULL);
}

static GFile *
demo_file (const char *name)
{
  g_autofree char *within = g_build_filename ("data", "demo", name, NULL);
  g_autofree char *path = in_tree (within);
  return g_file_new_for_path (path);
}

static CwProject *
demo_project (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) file = demo_file ("fennel-house.cladwright");
  CwProject *project = cw_project_load (file, NULL, &error);
  g_assert_no_error (error);
  return project;
}

static void
test_schema (void)
{
  g_autofree char *grammar = in_tree ("data/schema/project-1.rng");
  g_autofree char *path = in_tree ("data/demo/fennel-house.cladwright");
  xmlRelaxNGParserCtxt *parser = xmlRelaxNGNewParserCtxt (grammar);
  xmlRelaxNG *schema = xmlRelaxNGParse (parser);
  xmlRelaxNGValidCtxt *judge = xmlRelaxNGNewValidCtxt (schema);
  xmlDoc *document = xmlReadFile (path, NULL, XML_PARSE_NONET);
  g_assert_nonnull (document);
  g_assert_cmpint (xmlRelaxNGValidateDoc (judge, document), ==, 0);
  xmlFreeDoc (document);
  xmlRelaxNGFreeValidCtxt (judge);
  xmlRelaxNGFree (schema);
  xmlRelaxNGFreeParserCtxt (parser);
}

/* Written again, the demo is the same file, so a user's first save of it
 * shows a difference only where something was changed. */
static void
test_written_again (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (CwProject) project = demo_project ();
  g_autoptr (GBytes) bytes = cw_project_to_xml (project);
  g_autofree char *path = in_tree ("data/demo/fennel-house.cladwright");
  g_autofree char *text = NULL;
  gsize size = 0;
  g_assert_true (g_file_get_contents (path, &text, &size, &error));
  g_assert_cmpmem (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes),
                   text, size);
}

static const CwSheet *
only_sheet (const CwProject *project)
{
  g_assert_cmpuint (cw_list_length (project->sheets), ==, 1);
  return cw_list_at (project->sheets, 0);
}

static void
test_sheet_is_the_one (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (CwProject) project = demo_project ();
  const CwSheet *sheet = only_sheet (project);
  g_autoptr (GFile) file = demo_file (sheet->file);
  g_autofree char *sum = cw_sheet_source_sha256 (file, NULL, &error);
  g_assert_no_error (error);
  g_assert_cmpstr (sum, ==, sheet->sha256);
}

typedef struct
{
  cairo_surface_t *page;
  double mm_per_point;
} Page;

static Page
render_page (const CwSheet *sheet)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GFile) file = demo_file (sheet->file);
  g_autoptr (CwSheetSource) source = cw_sheet_source_open (file, &error);
  const CwScale *scale = (const CwScale *)sheet->scale;
  double width, height;
  Page page = { .mm_per_point = cw_decimal_to_double (scale->across) };

  g_assert_no_error (error);
  cw_sheet_source_size (source, 1, 0, &width, &height);
  page.page = cw_sheet_source_render (source, 1, 0, PIXELS, 0, 0,
                                      (int)(width * PIXELS),
                                      (int)(height * PIXELS), &error);
  g_assert_no_error (error);
  return page;
}

/* Whether the page is inked within one pixel of a place of the wall. */
static gboolean
inked (const Page *page, const CwElevation *elevation, CwPoint place)
{
  const double pixels = PIXELS / page->mm_per_point / CW_NM_PER_MM;
  const int x = (int)(cw_decimal_to_double (elevation->at_x) * PIXELS
                      + (double)place.x * pixels);
  const int y = (int)(cw_decimal_to_double (elevation->at_y) * PIXELS
                      - (double)place.y * pixels);
  const guchar *data = cairo_image_surface_get_data (page->page);
  const int stride = cairo_image_surface_get_stride (page->page);
  for (int row = y - 1; row <= y + 1; row++)
    for (int column = x - 1; column <= x + 1; column++)
      if (data[row * stride + column * 4] < DARK)
        return TRUE;
  return FALSE;
}

static CwPoint
middle_of_side (const CwLoop *loop, gsize i)
{
  const CwPoint from = loop->sides[i].start;
  const CwPoint to = loop->sides[(i + 1) % loop->n_sides].start;
  return (CwPoint){ (from.x + to.x) / 2, (from.y + to.y) / 2 };
}

static guint
count_drawn_sides (const Page *page, const CwElevation *elevation,
                   const CwRegion *region)
{
  guint n = 0;
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      const CwLoop loop = cw_region_loop (region, i);
      for (gsize k = 0; k < loop.n_sides; k++)
        {
          const CwPoint place = middle_of_side (&loop, k);
          if (loop.sides[k].is_arc)
            continue;
          if (!inked (page, elevation, place))
            g_error ("%s: nothing is drawn at %.1f, %.1f mm", elevation->id,
                     (double)place.x / CW_NM_PER_MM,
                     (double)place.y / CW_NM_PER_MM);
          n++;
        }
    }
  return n;
}

/* The straight sides of every outline and opening lie on drawn lines, and a
 * bare part of the wall is bare. */
static void
test_sheet_shows_the_house (void)
{
  g_autoptr (CwProject) project = demo_project ();
  Page page = render_page (only_sheet (project));
  guint n = 0;
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    {
      const CwElevation *elevation = cw_list_at (project->elevations, i);
      g_autoptr (CwWall) wall = cw_wall_new (project, elevation);
      n += count_drawn_sides (&page, elevation, wall->outline);
      for (guint k = 0; k < wall->openings->len; k++)
        n += count_drawn_sides (
            &page, elevation,
            g_array_index (wall->openings, CwWallOpening, k).shape);
      const CwPoint bare = { CW_INCHES (6), CW_INCHES (80) };
      g_assert_false (inked (&page, elevation, bare));
    }
  /* 18 of the outlines, 9 rectangles of 4 and 2 arches of 3. */
  g_assert_cmpuint (n, ==, 18 + 9 * 4 + 2 * 3);
  cairo_surface_destroy (page.page);
}

/* Every piece comes out of a panel, and hardly a panel could be saved. */
static void
test_panels (void)
{
  g_autoptr (CwProject) project = demo_project ();
  g_autoptr (CwTakeoff) takeoff = settled_takeoff (project, NULL);
  check_panel_plans (takeoff);
  assert_plan_near_bound (takeoff, "the demo house");
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/demo/house/panels", test_panels);
  g_test_add_func ("/demo/house/schema", test_schema);
  g_test_add_func ("/demo/house/written-again", test_written_again);
  g_test_add_func ("/demo/house/sheet-is-the-one", test_sheet_is_the_one);
  g_test_add_func ("/demo/house/sheet-shows-it", test_sheet_shows_the_house);
  return g_test_run ();
}
