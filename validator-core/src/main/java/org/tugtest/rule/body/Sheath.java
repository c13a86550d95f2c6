package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Covering;
import org.tugtest.model.Layout;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.route.Bundle;
import org.tugtest.route.BundleDiameter;
import org.tugtest.route.CoverLayers;
import org.tugtest.table.Cited;

/**
 * Something with coverings round it: a segment, a breakout with a boot, a connector with a boot.
 *
 * @param text where the thickest of what it covers lies: {@code segment e1 from 0 to 200 mm}
 * @param inside what that is: {@code 12 wires}
 * @param count how many circles lie there; 0 when nothing does
 * @param layers its coverings over the thickest
 * @param thinMm expected diameter of the thinnest of what it covers
 * @param known whether all diameters are known
 * @param basis of the diameters
 */
record Sheath(
    Subject subject,
    String text,
    String inside,
    int count,
    CoverLayers layers,
    double thinMm,
    boolean known,
    Basis basis) {

  /** All things with coverings. */
  static List<Sheath> all(Facts facts) {
    List<Sheath> all = new ArrayList<>();
    Layout layout = facts.harness().layout();
    for (Layout.Segment segment : layout.segments().values()) {
      if (!segment.coverings().isEmpty()) {
        all.add(of(facts, segment));
      }
    }
    for (Layout.Node node : layout.nodes().values()) {
      if (!node.coverings().isEmpty()) {
        all.add(of(facts, node));
      }
    }
    for (Connector connector : facts.harness().connectors().values()) {
      if (connector.boot() != null) {
        all.add(of(facts, connector, connector.boot()));
      }
    }
    return all;
  }

  private static Sheath of(Facts facts, Layout.Segment segment) {
    Subject subject = Subject.of("segments", segment.id());
    List<Bundle> pieces = facts.bundles().of(segment.id());
    return of(facts, subject, "segment " + segment.id(), segment.coverings(), pieces);
  }

  private static Sheath of(Facts facts, Layout.Node node) {
    List<Bundle> pieces = new ArrayList<>();
    for (Layout.Segment segment : facts.harness().layout().segments().values()) {
      if (node.id().equals(segment.from()) || node.id().equals(segment.to())) {
        facts.bundles().thickest(segment.id()).ifPresent(pieces::add);
      }
    }
    Subject subject = Subject.of("nodes", node.id());
    return of(facts, subject, "node " + node.id(), node.coverings(), pieces);
  }

  private static Sheath of(
      Facts facts, Subject subject, String text, List<String> coverings, List<Bundle> pieces) {
    Bundle thickest = null;
    double thin = Double.POSITIVE_INFINITY;
    boolean known = true;
    for (Bundle piece : pieces) {
      known &= piece.unsized().isEmpty();
      thin = Math.min(thin, piece.expectedMm());
      if (thickest == null || piece.expectedMm() > thickest.expectedMm()) {
        thickest = piece;
      }
    }
    double expected = thickest == null ? 0 : thickest.expectedMm();
    double loose = thickest == null ? 0 : thickest.looseMm();
    boolean part = thickest != null && pieces.size() > 1 && text.startsWith("segment ");
    return new Sheath(
        subject,
        part ? thickest.text(Double.POSITIVE_INFINITY) : text,
        thickest == null ? "" : counted(thickest.strands().size(), thickest.wires()),
        thickest == null ? 0 : thickest.strands().size() + thickest.unsized().size(),
        CoverLayers.of(facts.harness().parts().coverings(), coverings, expected, loose),
        thickest == null ? 0 : thin,
        known,
        thickest == null ? Basis.GIVEN : thickest.basis());
  }

  private static Sheath of(Facts facts, Connector connector, String boot) {
    List<Double> diameters = new ArrayList<>();
    boolean known = true;
    Basis basis = Basis.GIVEN;
    for (String cavity : facts.wiring().cavitiesOf(connector.id())) {
      for (WireEnd end : facts.wiring().endsAt(Point.cavity(connector.id(), cavity))) {
        Cited outer = facts.fitting().sizes().outerMm(end.wire()).orElse(null);
        known &= outer != null;
        if (outer != null) {
          diameters.add(outer.value());
          basis = basis.weaker(outer.basis());
        }
      }
    }
    double expected = BundleDiameter.expectedMm(diameters);
    return new Sheath(
        Subject.connector(connector.id()),
        "connector " + connector.id(),
        counted(diameters.size(), diameters.size()),
        diameters.size(),
        CoverLayers.of(
            facts.harness().parts().coverings(),
            List.of(boot),
            expected,
            BundleDiameter.looseMm(diameters)),
        expected,
        known,
        diameters.size() > 2 ? basis.weaker(Basis.COMMON_PRACTICE) : basis);
  }

  private static String counted(int circles, int wires) {
    String what = wires == 1 ? "wire" : "wires";
    return circles == wires
        ? wires + " " + what
        : wires + " " + what + " (cables counted as one: " + circles + ")";
  }

  /** Whether the range of a covering of it is written upside down, which has its own finding. */
  boolean misread() {
    return layers.layers().stream().map(CoverLayers.Layer::part).anyMatch(Sheath::upsideDown);
  }

  private static boolean upsideDown(@Nullable Covering part) {
    Double least = part == null ? null : part.innerMinMm();
    Double most = part == null ? null : part.innerMaxMm();
    return least != null && most != null && least > most;
  }

  /** Whether a covering of it is not defined. */
  boolean lacksPart() {
    return layers.layers().stream().map(CoverLayers.Layer::part).anyMatch(Objects::isNull);
  }
}
