/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-setting-panel.h"

#include "cw-change-words.h"
#include "cw-i18n.h"
#include "cw-panel-head.h"
#include "cw-setting-edit.h"
#include "cw-setting-run.h"

struct _CwSettingPanel
{
  GtkWidget parent;
  CwJob *job;
  CwBoardFrame *frame;          /* borrowed */
  CwSettingRun *run;            /* NULL: nothing is searched or found */
  CwEstimator *preview;         /* of the project with the chosen one */
  GtkWidget *box;
  GtkWidget *alone, *all, *sharing;
  GtkWidget *starts, *bonds, *offsets, *bases;
  GtkWidget *search, *progress, *table, *outcome, *take;
  guint ticks;                  /* until the board has its new size */
};

G_DEFINE_FINAL_TYPE (CwSettingPanel, cw_setting_panel, GTK_TYPE_WIDGET)

static const CwProject *
project_of (CwSettingPanel *panel)
{
  return cw_document_project (cw_job_document (panel->job));
}

/* Of the shown wall; NULL: none is shown. */
static const CwElevation *
shown_wall (CwSettingPanel *panel)
{
  return cw_document_elevation (cw_job_document (panel->job));
}

static const CwBuildup *
shown_buildup (CwSettingPanel *panel)
{
  const CwElevation *wall = shown_wall (panel);
  return wall ? cw_project_buildup (project_of (panel), wall->buildup) : NULL;
}

static gboolean
is_active (GtkWidget *check)
{
  return gtk_check_button_get_active (GTK_CHECK_BUTTON (check));
}

gboolean
cw_setting_panel_is_searching (CwSettingPanel *panel)
{
  g_return_val_if_fail (CW_IS_SETTING_PANEL (panel), FALSE);
  return panel->run && cw_setting_run_is_going (panel->run);
}

CwSettingTable *
cw_setting_panel_table (CwSettingPanel *panel)
{
  g_return_val_if_fail (CW_IS_SETTING_PANEL (panel), NULL);
  return CW_SETTING_TABLE (panel->table);
}

const char *
cw_setting_panel_outcome (CwSettingPanel *panel)
{
  g_return_val_if_fail (CW_IS_SETTING_PANEL (panel), NULL);
  return gtk_label_get_text (GTK_LABEL (panel->outcome));
}

static void
say (CwSettingPanel *panel, const char *words)
{
  gtk_label_set_text (GTK_LABEL (panel->outcome), words);
}

static CwCurrency
currency_of (CwSettingPanel *panel)
{
  return cw_currency (project_of (panel)->currency, CW_HALF_AWAY);
}

/* Which walls a choice would change. */
static void
show_sharing (CwSettingPanel *panel)
{
  const CwBuildup *buildup = shown_buildup (panel);
  guint n = buildup ? cw_setting_n_walls (project_of (panel), buildup->id) : 0;
  g_autofree char *label = g_strdup_printf (
      g_dngettext (GETTEXT_PACKAGE, "%u wall with the buildup",
                   "All %u walls with the buildup", n),
      n);
  g_autofree char *words
      = n < 2 ? NULL
        : is_active (panel->alone)
            ? g_strdup_printf (
                  _("This wall gets a buildup of its own, a copy of “%s”. "
                    "Offcuts do not travel between buildups."),
                  buildup->name)
            : g_strdup_printf (_("Changes the buildup “%s” for all of them."),
                               buildup->name);
  gtk_check_button_set_label (GTK_CHECK_BUTTON (panel->all), label);
  gtk_widget_set_visible (panel->alone, n > 1);
  gtk_widget_set_visible (panel->all, n > 1);
  gtk_widget_set_visible (panel->sharing, n > 1);
  gtk_label_set_text (GTK_LABEL (panel->sharing), words ? words : "");
}

static void
show_state (CwSettingPanel *panel)
{
  gboolean searching = cw_setting_panel_is_searching (panel);
  gtk_button_set_label (GTK_BUTTON (panel->search),
                        searching ? _("_Stop") : _("_Search"));
  gtk_widget_set_visible (panel->progress, searching);
  gtk_widget_set_sensitive (panel->search,
                            searching || shown_buildup (panel) != NULL);
  gtk_widget_set_sensitive (
      panel->take,
      cw_setting_table_chosen (CW_SETTING_TABLE (panel->table)) != NULL);
}

