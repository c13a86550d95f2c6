package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jgrapht.alg.util.UnionFind;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Housing;
import org.tugtest.network.Mate;
import org.tugtest.network.Mating;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/**
 * Connectors of one kind stand so near each other that they can be plugged into the wrong place.
 */
public final class CrossMatingPossible implements Rule {
  private static final int NAMED = 6;
  private static final String REACH = "reachMm";
  private static final String NO_NODE = "no node says where it stands";

  private static final RuleInfo INFO =
      RuleInfo.of("cross-mating-possible", Heading.CONNECTORS, Level.WARNING)
          .gravest(Level.ERROR)
          .summary("a connector can be plugged into the place of its neighbour")
          .subjects("connectors and their mates")
          .looksFor(
              """
              Two connectors that have the same housing, so the same keying too, or whose places
              have it, and that stand at one node or at nodes no further apart along the layout
              than the reach. Those that can be exchanged are one finding. It is an error when a
              wrong plug would put feed onto return or onto a signal; the details list what meets
              what. Nothing is said when each contact of both is joined to the same contact of
              the other.
              """)
          .why(
              """
              In the dark, upside down, two like plugs are exchanged. At best two lamps change
              sides; at worst the sensor input sees the battery.
              """)
          .remedy(
              """
              Give one of them another keying or number of ways, make the branches too short to
              reach each other, or move one to another node. Marks and colours are second best.
              """)
          .basis(
              """
              Identical connectors near each other are routed, tied and marked so that they
              cannot be exchanged: AC 43.13-1B, 11-100i, as a builder's notes restate it. What
              each contact would meet is listed in a cross-mate study: common practice.
              """)
          .setting(
              new Setting(
                  REACH,
                  200,
                  0,
                  5000,
                  "mm",
                  "how far apart along the layout connectors can still be exchanged (common"
                      + " practice: breakout and spare wire of both branches, rounded up)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"pin": {"side": "pin", "rows": [["1", "2"]]},
                                      "skt": {"side": "socket", "rows": [["2", "1"]]}}},
               "devices": {
                 "HORN": {"at": "nose", "ports": {"p": {"housing": "pin"}}, "elements": {
                   "coil": {"kind": "load", "a": "1", "b": "2", "amps": 3}}},
                 "LAMP": {"at": "nose", "ports": {"p": {"housing": "pin"}}, "elements": {
                   "bulb": {"kind": "load", "a": "1", "b": "2", "amps": 2}}}},
               "connectors": {"X1": {"housing": "skt", "mates": "HORN"},
                              "X2": {"housing": "skt", "mates": "LAMP"}},
               "wires": {"W1": {"from": "X1:1", "to": "S1"}, "W2": {"from": "X1:2", "to": "S2"},
                         "W3": {"from": "X2:1", "to": "S3"}, "W4": {"from": "X2:2", "to": "S2"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"pin": {"side": "pin", "rows": [["1", "2"]]},
                                      "skt": {"side": "socket", "rows": [["2", "1"]]}}},
               "devices": {
                 "HORN": {"at": "nose", "ports": {"p": {"housing": "pin"}}},
                 "LAMP": {"at": "tail", "ports": {"p": {"housing": "pin"}}}},
               "connectors": {"X1": {"housing": "skt", "mates": "HORN"},
                              "X2": {"housing": "skt", "mates": "LAMP"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<String, Slot> slots = slots(facts, ledger);
    Reachable reachable = new Reachable(facts.harness().layout(), settings.number(REACH));
    CrossMateStudy study = new CrossMateStudy(facts, reachable);
    for (List<Slot> group : groups(slots, reachable)) {
      CrossMateStudy.Result result = study.of(group);
      List<Slot> involved = result.involved();
      ledger.fine(group.size() - involved.size());
      if (!involved.isEmpty()) {
        ledger.finding(
            finding(involved, result),
            involved.stream().map(slot -> slot.plug().subject()).toList());
      }
    }
  }

  /** What can be judged, by the connector; the rest is noted. */
  private static Map<String, Slot> slots(Facts facts, Ledger ledger) {
    Mating mating = facts.wiring().mating();
    Map<String, Slot> slots = new TreeMap<>(NaturalOrder.NATURAL);
    for (MatedPair pair : MatedPair.all(facts.harness(), mating)) {
      add(facts, pair.connector(), pair.mate(), ledger, slots);
    }
    for (Connector connector : facts.harness().connectors().values()) {
      if (mating.mateOf(connector.id()).isEmpty()) {
        add(facts, connector.id(), null, ledger, slots);
      }
    }
    return slots;
  }

  private static void add(
      Facts facts, String id, @Nullable Mate mate, Ledger ledger, Map<String, Slot> slots) {
    Mating mating = facts.wiring().mating();
    Subject subject = Subject.connector(id);
    Housing own = mating.housingOf(id).orElse(null);
    Housing other = mate == null ? null : mating.housingOf(mate).orElse(null);
    String node = mating.nodeOf(id).orElse(null);
    if (own == null || (mate != null && other == null)) {
      ledger.notJudged(subject, Unjudged.HOUSING);
    } else if (node == null) {
      ledger.notJudged(subject, NO_NODE);
    } else if (!ledger.switchedOff(subject)) {
      Slot.Half plug = Slot.Half.of(mating, new Mate.OfConnector(id), own);
      Slot.Half place = mate == null || other == null ? null : Slot.Half.of(mating, mate, other);
      slots.put(id, new Slot(plug, place, node));
    }
  }

  /** Slots that share a housing and stand within reach, link by link; single ones too. */
  private static List<List<Slot>> groups(Map<String, Slot> slots, Reachable reachable) {
    UnionFind<String> union = new UnionFind<>(slots.keySet());
    Map<String, Map<String, String>> firstAt = new HashMap<>();
    slots.forEach(
        (id, slot) -> {
          Map<String, String> here = firstAt.computeIfAbsent(slot.node(), key -> new HashMap<>());
          for (Slot.Half half : slot.halves()) {
            String present = here.putIfAbsent(half.housing().id(), id);
            if (present != null) {
              union.union(present, id);
            }
          }
        });
    firstAt.forEach(
        (node, here) -> {
          for (String near : reachable.from(node)) {
            Map<String, String> there = firstAt.getOrDefault(near, Map.of());
            here.forEach(
                (housing, id) -> {
                  String other = there.get(housing);
                  if (other != null) {
                    union.union(id, other);
                  }
                });
          }
        });
    Map<String, List<Slot>> groups = new LinkedHashMap<>();
    slots.forEach(
        (id, slot) -> groups.computeIfAbsent(union.find(id), key -> new ArrayList<>()).add(slot));
    return List.copyOf(groups.values());
  }

  private static Finding.Draft finding(List<Slot> involved, CrossMateStudy.Result result) {
    List<String> names = involved.stream().map(slot -> slot.plug().text()).toList();
    Set<String> nodes = new LinkedHashSet<>();
    involved.forEach(slot -> nodes.add(slot.node()));
    Subject first = involved.get(0).plug().subject();
    Finding.Draft draft = Finding.on(first);
    draft
        .message(
            Series.and(names, NAMED)
                + " can be plugged into each other's places at "
                + (nodes.size() == 1 ? "node " : "nodes ")
                + Series.and(List.copyOf(nodes), NAMED)
                + (result.worst() == null ? "" : "; " + result.worst()))
        .remedy("give one of them another keying or number of ways, or move one of them away")
        .basis(Basis.COMMON_PRACTICE);
    if (result.worst() != null) {
      draft.level(Level.ERROR);
    }
    involved.stream()
        .flatMap(slot -> slot.halves().stream())
        .map(Slot.Half::subject)
        .filter(subject -> !subject.equals(first))
        .forEach(draft::and);
    result.lines().forEach(draft::detail);
    return draft;
  }
}
