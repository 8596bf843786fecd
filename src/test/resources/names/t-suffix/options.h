#ifndef DIPPER_OPTIONS
#define DIPPER_OPTIONS
/* Dipper options. */

#define BRD_NONE 0
#define BRD_MALLARD 11      /* Mallard, ATmega2560 */
#define BRD_GARGANEY 12     /* Garganey, STM32F407VG */
#define BOARD_KIND BRD_GARGANEY

#define KIN_XYZ 0
#define KIN_COREXY 1
#define KIN_TOWERS 2
#define MACHINE_KINEMATICS KIN_COREXY

#define UART_FOR_HOST 2     /* number of the UART */
#define SPEED_OF_HOST 115200 /* baud */

/* Resolution in steps per millimetre */
#define STEPS_MM_X 100
#define STEPS_MM_Y 100
#define STEPS_MM_Z 1600
#define STEPS_MM_E 95.5

/* Highest feed rate [mm/min] */
#define FEED_LIMIT_X 15000
#define FEED_LIMIT_Y 15000
#define FEED_LIMIT_Z 480
#define FEED_LIMIT_E 3000
#define FEED_JOG 3000

/* Highest acceleration [mm/s2] */
#define ACCEL_LIMIT_X 3000
#define ACCEL_LIMIT_Y 3000
#define ACCEL_LIMIT_Z 100
#define ACCEL_LIMIT_E 8000
#define ACCEL_PRINTING 1500
#define ACCEL_RETRACT 2500

/* Phase current [mA] */
#define MOTOR_CURRENT_X 800
#define MOTOR_CURRENT_Y 800
#define MOTOR_CURRENT_Z 650
#define MOTOR_CURRENT_E 500
#define MOTOR_CURRENT_HOLD 400

/* Rotation: DIR_CW or DIR_CCW */
#define DIR_REVERSE 1
#define DIR_FORWARD 0
#define ROTATION_X DIR_FORWARD
#define ROTATION_Y DIR_REVERSE
#define ROTATION_Z DIR_FORWARD
#define ROTATION_E DIR_REVERSE

/* Software limits [mm] */
#define LIMIT_MIN_X 0
#define LIMIT_MIN_Y 0
#define LIMIT_MIN_Z 0
#define LIMIT_MAX_X 300
#define LIMIT_MAX_Y 310
#define LIMIT_MAX_Z 400

/* Reference run */
#define REF_SIDE_MIN 0
#define REF_SIDE_MAX 1
#define REF_SIDE_X REF_SIDE_MAX
#define REF_SIDE_Y REF_SIDE_MAX
#define REF_SIDE_Z REF_SIDE_MIN
#define REF_FEED_X 3000   /* mm/min */
#define REF_FEED_Y 3000
#define REF_FEED_Z 300

/* Reference switches. CONTACT_NC opens when touched, CONTACT_NO closes when touched */
#define CONTACT_NO 0
#define CONTACT_NC 1
#define SWITCH_CONTACT_MIN_X CONTACT_NO
#define SWITCH_CONTACT_MIN_Y CONTACT_NO
#define SWITCH_CONTACT_MIN_Z CONTACT_NC
#define SWITCH_CONTACT_MAX_X CONTACT_NC
#define SWITCH_CONTACT_MAX_Y CONTACT_NC
#define SWITCH_CONTACT_MAX_Z CONTACT_NO
#define SWITCH_PRESENT_MIN_X 0
#define SWITCH_PRESENT_MIN_Y 0
#define SWITCH_PRESENT_MIN_Z 1
#define SWITCH_PRESENT_MAX_X 1
#define SWITCH_PRESENT_MAX_Y 1
#define SWITCH_PRESENT_MAX_Z 0
#define SWITCH_DEBOUNCE_MS 5
#define SWITCH_PULLUPS 1 /* internal pull-ups on all switches */

#define THERMISTOR_KIND_NOZZLE 2
#define THERMISTOR_KIND_PLATE 2
#define TEMP_FLOOR_NOZZLE 0
#define TEMP_FLOOR_PLATE 0
#define TEMP_CEIL_NOZZLE 300
#define TEMP_CEIL_PLATE 110
#define RUNAWAY_CHECK_NOZZLE 1
#define RUNAWAY_CHECK_PLATE 1
#endif
