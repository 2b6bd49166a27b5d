/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "cw-project.h"

/* Calls @check for every field of every type. */
static void
for_each_field (void (*check) (const CwNodeType *type, const CwField *field))
{
  for (const CwNodeType *const *type = cw_node_types; *type; type++)
    for (guint i = 0; i < (*type)->n_fields; i++)
      check (*type, &(*type)->fields[i]);
}

static void
check_place (const CwNodeType *type, const CwField *field)
{
  g_assert_cmpuint (field->offset, >=, sizeof (CwNode));
  g_assert_cmpuint (field->offset + sizeof (gint64), <=, type->size);
  g_assert_cmpuint (field->offset % sizeof (gint64), ==, 0);
}

static void
check_default (const CwNodeType *type, const CwField *field)
{
  gint64 least, most;

  cw_field_bounds (field, &least, &most);
  g_assert_cmpint (least, <=, most);
  g_assert_cmpint (field->fallback, >=, least);
  g_assert_cmpint (field->fallback, <=, most);
  if (!cw_field_is_text (field))
    g_assert_cmpint (least, <=, most);
  if (field->kind == CW_FIELD_LENGTH)
    g_assert_cmpint (MAX (most, -least), <=, CW_LENGTH_MOST);
  if (field->kind == CW_FIELD_DECIMAL)
    g_assert_cmpint (MAX (most, -least), <=, CW_DECIMAL_MOST);
}

static void
check_words (const CwNodeType *type, const CwField *field)
{
  gsize length = strlen (field->help);

  g_assert_cmpstr (field->label, !=, "");
  g_assert_nonnull (field->unit);
  g_assert_cmpuint (length, >, 0);
  g_assert_cmpint (field->help[length - 1], ==, '.');
}

static void
check_choices (const CwNodeType *type, const CwField *field)
{
  if (field->kind != CW_FIELD_CHOICE)
    {
      g_assert_null (field->choices);
      return;
    }
  g_assert_nonnull (cw_field_choice_by_value (field, field->fallback));
  for (const CwChoice *choice = field->choices; choice->name; choice++)
    {
      g_assert_true (cw_field_choice_by_name (field, choice->name) == choice);
      g_assert_true (cw_field_choice_by_value (field, choice->value)
                     == choice);
      g_assert_nonnull (choice->label);
    }
  g_assert_null (cw_field_choice_by_name (field, "no such choice"));
}

static const CwNodeType *
type_named (const char *element)
{
  for (const CwNodeType *const *type = cw_node_types; *type; type++)
    if (strcmp ((*type)->element, element) == 0)
      return *type;
  return NULL;
}

static void
check_reference (const CwNodeType *type, const CwField *field)
{
  const CwNodeType *to;

  if (field->kind != CW_FIELD_REFERENCE)
    {
      g_assert_null (field->refers_to);
      return;
    }
  to = type_named (field->refers_to);
  g_assert_nonnull (to);
  g_assert_cmpint (to->fields[0].kind, ==, CW_FIELD_ID);
}

static void
check_same_in_mark (const CwNodeType *type, const CwField *field)
{
  int there;

  if (!(field->flags & CW_FIELD_FROM_MARK))
    return;
  there = cw_node_type_field (&cw_mark_type, field->name);
  g_assert_cmpint (there, >=, 0);
  g_assert_cmpint (cw_mark_type.fields[there].kind, ==, field->kind);
}

static void
test_places (void)
{
  for_each_field (check_place);
}

static void
test_defaults (void)
{
  for_each_field (check_default);
}

static void
test_words (void)
{
  for_each_field (check_words);
}

static void
test_choices (void)
{
  for_each_field (check_choices);
}

static void
test_references (void)
{
  for_each_field (check_reference);
}

static void
test_marks (void)
{
  for_each_field (check_same_in_mark);
}

/* No two fields of a type share a name or a place, and an id comes first,
 * which is where it is looked for. */
static void
test_distinct (void)
{
  for (const CwNodeType *const *type = cw_node_types; *type; type++)
    {
      g_assert_cmpuint ((*type)->n_fields, <=, 64);
      for (guint i = 0; i < (*type)->n_fields; i++)
        for (guint j = 0; j < i; j++)
          {
            const CwField *one = &(*type)->fields[i];
            const CwField *other = &(*type)->fields[j];

            g_assert_cmpstr (one->name, !=, other->name);
            g_assert_cmpuint (one->offset, !=, other->offset);
            g_assert_cmpint (one->kind, !=, CW_FIELD_ID);
          }
    }
}

static void
test_slots (void)
{
  for (const CwNodeType *const *type = cw_node_types; *type; type++)
    for (guint i = 0; i < (*type)->n_slots; i++)
      {
        const CwSlot *slot = &(*type)->slots[i];

        g_assert_nonnull (slot->name);
        g_assert_nonnull (slot->types[0]);
        g_assert_cmpuint (slot->offset, >=, sizeof (CwNode));
        g_assert_cmpuint (slot->offset + sizeof (gpointer), <=, (*type)->size);
        for (guint j = 0; j < i; j++)
          g_assert_cmpuint (slot->offset, !=, (*type)->slots[j].offset);
      }
}

