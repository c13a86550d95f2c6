package org.tugtest.rule.connectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.tugtest.facts.Facts;
import org.tugtest.network.Wiring;
import org.tugtest.rule.Judged;

/** Against trying every way: a plan is found exactly when there is one, and it is a way. */
class MergePlanTest {
  @Property(tries = 60)
  void aPlanIsFoundExactlyWhenThereIsOne(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(max = 2) Integer> moving,
      @ForAll @Size(min = 1, max = 5) List<@IntRange(max = 2) Integer> free) {
    Facts facts = Judged.facts(Map.of(Judged.ROOT, harness(moving, free)));
    Wiring wiring = facts.wiring();
    List<Joint> joints = new ArrayList<>();
    for (MatedPair pair : MatedPair.all(facts.harness(), wiring.mating())) {
      joints.add(Joint.at(facts, pair, pair.otherConnector().orElseThrow()).joint().orElseThrow());
    }
    MergePlan plan =
        MergePlan.of(
                new Roles(facts), new ContactMove(facts), joints.get(1), joints.get(0), Set.of())
            .orElse(null);
    assertThat(plan != null).isEqualTo(thereIsAWay(moving, free, 0, new HashSet<>()));
    if (plan != null) {
      assertThat(plan.moves()).hasSize(moving.size());
      assertThat(plan.moves()).extracting(MergePlan.Move::to).doesNotHaveDuplicates();
      for (MergePlan.Move move : plan.moves()) {
        int from = moving.get(Integer.parseInt(move.from().near()) - 1);
        int to = free.get(Integer.parseInt(move.to().near()) - 1);
        assertThat(to).isEqualTo(from);
      }
    }
  }

  private static boolean thereIsAWay(
      List<Integer> moving, List<Integer> free, int next, Set<Integer> used) {
    if (next == moving.size()) {
      return true;
    }
    for (int j = 0; j < free.size(); j++) {
      if (free.get(j).equals(moving.get(next)) && used.add(j)) {
        if (thereIsAWay(moving, free, next + 1, used)) {
          return true;
        }
        used.remove(j);
      }
    }
    return false;
  }

  /** Pair 1 with free cavities of these families, pair 2 with wired ones of those. */
  private static String harness(List<Integer> moving, List<Integer> free) {
    StringBuilder wires = new StringBuilder();
    for (int i = 1; i <= moving.size(); i++) {
      wires.append(i == 1 ? "" : ", ");
      wires.append("\"W%1$d\": {\"from\": \"X2:%1$d\", \"to\": \"S%1$d\"}".formatted(i));
    }
    return """
    {"format": 1, "sketch": true,
     "parts": {"housings": {"s1": %s, "p1": %s, "s2": %s, "p2": %s}},
     "connectors": {"X1": {"housing": "s1", "mates": "Y1", "at": "n"}, "Y1": {"housing": "p1"},
                    "X2": {"housing": "s2", "mates": "Y2", "at": "n"}, "Y2": {"housing": "p2"}},
     "wires": {%s}}
    """
        .formatted(
            housing("socket", free),
            housing("pin", free),
            housing("socket", moving),
            housing("pin", moving),
            wires);
  }

  private static String housing(String side, List<Integer> families) {
    StringBuilder row = new StringBuilder();
    StringBuilder cavities = new StringBuilder();
    for (int i = 1; i <= families.size(); i++) {
      String comma = i == 1 ? "" : ", ";
      row.append(comma).append("\"%d\"".formatted(i));
      cavities
          .append(comma)
          .append("\"%d\": {\"family\": \"f%d\"}".formatted(i, families.get(i - 1)));
    }
    return "{\"side\": \"%s\", \"rows\": [[%s]], \"cavities\": {%s}}"
        .formatted(side, row, cavities);
  }
}
