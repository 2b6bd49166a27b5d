/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-i18n.h"
#include "cw-snap.h"

/* The more telling first. */
static const struct
{
  CwSnapKind kind;
  const char *words;
} words[] = {
  { CW_SNAP_CORNER, N_ ("Corner") },
  { CW_SNAP_SPRINGING, N_ ("Springing") },
  { CW_SNAP_CROWN, N_ ("Crown") },
  { CW_SNAP_SHEET_CORNER, N_ ("Corner on the sheet") },
  { CW_SNAP_MIDDLE, N_ ("Middle") },
  { CW_SNAP_GAP, N_ ("Equal gaps") },
  { CW_SNAP_SIDE, N_ ("Side") },
  { CW_SNAP_SHEET_LINE, N_ ("Line on the sheet") },
  { CW_SNAP_JOINT_X, N_ ("Head joint") },
  { CW_SNAP_JOINT_Y, N_ ("Bed joint") },
  { CW_SNAP_ALIGN_X, N_ ("In line") },
  { CW_SNAP_ALIGN_Y, N_ ("In line") },
};

const char *
cw_snap_words (const CwSnap *snap)
{
  g_return_val_if_fail (snap != NULL, NULL);

  for (guint i = 0; i < G_N_ELEMENTS (words); i++)
    if (snap->x_kind == words[i].kind || snap->y_kind == words[i].kind)
      return _ (words[i].words);
  return NULL;
}
