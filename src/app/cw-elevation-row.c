/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-elevation-row.h"

#include "cw-amount-text.h"
#include "cw-elevation-picture.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"

struct _CwElevationRow
{
  GtkListBoxRow parent;
  char *id;
  GtkWidget *picture, *name, *area;
};

G_DEFINE_FINAL_TYPE (CwElevationRow, cw_elevation_row, GTK_TYPE_LIST_BOX_ROW)

const char *
cw_elevation_row_id (CwElevationRow *row)
{
  g_return_val_if_fail (CW_IS_ELEVATION_ROW (row), NULL);
  return row->id;
}

/* (transfer full) */
static char *
area_text (const CwElevation *elevation, const CwTakeoff *takeoff,
           const CwTextStyle *style)
{
  const CwQuantity *net
      = takeoff ? cw_takeoff_quantity (takeoff, elevation->id, "wall.net")
                : NULL;
  if (!elevation->outline)
    return g_strdup (_("not drawn yet"));
  if (!net)
    return g_strdup ("…");
  g_autofree char *one
      = cw_amount_text_with_unit (style, net->amount, net->unit);
  if (elevation->count == 1)
    return g_steal_pointer (&one);
  /* Translators: how many such walls, and the net area of one. */
  return g_strdup_printf (_("%d × %s"), (int) elevation->count, one);
}

void
cw_elevation_row_refresh (CwElevationRow *row, CwJob *job)
{
  g_return_if_fail (CW_IS_ELEVATION_ROW (row));
  const CwTakeoff *takeoff = cw_job_takeoff (job);
  const CwElevation *elevation = cw_project_elevation (
      cw_document_project (cw_job_document (job)), row->id);
  if (!elevation)
    return;
  g_autofree char *area
      = area_text (elevation, takeoff, cw_job_style (job));
  const char *name = *elevation->name ? elevation->name : elevation->id;
  gtk_label_set_text (GTK_LABEL (row->name), name);
  gtk_label_set_text (GTK_LABEL (row->area), area);
  g_autofree char *spoken = g_strdup_printf ("%s, %s", name, area);
  cw_widget_set_name (GTK_WIDGET (row), spoken);
  cw_elevation_picture_show (
      CW_ELEVATION_PICTURE (row->picture),
      takeoff ? cw_takeoff_wall (takeoff, row->id) : NULL);
}

static void
cw_elevation_row_finalize (GObject *object)
{
  g_free (CW_ELEVATION_ROW (object)->id);
  G_OBJECT_CLASS (cw_elevation_row_parent_class)->finalize (object);
}

static void
cw_elevation_row_class_init (CwElevationRowClass *class)
{
  G_OBJECT_CLASS (class)->finalize = cw_elevation_row_finalize;
}

static GtkWidget *
new_line (GtkWidget *box)
{
  GtkWidget *label = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_box_append (GTK_BOX (box), label);
  return label;
}

static void
cw_elevation_row_init (CwElevationRow *row)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  GtkWidget *texts = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  gtk_widget_set_valign (texts, GTK_ALIGN_CENTER);
  gtk_widget_set_hexpand (texts, TRUE);
  row->picture = cw_elevation_picture_new ();
  gtk_box_append (GTK_BOX (line), row->picture);
  gtk_box_append (GTK_BOX (line), texts);
  row->name = new_line (texts);
  row->area = new_line (texts);
  gtk_widget_add_css_class (row->area, "cw-dim");
  gtk_widget_add_css_class (row->area, "cw-figure");
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), line);
}

GtkWidget *
cw_elevation_row_new (const char *id)
{
  CwElevationRow *row = g_object_new (CW_TYPE_ELEVATION_ROW, NULL);
  row->id = g_strdup (id);
  return GTK_WIDGET (row);
}
