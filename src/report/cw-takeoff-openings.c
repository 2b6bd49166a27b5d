/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The opening schedule: a line for each mark, and for each opening that has
 * none.
 */
#include "cw-i18n.h"
#include "cw-takeoff-papers.h"

/* Openings that are ordered as one: of one mark and of one size. */
typedef struct
{
  const CwWallOpening *first;
  gint64 count;
  GString *where;
} Line;

static const CwTableColumn columns[] = {
  { N_ ("Mark"), 10, CW_ALIGN_LEFT, CW_TYPE_STRONG },
  { N_ ("Kind"), 13, CW_ALIGN_LEFT, CW_TYPE_BODY },
  { N_ ("Count"), 9, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Width × height"), 24, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Head"), 18, CW_ALIGN_LEFT, CW_TYPE_BODY },
  { N_ ("Rise"), 11, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Reveal"), 10, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Area"), 12, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("On elevations"), 18, CW_ALIGN_LEFT, CW_TYPE_SMALL },
};

static void
line_free (gpointer data)
{
  Line *line = data;
  g_string_free (line->where, TRUE);
  g_free (line);
}

static gboolean
is_alike (const CwWallOpening *a, const CwWallOpening *b)
{
  const CwOpening *one = a->opening, *other = b->opening;
  return a->mark && a->mark == b->mark && one->node.type == other->node.type
         && one->width == other->width && one->height == other->height
         && one->rise == other->rise && one->head == other->head
         && one->reveal == other->reveal;
}

static Line *
line_for (GPtrArray *lines, const CwWallOpening *opening)
{
  for (guint i = 0; i < lines->len; i++)
    {
      Line *line = lines->pdata[i];
      if (is_alike (line->first, opening))
        return line;
    }
  Line *line = g_new0 (Line, 1);
  line->first = opening;
  line->where = g_string_new (NULL);
  g_ptr_array_add (lines, line);
  return line;
}

static void
count_wall (GPtrArray *lines, const CwWall *wall)
{
  const char *name = cw_papers_name (wall->elevation);
  g_autoptr (GHashTable) named = g_hash_table_new (NULL, NULL);
  for (guint i = 0; i < wall->openings->len; i++)
    {
      Line *line = line_for (
          lines, &g_array_index (wall->openings, CwWallOpening, i));
      line->count += wall->elevation->count;
      if (!g_hash_table_add (named, line))
        continue;
      g_string_append_printf (line->where, "%s%s",
                              line->where->len ? ", " : "", name);
    }
}

static int
compare_lines (gconstpointer a, gconstpointer b)
{
  const Line *const *one = a, *const *other = b;
  const CwMark *mark = (*one)->first->mark, *than = (*other)->first->mark;
  if (!mark || !than)
    return !mark - !than;
  g_autofree char *key = g_utf8_collate_key_for_filename (mark->name, -1);
  g_autofree char *than_key
      = g_utf8_collate_key_for_filename (than->name, -1);
  return g_strcmp0 (key, than_key);
}

static void
add_line (const CwPapers *papers, CwTable *table, const Line *line)
{
  const CwOpening *opening = line->first->opening;
  const CwMark *mark = line->first->mark;
  const gboolean is_arch = opening->node.type == &cw_arch_type;
  cw_table_add_cell (table, mark ? mark->name : opening->id);
  cw_table_add_cell (table, _(opening->node.type->label));
  cw_table_take_cell (table, cw_papers_count (papers, line->count));
  cw_table_take_cell (table, cw_papers_size (papers, opening->width,
                                             opening->height));
  cw_table_add_cell (table, is_arch ? cw_papers_choice (opening, "head")
                                    : _("Level"));
  cw_table_take_cell (table, is_arch
                                 ? cw_papers_length (papers, opening->rise)
                                 : g_strdup ("–"));
  cw_table_take_cell (table, cw_papers_length (papers, opening->reveal));
  cw_table_take_cell (
      table,
      cw_papers_amount (papers, cw_region_area (line->first->shape), "m²"));
  cw_table_add_cell (table, line->where->str);
}

void
cw_papers_add_openings (const CwPapers *papers)
{
  g_autoptr (GPtrArray) lines = g_ptr_array_new_with_free_func (line_free);
  g_autoptr (CwTable) table = cw_table_new (columns, G_N_ELEMENTS (columns));
  for (guint i = 0; i < papers->takeoff->walls->len; i++)
    {
      const CwWallTakeoff *wall = papers->takeoff->walls->pdata[i];
      count_wall (lines, wall->wall);
    }
  if (lines->len == 0)
    return;
  g_ptr_array_sort (lines, compare_lines);
  for (guint i = 0; i < lines->len; i++)
    add_line (papers, table, lines->pdata[i]);
  cw_pages_begin_here (papers->pages, _("Opening schedule"), "openings");
  cw_page_add_heading (papers->pages, CW_TYPE_HEADING, _("Opening schedule"),
                       60);
  cw_page_add_text (papers->pages, CW_TYPE_SMALL,
                    _("Rough sizes; an arch's height is that of its springing, "
                      "with the rise above it. The area is of one. What the "
                      "makers of windows and doors need is theirs to say."));
  cw_page_add_space (papers->pages, 0.5);
  cw_pages_add_table (papers->pages, table);
}
