package org.tugtest.goal;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tugtest.check.CheckResult;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.read.ReadHarness;
import org.tugtest.text.NaturalOrder;

/** Finds waivers that match nothing. */
final class IdleWaivers {
  private static final String RULE = "waiver-idle";
  private static final String SECTION = "waivers";

  private IdleWaivers() {}

  /**
   * The ids of the waivers that are idle in every root that has them, by the path of the file they
   * are written in. A waiver of a file that several roots use may be idle in one of them only.
   */
  static Map<String, Set<String>> in(
      List<ReadHarness> roots, RuleCatalog catalog, LocalDate today) {
    Map<String, Set<String>> idle = new TreeMap<>(NaturalOrder.NATURAL);
    Map<String, Set<String>> atWork = new TreeMap<>(NaturalOrder.NATURAL);
    for (ReadHarness root : roots) {
      Facts facts = Facts.of(root, today, catalog.known());
      CheckResult result = new Checker(catalog, Selection.ALL).check(facts);
      Set<String> here = new HashSet<>();
      result.findings().stream()
          .map(checked -> checked.finding())
          .filter(finding -> finding.rule().equals(RULE))
          .map(Finding::firstSubject)
          .filter(subject -> subject.section().equals(SECTION))
          .map(Subject::id)
          .forEach(here::add);
      for (String id : root.harness().waivers().keySet()) {
        String path = root.places().of(SECTION + "/" + id).file();
        Map<String, Set<String>> into = here.contains(id) ? idle : atWork;
        into.computeIfAbsent(path, none -> new TreeSet<>(NaturalOrder.NATURAL)).add(id);
      }
    }
    idle.forEach((path, ids) -> ids.removeAll(atWork.getOrDefault(path, Set.of())));
    idle.values().removeIf(Set::isEmpty);
    return idle;
  }
}
