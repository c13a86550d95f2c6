package org.tugtest.hook;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import org.tugtest.base.Against;
import org.tugtest.base.BaseFinder;
import org.tugtest.base.Ground;
import org.tugtest.base.Seen;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.files.Choice;
import org.tugtest.files.Folders;
import org.tugtest.files.Scope;
import org.tugtest.finding.Level;
import org.tugtest.fleet.AnnouncedChanges;
import org.tugtest.fleet.Baselines;
import org.tugtest.fleet.Fleet;
import org.tugtest.fleet.Progress;
import org.tugtest.git.Environment;
import org.tugtest.git.StoredFiles;
import org.tugtest.git.WorkTree;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.PrintableText;
import org.tugtest.report.Report;
import org.tugtest.report.console.ConsoleLine;
import org.tugtest.report.console.ConsoleReport;
import org.tugtest.report.console.Ending;

/** One check of the content that is about to be committed. */
final class GuardRun {
  /** How often a rule may be asked to find out which changes of a merge meet. */
  private static final int TRIALS = 40;

  private final GuardOrder order;
  private final Path top;
  private final Environment environment;
  private final Clock clock;
  private final Consumer<String> lines;

  /**
   * A run.
   *
   * @param top the folder that the order's folders are meant from
   * @param lines takes the lines for the person who commits
   */
  GuardRun(
      GuardOrder order, Path top, Environment environment, Clock clock, Consumer<String> lines) {
    this.order = order;
    this.top = top;
    this.environment = environment;
    this.clock = clock;
    this.lines = lines;
  }

  /**
   * Checks.
   *
   * @throws IOException when it cannot; the message is a whole sentence
   */
  Report.Outcome check() throws IOException {
    return check(false);
  }

  /** Checks as if every finding blocked, so that the commit before is read too. */
  void rehearse() throws IOException {
    check(true);
  }

  private Report.Outcome check(boolean rehearsed) throws IOException {
    List<Path> libraries = order.libraries().stream().map(top::resolve).toList();
    Folders folders = new Folders(top.resolve(order.harness()), libraries, List.of());
    Scope scope =
        new Scope(folders, Choice.of(order.includes(), order.excludes()), ReadLimits.STANDARD);
    try (Ground ground = Ground.of(folders, environment)) {
      WorkTree tree = ground.needed("the guard");
      Seen seen = Seen.staged(tree, scope, null, clock);
      seen.remarks().forEach(lines);
      HarnessReader reader = new HarnessReader(seen.files(), ReadLimits.STANDARD);
      List<String> roots = reader.roots();
      if (roots.isEmpty()) {
        lines.accept("nothing to check: the commit holds no file *.harness.json");
        return Report.Outcome.CLEAN;
      }
      RuleCatalog catalog = RuleCatalog.standard();
      Level from = from(order.gate());
      Selection selection = Selection.ALL.from(from);
      Fleet fleet = new Fleet(reader, catalog, selection, seen.revision().today(), 1);
      Judged judged = new Judged(fleet, seen, tree, scope);
      List<HarnessReport> checked = judged(judged, roots, rehearsed);
      Report report =
          new Report(
              "",
              Folders.slashed(tree.top().relativize(folders.harness())),
              seen.revision(),
              order.gate().forNewOnly(),
              catalog.infos(),
              checked);
      for (HarnessReport harness : checked) {
        if (harness.holdsNothing()) {
          lines.accept(
              PrintableText.of(report.path(harness.root()))
                  + " holds no wire, no device and no connector, so there was nothing to check in"
                  + " it");
        }
      }
      String goals = order.goals();
      Ending ending =
          new Ending(
              null,
              goals + "explain -Dtugtest.rule=",
              goals + "trace -Dtugtest.at=",
              goals + "tidy -Dtugtest.tidy.adopt",
              from);
      ConsoleReport.lines(report, ending).stream().map(ConsoleLine::text).forEach(lines);
      if (from != Level.NOTE) {
        lines.accept(
            "looked for "
                + (from == Level.ERROR ? "errors alone; warnings and notes" : "no notes; notes")
                + " are told by: "
                + goals
                + "check");
      }
      if (!order.later().isBlank()) {
        lines.accept(order.later());
      }
      return report.outcome();
    }
  }

  /** The level from which on a finding could block; errors are told even when nothing blocks. */
  private static Level from(Gate gate) {
    Level from = gate.from();
    return from == null ? Level.ERROR : from;
  }

  /** What is needed to judge. */
  private record Judged(Fleet fleet, Seen seen, WorkTree tree, Scope scope) {}

  /** Most commits leave nothing to block; the commits before them are not read then. */
  private List<HarnessReport> judged(Judged with, List<String> roots, boolean rehearsed)
      throws IOException {
    Progress progress = new Progress(lines, System::nanoTime);
    AnnouncedChanges announced = AnnouncedChanges.of(with.seen().files(), ReadLimits.STANDARD);
    try {
      List<HarnessReport> checked =
          with.fleet().check(roots, false, announced.problems(), progress);
      if (with.seen().files() instanceof StoredFiles stored && stored.unheld().isPresent()) {
        throw new IOException(stored.unheld().get());
      }
      Gate any = order.gate();
      if (!rehearsed && checked.stream().noneMatch(harness -> blocks(any, harness))) {
        return checked;
      }
      Against parents = BaseFinder.parents(with.tree(), with.scope());
      boolean merge = parents instanceof Against.Sides sides && sides.fork() != null;
      Baselines baselines =
          new Baselines(
              with.fleet(),
              with.seen().revision(),
              announced.changes(),
              merge ? TRIALS : 0,
              progress);
      return parents instanceof Against.Sides sides
          ? baselines.hold(checked, sides)
          : baselines.holdAgainstNothing(checked);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IOException("the check was stopped before it was done", stopped);
    }
  }

  private static boolean blocks(Gate gate, HarnessReport harness) {
    return harness.result().findings().stream().anyMatch(found -> gate.blocks(harness, found));
  }
}
