package org.tugtest.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.Crash;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;

/** Tells the end of a check: lines, the outcome, and how the build goes on. */
record Verdict(
    Surroundings around,
    Workplace place,
    Report report,
    ReportFiles reports,
    CiSystem ci,
    Log log) {

  void tell(OutcomeFile outcome) throws MojoExecutionException, MojoFailureException {
    Map<Level, Integer> counts = new TreeMap<>();
    for (HarnessReport harness : report.harnesses()) {
      for (CheckedFinding checked : harness.result().standing()) {
        Finding finding = checked.finding();
        counts.merge(finding.level(), 1, Integer::sum);
        String line =
            report.shown(finding.at().get(0))
                + ": "
                + finding.level().word()
                + " "
                + finding.rule()
                + " "
                + finding.message();
        if (finding.level() == Level.ERROR) {
          log.error(line);
        } else if (finding.level() == Level.WARNING) {
          log.warn(line);
        } else {
          log.info(line);
        }
        log.info("  " + finding.remedy());
      }
    }
    outcome.say(report.outcome());
    if (report.outcome() == Report.Outcome.CANNOT_CHECK) {
      throw new MojoExecutionException(broken());
    }
    if (report.outcome() == Report.Outcome.FINDINGS) {
      throw new MojoFailureException(counts + " in " + around.show(place.folders().harness()));
    }
  }

  private String broken() {
    List<String> rules = new ArrayList<>();
    for (HarnessReport harness : report.harnesses()) {
      for (Crash crash : harness.result().crashes()) {
        rules.add(crash.rule() + " (" + crash.what() + ")");
      }
    }
    return "a rule broke, which is a fault of the tool and not of the harness: "
        + String.join(", ", rules);
  }
}
