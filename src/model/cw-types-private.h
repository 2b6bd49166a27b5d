/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Short forms for the tables of fields. `of` is the struct, `member` where it
 * keeps the value. Lengths in tables are nanometres, decimals millionths.
 */
#pragma once

#include "cw-i18n.h"
#include "cw-project.h"

G_BEGIN_DECLS

/* Nothing that is drawn lies further from its origin, or is larger. */
#define CW_DRAWN_MOST CW_MM (10000000)
/* Nothing that is bought and laid is larger. */
#define CW_STUFF_MOST CW_MM (100000)
#define CW_PRICE_MOST CW_DECIMAL (1000000000)
/* The shortest length that a count may be divided by. */
#define CW_STEP_LEAST CW_MM (1)

#define CW_FIELD_TEXT_IN(of, member, name_, label_, help_)                    \
  {                                                                           \
    .name = name_, .kind = CW_FIELD_TEXT, .offset = G_STRUCT_OFFSET (of, member), \
    .label = label_, .unit = "", .help = help_                                \
  }

#define CW_FIELD_ID_IN(of, help_)                                             \
  {                                                                           \
    .name = "id", .kind = CW_FIELD_ID, .offset = G_STRUCT_OFFSET (of, id),    \
    .flags = CW_FIELD_REQUIRED, .label = N_ ("Id"), .unit = "", .help = help_ \
  }

#define CW_FIELD_REFERENCE_IN(of, member, name_, to_, label_, help_)          \
  {                                                                           \
    .name = name_, .kind = CW_FIELD_REFERENCE,                                \
    .offset = G_STRUCT_OFFSET (of, member), .refers_to = to_,                 \
    .label = label_, .unit = "", .help = help_                                \
  }

#define CW_FIELD_NUMBER_IN(of, member, name_, kind_, flags_, fallback_,       \
                           least_, most_, label_, unit_, help_)               \
  {                                                                           \
    .name = name_, .kind = kind_, .offset = G_STRUCT_OFFSET (of, member),     \
    .flags = flags_, .fallback = fallback_, .least = least_, .most = most_,   \
    .label = label_, .unit = unit_, .help = help_                             \
  }

#define CW_FIELD_LENGTH_IN(of, member, name_, fallback_, least_, most_,       \
                           label_, help_)                                     \
  CW_FIELD_NUMBER_IN (of, member, name_, CW_FIELD_LENGTH, 0, fallback_,       \
                      least_, most_, label_, "", help_)

#define CW_FIELD_DECIMAL_IN(of, member, name_, fallback_, least_, most_,      \
                            label_, unit_, help_)                             \
  CW_FIELD_NUMBER_IN (of, member, name_, CW_FIELD_DECIMAL, 0, fallback_,      \
                      least_, most_, label_, unit_, help_)

#define CW_FIELD_COUNT_IN(of, member, name_, fallback_, least_, most_,        \
                          label_, unit_, help_)                               \
  CW_FIELD_NUMBER_IN (of, member, name_, CW_FIELD_COUNT, 0, fallback_,        \
                      least_, most_, label_, unit_, help_)

#define CW_FIELD_CHOICE_IN(of, member, name_, fallback_, choices_, label_,    \
                           help_)                                             \
  {                                                                           \
    .name = name_, .kind = CW_FIELD_CHOICE,                                   \
    .offset = G_STRUCT_OFFSET (of, member), .fallback = fallback_,            \
    .choices = choices_, .label = label_, .unit = "", .help = help_           \
  }

#define CW_FIELD_YES_NO_IN(of, member, name_, fallback_, label_, help_)       \
  {                                                                           \
    .name = name_, .kind = CW_FIELD_YES_NO,                                   \
    .offset = G_STRUCT_OFFSET (of, member), .fallback = fallback_,            \
    .label = label_, .unit = "", .help = help_                                \
  }

#define CW_FIELD_PRICE_IN(of, label_, help_)                                  \
  CW_FIELD_DECIMAL_IN (of, price, "price", 0, 0, CW_PRICE_MOST, label_, "",   \
                       help_)

#define CW_FIELD_WASTE_IN(of, percent_)                                       \
  CW_FIELD_DECIMAL_IN (                                                       \
      of, waste, "waste", CW_DECIMAL (percent_), 0, CW_DECIMAL (1000),        \
      N_ ("Waste"), "%",                                                      \
      N_ ("Added to what is worked out for spills and leavings; common "      \
          "practice, no source."))

/* A type without and with slots. */
#define CW_LEAF_TYPE(variable, struct_, element_, label_, table)              \
  const CwNodeType variable = {                                               \
    .element = element_, .label = label_, .size = sizeof (struct_),           \
    .fields = table, .n_fields = G_N_ELEMENTS (table),                        \
  }

#define CW_TREE_TYPE(variable, struct_, element_, label_, table, places)      \
  const CwNodeType variable = {                                               \
    .element = element_, .label = label_, .size = sizeof (struct_),           \
    .fields = table, .n_fields = G_N_ELEMENTS (table), .slots = places,       \
    .n_slots = G_N_ELEMENTS (places),                                         \
  }

G_END_DECLS
