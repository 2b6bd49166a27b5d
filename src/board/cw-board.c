/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-board-private.h"

guint cw_board_signals[CW_N_BOARD_SIGNALS];

G_DEFINE_FINAL_TYPE (CwBoard, cw_board, GTK_TYPE_WIDGET)

const CwElevation *
cw_board_elevation (CwBoard *self)
{
  return self->document ? cw_document_elevation (self->document) : NULL;
}

void
cw_board_spoil (CwBoard *self, guint pictures)
{
  self->stale |= pictures;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
cw_board_spoil_neighbours (CwBoard *self)
{
  self->neighbours_stale = TRUE;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static gboolean
is_same_elevation (const CwWall *a, const CwWall *b)
{
  return a && b && g_strcmp0 (a->elevation->id, b->elevation->id) == 0;
}

/* The panels are those of the last takeoff, whatever becomes of their wall
 * before the next one. */
static void
renew_wall (CwBoard *self)
{
  const CwElevation *elevation = cw_board_elevation (self);
  CwWall *former = self->wall;

  self->wall = elevation
                   ? cw_wall_renew (former,
                                    cw_document_project (self->document),
                                    elevation)
                   : NULL;
  if (self->wall != former)
    cw_board_spoil (self, is_same_elevation (self->wall, former)
                              ? ~(1u << CW_BOARD_PANELS
                                  | 1u << CW_BOARD_LININGS)
                              : ~0u);
  g_clear_pointer (&former, cw_wall_unref);
}

/* Of the last good takeoff, as it is seen. */
static void
give_joints (CwBoard *self)
{
  const CwWallTakeoff *takeoff
      = self->takeoff && self->elevation_id
                && (self->layers & CW_LAYER_PANELS)
            ? cw_takeoff_wall (self->takeoff, self->elevation_id)
            : NULL;

  if (self->tool)
    cw_tool_set_joints (self->tool, takeoff ? takeoff->layout->joints : NULL);
}

/* Those of the sheet that lies under the wall, while it is seen. */
static void
give_drawn (CwBoard *self)
{
  const CwDrawnLines *lines
      = self->sheet_id && self->shows_sheet
            ? g_hash_table_lookup (self->drawn, self->sheet_id)
            : NULL;

  if (self->tool)
    cw_tool_set_drawn (self->tool, lines, &self->placing);
}

static void
follow (CwBoard *self)
{
  CwPoint shift = self->tool ? cw_tool_take_shift (self->tool)
                             : cw_point (0, 0);

  renew_wall (self);
  cw_board_follow_document (self, shift);
  give_joints (self);
  give_drawn (self);
  if (self->tool)
    cw_tool_refresh (self->tool);
  cw_board_spoil_neighbours (self);
  cw_board_spoil (self, 1 << CW_BOARD_OVERLAY);
  cw_board_tell (self);
}

/* Words for assistive technology: what is on the board, what is chosen. */
static char *
describe_wall (CwBoard *self)
{
  const CwElevation *elevation = cw_board_elevation (self);
  g_autofree char *width = NULL, *height = NULL;
  CwBox box;

  if (elevation == NULL)
    return g_strdup (_ ("No elevation yet"));
  if (self->wall == NULL || self->wall->outline == NULL)
    return g_strdup_printf (_ ("%s: no outline yet"), elevation->name);
  box = cw_region_box (self->wall->outline);
  width = cw_length_format (cw_box_width (&box), &self->style);
  height = cw_length_format (cw_box_height (&box), &self->style);
  return g_strdup_printf (
      g_dngettext (GETTEXT_PACKAGE, "%s: %s × %s, %u item",
                   "%s: %s × %s, %u items",
                   (gulong) cw_list_length (elevation->items)),
      elevation->name, width, height,
      (guint) cw_list_length (elevation->items));
}

static char *
describe_selection (CwBoard *self)
{
  const char *const *ids
      = self->document ? cw_document_selection (self->document) : NULL;
  guint n = ids ? g_strv_length ((char **) ids) : 0;
  const CwNode *node;

  if (n == 0)
    return g_strdup (_ ("Nothing selected"));
  node = cw_node_find (&cw_document_project (self->document)->node, ids[0]);
  if (n == 1 && node)
    return g_strdup_printf (_ ("Selected: %s %s"), _ (node->type->label),
                            ids[0]);
  return g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%u item selected",
                                       "%u items selected", n),
                          n);
}

