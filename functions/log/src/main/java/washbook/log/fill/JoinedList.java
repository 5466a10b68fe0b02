package washbook.log.fill;

import java.util.AbstractList;
import java.util.List;
import java.util.Objects;

/** Several lists seen as one, without a copy. */
final class JoinedList<E> extends AbstractList<E> {
  private final List<List<E>> parts;
  private final int size;

  JoinedList(List<List<E>> parts) {
    this.parts = List.copyOf(parts);
    this.size = parts.stream().mapToInt(List::size).sum();
  }

  @Override
  public E get(int index) {
    int rest = Objects.checkIndex(index, size);
    for (List<E> part : parts) {
      if (rest < part.size()) {
        return part.get(rest);
      }
      rest -= part.size();
    }
    throw new IndexOutOfBoundsException(index);
  }

  @Override
  public int size() {
    return size;
  }
}
