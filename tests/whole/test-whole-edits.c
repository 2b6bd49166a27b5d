/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Short work on the demo in the real window: an opening is dragged and put
 * back by undo, each told by the file that is saved; the panels are looked at,
 * and the wall is found again as it was.
 */
#include <gio/gio.h>
#include <string.h>

#include "cw-desk-sheet.h"
#include "cw-project-file.h"

#define PAGE_WIDTH 1224.0
#define PAGE_HEIGHT 792.0
#define POINTS_PER_FOOT 18.0
#define FOOT (12 * CW_NM_PER_INCH)

/* The middle of the south wall's first window on the page. */
#define WINDOW_X (90 + 5 * POINTS_PER_FOOT)
#define WINDOW_Y (690 - (2 + 7.0 / 12 + 2) * POINTS_PER_FOOT)

#define WAIT_US 100000
#define WAITS 200

typedef struct
{
  CwDesk *desk;
  GFile *file;
  CwProject *project;       /* as last saved */
} Work;

/* The demo in the desk's folder, with its sheet. (transfer full) */
static GFile *
copy_demo (CwDesk *desk)
{
  static const char *const names[]
      = { "fennel-house.cladwright", "sheets/fennel-house.pdf" };
  g_autoptr (GFile) folder = g_file_new_for_path (cw_desk_folder (desk));
  g_autoptr (GFile) sheets = g_file_get_child (folder, "sheets");
  g_autoptr (GError) error = NULL;
  g_assert_true (g_file_make_directory (sheets, NULL, &error));
  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_autofree char *path
          = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "data", "demo",
                              names[i], NULL);
      g_autoptr (GFile) from = g_file_new_for_path (path);
      g_autoptr (GFile) to = g_file_resolve_relative_path (folder, names[i]);
      g_file_copy (from, to, G_FILE_COPY_NONE, NULL, NULL, NULL, &error);
      g_assert_no_error (error);
    }
  return g_file_get_child (folder, names[0]);
}

static CwProject *
load (GFile *file)
{
  g_autoptr (GError) error = NULL;
  CwProject *project = cw_project_load (file, NULL, &error);
  g_assert_no_error (error);
  return project;
}

/* Saves, and waits until the file says something else. */
static void
save (Work *work)
{
  cw_desk_key (work->desk, "ctrl+s");
  for (int i = 0; i < WAITS; i++)
    {
      g_autoptr (CwProject) now = load (work->file);
      if (!cw_node_equal (now, work->project))
        {
          g_clear_pointer (&work->project, cw_node_unref);
          work->project = g_steal_pointer (&now);
          return;
        }
      g_usleep (WAIT_US);
    }
  g_error ("what was saved is what there was before");
}

static const CwOpening *
first_window (const Work *work)
{
  const CwNode *node = cw_node_find (&work->project->node, "o1");
  g_assert_nonnull (node);
  return (const CwOpening *) node;
}

static void
drag_window (Work *work, double feet)
{
  const CwSheetPlace sheet
      = cw_desk_find_sheet (work->desk, PAGE_WIDTH, PAGE_HEIGHT);
  const double x = sheet.x + WINDOW_X * sheet.scale;
  const double y = sheet.y + WINDOW_Y * sheet.scale;
  cw_desk_click (work->desk, x, y);
  cw_desk_drag (work->desk, x, y,
                x + feet * POINTS_PER_FOOT * sheet.scale, y);
}

/* A foot and a half to the right, more or less what it snaps to where the
 * whole sheet is in view; and back. */
static void
move_window (Work *work)
{
  g_autoptr (CwProject) demo = cw_node_ref (work->project);
  const CwLength began = first_window (work)->x;
  CwLength dragged;
  cw_desk_key (work->desk, "ctrl+0");
  cairo_surface_destroy (cw_desk_look (work->desk));
  drag_window (work, 1.5);
  cw_desk_keep_picture (work->desk, "1-dragged");
  save (work);
  dragged = first_window (work)->x;
  g_assert_cmpint (dragged - began, >, 0.5 * FOOT);
  g_assert_cmpint (dragged - began, <, 2.5 * FOOT);

  cw_desk_key (work->desk, "ctrl+z");
  save (work);
  g_assert_true (cw_node_equal (work->project, demo));
}

static double
share_changed (cairo_surface_t *a, cairo_surface_t *b)
{
  const gsize size = (gsize) cairo_image_surface_get_stride (a)
                     * (gsize) cairo_image_surface_get_height (a);
  const guchar *one = cairo_image_surface_get_data (a);
  const guchar *other = cairo_image_surface_get_data (b);
  gsize n = 0;
  for (gsize i = 0; i < size; i++)
    n += one[i] != other[i];
  return (double) n / (double) size;
}

/* There and back: another place, and then the same one. */
static void
look_at_panels (Work *work)
{
  cairo_surface_t *wall, *panels, *again;
  cw_desk_move (work->desk, 2, 2);
  wall = cw_desk_look (work->desk);
  cw_desk_key (work->desk, "alt+3");
  panels = cw_desk_look (work->desk);
  cw_desk_keep_picture (work->desk, "2-panels");
  cw_desk_key (work->desk, "alt+2");
  again = cw_desk_look (work->desk);
  g_assert_cmpfloat (share_changed (wall, panels), >, 0.02);
  g_assert_cmpfloat (share_changed (wall, again), <, 0.005);
  cairo_surface_destroy (wall);
  cairo_surface_destroy (panels);
  cairo_surface_destroy (again);
}

static void
test_edits (void)
{
  g_autoptr (CwDesk) desk = cw_desk_new (1600, 1000);
  if (desk == NULL)
    return;
  g_autofree char *program = g_build_filename (
      g_getenv ("CW_BUILD_ROOT"), "src", "app", "cladwright", NULL);
  g_autoptr (GFile) file = copy_demo (desk);
  Work work = { desk, file, load (file) };
  const char *const argv[] = { program, g_file_peek_path (file), NULL };
  cw_desk_start (desk, argv, "fennel-house");
  cairo_surface_destroy (cw_desk_look (desk));
  move_window (&work);
  look_at_panels (&work);
  g_assert_true (cw_desk_program_runs (desk));
  cw_node_unref (work.project);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/whole/edits", test_edits);
  return g_test_run ();
}
