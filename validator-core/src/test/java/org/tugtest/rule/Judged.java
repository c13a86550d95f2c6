package org.tugtest.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;
import org.tugtest.text.Problem;

/** What one rule says of one harness; for tests. */
public record Judged(List<Finding> findings, Coverage coverage) {
  /** The name of the root in tests. */
  public static final String ROOT = "car.harness.json";

  /** The day in tests. */
  public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  /** Judges a root given as JSON. */
  public static Judged of(Rule rule, String json) {
    return of(rule, Map.of(ROOT, json));
  }

  /** Judges the root {@link #ROOT} among these files. */
  public static Judged of(Rule rule, Map<String, String> files) {
    return of(rule, facts(files));
  }

  /** Judges these facts. */
  public static Judged of(Rule rule, Facts facts) {
    RuleInfo info = rule.info();
    Settings settings = new Settings(info, facts.harness().limits().get(info.id()));
    Ledger ledger = new Ledger(info, settings, facts.places());
    rule.judge(facts, settings, ledger);
    return new Judged(ledger.findings(), ledger.coverage());
  }

  /** The facts of the root {@link #ROOT} among these files, with no rules known. */
  public static Facts facts(Map<String, String> files) {
    return Facts.of(read(files), TODAY, KnownRules.NONE);
  }

  /** Reads the root {@link #ROOT} among these files, and says which of them it does not use. */
  public static ReadHarness read(Map<String, String> files) {
    HarnessReader reader = new HarnessReader(MemoryFiles.of(files), ReadLimits.STANDARD);
    ReadHarness read = reader.read(ROOT);
    List<Problem> problems = new ArrayList<>(read.problems());
    problems.addAll(reader.unused(List.of(read)));
    return new ReadHarness(read.harness(), read.places(), problems, read.texts(), read.unread());
  }

  /** The sentences found. */
  public List<String> messages() {
    return findings.stream().map(Finding::message).toList();
  }

  /** The first subjects of what was found. */
  public List<String> subjects() {
    return findings.stream().map(Finding::firstSubject).map(Subject::place).toList();
  }
}
