package dev.gantrywright.ui.shell;

import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableListBase;

/** Rows that are replaced as a whole and read only where they are in view. */
final class RowList extends ObservableListBase<String> {
  private List<String> rows = List.of();

  void show(List<String> next) {
    List<String> before = rows;
    rows = next;
    if (!before.isEmpty() || !next.isEmpty()) {
      fireChange(new Replaced(this, before));
    }
  }

  @Override
  public String get(int row) {
    return rows.get(row);
  }

  @Override
  public int size() {
    return rows.size();
  }

  /** All rows in place of all: the toolkit's own way to say so reads every row that goes. */
  private static final class Replaced extends ListChangeListener.Change<String> {
    private final List<String> removed;
    private boolean told;

    Replaced(RowList of, List<String> removed) {
      super(of);
      this.removed = removed;
    }

    @Override
    public boolean next() {
      boolean first = !told;
      told = true;
      return first;
    }

    @Override
    public void reset() {
      told = false;
    }

    @Override
    public int getFrom() {
      return 0;
    }

    @Override
    public int getTo() {
      return getList().size();
    }

    @Override
    public List<String> getRemoved() {
      return removed;
    }

    @Override
    protected int[] getPermutation() {
      return new int[0];
    }
  }
}
