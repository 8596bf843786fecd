/* Vector table and first steps of the test firmware. Source: ARMv7-M architecture manual, exception
   model; STM32F405 reference manual, vector table (16 system and 82 peripheral vectors). */
#include <stdint.h>
#include "commands.h"
#include "serial.h"

extern uint32_t stack_top, data_start, data_end, data_load, bss_start, bss_end;
int main(void);
void start(void);
void halt(void);

typedef void (*handler)(void);

__attribute__((section(".vectors"), used)) const handler vectors[16 + 82] = {
    (handler)&stack_top, start, halt, halt, halt, halt, halt, 0, 0, 0, 0, halt, halt, 0, halt, halt,
    [16 ... 97] = halt,
};

/* Endless wait: an unexpected exception must not go on driving anything. */
void halt(void) {
  for (;;) {
    __asm volatile("wfi");
  }
}

void start(void) {
  uint32_t *from = &data_load;
  for (uint32_t *to = &data_start; to < &data_end;) {
    *to++ = *from++;
  }
  for (uint32_t *to = &bss_start; to < &bss_end;) {
    *to++ = 0;
  }
  main();
  halt();
}

int main(void) {
  serial_open();
  commands_greet();
  for (;;) {
    commands_take(serial_read());
  }
}
