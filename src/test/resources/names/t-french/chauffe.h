/* Pluvier - chauffage */
#ifndef PLUVIER_CHAUFFE_H
#define PLUVIER_CHAUFFE_H
#define SONDE_BUSE               3     /* 3 : thermistance 100k, 3950 */
#define TEMPERATURE_MINI_BUSE    5     /* degrés */
#define TEMPERATURE_MAXI_BUSE    260
#define SURVEILLANCE_BUSE        /* coupe si la température ne suit pas */

#define SONDE_PLATEAU            3
#define TEMPERATURE_MINI_PLATEAU 5
#define TEMPERATURE_MAXI_PLATEAU 110
//#define SURVEILLANCE_PLATEAU

#define TENSION_ALIMENTATION     24    /* volts */
#define VENTILATEUR_SEUIL        50    /* degrés : au-dessus, le ventilateur tourne */
#endif
