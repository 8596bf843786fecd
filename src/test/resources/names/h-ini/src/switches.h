// Knot: the end switches. First of each pair: at the lower end, second: at the upper end
#pragma once
#define SWITCHES_INSTALLED_X  { true, false }
#define SWITCHES_INSTALLED_Y  { true, false }
#define SWITCHES_INSTALLED_Z  { true, false }
#define SWITCHES_ACTIVE_LOW_X { true, true }
#define SWITCHES_ACTIVE_LOW_Y { true, true }
#define SWITCHES_ACTIVE_LOW_Z { false, true }
