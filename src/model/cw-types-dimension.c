/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fields of dimensions that somebody drew.
 */
#include "cw-types-private.h"

static const CwChoice ways[] = {
  { CW_DIMENSION_ALIGNED, "aligned", N_ ("Straight across") },
  { CW_DIMENSION_LEVEL, "level", N_ ("Along") },
  { CW_DIMENSION_UPRIGHT, "upright", N_ ("Up") },
  { 0, NULL, NULL },
};

static const CwField dimension_fields[] = {
  CW_FIELD_ID_IN (CwDimension, N_ ("The dimension's name in the file; unique "
                                   "in the project.")),
  CW_FIELD_CHOICE_IN (CwDimension, way, "way", CW_DIMENSION_ALIGNED, ways,
                      N_ ("Way"),
                      N_ ("What is measured: straight from one point to the "
                          "other, only along, or only up.")),
  CW_FIELD_NUMBER_IN (CwDimension, x, "x", CW_FIELD_LENGTH, CW_FIELD_REQUIRED,
                      0, -CW_DRAWN_MOST, CW_DRAWN_MOST, N_ ("x"), "",
                      N_ ("Of the first point, from the elevation's "
                          "origin.")),
  CW_FIELD_NUMBER_IN (CwDimension, y, "y", CW_FIELD_LENGTH, CW_FIELD_REQUIRED,
                      0, -CW_DRAWN_MOST, CW_DRAWN_MOST, N_ ("y"), "",
                      N_ ("Of the first point, over the elevation's "
                          "origin.")),
  CW_FIELD_NUMBER_IN (CwDimension, to_x, "to-x", CW_FIELD_LENGTH,
                      CW_FIELD_REQUIRED, 0, -CW_DRAWN_MOST, CW_DRAWN_MOST,
                      N_ ("To x"), "",
                      N_ ("Of the second point, from the elevation's "
                          "origin.")),
  CW_FIELD_NUMBER_IN (CwDimension, to_y, "to-y", CW_FIELD_LENGTH,
                      CW_FIELD_REQUIRED, 0, -CW_DRAWN_MOST, CW_DRAWN_MOST,
                      N_ ("To y"), "",
                      N_ ("Of the second point, over the elevation's "
                          "origin.")),
  CW_FIELD_LENGTH_IN (CwDimension, offset, "offset", 0, -CW_DRAWN_MOST,
                      CW_DRAWN_MOST, N_ ("Offset"),
                      N_ ("How far its line stands from the first point: up "
                          "for a level one, to the right for an upright one, "
                          "to the left of the way for an aligned one; on the "
                          "point until it is stated.")),
};

CW_LEAF_TYPE (cw_dimension_type, CwDimension, "dimension", N_ ("Dimension"),
              dimension_fields);
