/*
 * Rookery - which machine this is.
 */
#ifndef ROOKERY_NEST_H
#define ROOKERY_NEST_H

#include "perch.h"

//===========================================================================
// Board
//===========================================================================

#define NEST_BOARD        PERCH_PETREL_81   // one of the numbers in perch.h
#define NEST_LABEL        "unnamed"         // shown on the panel

//===========================================================================
// Line to the console
//===========================================================================

/* Which serial port the console is on; -1 is the native USB of the part. */
#define LINE_SOCKET       0
#define LINE_SPEED         250000   // bit/s: 57600, 115200, 250000, 500000
//#define LINE_SOCKET_SPARE 1        // a second port, for a panel

//===========================================================================
// Gait: how motors move the head
//===========================================================================

#define GAIT_PLAIN        0   // one motor group an axis
#define GAIT_CROSSED      1   // two belts shared by X and Y
#define GAIT_COLUMNS      2   // three columns

#define GAIT              GAIT_PLAIN

#endif
