/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Text on pages: one scale of sizes, wrapped to a width, never cut off.
 */
#pragma once

#include "cw-page.h"

G_BEGIN_DECLS

typedef enum
{
  CW_TYPE_TITLE,      /* the project's name */
  CW_TYPE_HEADING,    /* of a section */
  CW_TYPE_SUBHEADING,
  CW_TYPE_BODY,
  CW_TYPE_STRONG,     /* body, bold */
  CW_TYPE_SMALL,      /* steps and rules; the least size there is */
  CW_TYPE_LABEL,      /* column heads */
  CW_TYPE_RUNNING,    /* head and foot */
  CW_N_TYPES,
} CwType;

typedef enum { CW_ALIGN_LEFT, CW_ALIGN_RIGHT, CW_ALIGN_CENTRE } CwAlign;

/* A layout of @text wrapped to @width points (< 0: one line, however long).
 * (transfer full) */
PangoLayout *cw_page_layout (const CwPages *pages, CwType type,
                             const char *text, double width, CwAlign align);
double cw_page_layout_height (PangoLayout *layout);

/* Draws @layout with its top left corner there, in the type's tone. */
void cw_page_show (const CwPages *pages, CwType type, PangoLayout *layout,
                   double x, double y);
/* One line, cut with an ellipsis where it is longer than @width. */
void cw_page_show_line (const CwPages *pages, CwType type, const char *text,
                        double x, double y, double width, CwAlign align);

/* Blocks: they take their place in the body and move on. */
void cw_page_add_text (CwPages *pages, CwType type, const char *text);
/* With @mark ("•", "!") hung out at the left. */
void cw_page_add_item (CwPages *pages, const char *mark, const char *text);
/* Kept together with at least @with points of what follows. */
void cw_page_add_heading (CwPages *pages, CwType type, const char *text,
                          double with);
void cw_page_add_space (CwPages *pages, double steps);

/* Lines across: under heads, and the fainter ones between rows, from @x on. */
void cw_page_rule (const CwPages *pages, double y, double weight);
void cw_page_hairline (const CwPages *pages, double x, double y);

G_END_DECLS
