package dev.gantrywright.header;

import java.util.AbstractList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;

/** Several lists as one, without copying them. */
final class JoinedList<T> extends AbstractList<T> {
  private final List<List<T>> lists;
  private final int size;

  JoinedList(List<List<T>> lists) {
    this.lists = List.copyOf(lists);
    this.size = lists.stream().mapToInt(List::size).sum();
  }

  @Override
  public T get(int index) {
    int left = index;
    for (List<T> list : lists) {
      if (left < list.size()) {
        return list.get(left);
      }
      left -= list.size();
    }
    throw new IndexOutOfBoundsException(index);
  }

  @Override
  public int size() {
    return size;
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
