package org.tugtest.rule.protection;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.heat.Ampacity;
import org.tugtest.heat.WireForm;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.protect.Exposure;
import org.tugtest.protect.Protection;
import org.tugtest.rule.LastingAmps;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.OverClassByAir;
import org.tugtest.rule.ReturnFault;
import org.tugtest.text.Series;

/** Holds what fuses let through a wire against what it stands; for feed and return alike. */
final class Gauge {
  private static final int NAMED = 4;

  /** So many fuses are subjects of a finding; hundreds of them would help nobody. */
  private static final int PARTIES = 12;

  private static final String NO_SIZE = "it gives no area";
  private static final String UNRATED = "a fuse before it has no known rating";
  private final Facts facts;
  private final Ledger ledger;
  private final BetterFit betterFit;

  Gauge(Facts facts, Ledger ledger) {
    this.facts = facts;
    this.ledger = ledger;
    this.betterFit = new BetterFit(facts);
  }

  /** Judges one wire of the feed side that has fuses before it. */
  void judgeFeed(Exposure exposure) {
    judge(exposure, amps -> Stress.ofOneFault(amps, exposure.cut()), null);
  }

  /** Judges one wire of the return side through which loads with fuses return. */
  void judgeReturn(ReturnFault fault) {
    Protection protection = facts.protection();
    judge(
        fault.exposure(),
        amps -> Stress.besideOthers(amps, fault.exposure().cut(), protection.ratings()),
        fault);
  }

  private static String faults(ReturnFault fault) {
    List<String> loads = fault.loads().stream().map(Edge.OfElement::text).toList();
    return (loads.size() == 1 ? "a fault in " : "faults in ")
        + Series.and(loads, NAMED)
        + " can send ";
  }

  private static String others(ReturnFault fault) {
    return fault.othersA() > 0 ? ", beside " + Figures.amps(fault.othersA()) + " of others" : "";
  }

  private void judge(
      Exposure exposure, DoubleFunction<Stress> stress, @Nullable ReturnFault fault) {
    Wire wire = exposure.wire().wire();
    Ampacity ampacity = facts.ampacity().of(wire).orElse(null);
    WireForm form = facts.ampacity().forms().of(wire).orElse(null);
    if (ampacity == null || form == null) {
      ledger.notJudged(exposure.wire().subject(), NO_SIZE);
    } else if (OverClassByAir.of(facts, wire, ampacity)) {
      ledger.notJudged(exposure.wire().subject(), OverClassByAir.WHY);
    } else if (exposure.leastA() > ampacity.amps()) {
      double most = exposure.mostA();
      Stress here = stress.apply(Double.isFinite(most) ? most : exposure.leastA());
      ledger.finding(tooThin(wire, ampacity, form, here, fault));
    } else if (exposure.mostA() > ampacity.amps()) {
      ledger.notJudged(
          exposure.wire().subject(),
          fault == null || fault.drawKnown() ? UNRATED : LastingAmps.NOT_KNOWN);
    } else if (exposure.mostA() * Stress.HELD <= ampacity.amps() && !ampacity.byMaker()) {
      ledger.fine();
    } else {
      judgeHeld(wire, ampacity, form, stress.apply(exposure.mostA()), fault);
    }
  }

  private void judgeHeld(
      Wire wire, Ampacity ampacity, WireForm form, Stress stress, @Nullable ReturnFault fault) {
    Overload overload = Overload.of(facts.ampacity(), wire, null, stress);
    if (overload.tooHot(form.maxC())) {
      ledger.finding(tooHot(wire, ampacity, form, overload, fault));
    } else {
      ledger.fine();
    }
  }

  private Finding.Draft tooThin(
      Wire wire, Ampacity ampacity, WireForm form, Stress stress, @Nullable ReturnFault fault) {
    boolean sure = stress.amps() > ampacity.sureAmps();
    double stands = Figures.cutOff(sure ? ampacity.sureAmps() : ampacity.amps());
    Measured measured = Measured.over(stress.amps(), stands, "A");
    String fuses = Figures.fuses(stress.cut(), facts.protection().ratings());
    boolean one = stress.cut().size() == 1;
    String flow =
        fault == null
            ? fuses + (one ? " lets " : " let ") + measured.actualShown() + " A through"
            : faults(fault)
                + measured.actualShown()
                + " A through it, as "
                + fuses
                + (one ? " allows" : " allow")
                + others(fault);
    return draft(wire, ampacity, Overload.of(facts.ampacity(), wire, null, stress), form)
        .message("wire " + wire.id() + " stands " + measured.limitShown() + " A, but " + flow)
        .measured(measured)
        .basis(sure ? ampacity.sureBasis() : ampacity.basis());
  }

  private Finding.Draft tooHot(
      Wire wire, Ampacity ampacity, WireForm form, Overload overload, @Nullable ReturnFault fault) {
    OptionalDouble heldC = overload.heldC();
    String comes =
        heldC.isPresent()
            ? "comes to " + Math.round(heldC.getAsDouble()) + " °C"
            : "does not come to rest under 250 °C";
    Finding.Draft draft =
        draft(wire, ampacity, overload, form)
            .kind("held")
            .level(Level.WARNING)
            .message(
                "wire "
                    + wire.id()
                    + " "
                    + comes
                    + " at "
                    + Figures.amps(overload.stress().heldA())
                    + ", which "
                    + Figures.fuses(overload.stress().cut(), facts.protection().ratings())
                    + " may hold for ten minutes; its class is "
                    + Figures.shown(form.maxC())
                    + " °C"
                    + (fault == null
                        ? ""
                        : " (" + faults(fault) + "it through" + others(fault) + ")"))
            .basis(ampacity.basis());
    if (heldC.isPresent()) {
      double most = form.maxC() + Overload.OVER_CLASS_K;
      draft.measured(Measured.over(heldC.getAsDouble(), most, "°C"));
    }
    return draft;
  }

  private Finding.Draft draft(Wire wire, Ampacity ampacity, Overload overload, WireForm form) {
    String stands = Figures.amps(Figures.cutOff(ampacity.amps()));
    Finding.Draft draft =
        Finding.on(Subject.wire(wire.id()))
            .remedy(betterFit.remedy(wire, overload.stress()))
            .detail("it stands " + stands + " " + ampacity.how())
            .detail(overload.text(form.maxC()));
    overload.stress().cut().stream().limit(PARTIES).forEach(fuse -> draft.and(fuse.subject()));
    return draft;
  }
}
