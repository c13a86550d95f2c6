package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Housing;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Ledger;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** Writes the findings on detours: one for each pair that exists for them alone, else one each. */
final class DetourFindings {
  private static final int NAMED = 6;
  private final Facts facts;
  private final double graveMm;

  /**
   * Findings on a harness.
   *
   * @param graveMm length too much from which one is a warning
   */
  DetourFindings(Facts facts, double graveMm) {
    this.facts = facts;
    this.graveMm = graveMm;
  }

  /** Reports all detours; each chain counts as judged. */
  void report(List<Detour> detours, Ledger ledger) {
    Set<String> detoured = new HashSet<>();
    detours.forEach(detour -> detoured.addAll(detour.run().chain().wires()));
    Map<Chain.Joint, List<Detour>> byJoint = new LinkedHashMap<>();
    List<Detour> others = new ArrayList<>();
    for (Detour detour : detours) {
      Chain.Joint joint =
          detour.beyond().stream().filter(one -> only(one, detoured)).findFirst().orElse(null);
      if (joint == null) {
        others.add(detour);
      } else {
        byJoint.computeIfAbsent(joint, key -> new ArrayList<>()).add(detour);
      }
    }
    byJoint.forEach((joint, its) -> ledger.finding(plug(joint, its), subjects(its)));
    others.forEach(detour -> ledger.finding(single(detour), subjects(List.of(detour))));
  }

  private static List<Subject> subjects(List<Detour> detours) {
    return detours.stream().map(detour -> detour.run().chain().subject()).toList();
  }

