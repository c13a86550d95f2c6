package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Layout;
import org.tugtest.model.Wire;
import org.tugtest.route.Gap;
import org.tugtest.route.NoRoute;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** There is no way along the layout between the ends of a wire. */
public final class RouteBroken implements Rule {
  private static final int NAMED = 6;
  private static final String UNDEFINED = "a node of the layout is named and not defined";
  private static final String CUT =
      "its length is given and no way along the layout joins its ends";

  private static final RuleInfo INFO =
      RuleInfo.of("route-broken", Heading.BODY, Level.ERROR)
          .summary("no way along the layout joins the ends of a wire")
          .subjects("wires")
          .looksFor(
              """
              Wires whose ends, or nodes of "via", stand on pieces of the layout that no segment
              joins. A wire runs on segments of its own loom and of files without a loom. All wires
              that need the same gap closed are one finding, which names both pieces and the two
              nodes nearest to each other. A wire with "cutMm" or "builtMm" needs no way; it is
              not judged then, as are wires of which nothing says where an end stands, and a way
              on which a node is named and not defined.
              """)
          .why(
              """
              Without a way a wire has no length, no bundle and no neighbours: it is missing from
              the cut list, and everything computed of the segments it should run along is too
              small.
              """)
          .remedy(
              """
              Add the segment that is missing, correct the node at which one of the things stands,
              or take the segment out of the loom whose own it is. Or give the wire "cutMm".
              """)
          .basis("Follows from the layout as written.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {
                 "s1": {"from": "nose", "to": "dash", "lengthMm": 900},
                 "s2": {"from": "bay", "to": "tail", "lengthMm": 1400}}},
               "devices": {"SW": {"at": "dash"}, "LAMP": {"at": "tail"}},
               "wires": {"W1": {"from": "SW:1", "to": "LAMP:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {
                 "s1": {"from": "nose", "to": "dash", "lengthMm": 900},
                 "s2": {"from": "dash", "to": "tail", "lengthMm": 1400}}},
               "devices": {"SW": {"at": "dash"}, "LAMP": {"at": "tail"}},
               "wires": {"W1": {"from": "SW:1", "to": "LAMP:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Gap, List<Wire>> gaps = new LinkedHashMap<>();
    Map<Foreign, List<Wire>> foreign = new LinkedHashMap<>();
    for (Wire wire : facts.harness().wires().values()) {
      Subject subject = Subject.wire(wire.id());
      NoRoute none = facts.routes().missing(wire.id()).orElse(null);
      Gap gap = facts.routes().gap(wire.id()).orElse(null);
      if (none == null) {
        ledger.fine();
      } else if (gap == null && none.why() != NoRoute.Why.OTHER_LOOM) {
        ledger.notJudged(subject, none.why().reason());
      } else if (wire.cutMm() != null || wire.builtMm() != null) {
        ledger.notJudged(subject, CUT);
      } else if (!facts.unread().isEmpty()) {
        ledger.notJudged(subject, Facts.FILE_UNREAD);
      } else if (gap != null && names(facts, gap)) {
        ledger.notJudged(subject, UNDEFINED);
      } else if (!ledger.switchedOff(subject)) {
        if (gap != null) {
          gaps.computeIfAbsent(gap, key -> new ArrayList<>()).add(wire);
        } else {
          Foreign key = new Foreign(none.text(), Objects.requireNonNullElse(wire.loom(), ""));
          foreign.computeIfAbsent(key, any -> new ArrayList<>()).add(wire);
        }
      }
    }
    gaps.forEach((gap, wires) -> report(gap, wires, ledger));
    foreign.forEach((key, wires) -> report(facts, key, wires, ledger));
  }

  /**
   * Whether a node of one of the pieces is named and not defined: that has a finding of its own.
   */
  private static boolean names(Facts facts, Gap gap) {
    Set<String> defined = facts.harness().layout().nodes().keySet();
    return !facts.harness().sketch()
        && !(defined.containsAll(gap.here()) && defined.containsAll(gap.there()));
  }

  /** A segment of another loom on which wires of a loom end. */
  private record Foreign(String segment, String loom) {}

  private static void report(Facts facts, Foreign key, List<Wire> wires, Ledger ledger) {
    List<String> ids = wires.stream().map(Wire::id).toList();
    Layout.Segment segment = facts.harness().layout().segments().get(key.segment());
    String whose = segment == null ? null : segment.loom();
    Finding.Draft draft =
        Finding.on(Subject.of("segments", key.segment()))
            .kind(key.loom())
            .message(
                (ids.size() == 1 ? "wire " : "wires ")
                    + Series.and(ids, NAMED)
                    + (key.loom().isEmpty() ? " outside any loom" : " of loom " + key.loom())
                    + (ids.size() == 1 ? " ends" : " end")
                    + " on segment "
                    + key.segment()
                    + ", which belongs to loom "
                    + whose)
            .remedy(
                "put the splice on a segment that the wires may use, or take segment "
                    + key.segment()
                    + " into a file without a loom");
    List<Subject> members = ids.stream().map(Subject::wire).toList();
    members.forEach(draft::and);
    ledger.finding(draft, members);
  }

  private static void report(Gap gap, List<Wire> wires, Ledger ledger) {
    List<String> ids = wires.stream().map(Wire::id).toList();
    List<Subject> members = ids.stream().map(Subject::wire).toList();
    String layout = gap.loom().isEmpty() ? "the layout" : "the layout for loom " + gap.loom();
    Finding.Draft draft =
        Finding.on(Subject.of("nodes", gap.nearHere()), Subject.of("nodes", gap.nearThere()))
            .kind(gap.loom())
            .message(
                layout
                    + " is in pieces: no way joins "
                    + piece(gap.here(), gap.nearHere())
                    + " and "
                    + piece(gap.there(), gap.nearThere())
                    + ", as "
                    + (ids.size() == 1 ? "wire " : "wires ")
                    + Series.and(ids, NAMED)
                    + (ids.size() == 1 ? " needs" : " need"))
            .remedy(remedy(gap));
    members.forEach(draft::and);
    draft.detail("one piece: " + Series.and(List.copyOf(gap.here()), 2 * NAMED));
    draft.detail("the other: " + Series.and(List.copyOf(gap.there()), 2 * NAMED));
    if (gap.apartMm() != null) {
      draft.detail(
          gap.nearHere()
              + " and "
              + gap.nearThere()
              + " are the nodes nearest to each other, "
              + Millimetres.text(gap.apartMm())
              + " in a straight line");
    }
    ledger.finding(draft, members);
  }

  private static String piece(Set<String> nodes, String near) {
    int more = nodes.size() - 1;
    if (more == 0) {
      return "node " + near;
    }
    return "node " + near + " (and " + more + (more == 1 ? " more node)" : " more nodes)");
  }

  private static String remedy(Gap gap) {
    String add = "add a segment between " + gap.nearHere() + " and " + gap.nearThere();
    return gap.throughLoom() == null
        ? add + ", or correct where the ends of the wires stand"
        : add
            + ", or take the segments of loom "
            + gap.throughLoom()
            + ", which do join them, into a file without a loom";
  }
}
