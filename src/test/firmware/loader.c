/* The smallest bootloader: starts the program behind it. Linked at the start of flash, it stands in
   for the one on the board sheet when the emulator runs an image with an offset. */
#include <stdint.h>

#define PROGRAM (0x08000000u + FLASH_OFFSET)
#define VECTOR_TABLE_OFFSET (*(volatile uint32_t *)0xE000ED08u) /* ARMv7-M: VTOR */

void start(void);

__attribute__((section(".vectors"), used)) const uint32_t vectors[2] = {
    0x20020000u,
    (uint32_t)&start,
};

__attribute__((noreturn)) void start(void) {
  const uint32_t *program = (const uint32_t *)PROGRAM;
  VECTOR_TABLE_OFFSET = PROGRAM;
  __asm volatile("msr msp, %0\n bx %1" : : "r"(program[0]), "r"(program[1]));
  for (;;) {
  }
}
