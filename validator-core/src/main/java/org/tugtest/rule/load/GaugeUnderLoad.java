package org.tugtest.rule.load;

import java.util.Locale;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.heat.Ampacity;
import org.tugtest.model.WirePart;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.LastingAmps;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.OverClassByAir;
import org.tugtest.rule.PartChoice;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A wire carries more for long than it stands where it lies. */
public final class GaugeUnderLoad implements Rule {
  private static final double ROUNDING = 100;
  private static final RuleInfo INFO =
      RuleInfo.of("gauge-under-load", Heading.LOAD, Level.ERROR)
          .summary("a wire carries more than it stands")
          .subjects("wires between two points")
          .looksFor(
              """
              Wires whose solved current in a lasting state is over what they stand in the worst
              piece of their way: the current at which the conductor becomes as hot as the lowest
              class there, in the air of the zone and inside the coverings, beside its neighbours at
              their solved currents in the state that leaves least; and no more than its maker allows
              when the part gives a limit.
              Where not all currents beside it are known, the published factor for neighbours used to
              20 % bounds it too; where their currents alone are too much, which wire-overheats says, it
              is held against the factor for all loaded alike. Loads with a duty count by their root
              mean square. Brief states are left out. A wire without a size, and one that seems fine
              but that feeds a load of unknown draw, are not judged.
              """)
          .why(
              """
              Insulation that is held over its class grows brittle, cracks at the next bend and
              shorts, and the wires beside it are cooked with it.
              """)
          .remedy(
              """
              Take the next larger wire, fewer neighbours or a cooler way; the finding names the next
              stocked wire part that would do.
              A part it names stands what flows and what the fuses let through there, and suits the
              terminals, seals and splices at both ends. Where all rules run, on a harness of up to
              700 wires, all of them judge the harness with that part, for a dozen trials at the
              most, and the finding says what came of it.
              """)
          .basis(
              """
              The shrunk bundle and published bundle factors, as in wire-overheats; a factor from
              memory, a covering, or more than twenty hot wires make at most a warning.
              """)
          .causes(Cause.WIRE_UNDER_LOAD)
          .follows(
              Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED, Cause.ON_WAY_OF_SHORT, Cause.WIRE_UNDER_LOAD)
          .failing(example("0.35"))
          .passing(example("4"))
          .build();

  private static String example(String area) {
    return Example.filled(
        """
        {"format": 1,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12}}},
           "FAN": {"elements": {"motor": {"kind": "load", "a": "1", "b": "2", "amps": 18}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "FAN:1", "areaMm2": %s, "cutMm": 500},
                   "W2": {"from": "FAN:2", "to": "BAT:-", "areaMm2": %s, "cutMm": 500}}}
        """,
        area, area);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfWire wire) {
        Optional<Ampacity> stands = facts.ampacity().of(wire.wire());
        Optional<LastingAmps> flow = LastingAmps.of(facts, edge);
        if (stands.isEmpty()) {
          ledger.notJudged(edge.subject(), "its size is not known");
        } else if (flow.isEmpty()) {
          ledger.notJudged(edge.subject(), LastingAmps.NO_STATE);
        } else if (OverClassByAir.of(facts, wire.wire(), stands.get())) {
          ledger.notJudged(edge.subject(), OverClassByAir.WHY);
        } else {
          judge(facts, wire, stands.get(), flow.get(), ledger);
        }
      }
    }
  }

  private static void judge(
      Facts facts, Edge.OfWire wire, Ampacity stands, LastingAmps flow, Ledger ledger) {
    OperatingPoint worst = flow.worst();
    double amps = flow.amps();
    if (amps <= stands.amps()) {
      if (flow.known()) {
        ledger.fine();
      } else {
        ledger.notJudged(wire.subject(), LastingAmps.NOT_KNOWN);
      }
      return;
    }
    boolean sure = amps > stands.sureAmps();
    double limit = down(sure ? stands.sureAmps() : stands.amps());
    Basis basis = sure ? stands.sureBasis() : stands.basis();
    Measured measured = Measured.over(amps, limit, "A");
    Finding.Draft draft =
        Finding.on(wire.subject())
            .message(
                "wire "
                    + wire.text()
                    + " carries "
                    + measured.actualShown()
                    + " A in state "
                    + worst.state()
                    + "; it stands "
                    + measured.limitShown()
                    + " A "
                    + stands.how())
            .remedy(remedy(facts, wire, amps))
            .measured(measured)
            .state(worst.state())
            .basis(basis);
    flow.peak().ifPresent(draft::detail);
    flow.others(stands.amps()).forEach(draft::detail);
    ledger.finding(draft);
  }

  /** Down to a hundredth, so that the printed limit is never the greater one. */
  private static double down(double limit) {
    return Math.floor(limit * ROUNDING) / ROUNDING;
  }

  private static String remedy(Facts facts, Edge.OfWire wire, double amps) {
    PartChoice choice = new PartChoice(facts);
    WirePart enough = null;
    for (WirePart part : choice.larger(wire.wire())) {
      if (choice.stands(wire, part)) {
        boolean fits = choice.misfit(wire.wire(), part).isEmpty();
        enough = enough == null || fits ? part : enough;
        if (fits) {
          break;
        }
      }
    }
    if (enough == null) {
      return "take a larger gauge for "
          + wire.text()
          + ", a cooler way, or share the load over two wires";
    }
    double stands =
        facts.ampacity().inPlaceOf(wire.wire(), enough).map(Ampacity::amps).orElse(amps);
    return String.format(
        Locale.ROOT,
        "make %s of %s, which stands %.1f A there%s",
        wire.text(),
        enough.id(),
        down(stands),
        choice.costs(wire.wire(), enough));
  }
}
