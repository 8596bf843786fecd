package dev.gantrywright.app;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The open document and how it came to be: an immutable value whose edits return a new history.
 *
 * <p>An edit has a label in the user's words and a merge key: two edits with the same key that
 * follow each other within {@link #MERGE_WINDOW} count as one, so that typing a number is one step
 * to undo. The saved point is a place in the history, not a flag: undoing back to it makes the
 * document clean again.
 *
 * @param <T> the document, itself immutable
 */
public final class History<T> {
  /** Typing that pauses for longer starts a new step. Common practice, no published source. */
  public static final Duration MERGE_WINDOW = Duration.ofMillis(1500);

  private static final int DEPTH = 500;

  private final List<Step<T>> past;
  private final Step<T> present;
  private final List<Step<T>> future;
  private final long revision;
  private final T saved;

  private History(
      List<Step<T>> past, Step<T> present, List<Step<T>> future, long revision, T saved) {
    this.past = past;
    this.present = present;
    this.future = future;
    this.revision = revision;
    this.saved = saved;
  }

  /** A history that starts, saved, at this document. */
  public static <T> History<T> of(T document) {
    return new History<>(
        List.of(), new Step<>(document, "", "", Instant.MIN), List.of(), 0, document);
  }

  /** The document as it stands. */
  public T present() {
    return present.document();
  }

  /** Counts every change, undo and redo included; a result computed for another one is stale. */
  public long revision() {
    return revision;
  }

  /**
   * The document replaced.
   *
   * @param label what the user did, such as "X steps/mm 160 → 80"
   * @param mergeKey edits with the same non-empty key merge; empty never merges
   * @param at when
   */
  public History<T> edit(String label, String mergeKey, T document, Instant at) {
    if (Objects.equals(document, present.document())) {
      return this;
    }
    Step<T> step = new Step<>(document, label, mergeKey, at);
    boolean merges = merges(mergeKey, at);
    return new History<>(merges ? past : plus(past, present), step, List.of(), revision + 1, saved);
  }

  private boolean merges(String mergeKey, Instant at) {
    return !mergeKey.isEmpty()
        && mergeKey.equals(present.mergeKey())
        && future.isEmpty()
        && present.document() != saved
        && !at.isAfter(present.at().plus(MERGE_WINDOW));
  }

  /** The document to which undo would lead after an edit with this key: what its label is about. */
  public T before(String mergeKey, Instant at) {
    return merges(mergeKey, at) && !past.isEmpty()
        ? past.get(past.size() - 1).document()
        : present.document();
  }

  /** One step back; the same history where there is none. */
  public History<T> undo() {
    if (past.isEmpty()) {
      return this;
    }
    int last = past.size() - 1;
    return new History<>(
        past.subList(0, last), past.get(last), plus(future, present), revision + 1, saved);
  }

  /** One step forward again; the same history where there is none. */
  public History<T> redo() {
    if (future.isEmpty()) {
      return this;
    }
    int last = future.size() - 1;
    return new History<>(
        plus(past, present), future.get(last), future.subList(0, last), revision + 1, saved);
  }

  /** What undo would take back. */
  public Optional<String> undoLabel() {
    return past.isEmpty() ? Optional.empty() : Optional.of(present.label());
  }

  /** When what undo would take back was done. */
  public Optional<Instant> undoMoment() {
    return past.isEmpty() ? Optional.empty() : Optional.of(present.at());
  }

  /** When what redo would do again was first done. */
  public Optional<Instant> redoMoment() {
    return future.isEmpty() ? Optional.empty() : Optional.of(future.get(future.size() - 1).at());
  }

  /** What redo would do again. */
  public Optional<String> redoLabel() {
    return future.isEmpty() ? Optional.empty() : Optional.of(future.get(future.size() - 1).label());
  }

  /** The present document has reached the disk. */
  public History<T> markSaved() {
    return new History<>(past, present, future, revision, present.document());
  }

  /** A document of this history has reached the disk; the present one may be further on. */
  public History<T> markSaved(T onDisk) {
    return new History<>(past, present, future, revision, onDisk);
  }

  /** Whether the present document is the one on the disk. */
  public boolean isSaved() {
    return present.document() == saved || Objects.equals(present.document(), saved);
  }

  /** Labels of the steps that undo would take back, newest first. */
  public List<String> pastLabels() {
    List<String> labels = new ArrayList<>();
    if (!past.isEmpty()) {
      labels.add(present.label());
      for (int i = past.size() - 1; i > 0; i--) {
        labels.add(past.get(i).label());
      }
    }
    return labels;
  }

  private static <T> List<Step<T>> plus(List<Step<T>> list, Step<T> step) {
    int from = Math.max(0, list.size() + 1 - DEPTH);
    List<Step<T>> longer = new ArrayList<>(list.subList(from, list.size()));
    longer.add(step);
    return List.copyOf(longer);
  }

  private record Step<T>(T document, String label, String mergeKey, Instant at) {}
}