static void
tell_assistive (CwBoard *self)
{
  g_autofree char *wall = describe_wall (self);
  g_autofree char *selected = describe_selection (self);
  g_autofree char *label = g_strdup_printf (
      _ ("Drawing board: %s"), _ (cw_tool_infos[self->kind].label));
  g_autofree char *crosshair = cw_board_describe_crosshair (self);
  g_autofree char *description
      = g_strdup_printf ("%s%s%s. %s. %s", crosshair ? crosshair : "",
                         crosshair ? ". " : "", wall, selected, self->hint);

  if (g_strcmp0 (label, self->label) == 0
      && g_strcmp0 (description, self->description) == 0)
    return;
  gtk_accessible_update_property (
      GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, label,
      GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, description, -1);
  g_free (self->label);
  g_free (self->description);
  self->label = g_steal_pointer (&label);
  self->description = g_steal_pointer (&description);
}

/* Why there is no sheet to be seen, or NULL. */
static const char *
sheet_trouble (CwBoard *self)
{
  double width, height;

  if (self->sheet_id && g_hash_table_contains (self->sources, self->sheet_id)
      && !cw_board_page_size (self, &width, &height))
    return _ ("its file has no such page");
  return self->tiles ? cw_sheet_tiles_trouble (self->tiles) : NULL;
}

static char *
present_hint (CwBoard *self)
{
  const char *hint = self->tool ? cw_tool_hint (self->tool) : "";
  const char *trouble = sheet_trouble (self);

  if (trouble)
    return g_strdup_printf (_ ("%s — the sheet cannot be shown: %s"), hint,
                            trouble);
  if (self->sheet_id && self->placing.assumed && self->kind != CW_TOOL_SCALE)
    return g_strdup_printf (
        _ ("%s — the sheet has no scale yet, 1:100 is assumed"), hint);
  return g_strdup (hint);
}

void
cw_board_tell (CwBoard *self)
{
  g_autofree char *hint = present_hint (self);
  gboolean changed = g_strcmp0 (hint, self->hint) != 0;

  if (changed)
    {
      g_free (self->hint);
      self->hint = g_steal_pointer (&hint);
    }
  tell_assistive (self);
  if (changed)
    g_signal_emit (self, cw_board_signals[CW_BOARD_HINT_CHANGED], 0);
}

/* Not before the button is up: a dialog that opens under a pressed button
 * would leave the gestures in the middle of a press. */
static void
tell_two_points (CwBoard *self)
{
  CwPoint first, second;
  gboolean has_points = cw_tool_two_points (self->tool, &first, &second);
  gboolean is_new = has_points && !self->had_points;

  if (self->pressed)
    return;
  self->had_points = has_points;
  if (is_new)
    g_signal_emit (self, cw_board_signals[CW_BOARD_TWO_POINTS], 0);
}

void
cw_board_after_tool (CwBoard *self)
{
  if (cw_tool_take_done (self->tool))
    cw_board_set_tool (self, CW_TOOL_SELECT);
  cw_board_spoil (self, 1 << CW_BOARD_OVERLAY);
  cw_board_tell (self);
  tell_two_points (self);
}

static void
choose_cursor (CwBoard *self)
{
  gtk_widget_set_cursor_from_name (
      GTK_WIDGET (self),
      self->kind == CW_TOOL_SELECT ? "default" : "crosshair");
}

