package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.heat.Ampacity;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.protect.Exposure;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** An electronic trip is all that protects a wire: when it fails closed, nothing does. */
public final class TripMayFailClosed implements Rule {
  /** So many devices with trips are looked at one by one. */
  private static final int MOST_DEVICES = 64;

  private static final int NAMED = 4;
  private static final int PARTIES = 12;
  private static final double LEAST_AMPS = 1e-9;

  /** The more over what it stands; of two without a bound the one that stands less. */
  private static final Comparator<Map.Entry<Exposure, Ampacity>> WORST =
      Comparator.<Map.Entry<Exposure, Ampacity>>comparingDouble(
              wire -> wire.getKey().mostA() / Math.max(wire.getValue().amps(), LEAST_AMPS))
          .thenComparing(wire -> -wire.getValue().amps());

  private static final RuleInfo INFO =
      RuleInfo.of("trip-may-fail-closed", Heading.PROTECTION, Level.NOTE)
          .summary("behind an electronic trip that fails closed no fuse protects the wire")
          .subjects("feed wires that an electronic trip protects")
          .looksFor(
              """
              Wires of the feed side whose limit is set by a "fuse" element with "electronic". The
              trips of one device at a time are taken as closed for ever, and what the fuses before
              it then let through is held against the ampacity of the wire. One note for each
              device, with the wires. Return wires are not looked at.
              """)
          .why(
              """
              A power transistor that dies often dies closed. The trip is then a piece of wire, and
              what is left is the fuse of the module itself, which is sized for all of its outputs.
              """)
          .remedy(
              """
              Fuse the module's feed, or the wires behind it, for what these wires stand; or take
              larger wires; or know that the trip alone protects them.
              """)
          .basis("The ampacity of gauge-under-fuse; that trips may fail closed is common practice.")
          .failing(example(60))
          .passing(example(15))
          .build();

  private static String example(int rating) {
    return Example.filled(
        """
        {"format": 1, "sketch": true,
         "devices": {
           "BAT": {"elements": {"cell": {"kind": "source", "plus": "+", "minus": "-"}}},
           "FB": {"elements": {"f1": {"kind": "fuse", "a": "in", "b": "1", "ratingA": %d}}},
           "PDM": {"elements": {"o1": {"kind": "fuse", "a": "30", "b": "1", "ratingA": 10, "electronic": true}}},
           "LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 35}}}},
         "wires": {"W1": {"from": "BAT:+", "to": "FB:in", "areaMm2": 16},
                   "W2": {"from": "FB:1", "to": "PDM:30", "areaMm2": 16},
                   "W3": {"from": "PDM:1", "to": "LAMP:1", "areaMm2": 2.5},
                   "W4": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 2.5}}}
        """,
        rating);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<String, List<Exposure>> behind = new TreeMap<>(NaturalOrder.NATURAL);
    for (Exposure exposure : facts.protection().exposures()) {
      TreeSet<String> devices = new TreeSet<>(NaturalOrder.NATURAL);
      exposure.cut().stream()
          .filter(TripMayFailClosed::isTrip)
          .forEach(trip -> devices.add(trip.device()));
      if (!devices.isEmpty() && !exposure.unbounded()) {
        devices.forEach(
            device -> behind.computeIfAbsent(device, none -> new ArrayList<>()).add(exposure));
      }
    }
    if (!behind.isEmpty()) {
      judge(facts, behind, ledger);
    }
  }

  private static boolean isTrip(Edge.OfElement fuse) {
    return fuse.element() instanceof Element.Fuse place && place.electronic();
  }

