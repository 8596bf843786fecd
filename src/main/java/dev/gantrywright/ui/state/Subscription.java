package dev.gantrywright.ui.state;

/** An observation; closing it ends it. */
@FunctionalInterface
public interface Subscription extends AutoCloseable {
  @Override
  void close();
}
