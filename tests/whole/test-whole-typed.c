/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The demo house drawn from nothing by the keyboard alone, from the sizes on
 * its sheet: four walls, their openings and the chimney, each with its place
 * and its size typed. What is measured of it, by the program for the command
 * line, must be what is measured of the demo.
 */
#include <gio/gio.h>
#include <math.h>

#include "cw-csv-rows.h"
#include "cw-desk.h"

/* Both are exact lengths; only sums of areas may differ in a last digit. */
#define CLOSE 1e-9

typedef struct
{
  const char *tool;         /* its key */
  const char *place, *size;
} Item;

/* "12'; 15'": corners, the rectangle's size where there is but one. */
typedef struct
{
  const char *scope;        /* of the demo */
  const char *corners[6];
  Item items[5];
} Wall;

static const Wall walls[] = {
  { "south",
    { "32' x 9'" },
    { { "i", "3'; 2' 4\"", "4' x 4' 6\"" },
      { "d", "14' 5\"; 0", "3' 2\" x 6' 10\"" },
      { "i", "20'; 3' 10\"", "2' 4\" x 3'" },
      { "i", "25'; 2' 4\"", "4' x 4' 6\"" } } },
  { "east",
    { "0; 0", "24'; 0", "24'; 9'", "12'; 15'", "0; 9'" },
    { { "a", "9' 6\"; 2' 6\"", "5' x 5' x 1'" } } },
  { "north",
    { "32' x 9'" },
    { { "i", "3'; 3' 10\"", "2' 4\" x 3'" },
      { "i", "8'; 3' 10\"", "2' 4\" x 3'" },
      { "a", "13'; 0", "6' x 8' 6\" x 3'" },
      { "i", "25'; 2' 4\"", "4' x 4' 6\"" } } },
  { "west",
    { "0; 0", "24'; 0", "24'; 9'", "12'; 15'", "0; 9'" },
    { { "i", "2' 6\"; 2' 4\"", "4' x 4' 6\"" },
      { "i", "17' 6\"; 2' 4\"", "4' x 4' 6\"" },
      { "u", "9' 6\"; 0", "5' x 15'" } } },
};

/* What the drawn shapes alone say. */
static const char *const keys[] = {
  "wall.gross",   "wall.net",     "opening.area", "opening.count",
  "opening.head", "opening.jamb", "opening.sill", "edge.base",
  "edge.eave",    "edge.rake",    "edge.outside-corner",
};

static char *
built (const char *name)
{
  return g_build_filename (g_getenv ("CW_BUILD_ROOT"), "src", name, NULL);
}

static void
enter (CwDesk *desk, const char *text)
{
  cw_desk_type (desk, text);
  cw_desk_key (desk, "Return");
}

/* Drawn and at rest: the next key finds what the last one made. */
static void
rest (CwDesk *desk)
{
  cairo_surface_destroy (cw_desk_look (desk));
}

static void
draw_item (CwDesk *desk, const Item *item)
{
  cw_desk_key (desk, item->tool);
  enter (desk, item->place);
  enter (desk, item->size);
  rest (desk);
}

static void
draw_wall (CwDesk *desk, const Wall *wall)
{
  cw_desk_key (desk, "ctrl+shift+w");
  rest (desk);
  for (guint i = 0; wall->corners[i]; i++)
    enter (desk, wall->corners[i]);
  if (wall->corners[1])
    cw_desk_key (desk, "Return");
  rest (desk);
  for (guint i = 0; i < G_N_ELEMENTS (wall->items) && wall->items[i].tool;
       i++)
    draw_item (desk, &wall->items[i]);
  cw_desk_keep_picture (desk, wall->scope);
}

static void
save (CwDesk *desk, const char *path)
{
  cw_desk_key (desk, "ctrl+s");
  cw_desk_await_window (desk, "Save the project");
  cw_desk_key (desk, "ctrl+a");
  enter (desk, path);
  cw_desk_await_file (desk, path);
}

/* The rows of the table of a project. (transfer full) */
static GPtrArray *
measure (CwDesk *desk, const char *project, const char *name)
{
  g_autofree char *program = built ("batch/cladwright-takeoff");
  g_autofree char *csv = g_build_filename (cw_desk_folder (desk), name, NULL);
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;
  g_autoptr (GSubprocess) takeoff
      = g_subprocess_new (G_SUBPROCESS_FLAGS_NONE, &error, program, "--csv",
                          csv, project, NULL);
  g_assert_no_error (error);
  g_subprocess_wait_check (takeoff, NULL, &error);
  g_assert_no_error (error);
  g_file_get_contents (csv, &text, NULL, &error);
  g_assert_no_error (error);
  return cw_csv_rows (text);
}

static double
amount (GPtrArray *rows, const char *key, const char *scope)
{
  GPtrArray *row = cw_csv_find (rows, key, scope);
  return row ? g_ascii_strtod (row->pdata[2], NULL) : 0;
}

static guint
compare (GPtrArray *drawn, GPtrArray *demo)
{
  guint n = 0;
  for (guint i = 0; i < G_N_ELEMENTS (walls); i++)
    for (guint j = 0; j < G_N_ELEMENTS (keys); j++)
      {
        g_autofree char *scope = g_strdup_printf ("e%u", i + 1);
        const double ours = amount (drawn, keys[j], scope);
        const double theirs = amount (demo, keys[j], walls[i].scope);
        if (!(fabs (ours - theirs) <= CLOSE * fabs (theirs)))
          g_error ("%s of %s is %.9g, of the demo %.9g", keys[j],
                   walls[i].scope, ours, theirs);
        n += theirs > 0;
      }
  return n;
}

static void
test_typed (void)
{
  g_autoptr (CwDesk) desk = cw_desk_new (1600, 1000);
  if (desk == NULL)
    return;
  g_autofree char *program = built ("app/cladwright");
  g_autofree char *path
      = g_build_filename (cw_desk_folder (desk), "typed.cladwright", NULL);
  g_autofree char *demo
      = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "data", "demo",
                          "fennel-house.cladwright", NULL);
  cw_desk_start (desk, (const char *const[]) { program, NULL }, "Cladwright");
  rest (desk);
  for (guint i = 0; i < G_N_ELEMENTS (walls); i++)
    draw_wall (desk, &walls[i]);
  save (desk, path);
  g_assert_true (cw_desk_program_runs (desk));
  g_autoptr (GPtrArray) drawn = measure (desk, path, "drawn.csv");
  g_autoptr (GPtrArray) theirs = measure (desk, demo, "demo.csv");
  /* All but what a wall has none of. */
  g_assert_cmpuint (compare (drawn, theirs), >, 30);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/whole/typed", test_typed);
  return g_test_run ();
}
