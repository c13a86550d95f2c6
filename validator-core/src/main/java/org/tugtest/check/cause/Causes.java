package org.tugtest.check.cause;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Cause;
import org.tugtest.rule.RuleInfo;

/**
 * Which findings only follow from another, of another rule: a load is dead because a wire names a
 * pin that is not there; a wire is too warm because it carries too much. Rules say what they cause
 * and what they follow from ({@link Cause}). What a rule itself says of its cause stands. Nothing
 * follows from a finding that is less grave, so that no error is folded under a warning.
 */
public final class Causes {
  /** Makes all wrong that is reckoned of the harness. */
  private static final Set<Cause> OF_ALL = EnumSet.of(Cause.VOLTS_WRONG, Cause.SUPPLY_SHORTED);

  /** One of two that are said of a thing follows from the other, which is named first here. */
  private static final Set<Cause> OF_ONE_THING =
      EnumSet.range(Cause.ON_WAY_OF_SHORT, Cause.WIRE_TOO_WARM);

  private final Map<Cause, List<Finding>> causing = new EnumMap<>(Cause.class);
  private final Map<Cause, List<Finding>> following = new EnumMap<>(Cause.class);
  private final Map<String, RuleInfo> rules = new HashMap<>();
  private final Map<Finding, Finding> linked = new HashMap<>();

  private Causes(List<Finding> findings, List<RuleInfo> rules) {
    Map<String, List<Finding>> byRule =
        findings.stream().sorted(Finding.ORDER).collect(Collectors.groupingBy(Finding::rule));
    for (RuleInfo rule : rules) {
      List<Finding> its = byRule.getOrDefault(rule.id(), List.of());
      this.rules.put(rule.id(), rule);
      rule.causes().forEach(cause -> list(causing, cause).addAll(its));
      rule.follows().forEach(cause -> list(following, cause).addAll(its));
    }
  }

  private static List<Finding> list(Map<Cause, List<Finding>> by, Cause cause) {
    return by.computeIfAbsent(cause, none -> new ArrayList<>());
  }

  /**
   * Says of the findings of one harness what they follow from.
   *
   * @param standing those that are not waived
   * @param rules the rules they are of
   */
  public static Causes of(
      Facts facts, List<Finding> findings, Set<Finding> standing, List<RuleInfo> rules) {
    Causes causes = new Causes(findings, rules);
    new BehindJoints(facts, causes).link();
    causes.ofAll(facts, standing);
    new Unmet(facts, causes).link();
    causes.ofOneThing(standing);
    new BehindOneFuse(causes).link(standing);
    return causes;
  }

  /** A finding with what it follows from; the same when it follows from none. */
  public Finding told(Finding finding) {
    return linked.getOrDefault(finding, finding);
  }

  /** The findings that are such a cause, by rule and then in the order of reports. */
  List<Finding> causing(Cause cause) {
    return causing.getOrDefault(cause, List.of());
  }

  /** The findings that may follow from such a cause, by rule and then in the order of reports. */
  List<Finding> following(Cause cause) {
    return following.getOrDefault(cause, List.of());
  }

  /**
   * Whether a finding may follow from another that is such a cause: its rule says so, and the other
   * is as grave.
   */
  boolean may(Finding finding, Cause cause, Finding other) {
    RuleInfo rule = rules.get(finding.rule());
    return rule != null
        && rule.follows().contains(cause)
        && !other.equals(finding)
        && other.level().atLeast(finding.level());
  }

  /** Says that a finding follows from another, unless it is said already what it follows from. */
  void link(Finding finding, Finding cause) {
    if (finding.cause() == null) {
      linked.putIfAbsent(finding, finding.because(cause.identity()));
    }
  }

  /** A source of far too many volts, or a short: one finding, and not one for every load. */
  private void ofAll(Facts facts, Set<Finding> standing) {
    for (Cause cause : OF_ALL) {
      causing(cause).stream()
          .filter(finding -> finding.level() == Level.ERROR && standing.contains(finding))
          .findFirst()
          .ifPresent(
              wrong ->
                  following(cause).stream()
                      .filter(finding -> may(finding, cause, wrong))
                      .filter(finding -> !Unmet.isOfTheLoom(facts, finding))
                      .forEach(finding -> link(finding, wrong)));
    }
  }

  /** One finding for a thing, and not one for each of the rules that it offends. */
  private void ofOneThing(Set<Finding> standing) {
    Map<Subject, Map<Finding, Cause>> said = new HashMap<>();
    Set<Finding> followers = new LinkedHashSet<>();
    for (Cause cause : OF_ONE_THING) {
      for (Finding finding : causing(cause)) {
        if (cause != Cause.ON_WAY_OF_SHORT) {
          said(said, finding.firstSubject()).putIfAbsent(finding, cause);
        } else if (standing.contains(finding)) {
          finding.subjects().forEach(each -> said(said, each).putIfAbsent(finding, cause));
        }
      }
      followers.addAll(following(cause));
    }
    for (Finding finding : followers) {
      said(said, finding.firstSubject()).entrySet().stream()
          .takeWhile(before -> !before.getKey().equals(finding))
          .filter(before -> may(finding, before.getValue(), before.getKey()))
          .findFirst()
          .ifPresent(before -> link(finding, before.getKey()));
    }
  }

  private static Map<Finding, Cause> said(Map<Subject, Map<Finding, Cause>> all, Subject of) {
    return all.computeIfAbsent(of, none -> new LinkedHashMap<>());
  }
}
