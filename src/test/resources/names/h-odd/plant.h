/* OSPREY plant description.  Names carry a type letter in front: n number, b yes or no, e choice. */
#ifndef PLANT_H
#define PLANT_H

#define eMotherboard          MB_GANNET
#define MB_GANNET             3        /* Gannet rev A: RP2040 */
#define MB_RAZORBILL          4        /* Razorbill: ATSAMD51J20A */

#define nHostCom              1
#define nHostComRate          115200
#define nPanelCom             0        /* a second line, for the panel */

/* counts of the drive for a millimetre */
#define nCountsMm_X           106.667
#define nCountsMm_Y           106.667
#define nCountsMm_Z           1066.67
#define nCountsMm_E           280.0

#define nRapid_X              18000    /* mm per minute */
#define nRapid_Y              18000
#define nRapid_Z              900
#define nRapid_E              4200

#define nRampUp_X             2600     /* mm per second squared */
#define nRampUp_Y             2600
#define nRampUp_Z             110
#define nRampUp_E             7000

#define nCoilAmps_X           1.10
#define nCoilAmps_Y           1.10
#define nCoilAmps_Z           0.85
#define nCoilAmps_E           0.60

#define nSubsteps_X           16
#define nSubsteps_Y           16
#define nSubsteps_Z           16
#define nSubsteps_E           8

#define bSpinFlipped_X        1
#define bSpinFlipped_Y        1
#define bSpinFlipped_Z        0
#define bSpinFlipped_E        0

#define nWorkspaceFrom_X      -8
#define nWorkspaceTo_X        252
#define nWorkspaceFrom_Y      0
#define nWorkspaceTo_Y        248
#define nWorkspaceFrom_Z      0
#define nWorkspaceTo_Z        300

/* datum search: the side on which it looks, and how fast */
#define eDatumSide_X          SIDE_NEAR
#define eDatumSide_Y          SIDE_FAR
#define eDatumSide_Z          SIDE_NEAR
#define SIDE_NEAR             0
#define SIDE_FAR              1
#define nDatumPace_X          55       /* mm per second */
#define nDatumPace_Y          55
#define nDatumPace_Z          7

/* bumper switches at the near and far side of each axis */
#define bBumperNearMounted_X  1
#define bBumperFarMounted_X   0
#define bBumperNearMounted_Y  0
#define bBumperFarMounted_Y   1
#define bBumperNearMounted_Z  1
#define bBumperFarMounted_Z   0
#define bBumperNearNegated_X  0        /* yes where the pin falls when the bumper is hit */
#define bBumperFarNegated_X   0
#define bBumperNearNegated_Y  0
#define bBumperFarNegated_Y   0
#define bBumperNearNegated_Z  1
#define bBumperFarNegated_Z   0
#define bBumperLift           1        /* weak pull-ups of the chip on all bumper inputs */

#define eToolThermometer      9
#define nToolCelsiusLeast     2
#define nToolCelsiusMost      310
#define bToolSentinel         1        /* runaway sentinel */
#define eSlabThermometer      9
#define nSlabCelsiusLeast     2
#define nSlabCelsiusMost      130
#define bSlabSentinel         1
#define nRailVolts            36       /* supply */
#define nCornerJolt           10
#endif
