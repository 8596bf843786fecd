/* USART1 of the STM32F405. Source: reference manual RM0090, USART registers and baud rate. */
#include "serial.h"
#include <stdint.h>
#include "settings.h"

#define REG(address) (*(volatile uint32_t *)(address))
#define CLOCK_ENABLE REG(0x40023844u) /* RCC_APB2ENR, bit 4: USART1 */
#define STATUS REG(0x40011000u)
#define DATA REG(0x40011004u)
#define RATE REG(0x40011008u)
#define CONTROL REG(0x4001100Cu)
#define INTERRUPT_ENABLE REG(0xE000E104u) /* NVIC_ISER1 */
#define INTERRUPT_CLEAR REG(0xE000E284u)  /* NVIC_ICPR1 */
#define USART1_LINE (1u << (37 - 32))
#define RECEIVED (1u << 5)
#define ROOM (1u << 7)

void serial_open(void) {
  CLOCK_ENABLE |= 1u << 4;
  RATE = (SERIAL_CLOCK_HZ + BAUD_RATE / 2) / BAUD_RATE;
  CONTROL = 1u << 13 | 1u << 5 | 1u << 3 | 1u << 2; /* on, wake on reception, transmit, receive */
  __asm volatile("cpsid i"); /* the interrupt only ends the sleep, no handler runs */
  INTERRUPT_ENABLE = USART1_LINE;
}

char serial_read(void) {
  while (!(STATUS & RECEIVED)) {
    __asm volatile("wfi");
    INTERRUPT_CLEAR = USART1_LINE;
  }
  return (char)DATA;
}

void serial_put(char c) {
  while (!(STATUS & ROOM)) {
  }
  DATA = (uint32_t)c;
}

void board_wait(void) { __asm volatile("wfi"); }
