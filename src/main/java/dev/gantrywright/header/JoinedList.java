package dev.gantrywright.header;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Several lists as one, without copying them. */
final class JoinedList<T> extends AbstractList<T> {
  private final List<List<T>> lists;

  /** How many elements there are up to the end of each list. */
  private final int[] ends;

  JoinedList(List<List<T>> lists) {
    this.lists = List.copyOf(lists);
    this.ends = this.lists.stream().mapToInt(List::size).toArray();
    Arrays.parallelPrefix(ends, Integer::sum);
  }

  @Override
  public T get(int index) {
    Objects.checkIndex(index, size());
    int found = Arrays.binarySearch(ends, index);
    int list = found < 0 ? -found - 1 : found + 1;
    while (ends[list] <= index) {
      list++; // an empty list ends where the one before it does
    }
    return lists.get(list).get(index - (list == 0 ? 0 : ends[list - 1]));
  }

  @Override
  public int size() {
    return ends.length == 0 ? 0 : ends[ends.length - 1];
  }

  @Override
  public Iterator<T> iterator() {
    return stream().iterator();
  }

  @Override
  public Stream<T> stream() {
    return lists.stream().flatMap(List::stream);
  }
}
