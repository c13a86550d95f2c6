package org.tugtest.goal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;
import org.tugtest.base.Against;
import org.tugtest.base.Ground;
import org.tugtest.base.Seen;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.read.HarnessReader;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.rule.RuleInfo;

/** One run of {@code check}, from its parameters to the verdict. */
final class CheckRun {
  private static final String EMPTY_MEANT = "tugtest.failOnNoFiles=false";

  private final Surroundings around;
  private final Workplace place;
  private final CheckOrder order;
  private final Log log;

  CheckRun(Surroundings around, Workplace place, CheckOrder order, Log log) {
    this.around = around;
    this.place = place;
    this.order = order;
    this.log = log;
  }

  void run() throws MojoExecutionException, MojoFailureException {
    OutcomeFile outcome = OutcomeFile.begin(place.output());
    RuleCatalog catalog = TeamRules.catalog();
    Selection selection = selection(catalog);
    Gate gate =
        Gates.of(order.failOn(), order.against())
            .withCoverageMin(Words.percent("tugtest.coverageMin", order.coverageMin()))
            .refusingEmpty(order.failOnNoFiles());
    String day = order.today();
    LocalDate today = day == null ? null : Words.day("tugtest.today", day);
    CiSystem ci = CiSystem.of(order.annotations(), around.environment());
    ReportFiles reports = ReportFiles.of(order.formats(), ci);
    try (Ground ground = Ground.of(place.folders(), around.environment())) {
      place.refuseOutside(around, ground);
      Looking looking = new Looking(around, place, ground, log);
      Seen seen = looking.at(order.against(), today);
      if (seen.files().paths().stream().noneMatch(HarnessReader::isRoot)) {
        nothingToCheck(looking, outcome);
        return;
      }
      looking.remark(seen);
      Judging judging = new Judging(around, place, catalog, selection, 0, log);
      Against against = judging.find(ground, order.against(), order.against().ofCheck());
      Report report = looking.report(seen.revision(), gate, catalog, judging.judge(seen, against));
      report.harnesses().stream()
          .filter(HarnessReport::holdsNothing)
          .forEach(root -> warnOfNothing(report, root));
      Optional<Path> shown = reports.write(report, place.output());
      Verdict verdict = new Verdict(around, report, shown, log);
      verdict.print();
      new CiNotice(ci, around.environment(), new RawOutput(), log)
          .tell(report, ReportFiles.summary());
      outcome.say(report.outcome());
      verdict.decide();
    }
  }

  private void warnOfNothing(Report report, HarnessReport root) {
    log.warn(
        PrintableText.of(report.path(root.root()))
            + " holds no wire, no device and no connector, so there was nothing to check in it"
            + (report.failed(root) ? "; where that is meant, take " + EMPTY_MEANT : ""));
  }

  private void nothingToCheck(Looking looking, OutcomeFile outcome) throws MojoExecutionException {
    String why = looking.nothing(order.against());
    if (order.failOnNoFiles()) {
      throw new MojoExecutionException(
          why + "; a module that shall have none takes " + EMPTY_MEANT);
    }
    outcome.say(Report.Outcome.CLEAN);
    log.info("nothing to check: " + why);
  }

  private Selection selection(RuleCatalog catalog) throws MojoExecutionException {
    List<String> ids = catalog.infos().stream().map(RuleInfo::id).toList();
    return new Selection(
        new HashSet<>(Words.allOf("tugtest.rules", order.rules(), ids)),
        new HashSet<>(Words.allOf("tugtest.skipRules", order.skipRules(), ids)));
  }
}
