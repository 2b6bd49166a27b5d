/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-check-drawing.h"

#include "cw-i18n.h"

/* A point is shown as a square of twice this. */
#define POINT_SIZE CW_MM (40)
/* Letters at one place stand side by side, mm. */
#define LETTER_STEP 90.0

static void
draw_place (CwDisplayList *list, CwStyle style, const char *id, CwBox box)
{
  const gboolean is_point = box.left == box.right && box.bottom == box.top;

  if (is_point)
    box = (CwBox) { box.left - POINT_SIZE, box.bottom - POINT_SIZE,
                    box.right + POINT_SIZE, box.top + POINT_SIZE };
  if (box.left == box.right || box.bottom == box.top)
    cw_display_list_add_line (list, style, id, cw_point (box.left, box.bottom),
                              cw_point (box.right, box.top));
  else
    cw_display_list_add_box (list, style, id, &box);
}

/* A letter at a corner of the first place, so that it hides no name or
 * number, and that place in dashes. */
static void
draw_sign (CwDisplayList *list, const CwCheck *check, guint index)
{
  const CwBox *box = &g_array_index (check->places, CwBox, 0);

  draw_place (list, CW_STYLE_TROUBLE, check->type->code, *box);
  cw_display_list_add_text (
      list, CW_STYLE_TROUBLE_LETTER, check->type->code,
      (double) box->left / CW_NM_PER_MM + LETTER_STEP * index,
      (double) box->top / CW_NM_PER_MM, 0, CW_ANCHOR_CENTRE,
      g_dpgettext2 (GETTEXT_PACKAGE, "check letter",
                    cw_check_severity_letter (check->type->severity)));
}

static gboolean
starts_where (const CwCheck *one, const CwCheck *other)
{
  const CwBox *a = &g_array_index (one->places, CwBox, 0);
  const CwBox *b = &g_array_index (other->places, CwBox, 0);

  return a->left == b->left && a->top == b->top;
}

static gboolean
is_shown (const CwCheck *check, const char *elevation_id)
{
  return !check->waiver && check->places->len > 0
         && g_strcmp0 (check->elevation_id, elevation_id) == 0
         && check->type->severity != CW_CHECK_NOTE;
}

CwDisplayList *
cw_check_drawing (const GPtrArray *checks, const char *elevation_id)
{
  CwDisplayList *list = cw_display_list_new ();

  g_return_val_if_fail (checks != NULL && elevation_id != NULL, list);

  for (guint i = 0; i < checks->len; i++)
    {
      const CwCheck *check = checks->pdata[i];
      guint n_before = 0;

      if (!is_shown (check, elevation_id))
        continue;
      for (guint j = 0; j < i; j++)
        if (is_shown (checks->pdata[j], elevation_id)
            && starts_where (checks->pdata[j], check))
          n_before++;
      draw_sign (list, check, n_before);
    }
  return list;
}

CwDisplayList *
cw_check_drawing_lit (const GArray *places)
{
  CwDisplayList *list = cw_display_list_new ();

  g_return_val_if_fail (places != NULL, list);

  for (guint i = 0; i < places->len; i++)
    draw_place (list, CW_STYLE_LIT, NULL, g_array_index (places, CwBox, i));
  return list;
}
