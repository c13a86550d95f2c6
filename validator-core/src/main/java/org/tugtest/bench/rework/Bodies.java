package org.tugtest.bench.rework;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Housing;
import org.tugtest.model.Splice;
import org.tugtest.network.Point;
import org.tugtest.text.NaturalOrder;

/**
 * The housings and splices on the bench, those that stay and those that come or go; and the seats
 * in them. A connector whose housing changes is two: the old one is emptied, the new one filled.
 */
final class Bodies {
  private final Facts now;
  private final Facts target;
  private final Matching matching;
  private final Map<String, String> nowOf = new HashMap<>();
  private final Set<String> replaced = new TreeSet<>(NaturalOrder.NATURAL);
  private final Set<String> replacedSplices = new TreeSet<>(NaturalOrder.NATURAL);

  Bodies(Facts now, Facts target, Matching matching) {
    this.now = now;
    this.target = target;
    this.matching = matching;
    matching
        .connectors()
        .forEach(
            (is, becomes) -> {
              nowOf.put(becomes, is);
              if (!isSameHousing(is, becomes)) {
                replaced.add(becomes);
              }
            });
    matching
        .splices()
        .forEach(
            (is, becomes) -> {
              if (!Objects.equals(splicePart(now, is), splicePart(target, becomes))) {
                replacedSplices.add(becomes);
              }
            });
  }

  /** The same part, or one of another name that takes and mates the same. */
  private boolean isSameHousing(String is, String becomes) {
    String id = housingId(now, is);
    String wanted = housingId(target, becomes);
    Housing one = id == null ? null : now.harness().parts().housings().get(id);
    Housing other = wanted == null ? null : target.harness().parts().housings().get(wanted);
    if (one == null || other == null) {
      return Objects.equals(id, wanted);
    }
    return one.rows().equals(other.rows())
        && one.side() == other.side()
        && one.sealed() == other.sealed()
        && Objects.equals(one.family(), other.family())
        && one.cavityFamilies().equals(other.cavityFamilies())
        && Objects.equals(one.keying(), other.keying());
  }

  private static @Nullable String housingId(Facts facts, String connector) {
    Connector found = facts.harness().connectors().get(connector);
    return found == null ? null : found.housing();
  }

  private static @Nullable String splicePart(Facts facts, String splice) {
    Splice found = facts.harness().splices().get(splice);
    return found == null ? null : found.part();
  }

  /** The seat of a point of the loom as it is. */
  Seat now(Point point) {
    if (point.kind() == Point.Kind.PIN) {
      return Seat.wanted(point.kind(), point.owner(), point.name());
    }
    Map<String, String> ids =
        point.kind() == Point.Kind.CAVITY ? matching.connectors() : matching.splices();
    Set<String> changed = point.kind() == Point.Kind.CAVITY ? replaced : replacedSplices;
    String becomes = ids.get(point.owner());
    String owner = becomes == null ? point.owner() : becomes;
    if (becomes != null && !changed.contains(becomes)) {
      return Seat.wanted(point.kind(), owner, point.name());
    }
    Set<String> wanted =
        point.kind() == Point.Kind.CAVITY
            ? target.wiring().connectors()
            : target.wiring().splices();
    Seat.Stay stay = wanted.contains(owner) ? Seat.Stay.REPLACED : Seat.Stay.GONE;
    return new Seat(point.kind(), owner, point.name(), stay);
  }

  /** The seat of a point of the loom that is wanted. */
  Seat target(Point point) {
    return Seat.wanted(point.kind(), point.owner(), point.name());
  }

  /** The point of a seat in the loom that is wanted. */
  Optional<Point> pointTarget(Seat seat) {
    return seat.old()
        ? Optional.empty()
        : Optional.of(new Point(seat.kind(), seat.owner(), seat.name()));
  }

  /** Whether only one terminal can sit there. */
  boolean single(Seat seat) {
    if (seat.kind() != Point.Kind.PIN) {
      return seat.kind() == Point.Kind.CAVITY;
    }
    return single(now, seat) || single(target, seat);
  }

  private static boolean single(Facts facts, Seat seat) {
    Device device = facts.harness().devices().get(seat.owner());
    DeviceType type = device == null ? null : facts.harness().typeOf(device);
    DeviceType.Pin pin = type == null ? null : type.pins().get(seat.name());
    return pin != null && pin.maxTerminals() == 1;
  }

  /** The housing of a cavity's connector, old or as wanted. */
  Optional<Housing> housing(Seat seat) {
    return seat.old()
        ? now.wiring().mating().housingOf(nowOf.getOrDefault(seat.owner(), seat.owner()))
        : target.wiring().mating().housingOf(seat.owner());
  }

  /** The cavities of the housing of a seat in the order of its face. */
  List<String> cavities(String connector, boolean old) {
    return old
        ? now.wiring().cavitiesOf(nowOf.getOrDefault(connector, connector))
        : target.wiring().cavitiesOf(connector);
  }

  /** Where each cavity of a housing stands in the order of its face. */
  Map<String, Integer> face(String connector, boolean old) {
    Map<String, Integer> face = new LinkedHashMap<>();
    cavities(connector, old).forEach(cavity -> face.putIfAbsent(cavity, face.size()));
    if (!old && nowOf.containsKey(connector)) {
      now.wiring()
          .cavitiesOf(nowOf.getOrDefault(connector, connector))
          .forEach(cavity -> face.putIfAbsent(cavity, face.size()));
    }
    return face;
  }

  /** Whether a connector gets a housing that was not there. */
  boolean comesNew(String connector) {
    return target.wiring().connectors().contains(connector)
        && (!nowOf.containsKey(connector) || replaced.contains(connector));
  }

  /** Connectors whose housing is taken away: those that go, and those that get another one. */
  Map<String, String> takenAway() {
    Map<String, String> away = new TreeMap<>(NaturalOrder.NATURAL);
    for (String is : now.wiring().connectors()) {
      String becomes = matching.connectors().get(is);
      if (becomes == null || replaced.contains(becomes)) {
        away.put(becomes == null ? is : becomes, is);
      }
    }
    return away;
  }

  /** The id that a connector has now; itself when it is new. */
  String idNow(String connector) {
    return nowOf.getOrDefault(connector, connector);
  }
}
