/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What cairo writes: <path> with d, style (or attributes of their own in
 * newer releases) and transform; <g> that clip or turn; <clipPath> with one
 * path; <g id> or <symbol id> in <defs> that a <use> draws somewhere.
 */
#include "cw-svg-lines.h"

#include <libxml/parser.h>
#include <libxml/parserInternals.h>
#include <math.h>
#include <string.h>

#include "cw-svg-path.h"

/* Twice what is kept, since equals go later. */
#define LINES_MOST (2 * CW_DRAWN_LINES_MOST)
#define BYTES_MOST (512 * 1024 * 1024)
#define DEPTH_MOST 200

typedef struct
{
  double left, top, right, bottom;
} Box;

static const Box everywhere
    = { -G_MAXDOUBLE, -G_MAXDOUBLE, G_MAXDOUBLE, G_MAXDOUBLE };

/* Of an element and all in it. */
typedef struct
{
  cairo_matrix_t matrix;
  Box clip;
  GArray *into;         /* borrowed; NULL: nothing is drawn here */
  char *clip_id;        /* a clip is being described */
} Level;

struct CwSvgLines
{
  xmlParserCtxt *context;
  GCancellable *cancellable;
  gsize n_bytes;
  GArray *levels;
  GArray *lines;        /* of the page */
  GHashTable *groups;   /* id → GArray of CwDrawnLine */
  GHashTable *clips;    /* id → Box */
  gboolean refused;
};

/* An attribute of SAX2: name, prefix, URI, and where the value begins and
 * ends. */
typedef struct
{
  const xmlChar **all;
  int n;
} Attributes;

/* (transfer full) (nullable) */
static char *
value_of (const Attributes *attributes, const char *name)
{
  for (int i = 0; i < attributes->n; i++)
    {
      const xmlChar **attribute = attributes->all + 5 * i;

      if (strcmp ((const char *) attribute[0], name) == 0)
        return g_strndup ((const char *) attribute[3],
                          (gsize) (attribute[4] - attribute[3]));
    }
  return NULL;
}

/* "url(#clip3)" or "#surface5": the id. (transfer full) (nullable) */
static char *
referred (const char *text)
{
  const char *id = text ? strchr (text, '#') : NULL;

  return id ? g_strndup (id + 1, strcspn (id + 1, ")")) : NULL;
}

/* Of "fill:none;stroke:rgb(0%,0%,0%);" or of the attribute itself; a style's
 * word ends at a semicolon. (transfer full) (nullable) */
static char *
paint_of (const Attributes *attributes, const char *name)
{
  g_autofree char *style = value_of (attributes, "style");
  g_auto (GStrv) words = style ? g_strsplit (style, ";", -1) : NULL;
  const gsize n = strlen (name);

  for (guint i = 0; words && words[i]; i++)
    {
      const char *word = g_strchug (words[i]);

      if (strncmp (word, name, n) == 0 && word[n] == ':')
        return g_strdup (g_strchug (words[i] + n + 1));
    }
  return value_of (attributes, name);
}

static gboolean
is_white (const char *paint)
{
  return g_str_has_prefix (paint, "rgb(100%,100%,100%")
         || g_str_has_prefix (paint, "rgb(100%, 100%, 100%");
}

/* A white fill hides what is under it; its edge is no line. Nor is that of an
 * image or a pattern. */
static gboolean
is_seen (const Attributes *attributes)
{
  g_autofree char *stroke = paint_of (attributes, "stroke");
  g_autofree char *fill = paint_of (attributes, "fill");

  if (stroke && strcmp (stroke, "none") != 0 && !is_white (stroke))
    return TRUE;
  return fill && g_str_has_prefix (fill, "rgb") && !is_white (fill);
}

static Box
meet (const Box *one, const Box *other)
{
  return (Box) { MAX (one->left, other->left), MAX (one->top, other->top),
                 MIN (one->right, other->right),
                 MIN (one->bottom, other->bottom) };
}

static Box
box_of (const GArray *lines)
{
  Box box = { G_MAXDOUBLE, G_MAXDOUBLE, -G_MAXDOUBLE, -G_MAXDOUBLE };

  for (guint i = 0; i < lines->len; i++)
    {
      const CwDrawnLine *line = &g_array_index (lines, CwDrawnLine, i);

      box.left = MIN (box.left, MIN (line->x0, line->x1));
      box.top = MIN (box.top, MIN (line->y0, line->y1));
      box.right = MAX (box.right, MAX (line->x0, line->x1));
      box.bottom = MAX (box.bottom, MAX (line->y0, line->y1));
    }
  return box;
}

