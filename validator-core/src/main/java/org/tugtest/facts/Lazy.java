package org.tugtest.facts;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value that is computed when it is first asked for, once, for all threads. */
final class Lazy<T> {
  private @Nullable Supplier<T> supplier;
  private volatile @Nullable T value;

  Lazy(Supplier<T> supplier) {
    this.supplier = supplier;
  }

  T get() {
    T known = value;
    return known != null ? known : compute();
  }

  private synchronized T compute() {
    T known = value;
    if (known != null) {
      return known;
    }
    Supplier<T> how = supplier;
    if (how == null) {
      throw new IllegalStateException("computed without a value");
    }
    T computed = how.get();
    value = computed;
    supplier = null;
    return computed;
  }
}
