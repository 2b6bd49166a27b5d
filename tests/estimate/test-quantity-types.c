/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The table of quantities: every line can be named, measured and explained.
 */
#include <string.h>

#include "cw-quantity.h"

/* Keys and units that exported tables have had from the first format on:
 * other programs read them. */
static const struct
{
  const char *key, *unit;
} agreed[] = {
  { "wall.gross", "m²" },        { "opening.area", "m²" },
  { "unclad.area", "m²" },       { "wall.net", "m²" },
  { "wall.measured", "m²" },     { "opening.head", "m" },
  { "opening.jamb", "m" },       { "opening.sill", "m" },
  { "opening.count", "" },       { "reveal.area", "m²" },
  { "edge.base", "m" },          { "edge.eave", "m" },
  { "edge.rake", "m" },          { "edge.outside-corner", "m" },
  { "edge.inside-corner", "m" }, { "edge.abutment", "m" },
  { "edge.joint", "m" },         { "band.length", "m" },
  { "band.area", "m²" },         { "panel.whole", "" },
  { "panel.rasped", "" },        { "panel.cut", "" },
  { "panel.stock", "" },         { "panel.least", "" },
  { "panel.order", "" },
  { "panel.waste", "%" },        { "saw.length", "m" },
  { "saw.curve", "m" },          { "joint.bed", "m" },
  { "joint.head", "m" },         { "mortar.volume", "L" },
  { "mortar.bags", "" },         { "mortar.water", "L" },
  { "fastener.count", "" },      { "fastener.boxes", "" },
  { "barrier.area", "m²" },      { "barrier.rolls", "" },
  { "basecoat.mass", "kg" },     { "basecoat.bags", "" },
  { "basecoat.water", "L" },     { "mesh.field", "m²" },
  { "mesh.rolls", "" },          { "mesh.corner", "" },
  { "mesh.edge", "m" },          { "finish.mass", "kg" },
  { "finish.pails", "" },        { "sealant.length", "m" },
  { "sealant.cartridges", "" },  { "bead.corner", "m" },
  { "bead.starter", "m" },       { "bead.drip", "m" },
  { "joint.control", "m" },      { "mass.total", "kg" },
  { "pallet.count", "" },        { "staging.area", "m²" },
};

static void
test_agreed_units (void)
{
  guint former = 0;

  for (guint i = 0; i < G_N_ELEMENTS (agreed); i++)
    {
      const CwQuantityType *type = cw_quantity_type (agreed[i].key);

      g_test_message ("%s", agreed[i].key);
      g_assert_nonnull (type);
      g_assert_cmpstr (type->unit, ==, agreed[i].unit);
      /* In the order of the exported table. */
      g_assert_cmpuint ((guint) (type - cw_quantity_types), >=, former);
      former = (guint) (type - cw_quantity_types);
    }
}

static gboolean
is_unit (const char *unit)
{
  static const char *const units[]
      = { "m²", "m", "L", "kg", "%", "h", "d", "money", "", NULL };

  return g_strv_contains (units, unit);
}

/* Words for a reader: not empty, no blank at an end, begun with a capital. */
static void
assert_words (const char *words)
{
  g_autofree char *stripped = NULL;

  g_assert_nonnull (words);
  g_assert_cmpstr (words, !=, "");
  stripped = g_strstrip (g_strdup (words));
  g_assert_cmpstr (words, ==, stripped);
  g_assert_true (g_unichar_isupper (g_utf8_get_char (words)));
}

static void
test_said_in_words (void)
{
  for (guint i = 0; i < cw_n_quantity_types; i++)
    {
      const CwQuantityType *type = &cw_quantity_types[i];

      g_test_message ("%s", type->key);
      g_assert_true (is_unit (type->unit));
      assert_words (type->label);
      assert_words (type->help);
      g_assert_true (g_str_has_suffix (type->help, "."));
      assert_words (cw_trade_step_label (type->step));
    }
}

static void
test_told_apart (void)
{
  g_autoptr (GHashTable) keys = g_hash_table_new (g_str_hash, g_str_equal);
  g_autoptr (GHashTable) labels = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < cw_n_quantity_types; i++)
    {
      const CwQuantityType *type = &cw_quantity_types[i];

      g_test_message ("%s", type->key);
      g_assert_true (g_hash_table_add (keys, (gpointer) type->key));
      g_assert_true (g_hash_table_add (labels, (gpointer) type->label));
    }
}

/* Whether the source of the table marks @words for translation: they may be
 * broken over lines there. */
static gboolean
is_marked (const char *source, const char *words)
{
  g_autofree char *mark = g_strdup_printf ("N_ (\"%s\")", words);

  return strstr (source, mark) != NULL;
}

/* A line's pieces of one string put together: "a " "b" becomes "a b". */
static char *
read_source (void)
{
  g_autofree char *path
      = g_build_filename (g_getenv ("CW_SOURCE_ROOT"), "src", "estimate",
                          "cw-quantity-types.c", NULL);
  g_autofree char *text = NULL;
  g_autoptr (GRegex) seam = g_regex_new ("\"\\s*\\n\\s*\"", 0, 0, NULL);
  g_autoptr (GError) error = NULL;

  g_file_get_contents (path, &text, NULL, &error);
  g_assert_no_error (error);
  return g_regex_replace_literal (seam, text, -1, 0, "", 0, NULL);
}

static void
test_marked_for_translation (void)
{
  g_autofree char *source = read_source ();

  for (guint i = 0; i < cw_n_quantity_types; i++)
    {
      const CwQuantityType *type = &cw_quantity_types[i];

      g_test_message ("%s", type->key);
      g_assert_true (is_marked (source, type->label));
      g_assert_true (is_marked (source, type->help));
    }
  for (CwTradeStep step = 0; step <= CW_STEP_COST; step++)
    g_assert_true (is_marked (source, cw_trade_step_label (step)));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, G_TEST_OPTION_ISOLATE_DIRS, NULL);
#define ADD(path, test) g_test_add_func ("/estimate/quantity-types/" path, test)
  ADD ("agreed-units", test_agreed_units);
  ADD ("said-in-words", test_said_in_words);
  ADD ("told-apart", test_told_apart);
  ADD ("marked-for-translation", test_marked_for_translation);
  return g_test_run ();
}
