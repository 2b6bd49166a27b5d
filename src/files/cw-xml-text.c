/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-xml-text.h"

/* What a character is written as, or NULL for itself. */
static const char *
escape (gunichar character, gboolean in_value)
{
  switch (character)
    {
    case '&':
      return "&amp;";
    case '<':
      return "&lt;";
    case '>':
      return in_value ? NULL : "&gt;";
    case '"':
      return in_value ? "&quot;" : NULL;
    case '\t':
      return in_value ? "&#9;" : NULL;
    case '\n':
      return in_value ? "&#10;" : NULL;
    case '\r':
      return "&#13;";
    default:
      /* XML 1.0, section 2.2: no other controls, no U+FFFE and U+FFFF. */
      return character < 0x20 || character == 0xfffe || character == 0xffff
                 ? "\ufffd"
                 : NULL;
    }
}

static void
append_text (GString *xml, const char *text, gboolean in_value)
{
  for (const char *at = text; *at != '\0'; at = g_utf8_next_char (at))
    {
      gunichar character = g_utf8_get_char (at);
      const char *escaped = escape (character, in_value);
      if (escaped)
        g_string_append (xml, escaped);
      else
        g_string_append_unichar (xml, character);
    }
}

void
cw_xml_append_value (GString *xml, const char *text)
{
  append_text (xml, text, TRUE);
}

void
cw_xml_append_content (GString *xml, const char *text)
{
  append_text (xml, text, FALSE);
}

void
cw_xml_append_attribute (GString *xml, const char *name, const char *value)
{
  g_string_append_printf (xml, " %s=\"", name);
  cw_xml_append_value (xml, value);
  g_string_append_c (xml, '"');
}
