/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The best setting out of one wall: every start, bond, offset and base that
 * the user allows is laid and its panels are planned, and a table says what
 * each would cost. A pure function of the wall; it takes a second
 * or two, for a wall of 500 m² half a minute, so it belongs on a worker
 * thread.
 *
 * Offsets and bases are endless; those tried put a joint where the wall has
 * something to meet: at jambs, sills, heads and corners (or the least piece
 * from them, where a joint may not meet a corner), half a panel on, and with
 * what is left over at the far end, at the near one or shared by both.
 */
#pragma once

#include <gio/gio.h>

#include "cw-wall.h"

G_BEGIN_DECLS

/* What the search may change; the rest stays as the buildup has it. */
typedef struct
{
  guint starts;               /* mask of 1 << CwStart */
  guint bonds;                /* mask of 1 << CwBond */
  gboolean offsets, bases;
} CwSettingAllowed;

#define CW_SETTING_ALL_STARTS 7u
#define CW_SETTING_ALL_BONDS 7u

typedef struct
{
  CwStart start;
  CwBond bond;
  CwLength offset, base;
  CwLength stagger;           /* as the buildup's when the bond has none */
  guint n_panels;             /* that the cut plan uses */
  guint n_least;              /* that no plan can do without */
  guint n_troubles;           /* rules that could not be kept */
  double saw;                 /* m of saw cuts, straight and curved */
  double cost;                /* of panels, joint mortar and fasteners, without
                                 rounding to packages; in the project's money */
  gboolean is_present;        /* as the buildup has it now */
} CwSettingChoice;

/* Called now and then from the thread that searches. */
typedef void (*CwSettingProgress) (guint n_done, guint n_all, gpointer data);

/*
 * cw_setting_search:
 * @progress: (nullable): called with @data
 * @cancellable: (nullable)
 *
 * All settings are screened with the quick cut plan; the best of each start
 * and bond, the best of all, the present one and, if allowed, plain stacked
 * panels from the left corner are then planned with the live effort and make
 * the table.
 * It is sorted by cost, panels, metres of saw cuts and rules broken; a choice
 * that breaks more rules than the present one stands after those that do not.
 * The same wall gives the same table.
 *
 * Returns: (transfer full) (element-type CwSettingChoice): empty for a wall
 *   without outline, buildup or panel; when cancelled, what was found until then
 */
GArray *cw_setting_search (const CwWall *wall, const CwSettingAllowed *allowed,
                           CwSettingProgress progress, gpointer data,
                           GCancellable *cancellable);

/*
 * cw_setting_search_walls:
 * @walls: of the same buildup
 *
 * Likewise, for walls that are set out alike. Tried is what any of them asks
 * for; the figures are those of all walls together, each as often as its
 * elevation stands for.
 */
GArray *cw_setting_search_walls (const CwWall *const *walls, guint n_walls,
                                 const CwSettingAllowed *allowed,
                                 CwSettingProgress progress, gpointer data,
                                 GCancellable *cancellable);

/* Whether two choices are the same setting out, whatever their figures. */
gboolean cw_setting_choice_same (const CwSettingChoice *a,
                                 const CwSettingChoice *b);

/* @buildup with the setting out of @choice. (transfer full) */
CwBuildup *cw_setting_choice_apply (const CwSettingChoice *choice,
                                    const CwBuildup *buildup);

G_END_DECLS
