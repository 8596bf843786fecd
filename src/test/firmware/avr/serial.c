/* USART0 of the ATmega1281. Source: its data sheet (Atmel 2549), USART and baud rate registers. */
#include "../serial.h"
#include <avr/io.h>
#include "../settings.h"

void serial_open(void) {
  UBRR0 = (SERIAL_CLOCK_HZ + 8L * BAUD_RATE) / (16L * BAUD_RATE) - 1;
  UCSR0B = _BV(RXEN0) | _BV(TXEN0);
}

char serial_read(void) {
  while (!(UCSR0A & _BV(RXC0))) {
  }
  return (char)UDR0;
}

void serial_put(char c) {
  while (!(UCSR0A & _BV(UDRE0))) {
  }
  UDR0 = (unsigned char)c;
}

/* No sleep: the emulator does not wake this part from it. */
void board_wait(void) {}
