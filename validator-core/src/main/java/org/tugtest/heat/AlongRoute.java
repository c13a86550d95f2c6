package org.tugtest.heat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.network.Wiring;
import org.tugtest.route.Bundle;
import org.tugtest.route.Bundles;
import org.tugtest.route.Piece;
import org.tugtest.route.Routes;
import org.tugtest.route.Stand;
import org.tugtest.route.Surroundings;
import org.tugtest.table.Cited;

/**
 * What is round wires, as their routes, the bundles along them and the zones tell. A wire without a
 * route has the air of its warmer end, and neighbours that are not known.
 */
public final class AlongRoute implements Around.Wires {
  private final Harness harness;
  private final Wiring wiring;
  private final Routes routes;
  private final Bundles bundles;

  /** The surroundings along these routes. */
  public AlongRoute(Harness harness, Wiring wiring, Routes routes, Bundles bundles) {
    this.harness = harness;
    this.wiring = wiring;
    this.routes = routes;
    this.bundles = bundles;
  }

  @Override
  public List<Around> of(Wire wire) {
    Map<Cited, Around> pieces = new LinkedHashMap<>();
    routes.of(wire.id()).ifPresent(route -> route.pieces().forEach(piece -> add(piece, pieces)));
    return pieces.isEmpty()
        ? List.of(new Around(atEnds(wire), Around.UNKNOWN, false))
        : List.copyOf(pieces.values());
  }

  private void add(Piece piece, Map<Cited, Around> pieces) {
    Cited ambient = bundles.surroundings().ofSegment(piece.segment()).ambientC();
    Layout.Segment segment = harness.layout().segments().get(piece.segment());
    boolean covered = segment != null && !segment.coverings().isEmpty();
    int most = 0;
    for (Bundle bundle : bundles.of(piece.segment())) {
      if (bundle.fromMm() < piece.highMm() && bundle.toMm() > piece.lowMm()) {
        most = Math.max(most, bundle.wires() - 1);
      }
    }
    pieces.merge(ambient, new Around(ambient, most, covered), AlongRoute::worse);
  }

  private static Around worse(Around one, Around other) {
    int most = Math.max(one.neighbours(), other.neighbours());
    return new Around(one.ambientC(), most, one.covered() || other.covered());
  }

  /** The air of the warmer end of a wire. */
  Cited atEnds(Wire wire) {
    Surroundings.Around warmer = null;
    for (Ref end : ends(wire)) {
      Stand stand = wiring.pointOf(end).flatMap(routes::standOf).orElse(null);
      if (stand != null) {
        Surroundings.Around here = at(stand);
        warmer = warmer == null ? here : Surroundings.worse(warmer, here);
      }
    }
    Surroundings.Around round = warmer == null ? bundles.surroundings().ofNode("") : warmer;
    return round.ambientC();
  }

  /** What is round a place. */
  Surroundings.Around at(Stand stand) {
    return stand instanceof Stand.OnSegment along
        ? bundles.surroundings().ofSegment(along.segment())
        : bundles.surroundings().ofNode(stand instanceof Stand.AtNode at ? at.node() : "");
  }

  private static List<Ref> ends(Wire wire) {
    List<Ref> ends = new ArrayList<>();
    if (wire.from() != null) {
      ends.add(wire.from());
    }
    if (wire.to() != null) {
      ends.add(wire.to());
    }
    return ends;
  }
}
