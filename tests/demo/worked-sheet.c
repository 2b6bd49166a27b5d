/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "worked-sheet.h"

#include <math.h>
#include <string.h>

#include "cw-case-table.h"

/* An amount is written with nine digits, so half a unit of the ninth off. */
#define WRITTEN 5e-9
/* What is rounded up to packages may come out of its sum a last digit off. */
#define HAIR 1e-9

struct WorkedSheet
{
  GPtrArray *cases;           /* CwCase */
  const char *const *walls;
  GPtrArray *figures;         /* WorkedFigure */
  GHashTable *by_name;        /* "where\tquantity" → WorkedFigure, borrowed */
};

/* A working while it is read. */
typedef struct
{
  const WorkedSheet *sheet;
  const char *where;
  guint line;
  const char *at;
} Working;

static double read_sum (Working *working);

static void
skip_blanks (Working *working)
{
  while (*working->at == ' ')
    working->at++;
}

static gboolean
take (Working *working, char sign)
{
  skip_blanks (working);
  if (*working->at != sign)
    return FALSE;
  working->at++;
  return TRUE;
}

static void
expect (Working *working, char sign)
{
  if (!take (working, sign))
    g_error ("line %u: no %c before \"%s\"", working->line, sign,
             working->at);
}

static double
unit_at (Working *working)
{
  static const struct
  {
    const char *name;
    double metres;
  } units[]
      = { { "ft", 0.3048 }, { "in", 0.0254 }, { "mm", 0.001 }, { "m", 1 } };

  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    if (g_str_has_prefix (working->at, units[i].name))
      {
        working->at += strlen (units[i].name);
        return units[i].metres;
      }
  return 1;
}

static double
read_number (Working *working)
{
  char *end = NULL;
  const double number = g_ascii_strtod (working->at, &end);

  working->at = end;
  return number * unit_at (working);
}

/* Letters, digits and points; hyphens within. (transfer full) */
static char *
read_name (Working *working)
{
  const char *start = working->at;

  if (take (working, '['))
    {
      const char *end = strchr (working->at, ']');

      start = working->at;
      g_assert_nonnull (end);
      working->at = end + 1;
      return g_strndup (start, (gsize) (end - start));
    }
  while (g_ascii_isalnum (*working->at) || *working->at == '.'
         || (*working->at == '-' && g_ascii_isalnum (working->at[1])))
    working->at++;
  if (working->at == start)
    g_error ("line %u: what is \"%s\"?", working->line, start);
  return g_strndup (start, (gsize) (working->at - start));
}

static const WorkedFigure *
figure_seen_from (const WorkedSheet *sheet, const char *where,
                  const char *quantity)
{
  const char *const places[] = { where, "given", "project" };
  const WorkedFigure *figure = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (places) && figure == NULL; i++)
    figure = worked_sheet_figure (sheet, places[i], quantity);
  return figure;
}

/* What stands in brackets, worked for each wall. */
static double
over_walls (Working *working, gboolean is_sum)
{
  const char *from = working->at, *where = working->where;
  double all = 0;

  for (guint i = 0; working->sheet->walls[i]; i++)
    {
      working->at = from;
      working->where = working->sheet->walls[i];
      const double one = read_sum (working);
      all = is_sum ? all + one : MAX (all, one);
    }
  working->where = where;
  return all;
}

static double
half_circle (double radius, double height)
{
  return height * sqrt (radius * radius - height * height)
         + radius * radius * asin (height / radius);
}

/* To the cent, a half up. */
static double
cents (double money)
{
  return floor (money * 100 + 0.5 + HAIR) / 100;
}

static double
call_with (const char *name, double a, double b, guint line)
{
  if (g_str_equal (name, "sqrt"))
    return sqrt (a);
  if (g_str_equal (name, "asin"))
    return asin (a);
  if (g_str_equal (name, "acos"))
    return acos (a);
  if (g_str_equal (name, "ceil"))
    return ceil (a - HAIR);
  if (g_str_equal (name, "floor"))
    return floor (a + HAIR);
  if (g_str_equal (name, "max"))
    return MAX (a, b);
  if (g_str_equal (name, "cents"))
    return cents (a);
  if (g_str_equal (name, "half"))
    return half_circle (a, b);
  g_error ("line %u: no function %s", line, name);
}

static double
read_call (Working *working, const char *name)
{
  double result;

  if (g_str_equal (name, "sum") || g_str_equal (name, "most"))
    result = over_walls (working, g_str_equal (name, "sum"));
  else
    {
      const double a = read_sum (working);
      const double b = take (working, ',') ? read_sum (working) : 0;

      result = call_with (name, a, b, working->line);
    }
  expect (working, ')');
  return result;
}

static double
read_named (Working *working)
{
  g_autofree char *name = read_name (working);
  const WorkedFigure *figure;

  if (*working->at == '(')
    {
      working->at++;
      return read_call (working, name);
    }
  if (g_str_equal (name, "pi"))
    return G_PI;
  figure = figure_seen_from (working->sheet, working->where, name);
  if (figure == NULL)
    g_error ("line %u: no %s above", working->line, name);
  return figure->amount;
}

