package org.tugtest.bench.rework;

import org.tugtest.network.Point;
import org.tugtest.text.NaturalOrder;

/**
 * Where a wire end can sit.
 *
 * @param owner id of the connector, device or splice, as it will be
 * @param name cavity or pin; empty for a splice
 * @param stay whether what it belongs to stays on the bench
 */
public record Seat(Point.Kind kind, String owner, String name, Stay stay)
    implements Comparable<Seat> {

  /** What becomes of the housing or splice that a seat belongs to. */
  public enum Stay {
    /** It is wanted; it may be new. */
    WANTED,
    /** It is taken away. */
    GONE,
    /** It is taken away, and another of the same id comes. */
    REPLACED
  }

  /** A seat of the loom that is wanted. */
  static Seat wanted(Point.Kind kind, String owner, String name) {
    return new Seat(kind, owner, name, Stay.WANTED);
  }

  /** Whether it belongs to a housing or splice that is taken away. */
  public boolean old() {
    return stay != Stay.WANTED;
  }

  /** As people say it: {@code X1:3}, {@code X1:3 of the old housing}. */
  public String text() {
    String place = kind == Point.Kind.SPLICE ? owner : owner + ":" + name;
    if (stay != Stay.REPLACED) {
      return place;
    }
    return place + (kind == Point.Kind.SPLICE ? " (old)" : " of the old housing");
  }

  @Override
  public int compareTo(Seat other) {
    int byOwner = NaturalOrder.NATURAL.compare(owner, other.owner);
    int byName = byOwner != 0 ? byOwner : NaturalOrder.NATURAL.compare(name, other.name);
    int byKind = byName != 0 ? byName : kind.compareTo(other.kind);
    return byKind != 0 ? byKind : Boolean.compare(other.old(), old());
  }

  @Override
  public int hashCode() {
    return (31 * owner.hashCode() + name.hashCode()) * 2 + (old() ? 1 : 0);
  }

  @Override
  public boolean equals(@org.jspecify.annotations.Nullable Object other) {
    return other instanceof Seat that
        && compareTo(that) == 0
        && owner.equals(that.owner)
        && name.equals(that.name);
  }

  @Override
  public String toString() {
    return text();
  }
}
