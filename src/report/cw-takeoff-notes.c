/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Words that go with the figures: what they cover, and what to take care of.
 */
#include "cw-i18n.h"
#include "cw-takeoff-papers.h"

/* A layer that the buildup leaves out is not in the quantities. */
static void
append_lacking (GString *text, gconstpointer layer, const char *label)
{
  if (!layer)
    g_string_append_printf (text, "%s%s", text->len ? ", " : "", label);
}

static void
add_lacking_layers (const CwPapers *papers, const CwBuildup *buildup)
{
  g_autoptr (GString) lacking = g_string_new (NULL);
  append_lacking (lacking, buildup->fastener, _("fasteners"));
  append_lacking (lacking, buildup->joint_mortar, _("joint mortar"));
  append_lacking (lacking, buildup->barrier, _("barrier"));
  append_lacking (lacking, buildup->base_coat, _("base coat"));
  append_lacking (lacking, buildup->mesh, _("mesh"));
  append_lacking (lacking, buildup->finish, _("finish"));
  append_lacking (lacking, buildup->sealant, _("sealant"));
  if (lacking->len == 0)
    return;
  g_autofree char *text = g_strdup_printf (
      _("Not in the buildup %s, and so not counted: %s."),
      *buildup->name ? buildup->name : buildup->id, lacking->str);
  cw_page_add_item (papers->pages, "–", text);
}

static void
add_barrier_state (const CwPapers *papers, const CwElevation *elevation)
{
  if (elevation->barrier == CW_BARRIER_TO_INSTALL)
    return;
  g_autofree char *text = g_strdup_printf (
      elevation->barrier == CW_BARRIER_INSTALLED
          ? _("%s: the barrier is stated to be installed already; none is "
              "counted.")
          : _("%s: no barrier is stated; none is counted."),
      cw_papers_name (elevation));
  cw_page_add_item (papers->pages, "–", text);
}

static gboolean
has_step (const CwTakeoff *takeoff, CwTradeStep step)
{
  for (guint i = 0; i < takeoff->quantities->len; i++)
    {
      const CwQuantity *quantity = takeoff->quantities->pdata[i];
      if (quantity->type->step == step)
        return TRUE;
    }
  return FALSE;
}

/* How many panels are used, how few might do, and how that was counted. */
static void
add_panel_rule (const CwPapers *papers)
{
  const CwQuantity *stock
      = cw_takeoff_quantity (papers->takeoff, NULL, "panel.stock");
  if (!stock)
    return;
  g_autofree char *note
      = cw_quantity_note_text (stock, &papers->options->style);
  g_autofree char *text = g_strdup_printf (
      C_ ("panels used: number and bound. rule", "%s: %s. %s"),
      _(stock->type->label), note, _(stock->type->help));
  cw_page_add_item (papers->pages, "+", text);
}

void
cw_papers_add_cover (const CwPapers *papers)
{
  const CwProject *project = papers->takeoff->project;
  cw_papers_add_note_heading (papers, _("What the figures cover"));
  cw_page_add_item (papers->pages, "+",
                    _("The panels and layers of the buildups on the walls "
                      "drawn, as measured from the plans and as typed."));
  cw_page_add_item (papers->pages, "–",
                    _("Not covered: framing, sheathing, flashings, the "
                      "windows and doors themselves, soffits, roofing, "
                      "scaffolding, hoists, disposal and taxes, but for what "
                      "the bid names."));
  add_panel_rule (papers);
  if (!has_step (papers->takeoff, CW_STEP_LABOUR)
      && !has_step (papers->takeoff, CW_STEP_COST))
    cw_page_add_item (papers->pages, "–",
                      _("Labour and prices are not worked out."));
  for (gsize i = 0; i < cw_list_length (project->buildups); i++)
    add_lacking_layers (papers, cw_list_at (project->buildups, i));
  for (gsize i = 0; i < cw_list_length (project->elevations); i++)
    add_barrier_state (papers, cw_list_at (project->elevations, i));
}

/* The heaviest panel that is in use; 0 when none states its mass. */
static double
heaviest_panel (const CwProject *project)
{
  CwDecimal mass = 0;
  for (gsize i = 0; i < cw_list_length (project->buildups); i++)
    {
      const CwBuildup *buildup = cw_list_at (project->buildups, i);
      for (gsize j = 0; j < cw_list_length (buildup->panels); j++)
        mass = MAX (mass, ((CwPanel *) cw_list_at (buildup->panels, j))->mass);
    }
  return cw_decimal_to_double (mass);
}

static void
add_lifting (const CwPapers *papers)
{
  const double mass = heaviest_panel (papers->takeoff->project);
  g_autofree char *amount = cw_papers_amount (papers, mass, "kg");
  g_autofree char *text
      = mass > 0
            ? g_strdup_printf (
                _("Lifting: a panel is stated to weigh %s dry, and more when "
                  "wet. Plan how panels and pallets are lifted, carried and "
                  "held until they are fixed, and check the ground and the "
                  "scaffold under them."),
                amount)
            : g_strdup (
                _("Lifting: panels are heavy, and heavier when wet. Plan how "
                  "panels and pallets are lifted, carried and held until "
                  "they are fixed, and check the ground and the scaffold "
                  "under them."));
  cw_page_add_item (papers->pages, "•", text);
}

void
cw_papers_add_cautions (const CwPapers *papers)
{
  static const char *const cautions[] = {
    N_ ("Dust: sawing, rasping and drilling panels, mortar and coats sets "
        "free respirable crystalline silica, which harms the lungs for good. "
        "Wet cutting or extraction at the tool, protection for the lungs and "
        "the limits of exposure are as local law and the makers' "
        "instructions say."),
    N_ ("Falls and falling things: work at height, openings without their "
        "windows, wind on large panels. Scaffold, guards and exclusion areas "
        "are for the competent person on site."),
    N_ ("Structure and wind: fasteners and studs are counted at the spacing "
        "that was stated. That is not a design. Wind loads, framing, "
        "fasteners and their embedment are for the licensed designer, the "
        "panel maker's instructions and the local code."),
    N_ ("Stub-outs: before cutting or fixing near pipes, cables and ducts, "
        "have them found and made dead by the trade they belong to."),
    N_ ("Moisture: barrier, flashing, laps, drainage and curing times follow "
        "the local code and the makers' instructions where they differ from "
        "what is stated here."),
    N_ ("Before ordering: compare sizes with the building itself and with "
        "the latest plans. An estimate holds for the sizes, waste and rules "
        "stated in it."),
  };
  cw_papers_add_note_heading (papers, _("Take care"));
  add_lifting (papers);
  for (guint i = 0; i < G_N_ELEMENTS (cautions); i++)
    cw_page_add_item (papers->pages, "•", _(cautions[i]));
}
