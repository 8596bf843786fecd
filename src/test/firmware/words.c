/* Words and numbers over the serial port, whatever the part. */
#include "serial.h"

void serial_write(const char *text) {
  while (*text) {
    serial_put(*text++);
  }
}

void serial_number(long value) {
  char digits[12];
  int n = 0;
  unsigned long rest = value < 0 ? -(unsigned long)value : (unsigned long)value;
  if (value < 0) {
    serial_put('-');
  }
  do {
    digits[n++] = (char)('0' + rest % 10);
    rest /= 10;
  } while (rest);
  while (n) {
    serial_put(digits[--n]);
  }
}

/* Fixed point without a C library; enough for settings, not for arithmetic. */
void serial_fixed(double value, int decimals) {
  long scale = 1;
  for (int i = 0; i < decimals; i++) {
    scale *= 10;
  }
  long scaled = (long)(value * (double)scale + (value < 0 ? -0.5 : 0.5));
  if (scaled < 0) {
    serial_put('-');
    scaled = -scaled;
  }
  serial_number(scaled / scale);
  serial_put('.');
  for (long unit = scale / 10; unit; unit /= 10) {
    serial_put((char)('0' + scaled / unit % 10));
  }
}
