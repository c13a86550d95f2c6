package org.tugtest.fleet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadHarness;
import org.tugtest.report.HarnessReport;
import org.tugtest.text.Problem;

/**
 * Reads and checks all roots of a folder.
 *
 * @param today the day waivers are held against
 * @param threads how many roots are worked on at once; it changes no result
 */
public record Fleet(
    HarnessReader reader, RuleCatalog catalog, Selection selection, LocalDate today, int threads) {

  /** The same for other files. */
  Fleet reading(HarnessReader other) {
    return new Fleet(other, catalog, selection, today, threads);
  }

  /** Threads for so many pieces of work. */
  SideBySide sideBySide(int pieces, Progress progress) {
    return new SideBySide(Math.min(threads, pieces), progress);
  }

  /**
   * Checks these roots.
   *
   * @param roots paths, as {@link HarnessReader#roots} names them
   * @param unused whether files that no root uses are findings of the first root
   * @param further what is wrong with files that belong to no root; findings of the first one
   * @return a report for each, in the same order
   * @throws InterruptedException when the thread is told to stop
   */
  public List<HarnessReport> check(
      List<String> roots, boolean unused, List<Problem> further, Progress progress)
      throws InterruptedException {
    if (roots.isEmpty()) {
      return List.of();
    }
    try (SideBySide threadsAtWork = sideBySide(roots.size(), progress)) {
      List<Callable<ReadHarness>> reading = new ArrayList<>();
      roots.forEach(root -> reading.add(() -> reader.read(root)));
      List<ReadHarness> read = new ArrayList<>(threadsAtWork.all("reading", reading));
      List<Problem> ofNone = new ArrayList<>(further);
      if (unused) {
        ofNone.addAll(reader.unused(read));
      }
      if (!ofNone.isEmpty()) {
        read.set(0, read.get(0).with(ofNone));
      }
      return judged(read, threadsAtWork);
    }
  }

  /**
   * Judges harnesses that were read already.
   *
   * @throws InterruptedException when the thread is told to stop
   */
  List<HarnessReport> judge(List<ReadHarness> read, Progress progress) throws InterruptedException {
    if (read.isEmpty()) {
      return List.of();
    }
    try (SideBySide threadsAtWork = sideBySide(read.size(), progress)) {
      return judged(read, threadsAtWork);
    }
  }

  private List<HarnessReport> judged(List<ReadHarness> read, SideBySide threadsAtWork)
      throws InterruptedException {
    KnownRules known = catalog.known();
    Checker checker = new Checker(catalog, selection);
    List<Callable<HarnessReport>> checking = new ArrayList<>();
    for (ReadHarness harness : read) {
      checking.add(
          () -> {
            Facts facts = Facts.of(harness, today, known);
            return new HarnessReport(facts, checker.check(facts));
          });
    }
    return threadsAtWork.all("checking", checking);
  }
}
