#pragma once
// Electronics that this firmware has been run on
#define kElectronics_Dunlin    1   // Dunlin 1, LPC1768
#define kElectronics_Godwit    2   // Godwit 2, LPC1769
#define kElectronics_Godwit3   3   // Godwit 3, STM32F407VG
