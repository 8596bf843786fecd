/*
 * Rookery, the desk build: prints the settings that it was built with, one a line.
 */
#include <stdbool.h>
#include <stdio.h>

#include "../config/nest.h"
#include "../config/perch.h"
#include "../config/roost.h"
#include "../config/stops.h"
#include "../config/warmth.h"
#include "target.h"

#define COUNT(list) (int)(sizeof(list) / sizeof(*(list)))

static void numbers(const char *name, const double *list, int count) {
  printf("%s", name);
  for (int i = 0; i < count; i++) {
    printf(" %g", list[i]);
  }
  printf("\n");
}

static void endstop(const char *name, bool fitted, bool flip, bool lift) {
  printf("stop %s fitted %d flip %d lift %d\n", name, fitted, flip, lift);
}

int main(void) {
  const double stride[] = STRIDE_PER_MM;
  const double top[] = STRIDE_TOP;
  const double gain[] = STRIDE_GAIN;
  const double high[] = REACH_HIGH;

  printf("board %d line %d rate %d gait %d\n", NEST_BOARD, LINE_SOCKET, LINE_RATE, GAIT);
  numbers("stride", stride, COUNT(stride));
  numbers("top", top, COUNT(top));
  numbers("gain", gain, COUNT(gain));
  numbers("reach", high, COUNT(high));
  printf("flip %d %d %d %d\n", FLIP_X, FLIP_Y, FLIP_Z, FLIP_E);
  printf("seek %d %d %d\n", SEEK_X, SEEK_Y, SEEK_Z);

#ifdef STOP_X_LOW
  endstop("x low", true, STOP_X_LOW_FLIP, STOP_X_LOW_LIFT);
#endif
#ifdef STOP_X_HIGH
  endstop("x high", true, STOP_X_HIGH_FLIP, STOP_X_HIGH_LIFT);
#endif
#ifdef STOP_Y_LOW
  endstop("y low", true, STOP_Y_LOW_FLIP, STOP_Y_LOW_LIFT);
#endif
#ifdef STOP_Y_HIGH
  endstop("y high", true, STOP_Y_HIGH_FLIP, STOP_Y_HIGH_LIFT);
#endif
#ifdef STOP_Z_LOW
  endstop("z low", true, STOP_Z_LOW_FLIP, STOP_Z_LOW_LIFT);
#endif
#ifdef STOP_Z_HIGH
  endstop("z high", true, STOP_Z_HIGH_FLIP, STOP_Z_HIGH_LIFT);
#endif

  printf("head probe %d from %d to %d\n", WARM_HEAD_PROBE, WARM_HEAD_FLOOR, WARM_HEAD_CEILING);
#ifdef WARM_BED
  printf("bed probe %d from %d to %d\n", WARM_BED_PROBE, WARM_BED_FLOOR, WARM_BED_CEILING);
#endif
#ifdef COIL_MILLIAMPS
  const double coil[] = COIL_MILLIAMPS;
  numbers("coil", coil, COUNT(coil));
#endif
  return 0;
}
