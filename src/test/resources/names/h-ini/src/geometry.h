// Knot: geometry of the machine
#pragma once
#define BUILD_VOLUME          "235x225x260"   // mm, x by y by z
#define AXIS_X_TURNS_BACKWARD 1
#define AXIS_Y_TURNS_BACKWARD 0
#define AXIS_Z_TURNS_BACKWARD 0
#define AXIS_E_TURNS_BACKWARD 1
#define AXIS_X_HOMES_TO_TOP   0    // 1: upper end, 0: lower end
#define AXIS_Y_HOMES_TO_TOP   0
#define AXIS_Z_HOMES_TO_TOP   0
#define HOME_SPEED_XY         40   // mm/s
#define HOME_SPEED_Z          5    // mm/s
#define HOME_LIFT             3
