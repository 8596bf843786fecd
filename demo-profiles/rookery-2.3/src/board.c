/*
 * Rookery, the board build: small on purpose. It carries its settings and waits.
 */
#include <stdbool.h>
#include <stdint.h>

#include "../config/nest.h"
#include "../config/perch.h"
#include "../config/roost.h"
#include "../config/stops.h"
#include "../config/warmth.h"
#include "target.h"

const char rookery_title[] = "Rookery 2.3, " NEST_TITLE;
const uint32_t rookery_line[] = {LINE_RATE, (uint32_t)LINE_SOCKET, NEST_BOARD};
const float rookery_stride[] = STRIDE_PER_MM;
const bool rookery_flip[] = {STOP_X_LOW_FLIP, STOP_Y_LOW_FLIP, STOP_Z_LOW_FLIP};

static volatile uint32_t seen;

static void settle(void) {
  seen = rookery_line[0] + rookery_line[2] + (uint32_t)rookery_stride[0];
  seen += (uint32_t)rookery_title[0] + rookery_flip[0];
}

#ifdef __arm__
extern uint32_t ram_end;

void reset(void) {
  settle();
  for (;;) {
    __asm__ volatile("wfi");
  }
}

static void fault(void) {
  for (;;) {
  }
}

/* Initial stack, reset, then the faults of the Cortex-M4 that can happen here. */
__attribute__((section(".vectors"), used)) static void *const vectors[16] = {
    &ram_end, reset, fault, fault, fault, fault, fault,
};
#else
int main(void) {
  settle();
  for (;;) {
  }
}
#endif
