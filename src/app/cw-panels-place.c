/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-panels-place.h"

#include "cw-cut-lister.h"
#include "cw-look.h"

struct _CwPanelsPlace
{
  GtkWidget parent;
  GtkWidget *whole;
  CwPanelScopes *scopes;
  CwCutGrid *grid;
  CwCutDetail *detail;
  CwJob *job;
  CwCutLister *lister;
};

G_DEFINE_FINAL_TYPE (CwPanelsPlace, cw_panels_place, GTK_TYPE_WIDGET)

CwPanelScopes *
cw_panels_place_scopes (CwPanelsPlace *place)
{
  g_return_val_if_fail (CW_IS_PANELS_PLACE (place), NULL);
  return place->scopes;
}

CwCutGrid *
cw_panels_place_grid (CwPanelsPlace *place)
{
  g_return_val_if_fail (CW_IS_PANELS_PLACE (place), NULL);
  return place->grid;
}

CwCutDetail *
cw_panels_place_detail (CwPanelsPlace *place)
{
  g_return_val_if_fail (CW_IS_PANELS_PLACE (place), NULL);
  return place->detail;
}

void
cw_panels_place_enter (CwPanelsPlace *place)
{
  g_return_if_fail (CW_IS_PANELS_PLACE (place));
  gtk_widget_child_focus (GTK_WIDGET (place->grid), GTK_DIR_TAB_FORWARD);
}

static void
show_list (CwPanelsPlace *place)
{
  cw_cut_grid_show (place->grid, cw_cut_lister_list (place->lister),
                    cw_panel_scopes_chosen (place->scopes),
                    cw_job_style (place->job));
}

static void
show_chosen (CwPanelsPlace *place)
{
  cw_cut_detail_show (place->detail, cw_cut_grid_chosen (place->grid),
                      cw_job_style (place->job));
}

/* Nobody looks: nothing needs to be worked out. */
static void
map_changed (CwPanelsPlace *place)
{
  if (place->lister)
    cw_cut_lister_set_wanted (place->lister,
                              gtk_widget_get_mapped (GTK_WIDGET (place)));
}

void
cw_panels_place_set_job (CwPanelsPlace *place, CwJob *job)
{
  g_return_if_fail (CW_IS_PANELS_PLACE (place));
  g_return_if_fail (place->job == NULL);
  place->job = g_object_ref (job);
  place->lister = cw_cut_lister_new (job);
  cw_panel_scopes_set_job (place->scopes, job);
  g_signal_connect_object (place->lister, "changed", G_CALLBACK (show_list),
                           place, G_CONNECT_SWAPPED);
  g_signal_connect_object (place->scopes, "chosen", G_CALLBACK (show_list),
                           place, G_CONNECT_SWAPPED);
  g_signal_connect_object (place->grid, "chosen", G_CALLBACK (show_chosen),
                           place, G_CONNECT_SWAPPED);
  g_signal_connect_object (job, "style-changed", G_CALLBACK (show_list),
                           place, G_CONNECT_SWAPPED);
  show_list (place);
}

static void
cw_panels_place_dispose (GObject *object)
{
  CwPanelsPlace *place = CW_PANELS_PLACE (object);
  gtk_widget_dispose_template (GTK_WIDGET (place), CW_TYPE_PANELS_PLACE);
  g_clear_object (&place->lister);
  g_clear_object (&place->job);
  G_OBJECT_CLASS (cw_panels_place_parent_class)->dispose (object);
}

static void
cw_panels_place_class_init (CwPanelsPlaceClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  G_OBJECT_CLASS (class)->dispose = cw_panels_place_dispose;
  g_type_ensure (CW_TYPE_PANEL_SCOPES);
  g_type_ensure (CW_TYPE_CUT_GRID);
  g_type_ensure (CW_TYPE_CUT_DETAIL);
  gtk_widget_class_set_template_from_resource (
      widget_class, CW_RESOURCE_PATH "/panels-place.ui");
  gtk_widget_class_bind_template_child (widget_class, CwPanelsPlace, whole);
  gtk_widget_class_bind_template_child (widget_class, CwPanelsPlace, scopes);
  gtk_widget_class_bind_template_child (widget_class, CwPanelsPlace, grid);
  gtk_widget_class_bind_template_child (widget_class, CwPanelsPlace, detail);
}

static void
cw_panels_place_init (CwPanelsPlace *place)
{
  gtk_widget_init_template (GTK_WIDGET (place));
  g_signal_connect_after (place, "map", G_CALLBACK (map_changed), NULL);
  g_signal_connect_after (place, "unmap", G_CALLBACK (map_changed), NULL);
}

GtkWidget *
cw_panels_place_new (void)
{
  return g_object_new (CW_TYPE_PANELS_PLACE, NULL);
}
