package org.tugtest.compare.cause;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.check.CheckResult;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.compare.Snapshot;
import org.tugtest.compare.entry.Leaf;
import org.tugtest.compare.entry.Leaves;
import org.tugtest.compare.entry.Sections;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.model.Harness;
import org.tugtest.read.ReadHarness;
import org.tugtest.rule.Rule;
import org.tugtest.rule.Stage;

/** Makes some changes to a base and asks one rule what it finds then. */
final class Trials {
  private final Snapshot base;
  private final Map<String, Map<String, Object>> entries;
  private final RuleCatalog catalog;
  private final Snapshot places;

  /**
   * Trials on a base.
   *
   * @param entries of the base, under whatever ids the units know them by
   * @param places the revision whose places are told; any will do
   */
  Trials(
      Snapshot base,
      Map<String, Map<String, Object>> entries,
      Snapshot places,
      RuleCatalog catalog) {
    this.base = base;
    this.entries = entries;
    this.catalog = catalog;
    this.places = places;
  }

  Map<String, Map<String, Object>> entries() {
    return entries;
  }

  /**
   * Whether a rule judges the model, so that it can be tried: what is wrong with the files as
   * written, and what judges other rules, cannot.
   */
  boolean canTry(Finding finding) {
    Optional<Rule> rule = catalog.rule(finding.rule());
    return rule.isPresent()
        && rule.get().info().stage() != Stage.READING
        && rule.get().info().stage() != Stage.WAIVERS;
  }

  /** The base with these units made, the later ones over the earlier ones. */
  Harness with(List<Unit> first, BitSet ofFirst, List<Unit> second, BitSet ofSecond) {
    Map<String, Map<String, Object>> altered = new LinkedHashMap<>();
    entries.forEach((section, map) -> altered.put(section, map));
    apply(altered, first, ofFirst);
    apply(altered, second, ofSecond);
    return Sections.harness(places.harness(), altered);
  }

  private void apply(Map<String, Map<String, Object>> altered, List<Unit> units, BitSet which) {
    for (int i = which.nextSetBit(0); i >= 0; i = which.nextSetBit(i + 1)) {
      for (Leaf leaf : units.get(i).leaves()) {
        Map<String, Object> section = altered.get(leaf.section());
        if (section == entries.get(leaf.section())) {
          altered.put(leaf.section(), new LinkedHashMap<>(section));
        }
        Leaves.apply(altered, leaf);
      }
    }
  }

  /** Whether a harness has a finding. */
  boolean has(Harness harness, Finding finding) {
    Facts from = places.facts();
    ReadHarness read =
        new ReadHarness(harness, from.places(), List.of(), from.texts(), from.unread());
    Facts facts = Facts.of(read, base.facts().today(), from.knownRules());
    CheckResult result =
        new Checker(catalog, new Selection(Set.of(finding.rule()), Set.of())).check(facts);
    return result.findings().stream()
        .anyMatch(checked -> checked.finding().identity().equals(finding.identity()));
  }
}
