package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.heat.LoomWarmth;
import org.tugtest.heat.Section;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** Writes the finding of wires that are over their class in one section. */
final class HotFinding {
  private static final int NAMED = 3;
  private static final int LISTED = 12;
  private static final double SOME_SHARE = 0.05;
  private static final double MOST_COUNTED = 20;
  private final Facts facts;
  private final Opinions opinions;

  HotFinding(Facts facts, Opinions opinions) {
    this.facts = facts;
    this.opinions = opinions;
  }

  /** The wires of a finding, the one that is farthest over its class first. */
  private static List<HotWires.Hot> inOrder(List<HotWires.Hot> members) {
    List<HotWires.Hot> order = new ArrayList<>(members);
    order.sort(
        Comparator.<HotWires.Hot>comparingDouble(hot -> -over(hot))
            .thenComparing(hot -> hot.wire().wire().id(), NaturalOrder.NATURAL));
    return order;
  }

  private static double over(HotWires.Hot hot) {
    return Math.rint((hot.hottest().celsius() - hot.classC()) * 10) / 10;
  }

  static List<Subject> subjects(List<HotWires.Hot> members) {
    return inOrder(members).stream().map(hot -> hot.wire().subject()).toList();
  }

  Finding.Draft of(List<HotWires.Hot> members) {
    List<HotWires.Hot> order = inOrder(members);
    HotWires.Hot worst = order.get(0);
    int section = worst.hottest().stretch().section();
    Section where = worst.section();
    Map<String, Double> shares = shares(worst.warmth(), section);
    List<String> heaters =
        shares.entrySet().stream()
            .filter(share -> share.getValue() >= SOME_SHARE)
            .map(Map.Entry::getKey)
            .limit(NAMED)
            .toList();
    boolean covered = where.enclosed() && steadyBare(worst);
    boolean many = worst.warmth().counted(section) > MOST_COUNTED;
    String id = worst.wire().text();
    Finding.Draft draft = Finding.on(worst.wire().subject());
    order.stream().skip(1).limit(LISTED).forEach(hot -> draft.and(hot.wire().subject()));
    String temperature = temperature(worst, draft);
    draft
        .message(
            "wire "
                + id
                + temperature
                + " in state "
                + worst.state().state()
                + ", "
                + place(where, covered)
                + "; its class is "
                + Quoted.number(worst.classC())
                + " °C"
                + (order.size() > 1 ? others(order) : "")
                + heat(heaters, shares, id))
        .remedy(remedy(heaters, id))
        .state(worst.state().state())
        .basis(basis(where, heaters, worst));
    if (covered || many) {
      draft.level(Level.WARNING);
    }
    if (covered) {
      draft.detail("only the covering makes it so, of which no published figure is known");
    } else if (where.enclosed()) {
      draft.detail("without the covering it would be over its class too");
    }
    if (many) {
      draft.detail("over 20 wires count as hot, where the published chart ends");
    }
    order.stream().skip(1).limit(LISTED).forEach(hot -> draft.detail(line(hot)));
    alsoIn(worst, draft);
    opinions.said(section).ifPresent(draft::detail);
    return draft;
  }

  private static boolean steadyBare(HotWires.Hot hot) {
    return hot.warmth().judgedBareC(hot.hottest().stretch()) <= hot.classC();
  }

  /** {@code comes to 131 °C}, and the figure with it. */
  private static String temperature(HotWires.Hot hot, Finding.Draft draft) {
    if (!hot.hottest().steady()) {
      return " does not come to rest under 250 °C";
    }
    Measured measured = Measured.over(hot.hottest().celsius(), hot.classC(), "°C");
    draft.measured(measured);
    return " comes to " + measured.actualShown() + " °C";
  }

  private static String place(Section where, boolean covered) {
    int beside = where.conductors().size() - 1;
    String company = beside == 1 ? " with 1 other wire" : " with " + beside + " other wires";
    return (where.where().startsWith("segment") ? "in " : "on ")
        + where.where()
        + (beside > 0 ? company : "")
        + (covered ? " inside its covering" : "");
  }

  private static String others(List<HotWires.Hot> order) {
    List<String> ids = order.stream().skip(1).map(hot -> hot.wire().text()).toList();
    return "; " + Series.and(ids, NAMED) + (ids.size() == 1 ? " is" : " are") + " over theirs too";
  }

  private static String heat(List<String> heaters, Map<String, Double> shares, String own) {
    if (heaters.isEmpty() || (heaters.size() == 1 && heaters.get(0).equals(own))) {
      return "";
    }
    List<String> named =
        heaters.stream()
            .map(id -> id + " (" + Math.round(100 * shares.getOrDefault(id, 0.0)) + " %)")
            .toList();
    return "; most of the heat is of " + Series.and(named);
  }

  private static String remedy(List<String> heaters, String own) {
    String most = heaters.isEmpty() ? own : heaters.get(0);
    return "take a larger gauge for "
        + most
        + (heaters.size() > 1 ? ", which makes most of the heat, part the bundle" : "")
        + ", or take a wire of a higher class"
        + (most.equals(own) ? "" : " for " + own);
  }

  private static String line(HotWires.Hot hot) {
    return hot.wire().text()
        + ": "
        + (hot.hottest().steady()
            ? Math.round(hot.hottest().celsius()) + " °C"
            : "no rest under 250 °C")
        + ", class "
        + Quoted.number(hot.classC())
        + " °C";
  }

  /** The other states in which the wire is over its class. */
  private void alsoIn(HotWires.Hot worst, Finding.Draft draft) {
    for (OperatingPoint state : facts.operating().all()) {
      Optional<LoomWarmth.Hottest> here =
          state.warmth().flatMap(warmth -> warmth.hottest(worst.wire().wire().id()));
      if (here.isPresent()
          && !state.equals(worst.state())
          && here.get().celsius() > worst.classC()) {
        draft.detail(
            "also in state "
                + state.state()
                + ": "
                + (here.get().steady()
                    ? Math.round(here.get().celsius()) + " °C"
                    : "no rest under 250 °C"));
      }
    }
  }

  /** What each wire makes of the heat of a section, the most first. */
  private static Map<String, Double> shares(LoomWarmth warmth, int section) {
    List<Section.Conductor> conductors = warmth.sections().all().get(section).conductors();
    List<Double> each = warmth.shares(section);
    Map<String, Double> sums = new LinkedHashMap<>();
    for (int i = 0; i < each.size(); i++) {
      sums.merge(conductors.get(i).wire(), each.get(i), Double::sum);
    }
    Map<String, Double> sorted = new LinkedHashMap<>();
    sums.entrySet().stream()
        .sorted(
            Comparator.<Map.Entry<String, Double>>comparingDouble(
                    share -> -Math.rint(share.getValue() * 1000))
                .thenComparing(Map.Entry::getKey, NaturalOrder.NATURAL))
        .forEach(share -> sorted.put(share.getKey(), share.getValue()));
    return sorted;
  }

  private static Basis basis(Section where, List<String> heaters, HotWires.Hot worst) {
    Basis basis = Basis.DERIVED.weaker(where.ambientC().basis());
    for (Section.Conductor one : where.conductors()) {
      if (heaters.contains(one.wire()) || one.wire().equals(worst.wire().wire().id())) {
        basis = basis.weaker(one.form().basis());
      }
    }
    return basis;
  }
}
