/* From the macros of the demo firmware folder to the names that this firmware uses. */
#include <stdbool.h>

#include "nest.h"
#include "perch.h"
#include "roost.h"
#include "stops.h"

#if defined(ROOKERY_TARGET_FULMAR_M4) && NEST_BOARD != PERCH_FULMAR_M4
#error "target fulmar_m4 is for board PERCH_FULMAR_M4, and NEST_BOARD is another"
#endif
#if defined(ROOKERY_TARGET_PETREL81) && NEST_BOARD != PERCH_PETREL_81
#error "target petrel81 is for board PERCH_PETREL_81, and NEST_BOARD is another"
#endif

#if NEST_BOARD == PERCH_FULMAR_M4
#define BOARD_TITLE "Fulmar M4"
#elif NEST_BOARD == PERCH_PETREL_81
#define BOARD_TITLE "Petrel 81"
#else
#define BOARD_TITLE "another board"
#endif

#ifdef __AVR__
#define SERIAL_CLOCK_HZ 16000000
#else
#define SERIAL_CLOCK_HZ 84000000
#endif
#define BAUD_RATE LINE_RATE

#ifdef STOP_X_LOW
#define X_MIN_FITTED 1
#else
#define X_MIN_FITTED 0
#endif
#ifdef STOP_X_HIGH
#define X_MAX_FITTED 1
#else
#define X_MAX_FITTED 0
#endif
#ifdef STOP_Y_LOW
#define Y_MIN_FITTED 1
#else
#define Y_MIN_FITTED 0
#endif
#ifdef STOP_Y_HIGH
#define Y_MAX_FITTED 1
#else
#define Y_MAX_FITTED 0
#endif
#ifdef STOP_Z_LOW
#define Z_MIN_FITTED 1
#else
#define Z_MIN_FITTED 0
#endif
#ifdef STOP_Z_HIGH
#define Z_MAX_FITTED 1
#else
#define Z_MAX_FITTED 0
#endif

#define X_MIN_TURNED STOP_X_LOW_FLIP
#define X_MAX_TURNED STOP_X_HIGH_FLIP
#define Y_MIN_TURNED STOP_Y_LOW_FLIP
#define Y_MAX_TURNED STOP_Y_HIGH_FLIP
#define Z_MIN_TURNED STOP_Z_LOW_FLIP
#define Z_MAX_TURNED STOP_Z_HIGH_FLIP

#define ELEMENT(list, index) (((const double[])list)[index])
#define X_STEPS ELEMENT(STRIDE_PER_MM, 0)
#define Y_STEPS ELEMENT(STRIDE_PER_MM, 1)
#define Z_STEPS ELEMENT(STRIDE_PER_MM, 2)
#define E_STEPS ELEMENT(STRIDE_PER_MM, 3)
#define X_SPEED ELEMENT(STRIDE_TOP, 0)
#define Y_SPEED ELEMENT(STRIDE_TOP, 1)
#define Z_SPEED ELEMENT(STRIDE_TOP, 2)
#define E_SPEED ELEMENT(STRIDE_TOP, 3)
#define X_ACCEL ELEMENT(STRIDE_GAIN, 0)
#define Y_ACCEL ELEMENT(STRIDE_GAIN, 1)
#define Z_ACCEL ELEMENT(STRIDE_GAIN, 2)
#define E_ACCEL ELEMENT(STRIDE_GAIN, 3)

#ifdef COIL_MILLIAMPS
#define X_COIL ELEMENT(COIL_MILLIAMPS, 0)
#define Y_COIL ELEMENT(COIL_MILLIAMPS, 1)
#define Z_COIL ELEMENT(COIL_MILLIAMPS, 2)
#define E_COIL ELEMENT(COIL_MILLIAMPS, 3)
#endif
