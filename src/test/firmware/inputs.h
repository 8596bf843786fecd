/* Endstop inputs: an array in RAM that the emulator writes, in the place of pins. */
#ifndef INPUTS_H
#define INPUTS_H
#include <stdint.h>

enum input { X_MIN, X_MAX, Y_MIN, Y_MAX, Z_MIN, Z_MAX, INPUTS };

/* Level of each input: 0 low, 1 high. Stands at the start of RAM, see the linker script. */
extern volatile uint8_t input_level[8];

int input_fitted(enum input i);
int input_touched(enum input i);
const char *input_name(enum input i);

#endif
