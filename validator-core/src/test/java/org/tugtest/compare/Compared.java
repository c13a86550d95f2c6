package org.tugtest.compare;

import java.util.List;
import java.util.Map;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.circuit.NetChange;
import org.tugtest.facts.Facts;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;
import org.tugtest.rule.Judged;

/** Two harnesses compared; for tests. */
public record Compared(Comparison comparison) {
  /** Two roots given as JSON. */
  public static Compared json(String before, String after) {
    return new Compared(Comparison.of(snapshot("before", before), snapshot("after", after)));
  }

  /** The revision of a root given as JSON, checked by all rules. */
  public static Snapshot snapshot(String label, String json) {
    return snapshot(label, Map.of(Judged.ROOT, json));
  }

  /** The revision of the root {@link Judged#ROOT} among these files, checked by all rules. */
  public static Snapshot snapshot(String label, Map<String, String> files) {
    RuleCatalog catalog = RuleCatalog.standard();
    ReadHarness read =
        new HarnessReader(MemoryFiles.of(files), ReadLimits.STANDARD).read(Judged.ROOT);
    Facts facts = Facts.of(read, Judged.TODAY, catalog.known());
    return Snapshot.of(label, facts, new Checker(catalog, Selection.ALL).check(facts));
  }

  /** The sentences of all changes. */
  public List<String> sentences() {
    return comparison.changes().stream().map(Change::sentence).toList();
  }

  /** The sentences of the nets that changed. */
  public List<String> nets() {
    return comparison.circuits().nets().stream().map(NetChange::sentence).toList();
  }

  /** What is called anew, as {@code section/before > after: why}. */
  public List<String> renames() {
    return comparison.matches().sections().stream()
        .flatMap(section -> comparison.matches().in(section).stream())
        .filter(match -> match.renamed())
        .map(m -> m.section() + "/" + m.before() + " > " + m.after() + ": " + m.why())
        .toList();
  }
}
