#define BRD_STINT      40   /* Stint, ATSAM3X8E */
#define BRD_WHIMBREL   41   /* Whimbrel, LPC1769 */
