package org.tugtest.report.html.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.tugtest.facts.Facts;
import org.tugtest.heat.Cooling;
import org.tugtest.heat.Warming;
import org.tugtest.heat.WireForm;
import org.tugtest.model.Element;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.report.html.text.Figures;
import org.tugtest.report.html.text.WireText;
import org.tugtest.table.Cited;
import org.tugtest.table.FuseBand;
import org.tugtest.text.Quoted;

/** Draws the chart of one fuse. */
final class ChartSketcher {
  private static final int MOST_CURVES = 5;
  private static final int STEPS = 40;
  private static final int LETTERS = 26;

  /** Above its class a wire is given what ISO 6722-1 tries it at for six hours; from memory. */
  private static final double OVER_CLASS_K = 50;

  private static final double[] MULTIPLES = {1.35, 2, 3.5, 6};
  private final Facts facts;
  private final Edge.OfElement fuse;
  private final FuseBand band;

  /** What wires of one kind in one place stand. */
  private record Stand(
      String what, double lastingA, DoubleUnaryOperator seconds, List<String> ids) {}

  ChartSketcher(Facts facts, Edge.OfElement fuse) {
    this.facts = facts;
    this.fuse = fuse;
    this.band = facts.faults().bands().of(fuse).orElseThrow();
  }

  ProtectionChart chart(int number, List<Edge.OfWire> wires, List<ProtectionRoom.Shorted> shorts) {
    List<Stand> stands = stands(wires);
    List<Stand> shown = stands.subList(0, Math.min(MOST_CURVES, stands.size()));
    double most = 6 * band.ratingA();
    double load = load();
    for (ProtectionRoom.Shorted one : shorts) {
      most = Math.max(most, one.mostA());
    }
    double least = Math.min(0.5 * band.ratingA(), load > 0 ? load : band.ratingA());
    Axes axes = Axes.of(Math.max(least, band.ratingA() / 50), Math.min(most, 1e5));
    List<ProtectionChart.Curve> curves = new ArrayList<>();
    List<ProtectionChart.Row> rows = new ArrayList<>();
    rows.add(row("fuse, latest", "opens no later", band.greatest()::seconds));
    rows.add(row("fuse, earliest", "opens no earlier", band.least()::seconds));
    for (Stand stand : shown) {
      String letter = String.valueOf((char) ('A' + curves.size() % LETTERS));
      curves.add(curve(axes, stand, letter));
      String ids =
          String.join(", ", stand.ids().subList(0, Math.min(6, stand.ids().size())))
              + (stand.ids().size() > 6 ? " and " + (stand.ids().size() - 6) + " more" : "");
      rows.add(
          row(
              letter,
              ids + ": " + stand.what() + ", lasting " + Figures.amps(stand.lastingA()),
              stand.seconds()));
    }
    int more = 0;
    for (Stand stand : stands.subList(shown.size(), stands.size())) {
      more += stand.ids().size();
    }
    return new ProtectionChart(
        number,
        facts.faults().bands().text(fuse),
        says(load, shorts),
        axes.ticks(),
        band(axes),
        band.greatest().isEmpty()
            ? ""
            : path(axes, band.greatest().firstAmps(), band.greatest()::seconds, true),
        curves,
        marks(axes, load, shorts),
        heads(),
        rows,
        more);
  }

  private List<String> heads() {
    List<String> heads = new ArrayList<>();
    for (double multiple : MULTIPLES) {
      heads.add(
          Figures.amps(multiple * band.ratingA())
              + " ("
              + Figures.fixed(100 * multiple, 0)
              + " %)");
    }
    return heads;
  }

  private ProtectionChart.Row row(String name, String what, DoubleUnaryOperator seconds) {
    List<String> times = new ArrayList<>();
    for (double multiple : MULTIPLES) {
      double time = seconds.applyAsDouble(multiple * band.ratingA());
      times.add(Double.isInfinite(time) ? "for ever" : Figures.three(time) + " s");
    }
    return new ProtectionChart.Row(name, what, times);
  }

  /** What the wires stand, alike ones together, the weakest first. */
  private List<Stand> stands(List<Edge.OfWire> wires) {
    WireText text = new WireText(facts.harness());
    Map<List<Double>, Stand> alike = new LinkedHashMap<>();
    for (Edge.OfWire edge : wires) {
      Wire wire = edge.wire();
      Optional<WireForm> form = facts.ampacity().forms().of(wire);
      Optional<Cooling> cooling = facts.ampacity().cooling(wire);
      Optional<Cited> area = facts.fitting().sizes().areaMm2(wire).filter(one -> one.value() > 0);
      if (form.isPresent() && cooling.isPresent() && area.isPresent()) {
        double maxC = form.get().maxC();
        Warming warming =
            new Warming(
                area.get().value(),
                form.get().insulated().milliohmPerM(),
                cooling.get(),
                maxC,
                maxC + OVER_CLASS_K);
        double lasting = warming.lastingAmps();
        List<Double> key =
            List.of(
                area.get().value(),
                form.get().insulated().milliohmPerM(),
                maxC,
                Math.rint(1000 * lasting));
        alike
            .computeIfAbsent(
                key,
                none ->
                    new Stand(
                        text.size(wire) + " to " + Quoted.number(maxC + OVER_CLASS_K) + " °C",
                        lasting,
                        warming::seconds,
                        new ArrayList<>()))
            .ids()
            .add(wire.id());
      }
    }
    List<Stand> stands = new ArrayList<>(alike.values());
    stands.sort(Comparator.comparingDouble(Stand::lastingA));
    return stands;
  }

