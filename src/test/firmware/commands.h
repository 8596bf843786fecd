/* Reads command lines and answers them. */
#ifndef COMMANDS_H
#define COMMANDS_H

void commands_greet(void);
void commands_take(char c);

#endif