  /** Whether nothing goes through a pair but wires that make a detour. */
  private boolean only(Chain.Joint joint, Set<String> detoured) {
    for (String connector : List.of(joint.one(), joint.two())) {
      for (String cavity : facts.wiring().cavitiesOf(connector)) {
        for (WireEnd end : facts.wiring().endsAt(Point.cavity(connector, cavity))) {
          if (!detoured.contains(end.wire().id())) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private Finding.Draft plug(Chain.Joint joint, List<Detour> detours) {
    Set<String> wires = new LinkedHashSet<>();
    double extra = 0;
    double grams = grams(joint);
    double milliohm = 0;
    boolean closed = true;
    for (Detour detour : detours) {
      wires.addAll(detour.run().chain().wires());
      extra += detour.extraMm();
      grams += detour.grams();
      milliohm = Math.max(milliohm, detour.milliohm());
      closed &= detour.closedByPlug();
    }
    int count = detours.size();
    Finding.Draft draft =
        Finding.on(Subject.connector(joint.one()), Subject.connector(joint.two()))
            .level(closed ? Level.NOTE : Level.WARNING)
            .message(
                joint.one()
                    + " and "
                    + joint.two()
                    + " only loop "
                    + (count == 1 ? "a circuit" : count + " circuits")
                    + " back: "
                    + metres(extra)
                    + " of wire, "
                    + grams(grams)
                    + " and 2 connectors more than the short way takes")
            .remedy(
                closed
                    ? "lead the circuit the short way, unless the plug is an interlock or closes"
                        + " the loop on purpose"
                    : "join the wires the short way and take the two connectors out, unless the"
                        + " loop is an interlock")
            .basis(Basis.COMMON_PRACTICE);
    wires.forEach(id -> draft.and(Subject.wire(id)));
    for (Detour detour : detours) {
      draft.detail(line(detour));
    }
    return milliohm > 0
        ? draft.detail("up to " + round(milliohm) + " milliohm more in a circuit")
        : draft;
  }

  private double grams(Chain.Joint joint) {
    double grams = 0;
    for (String connector : List.of(joint.one(), joint.two())) {
      Housing housing = facts.wiring().mating().housingOf(connector).orElse(null);
      grams += housing == null || housing.grams() == null ? 0 : housing.grams();
    }
    return grams;
  }

  private static String line(Detour detour) {
    return String.join(" - ", detour.run().chain().wires())
        + ": "
        + Millimetres.text(detour.run().mm())
        + " from "
        + detour.run().chain().from().text()
        + " to "
        + detour.run().chain().to().text()
        + ", where the shortest way is "
        + Millimetres.text(detour.directMm());
  }

  private Finding.Draft single(Detour detour) {
    List<String> wires = detour.run().chain().wires();
    boolean one = wires.size() == 1;
    boolean back = !detour.doubled().segments().isEmpty();
    Subject first = led(detour);
    Finding.Draft draft = Finding.on(first);
    wires.stream().map(Subject::wire).filter(subject -> !subject.equals(first)).forEach(draft::and);
    detour
        .beyond()
        .forEach(
            joint -> draft.and(Subject.connector(joint.one())).and(Subject.connector(joint.two())));
    String via = via(first);
    draft
        .level(detour.extraMm() >= graveMm ? Level.WARNING : Level.NOTE)
        .message(
            (one ? "wire " : "wires ")
                + Series.and(wires, NAMED)
                + (one ? " runs " : " run ")
                + Millimetres.text(detour.run().mm())
                + " from "
                + detour.run().chain().from().text()
                + " to "
                + detour.run().chain().to().text()
                + (back ? ", out and back along " + Series.and(detour.segments(), NAMED) : "")
                + "; the shortest way is "
                + Millimetres.text(detour.directMm()))
        .remedy(
            via.isEmpty()
                ? "lead it the short way, unless the loop is an interlock"
                : "take "
                    + via
                    + " out of \"via\" of "
                    + first.id()
                    + ", unless it has to go there")
        .basis(Basis.COMMON_PRACTICE)
        .detail(
            "the detour costs "
                + metres(detour.extraMm())
                + " of wire, "
                + grams(detour.grams())
                + (detour.milliohm() > 0 ? " and " + round(detour.milliohm()) + " milliohm" : ""));
    return draft;
  }

  /** The wire whose via leads the chain away, else the first of the chain. */
  private Subject led(Detour detour) {
    for (Chain.Link link : detour.run().chain().links()) {
      if (!link.wire().via().isEmpty()) {
        return Subject.wire(link.wire().id());
      }
    }
    return detour.run().chain().subject();
  }

  private String via(Subject subject) {
    Wire wire = facts.harness().wires().get(subject.id());
    return wire == null ? "" : Series.and(wire.via());
  }

  /** The chains of branches that run back. */
  static List<Subject> judged(List<BranchReturns.Return> lot) {
    return lot.stream().map(back -> back.last().chain().subject()).distinct().toList();
  }

  /** Branches that run back from one splice along the way its feed or return came. */
  Finding.Draft branches(List<BranchReturns.Return> lot) {
    Set<String> wires = new LinkedHashSet<>();
    Set<String> before = new LinkedHashSet<>();
    Set<String> segments = new LinkedHashSet<>();
    Set<String> loads = new LinkedHashSet<>();
    double most = 0;
    double sum = 0;
    for (BranchReturns.Return back : lot) {
      wires.addAll(back.last().chain().wires());
      before.addAll(back.way().get(back.way().size() - 2).chain().wires());
      segments.addAll(back.doubled().segments());
      loads.add(back.load().text());
      most = Math.max(most, back.doubled().mm());
      sum += back.doubled().mm();
    }
    String splice = lot.get(0).last().chain().from().text();
    List<String> ids = List.copyOf(wires);
    Finding.Draft draft = Finding.on(Subject.wire(ids.get(0)));
    ids.stream().skip(1).map(Subject::wire).forEach(draft::and);
    draft.and(Subject.splice(splice));
    before.forEach(id -> draft.and(Subject.wire(id)));
    return draft
        .level(most >= graveMm ? Level.WARNING : Level.NOTE)
        .message(
            (ids.size() == 1 ? "wire " : "wires ")
                + Series.and(ids, NAMED)
                + " to "
                + Series.and(List.copyOf(loads), NAMED)
                + (ids.size() == 1 ? " runs " : " run ")
                + Millimetres.text(most)
                + " back from splice "
                + splice
                + " along the way that "
                + Series.and(List.copyOf(before), NAMED)
                + (before.size() == 1 ? " comes (" : " come (")
                + Series.and(List.copyOf(segments), NAMED)
                + ")")
        .remedy("move splice " + splice + " to where the branch leaves, or join it there")
        .basis(Basis.COMMON_PRACTICE)
        .detail("that is " + metres(sum) + " of wire too much");
  }

  private static String metres(double mm) {
    return Quoted.number(Math.round(mm / 10) / 100.0) + " m";
  }

  private static String grams(double grams) {
    return round(grams) + " g";
  }

  private static String round(double figure) {
    return Quoted.number(Math.round(figure * 10) / 10.0);
  }
}
