/* Pluvier - choix de la carte */
#ifndef PLUVIER_CARTE_H
#define PLUVIER_CARTE_H

#define CARTE_AVOCETTE     7   /* Avocette (ATmega2561) */
#define CARTE_BARGE        8   /* Barge (STM32G0B1RE) */

#define MODELE_DE_CARTE    CARTE_BARGE

/* Liaison avec le poste */
#define LIAISON_PORT       2        /* numéro du port série */
#define LIAISON_DEBIT      250000   /* bits par seconde */
#define LIAISON_TAMPON     128      /* octets */

#define NOM_DE_MACHINE     "Guillemot"
#endif
