// Fringuello - impostazioni della macchina
#pragma once

// Scheda di controllo
#define schedaCodone        31   // Codone, STM32F446VE
#define schedaMoretta       32   // Moretta, ATmega2561
#define schedaScelta        schedaCodone
#define nomeMacchina        "Airone"

// Porta seriale verso il computer
#define portaSeriale        2
#define velocitaSeriale     250000   // bit per secondo

// Cinematica: 0 cartesiana, 1 corexy, 2 delta
#define tipoCinematica      1

// Passi per ogni mm
#define passiPerMmX         80
#define passiPerMmY         80
#define passiPerMmZ         800
#define passiPerMmE         97

// Velocita massima, mm/s
#define velocitaMassimaX    240
#define velocitaMassimaY    240
#define velocitaMassimaZ    9
#define velocitaMassimaE    48

// Accelerazione, mm/s^2
#define accelerazioneX      2400
#define accelerazioneY      2400
#define accelerazioneZ      85
#define accelerazioneE      3200

// Corrente del motore, mA
#define correnteMotoreX     820
#define correnteMotoreY     820
#define correnteMotoreZ     690
#define correnteMotoreE     510
#define correnteRiposo      300

// Verso di rotazione: true lo inverte
#define versoInvertitoX     false
#define versoInvertitoY     true
#define versoInvertitoZ     true
#define versoInvertitoE     false

// Corsa, mm
#define corsaMinimaX        0
#define corsaMassimaX       235
#define corsaMinimaY        0
#define corsaMassimaY       230
#define corsaMinimaZ        0
#define corsaMassimaZ       245

// Azzeramento
#define azzeramentoVersoX   -1   // -1 minimo, 1 massimo
#define azzeramentoVersoY   -1
#define azzeramentoVersoZ   -1
#define velocitaAzzeramentoX 40
#define velocitaAzzeramentoY 40
#define velocitaAzzeramentoZ 4

// Finecorsa: true se il contatto e normalmente chiuso (NC)
#define finecorsaMinimoXNc  true
#define finecorsaMassimoXNc false
#define finecorsaMinimoYNc  true
#define finecorsaMassimoYNc false
#define finecorsaMinimoZNc  true
#define finecorsaMassimoZNc false
#define finecorsaMinimoXPresente  true
#define finecorsaMassimoXPresente false
#define finecorsaMinimoYPresente  true
#define finecorsaMassimoYPresente false
#define finecorsaMinimoZPresente  true
#define finecorsaMassimoZPresente false

// Riscaldatori
#define sensoreUgello       6
#define temperaturaMinimaUgello   5
#define temperaturaMassimaUgello  275
#define protezioneUgello    true
#define sensorePiatto       6
#define temperaturaMinimaPiatto   5
#define temperaturaMassimaPiatto  115
#define protezionePiatto    true
#define tensioneAlimentatore 24
#define ventolaMinima       40
