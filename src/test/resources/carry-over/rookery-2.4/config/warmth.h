/*
 * Rookery - heaters and their sensors.
 */
#ifndef ROOKERY_WARMTH_H
#define ROOKERY_WARMTH_H

#include "nest.h"

#define PROBE_NONE        0
#define PROBE_NTC_3950    11   // 100 kohm at 25 degrees, B 3950
#define PROBE_PT1000      21   // platinum, 1000 ohm at 0 degrees

/* Hot end */
#define WARM_HEAD_PROBE   PROBE_NTC_3950
#define WARM_HEAD_FLOOR   0     // degrees C: below, the sensor is taken for broken
#define WARM_HEAD_LIMIT 260   // degrees C: above, it is switched off
#define WARM_HEAD_GUARD         // off where the temperature does not follow the heater

/* Bed; take the next line away where there is none */
#define WARM_BED

#ifdef WARM_BED
  #define WARM_BED_PROBE   PROBE_NTC_3950
  #define WARM_BED_FLOOR   5
  #define WARM_BED_LIMIT 110
#endif

#endif
