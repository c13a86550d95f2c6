package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Wire;
import org.tugtest.network.Net;
import org.tugtest.network.Point;
import org.tugtest.route.Bundle;
import org.tugtest.route.Piece;
import org.tugtest.route.Route;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** A starter or alternator cable runs beside the wires of sensors. */
public final class FeedsNearSignals implements Rule {
  private static final String AREA = "mm2";
  private static final String AMPS = "amps";
  private static final int NAMED = 6;

  private static final RuleInfo INFO =
      RuleInfo.of("feeds-near-signals", Heading.BODY, Level.WARNING)
          .summary("a heavy cable shares a segment with the wires of sensors")
          .subjects("starter, alternator and other heavy cables")
          .looksFor(
              """
              A cable of 10 mm2 or more, or one that ends on the plus of a generator or on a load of
              60 A or more (lasting or inrush), with a wire of an analog or pulse signal in the same
              bundle. One finding for each cable, with the segments and the wires beside it. Cables
              without a route are not judged.
              """)
          .why(
              """
              A starter that draws hundreds of amps couples into what lies beside it: the crank
              signal is a few millivolts just then, and the engine does not start.
              """)
          .remedy(
              """
              Give the cable or the signal wires another way, at least 100 mm apart; where they
              must cross, at a right angle. Twisting and a screen help, but less than distance.
              """)
          .basis(
              """
              Keeping switching currents 100 mm from signals: an assembly handbook and a harness
              maker's article (weak); 10 mm2 and 60 A as what counts as heavy: common practice.
              """)
          .setting(
              new Setting(
                  AREA, 10, 1, 200, "mm2", "area from which a cable is heavy (common practice)"))
          .setting(
              new Setting(
                  AMPS, 60, 5, 2000, "A", "current from which a load is heavy (common practice)"))
          .failing(
              """
              {"format": 1,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900}}},
               "devices": {
                 "BAT": {"at": "a", "pins": {"+": {}, "-": {}}, "elements": {
                   "cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "STR": {"at": "b", "pins": {"30": {}, "31": {}}, "elements": {
                   "motor": {"kind": "load", "a": "30", "b": "31", "amps": 200}}},
                 "CRANK": {"at": "b", "pins": {"1": {}}, "elements": {
                   "coil": {"kind": "signal", "pin": "1", "type": "pulse"}}},
                 "ECU": {"at": "a", "pins": {"5": {}}}},
               "wires": {"P1": {"from": "BAT:+", "to": "STR:30", "areaMm2": 25},
                         "W1": {"from": "CRANK:1", "to": "ECU:5", "areaMm2": 0.35}}}
              """)
          .passing(
              """
              {"format": 1,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900},
                                       "s2": {"from": "a", "to": "b", "lengthMm": 950}}},
               "devices": {
                 "BAT": {"at": "a", "pins": {"+": {}, "-": {}}, "elements": {
                   "cell": {"kind": "source", "plus": "+", "minus": "-"}}},
                 "STR": {"at": "b", "pins": {"30": {}, "31": {}}, "elements": {
                   "motor": {"kind": "load", "a": "30", "b": "31", "amps": 200}}},
                 "CRANK": {"at": "c", "pins": {"1": {}}, "elements": {
                   "coil": {"kind": "signal", "pin": "1", "type": "pulse"}}},
                 "ECU": {"at": "c", "pins": {"5": {}}}},
               "wires": {"P1": {"from": "BAT:+", "to": "STR:30", "areaMm2": 25},
                         "W1": {"from": "CRANK:1", "to": "ECU:5", "areaMm2": 0.35}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Set<String> signals = signalWires(facts);
    HeavyCables heavy = new HeavyCables(facts, settings.number(AMPS));
    for (Wire wire : facts.harness().wires().values()) {
      Subject subject = Subject.wire(wire.id());
      if (signals.contains(wire.id()) || !heavy.is(wire, settings.number(AREA, subject))) {
        continue;
      }
      Route route = facts.routes().of(wire.id()).orElse(null);
      if (route == null) {
        ledger.notJudged(
            subject, facts.routes().missing(wire.id()).map(none -> none.why().reason()).orElse(""));
      } else {
        judge(facts, wire, route, signals, ledger);
      }
    }
  }

  private static void judge(
      Facts facts, Wire wire, Route route, Set<String> signals, Ledger ledger) {
    Set<String> beside = new TreeSet<>(NaturalOrder.NATURAL);
    List<String> segments = new ArrayList<>();
    double together = 0;
    for (Piece piece : route.pieces()) {
      for (Bundle bundle : facts.bundles().of(piece.segment())) {
        double low = Math.max(bundle.fromMm(), piece.lowMm());
        double high = Math.min(bundle.toMm(), piece.highMm());
        List<String> met =
            high <= low
                ? List.of()
                : bundle.strands().stream()
                    .flatMap(strand -> strand.wires().stream())
                    .filter(signals::contains)
                    .toList();
        List<String> unsized =
            high <= low ? List.of() : bundle.unsized().stream().filter(signals::contains).toList();
        if (!met.isEmpty() || !unsized.isEmpty()) {
          beside.addAll(met);
          beside.addAll(unsized);
          together += high - low;
          if (!segments.contains(piece.segment())) {
            segments.add(piece.segment());
          }
        }
      }
    }
    if (beside.isEmpty()) {
      ledger.fine();
      return;
    }
    boolean one = beside.size() == 1;
    Finding.Draft draft =
        Finding.on(Subject.wire(wire.id()))
            .message(
                "wire "
                    + wire.id()
                    + size(facts, wire)
                    + " shares "
                    + Millimetres.text(together)
                    + " of "
                    + (segments.size() == 1 ? "segment " : "segments ")
                    + Series.and(segments, NAMED)
                    + " with the signal "
                    + (one ? "wire " : "wires ")
                    + Series.and(List.copyOf(beside), NAMED))
            .remedy(
                "route "
                    + wire.id()
                    + " or the signal "
                    + (one ? "wire" : "wires")
                    + " another way, at least 100 mm apart")
            .basis(Basis.COMMON_PRACTICE);
    segments.forEach(id -> draft.and(Subject.of("segments", id)));
    beside.forEach(id -> draft.and(Subject.wire(id)));
    ledger.finding(draft);
  }

  private static String size(Facts facts, Wire wire) {
    return facts
        .fitting()
        .sizes()
        .areaMm2(wire)
        .map(area -> " (" + org.tugtest.text.Quoted.number(area.value()) + " mm2)")
        .orElse("");
  }

  /** Wires of nets with an analog or pulse signal. */
  private static Set<String> signalWires(Facts facts) {
    Set<Net> nets = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Device device : facts.harness().devices().values()) {
      DeviceType type = facts.harness().typeOf(device);
      if (type == null) {
        continue;
      }
      for (Element element : type.elements().values()) {
        if (element instanceof Element.Signal signal
            && signal.pin() != null
            && (signal.type() == Element.Signal.Type.ANALOG
                || signal.type() == Element.Signal.Type.PULSE)) {
          facts.nets().of(Point.pin(device.id(), signal.pin())).ifPresent(nets::add);
        }
      }
    }
    Set<String> wires = new HashSet<>();
    nets.forEach(net -> net.wires().forEach(wire -> wires.add(wire.id())));
    return wires;
  }
}
