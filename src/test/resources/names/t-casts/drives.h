/* Curlew 5: what the drives are made of. Values are worked out by the compiler where they can be. */
#ifndef CURLEW_DRIVES_H
#define CURLEW_DRIVES_H

#define SECONDS_A_MINUTE      60
#define FULL_STEPS_A_TURN     (200)      // 1.8 degree motors throughout
#define MICROSTEPS_DEFAULT    (16)

// ---- How far a step goes ----
#define X_BELT_PITCH_MM       (2.0f)
#define X_PULLEY_TEETH        (20)
#define X_AXIS_STEPS_PER_MM   ((float)(200 * 16) / (2.0f * 20))
#define Y_AXIS_STEPS_PER_MM   X_AXIS_STEPS_PER_MM
#define Z_SCREW_LEAD_MM       (8.0)
#define Z_AXIS_STEPS_PER_MM   (200*16/8.0)
#define E_AXIS_STEPS_PER_MM   (double)96.5
#define A_AXIS_STEPS_PER_MM   (8.8889f)  // rotary table: degrees stand for millimetres

// ---- How fast ----
#define X_TOP_FEED_MM_PER_MIN (200 * SECONDS_A_MINUTE)
#define Y_TOP_FEED_MM_PER_MIN (180 * SECONDS_A_MINUTE)
#define Z_TOP_FEED_MM_PER_MIN (6 * SECONDS_A_MINUTE)
#define E_TOP_FEED_MM_PER_MIN (45 * SECONDS_A_MINUTE)
#define A_TOP_FEED_MM_PER_MIN (30 * SECONDS_A_MINUTE)
#define X_RAMP_MM_PER_S2      1500.0f
#define Y_RAMP_MM_PER_S2      1500.0f
#define Z_RAMP_MM_PER_S2      80.0f
#define E_RAMP_MM_PER_S2      4000.0f
#define A_RAMP_MM_PER_S2      200.0f

// ---- Which way ----
#define X_MOTOR_BACKWARDS     (0)
#define Y_MOTOR_BACKWARDS     (1)
#define Z_MOTOR_BACKWARDS     (0)
#define E_MOTOR_BACKWARDS     (1)
#define A_MOTOR_BACKWARDS     (0)

// ---- Room to move ----
#define X_LOWEST_MM           (0.0f)
#define X_HIGHEST_MM          (235.0f)
#define Y_LOWEST_MM           (-4.0f)
#define Y_HIGHEST_MM          (230.0f)
#define Z_LOWEST_MM           (0.0f)
#define Z_HIGHEST_MM          (250.0f)

// ---- Coil currents ----
#define X_COIL_CURRENT_MA     ((uint16_t)900)
#define Y_COIL_CURRENT_MA     ((uint16_t)900)
#define Z_COIL_CURRENT_MA     ((uint16_t)750)
#define E_COIL_CURRENT_MA     ((uint16_t)650)
#define A_COIL_CURRENT_MA     ((uint16_t)500)
#define COIL_HOLD_PERCENT     (50u)
#endif
