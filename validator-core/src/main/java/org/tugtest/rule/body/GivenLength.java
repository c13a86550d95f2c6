package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Wire;
import org.tugtest.route.Allowance;
import org.tugtest.route.NoRoute;
import org.tugtest.route.Route;
import org.tugtest.text.Series;

/**
 * A length that the files give for a wire, beside its route.
 *
 * @param mm as built, else as cut
 * @param built whether it is the built length
 * @param inPlace whether it is laid in place, and so has no cut length
 * @param route null when it has none
 * @param whyNoRoute why it has none; empty when it has one
 */
record GivenLength(
    Subject subject,
    double mm,
    boolean built,
    boolean inPlace,
    @Nullable Route route,
    String whyNoRoute) {
  /** Lengths nearer to each other than this, in mm, are the same. */
  static final double SAME = 1e-6;

  /** The wires that have such a length, in natural order. */
  static List<GivenLength> all(Facts facts) {
    List<GivenLength> all = new ArrayList<>();
    for (Wire wire : facts.harness().wires().values()) {
      Double mm = wire.builtMm() == null ? wire.cutMm() : wire.builtMm();
      if (mm != null) {
        all.add(
            new GivenLength(
                Subject.wire(wire.id()),
                mm,
                wire.builtMm() != null,
                wire.laidInPlace(),
                facts.routes().of(wire.id()).orElse(null),
                facts
                    .routes()
                    .missing(wire.id())
                    .map(NoRoute::why)
                    .map(NoRoute.Why::reason)
                    .orElse("")));
      }
    }
    return all;
  }

  /** Goes between the wire and its length. */
  String verb() {
    return built ? " is built " : " is to be cut to ";
  }

  /** What it is meant to be: what its route is cut to, or needs when it is laid in place, in mm. */
  double meantMm(Route route) {
    return inPlace ? route.routedMm() : route.cutMm();
  }

  /** What to do with it first. */
  String redo(Route route) {
    return inPlace
        ? "lay it anew, " + Millimetres.text(route.routedMm()) + " or up to the tolerance longer"
        : "cut it to " + Millimetres.text(route.cutMm());
  }

  /** What the length of a route is made of, and what of it rests on defaults. */
  List<String> explain(Route route) {
    List<String> lines = new ArrayList<>();
    List<String> sum = new ArrayList<>();
    sum.add(Millimetres.text(route.segmentsMm()) + " of segments");
    Route.Lay lay = route.lay();
    if (lay != null) {
      sum.add(Millimetres.text(lay.addedMm()) + " lay of group " + lay.group());
    }
    for (Allowance.Kind kind : Allowance.Kind.values()) {
      double mm = route.allowanceMm(kind);
      if (mm > 0) {
        sum.add(Millimetres.text(mm) + " " + kind.word());
      }
    }
    lines.add("route " + way(route) + ": " + Series.and(sum));
    if (!route.restsOn().isEmpty()) {
      lines.add("rests on " + Series.and(route.restsOn()));
    }
    if (!route.equalWay().isEmpty()) {
      lines.add(
          "as short would be the way over "
              + Series.and(route.equalWay())
              + "; give \"via\" to choose it");
    }
    return lines;
  }

  private static String way(Route route) {
    if (route.pieces().isEmpty()) {
      return "at " + route.from().text();
    }
    return "over " + Series.and(route.pieces().stream().map(p -> p.segment()).toList(), 12);
  }
}
