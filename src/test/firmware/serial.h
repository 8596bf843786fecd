/* One serial port, polled: the first four are of the part, the rest of any. */
#ifndef SERIAL_H
#define SERIAL_H

void serial_open(void);
char serial_read(void);
void serial_put(char c);
void board_wait(void); /* sleeps until something happens, where the part can */
void serial_write(const char *text);
void serial_number(long value);
void serial_fixed(double value, int decimals);

#endif
