/*
 * Redshank board support. Lists are written as AXES(X, Y, Z, E);
 * pairs as RANGE(lower, upper).
 */
#define AXES(x, y, z, e)      { (x), (y), (z), (e) }
#define RANGE(a, b)           { (a), (b) }
#define BOTH(hotend, bed)     { (hotend), (bed) }

#define MACHINE_KIND          KIND_CROSSED_BELTS   /* or KIND_STRAIGHT, KIND_DELTA */
#define KIND_STRAIGHT         0   /* each motor drives one axis: cartesian */
#define KIND_CROSSED_BELTS    1   /* two motors share two belts: corexy */
#define KIND_DELTA            2   /* three towers */

/* Console line */
#define CONSOLE_SERIAL_NO     0u
#define CONSOLE_SERIAL_SPEED  230400ul  /* bits per second */
#define SPARE_SERIAL_NO       3u        /* a second console; -1 for none */

/* Motors */
#define MOTOR_PULSES_PER_MM   AXES(80.0f, 80.0f, 1600.0f, 140.0f)
#define MOTOR_MICROSTEPPING   AXES(16, 16, 16, 32)
#define MOTOR_REVERSED        AXES(false, true, false, true)
#define MOTOR_RMS_AMPS        AXES(0.80f, 0.80f, 0.60f, 0.45f)
#define MOTOR_SENSE_RESISTOR  AXES(0.11f, 0.11f, 0.11f, 0.11f)  /* ohms */

/* Limits of motion */
#define SPEED_CEILING         AXES(250, 250, 12, 80)       /* mm per second */
#define RAMP_CEILING          AXES(2500, 2500, 150, 6000)  /* mm/s^2 */
#define TRAVEL_X              RANGE(0, 300)
#define TRAVEL_Y              RANGE(-10, 295)
#define TRAVEL_Z              RANGE(0, 340)
#define CORNER_SPEED          AXES(9, 9, 0.3f, 4)          /* jerk, mm/s */

/* Endstops: true where the input reads the wrong way round */
#define ENDSTOP_INVERT_XMIN   true
#define ENDSTOP_INVERT_XMAX   false
#define ENDSTOP_INVERT_YMIN   true
#define ENDSTOP_INVERT_YMAX   false
#define ENDSTOP_INVERT_ZMIN   false
#define ENDSTOP_INVERT_ZMAX   false

/* Heaters */
#define TEMP_FLOOR            BOTH(5, 5)
#define TEMP_CEILING          BOTH(290, 115)
#define HEATER_WATTAGE        BOTH(50, 250)
#define SENSOR_PULLUP_OHMS    BOTH(4700, 4700)
