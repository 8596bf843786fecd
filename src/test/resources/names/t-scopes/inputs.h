// Lapwing: what comes in.
#pragma once
#include "words.h"

#define CONSOLE__PORT                 2
#define CONSOLE__BITRATE              115200
#define CONSOLE__PARITY               PARITY_NONE    // PARITY_NONE, PARITY_EVEN or PARITY_ODD

#define LIMIT__X_LOWER__FITTED        ANSWER_YES
#define LIMIT__X_UPPER__FITTED        ANSWER_NO
#define LIMIT__Y_LOWER__FITTED        ANSWER_NO
#define LIMIT__Y_UPPER__FITTED        ANSWER_YES
#define LIMIT__Z_LOWER__FITTED        ANSWER_YES
#define LIMIT__Z_UPPER__FITTED        ANSWER_NO
#define LIMIT__X_LOWER__TOUCHED       LEVEL_IS_LOW   // level at the pin when touched
#define LIMIT__X_UPPER__TOUCHED       LEVEL_IS_LOW
#define LIMIT__Y_LOWER__TOUCHED       LEVEL_IS_LOW
#define LIMIT__Y_UPPER__TOUCHED       LEVEL_IS_HIGH
#define LIMIT__Z_LOWER__TOUCHED       LEVEL_IS_HIGH
#define LIMIT__Z_UPPER__TOUCHED       LEVEL_IS_LOW

#define HEAT__HOTEND__THERMISTOR      11
#define HEAT__BED__THERMISTOR         1
#define HEAT__HOTEND__LOWEST_TEMP     5
#define HEAT__HOTEND__HIGHEST_TEMP    285
#define HEAT__BED__LOWEST_TEMP        5
#define HEAT__BED__HIGHEST_TEMP       120
#define HEAT__HOTEND__RUNAWAY_GUARD   ANSWER_YES
#define HEAT__BED__RUNAWAY_GUARD      ANSWER_YES
#define PANEL__BACKLIGHT_SECONDS      30
#define PANEL__CLICK_SOUND            ANSWER_NO
