package org.tugtest.rule.written;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Housing;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.text.Problem;
import org.tugtest.text.Series;

/** One id stands for two things. */
public final class IdGivenTwice implements Rule {
  private static final int SHOWN = 6;
  private static final RuleInfo INFO =
      RuleInfo.of("id-given-twice", Heading.WRITTEN, Level.ERROR)
          .stage(Stage.READING)
          .summary("one id stands for two things")
          .subjects("files")
          .looksFor(
              """
              An id that two files give, or two sections that share their ids: devices, connectors,
              splices, wires and groups. Two ids that differ only in upper and lower case. Two pins
              of one device with the same name: in two ports, or in a port and under "pins".
              """)
          .why(
              """
              Nothing overrides: of two wires W7 one is built and the other forgotten, and a label
              W7 on the bench fits both. Two ports with a pin 1 each would join two circuits in
              every check, although the metal does not.
              """)
          .remedy(
              """
              Rename one of the two, or delete the copy. Give the pins of a second port names of
              their own under "pins" of the port: {"1": "B1", "2": "B2"}.
              """)
          .basis("Follows from the format: ids are unique in their namespace, pins in a device.")
          .failing(
              """
              // car.harness.json
              {"format": 1, "sketch": true, "uses": ["rear.json"],
               "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
              // rear.json
              {"format": 1, "wires": {"W1": {"from": "B:2", "to": "C:1"}}}
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"p2": {"side": "pin", "rows": [["1", "2"]]}}},
               "devices": {"ECU": {"ports": {"A": {"housing": "p2"}, "B": {"housing": "p2"}}}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"p2": {"side": "pin", "rows": [["1", "2"]]}}},
               "devices": {"ECU": {"ports": {
                 "A": {"housing": "p2"},
                 "B": {"housing": "p2", "pins": {"1": "B1", "2": "B2"}}}}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Set<String> files = new HashSet<>();
    facts
        .harness()
        .parts()
        .deviceTypes()
        .forEach(
            (id, type) -> files.addAll(pins(facts, Subject.part("deviceTypes", id), type, ledger)));
    facts
        .harness()
        .devices()
        .forEach(
            (id, device) -> {
              if (device.own() != null) {
                files.addAll(pins(facts, Subject.device(id), device.own(), ledger));
              }
            });
    FileProblems.judge(facts, Problem.Kind.ID_GIVEN_TWICE, ledger, files);
  }

  /** Where a pin of a device lies. */
  private record Spot(String where, boolean renamed) {}

  /** Judges the pins of a device; the file it stands in, when they are wrong. */
  private static Set<String> pins(Facts facts, Subject device, DeviceType type, Ledger ledger) {
    Map<String, Spot> spots = new LinkedHashMap<>();
    type.pins().keySet().forEach(pin -> spots.put(pin, new Spot("under \"pins\"", false)));
    Map<String, List<String>> clashes = new LinkedHashMap<>();
    for (Map.Entry<String, DeviceType.Port> entry : type.ports().entrySet()) {
      DeviceType.Port port = entry.getValue();
      String where = "in port " + entry.getKey();
      Housing housing =
          port.housing() == null ? null : facts.harness().parts().housings().get(port.housing());
      List<String> cavities =
          housing == null ? List.copyOf(port.pins().keySet()) : housing.cavityNames();
      for (String cavity : cavities.stream().distinct().toList()) {
        Spot spot = new Spot(where, port.pins().containsKey(cavity));
        Spot before = spots.putIfAbsent(port.pinAt(cavity), spot);
        boolean meant =
            before == null || (before.equals(spot) && before.renamed() && spot.renamed());
        if (!meant) {
          clashes
              .computeIfAbsent(
                  before.where().equals(where) ? "both " + where : before.where() + " and " + where,
                  pair -> new ArrayList<>())
              .add(port.pinAt(cavity));
        }
      }
    }
    String file = facts.places().of(device.place()).file();
    clashes.forEach(
        (pair, pins) -> ledger.finding(finding(device, pair, pins), List.of(Subject.file(file))));
    return clashes.isEmpty() ? Set.of() : Set.of(file);
  }

  private static Finding.Draft finding(Subject device, String pair, List<String> pins) {
    boolean one = pins.size() == 1;
    Finding.Draft draft =
        Finding.on(device)
            .kind(pair)
            .message(
                device.id()
                    + (one ? " has a pin " : " has pins ")
                    + Series.and(pins, SHOWN)
                    + " twice: "
                    + pair)
            .remedy(
                "give " + (one ? "it" : "them") + " names of their own under \"pins\" of a port");
    if (pins.size() > SHOWN) {
      draft.detail("pins " + Series.and(pins));
    }
    return draft;
  }
}
