package org.tugtest.report;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.tugtest.check.CheckedFinding;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;

/**
 * How many findings there are. A fault in a file that several roots use counts once.
 *
 * @param standing findings that no waiver covers; every level has an entry
 * @param waived findings that a waiver covers, in one root at least
 */
public record Tally(Map<Level, Integer> standing, int waived) {

  public Tally {
    standing = Collections.unmodifiableMap(new EnumMap<>(standing));
  }

  /** Counts the findings of all roots. */
  public static Tally of(Report report) {
    return of(
        report.harnesses().stream()
            .flatMap(harness -> harness.result().findings().stream())
            .toList());
  }

  /** Counts these findings. */
  public static Tally of(Collection<CheckedFinding> findings) {
    Set<Finding> standing = new HashSet<>();
    findings.stream()
        .filter(checked -> !checked.waived())
        .map(CheckedFinding::finding)
        .forEach(standing::add);
    Set<Finding> waived = new HashSet<>();
    findings.stream()
        .filter(CheckedFinding::waived)
        .map(CheckedFinding::finding)
        .forEach(waived::add);
    return new Tally(counts(standing), waived.size());
  }

  private static Map<Level, Integer> counts(Collection<Finding> findings) {
    Map<Level, Integer> counts = new EnumMap<>(Level.class);
    for (Level level : Level.values()) {
      counts.put(level, 0);
    }
    findings.forEach(finding -> counts.merge(finding.level(), 1, Integer::sum));
    return counts;
  }

  /** How many stand. */
  public int total() {
    return standing.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** {@code 2 errors, 1 warning, 0 notes, 3 waived}. */
  public String shown() {
    return shown(Level.NOTE);
  }

  /** The same without the levels less grave than {@code from}. */
  public String shown(Level from) {
    String levels =
        standing.entrySet().stream()
            .filter(entry -> entry.getKey().atLeast(from))
            .map(entry -> counted(entry.getValue(), entry.getKey().word()))
            .collect(Collectors.joining(", "));
    return levels + ", " + waived + " waived";
  }

  /** The levels that these findings have, with their counts: {@code 2 errors, 1 note}. */
  public static String levels(List<Finding> findings) {
    return levels(findings, "");
  }

  /** The same with words before each level: {@code 2 new errors}. */
  static String levels(List<Finding> findings, String before) {
    return counts(findings).entrySet().stream()
        .filter(entry -> entry.getValue() > 0)
        .map(entry -> counted(entry.getValue(), before + entry.getKey().word()))
        .collect(Collectors.joining(", "));
  }

  /** A count with its noun: {@code 1 error}, {@code 2 errors}. */
  public static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
