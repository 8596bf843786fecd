package dev.gantrywright.ui.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * A value that can be observed. Belongs to one thread: whoever computes elsewhere hands the result
 * over.
 */
public final class Cell<T> {
  private final List<Consumer<? super T>> observers = new ArrayList<>();
  private T value;

  public Cell(T value) {
    this.value = value;
  }

  public T get() {
    return value;
  }

  /** Tells the observers where the value differs from the one before. */
  public void set(T next) {
    if (Objects.equals(value, next)) {
      return;
    }
    value = next;
    for (Consumer<? super T> observer : List.copyOf(observers)) {
      if (observers.contains(observer)) {
        observer.accept(next);
      }
    }
  }

  public void update(UnaryOperator<T> change) {
    set(change.apply(value));
  }

  /** Calls back now and on every change, until the subscription is closed. */
  public Subscription observe(Consumer<? super T> observer) {
    Subscription subscription = listen(observer);
    observer.accept(value);
    return subscription;
  }

  /** Calls back on every change from now on, until the subscription is closed. */
  public Subscription listen(Consumer<? super T> observer) {
    // Wrapped, so that one observer can listen twice and each subscription closes its own.
    Consumer<T> own = observer::accept;
    observers.add(own);
    return () -> observers.remove(own);
  }

  /** How many observe; a closed view leaves none. */
  public int observed() {
    return observers.size();
  }
}
