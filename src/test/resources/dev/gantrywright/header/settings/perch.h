/**
 * Perch settings of the Rookery firmware.
 * Licence: invented for these tests.
 */
#ifndef PERCH_H
#define PERCH_H

#include "wings.h"

//==========================================================================
//============================= Temperatures ===============================
//==========================================================================

// Highest temperature of the nest, in °C
#define NEST_MAX 120

#define NEST_MIN 5 // (°C) allowed 0..15

/*
 * How long a heater may take before it is judged broken.
 * Range 10 to 120 seconds.
 */
#define NEST_PATIENCE 40

// @section Speed

// Speed of the X wing [mm/s]. Between 1 and 300.
#define WING_SPEED   { 120.0, 120.0, 8, 30 }   // X, Y, Z, E
#define WING_JERK    8   /* mm/s */

// One of: CALM, WINDY, STORM
#define WEATHER CALM

// 0 = off
// 1 = slow
// 2 = fast
#define FAN_MODE 2 

#define LANGUAGE "en" // :["en", "de", "fr"]

#define BAUD 250000 // bit/s; choose from 115200, 250000 or 500000

// A comment that belongs to nothing

#define ALONE

//#define OFF_VALUE 12 // mm
  // #define OFF_SPACED "a // b"   // a string that holds slashes
/* #define OFF_BLOCK 'x' */
///#define THREE_SLASHES 1
//#define OFF_FUNCTION(x) ((x) * 2)
#endif
