package org.tugtest.fleet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.tugtest.base.Against;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.git.StoredFiles;
import org.tugtest.model.AnnouncedChange;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.Baseline;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Revision;

/**
 * Holds roots against their base. Both are judged by the same rules on the same day, each by its
 * own limits and waivers.
 *
 * @param fleet how roots are checked; of its reader nothing is used
 * @param revision what was checked
 * @param announced what {@code changes/} announces now
 */
public record Baselines(
    Fleet fleet, Revision revision, List<AnnouncedChange> announced, Progress progress) {

  /**
   * Each root with what it is held against.
   *
   * @throws IOException when the base cannot be read; the message is a whole sentence
   * @throws InterruptedException when the thread is told to stop
   */
  public List<HarnessReport> hold(List<HarnessReport> checked, Against.Sides sides)
      throws IOException, InterruptedException {
    Map<String, Snapshot> base = snapshots(checked, sides.base());
    List<AnnouncedChange> before =
        AnnouncedChanges.of(sides.base().files(), ReadLimits.STANDARD).changes();
    List<Map<String, Snapshot>> parents = new ArrayList<>();
    for (Against.Side parent : sides.merged()) {
      parents.add(snapshots(checked, parent));
    }
    List<Callable<HarnessReport>> work = new ArrayList<>();
    for (HarnessReport harness : checked) {
      work.add(
          () -> {
            Snapshot after = Snapshot.of(revision.shown(), harness.facts(), harness.result());
            Comparison comparison = Comparison.of(of(base, harness), after);
            List<Comparison> further =
                parents.stream().map(parent -> Comparison.of(of(parent, harness), after)).toList();
            return new HarnessReport(
                harness.facts(),
                harness.result(),
                new Baseline(comparison, further, Announced.of(comparison, before, announced)));
          });
    }
    try (SideBySide threads = fleet.sideBySide(checked.size(), progress)) {
      return threads.all("comparing", work);
    }
  }

  /** Each root held against a repository that holds nothing yet. */
  public List<HarnessReport> holdAgainstNothing(List<HarnessReport> checked) {
    List<HarnessReport> held = new ArrayList<>();
    for (HarnessReport harness : checked) {
      Comparison comparison =
          Comparison.of(
              Snapshot.absent("an empty repository", harness.facts()),
              Snapshot.of(revision.shown(), harness.facts(), harness.result()));
      Announced all = Announced.of(comparison, List.of(), announced);
      held.add(
          new HarnessReport(
              harness.facts(), harness.result(), new Baseline(comparison, List.of(), all)));
    }
    return held;
  }

  private static Snapshot of(Map<String, Snapshot> snapshots, HarnessReport harness) {
    Snapshot snapshot = snapshots.get(harness.root());
    if (snapshot == null) {
      throw new IllegalStateException("no snapshot of " + harness.root());
    }
    return snapshot;
  }

  /** By root now, that root as the side has it. */
  private Map<String, Snapshot> snapshots(List<HarnessReport> checked, Against.Side side)
      throws IOException, InterruptedException {
    HarnessReader reader = new HarnessReader(side.files(), ReadLimits.STANDARD);
    List<String> now = checked.stream().map(HarnessReport::root).toList();
    Map<String, String> pairs =
        side.root() == null ? RootPairs.of(now, reader.roots()) : named(now, side.root());
    Map<String, HarnessReport> before = new LinkedHashMap<>();
    List<String> roots = List.copyOf(new LinkedHashSet<>(pairs.values()));
    for (HarnessReport one : fleet.reading(reader).check(roots, false, List.of(), progress)) {
      before.put(one.root(), one);
    }
    if (side.files() instanceof StoredFiles stored && stored.unheld().isPresent()) {
      throw new IOException(stored.unheld().get());
    }
    Map<String, Snapshot> snapshots = new LinkedHashMap<>();
    for (HarnessReport harness : checked) {
      HarnessReport its = before.get(pairs.get(harness.root()));
      snapshots.put(
          harness.root(),
          its == null
              ? Snapshot.absent(side.shown(), harness.facts())
              : Snapshot.of(side.shown(), its.facts(), its.result()));
    }
    return snapshots;
  }

  private static Map<String, String> named(List<String> now, String root) throws IOException {
    if (now.size() != 1) {
      throw new IOException(
          "tugtest.base names one file, and there are "
              + now.size()
              + " roots; choose one with tugtest.includes, or name a folder of roots");
    }
    return Map.of(now.get(0), root);
  }
}
