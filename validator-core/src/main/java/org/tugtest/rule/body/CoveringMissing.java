package org.tugtest.rule.body;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Covering;
import org.tugtest.model.Layout;
import org.tugtest.model.Need;
import org.tugtest.route.Bundle;
import org.tugtest.route.CoverChoice;
import org.tugtest.route.Surroundings;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** The zone of a segment asks for a protection that none of its coverings gives. */
public final class CoveringMissing implements Rule {
  private static final double FULL = 0.8;

  private static final RuleInfo INFO =
      RuleInfo.of("covering-missing", Heading.BODY, Level.WARNING)
          .summary("a bundle lacks a protection that its zone asks for")
          .subjects("segments with wires")
          .looksFor(
              """
              A segment on which wires run whose zone "needs" abrasion, heat or moisture
              protection that none of its coverings gives with "protects". A segment without a zone
              has what either of its nodes needs. A zone that needs nothing is fine. A segment
              without any zone, or with a covering that is not defined, is not judged.
              """)
          .why(
              """
              Where a loom rubs, gets hot or stays wet, the insulation of the wires is not meant
              to stand it alone.
              """)
          .remedy(
              """
              Put a covering on the segment that protects from it, or correct what the zone needs.
              """)
          .basis("Follows from \"needs\" of the zone and \"protects\" of the parts as given.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "zones": {"bay": {"needs": ["abrasion"]}},
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "zone": "bay"}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"coverings": {"sleeve": {"kind": "braided-sleeve", "innerMinMm": 1,
                 "innerMaxMm": 5, "protects": ["abrasion"]}}},
               "zones": {"bay": {"needs": ["abrasion"]}},
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900,
                 "zone": "bay", "coverings": ["sleeve"]}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Layout.Segment segment : facts.harness().layout().segments().values()) {
      Subject subject = Subject.of("segments", segment.id());
      List<Bundle> pieces = facts.bundles().of(segment.id());
      if (pieces.isEmpty()) {
        ledger.notJudged(subject, Unjudged.EMPTY);
        continue;
      }
      Surroundings.Around around = facts.bundles().surroundings().ofSegment(segment.id());
      Set<Need> lacking = EnumSet.noneOf(Need.class);
      lacking.addAll(around.needs());
      boolean known = true;
      for (String id : segment.coverings()) {
        Covering part = facts.harness().parts().coverings().get(id);
        known &= part != null;
        if (part != null) {
          lacking.removeAll(part.protects());
        }
      }
      if (!known) {
        ledger.notJudged(subject, Unjudged.NO_PART);
      } else if (!lacking.isEmpty()) {
        ledger.finding(finding(facts, segment, lacking));
      } else if (around.needs().isEmpty() && !zoned(facts, segment)) {
        ledger.notJudged(subject, "it has no zone");
      } else {
        ledger.fine();
      }
    }
  }

  private static boolean zoned(Facts facts, Layout.Segment segment) {
    return segment.zone() != null
        || zone(facts, segment.from()) != null
        || zone(facts, segment.to()) != null;
  }

  private static @org.jspecify.annotations.Nullable String zone(
      Facts facts, @org.jspecify.annotations.Nullable String node) {
    Layout.Node found = node == null ? null : facts.harness().layout().nodes().get(node);
    return found == null ? null : found.zone();
  }

  private static Finding.Draft finding(Facts facts, Layout.Segment segment, Set<Need> lacking) {
    Subject subject = Subject.of("segments", segment.id());
    String needs = Series.and(lacking.stream().map(Need::word).toList());
    String zone = segment.zone() == null ? "the zone of its nodes" : "zone " + segment.zone();
    Finding.Draft draft =
        Finding.on(subject)
            .message(
                "segment "
                    + segment.id()
                    + " has no covering against "
                    + needs
                    + ", which "
                    + zone
                    + " asks for"
                    + (segment.coverings().isEmpty()
                        ? ""
                        : "; "
                            + Series.and(segment.coverings())
                            + (segment.coverings().size() == 1 ? " does" : " do")
                            + " not give it"));
    double bundle = facts.bundles().thickest(segment.id()).map(Bundle::expectedMm).orElse(0.0);
    Optional<Covering> fitting =
        new CoverChoice(facts.harness().parts().coverings()).over(null, lacking, bundle, FULL);
    return draft.remedy(
        fitting
            .map(part -> "put " + part.id() + " on it, which protects and fits")
            .orElse("put a covering on it that protects; none in the parts does and fits"));
  }
}
