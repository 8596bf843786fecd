/* One serial port, polled. */
#ifndef SERIAL_H
#define SERIAL_H

void serial_open(void);
char serial_read(void);
void serial_write(const char *text);
void serial_number(long value);
void serial_fixed(double value, int decimals);

#endif
