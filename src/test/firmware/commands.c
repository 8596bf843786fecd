#include "commands.h"
#include "inputs.h"
#include "serial.h"
#include "settings.h"

#define LINE_MOST 64

static char line[LINE_MOST];
static int length;

void commands_greet(void) { serial_write("start\n"); }

static void endstops(void) {
  for (int i = 0; i < INPUTS; i++) {
    if (input_fitted(i)) {
      serial_write(input_name(i));
      serial_write(": ");
      serial_write(input_touched(i) ? "pressed" : "open");
      serial_write("\n");
    }
  }
}

static void four(const char *command, double x, double y, double z, double e) {
  serial_write(command);
  serial_write(" X");
  serial_fixed(x, 2);
  serial_write(" Y");
  serial_fixed(y, 2);
  serial_write(" Z");
  serial_fixed(z, 2);
  serial_write(" E");
  serial_fixed(e, 2);
  serial_write("\n");
}

static void settings(void) {
  four("M92", X_STEPS, Y_STEPS, Z_STEPS, E_STEPS);
  four("M203", X_SPEED, Y_SPEED, Z_SPEED, E_SPEED);
  four("M201", X_ACCEL, Y_ACCEL, Z_ACCEL, E_ACCEL);
#ifdef X_COIL
  four("M906", X_COIL, Y_COIL, Z_COIL, E_COIL);
#endif
}

static void identity(void) {
  serial_write("firmware: rookery 2.3; board: " BOARD_TITLE "; baud: ");
  serial_number(BAUD_RATE);
  serial_write("\n");
}

/* The number behind the letter M, or -1. */
static int m_number(void) {
  int value = 0;
  if (line[0] != 'M' || length < 2) {
    return -1;
  }
  for (int i = 1; i < length && line[i] != ' '; i++) {
    if (line[i] < '0' || line[i] > '9' || value > 9999) {
      return -1;
    }
    value = value * 10 + (line[i] - '0');
  }
  return value;
}

static void answer(void) {
  switch (m_number()) {
    case 115: identity(); break;
    case 119: endstops(); break;
    case 503: settings(); break;
    case 112: serial_write("halted\n"); for (;;) { board_wait(); }
    default: serial_write("error: unknown command "); serial_write(line); serial_write("\n"); return;
  }
  serial_write("ok\n");
}

void commands_take(char c) {
  if (c == '\n' || c == '\r') {
    line[length] = 0;
    if (length > 0) {
      answer();
    }
    length = 0;
  } else if (length < LINE_MOST - 1) {
    line[length++] = c;
  }
}
