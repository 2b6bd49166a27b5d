/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The cut list: how many panels stay whole, then each panel that is sawn with
 * its picture, its cuts in order and where its pieces go.
 */
#include "cw-cut-drawing.h"
#include "cw-cut-words.h"
#include "cw-i18n.h"
#include "cw-painter.h"
#include "cw-takeoff-papers.h"

/* Points. */
#define PICTURE_WIDTH 330.0
#define PANEL_WIDTH 246.0
#define MOST_PANEL_HEIGHT 150.0
#define MOST_BESIDE 180.0
#define LEAST_TEXT 8.0

static const CwTableColumn columns[] = {
  { N_ ("Panel"), 40, CW_ALIGN_LEFT, CW_TYPE_STRONG },
  { N_ ("Whole or rasped"), 15, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Sawn"), 15, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Used"), 15, CW_ALIGN_RIGHT, CW_TYPE_BODY },
  { N_ ("Needed at least"), 15, CW_ALIGN_RIGHT, CW_TYPE_BODY },
};

static void
add_stocks (const CwPapers *papers)
{
  const GPtrArray *stocks = papers->takeoff->stocks;
  g_autoptr (CwTable) table
      = cw_table_new (columns, G_N_ELEMENTS (columns));

  for (guint i = 0; i < stocks->len; i++)
    {
      const CwPanelStock *stock = stocks->pdata[i];
      const CwPanel *panel
          = cw_list_at (stock->buildup->panels, stock->panel);

      if (stock->n_panels == 0)
        continue;
      cw_table_add_cell (table, panel->name);
      cw_table_take_cell (table, cw_papers_count (papers, stock->n_whole));
      cw_table_take_cell (
          table,
          cw_papers_count (papers, stock->n_panels - stock->n_whole));
      cw_table_take_cell (table, cw_papers_count (papers, stock->n_panels));
      /* The bound is for all panels of a buildup together. */
      cw_table_take_cell (table, stock->panel == 0
                                     ? cw_papers_count (papers, stock->least)
                                     : g_strdup (""));
    }
  cw_pages_add_table (papers->pages, table);
  cw_page_add_space (papers->pages, 2);
}

static void
add_cautions (const CwPapers *papers)
{
  static const char *const cautions[] = {
    N_ ("Dust: sawing sets free respirable crystalline silica, which harms "
        "the lungs for good. Saw wet or with extraction at the blade, keep "
        "others away, and wear a respirator as local rules and the maker's "
        "instructions say."),
    N_ ("Blades: guards stay on, the panel lies supported and held on both "
        "sides of the cut, hands stay out of the blade's line, and the saw "
        "and its blade are those that their makers' instructions allow for "
        "this panel."),
    N_ ("A notch or a hole weakens a panel: how it is carried, and how far a "
        "cut may go, is for the panel maker's instructions."),
  };
  for (guint i = 0; i < G_N_ELEMENTS (cautions); i++)
    cw_page_add_item (papers->pages, "•", _(cautions[i]));
}

static void
add_reading (const CwPapers *papers)
{
  cw_page_add_text (
      papers->pages, CW_TYPE_BODY,
      _("Each panel lies face up with its length to the right. Numbers are "
        "the cuts in the order of sawing; all figures are counted from the "
        "lower left corner to the near side of the kerf. Broken lines are "
        "sawn out of the blank afterwards. What is hatched is left over."));
  cw_page_add_space (papers->pages, 1);
  add_cautions (papers);
  cw_page_add_space (papers->pages, 2);
}

typedef struct
{
  CwDisplayList *list;
  CwCutRoom room;
  double scale;
  double height;
} Picture;

static Picture
picture_so_wide (const CwPapers *papers, const CwCutListPanel *panel,
                 double width)
{
  const CwCutRules *rules = &panel->plan->cut->rules;
  Picture picture;

  picture.scale
      = MIN (width / ((double) rules->length / CW_NM_PER_MM),
             MOST_PANEL_HEIGHT / ((double) rules->height / CW_NM_PER_MM));
  picture.list = cw_cut_drawing (panel->plan, panel->panel, panel->n == 1,
                                 &papers->options->style, 1 / picture.scale,
                                 &picture.room);
  picture.height = (picture.room.top - picture.room.bottom) * picture.scale;
  return picture;
}

/* Drawn smaller where its figures would reach into the words beside it: they
 * keep their size. */
static Picture
picture_of (const CwPapers *papers, const CwCutListPanel *panel)
{
  Picture picture = picture_so_wide (papers, panel, PANEL_WIDTH);
  const double beyond
      = (picture.room.right - picture.room.left) * picture.scale
        - (PICTURE_WIDTH - 2 * CW_PAGE_STEP);

  if (beyond <= 0)
    return picture;
  cw_display_list_unref (picture.list);
  return picture_so_wide (papers, panel, PANEL_WIDTH - beyond);
}

static void
show_picture (const CwPages *pages, const Picture *picture)
{
  const CwPaint paint
      = { .scale = picture->scale,
          .x = pages->left - picture->room.left * picture->scale,
          .y = pages->y + picture->room.top * picture->scale,
          .palette = CW_PALETTE_PAPER,
          .text_scale = 1,
          .least_text = LEAST_TEXT };

  if (!pages->is_trial)
    cw_paint (pages->cr, picture->list, &paint);
}

