package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Point;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.Quoted;

/** The two wires of a CAN bus are joined, exchanged, or not ended with 60 ohm between them. */
public final class BusMisterminated implements Rule {
  private static final String OHMS = "ohms";
  private static final String PERCENT = "percent";
  private static final RuleInfo INFO =
      RuleInfo.of("bus-misterminated", Heading.LOAD, Level.ERROR)
          .summary("a CAN bus does not measure 60 ohm between its two wires")
          .subjects("CAN buses")
          .looksFor(
              """
              Signals of the types can-high and can-low of one device that wires join to others. All
              loads given in ohms between the two circuits, in parallel and through points between
              them, have to come to 60 ohm within 10 %. It also finds a bus of which both wires are
              one circuit, and a device that has the two exchanged.
              """)
          .why(
              """
              Without its two ends of 120 ohm a bus echoes: it works on the bench and loses frames on
              the car. With a third one its levels are too low.
              """)
          .remedy(
              """
              Give the two units or plugs at the far ends of the bus a load of 120 ohm between the
              pair, and no other.
              """)
          .basis(
              "Common practice for a fast CAN bus: 120 ohm at each end, so 60 between the wires, 10"
                  + " % either way.")
          .setting(
              new Setting(OHMS, 60, 1, 1000, "ohm", "what the bus shall measure (common practice)"))
          .setting(new Setting(PERCENT, 10, 0, 100, "%", "how far it may be off (common practice)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "ECU": {"elements": {"h": {"kind": "signal", "pin": "1", "type": "can-high"},
                                      "l": {"kind": "signal", "pin": "2", "type": "can-low"},
                                      "end": {"kind": "load", "a": "1", "b": "2", "ohms": 120, "use": "free"}}},
                 "DASH": {"elements": {"h": {"kind": "signal", "pin": "1", "type": "can-high"},
                                       "l": {"kind": "signal", "pin": "2", "type": "can-low"}}}},
               "wires": {"W1": {"from": "ECU:1", "to": "DASH:1"}, "W2": {"from": "ECU:2", "to": "DASH:2"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "ECU": {"elements": {"h": {"kind": "signal", "pin": "1", "type": "can-high"},
                                      "l": {"kind": "signal", "pin": "2", "type": "can-low"},
                                      "end": {"kind": "load", "a": "1", "b": "2", "ohms": 120, "use": "free"}}},
                 "DASH": {"elements": {"h": {"kind": "signal", "pin": "1", "type": "can-high"},
                                       "l": {"kind": "signal", "pin": "2", "type": "can-low"},
                                       "end": {"kind": "load", "a": "1", "b": "2", "ohms": 120, "use": "free"}}}},
               "wires": {"W1": {"from": "ECU:1", "to": "DASH:1"}, "W2": {"from": "ECU:2", "to": "DASH:2"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** One device's two pins on a bus. */
  private record Tap(Elements.In<Element.Signal> high, Elements.In<Element.Signal> low) {}

  /** The circuits of a bus, each by its first point. */
  private record Bus(Point high, Point low) {
    Bus turned() {
      return new Bus(/* high= */ low, /* low= */ high);
    }
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Bus, List<Tap>> buses = new LinkedHashMap<>();
    for (Tap tap : taps(facts)) {
      Optional<Point> high = Elements.net(facts, tap.high().device(), tap.high().element().pin());
      Optional<Point> low = Elements.net(facts, tap.low().device(), tap.low().element().pin());
      if (high.isPresent() && low.isPresent()) {
        buses.computeIfAbsent(new Bus(high.get(), low.get()), bus -> new ArrayList<>()).add(tap);
      } else {
        ledger.notJudged(tap.high().subject(), "a pin of the bus is no pin of the device");
      }
    }
    Resistors resistors = Resistors.of(facts);
    buses.forEach((bus, taps) -> judge(facts, resistors, buses, bus, taps, settings, ledger));
  }

  private static void judge(
      Facts facts,
      Resistors resistors,
      Map<Bus, List<Tap>> buses,
      Bus bus,
      List<Tap> taps,
      Settings settings,
      Ledger ledger) {
    Subject first = taps.get(0).high().subject();
    if (bus.high().equals(bus.low())) {
      ledger.finding(
          on(taps)
              .kind("joined")
              .message("CAN high and CAN low of " + names(taps) + " are one circuit")
              .remedy("part the two wires of the bus"));
      return;
    }
    List<Tap> turned = buses.get(bus.turned());
    if (turned != null && isLess(turned, taps)) {
      ledger.fine();
      return;
    }
    if (turned != null) {
      ledger.finding(
          on(taps)
              .kind("exchanged")
              .message(
                  names(taps)
                      + (taps.size() == 1 ? " has" : " have")
                      + " CAN high and CAN low the other way round than "
                      + names(turned))
              .remedy("exchange the two wires at " + names(taps)));
      return;
    }
    if (facts.nets().of(bus.high()).map(net -> net.wires().isEmpty()).orElse(true)
        && facts.nets().of(bus.low()).map(net -> net.wires().isEmpty()).orElse(true)) {
      ledger.notJudged(first, "no wire is on the bus");
      return;
    }
    double ohms = resistors.between(bus.high(), bus.low());
    double wanted = settings.number(OHMS, first);
    double off = wanted * settings.number(PERCENT, first) / 100;
    if (ohms >= wanted - off && ohms <= wanted + off) {
      ledger.fine();
    } else if (ohms > wanted && !facts.unread().isEmpty()) {
      ledger.notJudged(first, Facts.FILE_UNREAD);
    } else {
      ledger.finding(measured(on(taps), taps, ohms, wanted, off));
    }
  }

  private static Finding.Draft measured(
      Finding.Draft draft, List<Tap> taps, double ohms, double wanted, double off) {
    String bus = "the CAN bus of " + names(taps);
    if (Double.isInfinite(ohms)) {
      return draft
          .message(bus + " has no resistor between its two wires")
          .remedy(
              "give the units at its two ends a load of "
                  + Quoted.number(2 * wanted)
                  + " ohm each");
    }
    Measured figure =
        ohms > wanted
            ? Measured.over(ohms, wanted + off, "ohm")
            : Measured.under(ohms, wanted - off, "ohm");
    return draft
        .message(
            bus
                + " measures "
                + figure.actualShown()
                + " ohm between its two wires; "
                + Quoted.number(wanted)
                + " are wanted, "
                + (ohms > wanted ? "at most " : "at least ")
                + figure.limitShown())
        .remedy(
            ohms > wanted
                ? "give the far end of the bus its load of " + Quoted.number(2 * wanted) + " ohm"
                : "take out the loads between the pair that are not at its two far ends")
        .measured(figure);
  }

  private static Finding.Draft on(List<Tap> taps) {
    Finding.Draft draft =
        Finding.on(taps.get(0).high().subject(), taps.get(0).low().subject())
            .basis(Basis.COMMON_PRACTICE);
    taps.subList(1, taps.size())
        .forEach(tap -> draft.and(tap.high().subject()).and(tap.low().subject()));
    return draft;
  }

  /** The side of an exchanged bus that counts as right: more devices, else the first in order. */
  private static boolean isLess(List<Tap> turned, List<Tap> taps) {
    return turned.size() < taps.size()
        || (turned.size() == taps.size()
            && taps.get(0).high().subject().compareTo(turned.get(0).high().subject()) < 0);
  }

  private static String names(List<Tap> taps) {
    List<String> names = taps.stream().map(tap -> tap.high().device()).distinct().toList();
    return org.tugtest.text.Series.and(names, 4);
  }

  /** The pairs of signals: of each device, the high and the low of one name. */
  private static List<Tap> taps(Facts facts) {
    Map<String, Elements.In<Element.Signal>> lows = new LinkedHashMap<>();
    List<Elements.In<Element.Signal>> signals = Elements.of(facts, Element.Signal.class);
    for (Elements.In<Element.Signal> signal : signals) {
      if (signal.element().type() == Element.Signal.Type.CAN_LOW) {
        lows.put(key(signal), signal);
      }
    }
    List<Tap> taps = new ArrayList<>();
    for (Elements.In<Element.Signal> signal : signals) {
      Elements.In<Element.Signal> low =
          signal.element().type() == Element.Signal.Type.CAN_HIGH ? lows.get(key(signal)) : null;
      if (low != null) {
        taps.add(new Tap(signal, low));
      }
    }
    return taps;
  }

  /** The device and, when it has several buses, what is left of the name without high and low. */
  private static String key(Elements.In<Element.Signal> signal) {
    long same =
        signal.type().elements().values().stream()
            .filter(
                other ->
                    other instanceof Element.Signal its
                        && its.type() == Element.Signal.Type.CAN_HIGH)
            .count();
    String stem =
        signal
            .name()
            .toLowerCase(Locale.ROOT)
            .replaceAll("(high|low|hi|lo|[hl])(?=$|[-_0-9])|[-_]", "");
    return signal.device() + (same > 1 ? "." + stem : "");
  }
}
