/* Wheatear: switch things on by taking the slashes away. */
#ifndef WHEATEAR_FEATURES_H
#define WHEATEAR_FEATURES_H

/* ==== Which board ==== */
#define BOARD_IS_BRAMBLING        /* STM32F411CE */
//#define BOARD_IS_SISKIN         /* ATmega1280 */
//#define BOARD_IS_SERIN          /* LPC1768 */

/* ==== How it moves ==== */
//#define MOTION_CARTESIAN
#define MOTION_COREXY
//#define MOTION_DELTA

/* ==== Console ==== */
#define CONSOLE_OVER_NATIVE_USB
#define CONSOLE_UART 1
#define CONSOLE_SPEED 115200

/* ==== End switches: those that are there ==== */
#define HAVE_SWITCH_X_LEFT
//#define HAVE_SWITCH_X_RIGHT
//#define HAVE_SWITCH_Y_FRONT
#define HAVE_SWITCH_Y_BACK
#define HAVE_SWITCH_Z_BOTTOM
//#define HAVE_SWITCH_Z_TOP

/* ==== End switches that are NOT inverted ==== */
#define NOT_INVERTED_SWITCH_X_LEFT   1
#define NOT_INVERTED_SWITCH_X_RIGHT  1
#define NOT_INVERTED_SWITCH_Y_FRONT  1
#define NOT_INVERTED_SWITCH_Y_BACK   1
#define NOT_INVERTED_SWITCH_Z_BOTTOM 0
#define NOT_INVERTED_SWITCH_Z_TOP    1

/* ==== Motors that turn backwards ==== */
//#define MOTOR_X_BACKWARDS
#define MOTOR_Y_BACKWARDS
//#define MOTOR_Z_BACKWARDS
#define MOTOR_E_BACKWARDS

/* ==== Sizes and speeds ==== */
#define PRINTABLE_WIDTH  250  /* mm */
#define PRINTABLE_DEPTH  240  /* mm */
#define PRINTABLE_HEIGHT 230  /* mm */
#define MOTOR_X_STEPS_FOR_ONE_MM 100
#define MOTOR_Y_STEPS_FOR_ONE_MM 100
#define MOTOR_Z_STEPS_FOR_ONE_MM 800
#define MOTOR_E_STEPS_FOR_ONE_MM 400
#define MOTOR_X_FASTEST 220
#define MOTOR_Y_FASTEST 220
#define MOTOR_Z_FASTEST 12
#define MOTOR_E_FASTEST 60
#define MOTOR_X_RAMP 2500   /* acceleration, mm/s^2 */
#define MOTOR_Y_RAMP 2500
#define MOTOR_Z_RAMP 120
#define MOTOR_E_RAMP 4000

/* ==== Homing ==== */
//#define HOME_X_TO_RIGHT
#define HOME_Y_TO_BACK
//#define HOME_Z_TO_TOP
#define HOMING_SPEED 35     /* mm/s, all axes */

/* ==== Heat ==== */
#define NOZZLE_NTC_TYPE 5
#define NOZZLE_COLDEST 5
#define NOZZLE_HOTTEST 260
#define NOZZLE_RUNAWAY_PROTECTION
#define PLATE_NTC_TYPE 5
#define PLATE_COLDEST 5
#define PLATE_HOTTEST 110
//#define PLATE_RUNAWAY_PROTECTION
#define PARK_ON_PAUSE
#define SOUND_ON_FINISH
#endif
