package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.heat.BundleHeat;
import org.tugtest.heat.LoomWarmth;
import org.tugtest.heat.SecondOpinion;
import org.tugtest.heat.Section;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.text.Quoted;

/**
 * What a network of heat through the packed sections says beside the closed form: asked of each
 * section in the state in which it is hottest, where that is so much over the air that the two can
 * differ. Sections of the same content are asked once.
 */
final class Opinions {
  private static final int LISTED = 12;
  private final double kelvin;
  private final Map<Integer, Both> bySection = new TreeMap<>();

  /** Both answers for a section in the state in which it is hottest. */
  private record Both(OperatingPoint state, LoomWarmth warmth, BundleHeat closed, BundleHeat net) {
    double apart() {
      return closed.steady() || net.steady() ? Math.abs(closed.hottestC() - net.hottestC()) : 0;
    }
  }

  /** What two sections have to have alike to get the same answer. */
  private record Content(Section section, List<Double> shares, double hottestC) {
    static Content of(LoomWarmth warmth, int number) {
      Section its = warmth.sections().all().get(number);
      List<Section.Conductor> nameless =
          its.conductors().stream().map(one -> new Section.Conductor("", one.form())).toList();
      Section plain = new Section("", nameless, List.of(), its.envelope(), its.ambientC());
      return new Content(plain, warmth.shares(number), warmth.of(number).hottestC());
    }
  }

  /**
   * A section on which the two differ.
   *
   * @param wires over their class by the network, else the hottest by it; the hottest first
   */
  record Differing(
      String where, String state, double closedC, double netC, double classC, List<String> wires) {
    String says() {
      return "the closed form says "
          + words(closedC)
          + " in "
          + where
          + " in state "
          + state
          + ", a network of heat through the packed section "
          + words(netC);
    }

    Finding.Draft warning() {
      Finding.Draft draft =
          Finding.on(Subject.wire(wires.get(0)))
              .kind("second-opinion")
              .level(Level.WARNING)
              .message(
                  "wire "
                      + wires.get(0)
                      + " may get hotter than its class of "
                      + Quoted.number(classC)
                      + " °C: "
                      + says())
              .remedy(
                  "lay the thick loaded wires to the outside, part the bundle, or take a larger"
                      + " gauge")
              .state(state)
              .basis(Basis.DERIVED);
      if (Double.isFinite(netC)) {
        draft.measured(Measured.over(netC, classC, "°C"));
      }
      wires.stream().skip(1).limit(LISTED).forEach(wire -> draft.and(Subject.wire(wire)));
      return draft;
    }
  }

  Opinions(Facts facts, double kelvin) {
    this.kelvin = kelvin;
    Map<Content, Optional<BundleHeat>> known = new HashMap<>();
    int count = facts.sections().all().size();
    for (int i = 0; i < count; i++) {
      double most = facts.sections().all().get(i).ambientC().value() + kelvin;
      OperatingPoint hottest = null;
      LoomWarmth warmest = null;
      for (OperatingPoint state : facts.operating().all()) {
        LoomWarmth warmth = state.warmthSettled() ? state.warmth().orElse(null) : null;
        if (warmth != null && warmth.of(i).hottestC() > most) {
          most = warmth.of(i).hottestC();
          hottest = state;
          warmest = warmth;
        }
      }
      if (hottest != null && warmest != null) {
        ask(i, hottest, warmest, known);
      }
    }
  }

  private void ask(
      int section,
      OperatingPoint state,
      LoomWarmth warmth,
      Map<Content, Optional<BundleHeat>> known) {
    known
        .computeIfAbsent(Content.of(warmth, section), none -> SecondOpinion.of(warmth, section))
        .ifPresent(net -> bySection.put(section, new Both(state, warmth, warmth.of(section), net)));
  }