  private double load() {
    double most = 0;
    for (OperatingPoint point : facts.operating().all()) {
      if (!point.brief()) {
        most = Math.max(most, Math.abs(point.amps(fuse)));
      }
    }
    return most;
  }

  private List<String> says(double load, List<ProtectionRoom.Shorted> shorts) {
    List<String> says = new ArrayList<>();
    says.add(
        band.greatest().isEmpty()
            ? "never opens for certain"
            : "opens for certain from " + Figures.amps(band.surelyOpensA()) + " on");
    if (load > 0) {
      says.add("carries up to " + Figures.amps(load) + " for long");
    }
    if (!shorts.isEmpty()) {
      double least = shorts.stream().mapToDouble(ProtectionRoom.Shorted::leastA).min().orElse(0);
      double most = shorts.stream().mapToDouble(ProtectionRoom.Shorted::mostA).max().orElse(0);
      says.add("shorts in loads: " + Figures.amps(least) + " to " + Figures.amps(most));
    }
    return says;
  }

  private static String path(Axes axes, double fromA, DoubleUnaryOperator seconds, boolean drop) {
    StringBuilder path = new StringBuilder();
    double first = Math.max(fromA, axes.leastA());
    if (first >= axes.greatestA()) {
      return "";
    }
    if (drop && fromA >= axes.leastA()) {
      path.append('M').append(axes.x(first)).append(',').append(Axes.TOP);
    }
    double ratio = Math.pow(axes.greatestA() / first, 1.0 / STEPS);
    double amps = first;
    for (int i = 0; i <= STEPS; i++) {
      double time = seconds.applyAsDouble(amps);
      if (!Double.isInfinite(time)) {
        path.append(path.length() == 0 ? 'M' : 'L').append(axes.at(amps, time));
      }
      amps *= ratio;
    }
    return path.toString();
  }

  /** Round all between the earliest and the latest times. */
  private String band(Axes axes) {
    if (band.least().isEmpty() || band.greatest().isEmpty()) {
      return "";
    }
    String latest = path(axes, band.greatest().firstAmps(), band.greatest()::seconds, true);
    double from = Math.max(axes.leastA(), band.least().firstAmps());
    StringBuilder back = new StringBuilder();
    double ratio = Math.pow(axes.greatestA() / from, 1.0 / STEPS);
    double amps = axes.greatestA();
    for (int i = 0; i <= STEPS && from < axes.greatestA(); i++) {
      back.append('L').append(axes.x(amps)).append(',').append(axes.y(band.least().seconds(amps)));
      amps /= ratio;
    }
    return latest.isEmpty() ? "" : latest + back + "L" + axes.x(from) + "," + Axes.TOP + "Z";
  }

  /** Where the words of an upright mark stand, so that no two lie on each other. */
  private static int foot(int nth) {
    return Axes.TOP + Axes.HEIGHT - 8 - 14 * nth;
  }

  private static ProtectionChart.Curve curve(Axes axes, Stand stand, String letter) {
    double from = Math.max(stand.lastingA() * 1.0005, axes.leastA());
    String path = path(axes, from, stand.seconds(), stand.lastingA() > axes.leastA());
    double at = Math.min(axes.greatestA(), Math.max(from, axes.leastA()) * 1.05);
    return new ProtectionChart.Curve(
        letter,
        path,
        axes.x(at),
        Axes.TOP + 14 + 14 * (letter.charAt(0) - 'A'),
        stand.what() + ": " + String.join(", ", stand.ids()));
  }

  private List<ProtectionChart.Mark> marks(
      Axes axes, double load, List<ProtectionRoom.Shorted> shorts) {
    List<ProtectionChart.Mark> marks = new ArrayList<>();
    if (load > 0) {
      marks.add(new ProtectionChart.Mark("load", axes.x(load), foot(0), "lasting load"));
    }
    double least = shorts.stream().mapToDouble(ProtectionRoom.Shorted::leastA).min().orElse(0);
    double most = shorts.stream().mapToDouble(ProtectionRoom.Shorted::mostA).max().orElse(0);
    if (least > 0) {
      marks.add(new ProtectionChart.Mark("least", axes.x(least), foot(1), "least short"));
      marks.add(new ProtectionChart.Mark("most", axes.x(most), foot(2), "greatest short"));
    }
    for (ProtectionRoom.Shorted one : shorts) {
      if (one.load().element() instanceof Element.Load its
          && its.inrushA() != null
          && its.inrushS() != null) {
        marks.add(
            new ProtectionChart.Mark(
                "inrush",
                axes.x(its.inrushA()),
                axes.y(its.inrushS()),
                "inrush of " + one.load().text()));
      }
    }
    return marks;
  }
}