static double
read_one (Working *working)
{
  double value;

  skip_blanks (working);
  if (g_ascii_isdigit (*working->at))
    return read_number (working);
  if (!take (working, '('))
    return read_named (working);
  value = read_sum (working);
  expect (working, ')');
  return value;
}

static double
read_power (Working *working)
{
  const double base = read_one (working);

  return take (working, '^') ? pow (base, read_one (working)) : base;
}

static double
read_product (Working *working)
{
  double value = read_power (working);

  for (;;)
    if (take (working, '*'))
      value *= read_power (working);
    else if (take (working, '/'))
      value /= read_power (working);
    else
      return value;
}

static double
read_sum (Working *working)
{
  double value = read_product (working);

  for (;;)
    if (take (working, '+'))
      value += read_product (working);
    else if (take (working, '-'))
      value -= read_product (working);
    else
      return value;
}

static double
work (const WorkedSheet *sheet, const char *where, guint line,
      const char *text)
{
  Working working = { sheet, where, line, text };
  const double value = read_sum (&working);

  skip_blanks (&working);
  if (*working.at)
    g_error ("line %u: what is \"%s\"?", line, working.at);
  return value;
}

static void
add_figure (WorkedSheet *sheet, const CwCase *row, const char *where,
            const char *amount, const char *working)
{
  WorkedFigure *figure = g_new0 (WorkedFigure, 1);
  const double written = g_ascii_strtod (amount, NULL);
  char *name = g_strconcat (where, "\t", row->columns[1], NULL);

  figure->line = row->line;
  figure->where = where;
  figure->quantity = row->columns[1];
  figure->is_aside = g_str_equal (row->columns[0], "aside")
                     || g_str_equal (row->columns[0], "given");
  figure->amount = g_str_equal (working, "counted")
                       ? written
                       : work (sheet, where, row->line, working);
  if (fabs (figure->amount - written) > WRITTEN * fabs (figure->amount))
    g_error ("line %u: %s of %s is written %s and worked %.9g", row->line,
             row->columns[1], where, amount, figure->amount);
  if (!g_hash_table_insert (sheet->by_name, name, figure))
    g_error ("line %u: %s of %s stands twice", row->line, row->columns[1],
             where);
  g_ptr_array_add (sheet->figures, figure);
}

/* Cells of the walls; one stands for all. */
static const char *
cell_of (char **cells, guint wall)
{
  return g_strv_length (cells) == 1 ? cells[0] : cells[wall];
}

static void
add_row (WorkedSheet *sheet, const CwCase *row)
{
  const char *where = row->columns[0];
  g_auto (GStrv) amounts = g_strsplit (row->columns[2], " | ", -1);
  g_auto (GStrv) workings = g_strsplit (row->columns[3], " | ", -1);
  const guint n_walls = g_strv_length ((char **) sheet->walls);

  if (g_str_equal (where, "given") || g_str_equal (where, "project"))
    {
      add_figure (sheet, row, where, row->columns[2], row->columns[3]);
      return;
    }
  if (!g_str_equal (where, "aside") && !g_str_equal (where, "each wall"))
    g_error ("line %u: where is %s?", row->line, where);
  if ((g_strv_length (amounts) != 1 && g_strv_length (amounts) != n_walls)
      || (g_strv_length (workings) != 1
          && g_strv_length (workings) != n_walls))
    g_error ("line %u: neither one figure nor one a wall", row->line);
  for (guint i = 0; i < n_walls; i++)
    add_figure (sheet, row, sheet->walls[i], cell_of (amounts, i),
                cell_of (workings, i));
}

WorkedSheet *
worked_sheet_load (const char *name, const char *const *walls)
{
  WorkedSheet *sheet = g_new0 (WorkedSheet, 1);

  sheet->walls = walls;
  sheet->cases = cw_case_table_load (name, 5);
  sheet->figures = g_ptr_array_new_with_free_func (g_free);
  sheet->by_name
      = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  for (guint i = 0; i < sheet->cases->len; i++)
    add_row (sheet, sheet->cases->pdata[i]);
  return sheet;
}

void
worked_sheet_free (WorkedSheet *sheet)
{
  g_hash_table_unref (sheet->by_name);
  g_ptr_array_unref (sheet->figures);
  g_ptr_array_unref (sheet->cases);
  g_free (sheet);
}

const GPtrArray *
worked_sheet_figures (const WorkedSheet *sheet)
{
  return sheet->figures;
}

const WorkedFigure *
worked_sheet_figure (const WorkedSheet *sheet, const char *where,
                     const char *quantity)
{
  g_autofree char *name = g_strconcat (where, "\t", quantity, NULL);

  return g_hash_table_lookup (sheet->by_name, name);
}