static void
forget_preview (CwSettingPanel *panel)
{
  if (panel->preview)
    {
      g_signal_handlers_disconnect_by_data (panel->preview, panel);
      cw_estimator_give_up (panel->preview);
    }
  g_clear_object (&panel->preview);
  if (panel->frame)
    cw_board_frame_preview (panel->frame, NULL);
}

/* Rows that go away must not have the keyboard. */
static void
leave_table (CwSettingPanel *panel)
{
  GtkRoot *root = gtk_widget_get_root (panel->table);
  GtkWidget *focus = root ? gtk_root_get_focus (root) : NULL;
  if (focus && gtk_widget_is_ancestor (focus, panel->table))
    gtk_widget_grab_focus (panel->search);
}

/* Found for a wall that is no longer so. */
static void
forget (CwSettingPanel *panel)
{
  leave_table (panel);
  if (panel->run)
    {
      g_signal_handlers_disconnect_by_data (panel->run, panel);
      cw_setting_run_stop (panel->run);
    }
  g_clear_object (&panel->run);
  forget_preview (panel);
  cw_setting_table_show (CW_SETTING_TABLE (panel->table), NULL, NULL, NULL);
}

static void
run_progressed (CwSettingPanel *panel)
{
  gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (panel->progress),
                                 cw_setting_run_share (panel->run));
}

static void
say_found (CwSettingPanel *panel, guint n)
{
  if (n == 0)
    say (panel, _("There is nothing to set out: the wall needs an outline, "
                  "and its buildup a panel."));
  else if (cw_setting_run_was_stopped (panel->run))
    say (panel, _("Stopped: these are the best of those tried so far. Choose "
                  "one to see it on the wall."));
  else
    say (panel, _("Choose one to see it on the wall."));
}

static void
run_ended (CwSettingPanel *panel)
{
  const GArray *choices = cw_setting_run_choices (panel->run);
  CwCurrency currency = currency_of (panel);
  cw_setting_table_show (CW_SETTING_TABLE (panel->table), choices,
                         cw_job_style (panel->job), &currency);
  say_found (panel, choices->len);
  show_state (panel);
}

static CwSettingAllowed
allowed_in (CwSettingPanel *panel)
{
  return (CwSettingAllowed) {
    .starts = is_active (panel->starts) ? CW_SETTING_ALL_STARTS : 0,
    .bonds = is_active (panel->bonds) ? CW_SETTING_ALL_BONDS : 0,
    .offsets = is_active (panel->offsets),
    .bases = is_active (panel->bases),
  };
}

void
cw_setting_panel_search (CwSettingPanel *panel)
{
  g_return_if_fail (CW_IS_SETTING_PANEL (panel));
  const CwBuildup *buildup = shown_buildup (panel);
  if (!buildup)
    return;
  CwSettingAllowed allowed = allowed_in (panel);
  gboolean is_only
      = cw_setting_n_walls (project_of (panel), buildup->id) < 2;
  forget (panel);
  panel->run = cw_setting_run_new (project_of (panel),
                                   shown_wall (panel)->id,
                                   is_only || is_active (panel->alone),
                                   &allowed);
  g_signal_connect_swapped (panel->run, "progress",
                            G_CALLBACK (run_progressed), panel);
  g_signal_connect_swapped (panel->run, "ended", G_CALLBACK (run_ended),
                            panel);
  gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (panel->progress), 0);
  say (panel, _("Trying the places where joints can go…"));
  show_state (panel);
}

static void
search_pressed (CwSettingPanel *panel)
{
  if (cw_setting_panel_is_searching (panel))
    cw_setting_run_stop (panel->run);
  else
    cw_setting_panel_search (panel);
}

