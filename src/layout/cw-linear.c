/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cw-linear.h"

#include <glpk.h>

static GMutex one_at_a_time;

static gboolean
has_thread_storage (void)
{
  return glp_config ("TLS") != NULL;
}

void
cw_linear_begin (void)
{
  if (!has_thread_storage ())
    g_mutex_lock (&one_at_a_time);
  glp_term_out (GLP_OFF);
}

void
cw_linear_end (void)
{
  glp_free_env ();
  if (!has_thread_storage ())
    g_mutex_unlock (&one_at_a_time);
}