/* One side of a box: keeps the part of t from *@from to *@to where
 * @at + t · @way ≤ @most. FALSE when none is left. */
static gboolean
clip_to (double at, double way, double most, double *from, double *to)
{
  if (fabs (way) < 1e-12)
    return at <= most;
  if (way > 0)
    *to = MIN (*to, (most - at) / way);
  else
    *from = MAX (*from, (most - at) / way);
  return *from < *to;
}

/* Liang and Barsky's way: the part of a line that is in a box. */
static gboolean
clip_line (CwDrawnLine *line, const Box *box)
{
  const double x = line->x0, y = line->y0;
  const double dx = line->x1 - x, dy = line->y1 - y;
  double from = 0, to = 1;

  if (!clip_to (x, dx, box->right, &from, &to)
      || !clip_to (-x, -dx, -box->left, &from, &to)
      || !clip_to (y, dy, box->bottom, &from, &to)
      || !clip_to (-y, -dy, -box->top, &from, &to))
    return FALSE;
  if (to < 1)
    {
      line->x1 = x + to * dx;
      line->y1 = y + to * dy;
      line->flags &= ~CW_DRAWN_ENDS_INSIDE;
    }
  if (from > 0)
    {
      line->x0 = x + from * dx;
      line->y0 = y + from * dy;
      line->flags &= ~CW_DRAWN_BEGINS_INSIDE;
    }
  return TRUE;
}

static void
add_clipped (CwSvgLines *self, const Level *level, CwDrawnLine line)
{
  if (level->into->len >= LINES_MOST)
    self->refused = TRUE;
  else if (clip_line (&line, &level->clip))
    g_array_append_val (level->into, line);
}

static void
add_path (CwSvgLines *self, const Level *level, const char *data)
{
  g_autoptr (GArray) lines = g_array_new (FALSE, FALSE, sizeof (CwDrawnLine));

  cw_svg_path_read (data, strlen (data), &level->matrix, lines);
  if (level->clip_id)
    {
      Box *box = g_new (Box, 1);

      *box = box_of (lines);
      g_hash_table_replace (self->clips, g_strdup (level->clip_id), box);
      return;
    }
  for (guint i = 0; i < lines->len && !self->refused; i++)
    add_clipped (self, level, g_array_index (lines, CwDrawnLine, i));
}

static void
add_group (CwSvgLines *self, const Level *level, const GArray *group)
{
  for (guint i = 0; i < group->len && !self->refused; i++)
    {
      CwDrawnLine line = g_array_index (group, CwDrawnLine, i);

      cairo_matrix_transform_point (&level->matrix, &line.x0, &line.y0);
      cairo_matrix_transform_point (&level->matrix, &line.x1, &line.y1);
      add_clipped (self, level, line);
    }
}

static void
clip_by (CwSvgLines *self, Level *level, const Attributes *attributes)
{
  g_autofree char *value = value_of (attributes, "clip-path");
  g_autofree char *id = referred (value);
  const Box *box = id ? g_hash_table_lookup (self->clips, id) : NULL;

  if (box)
    level->clip = meet (&level->clip, box);
}

static void
turn_by (Level *level, const Attributes *attributes)
{
  g_autofree char *text = value_of (attributes, "transform");
  cairo_matrix_t matrix;

  if (text && cw_svg_transform_read (text, &matrix))
    cairo_matrix_multiply (&level->matrix, &matrix, &level->matrix);
}

/* What is kept aside until it is used: drawn in a space of its own. Letters
 * are not. */
static void
keep_aside (CwSvgLines *self, Level *level, const Attributes *attributes)
{
  g_autofree char *id = value_of (attributes, "id");

  level->into = NULL;
  if (id == NULL || g_str_has_prefix (id, "glyph"))
    return;
  level->into = g_array_new (FALSE, FALSE, sizeof (CwDrawnLine));
  level->clip = everywhere;
  cairo_matrix_init_identity (&level->matrix);
  g_hash_table_replace (self->groups, g_strdup (id), level->into);
}

static void
enter_path (CwSvgLines *self, const Level *level,
            const Attributes *attributes)
{
  g_autofree char *data = value_of (attributes, "d");

  if (data && (level->clip_id || (level->into && is_seen (attributes))))
    add_path (self, level, data);
}

static void
enter_use (CwSvgLines *self, const Level *level, const Attributes *attributes)
{
  g_autofree char *value = value_of (attributes, "href");
  g_autofree char *id = referred (value);
  const GArray *group = id ? g_hash_table_lookup (self->groups, id) : NULL;

  if (group && level->into && group != level->into)
    add_group (self, level, group);
}

