package org.tugtest.rule.written.reference;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.finding.Subject;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.text.NaturalOrder;

/** The places that waivers and limits name. */
final class PlaceNames {
  private final Mentions mentions;
  private final Tables tables;
  private final Map<String, Table> sections = new LinkedHashMap<>();
  private final Table known;

  PlaceNames(Mentions mentions, Tables tables) {
    this.mentions = mentions;
    this.tables = tables;
    Harness harness = mentions.facts().harness();
    List<Table> defined =
        List.of(
            tables.devices,
            tables.connectors,
            tables.splices,
            tables.wires,
            tables.groups,
            tables.nodes,
            tables.segments,
            tables.zones,
            tables.states,
            tables.wireParts,
            tables.housings,
            tables.terminals,
            tables.seals,
            tables.spliceParts,
            tables.fuseParts,
            tables.coverings,
            tables.supports,
            tables.deviceTypes);
    for (Table table : defined) {
      String section = table.sections().get(0);
      sections.put(section.replace("layout/", ""), table);
    }
    sections.put("looms", tables.looms);
    sections.put("fitted", Table.of("fitted fuse", "fitted", harness.fitted().keySet()));
    sections.put("limits", Table.of("rule with limits", "limits", harness.limits().keySet()));
    sections.put("waivers", Table.of("waiver", "waivers", harness.waivers().keySet()));
    sections.put(
        "expectations", Table.of("expectation", "expectations", harness.expectations().keySet()));
    Set<String> files = new TreeSet<>(NaturalOrder.NATURAL);
    files.addAll(harness.files());
    files.addAll(mentions.facts().unread());
    mentions.facts().problems().forEach(problem -> addFile(files, problem.subject()));
    sections.put("files", Table.closed("file", files));
    Collection<String> names = new TreeSet<>(NaturalOrder.NATURAL);
    names.addAll(sections.keySet());
    names.add(Subject.HARNESS.place());
    known =
        new Table(
            "section",
            List.of(),
            names,
            "write a place as \"section/id\", such as \"wires/W1\" or \"connectors/R1:3\"");
  }

  private static void addFile(Set<String> files, String subject) {
    String prefix = "files/";
    if (subject.startsWith(prefix)) {
      files.add(subject.substring(prefix.length()));
    }
  }

  /**
   * Looks up the place that is written in the field, or is the name, that {@code path} leads to.
   */
  void place(Holder by, String place, String... path) {
    Subject subject = new Subject(place);
    String section = subject.section();
    mentions.id(by, known, section, path);
    Table table = sections.get(section);
    if (table == null || section.equals(place)) {
      return;
    }
    String id = subject.id();
    if (table.ids().contains(id)) {
      mentions.right(by);
    } else if (section.equals("devices")) {
      device(by, id, path);
    } else if (section.equals("connectors") && id.indexOf(':') > 0) {
      connector(by, id, path);
    } else {
      mentions.id(by, table, id, path);
    }
  }

  private void connector(Holder by, String id, String... path) {
    String owner = id.substring(0, id.indexOf(':'));
    mentions.id(by, tables.connectors, owner, path);
    if (tables.connectors.ids().contains(owner)) {
      boolean listed = mentions.facts().wiring().mating().housingOf(owner).isPresent();
      if (listed || mentions.facts().harness().sketch()) {
        Collection<String> cavities = mentions.facts().wiring().cavitiesOf(owner);
        mentions.id(
            by,
            Table.closed("cavity of " + owner, cavities),
            id.substring(owner.length() + 1),
            path);
      }
    }
  }

  private void device(Holder by, String id, String... path) {
    int colon = id.indexOf(':');
    int dot = id.indexOf('.');
    int cut = colon >= 0 ? colon : dot;
    String owner = cut < 0 ? id : id.substring(0, cut);
    mentions.id(by, tables.devices, owner, path);
    DeviceType type = tables.typeOf(owner);
    if (cut < 0 || !tables.devices.ids().contains(owner)) {
      return;
    }
    String name = id.substring(cut + 1);
    if (type == null) {
      mentions.unjudged(by, Mentions.TYPE);
    } else if (tables.isMisread(owner)) {
      mentions.unjudged(by, Mentions.MISREAD);
    } else if (colon >= 0) {
      Collection<String> pins = mentions.facts().wiring().pinsOf(owner);
      mentions.id(by, Table.closed("pin of " + owner, pins), name, path);
    } else {
      Set<String> members = new TreeSet<>(NaturalOrder.NATURAL);
      members.addAll(type.elements().keySet());
      members.addAll(type.ports().keySet());
      mentions.id(by, Table.closed("element or port of " + owner, members), name, path);
    }
  }
}
