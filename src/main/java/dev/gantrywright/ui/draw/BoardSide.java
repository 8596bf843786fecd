package dev.gantrywright.ui.draw;

/** Where the things of a row stand on either side of a {@link BoardPlan}, pixels from its left. */
enum BoardSide {
  LEFT,
  RIGHT;

  static final double OUTLINE = 76.5;
  static final double OUTLINE_WIDTH = 424;
  static final double BLOCK = 182.5;
  static final double BLOCK_WIDTH = 226;

  /**
   * Where the pins of one connector begin, pixels from the first: the third has the widest head,
   * and before each stands the mark of a pin that has two jobs.
   */
  private static final double[] PINS = {0, 42, 82, 136};

  private static final double SOCKET = 90;
  private static final double SMALL = 76;

  /** Away from the board. */
  double out() {
    return this == LEFT ? -1 : 1;
  }

  double box() {
    return this == LEFT ? 84.5 : BLOCK + BLOCK_WIDTH + 8;
  }

  double boxWidth() {
    return this == LEFT ? SOCKET : SMALL;
  }

  double boxInner() {
    return this == LEFT ? box() + SOCKET : box();
  }

  double boxOuter() {
    return this == LEFT ? box() : box() + SMALL;
  }

  /** The microcontroller's edge. */
  double block() {
    return this == LEFT ? BLOCK : BLOCK + BLOCK_WIDTH;
  }

  /** The board's edge. */
  double edge() {
    return this == LEFT ? OUTLINE : OUTLINE + OUTLINE_WIDTH;
  }

  /** Where the wire outside ends. */
  double wire() {
    return edge() + 10 * out();
  }

  double label() {
    return wire() + 4 * out();
  }

  double labelAnchor() {
    return this == LEFT ? 1 : 0;
  }

  double head() {
    return this == LEFT ? box() : box() + SMALL;
  }

  double headAnchor() {
    return this == LEFT ? 0 : 1;
  }

  /** Where the text of a pin begins; the pins of the right side stand at the block's edge. */
  double pin(int at) {
    return this == LEFT ? BLOCK + 10 + PINS[at] : BLOCK + BLOCK_WIDTH - 36;
  }

  double target() {
    return this == LEFT ? 0 : box();
  }

  double targetWidth() {
    return this == LEFT ? boxInner() : BoardPlan.WIDTH - box();
  }
}
