/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-search-words.h"

#include <math.h>

#include "cw-i18n.h"

char *
cw_search_words (guint n_panels, double share, const CwTextStyle *style)
{
  g_autofree char *panels = cw_text_style_number (style, n_panels, 0);
  g_autofree char *percent
      = cw_text_style_number (style, floor (share * 100), 0);
  /* Translators: a search at work: panels so far, share of it done. */
  return g_strdup_printf (g_dngettext (GETTEXT_PACKAGE,
                                       "Looking for fewer panels: %s so far, %s %%",
                                       "Looking for fewer panels: %s so far, %s %%",
                                       n_panels),
                          panels, percent);
}
