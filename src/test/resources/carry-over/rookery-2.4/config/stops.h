/*
 * Rookery - endstops. LOW and HIGH are the ends of an axis.
 */
#ifndef ROOKERY_STOPS_H
#define ROOKERY_STOPS_H

#include "nest.h"

/* Fitted endstops: switch on those that are there. */
#define STOP_X_LOW
//#define STOP_X_HIGH
#define STOP_Y_LOW
//#define STOP_Y_HIGH
#define STOP_Z_LOW
//#define STOP_Z_HIGH

/* true: the endstop is touched while its input is low. */
#define STOP_X_LOW_FLIP   false
#define STOP_X_HIGH_FLIP  false
#define STOP_Y_LOW_FLIP   false
#define STOP_Y_HIGH_FLIP  false
#define STOP_Z_LOW_FLIP   false
#define STOP_Z_HIGH_FLIP  false

/* The part's own pull-up resistors, 1 on, 0 off. */
#define STOP_X_LOW_LIFT   0
#define STOP_X_HIGH_LIFT  1
#define STOP_Y_LOW_LIFT   1
#define STOP_Y_HIGH_LIFT  1
#define STOP_Z_LOW_LIFT   1
#define STOP_Z_HIGH_LIFT  1

#endif