  /** What the second model says of a section, in a sentence. */
  Optional<String> said(int section) {
    Both both = bySection.get(section);
    if (both == null) {
      return Optional.empty();
    }
    String says =
        "a network of heat through the packed section says " + words(both.net().hottestC());
    return Optional.of(
        both.apart() > kelvin
            ? says
                + " there in state "
                + both.state().state()
                + ", the closed form that judges "
                + words(both.closed().hottestC())
                + ": so far apart neither is sure"
            : says);
  }

  /** Sections that only the network finds too hot, and by more than the two may differ. */
  List<Differing> overClass(Set<Integer> found) {
    return differing(found, true);
  }

  /** Other sections on which the two differ, none of them over a class by either. */
  List<Differing> underClass(Set<Integer> found) {
    return differing(found, false);
  }

  private List<Differing> differing(Set<Integer> found, boolean over) {
    List<Differing> all = new ArrayList<>();
    bySection.forEach(
        (section, both) -> {
          if (!found.contains(section)
              && both.apart() > kelvin
              && !closedOverClass(section, both)) {
            Differing differing = differing(section, both);
            if (overClass(section, both) == over) {
              all.add(differing);
            }
          }
        });
    return all;
  }

  /** Whether the closed form, which judges, finds a wire too hot there: that is told already. */
  private static boolean closedOverClass(int section, Both both) {
    List<Section.Conductor> wires = both.warmth().sections().all().get(section).conductors();
    if (!both.closed().steady()) {
      return true;
    }
    for (int i = 0; i < wires.size(); i++) {
      if (both.closed().celsius().get(i) > wires.get(i).form().maxC()) {
        return true;
      }
    }
    return false;
  }

  private static boolean overClass(int section, Both both) {
    List<Section.Conductor> wires = both.warmth().sections().all().get(section).conductors();
    if (!both.net().steady()) {
      return true;
    }
    for (int i = 0; i < wires.size(); i++) {
      if (both.net().celsius().get(i) > wires.get(i).form().maxC()) {
        return true;
      }
    }
    return false;
  }

  private static Differing differing(int section, Both both) {
    Section where = both.warmth().sections().all().get(section);
    List<Section.Conductor> wires = where.conductors();
    int hottest = 0;
    double most = Double.NEGATIVE_INFINITY;
    List<Double> celsius = both.net().steady() ? both.net().celsius() : both.closed().celsius();
    for (int i = 0; i < wires.size(); i++) {
      double over = celsius.get(i) - wires.get(i).form().maxC();
      if (over > most + 1e-6) {
        most = over;
        hottest = i;
      }
    }
    Set<String> named = new LinkedHashSet<>(List.of(wires.get(hottest).wire()));
    for (int i = 0; i < wires.size(); i++) {
      if (both.net().steady() && celsius.get(i) > wires.get(i).form().maxC()) {
        named.add(wires.get(i).wire());
      }
    }
    return new Differing(
        where.where(),
        both.state().state(),
        both.closed().hottestC(),
        both.net().steady() ? celsius.get(hottest) : Double.POSITIVE_INFINITY,
        wires.get(hottest).form().maxC(),
        List.copyOf(named));
  }

  /** One note on all sections on which the two differ without harm. */
  static Finding.Draft note(List<Differing> all) {
    Differing first = all.get(0);
    Finding.Draft draft =
        Finding.on(Subject.wire(first.wires().get(0)))
            .kind("models-differ")
            .level(Level.NOTE)
            .message(
                first.says()
                    + (all.size() > 1 ? "; so they differ in " + (all.size() - 1) + " more" : "")
                    + "; neither is over a class")
            .remedy("nothing is wrong; measure there before the currents are raised")
            .state(first.state())
            .basis(Basis.DERIVED);
    all.stream()
        .skip(1)
        .limit(LISTED)
        .forEach(one -> draft.and(Subject.wire(one.wires().get(0))).detail(one.says()));
    return draft;
  }

  private static String words(double celsius) {
    return Double.isFinite(celsius) ? Math.round(celsius) + " °C" : "no rest under 250 °C";
  }
}
