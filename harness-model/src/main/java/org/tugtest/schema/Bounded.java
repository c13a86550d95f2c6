package org.tugtest.schema;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;

/** A list that refuses to grow beyond a bound, to end a search that finds too much. */
final class Bounded<T> extends AbstractList<T> {
  private final List<T> items = new ArrayList<>();
  private final int most;

  Bounded(int most) {
    this.most = most;
  }

  /** Thrown when the list is full. */
  static final class Full extends RuntimeException {
    private static final long serialVersionUID = 1;

    Full() {
      super("the list is full", null, false, false);
    }
  }

  @Override
  public void add(int index, T item) {
    if (items.size() == most) {
      throw new Full();
    }
    items.add(index, item);
  }

  @Override
  public T get(int index) {
    return items.get(index);
  }

  @Override
  public T set(int index, T item) {
    return items.set(index, item);
  }

  @Override
  public T remove(int index) {
    return items.remove(index);
  }

  @Override
  public int size() {
    return items.size();
  }
}