static void
append_steps (const CwPapers *papers, const CwCutListPanel *panel,
              GString *text)
{
  const guint n = panel->whole->cuts->len;

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *step
          = cw_cut_list_step_text (panel, i, &papers->options->style);
      g_string_append_printf (text, "%u   %s\n", i + 1, step);
    }
  if (n == 0)
    g_string_append_printf (text, "%s\n",
                            _("No straight cut right across the panel."));
}

/* Where the pieces of one slot go, and what else is sawn out of them. */
static void
append_slot (const CwCutList *list, const CwCutListPanel *panel, guint *next,
             GString *text)
{
  const GArray *pieces = panel->pieces;
  const CwCutListPiece *first
      = &g_array_index (pieces, CwCutListPiece, *next);
  g_autofree char *letter = cw_cut_letter (first->slot);
  g_autofree char *shape
      = cw_cut_shape_text (cw_cut_list_piece (list, first, NULL));

  g_string_append_printf (text, "%s   ", letter);
  for (guint i = *next; *next < pieces->len; (*next)++)
    {
      const CwCutListPiece *piece
          = &g_array_index (pieces, CwCutListPiece, *next);
      if (piece->slot != first->slot)
        break;
      g_autofree char *name = cw_cut_piece_text (list, piece);
      g_string_append_printf (text, "%s%s", *next > i ? ", " : "", name);
    }
  if (shape)
    g_string_append_printf (text, " — %s", shape);
  g_string_append_c (text, '\n');
}

/* The cuts in order, then the pieces. (transfer full) */
static char *
words_of (const CwPapers *papers, const CwCutList *list,
          const CwCutListPanel *panel)
{
  GString *text = g_string_new (NULL);

  append_steps (papers, panel, text);
  for (guint next = 0; next < panel->pieces->len;)
    append_slot (list, panel, &next, text);
  g_string_truncate (text, text->len - 1);
  return g_string_free (text, FALSE);
}

static void
add_head (const CwPapers *papers, const CwCutListPanel *panel)
{
  CwPages *pages = papers->pages;
  g_autofree char *name = cw_cut_panel_text (panel);
  g_autofree char *stock
      = cw_cut_stock_text (panel, &papers->options->style);

  cw_page_rule (pages, pages->y, 0.5);
  pages->y += CW_PAGE_STEP / 2;
  cw_page_show_line (pages, CW_TYPE_STRONG, name, pages->left, pages->y,
                     PICTURE_WIDTH - CW_PAGE_STEP, CW_ALIGN_LEFT);
  cw_page_show_line (pages, CW_TYPE_SMALL, stock,
                     pages->left + PICTURE_WIDTH, pages->y,
                     pages->width - PICTURE_WIDTH, CW_ALIGN_LEFT);
  pages->y += 3 * CW_PAGE_STEP;
}

/* The words beside the picture; NULL where they stand under it, as many walls
 * share the panel. (transfer full) */
static PangoLayout *
words_beside (const CwPages *pages, const char *words)
{
  g_autoptr (PangoLayout) beside
      = cw_page_layout (pages, CW_TYPE_SMALL, words,
                        pages->width - PICTURE_WIDTH, CW_ALIGN_LEFT);

  return cw_page_layout_height (beside) > MOST_BESIDE
             ? NULL
             : g_steal_pointer (&beside);
}

/* What stands together under the head. */
static double
body_height (const Picture *picture, PangoLayout *beside)
{
  return MAX (picture->height, beside ? cw_page_layout_height (beside) : 0);
}

static void
add_body (CwPages *pages, const Picture *picture, PangoLayout *beside,
          const char *words)
{
  show_picture (pages, picture);
  if (beside)
    cw_page_show (pages, CW_TYPE_SMALL, beside, pages->left + PICTURE_WIDTH,
                  pages->y);
  pages->y += body_height (picture, beside);
  if (beside)
    return;
  cw_page_add_space (pages, 1);
  cw_page_add_text (pages, CW_TYPE_SMALL, words);
}

static void
add_panel (const CwPapers *papers, const CwCutList *list,
           const CwCutListPanel *panel)
{
  CwPages *pages = papers->pages;
  const Picture picture = picture_of (papers, panel);
  g_autofree char *words = words_of (papers, list, panel);
  g_autoptr (PangoLayout) beside = words_beside (pages, words);

  cw_pages_need (pages, body_height (&picture, beside) + 4 * CW_PAGE_STEP);
  add_head (papers, panel);
  add_body (pages, &picture, beside, words);
  cw_page_add_space (pages, 1.5);
  cw_display_list_unref (picture.list);
}

void
cw_papers_add_cuts (const CwPapers *papers)
{
  const CwCutList *list = papers->cuts;

  if (list == NULL || list->panels->len == 0)
    return;
  cw_pages_begin (papers->pages, _("Cut list"), "cuts", FALSE);
  cw_page_add_heading (papers->pages, CW_TYPE_HEADING, _("Cut list"), 60);
  add_stocks (papers);
  add_reading (papers);
  for (guint i = 0; i < list->panels->len; i++)
    {
      if (cw_pages_is_stopped (papers->pages))
        return;
      add_panel (papers, list, list->panels->pdata[i]);
    }
}
