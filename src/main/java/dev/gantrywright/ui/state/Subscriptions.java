package dev.gantrywright.ui.state;

import java.util.ArrayList;
import java.util.List;

/** The observations of one view; they close with it. */
public final class Subscriptions implements Subscription {
  private final List<Subscription> open = new ArrayList<>();

  public void add(Subscription subscription) {
    open.add(subscription);
  }

  @Override
  public void close() {
    open.forEach(Subscription::close);
    open.clear();
  }
}
