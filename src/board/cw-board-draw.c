/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the board looks like: sheet, neighbours, wall, panels, measures, and
 * the tool on top. Each is a picture that is kept as long as what it shows
 * stands still.
 */
#include "cw-board-private.h"

#include <math.h>

#include "cw-text-scale.h"

/* How strongly things are seen that are not the matter at hand. */
#define NEIGHBOUR_STRENGTH 0.4
#define STALE_STRENGTH 0.45
/* Panels, where there is a sheet to see; less while something is traced. */
#define OVER_SHEET_STRENGTH 0.7
#define TRACING_STRENGTH 0.25
/* Measures are laid out anew when the zoom is another by so much. */
#define MEASURES_SLACK 0.02

static gboolean
shows_sheet (CwBoard *self)
{
  return self->shows_sheet && !self->as_printed && self->sheet_id
         && g_hash_table_contains (self->sources, self->sheet_id);
}

/* -------------------------------------------------------------- the lists */

/* A takeoff of a wall without any layout: enough for what is drawn of the
 * wall itself, at once, before the estimate has been worked out. */
static CwDisplayList *
draw_bare (CwWall *wall, CwLayers layers, const CwTextStyle *style,
           double mm_per_unit)
{
  g_autoptr (GArray) courses = g_array_new (FALSE, FALSE, sizeof (CwCourse));
  g_autoptr (GArray) pieces = g_array_new (FALSE, FALSE, sizeof (CwPiece));
  g_autoptr (GArray) joints = g_array_new (FALSE, FALSE, sizeof (CwJoint));
  g_autoptr (GArray) studs = g_array_new (FALSE, FALSE, sizeof (CwLength));
  g_autoptr (GPtrArray) quantities = g_ptr_array_new ();
  CwLayout layout = { .wall = wall, .courses = courses, .pieces = pieces,
                      .joints = joints, .studs = studs };
  CwWallTakeoff takeoff = { .wall = wall, .layout = &layout,
                            .quantities = quantities };

  g_atomic_ref_count_init (&layout.count);
  g_atomic_ref_count_init (&takeoff.count);
  return cw_elevation_drawing (&takeoff, layers, style, mm_per_unit);
}

static const CwWallTakeoff *
wall_takeoff (CwBoard *self)
{
  return self->takeoff && self->elevation_id
             ? cw_takeoff_wall (self->takeoff, self->elevation_id)
             : NULL;
}

static gboolean
is_takeoff_fresh (CwBoard *self)
{
  const CwWallTakeoff *takeoff = wall_takeoff (self);

  return takeoff && self->wall && cw_wall_same (takeoff->wall, self->wall);
}

static CwLayers
picture_layers (CwBoardPicture picture)
{
  static const CwLayers layers[CW_N_BOARD_PICTURES] = {
    [CW_BOARD_FACE] = CW_LAYER_WALL,
    [CW_BOARD_PANELS] = CW_LAYER_STUDS | CW_LAYER_PANELS | CW_LAYER_NUMBERS,
    [CW_BOARD_LININGS] = CW_LAYER_BARRIER | CW_LAYER_MESH,
    [CW_BOARD_OPENINGS] = CW_LAYER_BANDS | CW_LAYER_OPENINGS | CW_LAYER_STUB_OUTS,
    [CW_BOARD_MEASURES] = CW_LAYER_DIMENSIONS | CW_LAYER_LEVELS,
  };

  return layers[picture];
}

/* What nobody knows before the wall has been worked out. */
static gboolean
is_of_takeoff (CwBoardPicture picture)
{
  return picture == CW_BOARD_PANELS || picture == CW_BOARD_LININGS;
}

static CwDisplayList *
draw_wall (CwBoard *self, CwBoardPicture picture)
{
  CwLayers shown = self->as_printed ? CW_LAYER_ALL : self->layers;
  CwLayers layers = picture_layers (picture) & shown;
  const CwWallTakeoff *takeoff = wall_takeoff (self);
  double mm_per_unit = self->view.nm_per_pixel / 1e6;

  if (picture == CW_BOARD_MEASURES)
    self->measures_at = self->view.nm_per_pixel;
  if (self->wall == NULL || layers == 0)
    return NULL;
  if (is_of_takeoff (picture) || is_takeoff_fresh (self))
    return takeoff ? cw_elevation_drawing (takeoff, layers, &self->style,
                                           mm_per_unit)
                   : NULL;
  return draw_bare (self->wall, layers, &self->style, mm_per_unit);
}

static CwDisplayList *
draw_lit (CwBoard *self)
{
  const CwWallTakeoff *takeoff = wall_takeoff (self);

  if (self->lit_places)
    return cw_board_draw_lit_check (self);
  return takeoff && self->lit
             ? cw_elevation_drawing_lit (takeoff, self->lit,
                                         self->lit_variant)
             : NULL;
}

