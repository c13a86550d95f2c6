package org.tugtest.route;

import org.jspecify.annotations.Nullable;

/**
 * Why a wire has no route.
 *
 * @param text what is missing, with the ids; goes on after "W1 has no route:". For {@link
 *     Why#OTHER_LOOM} the id of the segment
 * @param from where its first end stands, as far as that is known
 * @param to where its other end stands, as far as that is known
 * @param leg for {@link Why#BROKEN}: the two nodes between which there is no way; else null
 */
public record NoRoute(
    Why why, String text, @Nullable Stand from, @Nullable Stand to, @Nullable Leg leg) {

  /** Two nodes without a way between them. */
  public record Leg(String from, String to) {}

  /** What is missing. */
  public enum Why {
    /** There are no segments at all. */
    NO_LAYOUT("the harness has no layout"),
    /** An end names nothing, or nothing that is known. */
    END_OPEN("an end of it is open or not known"),
    /** It is not known where an end stands. */
    NO_STAND("nothing says where an end of it stands"),
    /** The way depends on a segment that gives no length. */
    NO_LENGTH("a segment on its way gives no length"),
    /** An end lies along a segment that belongs to another loom. */
    OTHER_LOOM("an end of it lies on a segment of another loom"),
    /** There is no way. */
    BROKEN("no way along the layout joins its ends");

    private final String reason;

    Why(String reason) {
      this.reason = reason;
    }

    /** In words that are the same for all wires, as coverage lists them. */
    public String reason() {
      return reason;
    }
  }
}