/* (transfer full): the project with the chosen one taken */
static CwProject *
with_chosen (CwSettingPanel *panel, const CwSettingChoice *choice)
{
  const char *id = cw_setting_run_elevation (panel->run);
  const CwElevation *wall = cw_project_elevation (project_of (panel), id);
  const CwBuildup *buildup
      = cw_project_buildup (project_of (panel), wall->buildup);
  /* Translators: a copy's name: the buildup's and the wall's. */
  g_autofree char *name
      = g_strdup_printf (_("%s, %s"), buildup->name, wall->name);
  return cw_setting_take (project_of (panel), id, choice,
                          cw_setting_run_is_alone (panel->run), name);
}

static void
say_outcome (CwSettingPanel *panel, const CwTakeoff *takeoff)
{
  const CwTakeoff *present = cw_job_takeoff (panel->job);
  if (!present || present->project != project_of (panel))
    return;
  CwTakeoffChange change = cw_takeoff_change (present, takeoff);
  CwCurrency currency = currency_of (panel);
  g_autofree char *words
      = cw_change_words (&change, cw_job_style (panel->job), &currency);
  g_autofree char *sentence
      = g_strdup_printf (_("In the whole project: %s."), words);
  say (panel, sentence);
}

static void
previewed (CwSettingPanel *panel)
{
  const CwTakeoff *takeoff = cw_estimator_takeoff (panel->preview);
  if (cw_estimator_is_busy (panel->preview))
    return;
  cw_board_frame_preview (panel->frame, takeoff);
  say_outcome (panel, takeoff);
}

static void
begin_preview (CwSettingPanel *panel)
{
  panel->preview = cw_estimator_new ();
  cw_estimator_set_searches (panel->preview, FALSE);
  g_signal_connect_swapped (panel->preview, "takeoff-changed",
                            G_CALLBACK (previewed), panel);
}

static void
row_chosen (CwSettingPanel *panel)
{
  const CwSettingChoice *choice
      = cw_setting_table_chosen (CW_SETTING_TABLE (panel->table));
  show_state (panel);
  if (!choice || !panel->run)
    return;
  g_autoptr (CwProject) project = with_chosen (panel, choice);
  if (!panel->preview)
    begin_preview (panel);
  say (panel, "");
  cw_estimator_set_project (panel->preview, project);
}

void
cw_setting_panel_take (CwSettingPanel *panel)
{
  g_return_if_fail (CW_IS_SETTING_PANEL (panel));
  const CwSettingChoice *choice
      = cw_setting_table_chosen (CW_SETTING_TABLE (panel->table));
  if (!choice || !panel->run)
    return;
  g_autoptr (CwProject) project
      = choice->is_present ? NULL : with_chosen (panel, choice);
  cw_setting_panel_set_open (panel, FALSE);
  if (project)
    cw_document_edit (cw_job_document (panel->job), project,
                      _("Change the setting out"), NULL);
}

static void
document_changed (CwSettingPanel *panel)
{
  if (!cw_setting_panel_is_open (panel))
    return;
  show_sharing (panel);
  if (panel->run
      && !cw_setting_run_holds_for (panel->run, project_of (panel)))
    {
      forget (panel);
      say (panel, _("The walls have changed. Search again."));
    }
  show_state (panel);
}

/* Another wall is shown: what was found is not for it. */
static void
selection_changed (CwSettingPanel *panel)
{
  const CwElevation *wall = shown_wall (panel);
  if (panel->run
      && (!wall
          || g_strcmp0 (wall->id, cw_setting_run_elevation (panel->run))))
    {
      forget (panel);
      say (panel, "");
    }
  document_changed (panel);
}

static void
scope_changed (CwSettingPanel *panel)
{
  if (!panel->job)
    return;
  forget (panel);
  say (panel, "");
  show_sharing (panel);
  show_state (panel);
}

void
cw_setting_panel_set_alone (CwSettingPanel *panel, gboolean alone)
{
  g_return_if_fail (CW_IS_SETTING_PANEL (panel));
  gtk_check_button_set_active (
      GTK_CHECK_BUTTON (alone ? panel->alone : panel->all), TRUE);
}

gboolean
cw_setting_panel_is_open (CwSettingPanel *panel)
{
  g_return_val_if_fail (CW_IS_SETTING_PANEL (panel), FALSE);
  return gtk_widget_get_visible (GTK_WIDGET (panel));
}

