/* The AVR sister of the test firmware: built to be looked at; avr/main.c is the one that runs. */
#include <avr/eeprom.h>
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/pgmspace.h>

static const char board[] PROGMEM = "Petrel 81";
static EEMEM unsigned char stored[16] = {1, 2, 3};
static volatile unsigned char counts[64];
static volatile unsigned int started = 0x1234;

ISR(USART0_RX_vect) { counts[UDR0 & 63]++; }

int main(void) {
  UBRR0 = 3; /* 16 MHz / (16 * (3 + 1)) = 250,000 bit/s exactly */
  UCSR0B = _BV(RXEN0) | _BV(TXEN0) | _BV(RXCIE0);
  sei();
  for (;;) {
    while (!(UCSR0A & _BV(UDRE0))) {
    }
    UDR0 = pgm_read_byte(&board[started++ % sizeof board]) ^ eeprom_read_byte(stored);
  }
}
