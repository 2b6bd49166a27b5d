/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-typed.h"

#include <string.h>

#include "cw-i18n.h"

static const char *const signs[] = { "x", "X", "*", "×" };

/* The length in bytes of a multiplication sign at @at; 0: none there. */
static gsize
sign_length (const char *at)
{
  for (guint i = 0; i < G_N_ELEMENTS (signs); i++)
    if (g_str_has_prefix (at, signs[i]))
      return strlen (signs[i]);
  return 0;
}

static const char *
next_sign (const char *text)
{
  while (*text && sign_length (text) == 0)
    text++;
  return text;
}

/* Says where in the whole text, not in the part, the trouble is. */
static void
move_error (GError **error, gsize by)
{
  g_autoptr (GError) part = NULL;

  if (error == NULL || *error == NULL || by == 0)
    return;
  part = g_steal_pointer (error);
  cw_text_error_set (error, (CwTextError) part->code,
                     by + cw_text_error_offset (part), "%s", part->message);
}

static gboolean
read_part (const char *text, const char *from, const char *to,
           const CwTextStyle *style, CwLength *length, GError **error)
{
  g_autofree char *part = g_strndup (from, (gsize) (to - from));

  if (!cw_length_parse (part, style, length, error))
    {
      move_error (error, (gsize) (from - text));
      return FALSE;
    }
  if (*length > 0)
    return TRUE;
  cw_text_error_set (error, CW_TEXT_ERROR_RANGE, (gsize) (from - text),
                     _ ("A length must be more than 0"));
  return FALSE;
}

static guint
refuse_count (const char *text, guint least, guint most, GError **error)
{
  const char *sentence
      = most == 1    ? _ ("Type one length")
        : least == 1 ? _ ("Type one length, or sizes with an x between them")
        : most == 2  ? _ ("Type width x height")
                     : _ ("Type width x height, or width x height x rise");

  cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, strlen (text), "%s",
                     sentence);
  return 0;
}

guint
cw_typed_lengths (const char *text, const CwTextStyle *style, guint least,
                  guint most, CwLength lengths[CW_TYPED_MOST], GError **error)
{
  const char *at = text;
  guint n = 0;

  g_return_val_if_fail (text && style && lengths, 0);
  g_return_val_if_fail (least <= most && most <= CW_TYPED_MOST, 0);

  for (;; at += sign_length (at))
    {
      const char *end = next_sign (at);

      if (n == most)
        return refuse_count (text, least, most, error);
      if (!read_part (text, at, end, style, &lengths[n++], error))
        return 0;
      at = end;
      if (*at == '\0')
        break;
    }
  return n >= least ? n : refuse_count (text, least, most, error);
}