static void
renew_tool (CwBoard *self)
{
  if (self->tool)
    self->forms[cw_tool_kind (self->tool)] = cw_tool_get_form (self->tool);
  g_clear_pointer (&self->tool, cw_tool_free);
  self->had_points = FALSE;
  self->pressed = self->held = FALSE;
  if (self->document == NULL)
    return;
  self->tool = cw_tool_new (self->kind, self->document);
  cw_tool_set_form (self->tool, self->forms[self->kind]);
  cw_tool_set_text_style (self->tool, &self->style);
  give_joints (self);
  give_drawn (self);
  cw_board_feed_again (self);
}

void
cw_board_set_tool (CwBoard *self, CwToolKind kind)
{
  g_return_if_fail (CW_IS_BOARD (self));
  g_return_if_fail (kind < CW_N_TOOLS);

  if (kind == self->kind && self->tool)
    return;
  if (self->tool)
    cw_tool_cancel (self->tool);
  self->kind = kind;
  renew_tool (self);
  choose_cursor (self);
  cw_board_spoil (self, 1 << CW_BOARD_OVERLAY | 1 << CW_BOARD_TRACED);
  cw_board_tell (self);
  g_signal_emit (self, cw_board_signals[CW_BOARD_TOOL_CHANGED], 0);
}

CwToolKind
cw_board_get_tool (CwBoard *self)
{
  g_return_val_if_fail (CW_IS_BOARD (self), CW_TOOL_SELECT);

  return self->kind;
}

const char *
cw_board_get_hint (CwBoard *self)
{
  g_return_val_if_fail (CW_IS_BOARD (self), "");

  return self->hint;
}

gboolean
cw_board_get_sheet_points (CwBoard *self, double *x0, double *y0, double *x1,
                           double *y1)
{
  CwPoint first, second;

  g_return_val_if_fail (CW_IS_BOARD (self), FALSE);

  if (self->tool == NULL || self->sheet_id == NULL
      || self->kind != CW_TOOL_SCALE
      || !cw_tool_two_points (self->tool, &first, &second))
    return FALSE;
  cw_placing_to_page (&self->placing, (double) first.x, (double) first.y, x0,
                      y0);
  cw_placing_to_page (&self->placing, (double) second.x, (double) second.y,
                      x1, y1);
  return TRUE;
}

static void
let_go_of_document (CwBoard *self)
{
  g_clear_pointer (&self->tool, cw_tool_free);
  if (self->document)
    g_signal_handlers_disconnect_by_data (self->document, self);
  g_clear_object (&self->document);
}

void
cw_board_set_document (CwBoard *self, CwDocument *document)
{
  g_return_if_fail (CW_IS_BOARD (self));
  g_return_if_fail (document == NULL || CW_IS_DOCUMENT (document));

  if (document == self->document)
    return;
  let_go_of_document (self);
  g_clear_pointer (&self->takeoff, cw_takeoff_unref);
  self->document = document ? g_object_ref (document) : NULL;
  if (document)
    {
      g_signal_connect_swapped (document, "changed", G_CALLBACK (follow),
                                self);
      g_signal_connect_swapped (document, "selection-changed",
                                G_CALLBACK (follow), self);
    }
  g_clear_pointer (&self->elevation_id, g_free);
  g_clear_pointer (&self->sheet_id, g_free);
  self->wants_fit = TRUE;
  renew_tool (self);
  follow (self);
}

void
cw_board_set_takeoff (CwBoard *self, const CwTakeoff *takeoff)
{
  CwTakeoff *former;

  g_return_if_fail (CW_IS_BOARD (self));

  if (takeoff == self->takeoff)
    return;
  former = self->takeoff;
  self->takeoff = takeoff ? cw_takeoff_ref (takeoff) : NULL;
  g_clear_pointer (&former, cw_takeoff_unref);
  give_joints (self);
  cw_board_spoil (self, 1 << CW_BOARD_PANELS | 1 << CW_BOARD_LININGS
                            | 1 << CW_BOARD_MEASURES
                            | 1 << CW_BOARD_LIT);
}

