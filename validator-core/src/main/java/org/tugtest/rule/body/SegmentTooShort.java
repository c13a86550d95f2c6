package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Layout;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** A segment is shorter than the straight line between its nodes. */
public final class SegmentTooShort implements Rule {
  private static final String SLACK = "mm";
  private static final int NAMED = 6;
  private static final String NOWHERE = "its nodes do not both say where they are (xyzMm)";

  private static final RuleInfo INFO =
      RuleInfo.of("segment-too-short", Heading.BODY, Level.WARNING)
          .summary("a segment is shorter than the straight line between its nodes")
          .subjects("segments")
          .looksFor(
              """
              A segment whose "lengthMm" is under the straight line between the "xyzMm" of its two
              nodes, less what is allowed for measuring. Where two segments or more at one node
              are too short, they are one finding on that node, whose place is the likelier
              mistake. Longer than the line is what a segment may always be. Without a length, or
              without "xyzMm" of both nodes, a segment is not judged.
              """)
          .why(
              """
              No loom is shorter than the way it has to go: each wire on the segment is cut too
              short by what is lacking, and that shows when the loom is laid into the vehicle.
              """)
          .remedy("Measure the segment along its way again, or correct where its nodes are.")
          .basis(
              """
              Follows from the files as written. What is allowed for measuring is chosen: 10 mm for
              the middle of a breakout, at either end.
              """)
          .setting(
              new Setting(
                  SLACK,
                  20,
                  0,
                  1000,
                  "mm",
                  "shorter than the line that passes (chosen, see basis)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "layout": {"nodes": {"a": {"xyzMm": [0, 0, 0]}, "b": {"xyzMm": [300, 400, 0]}},
                          "segments": {"s1": {"from": "a", "to": "b", "lengthMm": 450}}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "layout": {"nodes": {"a": {"xyzMm": [0, 0, 0]}, "b": {"xyzMm": [300, 400, 0]}},
                          "segments": {"s1": {"from": "a", "to": "b", "lengthMm": 500}}}}
              """)
          .build();

  /** A segment that is too short. */
  private record Lacking(Layout.Segment segment, double mm, double lineMm, double leastMm) {
    Subject subject() {
      return Subject.of("segments", segment.id());
    }

    Measured measured() {
      return Measured.under(mm, Math.ceil(leastMm * 10 - 1e-6) / 10, "mm");
    }
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<String, List<Lacking>> atNodes = new TreeMap<>(NaturalOrder.NATURAL);
    List<Lacking> all = new ArrayList<>();
    for (Layout.Segment segment : facts.harness().layout().segments().values()) {
      Subject subject = Subject.of("segments", segment.id());
      List<Double> from = place(facts, segment.from());
      List<Double> to = place(facts, segment.to());
      Double mm = segment.lengthMm();
      if (mm == null) {
        ledger.notJudged(subject, Unjudged.NO_LENGTH);
      } else if (from.size() != 3 || to.size() != 3) {
        ledger.notJudged(subject, NOWHERE);
      } else {
        double line = straight(from, to);
        Lacking one = new Lacking(segment, mm, line, line - settings.number(SLACK, subject));
        if (mm >= one.leastMm() - GivenLength.SAME) {
          ledger.fine();
        } else if (!ledger.switchedOff(subject)) {
          all.add(one);
          atNodes.computeIfAbsent(segment.from(), any -> new ArrayList<>()).add(one);
          atNodes.computeIfAbsent(segment.to(), any -> new ArrayList<>()).add(one);
        }
      }
    }
    report(facts, all, atNodes, ledger);
  }

  private static List<Double> place(Facts facts, @Nullable String node) {
    Layout.Node its = node == null ? null : facts.harness().layout().nodes().get(node);
    return its == null ? List.of() : its.xyzMm();
  }

  private static double straight(List<Double> a, List<Double> b) {
    double square = 0;
    for (int i = 0; i < 3; i++) {
      square += (a.get(i) - b.get(i)) * (a.get(i) - b.get(i));
    }
    return Math.sqrt(square);
  }

  /** The nodes at which most are too short come first; what is left is reported one by one. */
  private static void report(
      Facts facts, List<Lacking> all, Map<String, List<Lacking>> atNodes, Ledger ledger) {
    List<String> nodes = new ArrayList<>(atNodes.keySet());
    nodes.sort(Comparator.comparingInt(node -> -atNodes.getOrDefault(node, List.of()).size()));
    Set<Lacking> told = new LinkedHashSet<>();
    for (String node : nodes) {
      List<Lacking> here =
          atNodes.getOrDefault(node, List.of()).stream()
              .filter(one -> !told.contains(one))
              .toList();
      if (here.size() > 1) {
        told.addAll(here);
        ledger.finding(ofNode(facts, node, here), here.stream().map(Lacking::subject).toList());
      }
    }
    all.stream().filter(one -> !told.contains(one)).forEach(one -> ledger.finding(of(one)));
  }

  private static Finding.Draft of(Lacking one) {
    Layout.Segment segment = one.segment();
    return Finding.on(one.subject())
        .and(Subject.of("nodes", String.valueOf(segment.from())))
        .and(Subject.of("nodes", String.valueOf(segment.to())))
        .message("segment " + segment.id() + " is " + said(one))
        .remedy(
            "measure the segment along its way again, or correct \"xyzMm\" of "
                + segment.from()
                + " or "
                + segment.to())
        .measured(one.measured());
  }

  private static Finding.Draft ofNode(Facts facts, String node, List<Lacking> here) {
    Lacking worst =
        here.stream().max(Comparator.comparingDouble(one -> one.leastMm() - one.mm())).get();
    List<String> ids = here.stream().map(one -> one.segment().id()).toList();
    Finding.Draft draft =
        Finding.on(Subject.of("nodes", node))
            .message(
                "segments "
                    + Series.and(ids, NAMED)
                    + " are too short for where node "
                    + node
                    + " is: "
                    + worst.segment().id()
                    + " is "
                    + said(worst))
            .remedy("correct \"xyzMm\" of " + node + ", or measure the segments again")
            .measured(worst.measured());
    for (Lacking one : here) {
      draft.and(one.subject());
      draft.at(facts.places().of("segments/" + one.segment().id()));
      if (!one.equals(worst)) {
        draft.detail(one.segment().id() + " is " + said(one));
      }
    }
    return draft;
  }

  /** {@code 450 mm long; in a straight line a and b are 500 mm apart, less 20 mm ...}. */
  private static String said(Lacking one) {
    Measured measured = one.measured();
    double slack = one.lineMm() - one.leastMm();
    return Millimetres.actual(measured)
        + " long, but "
        + one.segment().from()
        + " and "
        + one.segment().to()
        + " are "
        + Millimetres.text(one.lineMm())
        + " apart in a straight line"
        + (slack > 0
            ? " ("
                + Millimetres.limit(measured)
                + " with "
                + Millimetres.text(slack)
                + " for measuring)"
            : "");
  }
}
