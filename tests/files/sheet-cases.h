/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Plan sheets for the tests, made here byte by byte.
 */
#pragma once

#include <gio/gio.h>

/* A file in the test's own folder. */
GFile *case_file (const char *name, const void *bytes, gsize n);

/*
 * A PDF of one page with the four quarters of the box from (100, 100) to
 * (500, 300) painted, as stored: red upper left, green upper right, blue
 * lower left, black lower right.
 * @boxes: entries of the page, "/MediaBox [0 0 600 400] /Rotate 90"
 */
GFile *case_pdf (const char *name, const char *boxes);

/* An image of 20 x 10 pixels with the same quarters, by a pixbuf saver.
 * @options: (nullable): key, value, ..., NULL */
GBytes *case_image (const char *type, const char *const *options);

/* @jpeg with an EXIF segment that says nothing but the orientation. */
GBytes *case_oriented_jpeg (GBytes *jpeg, guchar orientation);

/* @png with other sizes in its header, and the checksum to match. */
GBytes *case_png_claiming (GBytes *png, guint32 width, guint32 height);
