#include "inputs.h"
#include "settings.h"

#ifdef __AVR__
#define KEPT ".noinit" /* start-up must not wipe what the emulator has written */
#else
#define KEPT ".inputs"
#endif

__attribute__((section(KEPT))) volatile uint8_t input_level[8];

struct stop {
  const char *name;
  uint8_t fitted;
  uint8_t inverted;
};

static const struct stop stops[INPUTS] = {
    {"x min", X_MIN_FITTED, X_MIN_TURNED}, {"x max", X_MAX_FITTED, X_MAX_TURNED},
    {"y min", Y_MIN_FITTED, Y_MIN_TURNED}, {"y max", Y_MAX_FITTED, Y_MAX_TURNED},
    {"z min", Z_MIN_FITTED, Z_MIN_TURNED}, {"z max", Z_MAX_FITTED, Z_MAX_TURNED},
};

int input_fitted(enum input i) { return stops[i].fitted; }

/* A plain input reads high as touched; a turned one reads low as touched. */
int input_touched(enum input i) { return (input_level[i] != 0) != (stops[i].inverted != 0); }

const char *input_name(enum input i) { return stops[i].name; }