void
cw_board_set_previews (CwBoard *self, gboolean previews)
{
  g_return_if_fail (CW_IS_BOARD (self));

  self->previews = previews;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
cw_board_set_text_style (CwBoard *self, const CwTextStyle *style)
{
  g_return_if_fail (CW_IS_BOARD (self) && style != NULL);

  self->style = *style;
  if (self->tool)
    cw_tool_set_text_style (self->tool, style);
  cw_board_spoil (self, ~0u);
  cw_board_tell (self);
}

void
cw_board_set_sheet_source (CwBoard *self, const char *sheet_id,
                           CwSheetSource *source)
{
  g_return_if_fail (CW_IS_BOARD (self) && sheet_id != NULL);

  if (source)
    g_hash_table_insert (self->sources, g_strdup (sheet_id),
                         g_object_ref (source));
  else
    g_hash_table_remove (self->sources, sheet_id);
  if (g_strcmp0 (sheet_id, self->sheet_id) != 0)
    return;
  cw_board_drop_tiles (self);
  if (cw_board_elevation (self) == NULL
      || self->wall == NULL || self->wall->outline == NULL)
    self->wants_fit = TRUE;
  cw_board_tell (self);
  cw_board_spoil (self, ~0u);
}

void
cw_board_set_sheet_lines (CwBoard *self, const char *sheet_id,
                          const CwDrawnLines *lines)
{
  g_return_if_fail (CW_IS_BOARD (self) && sheet_id != NULL);

  if (lines)
    g_hash_table_insert (self->drawn, g_strdup (sheet_id),
                         cw_drawn_lines_ref (lines));
  else
    g_hash_table_remove (self->drawn, sheet_id);
  give_drawn (self);
}

void
cw_board_set_layers (CwBoard *self, CwLayers layers, gboolean sheet)
{
  g_return_if_fail (CW_IS_BOARD (self));

  self->layers = layers;
  self->shows_sheet = sheet;
  give_drawn (self);
  cw_board_spoil (self, ~0u);
}

void
cw_board_light (CwBoard *self, const CwQuantityType *type,
                const char *variant)
{
  g_return_if_fail (CW_IS_BOARD (self));

  if (type == self->lit && g_strcmp0 (variant, self->lit_variant) == 0
      && (type == NULL || !self->lit_places))
    return;
  if (type)
    cw_board_light_check (self, NULL);
  self->lit = type;
  g_free (self->lit_variant);
  self->lit_variant = g_strdup (variant);
  cw_board_spoil (self, 1 << CW_BOARD_LIT);
}

static void
neighbour_free (gpointer data)
{
  CwNeighbour *neighbour = data;

  cw_picture_clear (&neighbour->picture);
  cw_wall_unref (neighbour->wall);
  g_free (neighbour);
}

static void
cw_board_dispose (GObject *object)
{
  CwBoard *self = CW_BOARD (object);

  let_go_of_document (self);
  cw_board_drop_tiles (self);
  cw_board_drop_checks (self);
  g_clear_handle_id (&self->still_id, g_source_remove);
  for (guint i = 0; i < CW_N_BOARD_PICTURES; i++)
    cw_picture_clear (&self->pictures[i]);
  g_clear_pointer (&self->neighbours, g_ptr_array_unref);
  g_clear_pointer (&self->takeoff, cw_takeoff_unref);
  g_clear_pointer (&self->wall, cw_wall_unref);
  g_clear_pointer (&self->sources, g_hash_table_unref);
  g_clear_pointer (&self->drawn, g_hash_table_unref);
  G_OBJECT_CLASS (cw_board_parent_class)->dispose (object);
}

static void
cw_board_finalize (GObject *object)
{
  CwBoard *self = CW_BOARD (object);

  g_free (self->elevation_id);
  g_free (self->sheet_id);
  g_free (self->hint);
  g_free (self->lit_variant);
  g_free (self->label);
  g_free (self->description);
  G_OBJECT_CLASS (cw_board_parent_class)->finalize (object);
}

static void
measure (GtkWidget *widget, GtkOrientation orientation, int for_size,
         int *minimum, int *natural, int *minimum_baseline,
         int *natural_baseline)
{
  *minimum = 120;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 900 : 600;
}

/* Keys draw as soon as the board is seen, unless somebody is typing. */
static void
map (GtkWidget *widget)
{
  GtkWidget *focus;

  GTK_WIDGET_CLASS (cw_board_parent_class)->map (widget);
  focus = gtk_root_get_focus (gtk_widget_get_root (widget));
  if (focus == NULL || !GTK_IS_TEXT (focus))
    gtk_widget_grab_focus (widget);
}

static guint
add_signal (CwBoardClass *klass, const char *name, guint n, GType first,
            GType second)
{
  return g_signal_new (name, G_TYPE_FROM_CLASS (klass), G_SIGNAL_RUN_LAST, 0,
                       NULL, NULL, NULL, G_TYPE_NONE, n, first, second);
}

static void
add_signals (CwBoardClass *klass)
{
  static const char *const plain[] = {
    [CW_BOARD_TOOL_CHANGED] = "tool-changed",
    [CW_BOARD_HINT_CHANGED] = "hint-changed",
    [CW_BOARD_VIEW_CHANGED] = "view-changed",
    [CW_BOARD_TWO_POINTS] = "two-points",
  };

  for (guint i = 0; i < G_N_ELEMENTS (plain); i++)
    if (plain[i])
      cw_board_signals[i] = add_signal (klass, plain[i], 0, 0, 0);
  cw_board_signals[CW_BOARD_POINTER_MOVED]
      = add_signal (klass, "pointer-moved", 2, G_TYPE_INT64, G_TYPE_INT64);
  cw_board_signals[CW_BOARD_TEXT_WANTED]
      = add_signal (klass, "text-wanted", 1, G_TYPE_STRING, 0);
  cw_board_signals[CW_BOARD_MENU_WANTED]
      = add_signal (klass, "menu-wanted", 2, G_TYPE_DOUBLE, G_TYPE_DOUBLE);
}

static void
cw_board_class_init (CwBoardClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  object_class->dispose = cw_board_dispose;
  object_class->finalize = cw_board_finalize;
  widget_class->map = map;
  widget_class->measure = measure;
  widget_class->snapshot = cw_board_snapshot;
  widget_class->css_changed = cw_board_css_changed;
  gtk_widget_class_set_css_name (widget_class, "cw-board");
  gtk_widget_class_set_accessible_role (widget_class,
                                        GTK_ACCESSIBLE_ROLE_IMG);
  add_signals (klass);
}

static void
cw_board_init (CwBoard *self)
{
  self->style = cw_text_style_plain (CW_UNITS_METRIC);
  self->layers = CW_LAYER_ALL;
  self->shows_sheet = TRUE;
  self->stale = ~0u;
  self->view = (CwView) { 0, 0, 1e7 };
  self->wants_fit = TRUE;
  self->palette = CW_PALETTE_LIGHT;
  self->hint = g_strdup ("");
  self->neighbours = g_ptr_array_new_with_free_func (neighbour_free);
  self->sources = g_hash_table_new_full (g_str_hash, g_str_equal, g_free,
                                         g_object_unref);
  self->drawn = g_hash_table_new_full (
      g_str_hash, g_str_equal, g_free,
      (GDestroyNotify) cw_drawn_lines_unref);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_widget_add_css_class (GTK_WIDGET (self), "view");
  cw_board_listen (self);
  cw_board_tell (self);
}

GtkWidget *
cw_board_new (void)
{
  return g_object_new (CW_TYPE_BOARD, NULL);
}
