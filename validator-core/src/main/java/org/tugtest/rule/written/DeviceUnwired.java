package org.tugtest.rule.written;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Ref;
import org.tugtest.network.Point;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** Devices that nothing is wired, plugged or bolted to. */
public final class DeviceUnwired implements Rule {
  private static final int SHOWN = 8;

  private static final RuleInfo INFO =
      RuleInfo.of("device-unwired", Heading.WRITTEN, Level.WARNING)
          .summary("devices that nothing is wired to")
          .subjects("devices")
          .looksFor(
              """
              Devices on which no wire ends, into which no connector is plugged, and which are not
              bolted to anything. One finding with the list; its place is "devices". A device may be
              left out of the list with "level": "off" for its place under "limits". Also sources
              of which the plus is joined to something outside their device and the minus to
              nothing, such as an alternator that is not bolted to its engine: they give nothing.
              """)
          .why(
              """
              A device that was drawn and never wired is noticed when it does not work; one that
              was taken out of the vehicle still counts in every list.
              """)
          .remedy("Wire the device, or take it out.")
          .basis("Follows from the format.")
          .failing(
              """
              {"format": 1, "sketch": true, "devices": {"LAMP": {}, "HORN": {}},
               "wires": {"W1": {"from": "LAMP:1", "to": "R1:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true, "devices": {"LAMP": {}},
               "wires": {"W1": {"from": "LAMP:1", "to": "R1:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Set<String> reached = new HashSet<>();
    for (Point point : facts.wiring().ends().keySet()) {
      if (point.kind() == Point.Kind.PIN) {
        reached.add(point.owner());
      }
    }
    for (Device device : facts.harness().devices().values()) {
      if (!device.boltedTo().isEmpty()) {
        reached.add(device.id());
        device.boltedTo().values().stream().map(Ref::owner).forEach(reached::add);
      }
    }
    List<Subject> unwired = new ArrayList<>();
    for (Device device : facts.harness().devices().values()) {
      Subject subject = Subject.device(device.id());
      DeviceType type = facts.harness().typeOf(device);
      if (reached.contains(device.id()) || isPlugged(facts, device.id(), type)) {
        ledger.fine();
      } else if (!facts.unread().isEmpty()) {
        ledger.notJudged(subject, Facts.FILE_UNREAD);
      } else if (type == null || facts.misread().at("devices", device.id())) {
        ledger.notJudged(subject, "what it is made of is not known");
      } else if (!ledger.switchedOff(subject)) {
        unwired.add(subject);
      }
    }
    if (!unwired.isEmpty()) {
      ledger.finding(finding(facts, unwired), unwired);
    }
    if (facts.unread().isEmpty()) {
      new LooseSources(facts).tell(ledger);
    }
  }

  private static boolean isPlugged(Facts facts, String device, @Nullable DeviceType type) {
    return type != null
        && type.ports().keySet().stream()
            .anyMatch(port -> facts.wiring().mating().connectorAt(device, port).isPresent());
  }

  private static Finding.Draft finding(Facts facts, List<Subject> unwired) {
    List<String> ids = unwired.stream().map(Subject::id).toList();
    boolean one = ids.size() == 1;
    Finding.Draft draft =
        Finding.on(new Subject("devices"))
            .message(
                "nothing is wired, plugged or bolted to "
                    + (one ? "device " : ids.size() + " devices: ")
                    + Series.and(ids, SHOWN))
            .remedy("wire " + (one ? "it, or take it out" : "them, or take them out"));
    for (Subject device : unwired) {
      draft.and(device).at(facts.places().of(device.place()));
      if (unwired.size() > SHOWN) {
        draft.detail(device.id());
      }
    }
    return draft;
  }
}
