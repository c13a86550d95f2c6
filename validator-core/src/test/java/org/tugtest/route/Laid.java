package org.tugtest.route;

import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.WireLength;
import org.tugtest.rule.Judged;

/** Routes of one harness; for tests. */
record Laid(Facts facts) {
  /** A sketch of these sections, each {@code "name": value}. */
  static Laid out(String... sections) {
    return new Laid(
        Judged.facts(
            Map.of(
                Judged.ROOT,
                "{\"format\": 1, \"sketch\": true, " + String.join(", ", sections) + "}")));
  }

  Route route(String wire) {
    return facts
        .routes()
        .of(wire)
        .orElseThrow(() -> new AssertionError(wire + " has no route: " + why(wire)));
  }

  String why(String wire) {
    return facts.routes().missing(wire).map(NoRoute::text).orElse("");
  }

  NoRoute.Why reason(String wire) {
    return facts.routes().missing(wire).map(NoRoute::why).orElseThrow();
  }

  WireLength length(String wire) {
    Wire found = facts.harness().wires().get(wire);
    return facts.lengths().of(found).orElseThrow();
  }

  /** Its pieces as {@code s1 0-300, s2 200-0}. */
  String pieces(String wire) {
    StringBuilder text = new StringBuilder();
    for (Piece piece : route(wire).pieces()) {
      text.append(text.isEmpty() ? "" : ", ")
          .append(piece.segment())
          .append(' ')
          .append(number(piece.fromMm()))
          .append('-')
          .append(number(piece.toMm()));
    }
    return text.toString();
  }

  private static String number(double mm) {
    return org.tugtest.text.Quoted.number(mm);
  }
}
