package dev.gantrywright.ui.quantity;

/**
 * From a typed unit to the unit that a field holds.
 *
 * @param factor multiply by it
 * @param per then divide by it
 * @param offset then add it
 * @param over where not 0: divide it by the number instead, as a step angle becomes steps a turn
 */
record Conversion(double factor, double per, double offset, double over) {
  static final Conversion SAME = new Conversion(1, 1, 0, 0);

  double apply(double typed) {
    return over != 0 ? over / typed : typed * factor / per + offset;
  }
}
