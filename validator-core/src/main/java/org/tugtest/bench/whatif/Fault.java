package org.tugtest.bench.whatif;

import java.util.List;
import org.tugtest.finding.Subject;
import org.tugtest.network.Edge;

/**
 * One thing that may go wrong.
 *
 * @param subject what it is that goes wrong
 * @param text in a few words: {@code fuse FB.f1 blown}
 * @param edges what no longer conducts, or conducts that should not
 */
public record Fault(Kind kind, Subject subject, String text, List<Edge> edges) {
  public Fault {
    edges = List.copyOf(edges);
  }

  /** The sort of fault, in the order of the table. */
  public enum Kind {
    /** A fuse has blown or a trip has opened. */
    FUSE_BLOWN,
    /** Two halves of a connector, or a plug and a device, are apart. */
    CONNECTOR_OFF,
    /** An earth stud or face holds nothing any more. */
    EARTH_OPEN,
    /** A wire is broken or an end of it is off. */
    WIRE_OPEN,
    /** A diode conducts both ways. */
    DIODE_SHORTED,
    /** An isolator contact does not open. */
    ISOLATOR_WELDED;

    /** Whether the fault closes what should be open. */
    public boolean closes() {
      return this == DIODE_SHORTED || this == ISOLATOR_WELDED;
    }
  }
}