static void
describe (CwSvgLines *self, Level *level, const char *name,
          const Attributes *attributes)
{
  const Level *outer
      = &g_array_index (self->levels, Level, self->levels->len - 1);

  clip_by (self, level, attributes);
  turn_by (level, attributes);
  if (strcmp (name, "clipPath") == 0)
    level->clip_id = value_of (attributes, "id");
  else if (strcmp (name, "defs") == 0 || strcmp (name, "pattern") == 0
           || strcmp (name, "mask") == 0)
    level->into = NULL;
  else if (strcmp (name, "symbol") == 0
           || (strcmp (name, "g") == 0 && outer->into == NULL
               && outer->clip_id == NULL))
    keep_aside (self, level, attributes);
  else if (strcmp (name, "path") == 0)
    enter_path (self, level, attributes);
  else if (strcmp (name, "use") == 0)
    enter_use (self, level, attributes);
}

static void
begin_element (void *data, const xmlChar *name, const xmlChar *prefix,
               const xmlChar *uri, int n_namespaces,
               const xmlChar **namespaces, int n_attributes, int n_defaulted,
               const xmlChar **attributes)
{
  CwSvgLines *self = data;
  const Attributes own = { attributes, n_attributes };
  Level level = g_array_index (self->levels, Level, self->levels->len - 1);

  level.clip_id = g_strdup (level.clip_id);
  if (self->levels->len < DEPTH_MOST)
    describe (self, &level, (const char *) name, &own);
  else
    self->refused = TRUE;
  g_array_append_val (self->levels, level);
}

static void
level_clear (gpointer level)
{
  g_free (((Level *) level)->clip_id);
}

static void
end_element (void *data, const xmlChar *name, const xmlChar *prefix,
             const xmlChar *uri)
{
  CwSvgLines *self = data;

  g_array_set_size (self->levels, self->levels->len - 1);
}

CwSvgLines *
cw_svg_lines_new (double scale, double width, double height,
                  GCancellable *cancellable)
{
  CwSvgLines *self = g_new0 (CwSvgLines, 1);
  Level page = { .clip = { 0, 0, width, height } };
  xmlSAXHandler handler = { .initialized = XML_SAX2_MAGIC,
                            .startElementNs = begin_element,
                            .endElementNs = end_element };

  self->cancellable = cancellable ? g_object_ref (cancellable) : NULL;
  self->lines = g_array_new (FALSE, FALSE, sizeof (CwDrawnLine));
  self->groups = g_hash_table_new_full (g_str_hash, g_str_equal, g_free,
                                        (GDestroyNotify) g_array_unref);
  self->clips = g_hash_table_new_full (g_str_hash, g_str_equal, g_free,
                                       g_free);
  self->levels = g_array_new (FALSE, FALSE, sizeof (Level));
  g_array_set_clear_func (self->levels, level_clear);
  cairo_matrix_init_scale (&page.matrix, scale, scale);
  page.into = self->lines;
  g_array_append_val (self->levels, page);
  self->context = xmlCreatePushParserCtxt (&handler, self, NULL, 0, NULL);
  /* A path of a thousand curves is one long attribute. */
  xmlCtxtUseOptions (self->context, XML_PARSE_NONET | XML_PARSE_HUGE);
  return self;
}

void
cw_svg_lines_free (CwSvgLines *self)
{
  g_clear_object (&self->cancellable);
  xmlFreeParserCtxt (self->context);
  g_array_unref (self->levels);
  g_array_unref (self->lines);
  g_hash_table_unref (self->groups);
  g_hash_table_unref (self->clips);
  g_free (self);
}

/* The parser counts in int. */
#define PIECE (1 << 20)

gboolean
cw_svg_lines_feed (CwSvgLines *self, const char *bytes, gsize n)
{
  g_return_val_if_fail (self != NULL && bytes != NULL, FALSE);

  self->n_bytes += n;
  for (gsize i = 0; i < n && !self->refused; i += PIECE)
    if (g_cancellable_is_cancelled (self->cancellable)
        || self->n_bytes > BYTES_MOST
        || xmlParseChunk (self->context, bytes + i, (int) MIN (PIECE, n - i),
                          FALSE)
               != 0)
      self->refused = TRUE;
  return !self->refused;
}

GArray *
cw_svg_lines_finish (CwSvgLines *self)
{
  g_return_val_if_fail (self != NULL, NULL);

  if (self->refused || xmlParseChunk (self->context, NULL, 0, TRUE) != 0
      || self->refused)
    return NULL;
  return g_array_ref (self->lines);
}
