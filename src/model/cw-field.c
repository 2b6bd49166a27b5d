/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-field.h"

#include <string.h>

#include "cw-decimal.h"
#include "cw-length.h"

const CwChoice *
cw_field_choice_by_name (const CwField *field, const char *name)
{
  g_return_val_if_fail (field->kind == CW_FIELD_CHOICE, NULL);

  for (const CwChoice *choice = field->choices; choice->name; choice++)
    if (strcmp (choice->name, name) == 0)
      return choice;
  return NULL;
}

const CwChoice *
cw_field_choice_by_value (const CwField *field, gint64 value)
{
  g_return_val_if_fail (field->kind == CW_FIELD_CHOICE, NULL);

  for (const CwChoice *choice = field->choices; choice->name; choice++)
    if (choice->value == value)
      return choice;
  return NULL;
}

static void
choice_bounds (const CwField *field, gint64 *least, gint64 *most)
{
  *least = *most = field->choices->value;
  for (const CwChoice *choice = field->choices; choice->name; choice++)
    {
      *least = MIN (*least, choice->value);
      *most = MAX (*most, choice->value);
    }
}

static void
kind_bounds (const CwField *field, gint64 *least, gint64 *most)
{
  switch (field->kind)
    {
    case CW_FIELD_LENGTH:
      *least = -CW_LENGTH_MOST;
      *most = CW_LENGTH_MOST;
      break;
    case CW_FIELD_DECIMAL:
      *least = -CW_DECIMAL_MOST;
      *most = CW_DECIMAL_MOST;
      break;
    case CW_FIELD_COUNT:
      *least = 0;
      *most = CW_FIELD_COUNT_MOST;
      break;
    case CW_FIELD_CHOICE:
      choice_bounds (field, least, most);
      break;
    case CW_FIELD_YES_NO:
      *least = 0;
      *most = 1;
      break;
    case CW_FIELD_TEXT:
    case CW_FIELD_ID:
    case CW_FIELD_REFERENCE:
    default:
      *least = *most = 0;
      break;
    }
}

void
cw_field_bounds (const CwField *field, gint64 *least, gint64 *most)
{
  if (field->least == 0 && field->most == 0)
    {
      kind_bounds (field, least, most);
      return;
    }
  *least = field->least;
  *most = field->most;
}
