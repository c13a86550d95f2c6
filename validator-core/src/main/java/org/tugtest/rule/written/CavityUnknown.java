package org.tugtest.rule.written;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.Housing;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.Resolution;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.text.Nearest;
import org.tugtest.text.Series;

/** A wire ends in a cavity or on a pin that its connector or device has not. */
public final class CavityUnknown implements Rule {
  private static final int SHOWN = 4;
  private static final int LISTED = 12;

  private static final RuleInfo INFO =
      RuleInfo.of("cavity-unknown", Heading.WRITTEN, Level.ERROR)
          .stage(Stage.REFERENCES)
          .summary("a wire ends in a cavity or on a pin that is not there")
          .subjects("wires")
          .looksFor(
              """
              A wire end that names a known connector with a cavity that is not in the "rows" of its
              housing, or a known device with a pin that it does not list ("pins", "ports", else the
              pins that its elements name). In a sketch a connector without housing and a device
              that lists no pins get what wires name.
              """)
          .why(
              """
              The person at the bench holds a terminal and no hole for it, or puts it in the hole
              next to it.
              """)
          .remedy(
              """
              Correct the cavity, or add it to the "rows" of the housing; correct the pin, or add it
              to the device.
              """)
          .basis("Follows from the format: a housing has the cavities that its \"rows\" name.")
          .causes(Cause.JOINT_UNMADE)
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"h3": {"side": "socket", "rows": [["1", "2", "3"]]}}},
               "connectors": {"R1": {"housing": "h3"}},
               "wires": {"W1": {"from": "R1:4", "to": "R2:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"h3": {"side": "socket", "rows": [["1", "2", "3"]]}}},
               "connectors": {"R1": {"housing": "h3"}},
               "wires": {"W1": {"from": "R1:3", "to": "R2:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<Resolution.PinUnknown, List<WireEnd>> unknown = new LinkedHashMap<>();
    for (Wire wire : facts.harness().wires().values()) {
      String reason = "";
      boolean bad = false;
      for (WireEnd end : List.of(new WireEnd(wire, true), new WireEnd(wire, false))) {
        Ref ref = end.ref();
        Resolution resolution = ref == null ? null : facts.wiring().resolve(ref);
        if (resolution instanceof Resolution.PinUnknown pin) {
          if (isMisread(facts, pin)) {
            reason = "what it ends on is not written rightly";
          } else {
            unknown.computeIfAbsent(pin, none -> new ArrayList<>()).add(end);
            bad = true;
          }
        } else if (!(resolution instanceof Resolution.Found)) {
          reason = Unjudged.UNKNOWN_END;
        }
      }
      if (!bad && reason.isEmpty()) {
        ledger.fine();
      } else if (!bad) {
        ledger.notJudged(Subject.wire(wire.id()), reason);
      }
    }
    unknown.forEach(
        (pin, ends) ->
            ledger.finding(
                finding(facts, pin, ends),
                ends.stream().map(end -> Subject.wire(end.wire().id())).toList()));
  }

  private static boolean isMisread(Facts facts, Resolution.PinUnknown pin) {
    if (pin.kind() == Point.Kind.CAVITY) {
      String housing = facts.wiring().mating().housingOf(pin.owner()).map(Housing::id).orElse("");
      return facts.misread().at("connectors", pin.owner())
          || facts.misread().at("parts", "housings", housing);
    }
    Device device = facts.harness().devices().get(pin.owner());
    String type = device == null ? null : device.type();
    return facts.misread().at("devices", pin.owner())
        || (type != null && facts.misread().at("parts", "deviceTypes", type));
  }

  private static Finding.Draft finding(Facts facts, Resolution.PinUnknown pin, List<WireEnd> ends) {
    List<String> wires = ends.stream().map(end -> end.wire().id()).distinct().toList();
    boolean one = wires.size() == 1;
    String who = (one ? "wire " : "wires ") + Series.and(wires, SHOWN) + (one ? " ends" : " end");
    boolean cavity = pin.kind() == Point.Kind.CAVITY;
    String housing = facts.wiring().mating().housingOf(pin.owner()).map(Housing::id).orElse("");
    String message =
        cavity
            ? who
                + " in cavity "
                + pin.pin()
                + " of "
                + pin.owner()
                + ", but its housing "
                + housing
                + " has no such cavity"
            : who + " on pin " + pin.pin() + " of " + pin.owner() + ", which has no such pin";
    Collection<String> known =
        cavity ? facts.wiring().cavitiesOf(pin.owner()) : facts.wiring().pinsOf(pin.owner());
    Finding.Draft draft =
        Finding.on(Subject.wire(wires.get(0)))
            .kind(pin.owner() + ":" + pin.pin())
            .message(message)
            .remedy(remedy(pin, cavity ? "cavities" : "pins", List.copyOf(known)));
    wires.subList(1, wires.size()).forEach(wire -> draft.and(Subject.wire(wire)));
    draft.and(cavity ? Subject.connector(pin.owner()) : Subject.device(pin.owner()));
    ends.forEach(end -> draft.at(facts.places().of("wires/" + end.wire().id(), end.field())));
    draft.at(
        cavity
            ? facts.places().of("parts/housings/" + housing, "rows")
            : facts.places().of("devices/" + pin.owner()));
    return draft;
  }

  private static String remedy(Resolution.PinUnknown pin, String noun, List<String> known) {
    String near = Nearest.question(pin.pin(), known);
    if (!near.isEmpty() && known.size() > LISTED) {
      return near;
    }
    String there =
        known.isEmpty()
            ? pin.owner() + " has no " + noun
            : pin.owner()
                + " has the "
                + noun
                + " "
                + (known.size() <= LISTED
                    ? Series.and(known)
                    : known.get(0) + " to " + known.get(known.size() - 1));
    return near.isEmpty() ? there : near + " " + there;
  }
}
