/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is to be looked at, and what was waived with the reasons for it: the
 * list that the window shows.
 */
#include <string.h>

#include "cw-checks.h"
#include "cw-i18n.h"
#include "cw-takeoff-papers.h"

void
cw_papers_add_note_heading (const CwPapers *papers, const char *text)
{
  cw_page_add_space (papers->pages, 1.5);
  cw_page_add_heading (papers->pages, CW_TYPE_SUBHEADING, text, 30);
}

static const char *
elevation_name (const CwPapers *papers, const char *id)
{
  const CwElevation *elevation
      = cw_project_elevation (papers->takeoff->project, id);

  return elevation ? cw_papers_name (elevation) : id;
}

/* "South, Openings overlap: W1 and W2 share …", with the inputs.
 * (transfer full) */
static char *
check_text (const CwPapers *papers, const CwCheck *check)
{
  g_autofree char *words
      = check->detail
            ? g_strdup_printf ("%s %s", check->text, check->detail)
            : g_strdup (check->text);

  return check->elevation_id
             ? g_strdup_printf (C_ ("elevation, check: sentence",
                                    "%s, %s: %s"),
                                elevation_name (papers, check->elevation_id),
                                _ (check->type->title), words)
             : g_strdup_printf (C_ ("check: sentence", "%s: %s"),
                                _ (check->type->title), words);
}

/* (transfer full) */
static char *
waiver_text (const CwWaiver *waiver, gboolean is_changed)
{
  GString *text = g_string_new (NULL);

  g_string_append_printf (text, _ ("Waived: %s"), waiver->reason);
  if (*waiver->by || *waiver->date)
    g_string_append_printf (text, " (%s%s%s)", waiver->by,
                            *waiver->by && *waiver->date ? ", " : "",
                            waiver->date);
  if (is_changed)
    g_string_append (text, _ (" – the figures have changed since."));
  return g_string_free (text, FALSE);
}

static void
add_check (const CwPapers *papers, const CwCheck *check)
{
  g_autofree char *text = check_text (papers, check);
  g_autofree char *waiver
      = check->waiver ? waiver_text (check->waiver, check->is_changed) : NULL;
  g_autofree char *whole = g_strdup_printf (
      "%s %s", text, waiver ? waiver : _ (check->type->remedy));

  cw_page_add_item (
      papers->pages,
      g_dpgettext2 (GETTEXT_PACKAGE, "check letter",
                    cw_check_severity_letter (check->type->severity)),
      whole);
}

static void
add_idle_waiver (const CwPapers *papers, const CwWaiver *waiver)
{
  const CwCheckType *type = cw_check_type (waiver->check);
  g_autofree char *why = waiver_text (waiver, FALSE);
  g_autofree char *text = g_strdup_printf (
      _ ("%s: no longer so. %s"), type ? _ (type->title) : waiver->check, why);

  cw_page_add_item (papers->pages, "–", text);
}

static void
add_all (const CwPapers *papers, gboolean waived)
{
  for (guint i = 0; i < papers->checks->len; i++)
    {
      const CwCheck *check = papers->checks->pdata[i];

      if ((check->waiver != NULL) == waived)
        add_check (papers, check);
    }
}

static guint
n_waived (const GPtrArray *checks)
{
  guint n = 0;

  for (guint i = 0; i < checks->len; i++)
    n += ((const CwCheck *) checks->pdata[i])->waiver != NULL;
  return n;
}

static void
add_waived (const CwPapers *papers)
{
  g_autoptr (GPtrArray) idle
      = cw_waivers_idle (papers->takeoff->project, papers->checks);

  if (n_waived (papers->checks) + idle->len == 0)
    return;
  cw_papers_add_note_heading (papers, _ ("Waived, with the reasons"));
  add_all (papers, TRUE);
  for (guint i = 0; i < idle->len; i++)
    add_idle_waiver (papers, idle->pdata[i]);
}

void
cw_papers_add_warnings (const CwPapers *papers)
{
  cw_papers_add_note_heading (papers, _ ("To be looked at"));
  if (papers->takeoff->walls->len == 0)
    cw_page_add_text (papers->pages, CW_TYPE_BODY,
                      _ ("The project has no elevation yet."));
  else
    cw_page_add_text (papers->pages, CW_TYPE_SMALL,
                      _ ("E: error, figures are wrong or lacking. W: warning, "
                        "somebody should decide. N: note. What is not listed "
                        "was not looked at; it is not said to be safe."));
  cw_page_add_space (papers->pages, 1 / 3.0);
  add_all (papers, FALSE);
  add_waived (papers);
}