static void
add_sides (CwDisplayList *list, const CwRegion *region)
{
  for (gsize i = 0; i < cw_region_n_loops (region); i++)
    {
      CwLoop loop = cw_region_loop (region, i);

      for (gsize j = 0; j < loop.n_sides; j++)
        cw_display_list_add_side (list, CW_STYLE_DRAFT, NULL, &loop.sides[j],
                                  cw_loop_end (&loop, j));
    }
}

/* Black on a black sheet nobody could tell what has been traced already. */
static CwDisplayList *
draw_traced (CwBoard *self)
{
  CwDisplayList *list;

  if (!shows_sheet (self) || self->kind == CW_TOOL_SELECT
      || self->wall == NULL || self->wall->outline == NULL)
    return NULL;
  list = cw_display_list_new ();
  add_sides (list, self->wall->outline);
  for (guint i = 0; i < self->wall->openings->len; i++)
    add_sides (list,
               g_array_index (self->wall->openings, CwWallOpening, i).shape);
  return list;
}

static CwDisplayList *
draw_overlay (CwBoard *self)
{
  CwDisplayList *list
      = self->tool ? cw_tool_overlay (self->tool, self->view.nm_per_pixel)
                   : NULL;

  if (list)
    cw_board_draw_drop (self, list);
  return list;
}

static CwDisplayList *
draw_list (CwBoard *self, CwBoardPicture picture)
{
  switch (picture)
    {
    case CW_BOARD_OVERLAY:
      return draw_overlay (self);
    case CW_BOARD_TRACED:
      return draw_traced (self);
    case CW_BOARD_CHECKS:
      return cw_board_draw_checks (self);
    case CW_BOARD_LIT:
      return draw_lit (self);
    default:
      return draw_wall (self, picture);
    }
}

static gboolean
is_zooming (CwBoard *self)
{
  return self->still_id != 0;
}

/* Chains stand at a distance on paper, so they follow the zoom. */
static void
spoil_measures_by_zoom (CwBoard *self)
{
  if (!is_zooming (self) && self->measures_at > 0
      && fabs (self->measures_at / self->view.nm_per_pixel - 1)
             > MEASURES_SLACK)
    self->stale |= 1 << CW_BOARD_MEASURES;
}

static void
renew_lists (CwBoard *self)
{
  spoil_measures_by_zoom (self);
  for (guint i = 0; i < CW_N_BOARD_PICTURES; i++)
    if (self->stale & 1u << i)
      cw_picture_set_list (&self->pictures[i],
                           draw_list (self, (CwBoardPicture) i));
  self->stale = 0;
}

/* --------------------------------------------------------- the neighbours */

static CwNeighbour *
find_neighbour (GPtrArray *neighbours, const char *id)
{
  for (guint i = 0; i < neighbours->len; i++)
    {
      CwNeighbour *neighbour = g_ptr_array_index (neighbours, i);

      if (g_strcmp0 (neighbour->wall->elevation->id, id) == 0)
        return neighbour;
    }
  return NULL;
}

/* What was drawn of it stays, when its wall is the same. */
static CwNeighbour *
neighbour_of (CwBoard *self, const CwElevation *elevation)
{
  const CwProject *project = cw_document_project (self->document);
  CwNeighbour *former = find_neighbour (self->neighbours, elevation->id);
  CwPlacing placing = cw_placing_of (project, elevation);
  CwNeighbour *neighbour = g_new0 (CwNeighbour, 1);

  neighbour->wall
      = cw_wall_renew (former ? former->wall : NULL, project, elevation);
  cw_placing_to_wall (&self->placing, placing.at_x, placing.at_y,
                      &neighbour->x, &neighbour->y);
  if (former && former->wall == neighbour->wall)
    {
      neighbour->picture = former->picture;
      former->picture = (CwPicture) { NULL };
    }
  else
    cw_picture_set_list (&neighbour->picture,
                         draw_bare (neighbour->wall,
                                    CW_LAYER_WALL | CW_LAYER_BANDS | CW_LAYER_OPENINGS,
                                    &self->style, 1));
  return neighbour;
}

static gboolean
is_neighbour (CwBoard *self, const CwElevation *elevation)
{
  return elevation->outline && self->sheet_id
         && g_strcmp0 (elevation->sheet, self->sheet_id) == 0
         && g_strcmp0 (elevation->id, self->elevation_id) != 0;
}

