package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Housing;
import org.tugtest.network.Mate;
import org.tugtest.network.Mating;
import org.tugtest.network.Point;

/**
 * A connector as it is meant to be plugged.
 *
 * @param plug the connector
 * @param place what it is plugged into; null while it is parked or mates with nothing
 * @param node where it stands
 */
record Slot(Half plug, @Nullable Half place, String node) {

  /**
   * One half.
   *
   * @param mate what another half would write to be plugged into it
   */
  record Half(Mate mate, Housing housing, DeviceType.@Nullable Port port) {
    static Half of(Mating mating, Mate mate, Housing housing) {
      return new Half(
          mate,
          housing,
          mate instanceof Mate.OfPort port ? mating.portAt(port).orElse(null) : null);
    }

    boolean onDevice() {
      return mate instanceof Mate.OfPort;
    }

    String text() {
      return mate.text();
    }

    Subject subject() {
      return mate instanceof Mate.OfPort at
          ? Subject.element(at.device(), at.port())
          : Subject.connector(mate.text());
    }

    /** The contact in a cavity of this half. */
    Point contact(String cavity) {
      if (mate instanceof Mate.OfPort at) {
        return Point.pin(at.device(), port == null ? cavity : port.pinAt(cavity));
      }
      return Point.cavity(mate.text(), cavity);
    }
  }

  /** A half of one slot that goes into a half of another; {@code one} is on a loom. */
  record Crossing(Half one, Half other) {}

  List<Half> halves() {
    return place == null ? List.of(plug) : List.of(plug, place);
  }

  private @Nullable Housing opposite(Half half) {
    if (place == null) {
      return null;
    }
    return half.mate().equals(plug.mate()) ? place.housing() : plug.housing();
  }

  /** Which halves of this slot go into which of another, by housings that are plugged already. */
  List<Crossing> crossings(Slot other) {
    List<Crossing> crossings = new ArrayList<>();
    for (Half one : halves()) {
      for (Half two : other.halves()) {
        boolean goes = is(other.opposite(two), one.housing()) || is(opposite(one), two.housing());
        if (goes && !(one.onDevice() && two.onDevice())) {
          crossings.add(one.onDevice() ? new Crossing(two, one) : new Crossing(one, two));
        }
      }
    }
    return crossings;
  }

  private static boolean is(@Nullable Housing left, Housing right) {
    return left != null && left.id().equals(right.id());
  }
}
