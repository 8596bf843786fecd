#ifndef CURLEW_BOARDS_H
#define CURLEW_BOARDS_H
#define CB_EIDER   101  // Eider (LPC1768)
#define CB_EIDER_2 102  // Eider, second run (LPC1769)
#define CB_SMEW    110  // Smew (STM32F103RC)
#endif
