/* Curlew 5: the machine around the drives. */
#include "drives.h"

#define MACHINE_TITLE         "Curlew 5"
#define HOST_UART_INDEX       (1u)
#define HOST_UART_BAUD        (250000UL)

// ---- Switches at the ends; a value of (1) means that the pin reads low when the switch is hit ----
#define X_LOW_SWITCH_ACTIVE_LOW   (1)
#define Y_LOW_SWITCH_ACTIVE_LOW   (1)
#define Z_LOW_SWITCH_ACTIVE_LOW   (0)
#define X_LOW_SWITCH_PULLUP       (1)
#define Y_LOW_SWITCH_PULLUP       (1)
#define Z_LOW_SWITCH_PULLUP       (0)

// ---- Heat ----
#define NOZZLE_COLDEST_C      (5)
#define NOZZLE_HOTTEST_C      (275)
#define PLATE_COLDEST_C       (5)
#define PLATE_HOTTEST_C       (110)
#define NOZZLE_POWER_WATTS    (40.0)
#define PLATE_POWER_WATTS     (220.0)
#define COOLING_FAN_KICK_MS   (100)
#define FILAMENT_DIAMETER_MM  (1.75f)
