/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What an attribute of a project is: its name in the file, its kind, default,
 * limits, unit and the words shown for it. The reader, the writer, the
 * inspector and the buildup form all work from these tables, so that an
 * attribute is described once.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef enum
{
  CW_FIELD_TEXT,        /* char *, never NULL once set; "" is the fallback */
  CW_FIELD_ID,          /* char *, the element's own id */
  CW_FIELD_REFERENCE,   /* char *, the id of an element of another kind */
  CW_FIELD_LENGTH,      /* gint64 nanometres */
  CW_FIELD_DECIMAL,     /* gint64 millionths */
  CW_FIELD_COUNT,       /* gint64 */
  CW_FIELD_CHOICE,      /* gint64: the value of a CwChoice */
  CW_FIELD_YES_NO,      /* gint64: 0 or 1, "no" or "yes" in the file */
} CwFieldKind;

typedef struct
{
  gint64 value;
  const char *name;     /* in the file */
  const char *label;    /* N_() shown */
} CwChoice;

typedef enum
{
  CW_FIELD_REQUIRED = 1 << 0,   /* a file without it is refused */
  CW_FIELD_FROM_MARK = 1 << 1,  /* an opening's mark gives it when not stated;
                                   with REQUIRED, one of the two must state it */
} CwFieldFlags;

typedef struct
{
  const char *name;         /* in the file */
  CwFieldKind kind;
  gsize offset;             /* into the element's struct: char * or gint64 */
  CwFieldFlags flags;
  gint64 fallback;          /* what an absent attribute means; "" for texts */
  gint64 least, most;       /* bounds, both allowed; least == most == 0: those of the kind */
  const CwChoice *choices;  /* ends with a NULL name; CW_FIELD_CHOICE only */
  const char *refers_to;    /* element name; CW_FIELD_REFERENCE only */
  const char *label;        /* N_() "Rough width" */
  const char *unit;         /* "" or "kg", "%", "L/m²" …; lengths are in the user's units */
  const char *help;         /* N_() one sentence: meaning and the default's source */
} CwField;

/* The greatest count accepted anywhere. */
#define CW_FIELD_COUNT_MOST G_GINT64_CONSTANT (1000000000)

/* The choice of @field with that file name or value, or NULL. */
const CwChoice *cw_field_choice_by_name (const CwField *field,
                                         const char *name);
const CwChoice *cw_field_choice_by_value (const CwField *field, gint64 value);

static inline gboolean
cw_field_is_text (const CwField *field)
{
  return field->kind <= CW_FIELD_REFERENCE;
}

/* The bounds in force: the field's own, else those of its kind. */
void cw_field_bounds (const CwField *field, gint64 *least, gint64 *most);

G_END_DECLS
