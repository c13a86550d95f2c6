package org.tugtest.network;

import org.tugtest.finding.Subject;
import org.tugtest.text.NaturalOrder;

/**
 * An electrical point of the harness: a cavity of a connector, a pin of a device, or a splice.
 *
 * @param owner id of the connector, device or splice
 * @param name cavity or pin; empty for a splice
 */
public record Point(Kind kind, String owner, String name) implements Comparable<Point> {

  /** The sort of point. */
  public enum Kind {
    CAVITY,
    PIN,
    SPLICE
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

  @Override
  public int compareTo(Point other) {
    int byText = NaturalOrder.NATURAL.compare(text(), other.text());
    return byText != 0 ? byText : kind.compareTo(other.kind);
  }

  @Override
  public String toString() {
    return text();
  }
}
