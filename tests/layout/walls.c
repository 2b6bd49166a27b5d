/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "walls.h"

static void
set_outline (WallMaker *maker, const CwCorner *corners, gsize n)
{
  CwNode *outline = cw_node_new (&cw_outline_type);
  g_autoptr (CwList) list = cw_corners_to_list (corners, n);
  cw_node_set_list (outline, 0, list);
  cw_node_set_child ((CwNode *) maker->elevation, 0, outline);
  cw_node_unref (outline);
}

void
wall_begin_bowed (WallMaker *maker, const CwCorner *corners, gsize n)
{
  maker->elevation = (CwElevation *) cw_node_new (&cw_elevation_type);
  cw_node_put_text ((CwNode *) maker->elevation, "id", "e1");
  cw_node_put_text ((CwNode *) maker->elevation, "name", "South");
  cw_node_put_text ((CwNode *) maker->elevation, "buildup", "b1");
  set_outline (maker, corners, n);
  maker->setting_out = (CwSettingOut *) cw_node_new (&cw_setting_out_type);
  maker->panel = (CwPanel *) cw_node_new (&cw_panel_type);
  maker->stud_spacing = 0;
}

static CwCorner *
straight_corners (const CwPoint *points, gsize n)
{
  CwCorner *corners = g_new0 (CwCorner, n);
  for (gsize i = 0; i < n; i++)
    corners[i] = (CwCorner) { points[i], 0, CW_EDGE_ABUTMENT };
  return corners;
}

void
wall_begin (WallMaker *maker, const CwPoint *points, gsize n)
{
  g_autofree CwCorner *corners = straight_corners (points, n);
  wall_begin_bowed (maker, corners, n);
}

void
wall_begin_box (WallMaker *maker, CwLength width, CwLength height)
{
  const CwPoint corners[]
      = { { 0, 0 }, { width, 0 }, { width, height }, { 0, height } };
  wall_begin (maker, corners, G_N_ELEMENTS (corners));
}

/* Items are the elevation's second slot. */
static CwNode *
add_item (WallMaker *maker, const CwNodeType *type, char stem)
{
  CwNode *item = cw_node_new (type);
  const gsize n = cw_list_length (maker->elevation->items);
  g_autofree char *id = g_strdup_printf ("%c%" G_GSIZE_FORMAT, stem, n + 1);
  cw_node_put_text (item, "id", id);
  return item;
}

static void
keep_item (WallMaker *maker, CwNode *item)
{
  g_autoptr (CwList) items
      = cw_list_append (maker->elevation->items, item);
  cw_node_set_list ((CwNode *) maker->elevation, 1, items);
  cw_node_unref (item);
}

static CwNode *
add_sized (WallMaker *maker, const CwNodeType *type, CwLength x, CwLength y,
           CwLength width, CwLength height)
{
  CwNode *item = add_item (maker, type, 'o');
  cw_node_put (item, "x", x);
  cw_node_put (item, "y", y);
  cw_node_put (item, "width", width);
  cw_node_put (item, "height", height);
  return item;
}

void
wall_add_opening (WallMaker *maker, CwLength x, CwLength y, CwLength width,
                  CwLength height)
{
  keep_item (maker,
             add_sized (maker, &cw_window_type, x, y, width, height));
}

void
wall_add_arch (WallMaker *maker, CwLength x, CwLength y, CwLength width,
               CwLength height, CwLength rise)
{
  CwNode *arch = add_sized (maker, &cw_arch_type, x, y, width, height);
  cw_node_put (arch, "rise", rise);
  cw_node_put (arch, "head", CW_ARCH_SEGMENTAL);
  keep_item (maker, arch);
}

void
wall_add_stub_out (WallMaker *maker, CwLength x, CwLength y,
                   CwLength diameter)
{
  keep_item (maker, add_sized (maker, &cw_stub_out_type, x, y, diameter,
                               diameter));
}

void
wall_add_box_out (WallMaker *maker, CwLength x, CwLength y, CwLength width,
                  CwLength height, CwLength clearance)
{
  CwNode *box = add_sized (maker, &cw_stub_out_type, x, y, width, height);
  cw_node_put (box, "shape", CW_SHAPE_RECTANGULAR);
  cw_node_put (box, "clearance", clearance);
  keep_item (maker, box);
}

void
wall_add_unclad (WallMaker *maker, const CwPoint *points, gsize n)
{
  g_autofree CwCorner *corners = straight_corners (points, n);
  g_autoptr (CwList) list = cw_corners_to_list (corners, n);
  CwNode *unclad = add_item (maker, &cw_unclad_type, 'u');
  cw_node_set_list (unclad, CW_UNCLAD_CORNERS, list);
  keep_item (maker, unclad);
}

void
wall_add_band (WallMaker *maker, const CwBox *box)
{
  keep_item (maker,
             add_sized (maker, &cw_band_type, box->left, box->bottom,
                        cw_box_width (box), cw_box_height (box)));
}

static void
set_studs (const WallMaker *maker, CwNode *buildup)
{
  CwNode *studs;
  if (maker->stud_spacing <= 0)
    return;
  studs = cw_node_copy (cw_node_child (buildup, CW_BUILDUP_STUDS));
  cw_node_put (studs, "spacing", maker->stud_spacing);
  cw_node_set_child (buildup, CW_BUILDUP_STUDS, studs);
  cw_node_unref (studs);
}

static int
slot_of (const CwNodeType *type, const CwNodeType *child)
{
  for (guint i = 0; i < type->n_slots; i++)
    if (type->slots[i].types[0] == child)
      return (int) i;
  g_assert_not_reached ();
}

static CwProject *
project_of (WallMaker *maker)
{
  g_autoptr (CwNode) base
      = (CwNode *) cw_project_new_default (CW_UNITS_METRIC);
  const CwProject *defaults = (const CwProject *) base;
  CwNode *buildup = cw_node_copy (cw_list_at (defaults->buildups, 0));
  CwNode *panel = (CwNode *) maker->panel;
  g_autoptr (CwList) panels = cw_list_new (&panel, 1);
  cw_node_put_text (buildup, "id", "b1");
  cw_node_set_list (buildup, slot_of (&cw_buildup_type, &cw_panel_type),
                    panels);
  cw_node_set_child (buildup,
                     slot_of (&cw_buildup_type, &cw_setting_out_type),
                     (CwNode *) maker->setting_out);
  set_studs (maker, buildup);

  CwNode *project = cw_node_copy (base);
  CwNode *elevation = (CwNode *) maker->elevation;
  g_autoptr (CwList) buildups = cw_list_new (&buildup, 1);
  g_autoptr (CwList) elevations = cw_list_new (&elevation, 1);
  cw_node_set_list (project, slot_of (&cw_project_type, &cw_buildup_type),
                    buildups);
  cw_node_set_list (project, slot_of (&cw_project_type, &cw_elevation_type),
                    elevations);
  cw_node_unref (buildup);
  return (CwProject *) project;
}

CwLayout *
wall_layout (WallMaker *maker)
{
  CwProject *project = project_of (maker);
  g_autoptr (CwWall) wall
      = cw_wall_new (project, cw_list_at (project->elevations, 0));
  CwLayout *layout = cw_layout_new (wall);
  cw_node_unref (project);
  cw_node_unref (maker->elevation);
  cw_node_unref (maker->panel);
  cw_node_unref (maker->setting_out);
  return layout;
}
