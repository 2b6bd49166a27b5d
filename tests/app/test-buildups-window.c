/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window of buildups, used as a person would.
 */
#include <string.h>

#include "cw-buildups-window.h"
#include "cw-buildup-library.h"
#include "cw-dialogs.h"
#include "cw-form-dialog.h"
#include "window-cases.h"

typedef struct
{
  CaseDesk base;
  CwBuildupsWindow *buildups; /* borrowed */
} Desk;

static void
lay (Desk *desk, gconstpointer data)
{
  case_desk_lay (&desk->base);
  case_desk_act (&desk->base, "buildups");
  desk->buildups
      = CW_BUILDUPS_WINDOW (case_open_window (CW_TYPE_BUILDUPS_WINDOW));
  g_assert_nonnull (desk->buildups);
}

static void
clear (Desk *desk, gconstpointer data)
{
  case_wait_for_takeoff (desk->base.job);
  case_desk_clear (&desk->base);
  g_assert_null (case_open_window (CW_TYPE_BUILDUPS_WINDOW));
}

static void
act (Desk *desk, const char *action)
{
  gtk_widget_activate_action (GTK_WIDGET (desk->buildups), action, NULL);
  case_settle ();
}

static const CwProject *
project_of (Desk *desk)
{
  return cw_document_project (cw_job_document (desk->base.job));
}

static const CwBuildup *
first_buildup (Desk *desk)
{
  return cw_list_at (project_of (desk)->buildups, 0);
}

static void
choose_layer (Desk *desk, int slot, int index)
{
  CwLayerList *layers = cw_buildups_window_layers (desk->buildups);
  cw_layer_list_choose (layers, slot, index);
  case_settle ();
  cw_layer_form_show (cw_buildups_window_form (desk->buildups),
                      cw_buildups_window_chosen (desk->buildups),
                      cw_layer_list_chosen (layers));
  case_settle ();
}

typedef struct
{
  const char *label;
  GtkWidget *button;
} Search;

static void
match_button (GtkWidget *widget, gpointer data)
{
  Search *search = data;
  if (GTK_IS_BUTTON (widget)
      && g_strcmp0 (gtk_button_get_label (GTK_BUTTON (widget)),
                    search->label)
             == 0)
    search->button = widget;
}

static void
press (GtkWidget *root, const char *label)
{
  Search search = { label, NULL };
  case_walk (root, match_button, &search);
  g_assert_nonnull (search.button);
  g_assert_true (gtk_widget_get_sensitive (search.button));
  g_signal_emit_by_name (search.button, "clicked");
  case_settle ();
}

static GtkWidget *
form_of (Desk *desk)
{
  return GTK_WIDGET (cw_buildups_window_form (desk->buildups));
}

static void
layers_come_and_go (Desk *desk, gconstpointer data)
{
  choose_layer (desk, CW_BUILDUP_BARRIER, -1);
  press (form_of (desk), "_Take it out of the buildup");
  g_assert_null (first_buildup (desk)->barrier);
  g_assert_null (cw_layer_form_row (
      cw_buildups_window_form (desk->buildups), "lap"));
  press (form_of (desk), "_Add it to the buildup");
  g_assert_nonnull (first_buildup (desk)->barrier);
  g_assert_nonnull (cw_layer_form_row (
      cw_buildups_window_form (desk->buildups), "lap"));
  act (desk, "win.undo");
  g_assert_null (first_buildup (desk)->barrier);
  act (desk, "win.undo");
  g_assert_nonnull (first_buildup (desk)->barrier);
}

static void
panels_are_listed (Desk *desk, gconstpointer data)
{
  choose_layer (desk, CW_BUILDUP_PANELS, 0);
  press (form_of (desk), "_Add one like it");
  g_assert_cmpuint (cw_list_length (first_buildup (desk)->panels), ==, 2);
  CwLayerPlace place
      = cw_layer_list_chosen (cw_buildups_window_layers (desk->buildups));
  g_assert_cmpint (place.slot, ==, CW_BUILDUP_PANELS);
  g_assert_cmpint (place.index, ==, 1);
  press (form_of (desk), "Move _up");
  press (form_of (desk), "_Take it out");
  g_assert_cmpuint (cw_list_length (first_buildup (desk)->panels), ==, 1);
}

/* Every attribute of the layer has a row, and says what it is for. */
static void
fields_explain_themselves (Desk *desk, gconstpointer data)
{
  choose_layer (desk, CW_BUILDUP_FASTENER, -1);
  for (guint i = 0; i < cw_fastener_type.n_fields; i++)
    {
      const CwField *field = &cw_fastener_type.fields[i];
      GtkWidget *row = cw_layer_form_row (
          cw_buildups_window_form (desk->buildups), field->name);
      g_assert_nonnull (row);
      const char *help = gtk_widget_get_tooltip_text (row);
      g_assert_nonnull (strstr (help, field->help));
    }
}

