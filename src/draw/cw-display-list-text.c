/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The golden text form:
 *
 *   outline #e1 M 0.000 0.000 L 9000.000 0.000 … Z
 *   joint-bed M 0.000 600.000 L 9000.000 600.000
 *   opening-mark #o1 T 1500.000 1600.000 0.000 centre "W1"
 *
 * Lengths in mm, angles in degrees.
 */
#include "cw-display-items.h"

#include <math.h>

static void
add_number (GString *text, double number)
{
  char digits[G_ASCII_DTOSTR_BUF_SIZE];
  /* What rounds to nought is nought, whatever its sign. */
  if (fabs (number) < 0.0005)
    number = 0;
  g_string_append_c (text, ' ');
  g_string_append (text,
                   g_ascii_formatd (digits, sizeof digits, "%.3f", number));
}

static void
add_degrees (GString *text, double radians)
{
  add_number (text, radians * 180 / G_PI);
}

static void
add_quoted (GString *text, const char *words)
{
  g_string_append (text, " \"");
  for (const char *c = words; *c; c++)
    {
      if (*c == '"' || *c == '\\')
        g_string_append_c (text, '\\');
      if (*c == '\n')
        g_string_append (text, "\\n");
      else
        g_string_append_c (text, *c);
    }
  g_string_append_c (text, '"');
}

static void
add_path (GString *text, const CwDisplayList *list, const CwDisplayItem *item)
{
  const double *numbers = cw_display_list_numbers (list, item);
  for (guint i = 0; i < item->n_ops; i++)
    {
      guint8 op = list->ops->data[item->first + i];
      guint n = cw_path_op_numbers (op);
      g_string_append_printf (text, " %c", op);
      for (guint k = 0; k < n; k++)
        if (k < 4)
          add_number (text, numbers[k]);
        else
          add_degrees (text, numbers[k]);
      numbers += n;
    }
}

static void
add_words (GString *text, const CwDisplayList *list, const CwDisplayItem *item)
{
  static const char *const anchors[] = { "centre", "left", "right" };
  const CwDisplayText *words = cw_display_list_text (list, item);
  g_string_append (text, " T");
  add_number (text, words->x);
  add_number (text, words->y);
  add_degrees (text, words->angle);
  g_string_append_printf (text, " %s", anchors[words->anchor]);
  if (words->room_width > 0)
    {
      g_string_append (text, " in");
      add_number (text, words->room_width);
      add_number (text, words->room_height);
    }
  add_quoted (text, cw_display_list_string (list, words->text));
}

char *
cw_display_list_to_text (const CwDisplayList *list)
{
  g_return_val_if_fail (list, NULL);
  GString *text = g_string_new (NULL);
  for (gsize i = 0; i < list->items->len; i++)
    {
      const CwDisplayItem *item = cw_display_list_item (list, i);
      const char *id = cw_display_list_id (list, item);
      g_string_append (text, cw_style_name (item->style));
      if (id)
        g_string_append_printf (text, " #%s", id);
      if (item->kind == CW_SHAPE_OP_TEXT)
        add_words (text, list, item);
      else
        add_path (text, list, item);
      g_string_append_c (text, '\n');
    }
  return g_string_free (text, FALSE);
}
