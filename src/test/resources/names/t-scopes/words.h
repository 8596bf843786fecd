// The words that the other files use.
#pragma once
#define ANSWER_NO        0
#define ANSWER_YES       1
#define TURN_PLAIN       0    // the motor turns as wired
#define TURN_FLIPPED     1    // the motor turns the other way
#define SIDE_LOWER       0
#define SIDE_UPPER       1
#define LEVEL_IS_LOW     0    // touched reads low
#define LEVEL_IS_HIGH    1    // touched reads high
