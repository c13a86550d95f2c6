package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

/** Power currents move a sensor's reference away from that of the unit that reads it. */
public final class ReferenceShifted implements Rule {
  private static final String MILLIVOLT = "millivolt";
  private static final RuleInfo INFO =
      RuleInfo.of("reference-shifted", Heading.LOAD, Level.WARNING)
          .summary("a signal's reference stands at other volts at the sensor than at the unit")
          .subjects("analog and pulse signals between two units that both give a reference")
          .looksFor(
              """
              Volts between the reference pins of two units whose analog or pulse signals are joined,
              in every lasting state, over 50 millivolt.
              """)
          .why(
              """
              The unit reads the signal against its own reference: every millivolt between the two
              is an error of measurement that comes and goes with a load.
              """)
          .remedy(
              """
              Bring the sensor's reference to the unit's own sensor ground by a wire that carries no
              other current.
              """)
          .basis("50 mV, one per cent of a 5 V sensor's span: common practice.")
          .setting(
              new Setting(
                  MILLIVOLT, 50, 0.1, 5000, "mV", "between the two references (common practice)"))
          .failing(
              example(
                  "BAT:-",
                  "\"W5\": {\"from\": \"S1\", \"to\": \"SENSOR:2\", \"areaMm2\": 1, \"cutMm\":"
                      + " 100}"))
          .passing(
              example(
                  "BAT:-",
                  "\"W5\": {\"from\": \"ECU:2\", \"to\": \"SENSOR:2\", \"areaMm2\": 1, \"cutMm\":"
                      + " 100}"))
          .build();

  private static String example(String minus, String reference) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "ECU": {"elements": {"temp": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"},
                                "bar": {"kind": "link", "a": "2", "b": "31"}}},
           "SENSOR": {"elements": {"out": {"kind": "signal", "pin": "1", "type": "analog", "reference": "2"}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 10}}}},
         "splices": {"S1": {}},
         "wires": {"W1": {"from": "BAT:+", "to": "FAN:1", "areaMm2": 1, "cutMm": 1000},
                   "W2": {"from": "FAN:2", "to": "S1", "areaMm2": 1, "cutMm": 100},
                   "W3": {"from": "S1", "to": "%s", "areaMm2": 1, "cutMm": 1000},
                   "W4": {"from": "ECU:31", "to": "BAT:-", "areaMm2": 1, "cutMm": 100}, %s,
                   "W6": {"from": "ECU:1", "to": "SENSOR:1", "areaMm2": 1, "cutMm": 100}}}
        """,
        minus, reference);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Point, List<Elements.In<Element.Signal>>> joined = new LinkedHashMap<>();
    for (Elements.In<Element.Signal> signal : Elements.of(facts, Element.Signal.class)) {
      Element.Signal its = signal.element();
      boolean measured =
          its.type() == Element.Signal.Type.ANALOG || its.type() == Element.Signal.Type.PULSE;
      if (measured && its.reference() != null) {
        Elements.net(facts, signal.device(), its.pin())
            .ifPresent(net -> joined.computeIfAbsent(net, key -> new ArrayList<>()).add(signal));
      }
    }
    for (List<Elements.In<Element.Signal>> signals : joined.values()) {
      for (int i = 1; i < signals.size(); i++) {
        judge(facts, settings, signals.get(0), signals.get(i), ledger);
      }
    }
  }

  private static void judge(
      Facts facts,
      Settings settings,
      Elements.In<Element.Signal> one,
      Elements.In<Element.Signal> other,
      Ledger ledger) {
    double most = 0;
    OperatingPoint worst = null;
    boolean live = false;
    for (OperatingPoint state : facts.operating().all()) {
      OptionalDouble here = state.volts(reference(one));
      OptionalDouble there = state.volts(reference(other));
      if (!state.brief() && here.isPresent() && there.isPresent()) {
        live = true;
        double shift = Math.abs(here.getAsDouble() - there.getAsDouble());
        if (shift > most) {
          most = shift;
          worst = state;
        }
      }
    }
    Subject subject = one.subject();
    double limit = settings.number(MILLIVOLT, subject);
    if (!live) {
      ledger.notJudged(subject, "its references are on no supply in any lasting state");
    } else if (worst == null || most * 1000 <= limit) {
      ledger.fine();
    } else {
      Measured measured = Measured.over(most * 1000, limit, "mV");
      ledger.finding(
          Finding.on(subject, other.subject())
              .message(
                  "the references "
                      + reference(one).text()
                      + " and "
                      + reference(other).text()
                      + " of one signal stand "
                      + measured.actualShown()
                      + " mV apart in state "
                      + worst.state()
                      + "; at most "
                      + measured.limitShown()
                      + " mV")
              .remedy("join the two by a wire that carries no other current")
              .measured(measured)
              .state(worst.state())
              .basis(Basis.COMMON_PRACTICE));
    }
  }

  private static Point reference(Elements.In<Element.Signal> signal) {
    return Point.pin(signal.device(), String.valueOf(signal.element().reference()));
  }
}
