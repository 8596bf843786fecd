package dev.gantrywright.ui;

import java.util.List;
import java.util.concurrent.AbstractExecutorService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;

/** Hands every task to another executor, wrapped. */
final class TimedExecutor extends AbstractExecutorService {
  private final ExecutorService inner;
  private final UnaryOperator<Runnable> wrap;

  TimedExecutor(ExecutorService inner, UnaryOperator<Runnable> wrap) {
    this.inner = inner;
    this.wrap = wrap;
  }

  @Override
  public void execute(Runnable task) {
    inner.execute(wrap.apply(task));
  }

  @Override
  public void shutdown() {
    inner.shutdown();
  }

  @Override
  public List<Runnable> shutdownNow() {
    return inner.shutdownNow();
  }

  @Override
  public boolean isShutdown() {
    return inner.isShutdown();
  }

  @Override
  public boolean isTerminated() {
    return inner.isTerminated();
  }

  @Override
  public boolean awaitTermination(long timeout, TimeUnit unit) throws InterruptedException {
    return inner.awaitTermination(timeout, unit);
  }
}
