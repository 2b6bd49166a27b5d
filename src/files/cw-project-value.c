/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-project-value.h"

#include <string.h>

#include "cw-decimal.h"
#include "cw-i18n.h"
#include "cw-length.h"

/* An id is one word, so that it can stand in a list and in a table. */
static gboolean
is_word (const char *text)
{
  if (*text == '\0')
    return FALSE;
  for (const char *at = text; *at != '\0'; at = g_utf8_next_char (at))
    if (g_unichar_isspace (g_utf8_get_char (at)))
      return FALSE;
  return TRUE;
}

static char *
read_word (CwNode *node, guint index, const char *text, gboolean may_be_empty)
{
  if (!is_word (text) && !(may_be_empty && *text == '\0'))
    return g_strdup (_ ("an id, one word without blanks, is expected"));
  cw_node_set_text (node, index, text);
  return NULL;
}

char *
cw_project_choices_text (const CwField *field)
{
  GString *text = g_string_new (NULL);
  for (const CwChoice *choice = field->choices; choice->name; choice++)
    {
      if (choice > field->choices)
        g_string_append (text, (choice + 1)->name ? ", " : _ (" or "));
      g_string_append (text, choice->name);
    }
  return g_string_free (text, FALSE);
}

static char *
read_choice (CwNode *node, guint index, const CwField *field, const char *text)
{
  const CwChoice *choice = cw_field_choice_by_name (field, text);
  if (choice == NULL)
    {
      g_autofree char *choices = cw_project_choices_text (field);
      return g_strdup_printf (_ ("%s is expected"), choices);
    }
  cw_node_set (node, index, choice->value);
  return NULL;
}

static char *
read_yes_no (CwNode *node, guint index, const char *text)
{
  gboolean is_yes = g_str_equal (text, "yes");
  if (!is_yes && !g_str_equal (text, "no"))
    return g_strdup (_ ("yes or no is expected"));
  cw_node_set (node, index, is_yes);
  return NULL;
}

static gboolean
read_count (const char *text, gint64 *count)
{
  gsize n_digits = strspn (text, "0123456789");
  if (n_digits == 0 || text[n_digits] != '\0')
    return FALSE;
  guint64 value = g_ascii_strtoull (text, NULL, 10);
  *count = (gint64)MIN (value, (guint64)CW_FIELD_COUNT_MOST + 1);
  return TRUE;
}

static const char *
number_wanted (CwFieldKind kind)
{
  switch (kind)
    {
    case CW_FIELD_LENGTH:
      return _ ("a length in millimetres is expected, at most six decimals "
                "after a point, such as 396.875");
    case CW_FIELD_COUNT:
      return _ ("a whole number is expected");
    default:
      return _ ("a number is expected, at most six decimals after a point, "
                "such as 5.5");
    }
}

static gboolean
number_from_text (CwFieldKind kind, const char *text, gint64 *value)
{
  switch (kind)
    {
    case CW_FIELD_LENGTH:
      return cw_length_from_mm_text (text, value);
    case CW_FIELD_COUNT:
      return read_count (text, value);
    default:
      return cw_decimal_from_text (text, value);
    }
}

static char *
read_number (CwNode *node, guint index, const CwField *field, const char *text)
{
  gint64 value, least, most;
  if (!number_from_text (field->kind, text, &value))
    return g_strdup (number_wanted (field->kind));

  cw_field_bounds (field, &least, &most);
  if (value < least || value > most)
    {
      g_autofree char *low = cw_project_number_text (field, least);
      g_autofree char *high = cw_project_number_text (field, most);
      if (least == most)
        return g_strdup_printf (_ ("%s is expected"), low);
      return g_strdup_printf (_ ("a number from %s to %s is expected"), low,
                              high);
    }
  cw_node_set (node, index, value);
  return NULL;
}

char *
cw_project_value_read (CwNode *node, guint index, const char *text)
{
  const CwField *field = &node->type->fields[index];
  switch (field->kind)
    {
    case CW_FIELD_TEXT:
      cw_node_set_text (node, index, text);
      return NULL;
    case CW_FIELD_ID:
      return read_word (node, index, text, FALSE);
    case CW_FIELD_REFERENCE:
      return read_word (node, index, text, TRUE);
    case CW_FIELD_CHOICE:
      return read_choice (node, index, field, text);
    case CW_FIELD_YES_NO:
      return read_yes_no (node, index, text);
    case CW_FIELD_LENGTH:
    case CW_FIELD_DECIMAL:
    case CW_FIELD_COUNT:
      break;
    }
  return read_number (node, index, field, text);
}

char *
cw_project_number_text (const CwField *field, gint64 value)
{
  switch (field->kind)
    {
    case CW_FIELD_CHOICE:
      {
        const CwChoice *choice = cw_field_choice_by_value (field, value);
        g_return_val_if_fail (choice != NULL, g_strdup (""));
        return g_strdup (choice->name);
      }
    case CW_FIELD_YES_NO:
      return g_strdup (value ? "yes" : "no");
    case CW_FIELD_COUNT:
      return g_strdup_printf ("%" G_GINT64_FORMAT, value);
    default:
      /* Nanometres and millionths are written alike. */
      return cw_decimal_to_text (value);
    }
}

char *
cw_project_value_write (const CwNode *node, guint index)
{
  const CwField *field = &node->type->fields[index];
  if (cw_field_is_text (field))
    return g_strdup (cw_node_get_text (node, index));
  return cw_project_number_text (field, cw_node_get (node, index));
}
