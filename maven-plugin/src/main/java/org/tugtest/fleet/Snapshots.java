package org.tugtest.fleet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.tugtest.base.Against.Side;
import org.tugtest.compare.Snapshot;
import org.tugtest.facts.Facts;
import org.tugtest.git.StoredFiles;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.HarnessReport;
import org.tugtest.text.Problem;

/** The roots of now as other sides have them, each side read and judged once. */
final class Snapshots {
  private final Fleet fleet;
  private final Map<String, Facts> now;
  private final Progress progress;
  private final Map<Side, Map<String, Snapshot>> known = new HashMap<>();

  /**
   * Snapshots beside these roots.
   *
   * @param now by path; the facts of a root are asked only where a side lacks it
   */
  Snapshots(Fleet fleet, Map<String, Facts> now, Progress progress) {
    this.fleet = fleet;
    this.now = now;
    this.progress = progress;
  }

  /** A root as a side has it. */
  Snapshot of(Side side, String root) throws IOException, InterruptedException {
    Map<String, Snapshot> its = known.get(side);
    if (its == null) {
      its = read(side);
      known.put(side, its);
    }
    Snapshot snapshot = its.get(root);
    if (snapshot == null) {
      throw new IllegalStateException("no snapshot of " + root);
    }
    return snapshot;
  }

  private Map<String, Snapshot> read(Side side) throws IOException, InterruptedException {
    HarnessReader reader = new HarnessReader(side.files(), ReadLimits.STANDARD);
    List<String> paths = List.copyOf(now.keySet());
    Map<String, String> pairs =
        side.root() == null ? RootPairs.of(paths, reader.roots()) : named(paths, side.root());
    Map<String, HarnessReport> before = new LinkedHashMap<>();
    List<String> roots = List.copyOf(new LinkedHashSet<>(pairs.values()));
    List<Problem> ofNone = side.root() == null ? ofNone(side, reader) : List.of();
    for (HarnessReport one : fleet.reading(reader).check(roots, false, ofNone, progress)) {
      before.put(one.root(), one);
    }
    if (side.files() instanceof StoredFiles stored && stored.unheld().isPresent()) {
      throw new IOException(stored.unheld().get());
    }
    Map<String, Snapshot> snapshots = new LinkedHashMap<>();
    now.forEach(
        (root, facts) -> {
          HarnessReport its = before.get(pairs.get(root));
          snapshots.put(
              root,
              its == null
                  ? Snapshot.absent(side.shown(), facts)
                  : Snapshot.of(side.shown(), its.facts(), its.result()));
        });
    return snapshots;
  }

  /** What is wrong with files that belong to no root, as it is told of the roots of now. */
  private static List<Problem> ofNone(Side side, HarnessReader reader) {
    List<Problem> problems =
        new ArrayList<>(AnnouncedChanges.of(side.files(), ReadLimits.STANDARD).problems());
    List<String> all = reader.roots();
    if (side.files().all().stream().filter(HarnessReader::isRoot).count() == all.size()) {
      problems.addAll(reader.unused(all.stream().map(reader::read).toList()));
    }
    return problems;
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
