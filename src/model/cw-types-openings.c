/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fields of openings, of the marks that describe them, and of stub-outs.
 */
#include "cw-types-private.h"

static const CwChoice opening_kinds[] = {
  { CW_OPENING_WINDOW, "window", N_ ("Window") },
  { CW_OPENING_DOOR, "door", N_ ("Door") },
  { CW_OPENING_ARCH, "arch", N_ ("Arch") },
  { 0, NULL, NULL },
};

static const CwChoice arch_heads[] = {
  { CW_ARCH_SEMICIRCULAR, "semicircular", N_ ("Semicircular") },
  { CW_ARCH_SEGMENTAL, "segmental", N_ ("Segmental") },
  { CW_ARCH_SEMI_ELLIPTICAL, "semi-elliptical", N_ ("Semi-elliptical") },
  { CW_ARCH_POINTED, "pointed", N_ ("Pointed") },
  { CW_ARCH_THREE_CENTRED, "three-centred", N_ ("Three-centred") },
  { 0, NULL, NULL },
};

/* The sizes of a mark and of an opening are the same attributes; an opening's
 * may come from its mark. `flags` is what an opening adds. */
#define WIDTH(of, flags_, mm_)                                                \
  CW_FIELD_NUMBER_IN (of, width, "width", CW_FIELD_LENGTH, flags_,            \
                      CW_MM (mm_), 1, CW_DRAWN_MOST, N_ ("Rough width"), "",  \
                      N_ ("From jamb to jamb of the rough opening."))
#define HEIGHT(of, flags_, mm_)                                               \
  CW_FIELD_NUMBER_IN (of, height, "height", CW_FIELD_LENGTH, flags_,          \
                      CW_MM (mm_), 1, CW_DRAWN_MOST, N_ ("Rough height"), "", \
                      N_ ("From the sill to the head, or to an arch's "       \
                          "springing line."))
#define RISE(of, flags_)                                                      \
  CW_FIELD_NUMBER_IN (of, rise, "rise", CW_FIELD_LENGTH, flags_, CW_MM (300), \
                      1, CW_DRAWN_MOST, N_ ("Rise"), "",                      \
                      N_ ("Of an arch's crown over its springing line."))
#define HEAD(of, flags_)                                                      \
  {                                                                           \
    .name = "head", .kind = CW_FIELD_CHOICE,                                  \
    .offset = G_STRUCT_OFFSET (of, head), .flags = flags_,                    \
    .fallback = CW_ARCH_SEGMENTAL, .choices = arch_heads,                     \
    .label = N_ ("Head"), .unit = "",                                         \
    .help = N_ ("The curve of an arch over its springing line.")              \
  }
#define REVEAL(of, flags_)                                                    \
  CW_FIELD_NUMBER_IN (of, reveal, "reveal", CW_FIELD_LENGTH, flags_, 0, 0,    \
                      CW_STUFF_MOST, N_ ("Reveal"), "",                       \
                      N_ ("Depth of the opening's sides that is finished; "   \
                          "0, none, until it is stated."))

#define GIVEN CW_FIELD_FROM_MARK
#define NEEDED (CW_FIELD_REQUIRED | CW_FIELD_FROM_MARK)

static const CwField mark_fields[] = {
  CW_FIELD_ID_IN (CwMark, N_ ("The name by which openings take the mark; "
                              "unique in the project.")),
  CW_FIELD_CHOICE_IN (CwMark, kind, "kind", CW_OPENING_WINDOW, opening_kinds,
                      N_ ("Kind"), N_ ("What sort of opening it marks.")),
  CW_FIELD_TEXT_IN (CwMark, name, "name", N_ ("Mark"),
                    N_ ("As it stands in the schedule of the plans.")),
  WIDTH (CwMark, 0, 1200),
  HEIGHT (CwMark, 0, 1400),
  RISE (CwMark, 0),
  HEAD (CwMark, 0),
  REVEAL (CwMark, 0),
};

#define PLACE_X(of, help_)                                                    \
  CW_FIELD_NUMBER_IN (of, x, "x", CW_FIELD_LENGTH, CW_FIELD_REQUIRED, 0,      \
                      -CW_DRAWN_MOST, CW_DRAWN_MOST, N_ ("x"), "", help_)
#define PLACE_Y(of, help_)                                                    \
  CW_FIELD_NUMBER_IN (of, y, "y", CW_FIELD_LENGTH, CW_FIELD_REQUIRED, 0,      \
                      -CW_DRAWN_MOST, CW_DRAWN_MOST, N_ ("y"), "", help_)

