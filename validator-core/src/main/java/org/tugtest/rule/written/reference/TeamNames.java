package org.tugtest.rule.written.reference;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.KnownRules;
import org.tugtest.finding.Subject;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Expectation;
import org.tugtest.model.Ref;
import org.tugtest.model.RuleLimits;
import org.tugtest.model.Waiver;
import org.tugtest.network.Resolution;
import org.tugtest.text.NaturalOrder;

/** What limits, waivers and expectations name. */
final class TeamNames {
  private static final String RULES = "which rules there are is not known";
  private static final String AS_DRAWN = "as drawn";
  private final Mentions mentions;
  private final Tables tables;
  private final PlaceNames places;
  private final Table rules;
  private final Table fuses;
  private final Table loads;
  private final Table states;
  private final Table circuits;

  TeamNames(Mentions mentions, Tables tables, PlaceNames places) {
    this.mentions = mentions;
    this.tables = tables;
    this.places = places;
    Set<String> known = new TreeSet<>(NaturalOrder.NATURAL);
    known.addAll(mentions.facts().knownRules().settings().keySet());
    rules = new Table("rule", List.of(), known, "the goal \"explain\" lists all rules");
    fuses = StateNames.fuses(tables);
    loads =
        new Table(
            "load or coil",
            List.of(),
            tables.everyElement(StateNames::isLoad),
            "name an element of kind \"load\" or \"coil\" as \"device.element\"");
    states =
        tables.states.ids().isEmpty()
            ? new Table(
                "state",
                tables.states.sections(),
                Set.of(AS_DRAWN),
                "define it under \"states\"; without states the only one is \"as drawn\"")
            : tables.states;
    circuits = new Table("circuit", List.of("wires"), tables.circuits(), "correct the name");
  }

  void all() {
    mentions.facts().harness().limits().values().forEach(this::limits);
    mentions.facts().harness().waivers().values().forEach(this::waiver);
    mentions.facts().harness().expectations().values().forEach(this::expectation);
  }

  private void rule(Holder by, @Nullable String rule, String... path) {
    if (rule != null && rules.ids().isEmpty()) {
      mentions.unjudged(by, RULES);
    } else {
      mentions.id(by, rules, rule, path);
    }
  }

  private void limits(RuleLimits limits) {
    Holder by = new Holder(Subject.of("limits", limits.rule()), "\"limits\"", List.of());
    rule(by, limits.rule());
    Map<String, KnownRules.Range> ranges =
        mentions.facts().knownRules().settings().get(limits.rule());
    if (ranges != null) {
      settings(by, limits.rule(), ranges, limits.settings());
    }
    limits
        .places()
        .forEach(
            (place, there) -> {
              places.place(by, place, "places", place);
              if (ranges != null) {
                settings(by, limits.rule(), ranges, there.settings(), "places", place);
              }
            });
  }

  private void settings(
      Holder by,
      String rule,
      Map<String, KnownRules.Range> ranges,
      Map<String, Object> given,
      String... path) {
    Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
    names.addAll(ranges.keySet());
    given.forEach(
        (name, value) -> {
          String[] at = Arrays.copyOf(path, path.length + 1);
          at[path.length] = name;
          mentions.id(by, Table.closed("setting of " + rule, names), name, at);
          KnownRules.Range range = ranges.get(name);
          if (range != null) {
            value(by, rule, name, value, range, at);
          }
        });
  }

  private void value(
      Holder by, String rule, String name, Object value, KnownRules.Range range, String... path) {
    boolean inRange =
        value instanceof Number number
            && number.doubleValue() >= range.least()
            && number.doubleValue() <= range.greatest();
    if (!inRange) {
      String unit = range.unit().isEmpty() ? "" : " " + range.unit();
      String shown = value instanceof Number number ? plain(number.doubleValue()) : "no number";
      mentions.wrong(
          by,
          String.join(" ", path),
          "\"limits\" give "
              + rule
              + " the "
              + name
              + " "
              + shown
              + ", which is not from "
              + plain(range.least())
              + " to "
              + plain(range.greatest())
              + unit,
          "write a number from " + plain(range.least()) + " to " + plain(range.greatest()),
          path);
    }
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : BigDecimal.valueOf(value).toPlainString();
  }

  private void waiver(Waiver waiver) {
    Holder by = Holder.of(Subject.of("waivers", waiver.id()));
    rule(by, waiver.rule(), "rule");
    if (waiver.at() != null) {
      places.place(by, waiver.at(), "at");
    }
    mentions.id(by, states, waiver.state(), "state");
  }

  private void expectation(Expectation expectation) {
    Holder by = Holder.of(Subject.of("expectations", expectation.id()));
    Ref at = expectation.at();
    if (at != null && at.member() != null) {
      StateNames.lookUp(mentions, tables, by, loads, at, "at");
    } else if (at != null) {
      contact(by, at, "at");
    }
    for (int i = 0; i < expectation.points().size(); i++) {
      contact(by, expectation.points().get(i), "points", Integer.toString(i));
    }
    mentions.id(by, states, expectation.in(), "in");
    if (expectation.fuse() != null) {
      StateNames.lookUp(mentions, tables, by, fuses, expectation.fuse(), "fuse");
    }
    String lists = expectation.byCircuit() ? "circuits" : "wires";
    list(by, expectation.first(), lists, "0");
    list(by, expectation.second(), lists, "1");
    mentions.id(by, tables.looms, expectation.loom(), "loom");
  }

  private void list(Holder by, List<String> names, String field, String which) {
    Table table = field.equals("circuits") ? circuits : tables.wires;
    for (int i = 0; i < names.size(); i++) {
      mentions.id(by, table, names.get(i), field, which, Integer.toString(i));
    }
  }

  /** A cavity, a pin (one that no wire reaches too) or a splice. */
  private void contact(Holder by, Ref ref, String... path) {
    String owner = ref.owner();
    if (mentions.facts().wiring().pointOf(ref).isPresent()) {
      mentions.right(by);
    } else if (!tables.owners.ids().contains(owner)) {
      mentions.id(by, tables.owners, owner, path);
    } else if (tables.isMisread(owner) || mentions.facts().misread().at("connectors", owner)) {
      mentions.unjudged(by, Mentions.MISREAD);
    } else if (mentions.facts().wiring().resolve(ref) instanceof Resolution.PinUnknown unknown) {
      pinUnknown(by, unknown, path);
    } else {
      mentions.wrong(
          by,
          String.join(" ", path),
          by.words() + " names " + ref.text() + ", which is no contact",
          contactAdvice(owner),
          path);
    }
  }

  private void pinUnknown(Holder by, Resolution.PinUnknown unknown, String... path) {
    boolean pin = unknown.kind() == org.tugtest.network.Point.Kind.PIN;
    Table table =
        pin
            ? Table.closed(
                "pin of " + unknown.owner(), mentions.facts().wiring().pinsOf(unknown.owner()))
            : Table.closed(
                "cavity of " + unknown.owner(),
                mentions.facts().wiring().cavitiesOf(unknown.owner()));
    mentions.id(by, table, unknown.pin(), path);
  }

  private String contactAdvice(String owner) {
    if (tables.splices.ids().contains(owner)) {
      return "write \"" + owner + "\"";
    }
    DeviceType type = tables.typeOf(owner);
    return "write \""
        + owner
        + ":\" and one of its "
        + (type == null ? "cavities" : "pins, or \"" + owner + ".\" and one of its loads");
  }
}
