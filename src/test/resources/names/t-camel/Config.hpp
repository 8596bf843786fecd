// Jackdaw
#pragma once
#define mcuBoard            boardRook            // which controller board
#define boardRook           20   // Rook, RP2040
#define boardCarrion        21   // Carrion, ESP32
#define machineName         "Sandpiper"
#define serialPortNumber    -1   // -1: native USB
#define serialBaudRate      1000000
#define xStepsPerMm         80.0f
#define yStepsPerMm         80.0f
#define zStepsPerMm         400.0f
#define eStepsPerMm         140.0f
#define xMaxFeedrate        300
#define yMaxFeedrate        300
#define zMaxFeedrate        15
#define eMaxFeedrate        80
#define xMaxAccel           3000
#define yMaxAccel           3000
#define zMaxAccel           150
#define eMaxAccel           6000
#define printAccel          1200
#define travelAccel         1500
#define xInvertDir          false
#define yInvertDir          true
#define zInvertDir          false
#define eInvertDir          false
#define xMinPos             0
#define yMinPos             0
#define zMinPos             0
#define xMaxPos             180
#define yMaxPos             180
#define zMaxPos             170
#define xHomeDir            -1
#define yHomeDir            1
#define zHomeDir            -1
#define xHomeFeedrate       40
#define yHomeFeedrate       40
#define zHomeFeedrate       4
#define homeBumpMm          3
#define xMinSwitchActiveLevel   0   // level of the pin while pressed
#define yMinSwitchActiveLevel   0
#define zMinSwitchActiveLevel   1
#define xMaxSwitchActiveLevel   0
#define yMaxSwitchActiveLevel   1
#define zMaxSwitchActiveLevel   0
#define useXMinSwitch       true
#define useYMinSwitch       false
#define useZMinSwitch       true
#define useXMaxSwitch       false
#define useYMaxSwitch       true
#define useZMaxSwitch       false
#define enableSwitchPullups true
#define xMotorMilliamps     700
#define yMotorMilliamps     700
#define zMotorMilliamps     600
#define eMotorMilliamps     450
#define xMicrosteps         16
#define yMicrosteps         16
#define zMicrosteps         16
#define eMicrosteps         16
#define hotendThermistor    1
#define bedThermistor       1
#define hotendMinTemp       3
#define hotendMaxTemp       265
#define bedMinTemp          3
#define bedMaxTemp          105
#define hotendThermalProtection true
#define bedThermalProtection    true
#define fanMinPwm           50
#define lcdContrast         30
