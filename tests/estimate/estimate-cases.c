/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "estimate-cases.h"

#include <string.h>

typedef struct
{
  GPtrArray *items;
  CwLength next_x;      /* where the next opening stands */
  CwEdge upright;
  gint64 count;
  gint64 barrier;
  guint wall;
} WallCase;

static CwLength
metres (const char *text)
{
  double value = g_ascii_strtod (text, NULL);

  return (CwLength) (value * 1e9 + (value < 0 ? -0.5 : 0.5));
}

/* The text after @sign in @token, cut off there; NULL when there is none. */
static char *
cut_after (char *token, char sign)
{
  char *at = strrchr (token, sign);

  if (at == NULL)
    return NULL;
  *at = '\0';
  return at + 1;
}

static void
put_place (CwNode *node, char *place, CwLength x, CwLength y)
{
  char *comma = place ? strchr (place, ',') : NULL;

  cw_node_put (node, "x", place ? metres (place) : x);
  cw_node_put (node, "y", comma ? metres (comma + 1) : y);
}

static void
put_size (CwNode *node, const char *size)
{
  const char *times = strchr (size, 'x');

  cw_node_put (node, "width", metres (size));
  cw_node_put (node, "height", metres (times ? times + 1 : size));
}

static void
put_choice (CwNode *node, const char *name, const char *value)
{
  int field = cw_node_type_field (node->type, name);
  const CwChoice *choice;

  g_assert_cmpint (field, >=, 0);
  choice = cw_field_choice_by_name (&node->type->fields[field], value);
  g_assert_nonnull (choice);
  cw_node_put (node, name, choice->value);
}

static void
put_id (CwNode *node, const char *stem, const WallCase *wall)
{
  g_autofree char *id
      = g_strdup_printf ("%s%u-%u", stem, wall->wall, wall->items->len + 1);

  cw_node_put_text (node, "id", id);
}

static void
put_arch (CwNode *arch, char *size)
{
  char *head = cut_after (size, ':');
  char *rise = cut_after (size, '+');

  put_choice (arch, "head", head);
  cw_node_put (arch, "rise", metres (rise));
}

static void
add_opening (WallCase *wall, const CwNodeType *type, char *token)
{
  CwNode *opening = cw_node_new (type);
  char *mark = cut_after (token, '#');
  char *place = cut_after (token, '@');
  char *reveal = cut_after (token, '/');

  put_id (opening, "o", wall);
  if (mark)
    cw_node_put_text (opening, "mark", mark);
  if (reveal)
    cw_node_put (opening, "reveal", metres (reveal));
  if (type == &cw_arch_type)
    put_arch (opening, token);
  put_size (opening, token);
  put_place (opening, place, wall->next_x,
             type == &cw_door_type ? 0 : CW_MM (200));
  wall->next_x
      += ((CwOpening *) opening)->width + CW_MM (100);
  g_ptr_array_add (wall->items, opening);
}

static void
add_band (WallCase *wall, char *token)
{
  CwNode *band = cw_node_new (&cw_band_type);
  char *projection = cut_after (token, 'x');

  put_id (band, "t", wall);
  cw_node_put (band, "projection", metres (projection));
  put_size (band, token);
  put_place (band, NULL, 0, 0);
  g_ptr_array_add (wall->items, band);
}

static void
add_stub_out (WallCase *wall, char *token)
{
  CwNode *stub_out = cw_node_new (&cw_stub_out_type);
  char *place = cut_after (token, '@');

  put_id (stub_out, "p", wall);
  put_size (stub_out, token);
  put_place (stub_out, place, CW_MM (500), CW_MM (500));
  g_ptr_array_add (wall->items, stub_out);
}

static void
add_unclad (WallCase *wall, char *token)
{
  CwNode *unclad = cw_node_new (&cw_unclad_type);
  char *place = cut_after (token, '@');
  CwLength x = metres (place), y = metres (strchr (place, ',') + 1);
  CwLength width = metres (token), height = metres (strchr (token, 'x') + 1);
  const CwCorner corners[] = { { { x, y } },
                               { { x + width, y } },
                               { { x + width, y + height } },
                               { { x, y + height } } };
  g_autoptr (CwList) list
      = cw_corners_to_list (corners, G_N_ELEMENTS (corners));

  put_id (unclad, "u", wall);
  cw_node_set_list (unclad, CW_UNCLAD_CORNERS, list);
  g_ptr_array_add (wall->items, unclad);
}

