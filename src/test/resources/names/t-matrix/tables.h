/* Brambling: all in tables */
#ifndef TABLES_H
#define TABLES_H
#define PLATFORM_BOARD PB_TEAL
#define PB_TEAL   4  /* Teal, STM32G0B1RE */
#define PB_WIGEON 5  /* Wigeon, STM32H743VI */
#define LINK_UART 2
#define LINK_RATE 500000

/*               steps/mm  max speed  acceleration  current mA  microsteps  reversed */
#define DRIVE_X { 80.0,     200,       2000,         800,        16,         0 }
#define DRIVE_Y { 80.0,     200,       2000,         800,        16,         1 }
#define DRIVE_Z { 400.0,    12,        100,          650,        16,         0 }
#define DRIVE_E { 93.0,     50,        4000,         500,        16,         0 }

/* reach of each axis, {min, max} in mm, rows X Y Z */
#define AXIS_REACH { {0, 220}, {-4, 215}, {0, 245} }

/* end switches, columns min and max, rows X Y Z; 1 = fitted */
#define SWITCH_FITTED   { {1, 0}, {1, 0}, {1, 0} }
/* 1 = low when touched */
#define SWITCH_LOW_HIT  { {1, 1}, {1, 1}, {0, 1} }

/* homing:        end (0 min, 1 max)  speed mm/s */
#define HOMING_X { 0,                  40 }
#define HOMING_Y { 0,                  40 }
#define HOMING_Z { 0,                  5 }

/* heaters:          thermistor  coldest  hottest  watchdog */
#define HEATER_NOZZLE { 11,       5,       280,     1 }
#define HEATER_BED    { 11,       5,       115,     1 }
#endif
