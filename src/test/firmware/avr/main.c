/* The test firmware on an AVR; avr-libc brings vectors and start-up. */
#include "../commands.h"
#include "../serial.h"

int main(void) {
  serial_open();
  commands_greet();
  for (;;) {
    commands_take(serial_read());
  }
}
