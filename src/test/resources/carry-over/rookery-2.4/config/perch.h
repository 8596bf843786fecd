/*
 * Rookery - the boards it knows.
 * A board's number is its own for ever; add new ones at the end.
 */
#ifndef ROOKERY_PERCH_H
#define ROOKERY_PERCH_H

#define PERCH_PETREL_81   1002  // Petrel 81 (ATmega1281)
#define PERCH_FULMAR_M3   2001  // Fulmar M3 (STM32F103RC)
#define PERCH_FULMAR_M4   2002  // Fulmar M4 (STM32F405RG)
#define PERCH_FULMAR_M4E  2003  // Fulmar M4E (STM32F407VG), with network socket
#define PERCH_SHEARWATER  3001  // Shearwater (ATSAMD51P20A)

#endif
