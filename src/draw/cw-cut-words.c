/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-cut-words.h"

#include "cw-i18n.h"

/* Feet, inches and fractions stay on one line. (transfer full) */
static char *
unbroken (CwLength length, const CwTextStyle *style)
{
  g_autofree char *text = cw_length_format (length, style);
  g_auto (GStrv) parts = g_strsplit (text, " ", -1);

  return g_strjoinv ("\302\240", parts);
}

char *
cw_cut_step_text (const CwCut *cut, const CwCutRules *rules,
                  const CwTextStyle *style)
{
  g_return_val_if_fail (cut != NULL && rules != NULL && style != NULL, NULL);

  g_autofree char *at = unbroken (cut->at, style);
  g_autofree char *from = unbroken (cut->from, style);
  g_autofree char *to = unbroken (cut->to, style);
  const gboolean is_through
      = cut->from <= 0
        && cut->to >= (cut->upright ? rules->height : rules->length);

  if (is_through)
    return g_strdup_printf (
        cut->upright ? _("across at %s") : _("along at %s"), at);
  /* Translators: where a saw cut lies, then where it begins and ends. */
  return g_strdup_printf (cut->upright ? _("across at %s, from %s to %s")
                                       : _("along at %s, from %s to %s"),
                          at, from, to);
}

char *
cw_cut_list_step_text (const CwCutListPanel *panel, guint index,
                       const CwTextStyle *style)
{
  g_return_val_if_fail (panel != NULL, NULL);
  g_return_val_if_fail (index < panel->whole->cuts->len, NULL);

  const guint host = g_array_index (panel->whole->hosts, guint, index);
  g_autofree char *step = cw_cut_step_text (
      &g_array_index (panel->whole->cuts, CwCut, index),
      &panel->plan->cut->rules, style);

  if (host == CW_CUT_NO_HOST)
    return g_steal_pointer (&step);
  g_autofree char *letter = cw_cut_letter (host);
  /* Translators: a piece's letter, then where a saw cut lies. */
  return g_strdup_printf (_("in the waste of %s, %s"), letter, step);
}

char *
cw_cut_shape_text (const CwPiece *piece)
{
  static const struct
  {
    CwCutFlags flag;
    const char *word;
  } words[] = {
    { CW_CUT_NOTCH, N_ ("notch") },
    { CW_CUT_RAKE, N_ ("rake") },
    { CW_CUT_CURVE, N_ ("curve") },
    { CW_CUT_HOLE, N_ ("hole") },
  };
  GString *text = NULL;
  g_return_val_if_fail (piece != NULL, NULL);

  for (guint i = 0; i < G_N_ELEMENTS (words); i++)
    {
      if (!(piece->cuts & words[i].flag))
        continue;
      if (text)
        g_string_append (text, ", ");
      else
        text = g_string_new (NULL);
      g_string_append (text, _(words[i].word));
    }
  return text ? g_string_free (text, FALSE) : NULL;
}

static char *
times (char *name, guint n)
{
  char *text;

  if (n == 1)
    return name;
  text = g_strdup_printf ("%s × %u", name, n);
  g_free (name);
  return text;
}

char *
cw_cut_piece_text (const CwCutList *list, const CwCutListPiece *piece)
{
  const CwLayout *layout;
  const CwPiece *it = cw_cut_list_piece (list, piece, &layout);
  g_return_val_if_fail (it != NULL, NULL);

  return times (cw_layout_piece_name (layout, it), piece->n);
}

char *
cw_cut_panel_text (const CwCutListPanel *panel)
{
  g_return_val_if_fail (panel != NULL, NULL);

  return times (g_strdup_printf (_("Panel %u"), panel->number), panel->n);
}

char *
cw_cut_stock_text (const CwCutListPanel *panel, const CwTextStyle *style)
{
  g_return_val_if_fail (panel != NULL && style != NULL, NULL);

  const CwCutRules *rules = &panel->plan->cut->rules;
  g_autofree char *length = cw_length_format_dimension (rules->length, style);
  g_autofree char *height = cw_length_format (rules->height, style);
  g_autofree char *kerf = cw_length_format (rules->kerf, style);

  return g_strdup_printf (_("%s × %s, kerf %s"), length, height, kerf);
}