static void
renew_neighbours (CwBoard *self)
{
  const CwList *elevations
      = self->document ? cw_document_project (self->document)->elevations
                       : NULL;
  g_autoptr (GPtrArray) by = NULL;

  if (!self->neighbours_stale)
    return;
  by = g_ptr_array_new ();
  for (gsize i = 0; elevations && i < cw_list_length (elevations); i++)
    {
      const CwElevation *elevation = cw_list_at (elevations, i);

      if (is_neighbour (self, elevation))
        g_ptr_array_add (by, neighbour_of (self, elevation));
    }
  g_ptr_array_set_size (self->neighbours, 0);
  for (guint i = 0; i < by->len; i++)
    g_ptr_array_add (self->neighbours, g_ptr_array_index (by, i));
  self->neighbours_stale = FALSE;
}

static void
show_neighbours (CwBoard *self, GtkSnapshot *snapshot,
                 const CwLookout *lookout)
{
  if (self->neighbours->len == 0)
    return;
  gtk_snapshot_push_opacity (snapshot, NEIGHBOUR_STRENGTH);
  for (guint i = 0; i < self->neighbours->len; i++)
    {
      CwNeighbour *neighbour = g_ptr_array_index (self->neighbours, i);
      CwLookout beside = *lookout;

      cw_view_to_widget (&lookout->view, neighbour->x, neighbour->y,
                         &beside.view.x, &beside.view.y);
      cw_picture_snapshot (&neighbour->picture, snapshot, &beside);
    }
  gtk_snapshot_pop (snapshot);
}

/* -------------------------------------------------------------- the sheet */

void
cw_board_drop_tiles (CwBoard *self)
{
  if (self->tiles)
    {
      g_signal_handlers_disconnect_by_data (self->tiles, self);
      cw_sheet_tiles_close (self->tiles);
    }
  g_clear_object (&self->tiles);
  g_clear_pointer (&self->tiles_key, g_free);
}

static void
tiles_ready (CwBoard *self)
{
  gtk_widget_queue_draw (GTK_WIDGET (self));
  if (cw_sheet_tiles_trouble (self->tiles))
    cw_board_tell (self);
}

/* The tiles of the page that is shown now, in the colours of now. */
static void
renew_tiles (CwBoard *self)
{
  const CwSheet *sheet = cw_project_sheet (
      cw_document_project (self->document), self->sheet_id);
  CwSheetSource *source
      = g_hash_table_lookup (self->sources, self->sheet_id);
  gboolean dark = self->palette == CW_PALETTE_DARK;
  g_autofree char *key = g_strdup_printf (
      "%p %d %d %d", (gpointer) source, (int) sheet->page, (int) sheet->turn,
      dark);

  if (g_strcmp0 (key, self->tiles_key) == 0)
    return;
  cw_board_drop_tiles (self);
  self->tiles_key = g_steal_pointer (&key);
  self->tiles = cw_sheet_tiles_new (source, (guint) sheet->page,
                                    (guint) sheet->turn, dark);
  g_signal_connect_swapped (self->tiles, "ready", G_CALLBACK (tiles_ready),
                            self);
}

static void
show_paper (CwBoard *self, GtkSnapshot *snapshot, const CwSheetLookout *at,
            double width, double height)
{
  graphene_rect_t page = GRAPHENE_RECT_INIT (
      (float) at->x, (float) at->y, (float) (width * at->across),
      (float) (height * at->along));
  graphene_rect_t window = GRAPHENE_RECT_INIT (0, 0, (float) at->width,
                                               (float) at->height);
  graphene_rect_t seen;
  GdkRGBA light = { 1, 1, 1, 1 };
  GdkRGBA dark = { 0.11f, 0.11f, 0.11f, 1 };

  if (graphene_rect_intersection (&page, &window, &seen))
    gtk_snapshot_append_color (
        snapshot, self->palette == CW_PALETTE_DARK ? &dark : &light, &seen);
}

static CwSheetLookout
sheet_lookout (CwBoard *self, const CwLookout *lookout)
{
  CwSheetLookout at = {
    .across = self->placing.across * 1e6 / self->view.nm_per_pixel,
    .along = self->placing.along * 1e6 / self->view.nm_per_pixel,
    .width = lookout->width,
    .height = lookout->height,
    .scale_factor = gtk_widget_get_scale_factor (GTK_WIDGET (self)),
    .moving = lookout->moving,
  };
  double x_nm, y_nm;

  cw_placing_to_wall (&self->placing, 0, 0, &x_nm, &y_nm);
  cw_view_to_widget (&self->view, x_nm, y_nm, &at.x, &at.y);
  return at;
}

/* ---------------------------------------------------------- the whole board */

static double
strength_of (CwBoard *self, CwBoardPicture picture)
{
  double strength = 1;

  if (!is_of_takeoff (picture))
    return 1;
  if (!is_takeoff_fresh (self) && !self->previews)
    strength *= STALE_STRENGTH;
  if (shows_sheet (self))
    strength *= self->kind == CW_TOOL_SELECT ? OVER_SHEET_STRENGTH
                                             : TRACING_STRENGTH;
  return strength;
}

