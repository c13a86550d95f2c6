package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.report.html.text.Figures;
import org.tugtest.text.Quoted;

/** How thick an arm is drawn, its shades, and what is said of it. */
final class Look {
  private static final int THICKEST = 15;
  private static final int THINNEST = 2;
  private final Skeleton whole;
  private final Map<String, Inside> insides;
  private final Touched touched;
  private final double greatestMm;
  private final int mostWires;

  private Look(Skeleton whole, Map<String, Inside> insides, Touched touched) {
    this.whole = whole;
    this.insides = insides;
    this.touched = touched;
    this.greatestMm =
        whole.arms().stream()
            .mapToDouble(arm -> inside(arm).mm())
            .filter(mm -> mm > 0)
            .max()
            .orElse(0);
    this.mostWires = whole.arms().stream().mapToInt(Skeleton.Arm::wires).max().orElse(0);
  }

  /** How the arms of a harness look. */
  static Look of(Facts facts, Skeleton whole, Touched touched) {
    return new Look(whole, whole.ofLayout() ? Inside.of(facts) : Map.of(), touched);
  }

  Inside inside(Skeleton.Arm arm) {
    return insides.getOrDefault(arm.id(), Inside.NOTHING);
  }

  /** Whether thickness tells the diameter; else it tells how many wires there are. */
  boolean toDiameter() {
    return greatestMm > 0;
  }

  /** What the thickness of a line means. */
  String thickness() {
    return toDiameter()
        ? "The thickness of a line is that of its bundle without coverings, as expected: the"
            + " thickest has "
            + Figures.fixed(greatestMm, 1)
            + " mm."
        : "The more wires, the thicker the line.";
  }

  /** Width of the line of an arm. */
  int width(Skeleton.Arm arm) {
    double mm = inside(arm).mm();
    double share =
        toDiameter()
            ? (mm > 0 ? mm / greatestMm : 0)
            : mostWires == 0 ? 0 : Math.sqrt((double) arm.wires() / mostWires);
    return (int) Math.round(THINNEST + (THICKEST - THINNEST) * share);
  }

  /** The shades of which some figure is known. */
  List<Shade> shades() {
    List<Shade> shades = new ArrayList<>();
    for (Shade shade : Shade.values()) {
      if (whole.arms().stream().anyMatch(arm -> shade.step(inside(arm)) >= 0)) {
        shades.add(shade);
      }
    }
    return shades;
  }

  /** The names of the steps of an arm, such as {@code fill2 warm0}. */
  String steps(Skeleton.Arm arm) {
    StringBuilder steps = new StringBuilder();
    for (Shade shade : Shade.values()) {
      int step = shade.step(inside(arm));
      steps.append(step < 0 ? "" : " " + shade.key() + step);
    }
    return steps.toString();
  }

  /** The figures of an arm by the name of their shade; empty ones for what is not known. */
  Map<String, String> figures(Skeleton.Arm arm) {
    Map<String, String> figures = new LinkedHashMap<>();
    for (Shade shade : shades()) {
      figures.put(shade.key(), shade.figure(inside(arm)));
    }
    return figures;
  }

  /** Everything there is to say of an arm in a line. */
  String title(Skeleton.Arm arm) {
    String ends = whole.ofLayout() ? arm.id() + ": " : "";
    StringBuilder title = new StringBuilder(ends);
    title.append(knotId(arm, true)).append(" – ").append(knotId(arm, false));
    title.append(arm.measured() ? ", " + Quoted.number(arm.mm()) + " mm" : "");
    title.append(", ").append(arm.wires()).append(arm.wires() == 1 ? " wire" : " wires");
    facts(arm).forEach(fact -> title.append(", ").append(fact));
    changes(arm).stream().limit(1).forEach(change -> title.append("; ").append(change));
    return title.toString();
  }

  private String knotId(Skeleton.Arm arm, boolean first) {
    Skeleton.Arm own = whole.arms().get(arm.number());
    return whole.knots().get(first ? own.a() : own.b()).id();
  }

  /** Diameter, fill and warmth in words, as far as they are known. */
  List<String> facts(Skeleton.Arm arm) {
    Inside inside = inside(arm);
    List<String> facts = new ArrayList<>();
    if (inside.mm() > 0) {
      facts.add(Figures.fixed(inside.mm(), 1) + " mm thick");
    }
    if (!Double.isNaN(inside.fill())) {
      facts.add(Shade.FILL.figure(inside) + " of " + inside.covering() + " filled");
    }
    if (Double.isInfinite(inside.celsius())) {
      facts.add("no steady temperature in " + inside.state());
    } else if (!Double.isNaN(inside.celsius())) {
      facts.add("up to " + Shade.WARMTH.figure(inside) + " in " + inside.state());
    }
    return facts;
  }

  /** What changes in an arm, in sentences. */
  Set<String> changes(Skeleton.Arm arm) {
    return touched.arms().getOrDefault(arm.number(), Set.of());
  }

  /** What changes at a knot, in sentences. */
  Set<String> changes(Skeleton.Knot knot) {
    return touched.knots().getOrDefault(knot.number(), Set.of());
  }
}
