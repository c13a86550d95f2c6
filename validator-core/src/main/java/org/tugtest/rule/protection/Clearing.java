package org.tugtest.rule.protection;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.network.Edge;
import org.tugtest.protect.Faults;
import org.tugtest.rule.Ledger;

/** The shorts behind one fuse, and what is said of it. */
final class Clearing {
  private static final int MOST_NAMED = 8;
  private static final int MOST_OHMS = 3;
  private static final MathContext THREE = new MathContext(3);
  private final Faults faults;
  private final Edge.OfElement fuse;
  private final double limitS;
  private final List<ClearingCase> bad = new ArrayList<>();
  private boolean any;
  private boolean unknown;
  private boolean missing;

  Clearing(Faults faults, Edge.OfElement fuse, double limitS) {
    this.faults = faults;
    this.fuse = fuse;
    this.limitS = limitS;
  }

  void add(ClearingCase found) {
    any = true;
    if (found.unknown()) {
      unknown = true;
    } else if (found.never() || found.seconds() > limitS) {
      bad.add(found);
    } else {
      missing |= !found.missing().isEmpty();
    }
  }

  void judge(Ledger ledger) {
    if (!bad.isEmpty()) {
      ledger.finding(finding());
    } else if (unknown || faults.bands().of(fuse).isEmpty()) {
      ledger.notJudged(fuse.subject(), "its opening times are not known");
    } else if (!any) {
      ledger.notJudged(fuse.subject(), "no short behind it can be reckoned");
    } else if (missing) {
      ledger.notJudged(fuse.subject(), "a length or an area behind it is not known");
    } else {
      ledger.fine();
    }
  }

  private Finding.Draft finding() {
    bad.sort(
        Comparator.comparing((ClearingCase one) -> !one.never())
            .thenComparingDouble(one -> one.never() ? one.amps() : -one.seconds()));
    ClearingCase worst = bad.get(0);
    String name = faults.bands().text(fuse);
    Finding.Draft draft = Finding.on(fuse.subject()).basis(worst.basis());
    if (worst.never()) {
      draft
          .message(
              "a short "
                  + worst.spot().text()
                  + " draws "
                  + amps(worst.amps())
                  + " at the least, and fuse "
                  + name
                  + " is sure to open only from "
                  + Figures.amps(worst.surelyA()))
          .measured(Measured.under(worst.amps(), worst.surelyA(), "A"));
    } else {
      draft
          .message(
              "fuse "
                  + name
                  + " may take "
                  + shown(worst.seconds())
                  + " s to open on a short "
                  + worst.spot().text()
                  + ", which draws "
                  + amps(worst.amps())
                  + " at the least"
                  + (worst.extrapolated() ? " (time extrapolated)" : ""))
          .measured(Measured.over(worst.seconds(), limitS, "s"));
      if (worst.extrapolated()) {
        draft.level(Level.WARNING);
      }
    }
    addWay(draft, worst);
    for (ClearingCase each : bad) {
      Edge.OfElement load = each.spot().load();
      draft.and(load == null ? each.spot().from().subject() : load.subject());
    }
    bad.stream()
        .skip(1)
        .limit(MOST_NAMED)
        .forEach(each -> draft.detail("also " + each.spot().text() + ": " + outcome(each)));
    if (bad.size() > MOST_NAMED + 1) {
      draft.detail("and at " + (bad.size() - MOST_NAMED - 1) + " more places");
    }
    return draft;
  }

  private static String outcome(ClearingCase one) {
    return amps(one.amps())
        + (one.never() ? ", not sure to open" : ", " + shown(one.seconds()) + " s");
  }

  private void addWay(Finding.Draft draft, ClearingCase worst) {
    List<Faults.OnWay> way = faults.way(worst.spot());
    double ohms = way.stream().mapToDouble(Faults.OnWay::ohms).sum();
    String most = way.isEmpty() ? "the longest wire" : way.get(0).edge().text();
    draft.remedy(
        "lower the ohms of the way, of which "
            + most
            + " has most, or take a smaller fuse for "
            + fuse.text()
            + " if its loads allow it");
    if (!way.isEmpty()) {
      StringBuilder line = new StringBuilder("the way has " + shown(ohms) + " ohm");
      way.stream()
          .limit(MOST_OHMS)
          .forEach(
              each ->
                  line.append(", ")
                      .append(each.edge().text())
                      .append(' ')
                      .append(shown(each.ohms())));
      draft.detail(line.toString());
    }
  }

  private static String amps(double value) {
    return shown(value) + " A";
  }

  private static String shown(double value) {
    return Figures.shown(BigDecimal.valueOf(value).round(THREE).doubleValue());
  }
}
