/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What stands on a wall, line by line: openings, stub-outs, pieces.
 */
#include "cw-i18n.h"
#include "cw-takeoff-papers.h"

static const CwTableColumn opening_columns[] = {
  { N_ ("Opening"), 18, CW_ALIGN_LEFT, CW_TYPE_STRONG },
  { N_ ("Kind"), 16, CW_ALIGN_LEFT, CW_TYPE_BODY },
  { N_ ("Rough width × height"), 24, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("From the left"), 16, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Above the base"), 16, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Area"), 14, CW_ALIGN_RIGHT, CW_TYPE_BODY },
};

static const CwTableColumn stub_out_columns[] = {
  { N_ ("Stub-out"), 18, CW_ALIGN_LEFT, CW_TYPE_STRONG },
  { N_ ("Trade"), 20, CW_ALIGN_LEFT, CW_TYPE_BODY },
  { N_ ("Size"), 24, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("From the left"), 21, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Above the base"), 21, CW_ALIGN_RIGHT, CW_TYPE_BODY },
};

/* Two pieces a row: there are many, and little is said of each. */
#define PIECE_COLUMNS                                                         \
  { N_ ("Piece"), 10, CW_ALIGN_LEFT, CW_TYPE_STRONG },                         \
  { N_ ("Width"), 18, CW_ALIGN_RIGHT, CW_TYPE_SMALL },                        \
  { N_ ("Height"), 18, CW_ALIGN_RIGHT, CW_TYPE_SMALL },                       \
  { N_ ("Area"), 15, CW_ALIGN_RIGHT, CW_TYPE_SMALL },                         \
  { N_ ("Cut"), 24, CW_ALIGN_LEFT, CW_TYPE_SMALL }

static const CwTableColumn piece_columns[] = { PIECE_COLUMNS, PIECE_COLUMNS };

void
cw_papers_add_wall_openings (const CwPapers *papers, const CwWall *wall)
{
  const CwBox box = cw_region_box (wall->outline);
  g_autoptr (CwTable) table
      = cw_table_new (opening_columns, G_N_ELEMENTS (opening_columns));
  for (guint i = 0; i < wall->openings->len; i++)
    {
      const CwWallOpening *it
          = &g_array_index (wall->openings, CwWallOpening, i);
      const CwOpening *opening = it->opening;
      cw_table_add_cell (table, it->mark ? it->mark->name : opening->id);
      cw_table_add_cell (table, _(opening->node.type->label));
      cw_table_take_cell (table, cw_papers_size (papers, opening->width,
                                                 opening->height));
      cw_table_take_cell (table,
                          cw_papers_length (papers, opening->x - box.left));
      cw_table_take_cell (table,
                          cw_papers_length (papers, opening->y - box.bottom));
      cw_table_take_cell (
          table, cw_papers_amount (papers, cw_region_area (it->shape), "m²"));
    }
  cw_papers_add_titled_table (papers, _("Openings"), table);
}

static char *
stub_out_size (const CwPapers *papers, const CwStubOut *stub_out)
{
  if (stub_out->shape != CW_SHAPE_ROUND)
    return cw_papers_size (papers, stub_out->width, stub_out->height);
  g_autofree char *across = cw_papers_length (papers, stub_out->width);
  return g_strconcat ("⌀ ", across, NULL);
}

void
cw_papers_add_stub_outs (const CwPapers *papers, const CwWall *wall)
{
  const CwBox box = cw_region_box (wall->outline);
  g_autoptr (CwTable) table
      = cw_table_new (stub_out_columns, G_N_ELEMENTS (stub_out_columns));
  for (guint i = 0; i < wall->stub_outs->len; i++)
    {
      const CwStubOut *it = wall->stub_outs->pdata[i];
      cw_table_add_cell (table, it->id);
      cw_table_add_cell (table, cw_papers_choice (it, "trade"));
      cw_table_take_cell (table, stub_out_size (papers, it));
      cw_table_take_cell (table, cw_papers_length (papers, it->x - box.left));
      cw_table_take_cell (table,
                          cw_papers_length (papers, it->y - box.bottom));
    }
  cw_papers_add_titled_table (papers, _("Stub-outs, by their centres"), table);
}

static const struct
{
  CwCutFlags flag;
  const char *label;
} cut_labels[] = {
  { CW_CUT_LENGTH, N_ ("length") }, { CW_CUT_HEIGHT, N_ ("height") },
  { CW_CUT_NOTCH, N_ ("notch") },      { CW_CUT_RAKE, N_ ("rake") },
  { CW_CUT_CURVE, N_ ("curve") },      { CW_CUT_HOLE, N_ ("hole") },
};

static char *
cuts_text (const CwPiece *piece)
{
  if (piece->kind == CW_PIECE_WHOLE)
    return g_strdup (_("whole"));
  GString *text
      = g_string_new (piece->kind == CW_PIECE_RASPED ? _("rasped") : NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cut_labels); i++)
    if (piece->cuts & cut_labels[i].flag)
      g_string_append_printf (text, "%s%s", text->len ? ", " : "",
                              _(cut_labels[i].label));
  return g_string_free (text, FALSE);
}

static void
add_piece (const CwPapers *papers, CwTable *table, const CwPiece *piece)
{
  cw_table_take_cell (
      table, g_strdup_printf ("%u-%u", piece->course, piece->number));
  cw_table_take_cell (
      table, cw_papers_dimension (papers, cw_box_width (&piece->box)));
  cw_table_take_cell (
      table, cw_papers_dimension (papers, cw_box_height (&piece->box)));
  cw_table_take_cell (table, cw_papers_amount (papers, piece->area, "m²"));
  cw_table_take_cell (table, cuts_text (piece));
}

void
cw_papers_add_pieces (const CwPapers *papers, const CwLayout *layout)
{
  g_autoptr (CwTable) table
      = cw_table_new (piece_columns, G_N_ELEMENTS (piece_columns));
  for (guint i = 0; i < layout->pieces->len; i++)
    add_piece (papers, table, &g_array_index (layout->pieces, CwPiece, i));
  cw_papers_add_titled_table (
      papers,
      papers->options->style.units == CW_UNITS_US
          ? _("Pieces by course, each with its blank")
          : _("Pieces by course, each with its blank in mm"),
      table);
}
