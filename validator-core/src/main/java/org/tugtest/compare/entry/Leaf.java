package org.tugtest.compare.entry;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The least thing that can be altered: a whole entry that comes or goes, or one value inside an
 * entry that both sides have.
 *
 * @param path the names of fields and the keys of maps that lead to the value; empty: the entry
 * @param before null when there was none
 * @param after null when there is none
 */
public record Leaf(
    String section, String id, List<Object> path, @Nullable Object before, @Nullable Object after) {
  public Leaf {
    path = List.copyOf(path);
  }

  /** Whether a whole entry comes. */
  public boolean adds() {
    return path.isEmpty() && before == null;
  }

  /** Whether a whole entry goes. */
  public boolean removes() {
    return path.isEmpty() && after == null;
  }

  /** {@code wires/W1}. */
  public String entry() {
    return section + "/" + id;
  }

  /** Whether another leaf is of the same value. */
  public boolean sameSpot(Leaf other) {
    return section.equals(other.section) && id.equals(other.id) && Objects.equals(path, other.path);
  }
}
