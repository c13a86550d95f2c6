package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.network.Edge;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

/** A conductor gets hotter in a lasting state than its insulation stands. */
public final class WireOverheats implements Rule {
  private static final String KELVIN = "kelvin";
  private static final RuleInfo INFO =
      RuleInfo.of("wire-overheats", Heading.LOAD, Level.ERROR)
          .summary("a wire gets hotter than its insulation lasts at")
          .subjects("wires between two points")
          .looksFor(
              """
              Wires whose conductor comes to more than its class in a lasting state, or to no steady
              temperature under 250 °C, in the hottest piece of their way: with all that
              lies beside them at its own solved current, in the air of the zone, inside the
              coverings there, and at their free ends alone. Wires that are over their class in one
              section together are one finding; it names what makes most of the heat. A wire that
              carries nothing counts as warm as the hottest beside it. Loads with a duty count by
              their root mean square. What only a covering makes too hot is a warning, and so is a
              section with more than twenty hot wires. A second model, a network of heat through the
              packed section, is asked wherever it gets 15 K over the air: where the two differ by
              more than the setting and the second one is over a class, that is a warning; where
              neither is, a note. Brief states are left out, and so is air that is over the class by
              itself, which is material-too-cool.
              """)
          .why(
              """
              Insulation held over its class grows brittle and cracks; the wires beside it, which
              carry little themselves, go with it.
              """)
          .remedy(
              """
              Take a larger gauge for the wire that makes most of the heat, part the bundle, or take
              wires of a higher class.
              """)
          .basis(
              """
              The shrunk bundle: within 4 % of the bundle chart of MIL-W-5088L in all of its 186
              readings; over 20 hot wires the chart ends, so that is at most a warning. Coverings: an
              annulus of still air and radiation, which no published figure checks; at most a
              warning. 15 K between the models: derived, the two differ by up to 29 K in bundles of
              unlike wires.
              """)
          .causes(Cause.WIRE_TOO_WARM)
          .follows(
              Cause.VOLTS_WRONG,
              Cause.SUPPLY_SHORTED,
              Cause.ON_WAY_OF_SHORT,
              Cause.WIRE_UNDER_LOAD,
              Cause.WIRE_UNDER_FUSE,
              Cause.WIRE_BURNS,
              Cause.WIRE_TOO_WARM)
          .setting(new Setting(KELVIN, 15, 1, 200, "K", "between the two models; derived"))
          .failing(example("0.5"))
          .passing(example("4"))
          .build();

  private static String example(String area) {
    return Example.filled(
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"at": "a", "elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FAN": {"at": "b", "elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 14}}}},
         "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900}}},
         "wires": {"W1": {"from": "BAT:+", "to": "FAN:1", "areaMm2": %s},
                   "W2": {"from": "FAN:2", "to": "BAT:-", "areaMm2": %s}}}
        """,
        area, area);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    HotWires wires = new HotWires(facts);
    Map<Integer, List<HotWires.Hot>> hot = new LinkedHashMap<>();
    Set<String> fine = new HashSet<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfWire wire) {
        String missing = wires.missing(wire);
        HotWires.Hot worst = missing.isEmpty() ? wires.worst(wire).orElse(null) : null;
        if (worst != null && worst.overClass()) {
          if (!ledger.switchedOff(wire.subject())) {
            int section = worst.hottest().stretch().section();
            hot.computeIfAbsent(section, none -> new ArrayList<>()).add(worst);
          }
        } else if (!missing.isEmpty()) {
          ledger.notJudged(wire.subject(), missing);
        } else {
          String unsure = wires.unsure(wire);
          if (unsure.isEmpty()) {
            fine.add(wire.wire().id());
          } else {
            ledger.notJudged(wire.subject(), unsure);
          }
        }
      }
    }
    Opinions opinions = new Opinions(facts, settings.number(KELVIN));
    HotFinding findings = new HotFinding(facts, opinions);
    hot.forEach(
        (section, members) -> ledger.finding(findings.of(members), HotFinding.subjects(members)));
    for (Opinions.Differing differing : opinions.overClass(hot.keySet())) {
      List<Subject> subjects = differing.wires().stream().map(Subject::wire).toList();
      if (subjects.stream().noneMatch(ledger::switchedOff)) {
        fine.removeAll(differing.wires());
        ledger.finding(differing.warning(), subjects);
      }
    }
    List<Opinions.Differing> rest = opinions.underClass(hot.keySet());
    if (!rest.isEmpty()) {
      Finding.Draft note = Opinions.note(rest);
      List<Subject> subjects =
          rest.stream().map(each -> Subject.wire(each.wires().get(0))).toList();
      rest.forEach(each -> fine.remove(each.wires().get(0)));
      ledger.finding(note, subjects);
    }
    ledger.fine(fine.size());
  }
}
