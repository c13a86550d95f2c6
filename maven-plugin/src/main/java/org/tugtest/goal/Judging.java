package org.tugtest.goal;

import java.io.IOException;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.logging.Log;
import org.tugtest.base.Against;
import org.tugtest.base.BaseFinder;
import org.tugtest.base.BaseWord;
import org.tugtest.base.Ground;
import org.tugtest.base.Seen;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.files.HarnessFiles;
import org.tugtest.fleet.AnnouncedChanges;
import org.tugtest.fleet.Baselines;
import org.tugtest.fleet.Fleet;
import org.tugtest.fleet.Merges;
import org.tugtest.fleet.Progress;
import org.tugtest.git.StoredFiles;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Revision;

/**
 * Runs the rules on all roots and holds them against their base.
 *
 * @param trials how often a rule may be asked to find out what causes a new finding
 */
record Judging(
    Surroundings around,
    Workplace place,
    RuleCatalog catalog,
    Selection selection,
    int trials,
    Log log) {
  private static final int THREADS = 2;

  /**
   * Judges all roots of what was seen; at least one.
   *
   * @param against what they are held against
   */
  List<HarnessReport> judge(Seen seen, Against against) throws MojoExecutionException {
    HarnessReader reader = new HarnessReader(seen.files(), ReadLimits.STANDARD);
    List<String> roots = reader.roots();
    boolean whole =
        seen.files().all().stream().filter(HarnessReader::isRoot).count() == roots.size();
    AnnouncedChanges announced = AnnouncedChanges.of(seen.files(), ReadLimits.STANDARD);
    return asked(
        () -> {
          Fleet fleet = fleet(reader, seen.revision());
          List<HarnessReport> checked = fleet.check(roots, whole, announced.problems(), progress());
          if (seen.files() instanceof StoredFiles stored && stored.unheld().isPresent()) {
            throw new IOException(stored.unheld().get());
          }
          return hold(checked, against, baselines(fleet, seen.revision(), announced));
        });
  }

  /** Judges the merge of two branches, made on the model. */
  List<HarnessReport> judge(Revision revision, Against.Sides sides, Against.Fork fork)
      throws MojoExecutionException {
    HarnessFiles files = fork.ours().files();
    AnnouncedChanges announced = AnnouncedChanges.of(files, ReadLimits.STANDARD);
    return asked(
        () -> {
          Fleet fleet = fleet(new HarnessReader(files, ReadLimits.STANDARD), revision);
          List<HarnessReport> merged = new Merges(fleet, progress(), log::warn).judge(fork);
          return baselines(fleet, revision, announced).hold(merged, sides);
        });
  }

  private Fleet fleet(HarnessReader reader, Revision revision) {
    return new Fleet(reader, catalog, selection, revision.today(), THREADS);
  }

  private Progress progress() {
    return new Progress(log::info, System::nanoTime);
  }

  private Baselines baselines(Fleet fleet, Revision revision, AnnouncedChanges announced) {
    return new Baselines(fleet, revision, announced.changes(), trials, progress());
  }

  private interface Asked {
    List<HarnessReport> call() throws IOException, InterruptedException;
  }

  private static List<HarnessReport> asked(Asked work) throws MojoExecutionException {
    try {
      return work.call();
    } catch (IOException unread) {
      throw new MojoExecutionException(String.valueOf(unread.getMessage()), unread);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new MojoExecutionException("the check was stopped before it was done", stopped);
    }
  }

  private List<HarnessReport> hold(
      List<HarnessReport> checked, Against against, Baselines baselines)
      throws IOException, InterruptedException {
    if (against instanceof Against.Sides sides) {
      return baselines.hold(checked, sides);
    }
    if (against instanceof Against.Nothing nothing) {
      log.info("there is nothing to be held against: " + nothing.note());
      return baselines.holdAgainstNothing(checked);
    }
    if (against instanceof Against.Unfound unfound) {
      log.warn("no base is found, so all findings count: " + unfound.note());
    }
    return checked;
  }

  /** Finds what is asked for. */
  Against find(Ground ground, BaseOrder order, BaseWord word) throws MojoExecutionException {
    try {
      return order.followsHead(word)
          ? BaseFinder.parents(ground.needed("tugtest.staged"), place.scope())
          : new BaseFinder(ground, around.environment(), place.scope(), around::resolve).find(word);
    } catch (IOException unread) {
      throw new MojoExecutionException(String.valueOf(unread.getMessage()), unread);
    }
  }
}
