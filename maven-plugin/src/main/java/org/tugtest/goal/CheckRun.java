package org.tugtest.goal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.files.DiskFiles;
import org.tugtest.files.Folders;
import org.tugtest.finding.Level;
import org.tugtest.fleet.Fleet;
import org.tugtest.fleet.Progress;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.rule.RuleInfo;

/** One run of {@code check}, from its parameters to the verdict. */
final class CheckRun {
  private static final int THREADS = 2;
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
    Gate gate = gate();
    String day = order.today();
    LocalDate today = day == null ? null : Words.day("tugtest.today", day);
    CiSystem ci = CiSystem.of(order.annotations(), around.environment());
    ReportFiles reports = ReportFiles.of(order.formats(), ci);
    DiskFiles files = place.files();
    HarnessReader reader = new HarnessReader(files, ReadLimits.STANDARD);
    List<String> roots = reader.roots();
    if (roots.isEmpty()) {
      nothingToCheck(outcome);
      return;
    }
    Seen seen = Seen.of(around, place.scope(), files, today, Clock.system(ZoneId.systemDefault()));
    remark(files, seen);
    boolean whole = files.all().stream().filter(HarnessReader::isRoot).count() == roots.size();
    List<HarnessReport> checked = check(reader, catalog, selection, seen, roots, whole);
    Report report =
        new Report(
            around.version(),
            Folders.slashed(seen.from().relativize(place.folders().harness())),
            seen.revision(),
            gate,
            catalog.infos(),
            checked);
    Optional<Path> shown = reports.write(report, place.output());
    Verdict verdict = new Verdict(around, report, shown, log);
    verdict.print();
    new CiNotice(ci, around.environment(), new RawOutput(), log)
        .tell(report, ReportFiles.summary());
    outcome.say(report.outcome());
    verdict.decide();
  }

  private List<HarnessReport> check(
      HarnessReader reader,
      RuleCatalog catalog,
      Selection selection,
      Seen seen,
      List<String> roots,
      boolean whole)
      throws MojoExecutionException {
    Fleet fleet = new Fleet(reader, catalog, selection, seen.revision().today(), THREADS);
    try {
      return fleet.check(roots, whole, new Progress(log::info, System::nanoTime));
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new MojoExecutionException("the check was stopped before it was done", stopped);
    }
  }

  private void nothingToCheck(OutcomeFile outcome) throws MojoExecutionException {
    String why = place.nothingFound(around);
    if (order.failOnNoFiles()) {
      throw new MojoExecutionException(why);
    }
    outcome.say(Report.Outcome.CLEAN);
    log.info("nothing to check: " + why);
  }

  private void remark(DiskFiles files, Seen seen) {
    for (String pattern : place.choice().idle(files.all())) {
      log.warn("the pattern " + pattern + " fits no file");
    }
    files.remarks().forEach(log::warn);
    seen.remarks().forEach(log::warn);
  }

  private Selection selection(RuleCatalog catalog) throws MojoExecutionException {
    List<String> ids = catalog.infos().stream().map(RuleInfo::id).toList();
    return new Selection(
        new HashSet<>(Words.allOf("tugtest.rules", order.rules(), ids)),
        new HashSet<>(Words.allOf("tugtest.skipRules", order.skipRules(), ids)));
  }

  private Gate gate() throws MojoExecutionException {
    List<String> words = new ArrayList<>();
    for (Level level : Level.values()) {
      words.add(level.word());
    }
    words.add("never");
    String word = Words.oneOf("tugtest.failOn", order.failOn(), words);
    int least = Words.percent("tugtest.coverageMin", order.coverageMin());
    return Gate.of(word)
        .orElseThrow(() -> new IllegalStateException("no gate for " + word))
        .withCoverageMin(least);
  }
}
