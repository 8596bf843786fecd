/* Settings for building the test firmware alone, without any firmware folder. */
#define BOARD_TITLE "Fulmar M4"
#define SERIAL_CLOCK_HZ 84000000
#define BAUD_RATE 250000
#define X_MIN_FITTED 1
#define X_MAX_FITTED 0
#define Y_MIN_FITTED 1
#define Y_MAX_FITTED 0
#define Z_MIN_FITTED 1
#define Z_MAX_FITTED 0
#define X_MIN_TURNED 0
#define X_MAX_TURNED 0
#define Y_MIN_TURNED 0
#define Y_MAX_TURNED 0
#define Z_MIN_TURNED 0
#define Z_MAX_TURNED 0
#define X_STEPS 80
#define Y_STEPS 80
#define Z_STEPS 400
#define E_STEPS 415.2
#define X_SPEED 200
#define Y_SPEED 200
#define Z_SPEED 12
#define E_SPEED 50
#define X_ACCEL 1500
#define Y_ACCEL 1500
#define Z_ACCEL 100
#define E_ACCEL 3000
