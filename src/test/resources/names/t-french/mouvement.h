/* Pluvier - mouvement */
#ifndef PLUVIER_MOUVEMENT_H
#define PLUVIER_MOUVEMENT_H

/* Genre de cinématique : 0 cartésien, 1 corexy, 2 delta */
#define CINEMATIQUE              0

/* Pas moteur pour un millimètre */
#define PAS_PAR_MM_X             80
#define PAS_PAR_MM_Y             80
#define PAS_PAR_MM_Z             1600
#define PAS_PAR_MM_EXTRUDEUR     98.4

/* Micropas du pilote */
#define MICROPAS_X               16
#define MICROPAS_Y               16
#define MICROPAS_Z               16
#define MICROPAS_EXTRUDEUR       16

/* Vitesse maximale, mm/s */
#define VITESSE_MAX_X            180
#define VITESSE_MAX_Y            180
#define VITESSE_MAX_Z            8
#define VITESSE_MAX_EXTRUDEUR    45
#define VITESSE_MANUELLE         50

/* Accélération, mm/s2 */
#define ACCELERATION_X           1200
#define ACCELERATION_Y           1200
#define ACCELERATION_Z           80
#define ACCELERATION_EXTRUDEUR   2500
#define ACCELERATION_IMPRESSION  900

/* Courant des bobines, en mA efficaces */
#define COURANT_X                850
#define COURANT_Y                850
#define COURANT_Z                700
#define COURANT_EXTRUDEUR        500
#define COURANT_MAINTIEN         60    /* pour cent au repos */

/* Sens du moteur : vrai pour inverser */
#define SENS_INVERSE_X           true
#define SENS_INVERSE_Y           false
#define SENS_INVERSE_Z           false
#define SENS_INVERSE_EXTRUDEUR   true

/* Course, mm */
#define COURSE_MINI_X            0
#define COURSE_MAXI_X            220
#define COURSE_MINI_Y            0
#define COURSE_MAXI_Y            210
#define COURSE_MINI_Z            0
#define COURSE_MAXI_Z            200

/* Prise d'origine : -1 vers le minimum, 1 vers le maximum */
#define ORIGINE_VERS_X           -1
#define ORIGINE_VERS_Y           -1
#define ORIGINE_VERS_Z           1
#define ORIGINE_VITESSE_X        35   /* mm/s */
#define ORIGINE_VITESSE_Y        35
#define ORIGINE_VITESSE_Z        5
#endif
