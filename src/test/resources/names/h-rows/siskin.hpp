// Siskin motion firmware ------------------------------------------------------
#ifndef SISKIN_HPP
#define SISKIN_HPP

#define SISKIN_MACHINE_NAME  "Redpoll"

// pick exactly one board
//#define USE_BOARD_LINNET      // ATmega2560
#define USE_BOARD_TWITE         // STM32F401RC
//#define USE_BOARD_SERIN       // RP2040

// axis numbers, used as index into every table below
#define AX_Z 0
#define AX_X 1
#define AX_Y 2
#define AX_E 3

#if defined(USE_BOARD_LINNET)
  #define SERIAL_UNIT      0
  #define SERIAL_SPEED     500000
#elif defined(USE_BOARD_TWITE)
  #define SERIAL_UNIT      6        // the usart that reaches the plug
  #define SERIAL_SPEED     921600   // bps
#else
  #define SERIAL_UNIT      -1       // native usb
  #define SERIAL_SPEED     1000000
#endif

//                        Z       X       Y       E
#define TAB_RESOLUTION { 3200,   160,    160,    742 }   // steps per mm
#define TAB_TOP_RATE   {   10,   250,    250,     60 }   // mm/s
#define TAB_PICKUP     {   80,  4000,   3500,   5000 }   // acceleration in mm/s^2
#define TAB_REVERSED   { false, true,  false,  false }   // motor direction

#if defined(USE_BOARD_TWITE) || defined(USE_BOARD_SERIN)
  #define TAB_DRIVER   { DRV_SMART, DRV_SMART, DRV_SMART, DRV_SMART }
  #define DRV_SMART    2209
  #define TAB_AMPS     {  0.7,   0.85,   0.85,   0.55 }   // run current, A
  #define TAB_FRACTION {   32,     32,     32,     32 }   // microsteps
#endif

//                     lowest  highest  home speed
#define ROW_X        {    -3,     240,        50 }   // mm, mm, mm/s
#define ROW_Y        {     0,     230,        50 }
#define ROW_Z        {     0,     215,         4 }

#define X_GOES_HOME_TO  LOWEST
#define Y_GOES_HOME_TO  HIGHEST
#define Z_GOES_HOME_TO  LOWEST
#define LOWEST  0
#define HIGHEST 1

// end stops: comment out the ones that your machine lacks; NORMAL reads high when hit, FLIPPED reads low when hit
#define NORMAL  0
#define FLIPPED 1
#define X_LOWEST_STOP   NORMAL
//#define X_HIGHEST_STOP NORMAL
//#define Y_LOWEST_STOP  NORMAL
#define Y_HIGHEST_STOP  NORMAL
#define Z_LOWEST_STOP   FLIPPED
//#define Z_HIGHEST_STOP NORMAL

#define TOOL_THERMISTOR   NTC_SEMI
#define TOOL_TEMP_FLOOR   0
#define TOOL_TEMP_CEILING 300
#define BASE_THERMISTOR   NTC_SEMI
#define BASE_TEMP_FLOOR   0
#define BASE_TEMP_CEILING 120
#define NTC_SEMI          31   // beta 4267
#define NTC_PLAIN         30   // beta 3950
#define THERMAL_PROTECTION_OF_TOOL
#define THERMAL_PROTECTION_OF_BASE
#endif
