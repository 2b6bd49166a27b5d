/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * cladwright-takeoff [--pdf F] [--csv F] [--checks F] [--effort live|long]
 * PROJECT…
 */
#include <locale.h>
#include <stdio.h>

#include "cw-batch.h"
#include "cw-i18n.h"

enum
{
  EXIT_DONE = 0,
  EXIT_FAULTY = 1, /* a project has an error, or a result cannot be written */
  EXIT_USAGE = 2,
};

typedef struct
{
  char *pdf, *csv, *checks, *effort;
  gboolean version;
  char **projects;
} Arguments;

static const char description[]
    = N_ ("Works out the takeoff of each project, without a display. F may be "
          "a folder, which\ngets a file named as the project; with several "
          "projects it must be one. F may be -\nfor standard output. Without "
          "--pdf, --csv and --checks the table of one project\ngoes to "
          "standard output, and several projects are only checked.\n\nEnds with 0; with "
          "1 when a project has an error or a result cannot be written,\n"
          "which is told as FILE:LINE: sentence on standard error; with 2 "
          "when it was called\nthe wrong way. Nothing is written for a project "
          "with an error. Warnings do not\nchange how it ends.\n\nQuantities are "
          "only as good as what was traced. Local codes, the makers'\n"
          "instructions and the designer of record decide.");

static GOptionContext *
make_context (Arguments *arguments)
{
  const GOptionEntry entries[] = {
    { "pdf", 0, 0, G_OPTION_ARG_FILENAME, &arguments->pdf,
      N_ ("Write the takeoff as a PDF"), N_ ("F") },
    { "csv", 0, 0, G_OPTION_ARG_FILENAME, &arguments->csv,
      N_ ("Write the quantities as a table (RFC 4180)"), N_ ("F") },
    { "checks", 0, 0, G_OPTION_ARG_FILENAME, &arguments->checks,
      N_ ("Write what is to be looked at as a table, with what was waived"),
      N_ ("F") },
    { "effort", 0, 0, G_OPTION_ARG_STRING, &arguments->effort,
      N_ ("How long to look for fewer panels: live or long (default: long)"),
      N_ ("E") },
    { "version", 0, 0, G_OPTION_ARG_NONE, &arguments->version,
      N_ ("Print the version"), NULL },
    { G_OPTION_REMAINING, 0, 0, G_OPTION_ARG_FILENAME_ARRAY,
      &arguments->projects, NULL, NULL },
    { NULL },
  };
  GOptionContext *context = g_option_context_new (_ ("PROJECT…"));
  g_option_context_set_translation_domain (context, GETTEXT_PACKAGE);
  g_option_context_add_main_entries (context, entries, GETTEXT_PACKAGE);
  g_option_context_set_description (context, _ (description));
  return context;
}

static int
refuse_usage (const char *sentence)
{
  g_printerr (_ ("cladwright-takeoff: %s\n"
                 "Usage: cladwright-takeoff [--pdf F] [--csv F] [--checks F] "
                 "[--effort live|long] PROJECT…\n"),
              sentence);
  return EXIT_USAGE;
}

static int
run_projects (const CwBatchWishes *wishes)
{
  g_autofree char *why = NULL;
  CwBatchOutputs *outputs = cw_batch_outputs (wishes, &why);
  if (outputs == NULL)
    return refuse_usage (why);
  int result = EXIT_DONE;
  guint n = 0;
  for (; wishes->projects[n]; n++)
    if (!cw_batch_project (wishes->projects[n], wishes->effort,
                           &outputs[n]))
      result = EXIT_FAULTY;
  cw_batch_outputs_free (outputs, n);
  return result;
}

static gboolean
read_effort (const char *text, CwCutEffort *effort)
{
  const gboolean is_live = g_strcmp0 (text, "live") == 0;
  *effort = is_live ? CW_CUT_EFFORT_LIVE : CW_CUT_EFFORT_LONG;
  return is_live || text == NULL || g_str_equal (text, "long");
}

static int
run (const Arguments *arguments)
{
  if (arguments->version)
    {
      g_print ("cladwright-takeoff %s\n", CW_VERSION);
      return EXIT_DONE;
    }
  if (arguments->projects == NULL)
    return refuse_usage (_ ("No project is named"));
  CwCutEffort effort;
  if (!read_effort (arguments->effort, &effort))
    return refuse_usage (_ ("--effort is live or long"));
  CwBatchWishes wishes = { arguments->pdf, arguments->csv, arguments->checks,
                           effort,
                           (const char *const *)arguments->projects };
  return run_projects (&wishes);
}

int
main (int argc, char *argv[])
{
  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, CW_LOCALE_DIR);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");

  Arguments arguments = { 0 };
  g_autoptr (GOptionContext) context = make_context (&arguments);
  g_autoptr (GError) error = NULL;
  int result = g_option_context_parse (context, &argc, &argv, &error)
                   ? run (&arguments)
                   : refuse_usage (error->message);
  g_free (arguments.pdf);
  g_free (arguments.csv);
  g_free (arguments.checks);
  g_free (arguments.effort);
  g_strfreev (arguments.projects);
  return result;
}