/* What is chosen is to be seen: the wall may be under the panel now. */
static gboolean
fit_wall (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  CwSettingPanel *panel = CW_SETTING_PANEL (widget);
  if (panel->ticks-- > 0)
    return G_SOURCE_CONTINUE;
  cw_board_zoom_fit (cw_board_frame_board (panel->frame));
  return G_SOURCE_REMOVE;
}

void
cw_setting_panel_set_open (CwSettingPanel *panel, gboolean open)
{
  g_return_if_fail (CW_IS_SETTING_PANEL (panel));
  if (open == cw_setting_panel_is_open (panel))
    return;
  forget (panel);
  say (panel, "");
  gtk_widget_set_visible (GTK_WIDGET (panel), open);
  panel->ticks = 1;
  if (open)
    gtk_widget_add_tick_callback (GTK_WIDGET (panel), fit_wall, NULL, NULL);
  document_changed (panel);
  gtk_widget_grab_focus (
      open ? panel->search
           : GTK_WIDGET (cw_board_frame_board (panel->frame)));
}

void
cw_setting_panel_follow (CwSettingPanel *panel, CwBoardFrame *frame,
                         CwJob *job)
{
  g_return_if_fail (CW_IS_SETTING_PANEL (panel));
  g_return_if_fail (panel->job == NULL);
  panel->job = g_object_ref (job);
  panel->frame = frame;
  CwDocument *document = cw_job_document (job);
  g_signal_connect_object (document, "changed",
                           G_CALLBACK (document_changed), panel,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "selection-changed",
                           G_CALLBACK (selection_changed), panel,
                           G_CONNECT_SWAPPED);
  show_sharing (panel);
  show_state (panel);
}

static gboolean
close_by_key (GtkWidget *widget, GVariant *args, gpointer data)
{
  cw_setting_panel_set_open (CW_SETTING_PANEL (widget), FALSE);
  return TRUE;
}

static void
cw_setting_panel_dispose (GObject *object)
{
  CwSettingPanel *panel = CW_SETTING_PANEL (object);
  panel->frame = NULL;
  if (panel->box)
    forget (panel);
  g_clear_pointer (&panel->box, gtk_widget_unparent);
  g_clear_object (&panel->job);
  G_OBJECT_CLASS (cw_setting_panel_parent_class)->dispose (object);
}

static void
cw_setting_panel_class_init (CwSettingPanelClass *class)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (class);
  G_OBJECT_CLASS (class)->dispose = cw_setting_panel_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class,
                                            GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_accessible_role (widget_class,
                                        GTK_ACCESSIBLE_ROLE_GROUP);
  gtk_widget_class_add_binding (widget_class, GDK_KEY_Escape, 0, close_by_key,
                                NULL);
}

static GtkWidget *
add_check (GtkWidget *box, const char *label, GtkWidget *group)
{
  GtkWidget *check = gtk_check_button_new_with_mnemonic (label);
  if (group)
    gtk_check_button_set_group (GTK_CHECK_BUTTON (check),
                                GTK_CHECK_BUTTON (group));
  gtk_check_button_set_active (GTK_CHECK_BUTTON (check), group == NULL);
  gtk_box_append (GTK_BOX (box), check);
  return check;
}

static GtkWidget *
add_words (GtkWidget *box, const char *words)
{
  GtkWidget *label = gtk_label_new (words);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_add_css_class (label, "cw-dim");
  gtk_box_append (GTK_BOX (box), label);
  return label;
}

static void
add_scope (CwSettingPanel *panel, GtkWidget *box)
{
  panel->alone = add_check (box, _("This _wall alone"), NULL);
  panel->all = add_check (box, "", panel->alone);
  g_signal_connect_swapped (panel->alone, "toggled",
                            G_CALLBACK (scope_changed), panel);
}

static void
add_sharing (CwSettingPanel *panel, GtkWidget *box)
{
  panel->sharing = add_words (box, NULL);
  gtk_label_set_width_chars (GTK_LABEL (panel->sharing), 28);
  gtk_label_set_max_width_chars (GTK_LABEL (panel->sharing), 28);
  gtk_widget_add_css_class (panel->sharing, "cw-small");
}

