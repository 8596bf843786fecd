/* LINNET motion core -- parameter block
 * order of lists: X Y Z A-free  (E where four are given)
 */
#define LNT_REV        "7"
#define LNT_BRD        BRD_STINT            /* see brd.h */
#define LNT_KIN        KIN_CART             /* KIN_CART | KIN_CXY | KIN_DLT */
#define KIN_CART       0
#define KIN_CXY        1
#define KIN_DLT        2

/* -- comms -- */
#define COM_CH         0                    /* uart channel */
#define COM_BPS        115200
#define COM_RXBUF      128
#define COM_WLEN       8                    /* word length, bits */
#define COM_PAR        PAR_NONE             /* parity: PAR_NONE PAR_EVEN PAR_ODD */
#define PAR_NONE       0
#define PAR_EVEN       1
#define PAR_ODD        2

/* -- drives -- */
#define CPMM           {160, 160, 3200, 187}      /* counts/mm */
#define VMAX           {9000, 9000, 420, 2400}    /* mm/min */
#define AMAX           {1500, 1500, 90, 3500}     /* mm/s^2 */
#define VJERK          {600, 600, 24, 300}
#define IRUN           {1100, 1100, 900, 650}     /* mA */
#define IHOLD          {55, 55, 70, 40}           /* % */
#define USTEP          {32, 32, 32, 32}
#define FULLST         {200, 200, 200, 400}       /* per motor turn */
#define ROT_NEG        {0, 1, 0, 0}               /* 1 = shaft turns the other way */

/* -- envelope, mm: {lower, upper} -- */
#define ENV_X          {0, 310}
#define ENV_Y          {-5, 300}
#define ENV_Z          {0, 330}

/* -- datum -- */
#define DTM_SGN        {-1, -1, 1}                /* which way the datum search runs */
#define DTM_VEL        {1800, 1800, 240}          /* mm/min */
#define DTM_CREEP      {200, 200, 60}             /* mm/min, second touch */

/* -- limit switches: {lower, upper} -- */
#define LSW_FIT_X      {1, 0}                     /* 1 = mounted */
#define LSW_FIT_Y      {1, 0}
#define LSW_FIT_Z      {0, 1}
#define LSW_NC_X       {1, 1}                     /* 1 = breaks when hit, 0 = makes when hit */
#define LSW_NC_Y       {1, 1}
#define LSW_NC_Z       {1, 1}
#define LSW_PU         1                          /* pull-ups on all inputs */

/* -- heat -- */
#define T0_SENS        2                          /* ntc 100k */
#define T0_TMIN        2                          /* degC */
#define T0_TMAX        290
#define T0_WATCH       1                          /* runaway watch */
#define TB_SENS        2
#define TB_TMIN        2
#define TB_TMAX        120
#define TB_WATCH       1
#define T0_KP          22.1
#define T0_KI          1.8
