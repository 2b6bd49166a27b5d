/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-page-table.h"

#include "cw-i18n.h"

#define GUTTER 12.0           /* between columns */
#define SHORT_TABLE 6
#define PAD (CW_PAGE_STEP / 3)  /* over and under a row's text */

typedef struct
{
  gboolean is_group;
  guint page;
  GPtrArray *cells;           /* char *; of a group one */
} Row;

struct CwTable
{
  const CwTableColumn *columns;
  guint n_columns;
  GPtrArray *rows;            /* Row */
};

/* A row as it will stand: a layout a cell, all on one first baseline. */
typedef struct
{
  GPtrArray *layouts;
  double baseline;            /* under the top of the row, as height is */
  double height;
} SetRow;

static void
row_free (gpointer data)
{
  Row *row = data;
  g_ptr_array_unref (row->cells);
  g_free (row);
}

static Row *
add_row (CwTable *table, gboolean is_group)
{
  Row *row = g_new0 (Row, 1);
  row->is_group = is_group;
  row->cells = g_ptr_array_new_with_free_func (g_free);
  g_ptr_array_add (table->rows, row);
  return row;
}

CwTable *
cw_table_new (const CwTableColumn *columns, guint n_columns)
{
  CwTable *table = g_new0 (CwTable, 1);
  table->columns = columns;
  table->n_columns = n_columns;
  table->rows = g_ptr_array_new_with_free_func (row_free);
  return table;
}

void
cw_table_free (CwTable *table)
{
  g_ptr_array_unref (table->rows);
  g_free (table);
}

guint
cw_table_n_rows (const CwTable *table)
{
  return table->rows->len;
}

void
cw_table_add_group (CwTable *table, const char *text)
{
  g_ptr_array_add (add_row (table, TRUE)->cells, g_strdup (text));
}

static Row *
last_row (const CwTable *table)
{
  return table->rows->len ? table->rows->pdata[table->rows->len - 1] : NULL;
}

void
cw_table_take_cell (CwTable *table, char *text)
{
  Row *row = last_row (table);
  if (!row || row->is_group || row->cells->len == table->n_columns)
    row = add_row (table, FALSE);
  g_ptr_array_add (row->cells, text);
}

void
cw_table_add_cell (CwTable *table, const char *text)
{
  cw_table_take_cell (table, g_strdup (text));
}

void
cw_table_link_row (CwTable *table, guint page)
{
  last_row (table)->page = page;
}

/* Where column @index begins and how wide its text may be. */
static void
column_place (const CwPages *pages, const CwTable *table, guint index,
              double *x, double *width)
{
  double sum = 0, before = 0;
  for (guint i = 0; i < table->n_columns; i++)
    {
      sum += table->columns[i].share;
      before += i < index ? table->columns[i].share : 0;
    }
  const double room = pages->width - GUTTER * (table->n_columns - 1);
  *x = pages->left + room * before / sum + GUTTER * index;
  *width = room * table->columns[index].share / sum;
}

static void
set_cell (const CwPages *pages, SetRow *set, PangoLayout *layout)
{
  const double most = pages->bottom - pages->top - 6 * CW_PAGE_STEP;
  /* What would not even fit on a page of its own is the one thing that is
   * ever shortened, and says so by its ellipsis. */
  if (cw_page_layout_height (layout) > most)
    {
      pango_layout_set_height (layout, (int) (most * PANGO_SCALE));
      pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
    }
  g_ptr_array_add (set->layouts, layout);
}

static double
baseline_of (PangoLayout *layout)
{
  return (double) pango_layout_get_baseline (layout) / PANGO_SCALE;
}

static void
align_cells (SetRow *set)
{
  for (guint i = 0; i < set->layouts->len; i++)
    set->baseline
        = MAX (set->baseline, PAD + baseline_of (set->layouts->pdata[i]));
  for (guint i = 0; i < set->layouts->len; i++)
    {
      PangoLayout *layout = set->layouts->pdata[i];
      set->height = MAX (set->height, set->baseline - baseline_of (layout)
                                          + cw_page_layout_height (layout)
                                          + PAD);
    }
}

static SetRow
set_row (const CwPages *pages, const CwTable *table, const Row *row)
{
  SetRow set = { g_ptr_array_new_with_free_func (g_object_unref), 0, 0 };
  for (guint i = 0; i < row->cells->len; i++)
    {
      const CwTableColumn *column = &table->columns[i];
      double x, width = pages->width;
      if (!row->is_group)
        column_place (pages, table, i, &x, &width);
      set_cell (pages, &set,
                cw_page_layout (
                    pages, row->is_group ? CW_TYPE_STRONG : column->type,
                    row->cells->pdata[i], width,
                    row->is_group ? CW_ALIGN_LEFT : column->align));
    }
  align_cells (&set);
  return set;
}

static SetRow
set_head (const CwPages *pages, const CwTable *table)
{
  SetRow set = { g_ptr_array_new_with_free_func (g_object_unref), 0, 0 };
  for (guint i = 0; i < table->n_columns; i++)
    {
      const CwTableColumn *column = &table->columns[i];
      double x, width;
      column_place (pages, table, i, &x, &width);
      set_cell (pages, &set,
                cw_page_layout (pages, CW_TYPE_LABEL,
                                *column->title ? _(column->title) : "",
                                width, column->align));
    }
  align_cells (&set);
  return set;
}

