package org.tugtest.rule.body;

import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Layout;
import org.tugtest.model.Near;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

/** A bundle hangs free over too long a stretch. */
public final class SupportSpanLong implements Rule {
  private static final String LIMIT = "mm";
  private static final String MOVING = "movingMm";
  private static final String MOST = "mostMm";

  private static final RuleInfo INFO =
      RuleInfo.of("support-span-long", Heading.BODY, Level.WARNING)
          .gravest(Level.ERROR)
          .summary("a bundle hangs free over too long a stretch")
          .subjects("segments with wires")
          .looksFor(
              """
              The stretch between two supports, or a support and a node that is held: the length of
              the segment divided by the count of its supports and one. A node with "held": false
              holds nothing, so the stretches that meet there are one, and all that are too long through
              such nodes are one finding on the node. A tie holds nothing by
              itself, so ties do not count. Over 300 mm is a warning, over 610 mm an error; over
              150 mm a warning where the segment flexes or its zone is near moving parts.
              """)
          .why(
              """
              A loom that hangs swings, rubs and pulls on its contacts; one that sags can reach a
              shaft or the exhaust.
              """)
          .remedy(
              """
              Add clips, or hold the node. Ties only keep the wires together.
              """)
          .basis(
              """
              610 mm: AC 43.13-1B 11-96a; the same in 46 CFR 183.340. 300 mm and 150 mm: common
              practice for competition cars, closer on the engine. Ties are no primary support: AC
              43.13-1B 11-96o.
              """)
          .setting(
              new Setting(
                  LIMIT, 300, 50, 2000, "mm", "longest stretch without a word (common practice)"))
          .setting(
              new Setting(
                  MOVING,
                  150,
                  20,
                  2000,
                  "mm",
                  "the same where it flexes or is near moving parts (common practice)"))
          .setting(
              new Setting(MOST, 610, 50, 5000, "mm", "longest stretch at all (AC 43.13-1B 11-96a)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "supports": 1}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "supports": 2}}},
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
    FreeSpans spans = new FreeSpans(facts);
    LongStretches found = new LongStretches();
    for (Layout.Segment segment : facts.harness().layout().segments().values()) {
      Subject subject = Subject.of("segments", segment.id());
      if (facts.bundles().of(segment.id()).isEmpty()) {
        ledger.notJudged(subject, Unjudged.EMPTY);
        continue;
      }
      FreeSpans.Span span = spans.of(segment);
      boolean moving = moving(facts, segment);
      double limit = settings.number(moving ? MOVING : LIMIT, subject);
      double most = Math.max(limit, settings.number(MOST, subject));
      if (span.mm() > limit + GivenLength.SAME) {
        if (!ledger.switchedOff(subject)) {
          found.add(new LongStretch(segment, span, moving, limit, most));
        }
      } else if (!span.lacking().isEmpty()) {
        ledger.notJudged(subject, span.lacking());
      } else {
        ledger.fine();
      }
    }
    found.groups().forEach(group -> ledger.finding(group.finding(), group.members()));
  }

  private static boolean moving(Facts facts, Layout.Segment segment) {
    return segment.flexes()
        || facts.bundles().surroundings().ofSegment(segment.id()).near().contains(Near.MOVING);
  }
}
