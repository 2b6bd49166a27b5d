/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-typed-fields.h"

#include <string.h>

#include "cw-i18n.h"
#include "cw-typed.h"

char *
cw_typed_field_text (const CwTypedField *field, const CwTextStyle *style)
{
  g_autofree char *number = NULL;

  g_return_val_if_fail (field != NULL && style != NULL, NULL);

  if (!field->has_now)
    return g_strdup ("");
  if (field->kind != CW_TYPED_SLOPE)
    return cw_length_format (field->now, style);
  number = cw_text_style_number (style, field->degrees, 2);
  return g_strconcat (number, "°", NULL);
}

gboolean
cw_typed_field_is_blank (const char *text)
{
  return text == NULL || text[strspn (text, " ")] == '\0';
}

/* The sign at the beginning of @text, or 0; @rest: what is after it. */
static int
take_sign (const char *text, const char **rest)
{
  static const struct
  {
    const char *text;
    int sign;
  } signs[] = { { "+", 1 }, { "-", -1 }, { "−", -1 } };

  text += strspn (text, " ");
  *rest = text;
  for (guint i = 0; i < G_N_ELEMENTS (signs); i++)
    if (g_str_has_prefix (text, signs[i].text))
      {
        *rest = text + strlen (signs[i].text);
        return signs[i].sign;
      }
  return 0;
}

/* The same error, @by bytes further along (or back). */
static void
shift_error (GError **error, gssize by)
{
  g_autoptr (GError) part = NULL;
  gssize at;

  if (error == NULL || *error == NULL)
    return;
  part = g_steal_pointer (error);
  at = MAX ((gssize) cw_text_error_offset (part) + by, 0);
  cw_text_error_set (error, (CwTextError) part->code, (gsize) at, "%s",
                     part->message);
}

gboolean
cw_typed_field_offset (const CwTypedField *field, const char *text,
                       const CwTextStyle *style, CwLength *offset,
                       GError **error)
{
  const char *rest;
  int sign;

  g_return_val_if_fail (field && style && offset, FALSE);

  *offset = field->has_now ? field->now : 0;
  if (cw_typed_field_is_blank (text))
    return TRUE;
  sign = take_sign (text, &rest);
  if (sign == 0)
    sign = *offset < 0 ? -1 : 1;
  if (!cw_length_parse (rest, style, offset, error))
    {
      shift_error (error, rest - text);
      return FALSE;
    }
  *offset *= sign;
  return TRUE;
}

/* "26.57" and "6/12" are plain where nothing but a slope is meant. */
static void
append_slope (GString *text, const char *typed)
{
  g_autofree char *slope = g_strstrip (g_strdup (typed));

  g_strdelimit (slope, "/", ':');
  g_string_append (text, slope);
  if (strchr (slope, ':') == NULL && strstr (slope, "°") == NULL
      && strstr (slope, "deg") == NULL)
    g_string_append (text, "°");
}

/* Exactly what the pointer gives. */
static gboolean
append_now (GString *text, const CwTypedField *field)
{
  if (!field->has_now || field->now <= 0)
    return FALSE;
  g_string_append_printf (
      text, "%" G_GINT64_FORMAT ".%06d mm", field->now / CW_NM_PER_MM,
      (int) (field->now % CW_NM_PER_MM));
  return TRUE;
}

static gboolean
append_part (GString *text, const CwTypedField *field, const char *typed)
{
  if (field->kind == CW_TYPED_SLOPE)
    append_slope (text, typed);
  else if (!cw_typed_field_is_blank (typed))
    g_string_append (text, typed);
  else
    return append_now (text, field);
  return TRUE;
}

static guint
count_typed (const char *const *texts, guint n)
{
  while (n > 0 && cw_typed_field_is_blank (texts[n - 1]))
    n--;
  return n;
}

gboolean
cw_typed_fields_join (const CwTypedField *fields, const char *const *texts,
                      guint n, CwTypedJoint *joint, guint *wrong,
                      GError **error)
{
  GString *text = g_string_new (NULL);
  guint typed = count_typed (texts, n);
  gboolean joined = TRUE;

  *joint = (CwTypedJoint) { NULL, { 0 } };
  for (guint i = 0; i < n && joined; i++)
    {
      gboolean slope = fields[i].kind == CW_TYPED_SLOPE;

      joint->begins[i] = text->len;
      if (i >= typed)
        continue;
      /* A slope may stand alone. */
      if (!slope && i + 1 < n && fields[i + 1].kind == CW_TYPED_SLOPE
          && cw_typed_field_is_blank (texts[i]))
        continue;
      if (text->len > 0)
        g_string_append (text, slope ? " " : "x");
      joint->begins[i] = text->len;
      joined = append_part (text, &fields[i], texts[i]);
      *wrong = i;
    }
  joint->text = g_string_free (text, FALSE);
  if (!joined)
    cw_text_error_set (error, CW_TEXT_ERROR_UNEXPECTED, 0, "%s",
                       _ ("Type this one, too"));
  return joined;
}

guint
cw_typed_joint_find (const CwTypedJoint *joint, const char *const *texts,
                     guint n, GError **error)
{
  gsize at = error && *error ? cw_text_error_offset (*error) : 0;
  guint field = 0;

  for (guint i = 1; i < n; i++)
    if (!cw_typed_field_is_blank (texts[i]) && joint->begins[i] <= at)
      field = i;
  shift_error (error, -(gssize) joint->begins[field]);
  return field;
}
