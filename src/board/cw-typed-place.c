/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-typed-place.h"

#include <string.h>

#include "cw-i18n.h"

#define SIGN ';'

gboolean
cw_typed_is_place (const char *text)
{
  g_return_val_if_fail (text != NULL, FALSE);

  return strchr (text, SIGN) != NULL;
}

/* The error points into the whole text. */
static gboolean
read_part (const char *part, gsize from, const CwTextStyle *style,
           CwLength *length, GError **error)
{
  g_autoptr (GError) trouble = NULL;

  if (cw_length_parse (part, style, length, &trouble))
    return TRUE;
  cw_text_error_set (error, (CwTextError) trouble->code,
                     from + cw_text_error_offset (trouble), "%s",
                     trouble->message);
  return FALSE;
}

gboolean
cw_typed_place (const char *text, const CwTextStyle *style, CwPoint *place,
                GError **error)
{
  const char *sign = strchr (text, SIGN);
  g_autofree char *across = NULL;
  CwLength x, y;

  g_return_val_if_fail (sign != NULL, FALSE);

  if (strchr (sign + 1, SIGN))
    {
      cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED,
                         (gsize) (strchr (sign + 1, SIGN) - text), "%s",
                         _ ("A place has two parts: across; up"));
      return FALSE;
    }
  across = g_strndup (text, (gsize) (sign - text));
  if (!read_part (across, 0, style, &x, error)
      || !read_part (sign + 1, (gsize) (sign + 1 - text), style, &y, error))
    return FALSE;
  *place = cw_point (x, y);
  return TRUE;
}
