package org.tugtest.goal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.FindingGroup;
import org.tugtest.report.Report;
import org.tugtest.report.VerdictSentence;
import org.tugtest.report.console.ConsoleLine;
import org.tugtest.report.console.ConsoleReport;
import org.tugtest.report.console.Ending;

/**
 * Tells the end of a check and decides how the build goes on.
 *
 * @param shown the report that a person would open; empty when none was written
 */
record Verdict(Surroundings around, Report report, Optional<Path> shown, Log log) {

  /** Prints all lines, each by one call. */
  void print() {
    Ending ending =
        new Ending(
            place(),
            around.goals() + "explain -Dtugtest.rule=",
            around.goals() + "trace -Dtugtest.at=",
            around.goals() + "tidy -Dtugtest.tidy.adopt");
    for (ConsoleLine line : ConsoleReport.lines(report, ending)) {
      if (line.level() == Level.ERROR) {
        log.error(line.text());
      } else if (line.level() == Level.WARNING) {
        log.warn(line.text());
      } else {
        log.info(line.text());
      }
    }
  }

  /** Breaks the build when something blocks or could not be checked, with one sentence. */
  void decide() throws MojoExecutionException, MojoFailureException {
    if (report.outcome() == Report.Outcome.CLEAN) {
      return;
    }
    List<String> sentence = new ArrayList<>();
    sentence.add(VerdictSentence.of(report));
    if (place() != null) {
      sentence.add("report: " + place());
    }
    if (report.outcome() == Report.Outcome.CANNOT_CHECK) {
      throw new MojoExecutionException(String.join("; ", sentence));
    }
    gravest().ifPresent(rule -> sentence.add("next: " + explain(rule)));
    throw new MojoFailureException(String.join("; ", sentence));
  }

  private String explain(String rule) {
    return around.goals() + "explain -Dtugtest.rule=" + rule;
  }

  private Optional<String> gravest() {
    return FindingGroup.standing(report.harnesses(), report.gate()::blocks).stream()
        .map(FindingGroup::finding)
        .min(Comparator.comparing(Finding::level))
        .map(Finding::rule);
  }

  private @Nullable String place() {
    return shown.map(around::show).orElse(null);
  }
}
