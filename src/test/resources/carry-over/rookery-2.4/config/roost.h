/*
 * Rookery - motion. Lists are in the order X, Y, Z, E.
 */
#ifndef ROOKERY_ROOST_H
#define ROOKERY_ROOST_H

#include "nest.h"

// ---- Steps ---------------------------------------------------------------

#define STRIDE_PER_MM     { 80, 80, 400, 93 }      // microsteps for 1 mm of travel
#define STRIDE_FRACTION      { 16, 16, 16, 16 }       // microsteps in a full step

// ---- Limits --------------------------------------------------------------

#define STRIDE_FASTEST        { 150, 150, 10, 40 }     // highest speed, mm/s
#define STRIDE_GAIN       { 1500, 1500, 80, 2000 } // acceleration, mm/s²

#define REACH_NEAR         { 0, 0, 0 }              // mm, X Y Z
#define REACH_FAR        { 200, 200, 180 }        // mm, X Y Z

// ---- Direction of the motors: true turns them the other way round --------

#define STRIDE_JOLT       8                        // speed without a ramp, mm/s
#define FLIP_X            false
#define FLIP_Y            false
#define FLIP_Z            false
#define FLIP_E            false

// ---- Homing --------------------------------------------------------------

#define TOWARD_LOW        (-1)
#define TOWARD_HIGH       1

#define SEEK_X            TOWARD_LOW
#define SEEK_Y            TOWARD_LOW
#define SEEK_Z            TOWARD_LOW
#define SEEK_SPEED        { 40, 40, 4 }            // mm/s, X Y Z

// ---- Coil current: only on boards whose drivers listen --------------------

#if NEST_BOARD == PERCH_FULMAR_M4 || \
    NEST_BOARD == PERCH_FULMAR_M4E
  #define COIL_CURRENT_MA  { 600, 600, 600, 400 }   // mA RMS, X Y Z E
#else
#endif

#endif
