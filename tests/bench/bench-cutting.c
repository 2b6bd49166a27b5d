/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plans the published instances of two-dimensional bin packing (Berkey and
 * Wang 1987, Martello and Vigo 1998) with straight cuts and no kerf.
 *
 *   bench-cutting [--turn] [--effort live|long] [--each] FILE…
 *
 * A file holds the panel's width and height, then instances: a count and that
 * many lines of width and height. Prints for each file the panels used, the
 * proven bound and the seconds of the processor; last "all PANELS SECONDS".
 */
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#include "cut-plan-checker.h"
#include "cw-cut-plan.h"

typedef struct
{
  guint n_panels, least;
  double seconds, longest;   /* of the processor's time */
} Score;

/* What this program had of the processor, whatever else runs beside it. */
static double
seconds_spent (void)
{
  return (double) clock () / CLOCKS_PER_SEC;
}

static gboolean
read_length (char **text, CwLength *value)
{
  char *end;
  *value = g_ascii_strtoll (*text, &end, 10);
  const gboolean found = end != *text;
  *text = end;
  return found;
}

static gboolean
read_blanks (char **text, GArray *blanks)
{
  CwLength n;
  g_array_set_size (blanks, 0);
  if (!read_length (text, &n))
    return FALSE;
  for (CwLength i = 0; i < n; i++)
    {
      CwCutBlank blank = { 0 };
      if (!read_length (text, &blank.width)
          || !read_length (text, &blank.height))
        return FALSE;
      g_array_append_val (blanks, blank);
    }
  return TRUE;
}

static gboolean each;

static void
plan_instance (GArray *blanks, const CwCutRules *rules, CwCutEffort effort,
               Score *score)
{
  const double start = seconds_spent ();
  g_autoptr (CwCutPlan) plan
      = cw_cut_plan_new (&g_array_index (blanks, CwCutBlank, 0), blanks->len,
                         rules, effort, NULL, NULL, NULL);
  const double seconds = seconds_spent () - start;

  check_cut_plan (plan, &g_array_index (blanks, CwCutBlank, 0), blanks->len);
  if (each && plan->panels->len > plan->least)
    printf ("  of %u: %u least %u %.2f\n", blanks->len, plan->panels->len,
            plan->least, seconds);
  score->n_panels += plan->panels->len;
  score->least += plan->least;
  score->seconds += seconds;
  score->longest = MAX (score->longest, seconds);
}

static gboolean
plan_file (const char *file, gboolean turn, CwCutEffort effort, Score *all)
{
  g_autofree char *text = NULL;
  g_autoptr (GError) error = NULL;
  if (!g_file_get_contents (file, &text, NULL, &error))
    {
      g_printerr ("%s\n", error->message);
      return FALSE;
    }

  char *at = text;
  CwCutRules rules = { .turn = turn };
  Score score = { 0 };
  g_autoptr (GArray) blanks
      = g_array_new (FALSE, FALSE, sizeof (CwCutBlank));
  if (!read_length (&at, &rules.length) || !read_length (&at, &rules.height))
    return FALSE;
  while (read_blanks (&at, blanks))
    plan_instance (blanks, &rules, effort, &score);

  g_autofree char *name = g_path_get_basename (file);
  printf ("%s %u least %u %.2f longest %.2f\n", name, score.n_panels,
          score.least, score.seconds, score.longest);
  fflush (stdout);
  all->n_panels += score.n_panels;
  all->seconds += score.seconds;
  return TRUE;
}

int
main (int argc, char *argv[])
{
  gboolean turn = FALSE;
  g_autofree char *effort_name = NULL;
  g_auto (GStrv) files = NULL;
  const GOptionEntry entries[] = {
    { "turn", 0, 0, G_OPTION_ARG_NONE, &turn, "Blanks may be turned", NULL },
    { "effort", 0, 0, G_OPTION_ARG_STRING, &effort_name, "How long to look",
      "live|long" },
    { "each", 0, 0, G_OPTION_ARG_NONE, &each,
      "Tell the instances whose bound is not met", NULL },
    { G_OPTION_REMAINING, 0, 0, G_OPTION_ARG_FILENAME_ARRAY, &files, NULL,
      "FILE…" },
    { NULL }
  };
  g_autoptr (GOptionContext) context = g_option_context_new (NULL);
  g_autoptr (GError) error = NULL;
  g_option_context_add_main_entries (context, entries, NULL);
  if (!g_option_context_parse (context, &argc, &argv, &error) || !files)
    {
      g_printerr ("%s\n", error ? error->message : "Name a file.");
      return 2;
    }

  Score all = { 0 };
  const CwCutEffort effort = g_strcmp0 (effort_name, "long") == 0
                                 ? CW_CUT_EFFORT_LONG
                                 : CW_CUT_EFFORT_LIVE;
  for (char **file = files; *file; file++)
    if (!plan_file (*file, turn, effort, &all))
      return 1;
  printf ("all %u %.2f\n", all.n_panels, all.seconds);
  return 0;
}
