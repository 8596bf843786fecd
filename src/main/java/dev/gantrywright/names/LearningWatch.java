package dev.gantrywright.names;

/** Follows a run of learning, and may end it. */
public interface LearningWatch {
  /** Follows nothing. */
  LearningWatch NONE =
      new LearningWatch() {
        @Override
        public void reached(double share) {}

        @Override
        public boolean stopped() {
          return false;
        }
      };

  /**
   * Called now and then while learning goes on.
   *
   * @param share of the work that is done, 0 to 1
   */
  void reached(double share);

  /** Whether the user wants it to end; learning then throws {@link LearningStopped}. */
  boolean stopped();

  /** Says how far it is, and ends the run where that is wanted. */
  default void step(double share) {
    if (stopped()) {
      throw new LearningStopped();
    }
    reached(share);
  }

  /** The user ended a run of learning; nothing of it is kept. */
  final class LearningStopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    LearningStopped() {
      super("learning was stopped", null, false, false);
    }
  }
}
