package org.tugtest.network;

import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.text.NaturalOrder;

/**
 * An electrical point of the harness: a cavity of a connector, a pin of a device, or a splice. The
 * order is that of the owners, then of the names.
 *
 * @param owner id of the connector, device or splice
 * @param name cavity or pin; empty for a splice
 * @param number where it stands in the network that it was made for, by which it is found there at
 *     once; -1 for a point by itself, which is equal to it all the same
 */
public record Point(Kind kind, String owner, String name, int number) implements Comparable<Point> {
  /** Odd numbers of no pattern: 2 to the 32nd over the golden ratio, and that of MurmurHash3. */
  private static final int SPREAD_OWNERS = 0x9E3779B1;

  private static final int SPREAD_NAMES = 0x85EBCA6B;

  /** The sort of point. */
  public enum Kind {
    CAVITY,
    PIN,
    SPLICE
  }

  /** A point by itself. */
  public Point(Kind kind, String owner, String name) {
    this(kind, owner, name, -1);
  }

  /** A cavity of a connector. */
  public static Point cavity(String connector, String cavity) {
    return new Point(Kind.CAVITY, connector, cavity);
  }

  /** A pin of a device. */
  public static Point pin(String device, String pin) {
    return new Point(Kind.PIN, device, pin);
  }

  /** A splice. */
  public static Point splice(String id) {
    return new Point(Kind.SPLICE, id, "");
  }

  /** As the files write it: {@code R1:3}, {@code BAT:+}, {@code S1}. */
  public String text() {
    return kind == Kind.SPLICE ? owner : owner + ":" + name;
  }

  /** The subject of the same thing. */
  public Subject subject() {
    if (kind == Kind.CAVITY) {
      return Subject.cavity(owner, name);
    }
    return kind == Kind.PIN ? Subject.pin(owner, name) : Subject.splice(owner);
  }

  Point at(int place) {
    return new Point(kind, owner, name, place);
  }

  @Override
  public int compareTo(Point other) {
    int byOwner = NaturalOrder.NATURAL.compare(owner, other.owner);
    int byName = byOwner != 0 ? byOwner : NaturalOrder.NATURAL.compare(name, other.name);
    return byName != 0 ? byName : kind.compareTo(other.kind);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Point that
            && kind == that.kind
            && owner.equals(that.owner)
            && name.equals(that.name));
  }

  /**
   * The same in every run, unlike that of an enum constant. Owner and name are spread apart: as the
   * hash of a text is linear, {@code X1:21} and {@code X2:11} would else be one.
   */
  @Override
  public int hashCode() {
    int hash = owner.hashCode() * SPREAD_OWNERS + name.hashCode() * SPREAD_NAMES;
    return hash ^ hash >>> Short.SIZE;
  }

  @Override
  public String toString() {
    return text();
  }
}
