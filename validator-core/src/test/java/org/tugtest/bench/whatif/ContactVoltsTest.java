package org.tugtest.bench.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.report.html.SampleCar;
import org.tugtest.report.sheets.track.GeneratedLoom;
import org.tugtest.rule.Judged;
import org.tugtest.solve.Branch;
import org.tugtest.solve.Circuit;
import org.tugtest.solve.Solution;
import org.tugtest.solve.Solver;

class ContactVoltsTest {
  private static final String LAMP =
      """
      {"format": 1,
       "devices": {
         "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6}}},
         "SW": {"elements": {"contact": {"kind": "contact", "a": "1", "b": "2"}}},
         "K1": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
                             "contact": {"kind": "contact", "a": "30", "b": "87", "coil": "coil", "rest": "open"},
                             "break": {"kind": "contact", "a": "30", "b": "87a", "coil": "coil", "rest": "closed"}}},
         "L": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "ohms": 10}}},
         "M": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "ohms": 10}}}},
       "wires": {
         "W1": {"from": "BAT:+", "to": "SW:1", "areaMm2": 1, "cutMm": 200},
         "W2": {"from": "SW:2", "to": "K1:86", "areaMm2": 1, "cutMm": 200},
         "W3": {"from": "K1:85", "to": "BAT:-", "areaMm2": 1, "cutMm": 200},
         "W4": {"from": "BAT:+", "to": "K1:30", "areaMm2": 1, "cutMm": 200},
         "W5": {"from": "K1:87", "to": "L:1", "areaMm2": 1, "cutMm": 200},
         "W6": {"from": "L:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 200},
         "W7": {"from": "K1:87a", "to": "M:1", "areaMm2": 1, "cutMm": 200},
         "W8": {"from": "M:2", "to": "BAT:-", "areaMm2": 1, "cutMm": 200}},
       "states": {"on": {"set": {"SW": "on"}, "on": ["L", "K1.coil"]}}}
      """;

  private static Map<String, ContactVolts.Reads> reads(Facts facts, String wire) {
    OperatingPoint state = facts.operating().all().get(0);
    Edge edge =
        facts.network().edges().stream()
            .filter(one -> one.text().equals(wire))
            .findFirst()
            .orElseThrow();
    Fault fault = new Fault(Fault.Kind.WIRE_OPEN, edge.subject(), "", List.of(edge));
    List<ContactVolts.Reads> reads = new ContactVolts(facts.network(), state).after(fault);
    Map<String, ContactVolts.Reads> named = new TreeMap<>();
    for (Point point : facts.network().points()) {
      named.put(point.text(), reads.get(facts.network().index(point)));
    }
    return named;
  }

  private static Facts lamp() {
    return Judged.facts(Map.of(Judged.ROOT, LAMP));
  }

  @Test
  void aBrokenFeedReadsNothingBehindTheBreak() {
    assertThat(reads(lamp(), "W5"))
        .containsEntry("K1:87", ContactVolts.Reads.VOLTS)
        .containsEntry("L:1", ContactVolts.Reads.NOTHING)
        .containsEntry("L:2", ContactVolts.Reads.NOTHING);
  }

  @Test
  void aBrokenReturnIsLiftedThroughItsLoad() {
    assertThat(reads(lamp(), "W6"))
        .containsEntry("L:1", ContactVolts.Reads.VOLTS)
        .containsEntry("L:2", ContactVolts.Reads.VOLTS)
        .containsEntry("BAT:-", ContactVolts.Reads.NOTHING);
  }

  @Test
  void aRelayLetsGoWhenItsCoilLosesASide() {
    for (String wire : List.of("W2", "W3")) {
      assertThat(reads(lamp(), wire))
          .as(wire)
          .containsEntry("K1:87", ContactVolts.Reads.NOTHING)
          .containsEntry("M:1", ContactVolts.Reads.VOLTS);
    }
    assertThat(reads(lamp(), "W3")).containsEntry("K1:85", ContactVolts.Reads.VOLTS);
  }

  @Test
  void whatNothingJoinsReadsNothing() {
    assertThat(reads(lamp(), "W7")).containsEntry("M:1", ContactVolts.Reads.NOTHING);
  }

  /** Every seventh fault of the sample in every state, against the solver with the fault in it. */
  @Test
  void agreesWithTheSolverOnTheSample() {
    Tally tally = new Tally();
    tally.add(SampleCar.facts(), 7);
    assertThat(tally.wrong).as("%d judged, %d unsure", tally.judged, tally.unsure).isEmpty();
    assertThat(tally.unsure).isLessThan(tally.judged / 10);
  }

  @Test
  void agreesWithTheSolverOnGeneratedLooms() {
    Tally tally = new Tally();
    for (int seed = 1; seed <= 150; seed++) {
      tally.add(Judged.facts(Map.of(Judged.ROOT, GeneratedLoom.of(new Random(seed)))), 1);
    }
    assertThat(tally.wrong).as("%d judged, %d unsure", tally.judged, tally.unsure).isEmpty();
    assertThat(tally.unsure).isLessThan(tally.judged / 3);
  }

  /** What was held against the solver. */
  private static final class Tally {
    private final List<String> wrong = new ArrayList<>();
    private int judged;
    private int unsure;

    void add(Facts facts, int step) {
      double half = facts.harness().defaults().nominalV() / 2;
      List<Fault> faults = Faults.of(facts);
      int number = 0;
      for (OperatingPoint state : facts.operating().all()) {
        ContactVolts volts = new ContactVolts(facts.network(), state);
        for (int i = number++ % step; i < faults.size(); i += step) {
          add(facts.network(), state, volts, faults.get(i), half);
        }
      }
    }

    private void add(
        Network network, OperatingPoint state, ContactVolts volts, Fault fault, double half) {
      Solution solved = solve(network, state, fault);
      List<ContactVolts.Reads> reads = volts.after(fault);
      int lead = network.index(volts.blackOn().orElseThrow());
      OptionalDouble ground = solved.volts(lead);
      for (int point = 0; point < reads.size(); point++) {
        if (reads.get(point) == ContactVolts.Reads.UNSURE || ground.isEmpty()) {
          unsure++;
          continue;
        }
        boolean same = solved.oneIsland(point, lead) && solved.volts(point).isPresent();
        double is = same ? solved.volts(point).orElse(0) - ground.getAsDouble() : 0;
        judged++;
        if ((is > half) != (reads.get(point) == ContactVolts.Reads.VOLTS)) {
          wrong.add(
              fault.text()
                  + " in "
                  + state.state()
                  + ": "
                  + network.points().get(point)
                  + " "
                  + reads.get(point)
                  + " is "
                  + is);
        }
      }
    }
  }

  private static Solution solve(Network network, OperatingPoint state, Fault fault) {
    Circuit circuit = state.solution().circuit();
    List<Branch> branches = new ArrayList<>(circuit.branches());
    for (Edge edge : fault.edges()) {
      int number = network.number(edge);
      Branch old = branches.get(number);
      branches.set(
          number,
          fault.kind().closes()
              ? new Branch.Resistor(old.a(), old.b(), 0.001)
              : new Branch.Open(old.a(), old.b()));
    }
    return Solver.solve(new Circuit(circuit.nodes(), branches), state.solution().allPulled());
  }
}
