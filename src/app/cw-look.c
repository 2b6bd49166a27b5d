/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-look.h"

#include "cw-app-resources.h"

static GtkCssProvider *colours;
static gboolean system_is_dark;
static gboolean more_contrast;

void
cw_app_register_resources (void)
{
  static gboolean done;
  if (!done)
    cw_app_register_resource ();
  done = TRUE;
}

gboolean
cw_look_is_dark (void)
{
  gboolean dark = FALSE;
  g_object_get (gtk_settings_get_default (),
                "gtk-application-prefer-dark-theme", &dark, NULL);
  return dark;
}

/* By the desktop's theme, or by GTK's own variable for it. */
static gboolean
system_has_contrast (void)
{
  g_autofree char *theme = NULL;
  const char *said = g_getenv ("GTK_THEME");
  g_object_get (gtk_settings_get_default (), "gtk-theme-name", &theme, NULL);
  if (!said)
    said = theme;
  return said
         && (g_str_has_prefix (said, "HighContrast")
             || g_str_has_prefix (said, "Default-hc"));
}

static void
load_colours (void)
{
  gboolean contrast = more_contrast || system_has_contrast ();
  g_autofree char *path = g_strdup_printf (
      CW_RESOURCE_PATH "/colours-%s%s.css", contrast ? "contrast-" : "",
      cw_look_is_dark () ? "dark" : "light");
  gtk_css_provider_load_from_resource (colours, path);
}

void
cw_look_set_contrast (gboolean more)
{
  more_contrast = more;
  if (colours)
    load_colours ();
}

static GtkCssProvider *
add_provider (guint priority)
{
  GtkCssProvider *provider = gtk_css_provider_new ();
  gtk_style_context_add_provider_for_display (
      gdk_display_get_default (), GTK_STYLE_PROVIDER (provider), priority);
  return provider;
}

void
cw_look_start (void)
{
  if (colours)
    return;
  GtkSettings *settings = gtk_settings_get_default ();
  system_is_dark = cw_look_is_dark ();

  colours = add_provider (GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
  load_colours ();
  g_signal_connect (settings, "notify::gtk-application-prefer-dark-theme",
                    G_CALLBACK (load_colours), NULL);
  g_signal_connect (settings, "notify::gtk-theme-name",
                    G_CALLBACK (load_colours), NULL);

  g_autoptr (GtkCssProvider) look
      = add_provider (GTK_STYLE_PROVIDER_PRIORITY_APPLICATION + 1);
  gtk_css_provider_load_from_resource (look, CW_RESOURCE_PATH "/look.css");

  gtk_icon_theme_add_resource_path (
      gtk_icon_theme_get_for_display (gdk_display_get_default ()),
      CW_RESOURCE_PATH "/icons");
}

CwLook
cw_look_from_name (const char *name)
{
  if (g_strcmp0 (name, "light") == 0)
    return CW_LOOK_LIGHT;
  return g_strcmp0 (name, "dark") == 0 ? CW_LOOK_DARK : CW_LOOK_SYSTEM;
}

void
cw_look_choose (CwLook look)
{
  gboolean dark = look == CW_LOOK_SYSTEM ? system_is_dark
                                         : look == CW_LOOK_DARK;
  g_object_set (gtk_settings_get_default (),
                "gtk-application-prefer-dark-theme", dark, NULL);
}
