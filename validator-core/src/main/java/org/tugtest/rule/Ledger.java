package org.tugtest.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.text.Places;

/** Where a rule says what it found of each subject. Not for several threads. */
public final class Ledger {
  /** The reason for a subject at which the team switched the rule off. */
  static final String OFF_HERE = "switched off for this place under limits";

  private final RuleInfo info;
  private final Settings settings;
  private final Places places;
  private final List<Finding> findings = new ArrayList<>();
  private final Set<Subject> bad = new HashSet<>();
  private final Map<String, Set<Subject>> missing = new TreeMap<>();
  private int fine;

  /** An empty ledger for one rule. */
  public Ledger(RuleInfo info, Settings settings, Places places) {
    this.info = info;
    this.settings = settings;
    this.places = places;
  }

  /** A subject was judged and nothing is wrong with it. */
  public void fine() {
    fine++;
  }

  /** So many subjects were judged and nothing is wrong with them. */
  public void fine(int subjects) {
    fine += subjects;
  }

  /**
   * A subject was judged and this is wrong. Its first subject counts as judged, once however many
   * findings it has.
   *
   * @throws IllegalArgumentException when the draft asks for a graver level than the rule declares
   */
  public void finding(Finding.Draft draft) {
    finding(draft, List.of(draft.firstSubject()));
  }

  /**
   * These subjects were judged and this is wrong with all of them: one finding with a list, such as
   * one for a loom. They count as judged, each once, and its first subject only when it is one of
   * them.
   */
  public void finding(Finding.Draft draft, Collection<Subject> members) {
    Subject first = draft.firstSubject();
    if (settings.offAt(first)) {
      members.forEach(member -> notJudged(member, OFF_HERE));
      return;
    }
    Level own = draft.ownLevel();
    if (own != null && !info.gravest().atLeast(own)) {
      throw new IllegalArgumentException(
          info.id()
              + " declares "
              + info.gravest().word()
              + " as the level of its gravest findings, and one is of level "
              + own.word());
    }
    Level level = settings.levelAt(first, own).cappedAt(draft.ownBasis().gravest());
    findings.add(draft.finish(info.id(), level, places));
    bad.addAll(members);
  }

  /**
   * Whether the team switched the rule off for a subject that would be one of a list; if so, it is
   * noted as not judged.
   */
  public boolean switchedOff(Subject member) {
    boolean off = settings.offAt(member);
    if (off) {
      notJudged(member, OFF_HERE);
    }
    return off;
  }

  /**
   * A subject could not be judged.
   *
   * @param reason what is missing, in a few words that are the same for all such subjects
   */
  public void notJudged(Subject subject, String reason) {
    missing.computeIfAbsent(reason, word -> new HashSet<>()).add(subject);
  }

  /** What was found, in the order it was said. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** How far the rule came. */
  public Coverage coverage() {
    return Coverage.of(info.id(), info.subjects(), fine + bad.size(), missing);
  }
}