static void
add_item (WallCase *wall, const char *kind, char *rest)
{
  if (g_str_equal (kind, "window"))
    add_opening (wall, &cw_window_type, rest);
  else if (g_str_equal (kind, "door"))
    add_opening (wall, &cw_door_type, rest);
  else if (g_str_equal (kind, "arch"))
    add_opening (wall, &cw_arch_type, rest);
  else if (g_str_equal (kind, "stub"))
    add_stub_out (wall, rest);
  else if (g_str_equal (kind, "band"))
    add_band (wall, rest);
  else if (g_str_equal (kind, "unclad"))
    add_unclad (wall, rest);
  else
    g_error ("no item of the kind %s", kind);
}

static void
add_word (WallCase *wall, char *word)
{
  char *colon = strchr (word, ':');

  if (*word == '*')
    wall->count = g_ascii_strtoll (word + 1, NULL, 10);
  else if (g_str_equal (word, "corners"))
    wall->upright = CW_EDGE_OUTSIDE_CORNER;
  else if (g_str_equal (word, "abutments"))
    wall->upright = CW_EDGE_ABUTMENT;
  else if (g_str_equal (word, "installed"))
    wall->barrier = CW_BARRIER_INSTALLED;
  else if (colon)
    {
      *colon = '\0';
      add_item (wall, word, colon + 1);
    }
  else
    g_error ("what is %s?", word);
}

CwNode *
case_elevation_of (const char *id, const CwCorner *corners, gsize n,
                   GPtrArray *items)
{
  g_autoptr (CwList) corner_list = cw_corners_to_list (corners, n);
  g_autoptr (CwList) item_list
      = cw_list_new ((CwNode *const *) items->pdata, items->len);
  g_autoptr (CwNode) outline = cw_node_new (&cw_outline_type);
  CwNode *elevation = cw_node_new (&cw_elevation_type);

  cw_node_set_list (outline, CW_OUTLINE_CORNERS, corner_list);
  cw_node_put_text (elevation, "id", id);
  cw_node_put_text (elevation, "buildup", "b1");
  cw_node_set_child (elevation, CW_ELEVATION_OUTLINE, outline);
  cw_node_set_list (elevation, CW_ELEVATION_ITEMS, item_list);
  return elevation;
}

static CwNode *
elevation_from (const char *text, guint index)
{
  g_auto (GStrv) words = g_strsplit (text, " ", -1);
  g_autoptr (GPtrArray) items
      = g_ptr_array_new_with_free_func (cw_node_unref);
  g_autofree char *id = g_strdup_printf ("e%u", index);
  WallCase wall = { .items = items,
                    .next_x = CW_MM (200),
                    .upright = CW_EDGE_JOINT,
                    .count = 1,
                    .wall = index };
  CwLength width = metres (words[0]);
  CwLength height = metres (strchr (words[0], 'x') + 1);
  CwNode *elevation;

  for (guint i = 1; words[i]; i++)
    add_word (&wall, words[i]);
  elevation = case_elevation_of (
      id,
      (const CwCorner[]) { { { 0, 0 }, 0, CW_EDGE_BASE },
                           { { width, 0 }, 0, wall.upright },
                           { { width, height }, 0, CW_EDGE_EAVE },
                           { { 0, height }, 0, wall.upright } },
      4, items);
  cw_node_put (elevation, "count", wall.count);
  cw_node_put (elevation, "barrier", wall.barrier);
  return elevation;
}

