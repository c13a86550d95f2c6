package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;
import org.tugtest.route.Stand;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** A splice sits where it will suffer or is in the way. */
public final class SpliceMisplaced implements Rule {
  private static final int NAMED = 12;
  private static final String BREAKOUT = "breakoutMm";
  private static final String APART = "apartMm";

  private static final RuleInfo INFO =
      RuleInfo.of("splice-misplaced", Heading.BODY, Level.WARNING)
          .gravest(Level.ERROR)
          .summary("a splice sits where it flexes, at a breakout, or on another splice")
          .subjects("splices that have a place")
          .looksFor(
              """
              A splice on a segment that flexes (an error), or past the end of its segment (an
              error); one nearer than 40 mm along the loom to a breakout, that is a node where
              three segments with wires meet or where wires end in a connector or on a pin; and
              splices nearer than 30 mm to each other, middle to middle. An end cap may sit near a
              breakout. A splice of which nothing says where it is, is not judged.
              """)
          .why(
              """
              The edge of a splice is where a wire breaks first. At a breakout or in a bend it is
              bent there, and two on one spot make a knot that no sleeve goes over.
              """)
          .remedy(
              """
              Move it along a straight, still part of the loom, and set neighbours apart by a
              splice and its sleeve.
              """)
          .basis(
              """
              No splices where it flexes, and splices of one bundle staggered: NASA workmanship
              reference, book 4, section 4.07. 40 mm and 30 mm: common practice for car looms.
              """)
          .setting(
              new Setting(
                  BREAKOUT, 40, 0, 1000, "mm", "least distance to a breakout (common practice)"))
          .setting(
              new Setting(
                  APART, 30, 0, 1000, "mm", "least distance of two splices (common practice)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "flexes": true}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "splices": {"S1": {"on": "s1", "offsetMm": 400}},
               "wires": {"W1": {"from": "A:1", "to": "S1"}, "W2": {"from": "S1", "to": "B:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "splices": {"S1": {"on": "s1", "offsetMm": 400},
                           "S2": {"on": "s1", "offsetMm": 440}},
               "wires": {"W1": {"from": "A:1", "to": "S1"}, "W2": {"from": "S1", "to": "B:1"},
                         "W3": {"from": "A:2", "to": "S2"}, "W4": {"from": "S2", "to": "B:2"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    SplicePlaces places = new SplicePlaces(facts);
    Set<String> placed = new HashSet<>();
    Set<String> bad = crowded(places, settings, ledger);
    for (SplicePlaces.Placed one : places.all()) {
      placed.add(one.splice().id());
      Subject subject = Subject.splice(one.splice().id());
      boolean found = flexing(facts, one, ledger);
      found |= atBreakout(places, one, settings.number(BREAKOUT, subject), ledger);
      if (!found && !bad.contains(one.splice().id())) {
        ledger.fine();
      }
    }
    Map<String, List<Splice>> past = new TreeMap<>(NaturalOrder.NATURAL);
    for (Splice splice : facts.harness().splices().values()) {
      if (!placed.contains(splice.id())) {
        if (isPast(facts, splice)) {
          past.computeIfAbsent(splice.on(), on -> new ArrayList<>()).add(splice);
        } else {
          ledger.notJudged(
              Subject.splice(splice.id()), "nothing that is known says where along the loom it is");
        }
      }
    }
    past.values().forEach(splices -> past(facts, splices, ledger));
  }

  /** Whether a splice is to sit past the end of its segment. */
  private static boolean isPast(Facts facts, Splice splice) {
    Layout.Segment segment =
        splice.at() != null || splice.on() == null
            ? null
            : facts.harness().layout().segments().get(splice.on());
    Double length = segment == null ? null : segment.lengthMm();
    Double offset = splice.offsetMm();
    return length != null && offset != null && offset > length;
  }

  /** Splices past the end of one segment; where there are several it is the segment's length. */
  private static void past(Facts facts, List<Splice> splices, Ledger ledger) {
    Splice farthest =
        Collections.max(splices, Comparator.comparingDouble(one -> orZero(one.offsetMm())));
    Layout.Segment segment = facts.harness().layout().segments().get(splices.get(0).on());
    Measured measured =
        Measured.over(orZero(farthest.offsetMm()), orZero(segment.lengthMm()), "mm");
    List<Subject> members = splices.stream().map(one -> Subject.splice(one.id())).toList();
    List<Subject> subjects = new ArrayList<>(members);
    Subject on = Subject.of("segments", segment.id());
    boolean several = members.size() > 1;
    subjects.add(several ? 0 : 1, on);
    List<String> ids = splices.stream().map(Splice::id).toList();
    Finding.Draft draft = Finding.on(subjects.get(0));
    subjects.stream().skip(1).forEach(draft::and);
    ledger.finding(
        draft
            .kind("past")
            .level(Level.ERROR)
            .message(
                (several
                        ? "splices " + Series.and(ids, NAMED) + " are to sit up to "
                        : "splice " + ids.get(0) + " is to sit ")
                    + Millimetres.actual(measured)
                    + " along segment "
                    + segment.id()
                    + ", which is only "
                    + Millimetres.limit(measured)
                    + " long")
            .remedy(
                (several
                        ? "correct \"lengthMm\" of " + segment.id() + ", or their \"offsetMm\""
                        : "correct \"offsetMm\"")
                    + ", which counts from node "
                    + segment.from())
            .measured(measured),
        members);
  }

  private static double orZero(@Nullable Double mm) {
    return mm == null ? 0 : mm;
  }

  private static boolean flexing(Facts facts, SplicePlaces.Placed one, Ledger ledger) {
    if (!(one.stand() instanceof Stand.OnSegment on)) {
      return false;
    }
    Layout.Segment segment = facts.harness().layout().segments().get(on.segment());
    if (segment == null || !segment.flexes()) {
      return false;
    }
    ledger.finding(
        Finding.on(Subject.splice(one.splice().id()), Subject.of("segments", segment.id()))
            .kind("flexes")
            .level(Level.ERROR)
            .message(
                "splice "
                    + one.splice().id()
                    + " sits on segment "
                    + segment.id()
                    + ", which flexes")
            .remedy("move it to a segment that is still")
            .basis(Basis.SOURCE));
    return true;
  }

  private static boolean atBreakout(
      SplicePlaces places, SplicePlaces.Placed one, double least, Ledger ledger) {
    if (one.splice().endCap()) {
      return false;
    }
    List<SplicePlaces.Near<String>> near = places.breakouts(one, least);
    if (near.isEmpty()) {
      return false;
    }
    SplicePlaces.Near<String> first = near.get(0);
    Measured measured = Measured.under(first.mm(), least, "mm");
    String id = one.splice().id();
    ledger.finding(
        Finding.on(Subject.splice(id), Subject.of("nodes", first.what()))
            .kind("breakout")
            .message(
                "splice "
                    + id
                    + (first.mm() <= 0
                        ? " sits at the breakout "
                        : " is " + Millimetres.actual(measured) + " from the breakout ")
                    + first.what()
                    + "; at least "
                    + Millimetres.limit(measured)
                    + " are good practice")
            .remedy("move it along the loom, away from " + first.what())
            .measured(measured)
            .basis(Basis.COMMON_PRACTICE));
    return true;
  }

  /** Splices that sit too near to each other, as one finding for each lot; their ids. */
  private static Set<String> crowded(SplicePlaces places, Settings settings, Ledger ledger) {
    Set<String> seen = new HashSet<>();
    Set<String> bad = new HashSet<>();
    for (SplicePlaces.Placed one : places.all()) {
      if (!seen.add(one.splice().id())) {
        continue;
      }
      double least = settings.number(APART, Subject.splice(one.splice().id()));
      Set<SplicePlaces.Placed> lot = new LinkedHashSet<>(List.of(one));
      List<SplicePlaces.Placed> open = new ArrayList<>(List.of(one));
      double closest = Double.POSITIVE_INFINITY;
      while (!open.isEmpty()) {
        for (SplicePlaces.Near<SplicePlaces.Placed> near :
            places.splices(open.remove(open.size() - 1), least)) {
          closest = Math.min(closest, near.mm());
          if (lot.add(near.what())) {
            seen.add(near.what().splice().id());
            open.add(near.what());
          }
        }
      }
      if (lot.size() > 1) {
        List<String> ids =
            lot.stream().map(p -> p.splice().id()).sorted(NaturalOrder.NATURAL).toList();
        bad.addAll(ids);
        report(ids, closest, least, ledger);
      }
    }
    return bad;
  }

  private static void report(List<String> ids, double closest, double least, Ledger ledger) {
    Measured measured = Measured.under(closest, least, "mm");
    List<Subject> subjects = ids.stream().map(Subject::splice).toList();
    Finding.Draft draft = Finding.on(subjects.get(subjects.size() - 1));
    subjects.subList(0, subjects.size() - 1).forEach(draft::and);
    ledger.finding(
        draft
            .kind("crowded")
            .message(
                "splices "
                    + Series.and(ids)
                    + (closest <= 0
                        ? " sit on one spot"
                        : " sit within " + Millimetres.actual(measured) + " of each other")
                    + "; at least "
                    + Millimetres.limit(measured)
                    + " from middle to middle are good practice")
            .remedy("set them apart along the loom")
            .measured(measured)
            .basis(Basis.COMMON_PRACTICE),
        subjects);
  }
}
