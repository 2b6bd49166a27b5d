/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Text keeps a contrast of 4.5 : 1 on what it stands on, in light and dark:
 * WCAG 2.1, success criterion 1.4.3 and its definition of relative luminance
 * (published).
 */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "cw-look.h"

typedef struct
{
  const char *file;
  double least;       /* 7 : 1 is 1.4.6, for more contrast */
} Look;

typedef struct
{
  const char *text, *ground;
} Pair;

static const Pair pairs[] = {
  { "cw_ink", "cw_paper" },        { "cw_ink", "cw_desk" },
  { "cw_pencil", "cw_paper" },     { "cw_pencil", "cw_desk" },
  { "cw_accent", "cw_paper" },     { "cw_accent", "cw_desk" },
  { "cw_on_accent", "cw_accent" }, { "cw_trouble", "cw_paper" },
  { "cw_trouble", "cw_desk" },
};

static double
linear (guint byte)
{
  double share = byte / 255.0;
  return share <= 0.03928 ? share / 12.92 : pow ((share + 0.055) / 1.055, 2.4);
}

static double
luminance_of (const char *css, const char *name)
{
  guint red, green, blue;
  g_autofree char *start = g_strdup_printf ("@define-color %s #", name);
  const char *found = strstr (css, start);
  g_assert_nonnull (found);
  g_assert_cmpint (sscanf (found + strlen (start), "%2x%2x%2x", &red, &green,
                           &blue),
                   ==, 3);
  return 0.2126 * linear (red) + 0.7152 * linear (green)
         + 0.0722 * linear (blue);
}

static double
contrast (double a, double b)
{
  return (MAX (a, b) + 0.05) / (MIN (a, b) + 0.05);
}

static void
readable (gconstpointer data)
{
  const Look *look = data;
  g_autofree char *path
      = g_strconcat (CW_RESOURCE_PATH, "/", look->file, NULL);
  g_autoptr (GBytes) bytes = g_resources_lookup_data (
      path, G_RESOURCE_LOOKUP_FLAGS_NONE, NULL);
  g_assert_nonnull (bytes);
  g_autofree char *css = g_strndup (g_bytes_get_data (bytes, NULL),
                                    g_bytes_get_size (bytes));
  for (gsize i = 0; i < G_N_ELEMENTS (pairs); i++)
    {
      double ratio = contrast (luminance_of (css, pairs[i].text),
                               luminance_of (css, pairs[i].ground));
      g_test_message ("%s on %s: %.1f", pairs[i].text, pairs[i].ground,
                      ratio);
      g_assert_cmpfloat (ratio, >=, look->least);
    }
}

/* Black on white is 21 : 1 (the same definition). */
static void
black_on_white (void)
{
  const char *css = "@define-color a #000000; @define-color b #ffffff;";
  g_assert_cmpfloat_with_epsilon (
      contrast (luminance_of (css, "a"), luminance_of (css, "b")), 21, 1e-9);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  cw_app_register_resources ();
  g_test_add_func ("/colours/black-on-white", black_on_white);
  static const Look looks[] = {
    { "colours-light.css", 4.5 },
    { "colours-dark.css", 4.5 },
    { "colours-contrast-light.css", 7 },
    { "colours-contrast-dark.css", 7 },
  };
  for (gsize i = 0; i < G_N_ELEMENTS (looks); i++)
    {
      g_autofree char *name = g_strconcat ("/colours/", looks[i].file, NULL);
      g_test_add_data_func (name, &looks[i], readable);
    }
  return g_test_run ();
}
