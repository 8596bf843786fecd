// Turnstone controller, machine description
#pragma once

#include "kHardware.h"

// Identity ------------------------------------------------------------
#define kMachineLabel        "Sandpiper two"
#define kRevisionText        "1.8"

// Which electronics carry the machine, see kHardware.h
#define kElectronics         kElectronics_Godwit

// Talking to the host ----------------------------------------------------
#define kHostUartIndex       1        // 0..3, or -1 for the USB peripheral of the chip
#define kHostBitsPerSecond   500000   // both ends have to agree
#define kHostTxQueueBytes    256
// #define kTelemetryUartIndex 2      // additional uart, for a network bridge

// How the belts are arranged: kMotion_Straight, kMotion_Crossed or kMotion_Towers
#define kMotion_Straight     10
#define kMotion_Crossed      11
#define kMotion_Towers       12
#define kMotionArrangement   kMotion_Crossed

// Axes ---------------------------------------------------------------------
#define kAxisSetupX { .pulsesPerMm = 100.0f, .topSpeed = 220, .topAccel = 2800, .spinReversed = false, .reachLow = 0, .reachHigh = 235, .coilCurrent = 0.90, .subdivision = 16 }
#define kAxisSetupY { .pulsesPerMm = 100.0f, .topSpeed = 220, .topAccel = 2600, .spinReversed = true, .reachLow = -2, .reachHigh = 240, .coilCurrent = 0.95, .subdivision = 16 }
#define kAxisSetupZ { .pulsesPerMm = 800.0f, .topSpeed = 12, .topAccel = 120, .spinReversed = false, .reachLow = 0, .reachHigh = 250, .coilCurrent = 0.70, .subdivision = 16 }
#define kAxisSetupE { .pulsesPerMm = 412.5f, .topSpeed = 55, .topAccel = 4000, .spinReversed = true, .coilCurrent = 0.60, .subdivision = 16 }

// Speeds in mm/s, accelerations in mm/s^2, current in amperes
#define kCornerJolt          { 8, 8, 0.4, 5 }
#define kMotorRestSeconds    90

// Finding the origin
#define kSeekSpeedX          45   // mm/s
#define kSeekSpeedY          45   // mm/s
#define kSeekSpeedZ          6    // mm/s
#define kSeekRetreatMm       5
#define kSeekTowardsX        kEnd_Low
#define kSeekTowardsY        kEnd_High
#define kSeekTowardsZ        kEnd_Low
#define kEnd_Low             0
#define kEnd_High            1

// Bumpers at the ends of the axes
#define kBumperLowXPresent   true
#define kBumperHighXPresent  false
#define kBumperLowYPresent   false
#define kBumperHighYPresent  true
#define kBumperLowZPresent   true
#define kBumperHighZPresent  false
// level of the input while the bumper is pressed
#define kBumperLowXPressedLevel   LOW
#define kBumperHighXPressedLevel  LOW
#define kBumperLowYPressedLevel   LOW
#define kBumperHighYPressedLevel  HIGH
#define kBumperLowZPressedLevel   LOW
#define kBumperHighZPressedLevel  LOW
#define kBumperPullups       true   // all inputs

// Heat
#define kNozzleSensorKind    4      // curve 4: 100k, beta 3950
#define kNozzleColdestC      5
#define kNozzleHottestC      275
#define kNozzleGuard         true   // cut the heat when the temperature does not follow
#define kPlatformSensorKind  4
#define kPlatformColdestC    5
#define kPlatformHottestC    115
#define kPlatformGuard       true
#define kPartFanMinDuty      60
