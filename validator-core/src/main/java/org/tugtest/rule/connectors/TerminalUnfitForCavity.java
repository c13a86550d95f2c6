package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.ContactSide;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Housing;
import org.tugtest.model.Terminal;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;

/** A terminal that does not go into its cavity or onto its pin. */
public final class TerminalUnfitForCavity implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("terminal-unfit-for-cavity", Heading.CONNECTORS, Level.ERROR)
          .summary("a terminal has another family or side than the cavity or pin it is meant for")
          .subjects("cavities and device pins with wires")
          .looksFor(
              """
              The terminal of a wired cavity (the one written for the cavity, else the first of
              the connector's or the housing's list that fits) has another family than the cavity,
              or is a pin in a socket housing or the other way round. On a device pin: the
              terminal written for the wire's end has another family than the pin, or the same
              side as the pin.
              """)
          .why(
              """
              It does not go in, or it goes in and does not lock: it backs out when the halves are
              pushed together, and the contact is open although every wire is in its place.
              """)
          .remedy("Name a terminal of the cavity's family and side, or correct the part's data.")
          .basis("Follows from the format: a terminal fits a cavity or pin of its own family.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"h1": {"side": "socket", "family": "t2.8", "rows": [["1"]],
                                             "terminals": ["s63"]}},
                         "terminals": {"s63": {"family": "b6.3", "side": "socket",
                                               "areaMinMm2": 0.5, "areaMaxMm2": 2.5}}},
               "connectors": {"R1": {"housing": "h1"}},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1", "areaMm2": 1}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"h1": {"side": "socket", "family": "t2.8", "rows": [["1"]],
                                             "terminals": ["s28"]}},
                         "terminals": {"s28": {"family": "t2.8", "side": "socket",
                                               "areaMinMm2": 0.5, "areaMaxMm2": 2.5}}},
               "connectors": {"R1": {"housing": "h1"}},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1", "areaMm2": 1}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    judgeCavities(facts, ledger);
    for (Map.Entry<Point, List<WireEnd>> entry : facts.wiring().ends().entrySet()) {
      if (entry.getKey().kind() == Point.Kind.PIN) {
        entry.getValue().forEach(end -> judgePin(facts, entry.getKey(), end, ledger));
      }
    }
  }

  private static void judgeCavities(Facts facts, Ledger ledger) {
    Map<String, Map<String, List<String>>> bad = new TreeMap<>(NaturalOrder.NATURAL);
    for (Point cavity : Cavities.wired(facts)) {
      Housing housing = facts.wiring().mating().housingOf(cavity.owner()).orElse(null);
      Fitting.Choice<Terminal> choice = facts.fitting().terminal(cavity);
      Terminal terminal = choice.part();
      if (housing == null) {
        ledger.notJudged(cavity.subject(), "the connector's housing is not known");
      } else if (terminal == null) {
        ledger.notJudged(
            cavity.subject(),
            choice.named().isEmpty() ? "no terminal is named" : "the terminal is not known");
      } else if (Fitting.fitsCavity(terminal, housing, cavity.name())) {
        ledger.fine();
      } else {
        bad.computeIfAbsent(cavity.owner(), id -> new TreeMap<>(NaturalOrder.NATURAL))
            .computeIfAbsent(terminal.id(), id -> new ArrayList<>())
            .add(cavity.name());
      }
    }
    bad.forEach(
        (connector, terminals) ->
            terminals.forEach(
                (terminal, cavities) ->
                    ledger.finding(inConnector(facts, connector, terminal, cavities))));
  }

  private static Finding.Draft inConnector(
      Facts facts, String connector, String terminalId, List<String> cavities) {
    Housing housing = facts.wiring().mating().housingOf(connector).orElseThrow();
    Terminal terminal = facts.harness().parts().terminals().get(terminalId);
    if (terminal == null) {
      throw new IllegalStateException("terminal " + terminalId + " was known a moment ago");
    }
    String what = describe(terminal.family(), terminal.side());
    String wanted = describe(housing.familyOf(cavities.get(0)), housing.side());
    Finding.Draft draft =
        Finding.on(Subject.connector(connector))
            .kind(terminalId)
            .message(
                "terminal "
                    + terminalId
                    + " ("
                    + what
                    + ") does not fit "
                    + Cavities.listed(cavities)
                    + " of "
                    + connector
                    + " (housing "
                    + housing.id()
                    + ": "
                    + wanted
                    + ")")
            .remedy("name a terminal that is " + wanted + " for " + connector);
    cavities.forEach(cavity -> draft.and(Subject.cavity(connector, cavity)));
    return draft;
  }

  private static void judgePin(Facts facts, Point pin, WireEnd end, Ledger ledger) {
    String id = end.terminal();
    Terminal terminal = id == null ? null : facts.harness().parts().terminals().get(id);
    DeviceType.Pin listed = listed(facts, pin);
    if (terminal == null) {
      ledger.notJudged(
          Subject.wire(end.wire().id()),
          id == null ? "no terminal is written for its end" : "the terminal is not known");
    } else if (listed == null || (listed.family() == null && listed.side() == null)) {
      ledger.notJudged(pin.subject(), "the device gives no family for its pin");
    } else if (differ(terminal.family(), listed.family())
        || (listed.side() != null && listed.side() == terminal.side())) {
      ledger.finding(
          Finding.on(Subject.wire(end.wire().id()), pin.subject())
              .kind(end.field())
              .message(
                  "terminal "
                      + terminal.id()
                      + " ("
                      + describe(terminal.family(), terminal.side())
                      + ") of wire "
                      + end.wire().id()
                      + " does not fit "
                      + pin.text()
                      + " ("
                      + describe(listed.family(), listed.side())
                      + ")")
              .remedy("write a terminal of the pin's family as \"" + end.field() + "Terminal\"")
              .at(facts.places().of("wires/" + end.wire().id(), end.field() + "Terminal"))
              .at(facts.places().of(pin.subject().place())));
    } else {
      ledger.fine();
    }
  }

  private static DeviceType.@Nullable Pin listed(Facts facts, Point pin) {
    Device device = facts.harness().devices().get(pin.owner());
    DeviceType type = device == null ? null : facts.harness().typeOf(device);
    return type == null ? null : type.pins().get(pin.name());
  }

  private static boolean differ(@Nullable String left, @Nullable String right) {
    return left != null && right != null && !left.equals(right);
  }

  private static String describe(@Nullable String family, @Nullable ContactSide side) {
    String words = (family == null ? "" : family + " ") + (side == null ? "" : side.word());
    return words.isBlank() ? "no family given" : words.strip();
  }
}
