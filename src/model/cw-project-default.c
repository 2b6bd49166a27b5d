/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The project to start from.
 */
#include "cw-i18n.h"
#include "cw-project.h"

/* What differs from the defaults, in the sizes that are sold and built where
 * metric drawings are made; all common practice, no source. */
static void
put_metric_sizes (CwNode *studs, CwNode *barrier)
{
  cw_node_put (studs, "spacing", CW_MM (600));
  cw_node_put (barrier, "roll-width", CW_MM (1500));
  cw_node_put (barrier, "roll-length", CW_MM (50000));
  cw_node_put (barrier, "lap", CW_MM (100));
  cw_node_put (barrier, "end-lap", CW_MM (150));
  cw_node_put (barrier, "wrap", CW_MM (300));
}

/* Laps are held to round figures there, not to the 2 in and 6 in of IRC
 * R703.2 (50.8 and 152.4 mm); common practice, no source. */
static void
put_metric_limits (CwNode *project)
{
  g_autoptr (CwNode) limits = cw_node_new (&cw_limits_type);

  cw_node_put (limits, "barrier-lap", CW_MM (50));
  cw_node_put (limits, "barrier-end-lap", CW_MM (150));
  cw_node_set_child (project, CW_PROJECT_LIMITS, limits);
}

static void
add_layers (CwNode *buildup, CwUnits units)
{
  static const CwNodeType *const types[] = {
    [CW_BUILDUP_STUDS] = &cw_studs_type,
    [CW_BUILDUP_FASTENER] = &cw_fastener_type,
    [CW_BUILDUP_JOINT_MORTAR] = &cw_joint_mortar_type,
    [CW_BUILDUP_BARRIER] = &cw_barrier_type,
    [CW_BUILDUP_BASE_COAT] = &cw_base_coat_type,
    [CW_BUILDUP_MESH] = &cw_mesh_type,
    [CW_BUILDUP_FINISH] = &cw_finish_type,
    [CW_BUILDUP_SEALANT] = &cw_sealant_type,
    [CW_BUILDUP_BACKER_ROD] = &cw_backer_rod_type,
    [CW_BUILDUP_LABOUR] = &cw_labour_type,
  };
  CwNode *layers[G_N_ELEMENTS (types)] = { NULL };

  for (guint i = 0; i < G_N_ELEMENTS (types); i++)
    if (types[i])
      layers[i] = cw_node_new (types[i]);
  cw_node_put_text (layers[CW_BUILDUP_BASE_COAT], "suits", "aerated-panel");
  if (units == CW_UNITS_METRIC)
    put_metric_sizes (layers[CW_BUILDUP_STUDS], layers[CW_BUILDUP_BARRIER]);
  for (guint i = 0; i < G_N_ELEMENTS (types); i++)
    if (layers[i])
      {
        cw_node_set_child (buildup, i, layers[i]);
        cw_node_unref (layers[i]);
      }
}

static void
add_panel (CwNode *buildup)
{
  g_autoptr (CwNode) panel = cw_node_new (&cw_panel_type);
  g_autoptr (CwList) panels = NULL;

  cw_node_put_text (panel, "name", _ ("Panel 50 × 600 × 2400"));
  panels = cw_list_new (&panel, 1);
  cw_node_set_list (buildup, CW_BUILDUP_PANELS, panels);
}

/* One of each kind. */
static void
add_beads (CwNode *buildup)
{
  CwNode *nodes[CW_N_BEADS];
  g_autoptr (CwList) beads = NULL;

  for (guint kind = 0; kind < CW_N_BEADS; kind++)
    {
      nodes[kind] = cw_node_new (&cw_bead_type);
      cw_node_put (nodes[kind], "kind", kind);
    }
  beads = cw_list_new (nodes, CW_N_BEADS);
  for (guint kind = 0; kind < CW_N_BEADS; kind++)
    cw_node_unref (nodes[kind]);
  cw_node_set_list (buildup, CW_BUILDUP_BEADS, beads);
}

static CwNode *
default_buildup (CwUnits units)
{
  CwNode *buildup = cw_node_new (&cw_buildup_type);

  cw_node_put_text (buildup, "id", "b1");
  cw_node_put_text (buildup, "name", _ ("50 mm panel on wood studs"));
  add_panel (buildup);
  add_layers (buildup, units);
  add_beads (buildup);
  return buildup;
}

CwProject *
cw_project_new_default (CwUnits units)
{
  CwNode *project = cw_node_new (&cw_project_type);
  g_autoptr (CwNode) buildup = default_buildup (units);
  g_autoptr (CwList) buildups = cw_list_new (&buildup, 1);

  cw_node_put (project, "format", 1);
  cw_node_put (project, "units", units);
  cw_node_put_text (project, "currency",
                    units == CW_UNITS_US ? "USD" : "EUR");
  cw_node_set_list (project, CW_PROJECT_BUILDUPS, buildups);
  if (units == CW_UNITS_METRIC)
    put_metric_limits (project);
  cw_node_freeze (project);
  return (CwProject *) project;
}
