package dev.gantrywright.rules;

/** One rule; its class carries {@link Rule}. Pure: same context, same findings. */
@FunctionalInterface
public interface Check {
  /** Reports every place where the fault shows. Facts that are missing are no fault. */
  void check(Context context, Sink sink);
}
