package org.tugtest.rule.load;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Measured;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Ledger;
import org.tugtest.solve.Trouble;

/** Coils that a state wants and feeds, and that stay released since too little arrives. */
final class CoilsUnpulled {
  private static final double TENTHS_OF_NOMINAL = 6;
  private static final double MILLION = 1e6;
  private final Facts facts;
  private final Ledger ledger;

  CoilsUnpulled(Facts facts, Ledger ledger) {
    this.facts = facts;
    this.ledger = ledger;
  }

  void judge() {
    List<Live> states = Live.all(facts);
    for (Edge edge : Coils.of(facts)) {
      if (edge instanceof Edge.OfElement coil && coil.element() instanceof Element.Coil its) {
        List<Live> fed =
            states.stream()
                .filter(live -> live.state().wanted(coil) && live.fed(coil) && live.returns(coil))
                .filter(live -> !chatters(live, coil))
                .toList();
        if (!fed.isEmpty()) {
          judge(coil, its, fed);
        }
      }
    }
  }

  private static boolean chatters(Live live, Edge.OfElement coil) {
    return live.state().troubles().stream()
        .anyMatch(
            trouble ->
                trouble instanceof Trouble.Chatter && live.state().edges(trouble).contains(coil));
  }

  private static double pullInV(Facts facts, Element.Coil coil) {
    Double given = coil.pullInV();
    return given == null ? TENTHS_OF_NOMINAL * facts.harness().defaults().nominalV() / 10 : given;
  }

  /** Whether a coil that is fed in a state stays released, and that is a finding. */
  static boolean staysReleased(Facts facts, Live live, Edge.OfElement coil) {
    return coil.element() instanceof Element.Coil its
        && !live.state().pulled(coil)
        && volts(live, coil) < pullInV(facts, its)
        && !chatters(live, coil);
  }

  /**
   * The identity of the finding on a coil that stays released though it is fed, when it is the one
   * that rests in two ways: its volts lie between those at which it pulls and lets go.
   */
  static Optional<String> of(Facts facts, OperatingPoint state, List<Edge> coils) {
    if (coils.size() != 1 || !(coils.get(0) instanceof Edge.OfElement coil)) {
      return Optional.empty();
    }
    return Live.all(facts).stream()
        .filter(live -> live.state().equals(state) && state.wanted(coil))
        .filter(live -> live.fed(coil) && live.returns(coil))
        .filter(live -> staysReleased(facts, live, coil))
        .map(live -> VoltsUnderLeast.ID + "(" + coil.subject().place() + ")")
        .findFirst();
  }

  private void judge(Edge.OfElement coil, Element.Coil its, List<Live> fed) {
    double pullInV = pullInV(facts, its);
    List<Live> released =
        fed.stream()
            .filter(live -> staysReleased(facts, live, coil))
            .sorted((one, other) -> Double.compare(volts(one, coil), volts(other, coil)))
            .toList();
    if (released.isEmpty()) {
      ledger.fine();
      return;
    }
    Live worst = released.get(0);
    Measured measured = Measured.under(volts(worst, coil), pullInV, "V");
    Feed feed = Feed.of(facts, worst.state(), coil).orElse(null);
    Basis basis = its.pullInV() == null ? Basis.COMMON_PRACTICE : Basis.GIVEN;
    Finding.Draft draft =
        Finding.on(coil.subject())
            .message(
                "coil "
                    + coil.text()
                    + " stays released in state "
                    + worst.state().state()
                    + ": it gets "
                    + measured.actualShown()
                    + " V and pulls from "
                    + measured.limitShown()
                    + " V on"
                    + (its.pullInV() == null ? " (0.6 of nominal)" : ""))
            .remedy("lose less on the way, or fit a relay whose coil is made for these volts")
            .measured(measured)
            .state(worst.state().state())
            .cause(SupplyCollapses.causeOfFewVolts(facts, worst, coil).orElse(null))
            .basis(feed == null ? basis : basis.weaker(feed.basis()));
    if (feed != null) {
      Way.worst(feed.supply(), feed.back()).forEach(draft::detail);
    }
    released.stream()
        .skip(1)
        .forEach(
            live ->
                draft.detail(
                    String.format(
                        Locale.ROOT,
                        "also in state %s: %s",
                        live.state().state(),
                        Users.volts(volts(live, coil)))));
    ledger.finding(draft);
  }

  /** To a millionth, so that dust of the computing does not choose the worst state. */
  private static double volts(Live live, Edge.OfElement coil) {
    return Math.rint(Math.abs(live.state().across(coil)) * MILLION) / MILLION;
  }
}
