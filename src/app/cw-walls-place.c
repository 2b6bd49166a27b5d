/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-walls-place.h"

#include "cw-check-list.h"
#include "cw-checker.h"
#include "cw-elevation-list.h"
#include "cw-i18n.h"
#include "cw-inspector.h"
#include "cw-item-list.h"
#include "cw-look.h"
#include "cw-mark-list.h"
#include "cw-quantities.h"
#include "cw-sheet-list.h"
#include "cw-status-line.h"
#include "cw-tool-bar.h"
#include "cw-tour.h"

struct _CwWallsPlace
{
  GtkWidget parent;
  GtkWidget *whole, *tools;
  CwElevationList *elevations;
  CwItemList *items;
  CwMarkList *marks;
  CwSheetList *sheets;
  CwCheckList *checks;
  CwBoardFrame *board_frame;
  CwSettingPanel *setting;
  CwInspector *inspector;
  CwQuantities *quantities;
  CwStatusLine *status;
  CwChecker *checker;
};

G_DEFINE_FINAL_TYPE (CwWallsPlace, cw_walls_place, GTK_TYPE_WIDGET)

CwBoard *
cw_walls_place_board (CwWallsPlace *place)
{
  g_return_val_if_fail (CW_IS_WALLS_PLACE (place), NULL);
  return cw_board_frame_board (place->board_frame);
}

CwSettingPanel *
cw_walls_place_setting (CwWallsPlace *place)
{
  g_return_val_if_fail (CW_IS_WALLS_PLACE (place), NULL);
  return place->setting;
}

void
cw_walls_place_list_items (CwWallsPlace *place)
{
  g_return_if_fail (CW_IS_WALLS_PLACE (place));
  cw_item_list_enter (place->items);
}

void
cw_walls_place_type (CwWallsPlace *place)
{
  g_return_if_fail (CW_IS_WALLS_PLACE (place));
  cw_board_frame_type (place->board_frame, "");
}

static void
mark_checks (CwWallsPlace *place)
{
  g_autofree char *summary = cw_checker_summary (place->checker);
  cw_board_set_checks (cw_walls_place_board (place),
                       cw_checker_checks (place->checker));
  cw_status_line_set_checks (place->status, summary);
}

void
cw_walls_place_set_job (CwWallsPlace *place, CwJob *job)
{
  g_return_if_fail (CW_IS_WALLS_PLACE (place));
  cw_board_frame_set_job (place->board_frame, job);
  cw_setting_panel_follow (place->setting, place->board_frame, job);
  cw_elevation_list_set_job (place->elevations, job);
  cw_item_list_set_job (place->items, job);
  cw_mark_list_set_job (place->marks, job);
  cw_sheet_list_set_job (place->sheets, job);
  place->checker = cw_checker_new (job);
  g_signal_connect_object (place->checker, "changed",
                           G_CALLBACK (mark_checks), place,
                           G_CONNECT_SWAPPED);
  cw_check_list_set_job (place->checks, job, place->checker);
  cw_inspector_set_job (place->inspector, job);
  cw_quantities_set_job (place->quantities, job);
  cw_status_line_follow (place->status, cw_walls_place_board (place), job);
  cw_status_line_follow_moves (
      place->status, cw_board_frame_move_label (place->board_frame));
  mark_checks (place);
}

void
cw_walls_place_tour (CwWallsPlace *place)
{
  g_return_if_fail (CW_IS_WALLS_PLACE (place));
  const CwTourStop stops[] = {
    { place->tools, GTK_POS_BOTTOM, FALSE, _("Tools"),
      _("Choose one with the mouse or by its key: W draws a wall, I a window, "
        "D a door. The line at the foot says what the next click does.") },
    { GTK_WIDGET (place->board_frame), GTK_POS_BOTTOM, TRUE, _("Drawing board"),
      _("Click corners, or just type a size such as 12' x 9'. Without a mouse "
        "arrows move a crosshair and Space clicks.") },
    { GTK_WIDGET (place->elevations), GTK_POS_RIGHT, FALSE, _("Walls"),
      _("Every elevation with its net area; below are what is on it, the plan "
        "sheets, and what should be looked at before you order.") },
    { GTK_WIDGET (place->inspector), GTK_POS_LEFT, FALSE, _("What is selected"),
      _("Its sizes to the last fraction. Type over any of them.") },
    { GTK_WIDGET (place->quantities), GTK_POS_LEFT, FALSE, _("Quantities"),
      _("They follow each edit. Choose a line to see the steps to it and to "
        "light up where it comes from.") },
  };
  cw_tour_start (GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (place))), stops,
                 G_N_ELEMENTS (stops));
}

static void
light (CwWallsPlace *place, const CwQuantityType *type, const char *variant)
{
  cw_board_light (cw_walls_place_board (place), type, variant);
}

static void
light_check (CwWallsPlace *place, const CwCheck *check)
{
  cw_board_light_check (cw_walls_place_board (place), check);
}

static void
cw_walls_place_dispose (GObject *object)
{
  CwWallsPlace *place = CW_WALLS_PLACE (object);
  g_clear_object (&place->checker);
  gtk_widget_dispose_template (GTK_WIDGET (place), CW_TYPE_WALLS_PLACE);
  G_OBJECT_CLASS (cw_walls_place_parent_class)->dispose (object);
}

static void
ensure_types (void)
{
  g_type_ensure (CW_TYPE_TOOL_BAR);
  g_type_ensure (CW_TYPE_ELEVATION_LIST);
  g_type_ensure (CW_TYPE_ITEM_LIST);
  g_type_ensure (CW_TYPE_MARK_LIST);
  g_type_ensure (CW_TYPE_SHEET_LIST);
  g_type_ensure (CW_TYPE_CHECK_LIST);
  g_type_ensure (CW_TYPE_BOARD_FRAME);
  g_type_ensure (CW_TYPE_SETTING_PANEL);
  g_type_ensure (CW_TYPE_INSPECTOR);
  g_type_ensure (CW_TYPE_QUANTITIES);
  g_type_ensure (CW_TYPE_STATUS_LINE);
}

static void
cw_walls_place_class_init (CwWallsPlaceClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  G_OBJECT_CLASS (class)->dispose = cw_walls_place_dispose;
  ensure_types ();
  gtk_widget_class_set_template_from_resource (
      widget_class, CW_RESOURCE_PATH "/walls-place.ui");
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace, whole);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace,
                                        elevations);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace, items);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace, marks);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace, sheets);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace, tools);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace, checks);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace,
                                        board_frame);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace, setting);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace,
                                        inspector);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace,
                                        quantities);
  gtk_widget_class_bind_template_child (widget_class, CwWallsPlace, status);
}

static void
cw_walls_place_init (CwWallsPlace *place)
{
  gtk_widget_init_template (GTK_WIDGET (place));
  g_signal_connect_object (place->quantities, "lit", G_CALLBACK (light),
                           place, G_CONNECT_SWAPPED);
  g_signal_connect_object (place->checks, "chosen", G_CALLBACK (light_check),
                           place, G_CONNECT_SWAPPED);
}

GtkWidget *
cw_walls_place_new (void)
{
  return g_object_new (CW_TYPE_WALLS_PLACE, NULL);
}
