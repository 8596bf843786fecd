/* Avefria - ajustes de la maquina */
#ifndef AJUSTES_H
#define AJUSTES_H
#define PLACA_CHORLITO   5   /* Chorlito, STM32F405RG */
#define PLACA_ANDARRIOS  6   /* Andarrios, ATmega2560 */
#define PLACA_ELEGIDA    PLACA_CHORLITO
#define NOMBRE_MAQUINA   "Garza"

/* Pasos por milimetro */
#define PASOS_POR_MM_X   80
#define PASOS_POR_MM_Y   80
#define PASOS_POR_MM_Z   400
#define PASOS_POR_MM_E   93
/* Velocidad maxima, mm/s */
#define VELOCIDAD_MAX_X  200
#define VELOCIDAD_MAX_Y  200
#define VELOCIDAD_MAX_Z  10
#define VELOCIDAD_MAX_E  45
/* Aceleracion, mm/s2 */
#define ACELERACION_X    1800
#define ACELERACION_Y    1800
#define ACELERACION_Z    70
#define ACELERACION_E    2500
/* Sentido del motor: 1 invierte */
#define INVERTIR_MOTOR_X 0
#define INVERTIR_MOTOR_Y 1
#define INVERTIR_MOTOR_Z 0
#define INVERTIR_MOTOR_E 1
/* Recorrido, mm */
#define RECORRIDO_MIN_X  0
#define RECORRIDO_MAX_X  210
#define RECORRIDO_MIN_Y  0
#define RECORRIDO_MAX_Y  200
#define RECORRIDO_MIN_Z  0
#define RECORRIDO_MAX_Z  195
/* Origen: 0 hacia el minimo, 1 hacia el maximo */
#define ORIGEN_HACIA_X   0
#define ORIGEN_HACIA_Y   0
#define ORIGEN_HACIA_Z   1
#define VELOCIDAD_ORIGEN_X 35
#define VELOCIDAD_ORIGEN_Y 35
#define VELOCIDAD_ORIGEN_Z 4
/* Finales de carrera: 1 = nivel bajo al pulsar */
#define FINAL_MIN_X_NIVEL_BAJO 1
#define FINAL_MAX_X_NIVEL_BAJO 1
#define FINAL_MIN_Y_NIVEL_BAJO 1
#define FINAL_MAX_Y_NIVEL_BAJO 1
#define FINAL_MIN_Z_NIVEL_BAJO 1
#define FINAL_MAX_Z_NIVEL_BAJO 0
#define FINAL_MIN_X_INSTALADO  1
#define FINAL_MAX_X_INSTALADO  0
#define FINAL_MIN_Y_INSTALADO  1
#define FINAL_MAX_Y_INSTALADO  0
#define FINAL_MIN_Z_INSTALADO  0
#define FINAL_MAX_Z_INSTALADO  1
/* Corriente en mA */
#define CORRIENTE_X      750
#define CORRIENTE_Y      750
#define CORRIENTE_Z      650
#define CORRIENTE_E      480
/* Calor */
#define SONDA_BOQUILLA   2
#define SONDA_CAMA       2
#define TEMP_MIN_BOQUILLA 5
#define TEMP_MAX_BOQUILLA 265
#define TEMP_MIN_CAMA    5
#define TEMP_MAX_CAMA    110
#define PROTECCION_BOQUILLA 1
#define PROTECCION_CAMA  1
#define FUENTE_VOLTIOS   24
#endif