static void
add_search (CwSettingPanel *panel, GtkWidget *box)
{
  panel->search = gtk_button_new_with_mnemonic (_("_Search"));
  gtk_widget_add_css_class (panel->search, "cw-first");
  g_signal_connect_swapped (panel->search, "clicked",
                            G_CALLBACK (search_pressed), panel);
  gtk_box_append (GTK_BOX (box), panel->search);
  panel->progress = gtk_progress_bar_new ();
  cw_widget_set_name (panel->progress, _("Progress"));
  gtk_box_append (GTK_BOX (box), panel->progress);
}

static GtkWidget *
new_pair (GtkWidget *box)
{
  GtkWidget *pair = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  gtk_box_set_homogeneous (GTK_BOX (pair), TRUE);
  gtk_box_append (GTK_BOX (box), pair);
  return pair;
}

static GtkWidget *
new_wishes (CwSettingPanel *panel)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 3);
  GtkWidget *scroller = gtk_scrolled_window_new ();
  add_scope (panel, box);
  add_words (box, _("May change:"));
  GtkWidget *first = new_pair (box), *second = new_pair (box);
  panel->starts = add_check (first, _("Sta_rt"), NULL);
  panel->bonds = add_check (first, _("_Bond"), NULL);
  panel->offsets = add_check (second, _("O_ffset"), NULL);
  panel->bases = add_check (second, _("B_ase"), NULL);
  add_search (panel, box);
  add_sharing (panel, box);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroller),
                                  GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroller), box);
  return scroller;
}

static GtkWidget *
new_foot (CwSettingPanel *panel)
{
  GtkWidget *foot = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);
  gtk_widget_add_css_class (foot, "cw-setting-foot");
  panel->outcome = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (panel->outcome), 0);
  gtk_label_set_wrap (GTK_LABEL (panel->outcome), TRUE);
  gtk_widget_set_hexpand (panel->outcome, TRUE);
  panel->take = gtk_button_new_with_mnemonic (_("_Take it"));
  gtk_widget_add_css_class (panel->take, "cw-first");
  gtk_widget_set_valign (panel->take, GTK_ALIGN_CENTER);
  g_signal_connect_swapped (panel->take, "clicked",
                            G_CALLBACK (cw_setting_panel_take), panel);
  gtk_box_append (GTK_BOX (foot), panel->outcome);
  gtk_box_append (GTK_BOX (foot), panel->take);
  return foot;
}

static GtkWidget *
new_table (CwSettingPanel *panel)
{
  panel->table = cw_setting_table_new ();
  gtk_widget_set_vexpand (panel->table, TRUE);
  gtk_widget_set_hexpand (panel->table, TRUE);
  g_signal_connect_swapped (panel->table, "chosen", G_CALLBACK (row_chosen),
                            panel);
  g_signal_connect_swapped (panel->table, "taken",
                            G_CALLBACK (cw_setting_panel_take), panel);
  return panel->table;
}

static GtkWidget *
new_head (CwSettingPanel *panel)
{
  GtkWidget *head = cw_panel_head_new (_("Best setting out"));
  gtk_box_append (GTK_BOX (head),
                  cw_icon_button_new ("cw-close-symbolic", _("Close"),
                                      "win.best-setting-out"));
  return head;
}

static void
cw_setting_panel_init (CwSettingPanel *panel)
{
  GtkWidget *parts = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 18);
  gtk_widget_add_css_class (parts, "cw-setting");
  gtk_box_append (GTK_BOX (parts), new_wishes (panel));
  gtk_box_append (GTK_BOX (parts), new_table (panel));
  panel->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  gtk_widget_add_css_class (panel->box, "cw-setting-panel");
  gtk_box_append (GTK_BOX (panel->box), new_head (panel));
  gtk_box_append (GTK_BOX (panel->box), parts);
  gtk_box_append (GTK_BOX (panel->box), new_foot (panel));
  gtk_widget_set_parent (panel->box, GTK_WIDGET (panel));
  gtk_widget_set_visible (GTK_WIDGET (panel), FALSE);
  cw_widget_set_name (GTK_WIDGET (panel), _("Best setting out"));
}
