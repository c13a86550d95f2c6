package org.tugtest.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.Covering;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Layout;
import org.tugtest.model.Seal;
import org.tugtest.model.Splice;
import org.tugtest.model.SplicePart;
import org.tugtest.model.Support;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.network.Wiring;
import org.tugtest.table.Cited;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Quoted;

/** Counts what the looms are made of. */
public final class TotalsCount {
  private static final double THOUSAND = 1000;
  private static final String LOOSE = "";

  private final Harness harness;
  private final Wiring wiring;
  private final Fitting fitting;
  private final Routes routes;
  private final Bundles bundles;
  private final Map<String, Map<Key, Tally>> looms = new TreeMap<>(NaturalOrder.NATURAL);
  private final Map<Key, Tally> whole = new TreeMap<>(Key.ORDER);

  private record Key(Totals.Kind kind, String part) {
    static final Comparator<Key> ORDER =
        Comparator.<Key, Totals.Kind>comparing(Key::kind)
            .thenComparing(Key::part, NaturalOrder.NATURAL);
  }

  private static final class Tally {
    int count;
    double metres;
    double grams;
    int withoutLength;
    int withoutMass;
  }

  private TotalsCount(
      Harness harness, Wiring wiring, Fitting fitting, Routes routes, Bundles bundles) {
    this.harness = harness;
    this.wiring = wiring;
    this.fitting = fitting;
    this.routes = routes;
    this.bundles = bundles;
  }

  /** The totals of a harness. */
  public static Totals of(
      Harness harness, Wiring wiring, Fitting fitting, Routes routes, Bundles bundles) {
    TotalsCount count = new TotalsCount(harness, wiring, fitting, routes, bundles);
    harness.looms().keySet().forEach(id -> count.looms.put(id, new TreeMap<>(Key.ORDER)));
    count.wires();
    count.connectors();
    count.splices();
    count.segments();
    Map<String, Totals.Sum> byLoom = new LinkedHashMap<>();
    count.looms.forEach((id, lines) -> byLoom.put(id, sum(lines)));
    return new Totals(byLoom, sum(count.whole), count.cavities());
  }

  private static Totals.Sum sum(Map<Key, Tally> lines) {
    List<Totals.Line> all = new ArrayList<>();
    lines.forEach(
        (key, tally) ->
            all.add(
                new Totals.Line(
                    key.kind(),
                    key.part(),
                    tally.count,
                    tally.metres,
                    tally.grams,
                    tally.withoutLength,
                    tally.withoutMass)));
    return new Totals.Sum(all);
  }

  /** Adds so many pieces; {@code mm} is null for what needs no length, NaN for an unknown one. */
  private void add(
      @Nullable String loom,
      Totals.Kind kind,
      @Nullable String part,
      int count,
      @Nullable Double mm,
      @Nullable Double gramsEach) {
    Key key = new Key(kind, Objects.requireNonNullElse(part, ""));
    Map<Key, Tally> its =
        looms.computeIfAbsent(
            Objects.requireNonNullElse(loom, LOOSE), id -> new TreeMap<>(Key.ORDER));
    for (Tally tally :
        List.of(
            its.computeIfAbsent(key, k -> new Tally()),
            whole.computeIfAbsent(key, k -> new Tally()))) {
      tally.count += count;
      boolean lengthKnown = mm == null || !mm.isNaN();
      if (mm != null && lengthKnown) {
        tally.metres += count * mm / THOUSAND;
      }
      if (!lengthKnown) {
        tally.withoutLength += count;
      } else if (gramsEach == null) {
        tally.withoutMass += count;
      } else {
        tally.grams += count * gramsEach;
      }
    }
  }

  private void wires() {
    WireMass mass = new WireMass(harness, fitting.sizes());
    Cables cables = new Cables(harness, fitting.sizes());
    Set<String> done = new HashSet<>();
    for (Wire wire : harness.wires().values()) {
      Group cable = cables.of(wire.id());
      if (cable == null || cable.gramsPerM() == null) {
        Double mm = length(wire);
        Double perM = mass.gramsPerM(wire).map(Cited::value).orElse(null);
        add(wire.loom(), Totals.Kind.WIRE, name(wire), 1, orUnknown(mm), grams(mm, perM));
      } else if (done.add(cable.id())) {
        Double longest = null;
        for (String id : cables.members(cable)) {
          Wire member = harness.wires().get(id);
          Double mm = member == null ? null : length(member);
          longest = mm != null && (longest == null || mm > longest) ? mm : longest;
        }
        Double grams = grams(longest, cable.gramsPerM());
        add(cable.loom(), Totals.Kind.CABLE, cable.id(), 1, orUnknown(longest), grams);
      }
      ends(wire);
    }
  }

  /** The terminals that are written for its ends on device pins. */
  private void ends(Wire wire) {
    for (String id : new String[] {wire.fromTerminal(), wire.toTerminal()}) {
      if (id != null) {
        Terminal part = harness.parts().terminals().get(id);
        add(wire.loom(), Totals.Kind.TERMINAL, id, 1, null, part == null ? null : part.grams());
      }
    }
  }

