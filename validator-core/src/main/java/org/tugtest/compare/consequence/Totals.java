package org.tugtest.compare.consequence;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.compare.Comparison;

/** How much of everything there is. */
public final class Totals implements Consequence {
  private static final double PER_METRE = 1000;

  @Override
  public String title() {
    return "totals";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    Stock before = Stock.of(comparison.before().facts());
    Stock after = Stock.of(comparison.after().facts());
    List<Moved> moved = new ArrayList<>();
    count(moved, "wires", before.wires(), after.wires());
    count(moved, "connectors", before.connectors(), after.connectors());
    count(moved, "contacts", before.contacts(), after.contacts());
    count(moved, "splices", before.splices(), after.splices());
    count(moved, "devices", before.devices(), after.devices());
    Moved.of("wire", null, before.wireMm() / PER_METRE, after.wireMm() / PER_METRE, "m", 2)
        .map(one -> one.with(unknown("length", before.noLength(), after.noLength())))
        .ifPresent(moved::add);
    Moved.of("mass", null, before.grams(), after.grams(), "g", 0)
        .map(one -> one.with(unknown("mass", before.noMass(), after.noMass())))
        .ifPresent(moved::add);
    return moved;
  }

  private static void count(List<Moved> moved, String what, int before, int after) {
    Moved.of(what, null, (double) before, (double) after, "", 0).ifPresent(moved::add);
  }

  private static String unknown(String what, int before, int after) {
    return before + after == 0
        ? ""
        : "of what is known: "
            + before
            + (before == 1 ? " thing" : " things")
            + " before and "
            + after
            + " after give no "
            + what;
  }
}
