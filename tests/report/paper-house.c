/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "paper-house.h"

#include <string.h>

#include "cw-project-file.h"

#define BUILDUP                                                               \
  "<buildup id='b1' name='Panel on wood studs'>"                              \
      "<studs spacing='400' at-jambs='yes'/>"                                 \
      "<panel name='Panel 50 × 600 × 2400' length='2400' height='600'"        \
      " thickness='50' mass='43' spare='2' per-pallet='20'"                   \
      " pallet-length='2400' pallet-width='1200'/>"                           \
      "<setting-out bond='stagger' stagger='1200' least-piece='%u'/>"                            \
      "<fastener/><joint-mortar/><barrier/><base-coat/><mesh/><finish/>"      \
      "<sealant/></buildup>"                                                  \
      "<mark id='w1' kind='window' name='W1' width='1200' height='1400'"      \
      " reveal='90'/>"

static const char first_wall[]
    = "<outline><corner x='0' y='0' edge='base'/>"
      "<corner x='9000' y='0' edge='outside-corner'/>"
      "<corner x='9000' y='2800' edge='rake'/>"
      "<corner x='4500' y='4600' edge='rake'/>"
      "<corner x='0' y='2800' edge='outside-corner'/></outline>"
      "<window id='o1' mark='w1' x='800' y='900'/>"
      "<door id='o2' x='3000' y='0' width='1000' height='2100'/>"
      "<arch id='o3' x='5200' y='800' width='1500' height='1500'"
      " rise='750' head='semicircular'/>"
      "<stub-out id='p1' trade='plumbing' shape='round' x='2500' y='500'"
      " width='60' height='60'/>"
      "<stub-out id='p2' trade='electrical' shape='rectangular' x='4500'"
      " y='3600' width='150' height='150'/>"
      "<unclad id='u1' name='Stone'><corner x='7800' y='0'/>"
      "<corner x='9000' y='0'/><corner x='9000' y='1000'/>"
      "<corner x='7800' y='1000'/></unclad>"
      "<band id='t1' name='Band' x='0' y='2600' width='9000' height='150'"
      " projection='25'/>";

static void
append_wall (GString *xml, const PaperHouse *house, guint index)
{
  g_autofree char *name
      = house->wall_name ? g_markup_escape_text (house->wall_name, -1)
                         : g_strdup_printf ("Wall %u", index + 1);
  const guint width = 6000 + 700 * index;
  g_string_append_printf (
      xml, "<elevation id='e%u' name='%s' buildup='b1' count='%u'>", index + 1,
      name, MAX (house->count, 1));
  if (index == 0)
    g_string_append (xml, first_wall);
  else
    g_string_append_printf (
        xml,
        "<outline><corner x='0' y='0' edge='base'/>"
        "<corner x='%u' y='0' edge='outside-corner'/>"
        "<corner x='%u' y='2700' edge='eave'/>"
        "<corner x='0' y='2700' edge='outside-corner'/></outline>"
        "<window id='o%u' mark='w1' x='1000' y='900'/>",
        width, width, 10 + index);
  g_string_append (xml, "</elevation>");
}

static void
append_start (GString *xml, CwUnits units, const char *name,
              const char *date, guint least_piece)
{
  g_autofree char *escaped = g_markup_escape_text (name ? name : "", -1);
  g_string_append_printf (
      xml,
      "<project xmlns='" CW_PROJECT_NAMESPACE "' format='1' units='%s'>"
      "<info name='%s' number='P-7' client='Example Client'"
      " address='Example Lane' estimator='E. Xample' date='%s'/>",
      units == CW_UNITS_US ? "us" : "metric", escaped, date ? date : "");
  g_string_append_printf (xml, BUILDUP, least_piece);
}

static CwTakeoff *
takeoff_of (GString *xml)
{
  g_autoptr (GError) error = NULL;
  g_string_append (xml, "</project>");
  g_autoptr (GBytes) bytes = g_string_free_to_bytes (xml);
  g_autoptr (CwProject) project = cw_project_from_xml (bytes, &error);
  g_assert_no_error (error);
  return cw_takeoff_new (project, NULL, NULL);
}

CwTakeoff *
paper_house_takeoff (const PaperHouse *house)
{
  GString *xml = g_string_new (NULL);
  append_start (xml, house->units, house->name, house->date,
                house->least_piece ? house->least_piece : 150);
  for (guint i = 0; i < house->n_elevations; i++)
    append_wall (xml, house, i);
  return takeoff_of (xml);
}

CwTakeoff *
paper_plain_wall (CwUnits units, guint width, guint height)
{
  GString *xml = g_string_new (NULL);
  append_start (xml, units, "Plain", NULL, 150);
  g_string_append_printf (
      xml,
      "<elevation id='e1' name='Plain' buildup='b1'><outline>"
      "<corner x='0' y='0' edge='base'/>"
      "<corner x='%u' y='0' edge='outside-corner'/>"
      "<corner x='%u' y='%u' edge='eave'/>"
      "<corner x='0' y='%u' edge='outside-corner'/></outline></elevation>",
      width, width, height, height);
  return takeoff_of (xml);
}
