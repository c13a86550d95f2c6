package org.tugtest.fleet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tugtest.base.Against;
import org.tugtest.compare.Age;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.compare.cause.LeastCause;
import org.tugtest.compare.cause.Meeting;
import org.tugtest.compare.cause.ThreeWay;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.model.AnnouncedChange;
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
 * @param trials how often a rule may be asked to find out what causes a new finding
 */
public record Baselines(
    Fleet fleet,
    Revision revision,
    List<AnnouncedChange> announced,
    int trials,
    Progress progress) {

  /**
   * Each root with what it is held against.
   *
   * @throws IOException when a side cannot be read; the message is a whole sentence
   * @throws InterruptedException when the thread is told to stop
   */
  public List<HarnessReport> hold(List<HarnessReport> checked, Against.Sides sides)
      throws IOException, InterruptedException {
    Map<String, Facts> now = new LinkedHashMap<>();
    checked.forEach(harness -> now.put(harness.root(), harness.facts()));
    Snapshots snapshots = new Snapshots(fleet, now, progress);
    List<AnnouncedChange> before =
        AnnouncedChanges.of(sides.base().files(), ReadLimits.STANDARD).changes();
    List<Callable<HarnessReport>> work = new ArrayList<>();
    for (HarnessReport harness : checked) {
      Snapshot base = snapshots.of(sides.base(), harness.root());
      List<Snapshot> parents = new ArrayList<>();
      for (Against.Side parent : sides.further()) {
        parents.add(snapshots.of(parent, harness.root()));
      }
      work.add(() -> held(harness, base, parents, before));
    }
    List<HarnessReport> held;
    try (SideBySide threads = fleet.sideBySide(checked.size(), progress)) {
      held = threads.all("comparing", work);
    }
    return explained(held, snapshots, sides.fork());
  }

  private HarnessReport held(
      HarnessReport harness,
      Snapshot base,
      List<Snapshot> parents,
      List<AnnouncedChange> announcedBefore) {
    Snapshot after = after(harness);
    Comparison comparison = Comparison.of(base, after);
    List<Comparison> further =
        parents.stream().map(parent -> Comparison.of(parent, after)).toList();
    Announced changes = Announced.of(comparison, announcedBefore, announced);
    return new HarnessReport(
        harness.facts(), harness.result(), new Baseline(comparison, further, changes));
  }

  private Snapshot after(HarnessReport harness) {
    return Snapshot.of(revision.shown(), harness.facts(), harness.result());
  }

  /** What explains new findings, where there are any. */
  private List<HarnessReport> explained(
      List<HarnessReport> held, Snapshots snapshots, Against.@Nullable Fork fork)
      throws IOException, InterruptedException {
    List<HarnessReport> explained = new ArrayList<>();
    for (HarnessReport harness : held) {
      Baseline baseline = harness.baseline();
      boolean fresh =
          baseline != null
              && harness.result().standing().stream()
                  .anyMatch(checked -> baseline.age(checked) == Age.NEW);
      if (baseline == null || trials == 0 || !fresh) {
        explained.add(harness);
        continue;
      }
      List<Meeting> meetings = fork == null ? List.of() : meetings(harness, snapshots, fork);
      Map<Finding, LeastCause> causes =
          fork == null ? LeastCause.of(baseline.comparison(), fleet.catalog(), trials) : Map.of();
      explained.add(
          new HarnessReport(
              harness.facts(), harness.result(), baseline.explained(causes, meetings)));
    }
    return explained;
  }

  private List<Meeting> meetings(HarnessReport harness, Snapshots snapshots, Against.Fork fork)
      throws IOException, InterruptedException {
    Snapshot origin = snapshots.of(fork.origin(), harness.root());
    Snapshot ours = snapshots.of(fork.ours(), harness.root());
    Snapshot theirs = snapshots.of(fork.theirs(), harness.root());
    if (!origin.present() || !ours.present() || !theirs.present()) {
      return List.of();
    }
    return ThreeWay.of(origin, ours, theirs, after(harness), fleet.catalog(), trials).meetings();
  }

  /** Each root held against a repository that holds nothing yet. */
  public List<HarnessReport> holdAgainstNothing(List<HarnessReport> checked) {
    return checked.stream()
        .map(
            harness ->
                held(
                    harness,
                    Snapshot.absent("an empty repository", harness.facts()),
                    List.of(),
                    List.of()))
        .toList();
  }
}
