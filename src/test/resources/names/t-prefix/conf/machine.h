/* Curlew firmware: the machine */
#ifndef CURLEW_MACHINE_H
#define CURLEW_MACHINE_H
#include "electronics.h"

#define CURLEW_VERSION "0.9"

// ---- Electronics ----
#define CONTROLLER_BOARD CB_EIDER   // see electronics.h
#define PRINTER_TITLE "Workshop Heron"

// ---- Console ----
#define CONSOLE_PORT_INDEX 0     // UART number; -1 selects the chip's own USB
#define CONSOLE_BITRATE 230400
#define CONSOLE_RX_BUFFER 256
//#define SECOND_CONSOLE_PORT 1
#define CONSOLE_DATA_BITS 8
#define CONSOLE_PARITY 'N'

// ---- X axis ----
#define X_TICKS_PER_MM 160.0     // ticks per mm
#define X_TOP_SPEED 180          // mm/s
#define X_TOP_ACCELERATION 2200  // mm/s^2
#define X_JUMP_SPEED 8           // mm/s without ramp
#define X_LOWEST -5              // mm
#define X_HIGHEST 230            // mm
#define X_MOTOR_REVERSED 1
#define X_MOTOR_STEPS_PER_TURN 200
#define X_MICROSTEPPING 32
#define X_RUN_CURRENT 0.9        // A
#define X_DRIVER_CHIP "TMC2209"
#define X_HOMES_TOWARD -1        // -1 lower end, 1 upper end
#define X_HOMING_SPEED 45
#define X_LIMIT_LOW_FITTED 1
#define X_LIMIT_LOW_PIN PC1
#define X_LIMIT_LOW_INVERT 0     // 1 when the switch pulls the pin low
#define X_LIMIT_LOW_PULLUP 1
#define X_LIMIT_HIGH_FITTED 0
#define X_LIMIT_HIGH_PIN PC2
#define X_LIMIT_HIGH_INVERT 0
#define X_LIMIT_HIGH_PULLUP 1
#define X_PULLEY_TEETH 20
#define X_BELT_PITCH 2

// ---- Y axis ----
#define Y_TICKS_PER_MM 160.0
#define Y_TOP_SPEED 180
#define Y_TOP_ACCELERATION 2000
#define Y_JUMP_SPEED 8
#define Y_LOWEST 0
#define Y_HIGHEST 225
#define Y_MOTOR_REVERSED 0
#define Y_MOTOR_STEPS_PER_TURN 200
#define Y_MICROSTEPPING 32
#define Y_RUN_CURRENT 0.9
#define Y_DRIVER_CHIP "TMC2209"
#define Y_HOMES_TOWARD -1
#define Y_HOMING_SPEED 45
#define Y_LIMIT_LOW_FITTED 1
#define Y_LIMIT_LOW_PIN PC3
#define Y_LIMIT_LOW_INVERT 0
#define Y_LIMIT_LOW_PULLUP 1
#define Y_LIMIT_HIGH_FITTED 0
#define Y_LIMIT_HIGH_PIN PC4
#define Y_LIMIT_HIGH_INVERT 0
#define Y_LIMIT_HIGH_PULLUP 1
#define Y_PULLEY_TEETH 20
#define Y_BELT_PITCH 2

// ---- Z axis ----
#define Z_TICKS_PER_MM 800.0
#define Z_TOP_SPEED 10
#define Z_TOP_ACCELERATION 90
#define Z_JUMP_SPEED 0.4
#define Z_LOWEST 0
#define Z_HIGHEST 240
#define Z_MOTOR_REVERSED 0
#define Z_MOTOR_STEPS_PER_TURN 200
#define Z_MICROSTEPPING 32
#define Z_RUN_CURRENT 0.7
#define Z_DRIVER_CHIP "A4988"
#define Z_HOMES_TOWARD -1
#define Z_HOMING_SPEED 5
#define Z_LIMIT_LOW_FITTED 1
#define Z_LIMIT_LOW_PIN PC5
#define Z_LIMIT_LOW_INVERT 1
#define Z_LIMIT_LOW_PULLUP 0
#define Z_LIMIT_HIGH_FITTED 0
#define Z_LIMIT_HIGH_PIN PC6
#define Z_LIMIT_HIGH_INVERT 0
#define Z_LIMIT_HIGH_PULLUP 1
#define Z_SCREW_LEAD 8

// ---- E drive ----
#define E_TICKS_PER_MM 690.0
#define E_TOP_SPEED 60
#define E_TOP_ACCELERATION 5000
#define E_MOTOR_REVERSED 1
#define E_MOTOR_STEPS_PER_TURN 200
#define E_MICROSTEPPING 16
#define E_RUN_CURRENT 0.55
#define E_DRIVER_CHIP "TMC2209"
#define E_GEAR_RATIO 3.0

// ---- Heating ----
#define HOTEND_SENSOR_CURVE 7
#define HOTEND_SENSOR_PULLUP_OHMS 4700
#define HOTEND_MIN_TEMP 5
#define HOTEND_MAX_TEMP 285
#define HOTEND_WATTS 40
#define HOTEND_RUNAWAY_GUARD 1
#define HOTEND_PREHEAT_TEMP 200
#define BED_SENSOR_CURVE 7
#define BED_SENSOR_PULLUP_OHMS 4700
#define BED_MIN_TEMP 5
#define BED_MAX_TEMP 120
#define BED_WATTS 220
#define BED_RUNAWAY_GUARD 1
#define BED_PREHEAT_TEMP 60
#define PSU_VOLTS 24
#define PSU_AMPS 15
#endif
