/* plv: small core, short names. */
#ifndef CFG_H
#define CFG_H
#define HW        HW_B2      /* board, see below */
#define HW_A1     1          /* A1: ATmega644P */
#define HW_B2     2          /* B2: LPC1769 */
#define UI        0          /* uart index */
#define UB        57600      /* uart bps */
#define XSPM      80.0       /* steps/mm */
#define YSPM      80.0
#define ZSPM      640.0
#define ESPM      93.0
#define XVMAX     150        /* mm/s */
#define YVMAX     150
#define ZVMAX     6
#define EVMAX     30
#define XAMAX     1200       /* mm/s2 */
#define YAMAX     1200
#define ZAMAX     60
#define EAMAX     2000
#define XREV      0          /* motor turns the other way */
#define YREV      0
#define ZREV      1
#define EREV      0
#define XMN       0          /* travel, mm */
#define XMX       205
#define YMN       0
#define YMX       205
#define ZMN       0
#define ZMX       180
#define XHD       -1         /* home direction */
#define YHD       -1
#define ZHD       1
#define XHV       30         /* home speed, mm/s */
#define YHV       30
#define ZHV       3
#define XLSMN     1          /* limit switch at min fitted */
#define XLSMX     0          /* limit switch at max fitted */
#define YLSMN     1
#define YLSMX     0
#define ZLSMN     0
#define ZLSMX     1
#define XLSMN_AL  1          /* 1: active low */
#define XLSMX_AL  1
#define YLSMN_AL  1
#define YLSMX_AL  1
#define ZLSMN_AL  1
#define ZLSMX_AL  1
#define LSPU      1          /* pull-ups for limit switches */
#define XIRUN     800        /* run current, mA */
#define YIRUN     800
#define ZIRUN     700
#define EIRUN     500
#define XIHLD     300        /* hold current, mA */
#define XUST      16         /* microsteps */
#define YUST      16
#define ZUST      16
#define EUST      16
#define HTH       3          /* hotend thermistor table */
#define HTMIN     4          /* hotend temp limits, degC */
#define HTMAX     250
#define BTH       3          /* bed thermistor table */
#define BTMIN     4          /* bed temp limits, degC */
#define BTMAX     100
#define VIN       12         /* supply volts */
#endif
