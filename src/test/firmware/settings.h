/* The one place where the firmware meets its configuration headers. */
#ifndef SETTINGS_H
#define SETTINGS_H

#ifdef FIRMWARE_FOLDER
#include "settings_folder.h"
#else
#include "settings_plain.h"
#endif

#endif
