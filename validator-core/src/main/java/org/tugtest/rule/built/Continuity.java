package org.tugtest.rule.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.facts.TakenReading;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Reading;
import org.tugtest.network.Edge;
import org.tugtest.network.Meter;
import org.tugtest.network.Net;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.rule.Setting;
import org.tugtest.text.Quoted;

/** What a reading says, and what lies between its points. */
public final class Continuity {
  /** From so many ohms on a plain reading is no joint. */
  static final Setting OPEN_OHMS =
      new Setting(
          "ohms",
          100,
          1,
          1e6,
          "ohm",
          "from this reading on two points are not joined; wires and plugs have less by far, common"
              + " practice");

  private Continuity() {}

  /** The insulation under which two points count as joined, in ohms; common practice. */
  static final double INSULATION_OHMS = 1e6;

  /** Whether a reading says that its points are joined, by the standard limits. */
  public static boolean joined(Reading reading) {
    return joined(reading, OPEN_OHMS.standard(), INSULATION_OHMS);
  }

  /** Whether a reading says that its points are joined. */
  static boolean joined(Reading reading, double openOhms, double insulationOhms) {
    if (reading.joined() != null) {
      return reading.joined();
    }
    boolean insulation = reading.method() == Reading.Method.INSULATION;
    Double ohms = reading.ohms();
    return ohms != null && ohms < (insulation ? insulationOhms : openOhms);
  }

  /** {@code reads 0.35 ohm}, {@code reads open}, {@code reads joined}. */
  static String said(Reading reading) {
    Double ohms = reading.ohms();
    if (ohms != null) {
      return "reads " + Quoted.number(ohms) + " ohm";
    }
    return Boolean.TRUE.equals(reading.joined()) ? "reads joined" : "reads open";
  }

  /** Begins a finding on a reading; the points first, then the wires between them. */
  static Finding.Draft finding(TakenReading reading, Meter meter) {
    Finding.Draft draft =
        Finding.on(reading.from().subject(), reading.to().subject()).at(reading.at());
    for (Edge edge : way(meter, reading)) {
      if (edge instanceof Edge.OfWire wire) {
        draft.and(Subject.wire(wire.wire().id()));
      }
    }
    if (reading.reading().note() != null) {
      draft.detail("note: " + Quoted.name(reading.reading().note()));
    }
    return draft;
  }

  private static List<Edge> way(Meter meter, TakenReading reading) {
    return meter.path(reading.from(), reading.to()).map(Path::edges).orElse(List.of());
  }

  /** How two joined points are joined, in one line. */
  static String way(Meter meter, Point from, Point to) {
    return meter.path(from, to).map(Path::text).orElse("");
  }

  /** Elements of devices that lie between the nets of two points, and conduct while plugged in. */
  static List<String> between(Facts facts, Point from, Point to) {
    Optional<Net> net = facts.nets().of(from);
    List<String> elements = new ArrayList<>();
    for (Point point : net.map(Net::points).orElse(List.of())) {
      for (Edge edge : facts.network().edgesAt(point)) {
        if (edge instanceof Edge.OfElement && facts.nets().joined(edge.across(point), to)) {
          elements.add(edge.text());
        }
      }
    }
    return elements.stream().distinct().toList();
  }
}
