package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Loom;
import org.tugtest.network.Mate;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.network.Wiring;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** A contact is wired on one half of a pair and leads nowhere on the other. */
public final class ContactOneSided implements Rule {
  private static final int NAMED = 6;
  private static final String UNDESCRIBED = "the device names no elements that could use a pin";
  private static final String TYPE_UNKNOWN = "the type of the device is not known";

  private static final RuleInfo INFO =
      RuleInfo.of("contact-one-sided", Heading.CONNECTORS, Level.ERROR)
          .summary("a contact is wired on one half and leads nowhere on the other")
          .subjects("wired contacts of mated connectors")
          .looksFor(
              """
              Between two looms: a cavity with a wire whose opposite cavity holds none, or that
              has no opposite cavity at all. Towards a device: a cavity with a wire where the
              port has no cavity, or whose pin is used by no element of the device. Pins of a
              device that no wire reaches are the device's own matter. A device that describes
              no elements is not judged. Where the wired half is on a loom with
              "stage": "found" it is a warning: donor looms carry wires for options.
              """)
          .why(
              """
              The circuit ends inside the plug. On the bench both looms ring out clean; in the
              car the function is dead, or a feed stands bare in a half-empty plug.
              """)
          .remedy(
              """
              Add the wire on the other half, or move the wire to the cavity that was meant, or
              take the wire out. Towards a device: correct the cavity, or add the element that
              uses the pin.
              """)
          .basis(
              """
              Follows from the format. The pin-for-pin map of both halves is checked together
              (space-mission assurance task list 2.3.16-8).
              """)
          .causes(Cause.JOINT_ONE_SIDED)
          .follows(Cause.JOINT_UNMADE, Cause.JOINT_ONE_SIDED)
          .failing(
              """
              {"format": 1, "sketch": true,
               "connectors": {"X1": {"mates": "X2"}, "X2": {}},
               "wires": {"W1": {"from": "A:1", "to": "X1:1"}, "W2": {"from": "X2:1", "to": "B:1"},
                         "W3": {"from": "A:2", "to": "X1:2"}}}
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"lamp-pin": {"side": "pin", "rows": [["3", "2", "1"]]}}},
               "devices": {"LAMP": {"ports": {"plug": {"housing": "lamp-pin"}},
                 "elements": {"bulb": {"kind": "load", "a": "1", "b": "2", "watts": 5}}}},
               "connectors": {"X1": {"mates": "LAMP"}},
               "wires": {"W1": {"from": "X1:3", "to": "BAT:+"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "connectors": {"X1": {"mates": "X2"}, "X2": {}},
               "wires": {"W1": {"from": "A:1", "to": "X1:1"},
                         "W2": {"from": "X2:1", "to": "B:1"}}}
              """)
          .build();

  /** What is wrong on one half, by the word that tells such findings apart. */
  private enum Fault {
    OPPOSITE_EMPTY("opposite-empty"),
    NO_OPPOSITE("no-opposite"),
    PIN_UNUSED("pin-unused");

    private final String kind;

    Fault(String kind) {
      this.kind = kind;
    }
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (MatedPair pair : MatedPair.all(facts.harness(), facts.wiring().mating())) {
      String other = pair.otherConnector().orElse(null);
      if (other != null) {
        judgeHalf(facts, ledger, pair.connector(), pair.mate());
        judgeHalf(facts, ledger, other, new Mate.OfConnector(pair.connector()));
      } else {
        judgeHalf(facts, ledger, pair.connector(), pair.mate());
      }
    }
  }

  private static void judgeHalf(Facts facts, Ledger ledger, String half, Mate mate) {
    Wiring wiring = facts.wiring();
    Set<String> used = new HashSet<>();
    Optional<String> blind =
        mate instanceof Mate.OfPort port ? usedPins(facts, port.device(), used) : Optional.empty();
    Map<Fault, List<Point>> faults = new TreeMap<>();
    for (Point cavity : wiring.cavityPoints(half)) {
      if (wiring.endsAt(cavity).isEmpty() || ledger.switchedOff(cavity.subject())) {
        continue;
      }
      Point opposite = wiring.meets(cavity).orElse(null);
      if (opposite == null) {
        faults.computeIfAbsent(Fault.NO_OPPOSITE, key -> new ArrayList<>()).add(cavity);
      } else if (opposite.kind() == Point.Kind.PIN) {
        if (blind.isPresent()) {
          ledger.notJudged(cavity.subject(), blind.get());
        } else if (used.contains(opposite.name())) {
          ledger.fine();
        } else {
          faults.computeIfAbsent(Fault.PIN_UNUSED, key -> new ArrayList<>()).add(cavity);
        }
      } else if (!wiring.endsAt(opposite).isEmpty()) {
        ledger.fine();
      } else if (facts.unread().isEmpty()) {
        faults.computeIfAbsent(Fault.OPPOSITE_EMPTY, key -> new ArrayList<>()).add(cavity);
      } else {
        ledger.notJudged(cavity.subject(), Facts.FILE_UNREAD);
      }
    }
    faults.forEach(
        (fault, cavities) ->
            ledger.finding(
                finding(facts, half, mate, fault, cavities),
                cavities.stream().map(Point::subject).toList()));
  }

