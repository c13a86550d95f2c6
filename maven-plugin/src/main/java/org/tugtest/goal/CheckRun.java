package org.tugtest.goal;

import java.io.IOException;
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
import org.jspecify.annotations.Nullable;
import org.tugtest.base.Ground;
import org.tugtest.base.Seen;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.files.Folders;
import org.tugtest.finding.Level;
import org.tugtest.read.HarnessReader;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.rule.RuleInfo;

/** One run of {@code check}, from its parameters to the verdict. */
final class CheckRun {
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
    try (Ground ground = Ground.of(place.folders(), around.environment())) {
      place.refuseOutside(around, ground);
      Seen seen = seen(ground, today);
      if (seen.files().paths().stream().noneMatch(HarnessReader::isRoot)) {
        nothingToCheck(outcome);
        return;
      }
      remark(seen);
      Judging judging = new Judging(around, place, catalog, selection, log);
      List<HarnessReport> checked = judging.judge(seen, judging.find(ground, order.against()));
      Path from = ground.shownFrom(place.folders(), around.base());
      Report report =
          new Report(
              around.version(),
              Folders.slashed(from.relativize(place.folders().harness())),
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
  }

  private Seen seen(Ground ground, @Nullable LocalDate today) throws MojoExecutionException {
    Clock clock = Clock.system(ZoneId.systemDefault());
    if (!order.against().staged()) {
      return Seen.onDisk(ground, place.scope(), place.files(), today, clock);
    }
    try {
      return Seen.staged(ground.needed("tugtest.staged"), place.scope(), today, clock);
    } catch (IOException unread) {
      throw new MojoExecutionException(String.valueOf(unread.getMessage()), unread);
    }
  }

  private void nothingToCheck(OutcomeFile outcome) throws MojoExecutionException {
    String why =
        order.against().staged() ? place.nothingStaged(around) : place.nothingFound(around);
    if (order.failOnNoFiles()) {
      throw new MojoExecutionException(why);
    }
    outcome.say(Report.Outcome.CLEAN);
    log.info("nothing to check: " + why);
  }

  private void remark(Seen seen) {
    for (String pattern : place.choice().idle(seen.files().all())) {
      log.warn("the pattern " + pattern + " fits no file");
    }
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
    Gate gate =
        Gate.of(word)
            .orElseThrow(() -> new IllegalStateException("no gate for " + word))
            .withCoverageMin(least);
    Gate aged = order.against().failOnlyNew() ? gate.forNewOnly() : gate;
    return order.against().failOnUnannounced() ? aged.forAnnouncedOnly() : aged;
  }
}
