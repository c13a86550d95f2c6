package org.tugtest.check.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tugtest.expect.Lacking;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.network.Point;
import org.tugtest.rule.Cause;
import org.tugtest.rule.load.DeadStretch;

/**
 * What follows from joints that do not come about: loads lie dead behind them, splices lack a wire,
 * contacts are wired on one half alone.
 */
final class BehindJoints {
  private final Facts facts;
  private final Causes causes;
  private final Set<Finding> followers = new LinkedHashSet<>();
  private final List<Slips.Slip> slips;
  private final Map<String, Finding> halves = new HashMap<>();

  BehindJoints(Facts facts, Causes causes) {
    this.facts = facts;
    this.causes = causes;
    followers.addAll(causes.following(Cause.JOINT_UNMADE));
    followers.addAll(causes.following(Cause.JOINT_ONE_SIDED));
    followers.removeIf(finding -> finding.cause() != null);
    this.slips = followers.isEmpty() ? List.of() : slips(facts, causes);
  }

  private static List<Slips.Slip> slips(Facts facts, Causes causes) {
    Map<String, List<Finding>> unmade = new HashMap<>();
    causes.causing(Cause.JOINT_UNMADE).stream()
        .sorted(Comparator.comparing(Finding::rule))
        .forEach(
            finding ->
                finding
                    .subjects()
                    .forEach(
                        subject ->
                            unmade
                                .computeIfAbsent(subject.place(), none -> new ArrayList<>(1))
                                .add(finding)));
    return unmade.isEmpty() ? List.of() : new Slips(facts, unmade).all();
  }

  /** Tells of each finding that follows from a joint. */
  void link() {
    for (Finding finding : followers) {
      cause(finding).ifPresent(cause -> causes.link(finding, cause));
    }
  }

  private Optional<Finding> cause(Finding finding) {
    return switch (finding.firstSubject().section()) {
      case "connectors" -> ofHalf(finding);
      case "splices" -> ofSplice(finding);
      case "expectations" -> Unmet.of(facts, finding).flatMap(lacking -> ofUnmet(finding, lacking));
      default -> DeadStretch.of(facts, finding).flatMap(dead -> ofDead(finding, dead));
    };
  }

  private Optional<Finding> ofUnmet(Finding finding, Lacking lacking) {
    if (lacking instanceof Lacking.Volts volts) {
      return DeadStretch.of(facts, volts.load(), volts.state())
          .flatMap(dead -> ofDead(finding, dead));
    }
    if (lacking instanceof Lacking.Plus plus) {
      return DeadStretch.of(facts, plus.point(), plus.state())
          .flatMap(dead -> ofDead(finding, dead));
    }
    Lacking.Joint joint = (Lacking.Joint) lacking;
    return first(finding, slips.stream().filter(slip -> joins(slip, joint)));
  }

  /** Whether a joint, had it come about, would join both sides. */
  private static boolean joins(Slips.Slip slip, Lacking.Joint joint) {
    boolean these = slip.from().stream().anyMatch(joint.these());
    boolean those = slip.from().stream().anyMatch(joint.those());
    return (these && (slip.to().isEmpty() || slip.to().stream().anyMatch(joint.those())))
        || (those && (slip.to().isEmpty() || slip.to().stream().anyMatch(joint.these())));
  }

  private Optional<Finding> ofSplice(Finding finding) {
    return first(
        finding,
        slips.stream()
            .filter(
                slip ->
                    slip.meant().stream()
                        .anyMatch(owner -> Subject.splice(owner).equals(finding.firstSubject()))));
  }

  /** The first of some slips that a finding may follow from. */
  private Optional<Finding> first(Finding finding, Stream<Slips.Slip> these) {
    return these
        .map(Slips.Slip::finding)
        .filter(slip -> causes.may(finding, Cause.JOINT_UNMADE, slip))
        .findFirst();
  }

  /** Cavities lie empty since a wire names a wrong one, be it there or not. */
  private Optional<Finding> ofHalf(Finding half) {
    List<Point> empty = empty(half);
    if (empty.isEmpty()) {
      return Optional.empty();
    }
    String other = empty.get(0).owner();
    halves.put(half.firstSubject().id(), half);
    List<Slips.Slip> meant = slips.stream().filter(slip -> slip.meant().contains(other)).toList();
    Optional<Finding> slip =
        meant.size() >= empty.size() ? first(half, meant.stream()) : Optional.empty();
    return slip.or(
        () ->
            Optional.ofNullable(halves.get(other))
                .filter(across -> causes.may(half, Cause.JOINT_ONE_SIDED, across))
                .filter(across -> empty(across).size() == empty.size()));
  }

  /** The cavities that a finding of one half says are empty on the other. */
  private List<Point> empty(Finding half) {
    return cavities(half).stream()
        .flatMap(at -> facts.wiring().meets(at).stream())
        .filter(opposite -> opposite.kind() == Point.Kind.CAVITY)
        .filter(opposite -> facts.wiring().endsAt(opposite).isEmpty())
        .toList();
  }

  /** The cavities among the subjects of a finding that lie in its connector. */
  private List<Point> cavities(Finding half) {
    String connector = half.firstSubject().id();
    Set<Subject> named = new HashSet<>(half.subjects());
    return facts.wiring().cavitiesOf(connector).stream()
        .map(name -> Point.cavity(connector, name))
        .filter(at -> named.contains(at.subject()))
        .toList();
  }

  private Optional<Finding> ofDead(Finding finding, DeadStretch dead) {
    return first(finding, slips.stream().filter(slip -> dead.wouldEndBy(slip.from(), slip.to())))
        .or(
            () ->
                causes.causing(Cause.JOINT_ONE_SIDED).stream()
                    .filter(half -> causes.may(finding, Cause.JOINT_ONE_SIDED, half))
                    .filter(half -> cavities(half).stream().anyMatch(dead::holds))
                    .findFirst());
  }
}