  private static Double orUnknown(@Nullable Double mm) {
    return mm == null ? Double.NaN : mm;
  }

  private static @Nullable Double grams(@Nullable Double mm, @Nullable Double perM) {
    return mm == null || perM == null ? null : Double.valueOf(mm / THOUSAND * perM);
  }

  private static String name(Wire wire) {
    if (wire.part() != null) {
      return wire.part();
    }
    if (wire.areaMm2() != null) {
      return Quoted.number(wire.areaMm2()) + " mm2";
    }
    return wire.awg() == null ? "" : wire.awg() + " AWG";
  }

  /** What goes into it: as built, else as cut, else as its route plans; null: not known. */
  private @Nullable Double length(Wire wire) {
    if (wire.builtMm() != null) {
      return wire.builtMm();
    }
    return wire.cutMm() != null
        ? wire.cutMm()
        : routes.of(wire.id()).map(route -> route.plannedMm(wire)).orElse(null);
  }

  private void connectors() {
    for (Connector connector : harness.connectors().values()) {
      Housing housing = wiring.mating().housingOf(connector.id()).orElse(null);
      add(
          connector.loom(),
          Totals.Kind.HOUSING,
          connector.housing(),
          1,
          null,
          housing == null ? null : housing.grams());
      for (Point point : wiring.cavityPoints(connector.id())) {
        if (!wiring.endsAt(point).isEmpty()) {
          contact(connector, housing, point);
        }
      }
      if (connector.boot() != null) {
        add(connector.loom(), Totals.Kind.COVERING, connector.boot(), 1, null, null);
      }
    }
  }

  private void contact(Connector connector, @Nullable Housing housing, Point cavity) {
    Terminal terminal = fitting.terminal(cavity).part();
    add(
        connector.loom(),
        Totals.Kind.TERMINAL,
        terminal == null ? null : terminal.id(),
        1,
        null,
        terminal == null ? null : terminal.grams());
    if (housing != null && housing.sealed()) {
      List<WireEnd> ends = wiring.endsAt(cavity);
      Seal seal = fitting.seal(cavity).part();
      add(
          connector.loom(),
          Totals.Kind.SEAL,
          seal == null ? null : seal.id(),
          ends.size(),
          null,
          seal == null ? null : seal.grams());
    }
  }

  private void splices() {
    for (Splice splice : harness.splices().values()) {
      SplicePart part = splice.part() == null ? null : harness.parts().splices().get(splice.part());
      Double grams = part == null ? null : part.grams();
      add(splice.loom(), Totals.Kind.SPLICE, splice.part(), 1, null, grams);
      splice.coverings().forEach(id -> add(splice.loom(), Totals.Kind.COVERING, id, 1, null, null));
    }
  }

  private void segments() {
    Map<String, Covering> coverings = harness.parts().coverings();
    for (Layout.Segment segment : harness.layout().segments().values()) {
      String loom = loomOf(segment);
      Double mm = LoomWays.length(segment);
      for (String id : segment.coverings()) {
        Covering part = coverings.get(id);
        Double perM = part == null ? null : part.gramsPerM();
        add(loom, Totals.Kind.COVERING, id, 1, orUnknown(mm), grams(mm, perM));
      }
      Integer supports = segment.supports();
      if (supports != null && supports > 0) {
        String id = segment.supportPart();
        Support part = id == null ? null : harness.parts().supports().get(id);
        Double grams = part == null ? null : part.grams();
        add(loom, Totals.Kind.SUPPORT, id, supports, null, grams);
      }
    }
    for (Layout.Node node : harness.layout().nodes().values()) {
      node.coverings().forEach(id -> add(LOOSE, Totals.Kind.COVERING, id, 1, null, null));
    }
  }

  /** The loom a segment belongs to: its own, else that of all wires on it. */
  private @Nullable String loomOf(Layout.Segment segment) {
    if (segment.loom() != null) {
      return segment.loom();
    }
    Set<String> found = new HashSet<>();
    for (Bundle bundle : bundles.of(segment.id())) {
      for (String id : bundle.wireIds()) {
        Wire wire = harness.wires().get(id);
        if (wire != null) {
          found.add(Routes.loomOf(wire));
        }
      }
    }
    return found.size() == 1 ? found.iterator().next() : null;
  }

  private Map<String, Totals.Ways> cavities() {
    Map<String, Totals.Ways> ways = new LinkedHashMap<>();
    for (String id : harness.connectors().keySet()) {
      if (wiring.mating().housingOf(id).isPresent()) {
        List<Point> points = wiring.cavityPoints(id);
        long wired = points.stream().filter(point -> !wiring.endsAt(point).isEmpty()).count();
        ways.put(id, new Totals.Ways(points.size(), (int) wired));
      }
    }
    return ways;
  }
}