  /** Collects the pins of a device that something uses; says why it cannot. */
  private static Optional<String> usedPins(Facts facts, String id, Set<String> used) {
    Device device = facts.harness().devices().get(id);
    DeviceType type = device == null ? null : facts.harness().typeOf(device);
    if (device == null || type == null) {
      return Optional.of(TYPE_UNKNOWN);
    }
    if (type.elements().isEmpty()) {
      return Optional.of(UNDESCRIBED);
    }
    for (Element element : type.elements().values()) {
      used.addAll(element.ends());
    }
    used.addAll(device.boltedTo().keySet());
    return Optional.empty();
  }

  private static Finding.Draft finding(
      Facts facts, String half, Mate mate, Fault fault, List<Point> cavities) {
    Finding.Draft draft =
        Finding.on(Subject.connector(half))
            .kind(fault.kind)
            .message(message(facts, mate, fault, cavities))
            .remedy(remedy(mate, fault));
    if (isFound(facts, half)) {
      draft.level(Level.WARNING);
    }
    for (Point cavity : cavities) {
      draft.and(cavity.subject());
      if (fault != Fault.NO_OPPOSITE) {
        facts.wiring().meets(cavity).ifPresent(opposite -> draft.and(opposite.subject()));
      }
      for (WireEnd end : facts.wiring().endsAt(cavity)) {
        draft.and(Subject.wire(end.wire().id()));
        draft.at(facts.places().of("wires/" + end.wire().id(), end.field()));
      }
      if (cavities.size() > 1) {
        draft.detail(
            facts
                .wiring()
                .meets(cavity)
                .map(at -> leads(facts, cavity) + " to " + at.text())
                .orElseGet(() -> leads(facts, cavity) + " to nothing"));
      }
    }
    return draft.at(facts.places().of(Subject.connector(half).place()));
  }

  private static String leads(Facts facts, Point cavity) {
    return "wire " + wires(facts, cavity) + " in " + cavity.text() + " leads";
  }

  private static String wires(Facts facts, Point cavity) {
    return facts.wiring().endsAt(cavity).stream()
        .map(end -> end.wire().id())
        .collect(Collectors.joining(" + "));
  }

  private static String message(Facts facts, Mate mate, Fault fault, List<Point> cavities) {
    List<String> named =
        cavities.stream().map(at -> at.text() + " (" + wires(facts, at) + ")").toList();
    boolean one = cavities.size() == 1;
    String subject = Series.and(named, NAMED) + (one ? " is wired" : " are wired");
    String opposite = facts.wiring().meets(cavities.get(0)).map(Point::text).orElseGet(mate::text);
    return switch (fault) {
      case OPPOSITE_EMPTY ->
          subject
              + (one
                  ? ", but " + opposite + " on the other half is empty"
                  : ", but the cavities that meet them on " + mate.text() + " are empty");
      case NO_OPPOSITE -> subject + ", but " + mate.text() + " has no cavity there";
      case PIN_UNUSED ->
          subject
              + (one
                  ? ", but no element of the device uses its pin " + opposite
                  : ", but no element of " + device(mate) + " uses the pins they meet");
    };
  }

  private static String device(Mate mate) {
    return mate instanceof Mate.OfPort port ? port.device() : mate.text();
  }

  private static String remedy(Mate mate, Fault fault) {
    return switch (fault) {
      case OPPOSITE_EMPTY ->
          "add the wire on "
              + mate.text()
              + ", move this one to the cavity that was meant, or take"
              + " it out";
      case NO_OPPOSITE -> "move the wire to a cavity that both halves have, or take it out";
      case PIN_UNUSED ->
          "move the wire to the cavity that was meant, or add the element of "
              + device(mate)
              + " that uses the pin";
    };
  }

  private static boolean isFound(Facts facts, String connector) {
    Connector half = facts.harness().connectors().get(connector);
    Loom loom =
        half == null || half.loom() == null ? null : facts.harness().looms().get(half.loom());
    return loom != null && loom.stage() == Loom.Stage.FOUND;
  }
}
