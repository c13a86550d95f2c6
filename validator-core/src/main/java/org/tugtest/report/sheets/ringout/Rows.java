package org.tugtest.report.sheets.ringout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.bench.ringout.Apart;
import org.tugtest.bench.ringout.Probe;
import org.tugtest.bench.ringout.RingOut;
import org.tugtest.bench.ringout.Tie;
import org.tugtest.facts.Facts;
import org.tugtest.network.Point;
import org.tugtest.rule.built.ReadingBounds;
import org.tugtest.text.Series;

/**
 * The rows of a sheet.
 *
 * @param joined pairs that must be joined
 * @param apart neighbours that must be apart
 * @param supply feeds against returns
 * @param ties all nets against all nets
 */
record Rows(List<Row> joined, List<Row> apart, List<Row> supply, List<Row> ties) {
  private static final int MOST_TRIED = 2000;

  static Rows of(Facts facts, RingOut ringOut) {
    List<Row> joined = new ArrayList<>();
    for (Probe probe : ringOut.joined()) {
      Double ohms = probe.ohms();
      Double limit =
          ohms == null
              ? null
              : Double.valueOf(
                  ReadingBounds.of(facts.harness(), probe.from()).high().greatest(ohms));
      joined.add(
          new Row(
              Row.Kind.JOINED,
              probe.number(),
              probe.from(),
              probe.to(),
              List.of(probe.from()),
              List.of(probe.to()),
              Series.and(probe.wires()),
              ohms,
              limit,
              probe.remark()));
    }
    List<Row> apart = new ArrayList<>();
    for (Apart pair : ringOut.apart()) {
      apart.add(
          new Row(
              Row.Kind.APART,
              pair.number(),
              pair.from(),
              pair.to(),
              List.of(pair.from()),
              List.of(pair.to()),
              pair.why(),
              null,
              null,
              ""));
    }
    return new Rows(
        joined,
        apart,
        ringOut.supply().stream().map(tie -> tie(facts, tie)).toList(),
        ringOut.ties().stream().map(tie -> tie(facts, tie)).toList());
  }

  private static Row tie(Facts facts, Tie tie) {
    Point from = null;
    Point to = null;
    int tried = 0;
    for (int i = 0; i < tie.one().size() && from == null && tried < MOST_TRIED; i++) {
      to = apartFrom(facts, tie.one().get(i), tie.other());
      from = to == null ? null : tie.one().get(i);
      tried += tie.other().size();
    }
    return new Row(
        Row.Kind.TIE, tie.number(), from, to, tie.one(), tie.other(), tie.what(), null, null, "");
  }

  /** The first that is not joined with a point even in the vehicle; null: all are. */
  private static @Nullable Point apartFrom(Facts facts, Point point, List<Point> others) {
    return others.stream()
        .filter(other -> !facts.nets().joined(point, other))
        .findFirst()
        .orElse(null);
  }

  /** All of them, in the order of the sheet. */
  List<Row> all() {
    List<Row> all = new ArrayList<>(joined);
    all.addAll(apart);
    all.addAll(supply);
    all.addAll(ties);
    return all;
  }
}