static void
show_picture (CwBoard *self, CwBoardPicture picture, GtkSnapshot *snapshot,
              const CwLookout *lookout)
{
  double strength = strength_of (self, picture);

  if (strength < 1)
    gtk_snapshot_push_opacity (snapshot, strength);
  cw_picture_snapshot (&self->pictures[picture], snapshot, lookout);
  if (strength < 1)
    gtk_snapshot_pop (snapshot);
}

void
cw_board_find_palette (CwBoard *self)
{
  GtkStyleContext *style = gtk_widget_get_style_context (GTK_WIDGET (self));
  CwPalette palette;
  GdkRGBA ink;

  gtk_style_context_get_color (style, &ink);
  palette = self->as_printed                          ? CW_PALETTE_PAPER
            : ink.red + ink.green + ink.blue > 1.5f ? CW_PALETTE_DARK
                                                    : CW_PALETTE_LIGHT;
  if (palette == self->palette)
    return;
  self->palette = palette;
  for (guint i = 0; i < CW_N_BOARD_PICTURES; i++)
    cw_picture_forget_node (&self->pictures[i]);
  for (guint i = 0; i < self->neighbours->len; i++)
    cw_picture_forget_node (
        &((CwNeighbour *) g_ptr_array_index (self->neighbours, i))->picture);
}

void
cw_board_css_changed (GtkWidget *widget, GtkCssStyleChange *change)
{
  GTK_WIDGET_CLASS (g_type_class_peek_static (GTK_TYPE_WIDGET))
      ->css_changed (widget, change);
  cw_board_find_palette (CW_BOARD (widget));
  gtk_widget_queue_draw (widget);
}

static void
show_wall (CwBoard *self, GtkSnapshot *snapshot, const CwLookout *lookout)
{
  if (!self->as_printed)
    show_neighbours (self, snapshot, lookout);
  for (guint i = CW_BOARD_FACE; i <= CW_BOARD_OPENINGS; i++)
    show_picture (self, (CwBoardPicture) i, snapshot, lookout);
}

/* The sheet that it will be printed on. */
static void
show_white (CwBoard *self, GtkSnapshot *snapshot, const CwLookout *lookout)
{
  const GdkRGBA white = { 1, 1, 1, 1 };

  if (self->as_printed)
    gtk_snapshot_append_color (
        snapshot, &white,
        &GRAPHENE_RECT_INIT (0, 0, (float) lookout->width,
                             (float) lookout->height));
}

/* The page's pixels lie on the window's, and the wall with them. */
static void
align_to_pixels (CwBoard *self)
{
  double x_nm, y_nm, x, y;

  if (is_zooming (self) || !shows_sheet (self))
    return;
  cw_placing_to_wall (&self->placing, 0, 0, &x_nm, &y_nm);
  cw_view_to_widget (&self->view, x_nm, y_nm, &x, &y);
  cw_view_pan (&self->view, round (x) - x, round (y) - y);
}

/* The wall lies between the paper and its ink: whatever covers what, the
 * sheet's lines are seen. */
static void
show_wall_in_sheet (CwBoard *self, GtkSnapshot *snapshot,
                    const CwLookout *lookout)
{
  CwSheetLookout at = sheet_lookout (self, lookout);
  double width, height;

  if (!cw_board_page_size (self, &width, &height))
    {
      show_wall (self, snapshot, lookout);
      return;
    }
  renew_tiles (self);
  show_paper (self, snapshot, &at, width, height);
  show_wall (self, snapshot, lookout);
  cw_sheet_tiles_snapshot (self->tiles, snapshot, &at);
}

static CwLookout
present_lookout (CwBoard *self)
{
  return (CwLookout) {
    .view = self->view,
    .width = gtk_widget_get_width (GTK_WIDGET (self)),
    .height = gtk_widget_get_height (GTK_WIDGET (self)),
    .palette = self->palette,
    .text_scale = cw_text_scale_of (GTK_WIDGET (self)),
    .over_sheet = shows_sheet (self),
    .moving = is_zooming (self),
  };
}

void
cw_board_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  CwBoard *self = CW_BOARD (widget);
  CwLookout lookout;

  if (self->wants_fit)
    cw_board_zoom_fit (self);
  align_to_pixels (self);
  renew_lists (self);
  renew_neighbours (self);
  lookout = present_lookout (self);
  show_white (self, snapshot, &lookout);
  if (shows_sheet (self))
    show_wall_in_sheet (self, snapshot, &lookout);
  else
    show_wall (self, snapshot, &lookout);
  for (guint i = CW_BOARD_MEASURES; i < CW_N_BOARD_PICTURES; i++)
    show_picture (self, (CwBoardPicture) i, snapshot, &lookout);
  cw_board_show_crosshair (self, snapshot);
}
