/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "cw-batch.h"
#include "cw-file-bytes.h"
#include "cw-table-checks.h"
#include "cw-table-csv.h"
#include "cw-takeoff-pdf.h"

static gboolean
write_csv (const CwTakeoff *takeoff, const char *path)
{
  g_autofree char *csv = cw_takeoff_to_csv (takeoff);
  return cw_batch_write (path, csv, strlen (csv));
}

static gboolean
write_checks (const GPtrArray *checks, const char *path)
{
  g_autofree char *csv = cw_checks_to_csv (checks);
  return cw_batch_write (path, csv, strlen (csv));
}

static gboolean
write_pdf (const CwTakeoff *takeoff, const char *project, const char *path)
{
  g_autofree char *name = g_path_get_basename (project);
  g_autofree char *shown = g_filename_display_name (name);
  g_autoptr (GError) error = NULL;
  CwTakeoffPdfOptions options;
  cw_takeoff_pdf_options_init (&options, takeoff->project);
  options.file_name = shown;
  g_autoptr (GBytes) pdf = cw_takeoff_to_pdf (takeoff, &options, NULL, &error);
  if (pdf == NULL)
    {
      cw_batch_print_error (path, error);
      return FALSE;
    }
  gsize size;
  const char *data = g_bytes_get_data (pdf, &size);
  return cw_batch_write (path, data, size);
}

/* Returns: whether there was none */
static gboolean
print_all (const char *path, GPtrArray *errors)
{
  for (guint i = 0; i < errors->len; i++)
    cw_batch_print_error (path, errors->pdata[i]);
  return errors->len == 0;
}

static CwProject *
read_project (const char *path, GBytes **bytes)
{
  g_autoptr (GFile) file = g_file_new_for_commandline_arg (path);
  g_autoptr (GError) error = NULL;
  *bytes = cw_file_bytes (file, NULL, &error);
  CwProject *project = *bytes ? cw_project_from_xml (*bytes, &error) : NULL;
  if (project == NULL)
    cw_batch_print_error (path, error);
  return project;
}

static gboolean
write_outputs (const CwTakeoff *takeoff, const GPtrArray *checks,
               const char *path, const CwBatchOutputs *outputs)
{
  gboolean is_done = TRUE;
  if (outputs->csv)
    is_done = write_csv (takeoff, outputs->csv);
  if (outputs->pdf)
    is_done = write_pdf (takeoff, path, outputs->pdf) && is_done;
  if (outputs->checks)
    is_done = write_checks (checks, outputs->checks) && is_done;
  return is_done;
}

/* (transfer full) */
static GPtrArray *
find_checks (const CwTakeoff *takeoff)
{
  const CwTextStyle style
      = cw_text_style_plain ((CwUnits)takeoff->project->units);
  return cw_checks_find (takeoff, &style, NULL);
}

gboolean
cw_batch_project (const char *path, CwCutEffort effort,
                  const CwBatchOutputs *outputs)
{
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (CwProject) project = read_project (path, &bytes);
  if (project == NULL)
    return FALSE;
  g_autoptr (GHashTable) lines = cw_project_xml_lines (bytes);
  g_autoptr (GPtrArray) faults = cw_batch_faults (project, lines);
  if (!print_all (path, faults))
    return FALSE;

  g_autoptr (CwTakeoff) quick = cw_takeoff_new (project, NULL, NULL);
  g_autoptr (CwTakeoff) takeoff
      = cw_takeoff_improve (quick, effort, NULL);
  g_autoptr (GPtrArray) checks = find_checks (takeoff);
  g_autoptr (GPtrArray) warnings = cw_batch_warnings (checks, lines);
  print_all (path, warnings);
  return write_outputs (takeoff, checks, path, outputs);
}
