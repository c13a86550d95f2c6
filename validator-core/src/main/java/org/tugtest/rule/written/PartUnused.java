package org.tugtest.rule.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Problem;
import org.tugtest.text.Series;

/** Parts are defined that nothing uses. */
public final class PartUnused implements Rule {
  private static final int SHOWN = 6;
  private static final String LIBRARY = "it stands in a shared library";

  private static final RuleInfo INFO =
      RuleInfo.of("part-unused", Heading.WRITTEN, Level.NOTE)
          .summary("parts are defined and nothing uses them")
          .subjects("parts")
          .looksFor(
              """
              Parts that no wire, connector, splice, device, node, segment or fuse place uses,
              directly or through another part that is used. One finding for each kind of part, with
              the list; its place is the section, such as "parts/wires". A part may be left out of
              the list with "level": "off" for its place under "limits". Parts in a shared library
              are not judged: other harnesses use them.
              """)
          .why(
              """
              A part that nothing uses is often the right one, and another is used by mistake in its
              stead.
              """)
          .remedy("Use the part, delete it, or move it to a shared library.")
          .basis("Follows from the format.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w1.0": {"areaMm2": 1.0, "maxC": 125},
                                   "w2.5": {"areaMm2": 2.5, "maxC": 125}}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w1.0"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w1.0": {"areaMm2": 1.0, "maxC": 125}}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w1.0"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    String reason = "";
    if (!facts.unread().isEmpty()) {
      reason = Facts.FILE_UNREAD;
    } else if (facts.problems().stream().anyMatch(one -> one.kind() == Problem.Kind.SHAPE_WRONG)) {
      reason = "something in the files is not written rightly";
    }
    Map<String, Set<String>> used = new PartsInUse(facts.harness()).ids();
    for (Map.Entry<String, Set<String>> kind :
        PartsInUse.defined(facts.harness().parts()).entrySet()) {
      List<Subject> unused = new ArrayList<>();
      for (String id : kind.getValue()) {
        Subject part = Subject.part(kind.getKey(), id);
        if (used.getOrDefault(kind.getKey(), Set.of()).contains(id)) {
          ledger.fine();
        } else if (!reason.isEmpty()) {
          ledger.notJudged(part, reason);
        } else if (facts.places().of(part.place()).file().startsWith("../")) {
          ledger.notJudged(part, LIBRARY);
        } else if (!ledger.switchedOff(part)) {
          unused.add(part);
        }
      }
      if (!unused.isEmpty()) {
        ledger.finding(finding(facts, kind.getKey(), unused), unused);
      }
    }
  }

  private static Finding.Draft finding(Facts facts, String kind, List<Subject> unused) {
    List<String> ids = unused.stream().map(Subject::id).toList();
    boolean one = ids.size() == 1;
    Finding.Draft draft =
        Finding.on(new Subject("parts/" + kind))
            .message(
                PartsInUse.noun(kind, one)
                    + " "
                    + Series.and(ids, SHOWN)
                    + (one ? " is" : " are")
                    + " defined and not used")
            .remedy(
                "use "
                    + (one ? "it" : "them")
                    + ", delete "
                    + (one ? "it" : "them")
                    + ", or move "
                    + (one ? "it" : "them")
                    + " to a shared library");
    for (Subject part : unused) {
      draft.and(part).at(facts.places().of(part.place()));
      if (unused.size() > SHOWN) {
        draft.detail(part.id());
      }
    }
    return draft;
  }
}
