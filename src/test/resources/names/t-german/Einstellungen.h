/* Wiedehopf - Einstellungen der Maschine */
#ifndef EINSTELLUNGEN_H
#define EINSTELLUNGEN_H

/* Steuerplatine */
#define PLATINE_KIEBITZ   1    /* Kiebitz, ATmega1284P */
#define PLATINE_UHU       2    /* Uhu, STM32F446RE */
#define PLATINE           PLATINE_UHU
#define MASCHINENNAME     "Reiher"

/* Schnittstelle zum Rechner */
#define SCHNITTSTELLE_NUMMER   1
#define SCHNITTSTELLE_BAUD     250000
#define EMPFANGSPUFFER         64

/* Schritte je Millimeter */
#define SCHRITTE_PRO_MM_X      80
#define SCHRITTE_PRO_MM_Y      80
#define SCHRITTE_PRO_MM_Z      400
#define SCHRITTE_PRO_MM_E      96
/* Höchstgeschwindigkeit in mm/s */
#define HOECHSTGESCHWINDIGKEIT_X   200
#define HOECHSTGESCHWINDIGKEIT_Y   200
#define HOECHSTGESCHWINDIGKEIT_Z   12
#define HOECHSTGESCHWINDIGKEIT_E   50
/* Beschleunigung in mm/s² */
#define BESCHLEUNIGUNG_X       1500
#define BESCHLEUNIGUNG_Y       1500
#define BESCHLEUNIGUNG_Z       80
#define BESCHLEUNIGUNG_E       3000
#define BESCHLEUNIGUNG_DRUCK   1000
/* Drehrichtung umkehren: 1 = ja */
#define DREHRICHTUNG_UMKEHREN_X   0
#define DREHRICHTUNG_UMKEHREN_Y   1
#define DREHRICHTUNG_UMKEHREN_Z   0
#define DREHRICHTUNG_UMKEHREN_E   1
/* Verfahrweg in mm */
#define VERFAHRWEG_VON_X       0
#define VERFAHRWEG_BIS_X       200
#define VERFAHRWEG_VON_Y       0
#define VERFAHRWEG_BIS_Y       210
#define VERFAHRWEG_VON_Z       0
#define VERFAHRWEG_BIS_Z       190
/* Referenzfahrt */
#define REFERENZ_RICHTUNG_X    (-1)   /* -1: zum unteren Ende, 1: zum oberen Ende */
#define REFERENZ_RICHTUNG_Y    (-1)
#define REFERENZ_RICHTUNG_Z    (-1)
#define REFERENZ_GESCHWINDIGKEIT_X  40   /* mm/s */
#define REFERENZ_GESCHWINDIGKEIT_Y  40
#define REFERENZ_GESCHWINDIGKEIT_Z  4
/* Endschalter: 1 = Öffner (NC), 0 = Schließer (NO) */
#define ENDSCHALTER_UNTEN_X_OEFFNER  1
#define ENDSCHALTER_OBEN_X_OEFFNER   0
#define ENDSCHALTER_UNTEN_Y_OEFFNER  1
#define ENDSCHALTER_OBEN_Y_OEFFNER   0
#define ENDSCHALTER_UNTEN_Z_OEFFNER  1
#define ENDSCHALTER_OBEN_Z_OEFFNER   0
#define ENDSCHALTER_UNTEN_X_VORHANDEN  1
#define ENDSCHALTER_OBEN_X_VORHANDEN   0
#define ENDSCHALTER_UNTEN_Y_VORHANDEN  1
#define ENDSCHALTER_OBEN_Y_VORHANDEN   0
#define ENDSCHALTER_UNTEN_Z_VORHANDEN  1
#define ENDSCHALTER_OBEN_Z_VORHANDEN   0
#define ENDSCHALTER_ENTPRELLUNG   3
/* Motorstrom in mA */
#define MOTORSTROM_X           900
#define MOTORSTROM_Y           900
#define MOTORSTROM_Z           700
#define MOTORSTROM_E           600
#define HALTESTROM_PROZENT     50
#define MIKROSCHRITTE_X        16
#define MIKROSCHRITTE_Y        16
#define MIKROSCHRITTE_Z        16
#define MIKROSCHRITTE_E        16
/* Heizung */
#define DUESE_FUEHLER          4
#define DUESE_TEMPERATUR_MIN   5
#define DUESE_TEMPERATUR_MAX   270
#define DUESE_UEBERWACHUNG     1
#define HEIZBETT_FUEHLER       4
#define HEIZBETT_TEMPERATUR_MIN 5
#define HEIZBETT_TEMPERATUR_MAX 110
#define HEIZBETT_UEBERWACHUNG  1
#define NETZTEIL_SPANNUNG      24  /* Volt */
#define LUEFTER_AB_GRAD        50
#endif
