/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "large-job.h"

#define BIG_WALL_ITEMS 60

static void
describe_wall (GString *walls, guint index)
{
  g_string_append_printf (walls, "%u.%03ux12.%03u", 30 + index % 3,
                          37 * index % 1000, 53 * index % 1000);
  for (guint i = 0; i < 25; i++)
    g_string_append_printf (walls, " window:1.%02ux1.4@%u.%u,%u.%u",
                            10 + index % 80, 1 + 5 * (i % 5), 1 + index % 9,
                            1 + 2 * (i / 5), 1 + index % 7);
}

static void
describe_big_item (GString *walls, guint i)
{
  const double x = 2 + 9.7 * (i % 20), y = 1.1 + 11.3 * (i / 20);

  if (i % 5 < 3)
    g_string_append_printf (walls, " window:1.8x1.4@%.2f,%.2f", x, y);
  else if (i % 5 == 3)
    g_string_append_printf (walls, " arch:1.6x2.2+0.8:semicircular@%.2f,%.2f",
                            x, y);
  else
    g_string_append_printf (walls, " stub:0.15@%.2f,%.2f", x, y);
}

static void
describe_big_wall (GString *walls)
{
  g_string_append (walls, "200x36");
  for (guint i = 0; i < BIG_WALL_ITEMS; i++)
    describe_big_item (walls, i);
}

CwProject *
large_job (guint n_walls, LargeJobKind kind)
{
  g_autoptr (GString) walls = g_string_new (NULL);

  for (guint i = 0; i < n_walls; i++)
    {
      if (i > 0)
        g_string_append (walls, "; ");
      if (i == 0 && kind == LARGE_JOB_WITH_BIG_WALL)
        describe_big_wall (walls);
      else
        describe_wall (walls, i);
    }
  return case_project (walls->str, "");
}
