package dev.gantrywright.ui;

import java.util.function.Supplier;

/** Something that takes time to make, made once when it is first asked for; any thread may ask. */
final class Later<T> implements Supplier<T> {
  private final Supplier<T> making;
  private volatile T made;

  Later(Supplier<T> making) {
    this.making = making;
  }

  @Override
  public T get() {
    T known = made;
    if (known == null) {
      synchronized (this) {
        if (made == null) {
          made = making.get();
        }
        known = made;
      }
    }
    return known;
  }
}
