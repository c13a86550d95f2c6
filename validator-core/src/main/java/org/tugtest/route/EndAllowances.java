package org.tugtest.route;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Connector;
import org.tugtest.model.Defaults;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.Terminal;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.Resolution;
import org.tugtest.network.WireEnd;
import org.tugtest.network.Wiring;
import org.tugtest.text.Quoted;

/**
 * What is added at each end of a wire: breakout, spare and strip at a connector or pin, strip alone
 * at a splice. The figure of connector, pin or terminal goes before {@code defaults} of the root,
 * and that before the format's own (common practice).
 */
final class EndAllowances {
  private final Harness harness;
  private final Wiring wiring;
  private final Fitting fitting;
  private final Set<String> givenDefaults;

  /** Sources told before: the ends of wires have few between them. */
  private final Map<String, String> sources = new HashMap<>();

  private final Map<String, String> texts = new HashMap<>();

  /**
   * The allowances of a harness.
   *
   * @param givenDefaults names of the fields that {@code defaults} of the root gives
   */
  EndAllowances(Harness harness, Wiring wiring, Fitting fitting, Set<String> givenDefaults) {
    this.harness = harness;
    this.wiring = wiring;
    this.fitting = fitting;
    this.givenDefaults = Set.copyOf(givenDefaults);
  }

  /** What is added at an end; nothing where it names nothing. */
  List<Allowance> of(WireEnd end) {
    Ref ref = end.ref();
    if (ref == null || !(wiring.resolve(ref) instanceof Resolution.Found found)) {
      return List.of();
    }
    Point point = found.point();
    String at = point.text();
    if (point.kind() == Point.Kind.SPLICE) {
      return List.of(byDefault(Allowance.Kind.STRIP, at, "stripMm", Defaults::stripMm));
    }
    if (point.kind() == Point.Kind.CAVITY) {
      Connector connector = harness.connectors().get(point.owner());
      String of = " of " + point.owner();
      return List.of(
          breakout(at, connector == null ? null : connector.breakoutMm(), of),
          service(at, connector == null ? null : connector.serviceMm(), of),
          strip(at, fitting.terminal(point).part()));
    }
    DeviceType.Pin pin = pin(point);
    String of = " of " + at;
    String terminal = end.terminal();
    return List.of(
        breakout(at, pin == null ? null : pin.breakoutMm(), of),
        service(at, pin == null ? null : pin.serviceMm(), of),
        strip(at, terminal == null ? null : harness.parts().terminals().get(terminal)));
  }

  /** In words, of a figure of the format's own, of which each source has one. */
  String text(Allowance own) {
    return texts.computeIfAbsent(
        own.source(), source -> source + " (" + Quoted.number(own.mm()) + " mm)");
  }

  private DeviceType.@Nullable Pin pin(Point point) {
    Device device = harness.devices().get(point.owner());
    DeviceType type = device == null ? null : harness.typeOf(device);
    return type == null ? null : type.pins().get(point.name());
  }

  private Allowance breakout(String at, @Nullable Double own, String of) {
    return own == null
        ? byDefault(Allowance.Kind.BREAKOUT, at, "breakoutMm", Defaults::breakoutMm)
        : given(Allowance.Kind.BREAKOUT, at, own, "breakoutMm" + of);
  }

  private Allowance service(String at, @Nullable Double own, String of) {
    return own == null
        ? byDefault(Allowance.Kind.SERVICE, at, "serviceMm", Defaults::serviceMm)
        : given(Allowance.Kind.SERVICE, at, own, "serviceMm" + of);
  }

  private Allowance strip(String at, @Nullable Terminal terminal) {
    return terminal == null || terminal.stripMm() == null
        ? byDefault(Allowance.Kind.STRIP, at, "stripMm", Defaults::stripMm)
        : given(
            Allowance.Kind.STRIP, at, terminal.stripMm(), "stripMm of terminal " + terminal.id());
  }

  private Allowance given(Allowance.Kind kind, String at, double mm, String source) {
    return new Allowance(kind, at, mm, once(source), Basis.GIVEN);
  }

  private Allowance byDefault(
      Allowance.Kind kind, String at, String field, ToDoubleFunction<Defaults> figure) {
    boolean given = givenDefaults.contains(field);
    return new Allowance(
        kind,
        at,
        figure.applyAsDouble(harness.defaults()),
        once(given ? field + " of defaults" : field + " of the format"),
        given ? Basis.GIVEN : Basis.COMMON_PRACTICE);
  }

  private String once(String source) {
    String known = sources.putIfAbsent(source, source);
    return known == null ? source : known;
  }
}
