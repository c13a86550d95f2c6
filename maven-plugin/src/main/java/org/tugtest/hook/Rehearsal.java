package org.tugtest.hook;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.Baseline;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Revision;
import org.tugtest.report.console.ConsoleReport;
import org.tugtest.report.console.Ending;
import org.tugtest.rule.Example;
import org.tugtest.rule.RuleInfo;

/**
 * Goes once through all that a check may need, on the examples of the rules and on the repository
 * as it is, so that the JVM can note down its classes for later starts.
 */
final class Rehearsal {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private Rehearsal() {}

  /** Checks each example, then what the repository holds; the number of lines about examples. */
  static int run(GuardRun here) {
    try {
      here.rehearse();
    } catch (IOException notYet) {
      // Without a harness, or without a commit, there are the examples.
    }
    RuleCatalog catalog = RuleCatalog.standard();
    int found = 0;
    for (RuleInfo info : catalog.infos()) {
      Snapshot passing = judged(catalog, info.passing().get(0));
      Snapshot failing = judged(catalog, info.failing().get(0));
      Comparison comparison = Comparison.of(passing, failing);
      Baseline baseline =
          new Baseline(comparison, List.of(), Announced.of(comparison, List.of(), List.of()));
      Report report =
          new Report(
              "",
              "",
              new Revision(null, true, DAY, ""),
              new Gate(Level.ERROR, 0).forNewOnly(),
              catalog.infos(),
              List.of(new HarnessReport(failing.facts(), failing.result(), baseline)));
      found += ConsoleReport.lines(report, new Ending(null, "", "", "")).size();
    }
    return found;
  }

  private static Snapshot judged(RuleCatalog catalog, String text) {
    Example example = Example.of(text);
    HarnessReader reader = new HarnessReader(MemoryFiles.of(example.files()), ReadLimits.STANDARD);
    Facts facts = Facts.of(reader.read(example.root()), DAY, catalog.known());
    return Snapshot.of("", facts, new Checker(catalog, Selection.ALL).check(facts));
  }
}
