package org.tugtest.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;
import org.jspecify.annotations.Nullable;
import org.tugtest.base.Against;
import org.tugtest.base.BaseFinder;
import org.tugtest.base.Ground;
import org.tugtest.base.Seen;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.git.Commit;
import org.tugtest.read.HarnessReader;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Revision;
import org.tugtest.report.console.ChangeLines;

/**
 * One run of {@code compare}, from its parameters to the verdict.
 *
 * @param parents the two sides of a merge; null when it is no merge that is looked at
 */
record CompareRun(
    Surroundings around, Workplace place, BaseOrder order, @Nullable Parents parents, Log log) {
  /** How often a rule may be asked to find out what causes the new findings. */
  private static final int TRIALS = 400;

  void run(String failOn, @Nullable List<String> formats, @Nullable String day)
      throws MojoExecutionException, MojoFailureException {
    Gate gate = Gates.of(failOn, order);
    LocalDate today = day == null ? null : Words.day("tugtest.today", day);
    ReportFiles reports = ReportFiles.ofComparison(formats);
    RuleCatalog catalog = TeamRules.catalog();
    try (Ground ground = Ground.of(place.folders(), around.environment())) {
      place.refuseOutside(around, ground);
      Looking looking = new Looking(around, place, ground, log);
      Judging judging = new Judging(around, place, catalog, Selection.ALL, TRIALS, log);
      Report report =
          parents != null && order.head() == null && !order.staged()
              ? merged(ground, judging, parents, today, looking, gate, catalog)
              : seen(ground, judging, today, looking, gate, catalog);
      Optional<Path> shown = reports.write(report, place.output());
      ChangeLines.of(report).forEach(log::info);
      Verdict verdict = new Verdict(around, report, shown, log);
      verdict.print();
      verdict.decide();
    }
  }

  private Report seen(
      Ground ground,
      Judging judging,
      @Nullable LocalDate today,
      Looking looking,
      Gate gate,
      RuleCatalog catalog)
      throws MojoExecutionException {
    Seen seen = looking.at(order, today);
    if (seen.files().paths().stream().noneMatch(HarnessReader::isRoot)) {
      throw new MojoExecutionException(looking.nothing(order));
    }
    looking.remark(seen);
    Against against =
        parents == null ? judging.find(ground, order, order.ofComparison()) : fork(ground, parents);
    return looking.report(seen.revision(), gate, catalog, judging.judge(seen, against));
  }

  private Report merged(
      Ground ground,
      Judging judging,
      Parents both,
      @Nullable LocalDate today,
      Looking looking,
      Gate gate,
      RuleCatalog catalog)
      throws MojoExecutionException {
    Against.Sides sides = fork(ground, both);
    Against.Fork fork = sides.fork();
    Commit ours = fork == null ? null : fork.ours().commit();
    Commit theirs = fork == null ? null : fork.theirs().commit();
    if (fork == null || ours == null || theirs == null) {
      throw new IllegalStateException("a fork without commits");
    }
    LocalDate later = ours.day().isAfter(theirs.day()) ? ours.day() : theirs.day();
    Revision revision =
        today == null
            ? new Revision(ours.id(), true, later, "the later date of the two commits")
            : new Revision(ours.id(), true, today, "tugtest.today");
    List<HarnessReport> roots = judging.judge(revision, sides, fork);
    if (roots.isEmpty()) {
      throw new MojoExecutionException(place.nothingIn(around, both.ours()));
    }
    return looking.report(revision, gate, catalog, roots);
  }

  private Against.Sides fork(Ground ground, Parents both) throws MojoExecutionException {
    try {
      return new BaseFinder(ground, around.environment(), place.scope(), around::resolve)
          .fork(both.ours(), both.theirs());
    } catch (IOException unread) {
      throw new MojoExecutionException(String.valueOf(unread.getMessage()), unread);
    }
  }
}
