package org.tugtest.report.html.bundles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.model.Layout;
import org.tugtest.model.Wire;
import org.tugtest.report.html.text.Few;
import org.tugtest.report.html.text.Figures;
import org.tugtest.report.html.text.Swatch;
import org.tugtest.route.Bundle;
import org.tugtest.route.CoverLayers;
import org.tugtest.route.Packing;
import org.tugtest.route.Strand;

/**
 * A section through the thickest piece of each segment.
 *
 * @param drawn sections with a picture
 * @param others those without
 * @param joints nodes where coverings meet
 */
public record BundlesRoom(List<Section> drawn, Few<Section> others, Few<Joint> joints) {
  private static final int MOST_OTHERS = 400;
  private static final int MOST_PICTURES = 60;
  private static final int MOST_CIRCLES = 2500;
  private static final int CIRCLES_OF_MANY = 800;
  private static final int MOST_MISSING = 24;
  private static final int STRETCH = 200;
  private static final double UNITS_PER_MM = 13;
  private static final double WIDEST = 420;
  private static final int LEGIBLE = 7;

  /** The room of a harness. */
  public static BundlesRoom of(Facts facts) {
    List<Bundle> thickest = new ArrayList<>();
    for (String segment : facts.bundles().all().keySet()) {
      facts.bundles().thickest(segment).ifPresent(thickest::add);
    }
    Set<Bundle> pictured = pictured(thickest);
    List<Section> drawn = new ArrayList<>();
    List<Bundle> others = new ArrayList<>();
    for (Bundle bundle : thickest) {
      if (pictured.contains(bundle)) {
        drawn.add(section(facts, bundle, true));
      } else {
        others.add(bundle);
      }
    }
    Few<Bundle> few = Few.of(others, MOST_OTHERS);
    return new BundlesRoom(
        List.copyOf(drawn),
        new Few<>(
            few.shown().stream().map(bundle -> section(facts, bundle, false)).toList(), few.more()),
        Joint.all(facts));
  }

  /** How many sections there are. */
  public int count() {
    return drawn.size() + others.count();
  }

  /** Those without a picture, in stretches that a browser lays out one by one. */
  public List<List<Section>> stretches() {
    return others.stretches(STRETCH);
  }

  /** Those with most wires, as far as a page takes them. */
  private static Set<Bundle> pictured(List<Bundle> bundles) {
    List<Bundle> sorted = new ArrayList<>(bundles);
    sorted.sort(Comparator.comparingInt((Bundle bundle) -> -bundle.wires()));
    int all = bundles.stream().mapToInt(bundle -> bundle.strands().size()).sum();
    int most = all > MOST_CIRCLES ? CIRCLES_OF_MANY : MOST_CIRCLES;
    Set<Bundle> pictured = new HashSet<>();
    int circles = 0;
    for (Bundle bundle : sorted) {
      int more = bundle.strands().size();
      if (pictured.size() < MOST_PICTURES && more > 0 && circles + more <= most) {
        pictured.add(bundle);
        circles += more;
      }
    }
    return pictured;
  }

  private static Section section(Facts facts, Bundle bundle, boolean picture) {
    Layout.Segment segment = facts.harness().layout().segments().get(bundle.segment());
    Double length = segment == null ? null : segment.lengthMm();
    List<String> ids = segment == null ? List.of() : segment.coverings();
    List<Section.Strand> strands = new ArrayList<>();
    for (Strand strand : bundle.strands()) {
      strands.add(
          new Section.Strand(
              strands.size() + 1,
              strand.id(),
              strand.cable(),
              swatch(facts, strand),
              Figures.three(strand.outerMm().value()) + " mm"));
    }
    boolean sized = !bundle.strands().isEmpty();
    CoverLayers layers =
        CoverLayers.of(
            facts.harness().parts().coverings(),
            ids,
            sized ? bundle.expectedMm() : 0,
            sized ? bundle.looseMm() : 0);
    List<Section.Layer> said = layers.layers().stream().map(BundlesRoom::layer).toList();
    return new Section(
        bundle.segment(),
        bundle.text(length == null ? Double.POSITIVE_INFINITY : length),
        bundle.wires(),
        picture ? picture(bundle, strands, layers) : null,
        sized ? sizes(bundle, picture) : "no wire in it has a known diameter",
        said,
        strands,
        Few.of(bundle.unsized(), MOST_MISSING),
        bundle.basis() == Basis.GIVEN ? "" : bundle.basis().word());
  }

  private static Swatch swatch(Facts facts, Strand strand) {
    Wire wire = strand.cable() ? null : facts.harness().wires().get(strand.id());
    return Swatch.of(wire == null ? null : wire.colour());
  }

  private static String sizes(Bundle bundle, boolean least) {
    return (least ? "at least " + mm(bundle.leastMm()) + ", " : "")
        + "expected "
        + mm(bundle.expectedMm())
        + ", loose "
        + mm(bundle.looseMm());
  }

  private static String mm(double mm) {
    return Figures.fixed(mm, 1) + " mm";
  }

  private static Section.Layer layer(CoverLayers.Layer layer) {
    Double most = layer.mostMm();
    if (layer.part() == null) {
      return new Section.Layer(layer.id(), "is not in the parts", false);
    }
    if (most == null || most <= 0) {
      return new Section.Layer(layer.id(), "gives no inner diameter", false);
    }
    double inside = layer.insideMm();
    return new Section.Layer(
        layer.id(),
        mm(inside)
            + " in at most "
            + mm(most)
            + ", "
            + Figures.fixed(100 * inside * inside / (most * most), 0)
            + " % filled",
        inside > most);
  }

  private static Section.@Nullable Picture picture(
      Bundle bundle, List<Section.Strand> strands, CoverLayers layers) {
    Packing packing = bundle.packing();
    if (packing.circles().size() != strands.size()) {
      return null;
    }
    List<Double> radii = new ArrayList<>();
    double outer = packing.diameterMm() / 2;
    for (CoverLayers.Layer layer : layers.layers()) {
      Double most = layer.mostMm();
      Double least = layer.leastMm();
      double inside = layer.insideMm();
      if (least != null && most != null) {
        inside = Math.max(Math.min(inside, most), least);
      }
      radii.add(inside / 2);
      outer = Math.max(outer, inside / 2);
    }
    double scale = Math.min(UNITS_PER_MM, WIDEST / 2 / Math.max(outer, 1e-9));
    List<Section.Disc> discs = new ArrayList<>();
    for (int i = 0; i < strands.size(); i++) {
      Packing.Circle circle = packing.circles().get(i);
      Section.Strand strand = strands.get(i);
      int r = (int) Math.max(2, Math.round(circle.diameterMm() / 2 * scale));
      String colour = strand.cable() ? "cable" : strand.swatch().name();
      discs.add(
          new Section.Disc(
              (int) Math.round(circle.x() * scale),
              (int) Math.round(circle.y() * scale),
              r,
              r >= LEGIBLE ? strand.number() : 0,
              strand.cable(),
              strand.swatch(),
              strand.number() + ": " + strand.id() + ", " + colour + ", " + strand.mm()));
    }
    return new Section.Picture(
        (int) Math.ceil(outer * scale) + 8,
        (int) Math.round(packing.diameterMm() / 2 * scale),
        radii.stream().map(radius -> (int) Math.round(radius * scale)).toList(),
        discs);
  }
}
