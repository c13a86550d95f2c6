package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Harness;
import org.tugtest.network.Mate;
import org.tugtest.network.Mating;

/**
 * A connector and what it is plugged into, each pair once.
 *
 * @param connector the half that says so; when both say it, the first of them
 * @param mate the other half
 */
record MatedPair(String connector, Mate mate) {
  /** All pairs, in natural order of the connectors that say so. */
  static List<MatedPair> all(Harness harness, Mating mating) {
    List<MatedPair> pairs = new ArrayList<>();
    Set<String> met = new HashSet<>();
    for (String id : harness.connectors().keySet()) {
      Mate mate = mating.mateOf(id).orElse(null);
      if (mate instanceof Mate.OfConnector other) {
        if (met.add(id) && met.add(other.connector())) {
          boolean says = says(harness, mating, id, other);
          pairs.add(
              says
                  ? new MatedPair(id, mate)
                  : new MatedPair(other.connector(), new Mate.OfConnector(id)));
        }
      } else if (mate != null) {
        pairs.add(new MatedPair(id, mate));
      }
    }
    return List.copyOf(pairs);
  }

  private static boolean says(Harness harness, Mating mating, String id, Mate other) {
    Connector connector = harness.connectors().get(id);
    return connector != null
        && connector.mates() != null
        && mating.target(connector.mates()).equals(Optional.of(other));
  }

  /** The other half when it is on a loom too; empty for a port of a device. */
  Optional<String> otherConnector() {
    return mate instanceof Mate.OfConnector other
        ? Optional.of(other.connector())
        : Optional.empty();
  }

  /** The half that says so. */
  Subject first() {
    return Subject.connector(connector);
  }

  /** The other half. */
  Subject second() {
    if (mate instanceof Mate.OfPort port) {
      return Subject.element(port.device(), port.port());
    }
    return Subject.connector(mate.text());
  }

  /** Both halves as people say them: {@code X1 and X2}, {@code X1 and ECU.A}. */
  String text() {
    return connector + " and " + mate.text();
  }

  /** Whether an adaptor's {@code pinMap} joins the contacts of this pair. */
  boolean mapped(Harness harness) {
    return mapped(harness, connector)
        || otherConnector().map(other -> mapped(harness, other)).orElse(false);
  }

  private static boolean mapped(Harness harness, String id) {
    Connector found = harness.connectors().get(id);
    return found != null && !found.pinMap().isEmpty();
  }
}
