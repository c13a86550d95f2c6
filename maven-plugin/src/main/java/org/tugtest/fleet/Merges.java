package org.tugtest.fleet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.tugtest.base.Against;
import org.tugtest.base.Against.Side;
import org.tugtest.compare.cause.ModelMerge;
import org.tugtest.git.StoredFiles;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;
import org.tugtest.report.HarnessReport;

/**
 * Merges two branches on the model, which needs no merge of their files: what either changed is
 * changed.
 *
 * @param remarks takes what both changed otherwise, a sentence each
 */
public record Merges(Fleet fleet, Progress progress, Consumer<String> remarks) {

  /**
   * Every root of either side, merged and judged. A root that one side alone has is taken as it is.
   *
   * @throws IOException when a side cannot be read; the message is a whole sentence
   * @throws InterruptedException when the thread is told to stop
   */
  public List<HarnessReport> judge(Against.Fork fork) throws IOException, InterruptedException {
    HarnessReader origin = reader(fork.origin());
    HarnessReader ours = reader(fork.ours());
    HarnessReader theirs = reader(fork.theirs());
    Set<String> roots = new LinkedHashSet<>(ours.roots());
    roots.addAll(theirs.roots());
    Map<String, ReadHarness> merged = new LinkedHashMap<>();
    for (String root : roots) {
      boolean both = ours.roots().contains(root) && theirs.roots().contains(root);
      if (both && origin.roots().contains(root)) {
        merged.put(root, merged(root, origin.read(root), ours.read(root), theirs.read(root)));
      } else {
        merged.put(root, (ours.roots().contains(root) ? ours : theirs).read(root));
      }
    }
    for (Side side : List.of(fork.origin(), fork.ours(), fork.theirs())) {
      if (side.files() instanceof StoredFiles stored && stored.unheld().isPresent()) {
        throw new IOException(stored.unheld().get());
      }
    }
    return fleet.judge(new ArrayList<>(merged.values()), progress);
  }

  private static HarnessReader reader(Side side) {
    return new HarnessReader(side.files(), ReadLimits.STANDARD);
  }

  private ReadHarness merged(
      String root, ReadHarness origin, ReadHarness ours, ReadHarness theirs) {
    ModelMerge merge = ModelMerge.of(origin.harness(), ours.harness(), theirs.harness());
    merge
        .conflicts()
        .forEach(
            place -> remarks.accept(root + ": both sides change " + place + "; ours is taken"));
    return new ReadHarness(
        merge.harness(),
        new MergedPlaces(ours.places(), theirs.places()),
        ours.problems(),
        Map.of(),
        ours.unread());
  }
}
