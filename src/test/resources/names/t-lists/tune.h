// Nuthatch: tuning. All lists are X, Y, Z, E.
#ifndef NUTHATCH_TUNE_H
#define NUTHATCH_TUNE_H
#define NUT_MAINBOARD        NUT_BOARD_DOTTEREL
#define NUT_BOARD_DOTTEREL   0x21  // Dotterel (ATSAMD51P20A)
#define NUT_BOARD_KNOT       0x22  // Knot (ATSAMD51J20A)
#define NUT_UART             3
#define NUT_UART_AUX         0     // second port, for the panel
#define NUT_BAUD             460800
#define NUT_MOTION_SYSTEM    2     // 1 = cartesian, 2 = core XY, 3 = delta

#define NUT_STEPS_PER_UNIT   { 80, 80, 400, 415.0 }   // per mm
#define NUT_MAX_VELOCITY     { 250, 250, 14, 70 }      // mm/s
#define NUT_MAX_ACCELERATION { 3500, 3500, 110, 6000 } // mm/s/s
#define NUT_MAX_JERK         { 9, 9, 0.4, 5 }
#define NUT_PHASE_AMPS       { 0.85, 0.85, 0.75, 0.5 }
#define NUT_MICROSTEPS       { 16, 16, 16, 16 }
#define NUT_FULL_STEPS       { 200, 200, 200, 400 }    // per revolution
#define NUT_REVERSE_MOTOR    { false, true, false, true }
#define NUT_DRIVER           { TMC2226, TMC2226, TMC2226, TMC2226 }
#define NUT_SENSE_RESISTOR   { 0.11, 0.11, 0.11, 0.11 } // ohm

#define NUT_AXIS_MIN         { -3, 0, 0 }   // mm
#define NUT_AXIS_MAX         { 245, 240, 260 }
#define NUT_HOME_TO_MAX      { false, true, false }
#define NUT_HOME_VELOCITY    { 50, 50, 6 }  // mm/s
#define NUT_HOME_BACKOFF     { 5, 5, 2 }

// endstops: { at min, at max }
#define NUT_ENDSTOP_USED_X     { 1, 0 }
#define NUT_ENDSTOP_USED_Y     { 0, 1 }
#define NUT_ENDSTOP_USED_Z     { 1, 0 }
#define NUT_ENDSTOP_INVERTED_X { 0, 0 }
#define NUT_ENDSTOP_INVERTED_Y { 0, 0 }
#define NUT_ENDSTOP_INVERTED_Z { 1, 0 }
#define NUT_ENDSTOP_PULLUP     true

// heaters: { hotend, bed }
#define NUT_TEMP_SENSOR      { 6, 6 }
#define NUT_TEMP_MIN         { 5, 5 }
#define NUT_TEMP_MAX         { 290, 125 }
#define NUT_HEATER_POWER     { 60, 250 }   // watts
#define NUT_PID_KP           { 22.2, 50.0 }
#endif
