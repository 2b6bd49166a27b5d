/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-recent.h"

#define SHOWN_MOST 8

void
cw_recent_add (GFile *file)
{
  g_autofree char *uri = g_file_get_uri (file);
  GtkRecentData data = {
    .mime_type = (char *) CW_MEDIA_TYPE,
    .app_name = (char *) g_get_application_name (),
    .app_exec = (char *) "cladwright %f",
  };
  gtk_recent_manager_add_full (gtk_recent_manager_get_default (), uri, &data);
}

static int
newest_first (gconstpointer a, gconstpointer b)
{
  return g_date_time_compare (
      gtk_recent_info_get_modified ((GtkRecentInfo *) b),
      gtk_recent_info_get_modified ((GtkRecentInfo *) a));
}

static void
append_entry (GMenu *menu, GtkRecentInfo *info)
{
  g_autoptr (GMenuItem) item
      = g_menu_item_new (gtk_recent_info_get_display_name (info), NULL);
  g_menu_item_set_action_and_target (item, "app.open-recent", "s",
                                     gtk_recent_info_get_uri (info));
  g_menu_append_item (menu, item);
}

static void
fill (GtkRecentManager *manager, GMenu *menu)
{
  g_menu_remove_all (menu);
  GList *infos = g_list_sort (gtk_recent_manager_get_items (manager),
                              newest_first);
  guint n = 0;
  for (GList *l = infos; l && n < SHOWN_MOST; l = l->next)
    if (g_strcmp0 (gtk_recent_info_get_mime_type (l->data), CW_MEDIA_TYPE) == 0
        && gtk_recent_info_exists (l->data))
      {
        append_entry (menu, l->data);
        n++;
      }
  g_list_free_full (infos, (GDestroyNotify) gtk_recent_info_unref);
}

GMenuModel *
cw_recent_menu_new (void)
{
  GtkRecentManager *manager = gtk_recent_manager_get_default ();
  GMenu *menu = g_menu_new ();
  fill (manager, menu);
  g_signal_connect_object (manager, "changed", G_CALLBACK (fill), menu, 0);
  return G_MENU_MODEL (menu);
}