static void
show_cells (const CwPages *pages, const CwTable *table, const SetRow *set,
            const CwType *type)
{
  for (guint i = 0; i < set->layouts->len; i++)
    {
      double x, width;
      column_place (pages, table, i, &x, &width);
      cw_page_show (pages, type ? *type : table->columns[i].type,
                    set->layouts->pdata[i], x,
                    pages->y + set->baseline
                        - baseline_of (set->layouts->pdata[i]));
    }
}

static gboolean
has_titles (const CwTable *table)
{
  for (guint i = 0; i < table->n_columns; i++)
    if (*table->columns[i].title)
      return TRUE;
  return FALSE;
}

static void
show_head (CwPages *pages, const CwTable *table)
{
  if (!has_titles (table))
    return;
  const CwType type = CW_TYPE_LABEL;
  SetRow head = set_head (pages, table);
  show_cells (pages, table, &head, &type);
  pages->y += head.height;
  cw_page_rule (pages, pages->y, 0.8);
  g_ptr_array_unref (head.layouts);
}

static void
link_row (const CwPages *pages, const Row *row, double height)
{
  g_autofree char *where = NULL;
  if (row->page == 0 || pages->is_trial)
    return;
  char numbers[4][G_ASCII_DTOSTR_BUF_SIZE];
  const double box[] = { pages->left, pages->y, pages->width, height };
  for (guint i = 0; i < G_N_ELEMENTS (box); i++)
    g_ascii_formatd (numbers[i], sizeof numbers[i], "%.2f", box[i]);
  where = g_strdup_printf ("rect=[%s %s %s %s] dest='page-%u'", numbers[0],
                           numbers[1], numbers[2], numbers[3], row->page);
  cairo_tag_begin (pages->cr, CAIRO_TAG_LINK, where);
  cairo_tag_end (pages->cr, CAIRO_TAG_LINK);
}

/* A row whose first cell is empty goes on with what the one above says. */
static double
rule_from (const CwPages *pages, const CwTable *table, guint index)
{
  const Row *next = index + 1 < table->rows->len
                        ? table->rows->pdata[index + 1]
                        : NULL;
  double x, width;
  column_place (pages, table, 1, &x, &width);
  return next && *(const char *) next->cells->pdata[0] == '\0' ? x
                                                               : pages->left;
}

static void
show_row (CwPages *pages, const CwTable *table, guint index,
          const SetRow *set)
{
  const Row *row = table->rows->pdata[index];
  const CwType group = CW_TYPE_STRONG;
  link_row (pages, row, set->height);
  show_cells (pages, table, set, row->is_group ? &group : NULL);
  pages->y += set->height;
  cw_page_hairline (pages, rule_from (pages, table, index), pages->y);
}

/* Of the rows from @from to before @to, with the gap over each group. */
static double
rows_height (const CwPages *pages, const CwTable *table, guint from, guint to)
{
  double height = 0;
  for (guint i = from; i < to; i++)
    {
      const Row *row = table->rows->pdata[i];
      SetRow set = set_row (pages, table, row);
      height += set.height + (row->is_group ? CW_PAGE_STEP : 0);
      g_ptr_array_unref (set.layouts);
    }
  return height;
}

/* After what has to stand together from row @index on: a group with its first
 * row. */
static guint
end_kept (const CwTable *table, guint index)
{
  while (index < table->rows->len
         && ((const Row *) table->rows->pdata[index])->is_group)
    index++;
  return MIN (index + 1, table->rows->len);
}

static void
add_row_to_pages (CwPages *pages, const CwTable *table, guint index)
{
  const Row *row = table->rows->pdata[index];
  const guint former = pages->number;
  cw_pages_need (pages, rows_height (pages, table, index,
                                     end_kept (table, index)));
  if (pages->number != former)
    show_head (pages, table);
  else if (row->is_group && index > 0)
    pages->y += CW_PAGE_STEP;
  SetRow set = set_row (pages, table, row);
  show_row (pages, table, index, &set);
  g_ptr_array_unref (set.layouts);
}

static double
head_height (const CwPages *pages, const CwTable *table)
{
  if (!has_titles (table))
    return 0;
  SetRow head = set_head (pages, table);
  g_ptr_array_unref (head.layouts);
  return head.height;
}

/* A short table is not parted at all. */
double
cw_table_first_height (const CwPages *pages, const CwTable *table)
{
  const guint end = table->rows->len <= SHORT_TABLE ? table->rows->len
                                                    : end_kept (table, 0);
  const double height
      = head_height (pages, table) + rows_height (pages, table, 0, end);
  return MIN (height, (pages->bottom - pages->top) / 2);
}

void
cw_pages_add_table (CwPages *pages, const CwTable *table)
{
  if (table->rows->len == 0)
    return;
  cw_pages_need (pages, cw_table_first_height (pages, table));
  show_head (pages, table);
  for (guint i = 0; i < table->rows->len && !cw_pages_is_stopped (pages); i++)
    add_row_to_pages (pages, table, i);
  pages->y += CW_PAGE_STEP;
}
