package org.tugtest.bench.lighter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Trial;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.Edge;
import org.tugtest.rule.LastingAmps;
import org.tugtest.rule.PartChoice;
import org.tugtest.rule.load.Feed;
import org.tugtest.text.NaturalOrder;

/**
 * Wires that are thicker than they need be: those of which the next smaller stocked part passes
 * every rule. They are tried together, as they would be built together.
 *
 * @param changes the most grams first
 * @param unlooked why none was looked for; null when they were
 */
public record Lighter(List<Change> changes, @Nullable String unlooked) {
  /** A larger harness is not tried: each trial costs a whole check. */
  static final int MOST_WIRES = 1000;

  /** Thinner wires break at the crimp; race looms go down to 0.35 mm2, common practice. */
  static final double LEAST_MM2 = 0.35;

  private static final double SOME_GRAMS = 0.1;
  private static final int ROUNDS = 8;

  /** So many wires are judged again in all. */
  private static final int MOST_JUDGED = 2000;

  /**
   * One wire and what it could be made of.
   *
   * @param grams that it saves
   */
  public record Change(Wire wire, WirePart now, WirePart then, double grams) {}

  public Lighter {
    changes = List.copyOf(changes);
  }

  /** The grams that all changes save together. */
  public double grams() {
    return changes.stream().mapToDouble(Change::grams).sum();
  }

  /**
   * Looks for them.
   *
   * @param result what the check says of the harness as it is
   * @param catalog the rules that judge the harness with the thinner wires
   */
  public static Lighter of(Facts facts, CheckResult result, RuleCatalog catalog) {
    if (facts.harness().wires().size() > MOST_WIRES) {
      return new Lighter(List.of(), "the harness has over " + MOST_WIRES + " wires");
    }
    List<Change> candidates = candidates(facts);
    if (candidates.isEmpty()) {
      return new Lighter(List.of(), null);
    }
    List<Finding> found = result.findings().stream().map(CheckedFinding::finding).toList();
    Trial trial = Trial.of(facts, found, catalog);
    List<Change> left = candidates;
    int rounds = Math.min(ROUNDS, MOST_JUDGED / Math.max(1, facts.harness().wires().size()));
    for (int round = 0; round < rounds && !left.isEmpty(); round++) {
      Map<String, WirePart> parts = new LinkedHashMap<>();
      left.forEach(change -> parts.put(change.wire().id(), change.then()));
      Optional<List<Finding>> then = trial.with(parts);
      if (then.isEmpty()) {
        return new Lighter(List.of(), "a rule breaks on the harness with thinner wires");
      }
      List<Finding> worse = then.get().stream().filter(trial::isWorse).toList();
      if (worse.isEmpty()) {
        return new Lighter(left, null);
      }
      left = without(facts, left, worse);
    }
    return new Lighter(List.of(), left.isEmpty() ? null : "rules object to most of them together");
  }

  /** Wires that carry a known current and have a smaller stocked part that stands it. */
  private static List<Change> candidates(Facts facts) {
    PartChoice choice = new PartChoice(facts);
    List<Change> candidates = new ArrayList<>();
    for (Edge edge : facts.network().edges()) {
      if (!(edge instanceof Edge.OfWire wire)) {
        continue;
      }
      WirePart now =
          wire.wire().part() == null
              ? null
              : facts.harness().parts().wires().get(wire.wire().part());
      boolean flows =
          LastingAmps.of(facts, edge).map(flow -> flow.known() && flow.amps() > 0).orElse(false);
      if (now != null && flows) {
        choice.smaller(wire.wire()).stream()
            .filter(part -> isAlike(now, part))
            .findFirst()
            .filter(part -> choice.areaMm2(wire.wire(), part) >= LEAST_MM2)
            .filter(part -> choice.stands(wire, part))
            .filter(part -> choice.misfit(wire.wire(), part).isEmpty())
            .ifPresent(
                part -> {
                  double grams = -choice.gramsMore(wire.wire(), part).orElse(0);
                  if (grams >= SOME_GRAMS) {
                    candidates.add(new Change(wire.wire(), now, part, grams));
                  }
                });
      }
    }
    candidates.sort(
        Comparator.comparingDouble((Change change) -> -change.grams())
            .thenComparing(change -> change.wire().id(), NaturalOrder.NATURAL));
    return candidates;
  }

  /**
   * Without the wires that findings name; for one that names none of them, without those on the way
   * of its load; and when even that leaves all, without the half that saves less.
   */
  private static List<Change> without(Facts facts, List<Change> changes, List<Finding> worse) {
    Set<String> out = new HashSet<>();
    for (Finding finding : worse) {
      Set<Subject> named = new HashSet<>(finding.subjects());
      List<String> own =
          changes.stream()
              .map(change -> change.wire().id())
              .filter(id -> named.contains(Subject.wire(id)))
              .toList();
      out.addAll(own.isEmpty() ? onTheWay(facts, finding) : own);
    }
    List<Change> left =
        changes.stream().filter(change -> !out.contains(change.wire().id())).toList();
    return left.size() == changes.size() ? changes.subList(0, changes.size() / 2) : left;
  }

  /** Whether a part is of the same make: the same wall, a class no lower, and as well described. */
  private static boolean isAlike(WirePart now, WirePart part) {
    boolean warm = now.maxC() == null || (part.maxC() != null && part.maxC() >= now.maxC());
    boolean wall = now.wall() == part.wall();
    boolean outer =
        now.outerMm() == null || (part.outerMm() != null && part.outerMm() <= now.outerMm());
    return warm && wall && outer;
  }

  private static Set<String> onTheWay(Facts facts, Finding finding) {
    Set<String> wires = new HashSet<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement load && load.subject().equals(finding.firstSubject())) {
        facts.operating().all().stream()
            .flatMap(state -> Feed.of(facts, state, load).stream())
            .flatMap(feed -> feed.wires().stream())
            .forEach(wire -> wires.add(wire.id()));
      }
    }
    return wires;
  }
}