#define OPENING_BEGINNING                                                     \
  CW_FIELD_ID_IN (CwOpening, N_ ("The opening's name in the file; unique "    \
                                 "in the project.")),                         \
      CW_FIELD_REFERENCE_IN (CwOpening, mark, "mark", "mark", N_ ("Mark"),    \
                             N_ ("Gives what the opening does not state "     \
                                 "itself.")),                                 \
      PLACE_X (CwOpening, N_ ("Of the left jamb, from the elevation's "       \
                              "origin.")),                                    \
      PLACE_Y (CwOpening, N_ ("Of the sill, over the elevation's origin."))

static const CwField window_fields[] = {
  OPENING_BEGINNING,
  WIDTH (CwOpening, NEEDED, 1200),
  HEIGHT (CwOpening, NEEDED, 1400),
  REVEAL (CwOpening, GIVEN),
};

static const CwField door_fields[] = {
  OPENING_BEGINNING,
  WIDTH (CwOpening, NEEDED, 900),
  HEIGHT (CwOpening, NEEDED, 2100),
  REVEAL (CwOpening, GIVEN),
};

static const CwField arch_fields[] = {
  OPENING_BEGINNING,
  WIDTH (CwOpening, NEEDED, 1500),
  HEIGHT (CwOpening, NEEDED, 1200),
  RISE (CwOpening, NEEDED),
  HEAD (CwOpening, GIVEN),
  REVEAL (CwOpening, GIVEN),
};

static const CwChoice trades[] = {
  { CW_TRADE_PLUMBING, "plumbing", N_ ("Plumbing") },
  { CW_TRADE_ELECTRICAL, "electrical", N_ ("Electrical") },
  { CW_TRADE_MECHANICAL, "mechanical", N_ ("Mechanical") },
  { CW_TRADE_OTHER, "other", N_ ("Other") },
  { 0, NULL, NULL },
};

static const CwChoice shapes[] = {
  { CW_SHAPE_ROUND, "round", N_ ("Round") },
  { CW_SHAPE_RECTANGULAR, "rectangular", N_ ("Rectangular") },
  { 0, NULL, NULL },
};

static const CwField stub_out_fields[] = {
  CW_FIELD_ID_IN (CwStubOut, N_ ("The stub-out's name in the file; unique in "
                                 "the project.")),
  CW_FIELD_CHOICE_IN (CwStubOut, trade, "trade", CW_TRADE_OTHER, trades,
                      N_ ("Trade"), N_ ("Whose pipe or duct it is.")),
  CW_FIELD_CHOICE_IN (CwStubOut, shape, "shape", CW_SHAPE_ROUND, shapes,
                      N_ ("Shape"), N_ ("Of what comes through the wall.")),
  PLACE_X (CwStubOut, N_ ("Of the centre, from the elevation's origin.")),
  PLACE_Y (CwStubOut, N_ ("Of the centre, over the elevation's origin.")),
  CW_FIELD_NUMBER_IN (CwStubOut, width, "width", CW_FIELD_LENGTH,
                      CW_FIELD_REQUIRED, CW_MM (60), 1, CW_DRAWN_MOST,
                      N_ ("Width"), "",
                      N_ ("Of what comes through; a round one's "
                          "diameter.")),
  CW_FIELD_NUMBER_IN (CwStubOut, height, "height", CW_FIELD_LENGTH,
                      CW_FIELD_REQUIRED, CW_MM (60), 1, CW_DRAWN_MOST,
                      N_ ("Height"), "",
                      N_ ("Of what comes through; a round one's "
                          "diameter.")),
  CW_FIELD_LENGTH_IN (CwStubOut, clearance, "clearance", 0, 0, CW_STUFF_MOST,
                      N_ ("Clearance"),
                      N_ ("Cut free all round it; 0, none, until it is "
                          "stated.")),
};

CW_LEAF_TYPE (cw_mark_type, CwMark, "mark", N_ ("Mark"), mark_fields);
CW_LEAF_TYPE (cw_window_type, CwOpening, "window", N_ ("Window"),
              window_fields);
CW_LEAF_TYPE (cw_door_type, CwOpening, "door", N_ ("Door"), door_fields);
CW_LEAF_TYPE (cw_arch_type, CwOpening, "arch", N_ ("Arch"), arch_fields);
CW_LEAF_TYPE (cw_stub_out_type, CwStubOut, "stub-out", N_ ("Stub-out"),
              stub_out_fields);