static void
put_value (CwNode *node, const char *name, const char *value)
{
  int index = cw_node_type_field (node->type, name);
  gint64 number = 0;

  g_assert_cmpint (index, >=, 0);
  switch (node->type->fields[index].kind)
    {
    case CW_FIELD_LENGTH:
      g_assert_true (cw_length_from_mm_text (value, &number));
      break;
    case CW_FIELD_DECIMAL:
      g_assert_true (cw_decimal_from_text (value, &number));
      break;
    case CW_FIELD_YES_NO:
      number = g_str_equal (value, "yes");
      break;
    case CW_FIELD_COUNT:
      number = g_ascii_strtoll (value, NULL, 10);
      break;
    case CW_FIELD_TEXT:
      cw_node_put_text (node, name, value);
      return;
    default:
      put_choice (node, name, value);
      return;
    }
  cw_node_put (node, name, number);
}

/* The slot of @type for children of the element @name. */
static guint
slot_of (const CwNodeType *type, const char *name)
{
  for (guint i = 0; i < type->n_slots; i++)
    if (g_str_equal (type->slots[i].types[0]->element, name))
      return i;
  g_error ("no %s in %s", name, type->element);
}

static void
set_child (CwNode *parent, guint slot, CwNode *child)
{
  if (parent->type->slots[slot].is_list)
    {
      g_autoptr (CwList) list = cw_list_set (cw_node_list (parent, slot), 0,
                                             child);
      cw_node_set_list (parent, slot, list);
    }
  else
    cw_node_set_child (parent, slot, child);
}

/* "barrier.lap=50.8" or "mesh=none", on @parent. */
static void
apply_setting (CwNode *parent, const char *setting)
{
  g_auto (GStrv) halves = g_strsplit (setting, "=", 2);
  g_auto (GStrv) path = g_strsplit (halves[0], ".", 2);
  guint slot = slot_of (parent->type, path[0]);
  CwNode *former;
  g_autoptr (CwNode) child = NULL;

  if (path[1] == NULL)
    {
      g_assert_cmpstr (halves[1], ==, "none");
      cw_node_set_child (parent, slot, NULL);
      return;
    }
  former = parent->type->slots[slot].is_list
               ? cw_list_at (cw_node_list (parent, slot), 0)
               : cw_node_child (parent, slot);
  child = cw_node_copy (former);
  put_value (child, path[1], halves[1]);
  set_child (parent, slot, child);
}

static gboolean
is_of_project (const char *setting)
{
  static const char *const elements[]
      = { "measure.", "limits.", "lifting.", "wind.", "bid.", "truck." };

  for (guint i = 0; i < G_N_ELEMENTS (elements); i++)
    if (g_str_has_prefix (setting, elements[i]))
      return TRUE;
  return FALSE;
}

static void
apply_settings (CwNode *project, CwNode *buildup, const char *settings)
{
  g_auto (GStrv) words = g_strsplit (settings, " ", -1);

  for (guint i = 0; words[i]; i++)
    if (*words[i])
      apply_setting (is_of_project (words[i]) ? project : buildup, words[i]);
}

CwProject *
case_project_of (GPtrArray *elevations, const char *settings)
{
  g_autoptr (CwProject) plain = cw_project_new_default (CW_UNITS_METRIC);
  CwNode *project = cw_node_copy (&plain->node);
  g_autoptr (CwNode) buildup
      = cw_node_copy (cw_list_at (plain->buildups, 0));
  g_autoptr (CwList) walls
      = cw_list_new ((CwNode *const *) elevations->pdata, elevations->len);

  apply_settings (project, buildup, settings);
  set_child (project, CW_PROJECT_BUILDUPS, buildup);
  cw_node_set_list (project, CW_PROJECT_ELEVATIONS, walls);
  cw_node_freeze (project);
  return (CwProject *) project;
}

CwProject *
case_project (const char *walls, const char *settings)
{
  g_auto (GStrv) texts = g_strsplit (walls, "; ", -1);
  g_autoptr (GPtrArray) elevations
      = g_ptr_array_new_with_free_func (cw_node_unref);

  for (guint i = 0; texts[i]; i++)
    g_ptr_array_add (elevations, elevation_from (texts[i], i + 1));
  return case_project_of (elevations, settings);
}

double
case_amount (const CwTakeoff *takeoff, const char *scope, const char *key)
{
  const CwQuantity *quantity = cw_takeoff_quantity (takeoff, scope, key);

  if (quantity == NULL)
    g_error ("no %s of %s", key, scope ? scope : "the project");
  return quantity->amount;
}
