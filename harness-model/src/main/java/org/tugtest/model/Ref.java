package org.tugtest.model;

import org.jspecify.annotations.Nullable;

/**
 * A reference as the files write it: {@code R1:3} (cavity of a connector), {@code BAT:+} (pin of a
 * device), {@code S1} (a splice, or a whole connector or device), {@code ECU.A} (a port) or {@code
 * ECU.fan-drive} (an element). It need not resolve.
 *
 * @param owner the id before the first {@code :} or {@code .}
 * @param pin what follows {@code :}; null when there is none
 * @param member what follows {@code .}; null when there is none
 */
public record Ref(String owner, @Nullable String pin, @Nullable String member)
    implements Comparable<Ref> {

  /** Splits a text; every text has a reading. Pins may hold {@code .}, ids may not. */
  public static Ref parse(String text) {
    int colon = text.indexOf(':');
    if (colon >= 0) {
      return new Ref(text.substring(0, colon), text.substring(colon + 1), null);
    }
    int dot = text.indexOf('.');
    if (dot >= 0) {
      return new Ref(text.substring(0, dot), null, text.substring(dot + 1));
    }
    return new Ref(text, null, null);
  }

  /** A cavity or pin. */
  public static Ref pin(String owner, String pin) {
    return new Ref(owner, pin, null);
  }

  /** As the files write it. */
  public String text() {
    if (pin != null) {
      return owner + ":" + pin;
    }
    return member != null ? owner + "." + member : owner;
  }

  @Override
  public int compareTo(Ref other) {
    return org.tugtest.text.NaturalOrder.NATURAL.compare(text(), other.text());
  }

  @Override
  public String toString() {
    return text();
  }
}