  private static void judge(Facts facts, Map<String, List<Exposure>> behind, Ledger ledger) {
    Map<String, Exposure> allClosed = facts.protection().holding(TripMayFailClosed::isTrip);
    int looked = 0;
    for (Map.Entry<String, List<Exposure>> device : behind.entrySet()) {
      List<Exposure> doubtful = new ArrayList<>();
      for (Exposure exposure : device.getValue()) {
        Optional<Ampacity> stands = facts.ampacity().of(exposure.wire().wire());
        if (stands.isEmpty()) {
          ledger.notJudged(exposure.wire().subject(), "it gives no area");
        } else if (allClosed.getOrDefault(exposure.wire().wire().id(), exposure).mostA()
            <= stands.get().amps()) {
          ledger.fine();
        } else {
          doubtful.add(exposure);
        }
      }
      if (!doubtful.isEmpty() && ++looked <= MOST_DEVICES) {
        judge(facts, device.getKey(), doubtful, ledger);
      } else {
        doubtful.forEach(
            exposure ->
                ledger.notJudged(
                    exposure.wire().subject(),
                    "more than " + MOST_DEVICES + " devices have trips"));
      }
    }
  }

  /** The wires that the trips of one device protect. */
  private static void judge(Facts facts, String device, List<Exposure> doubtful, Ledger ledger) {
    Map<String, Exposure> closed =
        facts.protection().holding(fuse -> isTrip(fuse) && fuse.device().equals(device));
    Map<Exposure, Ampacity> bad = new LinkedHashMap<>();
    for (Exposure exposure : doubtful) {
      Ampacity stands = facts.ampacity().of(exposure.wire().wire()).orElseThrow();
      Exposure then = closed.getOrDefault(exposure.wire().wire().id(), exposure);
      if (then.mostA() <= stands.amps()) {
        ledger.fine();
      } else if (Double.isInfinite(then.mostA()) && !facts.protection().unrated().isEmpty()) {
        ledger.notJudged(exposure.wire().subject(), "a fuse before it has no known rating");
      } else {
        bad.put(then, stands);
      }
    }
    if (!bad.isEmpty()) {
      ledger.finding(
          finding(facts, device, bad),
          bad.keySet().stream().map(exposure -> exposure.wire().subject()).toList());
    }
  }

  private static Finding.Draft finding(Facts facts, String device, Map<Exposure, Ampacity> bad) {
    Map.Entry<Exposure, Ampacity> worst = null;
    Basis basis = Basis.COMMON_PRACTICE;
    for (Map.Entry<Exposure, Ampacity> wire : bad.entrySet()) {
      basis = basis.weaker(wire.getValue().basis());
      if (worst == null || WORST.compare(wire, worst) > 0) {
        worst = wire;
      }
    }
    if (worst == null) {
      throw new IllegalArgumentException("no wire");
    }
    double stands = Figures.cutOff(worst.getValue().amps());
    double amps = worst.getKey().mostA();
    String wire = worst.getKey().wire().text();
    List<String> wires = bad.keySet().stream().map(one -> one.wire().text()).toList();
    String lets =
        Double.isInfinite(amps)
            ? "no fuse is before it"
            : Figures.fuses(worst.getKey().cut(), facts.protection().ratings())
                + (worst.getKey().cut().size() == 1 ? " lets " : " let ")
                + Figures.amps(amps)
                + " through";
    Finding.Draft draft =
        Finding.on(Subject.device(device))
            .message(
                "when a trip of "
                    + device
                    + " fails closed, "
                    + lets
                    + ": that does not protect "
                    + Series.and(wires, NAMED)
                    + "; "
                    + wire
                    + " stands "
                    + Figures.shown(stands)
                    + " A")
            .remedy(
                "fuse the feed of "
                    + device
                    + " or these wires for what they stand, or take larger wires; else the trip"
                    + " alone protects them")
            .basis(basis);
    if (Double.isFinite(amps)) {
      draft.measured(Measured.over(amps, stands, "A"));
    }
    for (Map.Entry<Exposure, Ampacity> one : bad.entrySet()) {
      draft.detail(
          one.getKey().wire().text()
              + " stands "
              + Figures.amps(Figures.cutOff(one.getValue().amps()))
              + (Double.isInfinite(one.getKey().mostA())
                  ? ", without a bound"
                  : ", " + Figures.amps(one.getKey().mostA()) + " can flow"));
    }
    wires.stream().limit(PARTIES).forEach(id -> draft.and(Subject.wire(id)));
    return draft;
  }
}
