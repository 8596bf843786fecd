// Knot: heaters, index 0 the hot end, index 1 the hot plate
#pragma once
#define HEATER_THERMISTOR     { 5, 5 }       // hot end, bed
#define HEATER_MIN_TEMP       { 5, 5 }       // hot end, bed
#define HEATER_MAX_TEMP       { 280, 110 }   // hot end, bed
#define HEATER_RUNAWAY_CHECK  { 1, 1 }       // hot end, bed
#define HEATER_HYSTERESIS     { 2, 2 }