/* Attributes as the file has them, in their order: names are fixed for good. */
static void
test_names (void)
{
  static const struct
  {
    const CwNodeType *type;
    const char *names;
  } cases[] = {
    { &cw_project_type, "format units currency" },
    { &cw_info_type,
      "name number address client estimator date revision" },
    { &cw_measure_type, "rule limit at-limit face" },
    { &cw_limits_type,
      "control-area control-side control-ratio stub-out-edge "
      "scale-difference barrier-lap barrier-end-lap mesh-lap fall-height" },
    { &cw_lifting_type, "index reach height to-reach to-height turn frequency "
                        "hours grip" },
    { &cw_wind_type,
      "basis pressure speed exposure mean-height topography direction ground "
      "internal zone factor" },
    { &cw_sheet_type, "id name file sha256 page turn" },
    { &cw_scale_type, "across along" },
    { &cw_buildup_type, "id name" },
    { &cw_studs_type, "spacing first at-jambs material" },
    { &cw_panel_type, "name length height thickness joint kerf mass spare "
                      "per-pallet pallet-length pallet-width price" },
    { &cw_setting_out_type,
      "run start offset base bond stagger least-piece least-stagger "
      "joints-on-studs at-openings rasp offcuts turn" },
    { &cw_fastener_type, "name length spacing edge diameter penetration "
                         "gravity steel-thickness steel-strength safety "
                         "duration per-box price" },
    { &cw_joint_mortar_type,
      "name bag yield water waste pot-life wetting price" },
    { &cw_barrier_type,
      "name roll-width roll-length lap end-lap wrap price" },
    { &cw_base_coat_type,
      "name suits kind unsuited bag use water waste pot-life wetting price" },
    { &cw_mesh_type,
      "name roll-width roll-length lap corner-width corner-height edge "
      "price corner-box corner-price edge-roll edge-price" },
    { &cw_finish_type, "name suits kind unsuited pail use waste price" },
    { &cw_sealant_type, "name width depth cartridge waste price" },
    { &cw_mark_type, "id kind name width height rise head reveal" },
    { &cw_elevation_type,
      "id name buildup count barrier sheet at-x at-y" },
    { &cw_outline_type, "" },
    { &cw_corner_type, "x y edge sagitta" },
    { &cw_window_type, "id mark x y width height reveal" },
    { &cw_door_type, "id mark x y width height reveal" },
    { &cw_arch_type, "id mark x y width height rise head reveal" },
    { &cw_stub_out_type, "id trade shape x y width height clearance" },
    { &cw_unclad_type, "id name" },
    { &cw_band_type, "id name x y width height projection" },
    { &cw_dimension_type, "id way x y to-x to-y offset" },
    { &cw_labour_type, "crew day wage barrier sawing panels joints base-coat "
                       "finish sealant beads" },
    { &cw_bead_type, "kind name length waste price" },
    { &cw_backer_rod_type, "name diameter length waste price" },
    { &cw_bid_type, "contingency overhead profit profit-on tax tax-on rounding "
                    "half" },
    { &cw_truck_type, "payload pallets" },
    { &cw_equipment_type, "name count by days price taxed" },
    { &cw_own_line_type, "name kind per units amount price taxed" },
    { &cw_alternate_type, "name buildup by" },
    { &cw_waiver_type, "check elevation item reason by date figures" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GString) names = g_string_new (NULL);

      for (guint j = 0; j < cases[i].type->n_fields; j++)
        g_string_append_printf (names, "%s%s", j > 0 ? " " : "",
                                cases[i].type->fields[j].name);
      g_assert_cmpstr (names->str, ==, cases[i].names);
      g_assert_true (cw_node_types[i] != NULL);
    }
  g_assert_null (cw_node_types[G_N_ELEMENTS (cases)]);
}

/* A barrier's laps: IRC R703.2 (B-01, B-02: seen); 2 in and 6 in. */
static void
test_published_defaults (void)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_barrier_type);
  const CwBarrier *barrier = (const CwBarrier *) node;

  g_assert_cmpint (barrier->lap, ==, 50800000);
  g_assert_cmpint (barrier->end_lap, ==, 152400000);
}

/* Measured through up to 2.5 m²: ATV DIN 18345 (A-09: seen). */
static void
test_published_limit (void)
{
  g_autoptr (CwNode) node = cw_node_new (&cw_measure_type);

  g_assert_cmpint (((CwMeasure *) node)->limit, ==, 2500000);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
  g_test_add_func ("/model/field/places", test_places);
  g_test_add_func ("/model/field/defaults-inside-bounds", test_defaults);
  g_test_add_func ("/model/field/words", test_words);
  g_test_add_func ("/model/field/choices", test_choices);
  g_test_add_func ("/model/field/references", test_references);
  g_test_add_func ("/model/field/marks-give-like-fields", test_marks);
  g_test_add_func ("/model/field/distinct", test_distinct);
  g_test_add_func ("/model/field/slots", test_slots);
  g_test_add_func ("/model/field/names", test_names);
  g_test_add_func ("/model/field/barrier-laps", test_published_defaults);
  g_test_add_func ("/model/field/measured-through", test_published_limit);
  return g_test_run ();
}
