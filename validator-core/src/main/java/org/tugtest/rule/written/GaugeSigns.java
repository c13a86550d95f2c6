package org.tugtest.rule.written;

import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.heat.Ampacity;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.Edge;
import org.tugtest.network.Net;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.protect.Exposure;
import org.tugtest.rule.LastingAmps;
import org.tugtest.table.AwgTable;
import org.tugtest.table.Cited;
import org.tugtest.table.ConductorResistanceTable;
import org.tugtest.text.Quoted;

/** What says of a wire that its area is the number of a gauge. */
final class GaugeSigns {
  private static final Set<Integer> GAUGES = Set.of(12, 14, 18, 20, 22, 24, 26, 28, 30);
  private static final double LITTLE = 0.5;
  private static final double FUSED = 2;
  private static final double MOST_V = 0.5;
  private static final double SOME_A = 1e-3;
  private static final double PER_METRE = 1e-6;
  private final Facts facts;
  private final Set<Point> signals = new HashSet<>();

  /**
   * A sign.
   *
   * @param sure whether the area cannot be right
   */
  record Sign(String gauge, String words, boolean sure) {}

  GaugeSigns(Facts facts) {
    this.facts = facts;
    for (Device device : facts.harness().devices().values()) {
      DeviceType type = facts.harness().typeOf(device);
      Map<String, Element> elements = type == null ? Map.of() : type.elements();
      for (Element element : elements.values()) {
        if (element instanceof Element.Signal signal) {
          facts
              .nets()
              .of(Point.pin(device.id(), signal.pin()))
              .map(Net::first)
              .ifPresent(signals::add);
        }
      }
    }
  }

  /** The gauge that a number of mm2 reads as; empty for an area that is made. */
  static Optional<String> gauge(double areaMm2) {
    boolean whole = areaMm2 == Math.rint(areaMm2) && areaMm2 < 100;
    return whole && GAUGES.contains((int) areaMm2)
        ? Optional.of(Integer.toString((int) areaMm2))
        : Optional.empty();
  }

  /** The area of a gauge in mm2. */
  static double areaMm2(String gauge) {
    return AwgTable.areaMm2(gauge).map(Cited::value).orElse(0.0);
  }

  /** The first sign that a wire is of the gauge that its area reads as. */
  Optional<Sign> of(Edge.OfWire edge, @Nullable WirePart part, String gauge) {
    return ofDiameter(part, gauge)
        .or(() -> ofTerminal(edge.wire(), gauge))
        .or(() -> ofSignal(edge, gauge))
        .or(() -> ofLoad(edge, gauge));
  }

  private static Optional<Sign> ofDiameter(@Nullable WirePart part, String gauge) {
    Double outer = part == null ? null : part.outerMm();
    double copper = Math.sqrt(4 * Double.parseDouble(gauge) / Math.PI);
    return outer != null && outer < copper
        ? Optional.of(
            new Sign(
                gauge,
                String.format(
                    Locale.ROOT,
                    "copper of that area is %.1f mm wide and its outerMm is %s",
                    Math.floor(copper * 10) / 10,
                    Quoted.number(outer)),
                true))
        : Optional.empty();
  }

  private Optional<Sign> ofTerminal(Wire wire, String gauge) {
    for (boolean from : new boolean[] {true, false}) {
      WireEnd end = new WireEnd(wire, from);
      Point at = facts.wiring().pointOf(end.ref()).orElse(null);
      Terminal terminal = at == null ? null : terminal(end, at);
      Double least = terminal == null ? null : terminal.areaMinMm2();
      Double most = terminal == null ? null : terminal.areaMaxMm2();
      if (least != null
          && most != null
          && most < Double.parseDouble(gauge)
          && least <= areaMm2(gauge)
          && areaMm2(gauge) <= most) {
        return Optional.of(
            new Sign(
                gauge,
                "terminal "
                    + terminal.id()
                    + " at "
                    + at.text()
                    + " takes at most "
                    + Quoted.number(most)
                    + " mm2",
                false));
      }
    }
    return Optional.empty();
  }

  private @Nullable Terminal terminal(WireEnd end, Point at) {
    if (at.kind() == Point.Kind.CAVITY) {
      return facts.fitting().terminal(at).part();
    }
    String id = end.terminal();
    return id == null ? null : facts.harness().parts().terminals().get(id);
  }

  private Optional<Sign> ofSignal(Edge.OfWire edge, String gauge) {
    return facts
        .nets()
        .of(edge.a())
        .map(Net::first)
        .filter(signals::contains)
        .map(net -> new Sign(gauge, "it carries a signal", false));
  }

  private Optional<Sign> ofLoad(Edge.OfWire edge, String gauge) {
    Ampacity stands = stands(edge.wire(), gauge).orElse(null);
    LastingAmps lasting = LastingAmps.of(facts, edge).orElse(null);
    OptionalDouble ohms = ohms(edge.wire(), gauge);
    if (stands == null || lasting == null || !lasting.known() || ohms.isEmpty()) {
      return Optional.empty();
    }
    double amps = lasting.amps();
    boolean little = amps >= SOME_A && amps <= LITTLE * stands.amps();
    boolean near = amps * ohms.getAsDouble() <= MOST_V;
    double through =
        facts
            .protection()
            .exposure(edge.wire().id())
            .or(() -> facts.protection().returning(edge.wire().id()))
            .map(Exposure::mostA)
            .orElse(Double.POSITIVE_INFINITY);
    return little && near && through <= FUSED * stands.amps()
        ? Optional.of(
            new Sign(
                gauge,
                String.format(
                    Locale.ROOT,
                    "it carries %.2f A at most and is fused for %s A",
                    amps,
                    Quoted.number(through)),
                false))
        : Optional.empty();
  }

  /** Whether a wire is known to carry more than its gauge would stand. */
  boolean carriesMore(Edge.OfWire edge, String gauge) {
    double stands = stands(edge.wire(), gauge).map(Ampacity::amps).orElse(Double.MAX_VALUE);
    return LastingAmps.of(facts, edge).filter(lasting -> lasting.amps() > stands).isPresent();
  }

  private Optional<Ampacity> stands(Wire wire, String gauge) {
    return facts
        .ampacity()
        .inPlaceOf(
            wire,
            new WirePart(
                "",
                null,
                gauge,
                100.0,
                WirePart.Wall.THIN,
                null,
                null,
                null,
                null,
                null,
                null,
                false));
  }

  private OptionalDouble ohms(Wire wire, String gauge) {
    Optional<Cited> perMetre = ConductorResistanceTable.ofGauge(gauge);
    return facts
        .lengths()
        .of(wire)
        .flatMap(length -> perMetre.map(ohms -> length.mm() * ohms.value() * PER_METRE))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }
}
