/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-checks-private.h"

static void
check_free (CwCheck *check)
{
  g_free (check->elevation_id);
  g_free (check->item);
  g_array_unref (check->places);
  g_free (check->text);
  g_free (check->detail);
  g_free (check->figures);
  if (check->waiver)
    cw_node_unref ((CwWaiver *) check->waiver);
  g_free (check);
}

CwCheck *
cw_check_add (CwChecking *checking, const char *code, const char *item,
              char *text)
{
  CwCheck *check = g_new0 (CwCheck, 1);

  check->type = cw_check_type (code);
  g_assert (check->type != NULL);
  if (checking->wall)
    check->elevation_id = g_strdup (checking->wall->wall->elevation->id);
  check->item = g_strdup (item ? item : "");
  check->places = g_array_new (FALSE, FALSE, sizeof (CwBox));
  check->text = text;
  check->figures = g_strdup ("");
  g_ptr_array_add (checking->checks, check);
  return check;
}

void
cw_check_set_detail (CwCheck *check, char *detail)
{
  g_free (check->detail);
  check->detail = detail;
}

void
cw_check_add_place (CwCheck *check, CwBox place)
{
  g_array_append_val (check->places, place);
}

void
cw_check_add_point (CwCheck *check, CwPoint place)
{
  cw_check_add_place (check,
                      (CwBox) { place.x, place.y, place.x, place.y });
}

void
cw_check_add_figure (CwCheck *check, double figure)
{
  char digits[G_ASCII_DTOSTR_BUF_SIZE];
  char *figures;

  g_ascii_formatd (digits, sizeof digits, "%.3g", figure);
  figures = *check->figures ? g_strconcat (check->figures, " ", digits, NULL)
                            : g_strdup (digits);
  g_free (check->figures);
  check->figures = figures;
}

char *
cw_check_amount (const CwChecking *checking, double amount, const char *unit)
{
  const CwShownAmount as
      = cw_text_style_amount (checking->style, amount, unit);
  g_autofree char *number
      = cw_text_style_number (checking->style, as.value, as.decimals);

  return *as.unit ? g_strdup_printf ("%s %s", number, as.unit)
                  : g_steal_pointer (&number);
}

char *
cw_check_length (const CwChecking *checking, CwLength length)
{
  return cw_length_format (length, checking->style);
}

char *
cw_check_number (const CwChecking *checking, double number)
{
  return cw_text_style_number (checking->style, number, 2);
}

const char *
cw_check_buildup_name (const CwBuildup *buildup)
{
  return *buildup->name ? buildup->name : buildup->id;
}

GPtrArray *
cw_check_used_buildups (const CwChecking *checking)
{
  GPtrArray *used = g_ptr_array_new ();

  for (guint i = 0; i < checking->takeoff->walls->len; i++)
    {
      const CwWall *wall
          = ((CwWallTakeoff *) checking->takeoff->walls->pdata[i])->wall;

      if (wall->outline && wall->buildup
          && !g_ptr_array_find (used, wall->buildup, NULL))
        g_ptr_array_add (used, (gpointer) wall->buildup);
    }
  return used;
}

gboolean
cw_check_awaits_drawing (const CwCheck *check)
{
  return g_str_equal (check->type->code, "outline-missing");
}

guint
cw_checks_count (const GPtrArray *checks, CwCheckSeverity severity)
{
  guint n = 0;

  for (guint i = 0; i < checks->len; i++)
    {
      const CwCheck *check = checks->pdata[i];

      if (check->type->severity == severity && !check->waiver)
        n++;
    }
  return n;
}

static int
compare_severity (gconstpointer a, gconstpointer b)
{
  const CwCheck *one = *(CwCheck *const *) a, *other = *(CwCheck *const *) b;

  return (int) one->type->severity - (int) other->type->severity;
}

static void
check_project (CwChecking *checking)
{
  checking->wall = NULL;
  cw_check_sheets (checking);
  cw_check_materials (checking);
  cw_check_lifting (checking);
  cw_check_wind (checking);
  cw_check_site (checking);
}

static void
check_wall (CwChecking *checking, const CwWallTakeoff *wall)
{
  checking->wall = wall;
  cw_check_outline (checking);
  if (!wall->wall->outline)
    return;
  cw_check_openings (checking);
  cw_check_panels (checking);
  cw_check_stub_outs (checking);
  cw_check_control_joints (checking);
}

/* FALSE when cancelled. */
static gboolean
check_walls (CwChecking *checking, GCancellable *cancellable)
{
  const GPtrArray *walls = checking->takeoff->walls;

  for (guint i = 0; i < walls->len; i++)
    {
      if (g_cancellable_is_cancelled (cancellable))
        return FALSE;
      check_wall (checking, walls->pdata[i]);
    }
  return TRUE;
}

static void
take_waivers (const CwChecking *checking)
{
  for (guint i = 0; i < checking->checks->len; i++)
    {
      CwCheck *check = checking->checks->pdata[i];
      const CwWaiver *waiver
          = cw_check_waiver (check, checking->takeoff->project);

      if (!waiver)
        continue;
      check->waiver = cw_node_ref (waiver);
      check->is_changed = g_strcmp0 (waiver->figures, check->figures) != 0;
    }
}

GPtrArray *
cw_checks_find (const CwTakeoff *takeoff, const CwTextStyle *style,
                GCancellable *cancellable)
{
  CwChecking checking = { .takeoff = takeoff, .style = style };
  g_autoptr (GPtrArray) checks = NULL;

  g_return_val_if_fail (takeoff != NULL && style != NULL, NULL);

  checks = g_ptr_array_new_with_free_func ((GDestroyNotify) check_free);
  checking.checks = checks;
  check_project (&checking);
  if (!check_walls (&checking, cancellable))
    return NULL;
  g_ptr_array_sort (checks, compare_severity);
  take_waivers (&checking);
  return g_steal_pointer (&checks);
}
