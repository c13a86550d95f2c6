package org.tugtest.built.explain;

import java.util.List;

/**
 * One thing that could be wrong with a loom.
 *
 * @param kind what sort of thing
 * @param what in a clause: {@code W1 and W2 are exchanged in X1 (cavities 3 and 4, side by side)}
 * @param things place strings of what to look at
 */
public record Suspect(Kind kind, String what, List<String> things) {
  public Suspect {
    things = List.copyOf(things);
  }

  /** What can be wrong, the likeliest first; the order is judgement from the bench. */
  public enum Kind {
    /** Two neighbouring cavities are exchanged. */
    NEIGHBOURS_EXCHANGED(10),
    /** A wire is broken, or a terminal of it is not home. */
    OPEN(14),
    /** Two contacts that should meet do not. */
    CONTACT_OPEN(15),
    /** A plug is not mated. */
    NOT_PLUGGED(16),
    /** A wire sits in a free cavity beside its own. */
    IN_NEIGHBOUR(18),
    /** Two cavities of one connector are exchanged. */
    EXCHANGED(20),
    /** A wire sits in another free cavity of its connector. */
    ELSEWHERE(26),
    /** Two neighbouring cavities touch. */
    NEIGHBOURS_TOUCH(28),
    /** Two nets touch somewhere. */
    TOUCH(50);

    private final int weight;

    Kind(int weight) {
      this.weight = weight;
    }

    int weight() {
      return weight;
    }
  }
}
