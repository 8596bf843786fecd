// Lapwing. Names are built as SCOPE__PART__WHAT.
#pragma once
#include "words.h"

#define MOTION__X__STEPS_PER_UNIT     80
#define MOTION__Y__STEPS_PER_UNIT     80
#define MOTION__Z__STEPS_PER_UNIT     400
#define MOTION__E__STEPS_PER_UNIT     415
#define MOTION__X__FEEDRATE_LIMIT     220      // mm/s
#define MOTION__Y__FEEDRATE_LIMIT     220      // mm/s
#define MOTION__Z__FEEDRATE_LIMIT     9        // mm/s
#define MOTION__E__FEEDRATE_LIMIT     60       // mm/s
#define MOTION__X__ACCELERATION       2000
#define MOTION__Y__ACCELERATION       2000
#define MOTION__Z__ACCELERATION       100
#define MOTION__E__ACCELERATION       5000
#define MOTION__X__DIRECTION          TURN_PLAIN
#define MOTION__Y__DIRECTION          TURN_FLIPPED
#define MOTION__Z__DIRECTION          TURN_PLAIN
#define MOTION__E__DIRECTION          TURN_FLIPPED
#define MOTION__X__HOME_TO            SIDE_LOWER
#define MOTION__Y__HOME_TO            SIDE_UPPER
#define MOTION__Z__HOME_TO            SIDE_LOWER
#define MOTION__X__HOME_FEEDRATE      40
#define MOTION__Y__HOME_FEEDRATE      40
#define MOTION__Z__HOME_FEEDRATE      5
#define MOTION__JERK                  8
#define MOTION__QUEUE_LENGTH          32
