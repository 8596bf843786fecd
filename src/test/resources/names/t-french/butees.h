/* Pluvier - fins de course */
#ifndef PLUVIER_BUTEES_H
#define PLUVIER_BUTEES_H

/* Butées présentes */
#define BUTEE_MINI_X
#define BUTEE_MINI_Y
//#define BUTEE_MINI_Z
//#define BUTEE_MAXI_X
//#define BUTEE_MAXI_Y
#define BUTEE_MAXI_Z

/* Contact normalement fermé : true ; normalement ouvert : false */
#define BUTEE_MINI_X_NF          true
#define BUTEE_MINI_Y_NF          true
#define BUTEE_MINI_Z_NF          false
#define BUTEE_MAXI_X_NF          false
#define BUTEE_MAXI_Y_NF          false
#define BUTEE_MAXI_Z_NF          true

/* Résistance de tirage interne */
#define BUTEE_MINI_X_TIRAGE      1
#define BUTEE_MINI_Y_TIRAGE      1
#define BUTEE_MINI_Z_TIRAGE      1
#define BUTEE_MAXI_X_TIRAGE      1
#define BUTEE_MAXI_Y_TIRAGE      1
#define BUTEE_MAXI_Z_TIRAGE      1
#endif
