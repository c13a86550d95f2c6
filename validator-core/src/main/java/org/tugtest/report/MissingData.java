package org.tugtest.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.rule.RuleInfo;
import org.tugtest.text.NaturalOrder;

/**
 * Something that a harness does not say and that rules wait for, so that a report can tell what to
 * add next. Only rules of the catalogue count: nothing is promised that no rule would judge.
 *
 * @param give what to write, with the ids of the things that lack it
 * @param rules ids of the rules that need it
 */
public record MissingData(String give, List<String> rules) {
  private static final int NAMED = 3;

  public MissingData {
    rules = List.copyOf(rules);
  }

  /** What a harness lacks, the cheapest to write and most telling first. */
  public static List<MissingData> of(HarnessReport harness, Collection<RuleInfo> catalogue) {
    if (harness.facts().unread().contains(harness.root())) {
      return List.of();
    }
    Set<String> known = catalogue.stream().map(RuleInfo::id).collect(Collectors.toSet());
    Lacks lacks = new Lacks(harness);
    List<MissingData> missing = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      List<String> rules = waiting(kind).stream().filter(known::contains).toList();
      if (!rules.isEmpty()) {
        lacks.of(kind).ifPresent(give -> missing.add(new MissingData(give, rules)));
      }
    }
    return missing;
  }

  /** What to write and which rules wait for it, in one sentence without a full stop. */
  public String shown() {
    String names = named(rules);
    return give + (rules.size() == 1 ? "; " + names + " needs it" : "; " + names + " need it");
  }

  /** The first few ids, and how many more there are. */
  private static String named(Collection<String> ids) {
    List<String> first = ids.stream().limit(NAMED).toList();
    int more = ids.size() - first.size();
    if (more > 0) {
      return String.join(", ", first) + " and " + more + " more";
    }
    int last = first.size() - 1;
    return last == 0
        ? first.get(0)
        : String.join(", ", first.subList(0, last)) + " and " + first.get(last);
  }

  /** The kinds of data, in the order in which it pays to add them. */
  private enum Kind {
    WIRES,
    SOURCES,
    FUSES,
    AREAS,
    LOADS,
    LENGTHS,
    HOUSINGS,
    LAYOUT,
    STATES
  }

  /** The rules that need a kind of data. */
  private static List<String> waiting(Kind kind) {
    return switch (kind) {
      case WIRES -> List.of("cavity-doubled", "wire-end-open", "wire-repeated");
      case SOURCES ->
          List.of(
              "supply-shorted",
              "fuse-missing-upstream",
              "fuse-far-from-source",
              "isolator-bypassed",
              "live-pins-exposed");
      case FUSES -> List.of("fuse-missing-upstream", "gauge-under-fuse", "fuse-does-not-clear");
      case AREAS ->
          List.of(
              "gauge-under-fuse",
              "return-under-fuse",
              "gauge-under-load",
              "terminal-unfit-for-wire",
              "seal-unfit-for-wire",
              "splice-overfilled");
      case LOADS ->
          List.of(
              "gauge-under-load", "fuse-near-rating", "terminal-overloaded", "switch-overloaded");
      case LENGTHS -> List.of("voltage-drop-excessive", "fuse-does-not-clear", "wire-overheats");
      case HOUSINGS ->
          List.of(
              "cavity-unknown",
              "halves-do-not-fit",
              "terminal-unfit-for-cavity",
              "cavity-unsealed",
              "cross-mating-possible",
              "spare-cavities-few");
      case LAYOUT ->
          List.of(
              "wire-too-short",
              "bend-too-tight",
              "covering-overfilled",
              "support-span-long",
              "splice-misplaced");
      case STATES -> List.of("load-unfed", "load-without-return", "load-backfed", "relay-chatters");
    };
  }

  /** What one harness lacks, in words. */
  private static final class Lacks {
    private final HarnessReport report;
    private final Harness harness;

    Lacks(HarnessReport report) {
      this.report = report;
      this.harness = report.facts().harness();
    }

    Optional<String> of(Kind kind) {
      return switch (kind) {
        case WIRES -> when(harness.wires().isEmpty(), "the wires, as it has none");
        case SOURCES -> when(!has(Element.Source.class), "which pins are battery plus and minus");
        case FUSES -> when(!has(Element.Fuse.class), "which pins have a fuse between them");
        case AREAS -> wires("the area of", wire -> !sized(wire));
        case LOADS -> loads();
        case LENGTHS ->
            harness.layout().segments().isEmpty()
                ? wires(
                    "the cut length of",
                    wire -> !wire.laidInPlace() && wire.cutMm() == null && wire.builtMm() == null)
                : Optional.empty();
        case HOUSINGS -> housings();
        case LAYOUT ->
            when(harness.layout().segments().isEmpty(), "a layout of nodes and segments");
        case STATES -> when(harness.states().isEmpty(), "the states the vehicle is operated in");
      };
    }

    private static Optional<String> when(boolean lacking, String give) {
      return lacking ? Optional.of(give) : Optional.empty();
    }

    private static boolean sized(Wire wire) {
      return wire.part() != null || wire.areaMm2() != null || wire.awg() != null;
    }

    private boolean has(Class<? extends Element> kind) {
      return harness.devices().values().stream()
          .map(harness::typeOf)
          .anyMatch(
              type -> type != null && type.elements().values().stream().anyMatch(kind::isInstance));
    }

    private Optional<String> wires(String give, Predicate<Wire> lacking) {
      List<String> ids = harness.wires().values().stream().filter(lacking).map(Wire::id).toList();
      return counted(give, ids, "wire");
    }

    private Optional<String> loads() {
      if (!has(Element.Load.class)) {
        return Optional.of("which devices are loads, with their amps or watts");
      }
      List<String> ids = new ArrayList<>();
      for (Device device : harness.devices().values()) {
        DeviceType type = harness.typeOf(device);
        if (type == null) {
          continue;
        }
        type.elements()
            .forEach(
                (name, element) -> {
                  if (element instanceof Element.Load load
                      && load.amps() == null
                      && load.ohms() == null
                      && load.watts() == null) {
                    ids.add(device.id() + "." + name);
                  }
                });
      }
      return counted("amps, watts or ohms of", ids, "load");
    }

    private Optional<String> housings() {
      Set<String> ids = new TreeSet<>(NaturalOrder.NATURAL);
      harness.connectors().values().stream()
          .filter(connector -> connector.housing() == null)
          .map(Connector::id)
          .forEach(ids::add);
      report.facts().wiring().implied().stream()
          .filter(point -> point.kind() == Point.Kind.CAVITY)
          .map(Point::owner)
          .filter(owner -> !harness.connectors().containsKey(owner))
          .forEach(ids::add);
      return counted("the housing of", ids, "connector");
    }

    private static Optional<String> counted(String give, Collection<String> ids, String noun) {
      return ids.isEmpty()
          ? Optional.empty()
          : Optional.of(give + " " + Tally.counted(ids.size(), noun) + " (" + named(ids) + ")");
    }
  }
}