static GtkWidget *
entry_of (Desk *desk, const char *field)
{
  return case_find (
      cw_layer_form_row (cw_buildups_window_form (desk->buildups), field),
      GTK_TYPE_ENTRY);
}

/* Out of range is refused in words at the field, and changes nothing. */
static void
refuses_in_words (Desk *desk, gconstpointer data)
{
  choose_layer (desk, CW_BUILDUP_FASTENER, -1);
  const CwProject *before = project_of (desk);
  GtkWidget *entry = entry_of (desk, "spacing");
  gtk_editable_set_text (GTK_EDITABLE (entry), "0");
  g_signal_emit_by_name (entry, "activate");
  case_settle ();
  g_assert_true (project_of (desk) == before);
  g_assert_true (gtk_widget_has_css_class (entry, "cw-wrong"));
  gtk_editable_set_text (GTK_EDITABLE (entry), "10\"");
  g_signal_emit_by_name (entry, "activate");
  case_settle ();
  const CwFastener *fastener
      = (const CwFastener *) first_buildup (desk)->fastener;
  g_assert_cmpint (fastener->spacing, ==, CW_INCHES (10));
  g_assert_false (gtk_widget_has_css_class (entry, "cw-wrong"));
}

static void
takes_from_the_library (Desk *desk, gconstpointer data)
{
  act (desk, "buildups.library");
  GtkWindow *dialog = case_open_window (CW_TYPE_FORM_DIALOG);
  g_assert_nonnull (dialog);
  g_signal_emit_by_name (dialog, "taken");
  case_settle ();
  g_assert_null (case_open_window (CW_TYPE_FORM_DIALOG));
  g_assert_cmpuint (cw_list_length (project_of (desk)->buildups), ==, 2);
  const CwBuildup *taken = cw_list_at (project_of (desk)->buildups, 1);
  g_assert_cmpstr (cw_buildups_window_chosen (desk->buildups), ==,
                   taken->id);
  /* Fennel House is measured in feet, so that kind stands first. */
  g_assert_nonnull (strstr (((const CwPanel *) cw_list_at (taken->panels, 0))
                                ->name, " in "));
  act (desk, "buildups.remove");
  g_assert_cmpuint (cw_list_length (project_of (desk)->buildups), ==, 1);
}

static void
gives_walls_another (Desk *desk, gconstpointer data)
{
  g_autofree char *former = g_strdup (first_buildup (desk)->id);
  act (desk, "buildups.duplicate");
  g_autofree char *other
      = g_strdup (cw_buildups_window_chosen (desk->buildups));
  cw_buildups_window_choose (desk->buildups, former);
  act (desk, "buildups.remove");
  GtkWindow *dialog = case_open_window (CW_TYPE_FORM_DIALOG);
  g_assert_nonnull (dialog);
  g_signal_emit_by_name (dialog, "taken");
  case_settle ();
  g_assert_null (cw_project_buildup (project_of (desk), former));
  const CwElevation *wall = cw_list_at (project_of (desk)->elevations, 0);
  g_assert_cmpstr (wall->buildup, ==, other);
}

static void
goes_through_a_file (Desk *desk, gconstpointer data)
{
  g_autoptr (GFile) file = g_file_get_child (desk->base.folder, "b.cladwright");
  g_autoptr (GError) error = NULL;
  cw_dialogs_choose_next (file);
  act (desk, "buildups.export");
  g_autoptr (CwList) there = cw_buildups_load (file, NULL, &error);
  g_assert_no_error (error);
  g_assert_true (cw_node_equal (cw_list_at (there, 0),
                                first_buildup (desk)));
  cw_dialogs_choose_next (file);
  act (desk, "buildups.import");
  g_assert_cmpuint (cw_list_length (project_of (desk)->buildups), ==, 2);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  if (!case_start_toolkit ())
    return 0;
  case_application ();
#define ADD(name, test)                                                       \
  g_test_add ("/buildups-window/" name, Desk, NULL, lay, test, clear)
  ADD ("layers-come-and-go", layers_come_and_go);
  ADD ("panels-are-listed", panels_are_listed);
  ADD ("fields-explain-themselves", fields_explain_themselves);
  ADD ("refuses-in-words", refuses_in_words);
  ADD ("takes-from-the-library", takes_from_the_library);
  ADD ("gives-walls-another", gives_walls_another);
  ADD ("goes-through-a-file", goes_through_a_file);
  return g_test_run ();
}
