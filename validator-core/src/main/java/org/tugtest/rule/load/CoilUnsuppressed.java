package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.network.Sides;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A coil that an electronic output switches has nothing across it that takes its surge. */
public final class CoilUnsuppressed implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("coil-unsuppressed", Heading.LOAD, Level.WARNING)
          .summary("a coil on an electronic output has neither diode nor resistor across it")
          .subjects("coils")
          .looksFor(
              """
              A coil of which one end is joined to an electronic output: a contact without a coil in
              a device that also has signals, or a fuse with "electronic": true. Nothing is found
              when a diode, or a load given in ohms, lies between the same two circuits as the coil.
              """)
          .why(
              """
              A coil that is switched off drives its volts up until something gives way: the
              output's transistor, which was not made for it.
              """)
          .remedy(
              """
              Fit a relay with a diode or resistor inside and give it as an element of the device
              type, or put a diode across the coil, its cathode to plus.
              """)
          .basis("Common practice: relays on electronic outputs are suppressed.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "ECU": {"elements": {"drive": {"kind": "contact", "a": "A1", "b": "A2", "closedIn": ["on"]},
                                      "sense": {"kind": "signal", "pin": "B1", "type": "digital"}}},
                 "K1": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80}}}},
               "wires": {"W1": {"from": "K1:85", "to": "ECU:A1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "devices": {
                 "ECU": {"elements": {"drive": {"kind": "contact", "a": "A1", "b": "A2", "closedIn": ["on"]},
                                      "sense": {"kind": "signal", "pin": "B1", "type": "digital"}}},
                 "K1": {"elements": {"coil": {"kind": "coil", "a": "86", "b": "85", "ohms": 80},
                                     "surge": {"kind": "diode", "a": "85", "b": "86"}}}},
               "wires": {"W1": {"from": "K1:85", "to": "ECU:A1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Point, Subject> outputs = outputs(facts);
    Set<Set<Point>> suppressed = suppressed(facts);
    for (Elements.In<Element.Coil> coil : Elements.of(facts, Element.Coil.class)) {
      Optional<Point> a = Elements.net(facts, coil.device(), coil.element().a());
      Optional<Point> b = Elements.net(facts, coil.device(), coil.element().b());
      if (a.isEmpty() || b.isEmpty()) {
        ledger.notJudged(coil.subject(), "an end of the coil is no pin of its device");
        continue;
      }
      Subject output = outputs.getOrDefault(a.get(), outputs.get(b.get()));
      if (output == null || a.equals(b) || suppressed.contains(Set.of(a.get(), b.get()))) {
        ledger.fine();
      } else {
        ledger.finding(
            Finding.on(coil.subject(), output)
                .message(
                    "coil "
                        + coil.text()
                        + " hangs on the electronic output "
                        + output.id()
                        + " and nothing across it takes its surge")
                .remedy(
                    "fit a relay with a diode or resistor inside, or put a diode across the coil,"
                        + " cathode to plus")
                .basis(Basis.COMMON_PRACTICE));
      }
    }
  }

  /** The nets on electronic outputs, with the output. */
  private static Map<Point, Subject> outputs(Facts facts) {
    Map<Point, Subject> outputs = new HashMap<>();
    Reach supply = supply(facts);
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside && isElectronic(facts, inside)) {
        for (Point end : List.of(edge.a(), edge.b())) {
          if (!supply.reaches(end)) {
            Elements.net(facts, end).ifPresent(net -> outputs.putIfAbsent(net, edge.subject()));
          }
        }
      }
    }
    return outputs;
  }

  /** What is on a source without passing an electronic output: the supply that outputs switch. */
  private static Reach supply(Facts facts) {
    List<Point> terminals = new ArrayList<>();
    for (Edge.OfElement source : facts.network().sources()) {
      terminals.add(source.a());
      terminals.add(source.b());
    }
    return Reach.from(
        facts.network(),
        terminals,
        (edge, from) ->
            !(edge instanceof Edge.OfElement inside && isElectronic(facts, inside))
                && (Sides.feeds(edge, from) || Sides.feeds(edge, edge.across(from))));
  }

  private static boolean isElectronic(Facts facts, Edge.OfElement inside) {
    if (inside.element() instanceof Element.Fuse fuse) {
      return fuse.electronic();
    }
    if (!(inside.element() instanceof Element.Contact contact) || contact.coil() != null) {
      return false;
    }
    Device device = facts.harness().devices().get(inside.device());
    DeviceType type = device == null ? null : facts.harness().typeOf(device);
    return type != null
        && type.elements().values().stream().anyMatch(Element.Signal.class::isInstance);
  }

  /** The pairs of nets with a diode or a resistor between them. */
  private static Set<Set<Point>> suppressed(Facts facts) {
    Set<Set<Point>> pairs = new HashSet<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && (inside.element() instanceof Element.Diode
              || (inside.element() instanceof Element.Load load && load.ohms() != null))) {
        Optional<Point> a = Elements.net(facts, edge.a());
        Optional<Point> b = Elements.net(facts, edge.b());
        if (a.isPresent() && b.isPresent() && !a.equals(b)) {
          pairs.add(Set.of(a.get(), b.get()));
        }
      }
    }
    return pairs;
  }
}
