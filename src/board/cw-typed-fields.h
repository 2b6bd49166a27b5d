/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Entries at the pointer: what each one is for, what the pointer gives for it
 * at present, and how what is typed into them is read together.
 */
#pragma once

#include "cw-length.h"
#include "cw-text-error.h"
#include "cw-text-style.h"

G_BEGIN_DECLS

typedef enum
{
  CW_TYPED_SIZE,        /* a length of more than 0 */
  CW_TYPED_SLOPE,       /* an angle to the level, or a roof pitch */
  CW_TYPED_OFFSET,      /* along or up; a sign says to which side, without one
                           it goes to where the pointer is */
} CwTypedKind;

typedef struct
{
  const char *label;    /* N_() */
  CwTypedKind kind;
  gboolean has_now;     /* the pointer gives one */
  CwLength now;         /* signed where the kind is */
  double degrees;       /* of a slope, 0 to 90 */
} CwTypedField;

#define CW_TYPED_FIELDS_MOST 5

/* What the pointer gives, in the user's form; "" when nothing.
 * (transfer full) */
char *cw_typed_field_text (const CwTypedField *field,
                           const CwTextStyle *style);

/* Whether anything but blanks has been typed. */
gboolean cw_typed_field_is_blank (const char *text);

/* An offset; a blank one is as the pointer gives it. */
gboolean cw_typed_field_offset (const CwTypedField *field, const char *text,
                                const CwTextStyle *style, CwLength *offset,
                                GError **error);

/* Sizes and a slope as one text, in the form that is typed into a single
 * entry: "3600 x 900", "3600 26.57°". */
typedef struct
{
  char *text;
  gsize begins[CW_TYPED_FIELDS_MOST];   /* byte where each one's part begins */
} CwTypedJoint;

/* A blank size before one that is typed is as the pointer gives it. FALSE with
 * @wrong (out) when it gives none. Clear @joint with g_free (joint->text). */
gboolean cw_typed_fields_join (const CwTypedField *fields,
                               const char *const *texts, guint n,
                               CwTypedJoint *joint, guint *wrong,
                               GError **error);

/* The field that the error points into; the error then points at the
 * character of that field's own text. */
guint cw_typed_joint_find (const CwTypedJoint *joint,
                           const char *const *texts, guint n, GError **error);

G_END_DECLS
