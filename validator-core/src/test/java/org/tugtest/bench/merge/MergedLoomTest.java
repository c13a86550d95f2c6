package org.tugtest.bench.merge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tugtest.bench.rework.Matching;
import org.tugtest.bench.rework.Order;
import org.tugtest.bench.rework.PieceEnd;
import org.tugtest.bench.rework.Rework;
import org.tugtest.bench.rework.Step;
import org.tugtest.facts.Facts;
import org.tugtest.rule.Judged;
import org.tugtest.rule.connectors.MergeProposal;

/**
 * Whatever is proposed can be done: the steps are played on a list of ends and seats that the test
 * keeps by itself, and end where the proposal says.
 */
class MergedLoomTest {
  private static final int WAYS = 6;

  /** A large pair X1 and Y1, a small pair X2 and Y2, at one node, said in plain lists. */
  private static final class Car {
    final Map<String, String> seats = new TreeMap<>();
    final Map<String, String> connectors = new TreeMap<>();
    final Set<String> blanked = new TreeSet<>();
    final String json;

    Car(Random random) {
      StringBuilder wires = new StringBuilder();
      int large = 1 + random.nextInt(3);
      int small = 1 + random.nextInt(3);
      for (int pair = 1; pair <= 2; pair++) {
        for (int i = 1; i <= (pair == 1 ? large : small); i++) {
          String cavity = ":" + (pair == 1 ? i * 2 : i);
          int sides = random.nextInt(5);
          if (sides != 0) {
            wire(wires, "W" + pair + i, "A:" + pair + i, "X" + pair + cavity, random);
          }
          if (sides != 1) {
            wire(wires, "V" + pair + i, "Y" + pair + cavity, "B:" + pair + i, random);
          }
        }
      }
      StringBuilder all = new StringBuilder();
      for (String id : List.of("X1", "Y1", "X2", "Y2")) {
        String housing = (id.startsWith("X") ? "s" : "p") + id.substring(1);
        boolean plugged = random.nextInt(3) == 0;
        if (plugged) {
          blanked.add(id);
        }
        connectors.put(id, housing);
        all.append(all.isEmpty() ? "" : ", ")
            .append("\"%s\": {\"housing\": \"%s\"".formatted(id, housing))
            .append(
                id.startsWith("X") ? ", \"at\": \"n\", \"mates\": \"Y" + id.charAt(1) + "\"" : "")
            .append(plugged ? ", \"blanked\": true" : "")
            .append("}");
      }
      String terminals = random.nextBoolean() ? "\"a%s\"" : "\"b%s\", \"a%s\"";
      json =
          """
          {"format": 1, "sketch": true,
           "parts": {
             "housings": {%s, %s, %s, %s},
             "terminals": {
               "as": {"family": "a", "side": "socket", "areaMinMm2": 0.5, "areaMaxMm2": 1},
               "ap": {"family": "a", "side": "pin", "areaMinMm2": 0.5, "areaMaxMm2": 1},
               "bs": {"family": "a", "side": "socket", "areaMinMm2": 0.35, "areaMaxMm2": 2},
               "bp": {"family": "a", "side": "pin", "areaMinMm2": 0.35, "areaMaxMm2": 2}}},
           "connectors": {%s},
           "wires": {%s}}
          """
              .formatted(
                  housing("s1", "socket", WAYS, "a", terminals),
                  housing("p1", "pin", WAYS, "a", terminals),
                  housing("s2", "socket", 3, "a", "\"a%s\""),
                  housing("p2", "pin", 3, "a", "\"a%s\""),
                  all,
                  wires);
    }

    private void wire(StringBuilder wires, String id, String from, String to, Random random) {
      boolean turned = random.nextBoolean();
      seats.put(id + "/a", turned ? to : from);
      seats.put(id + "/b", turned ? from : to);
      wires
          .append(wires.isEmpty() ? "" : ", ")
          .append(
              "\"%s\": {\"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 0.75, \"cutMm\": 400}"
                  .formatted(id, turned ? to : from, turned ? from : to));
    }

    private static String housing(
        String id, String side, int ways, String family, String terminals) {
      StringBuilder row = new StringBuilder();
      for (int i = 1; i <= ways; i++) {
        row.append(i == 1 ? "" : ", ").append("\"").append(i).append("\"");
      }
      return "\"%s\": {\"side\": \"%s\", \"family\": \"%s\", \"rows\": [[%s]], \"terminals\": [%s]}"
          .formatted(id, side, family, row, terminals.replace("%s", side.substring(0, 1)));
    }
  }

  /** The bench: where each end is, what is open, what is plugged. */
  private static final class Bench {
    final Map<String, String> at;
    final Set<String> open = new HashSet<>();
    final Set<String> taken = new HashSet<>();
    final Set<String> plugged = new TreeSet<>();

    Bench(Car car) {
      at = new TreeMap<>(car.seats);
      for (String id : car.blanked) {
        int ways = id.endsWith("1") ? WAYS : 3;
        for (int i = 1; i <= ways; i++) {
          if (!at.containsValue(id + ":" + i)) {
            plugged.add(id + ":" + i);
          }
        }
      }
    }

    void play(Step step) {
      String from = step.from() == null ? "" : step.from().text();
      String to = step.to() == null ? "" : step.to().text();
      List<String> ends = step.ends().stream().map(PieceEnd::toString).toList();
      switch (step.kind()) {
        case OPEN -> assertThat(open.add(step.at())).as(step.text()).isTrue();
        case CLOSE -> assertThat(open.remove(step.at())).as(step.text()).isTrue();
        case TAKE_AWAY -> {
          open.remove(step.at());
          assertThat(at.values()).noneMatch(seat -> seat.startsWith(step.at() + ":"));
          assertThat(taken.add(step.at())).isTrue();
          plugged.removeIf(seat -> seat.startsWith(step.at() + ":"));
        }
        case UNBLANK -> assertThat(plugged.remove(from)).as(step.text()).isTrue();
        case BLANK -> {
          assertThat(at.values()).as(step.text()).doesNotContain(from);
          assertThat(plugged.add(from)).as(step.text()).isTrue();
        }
        case RELEASE -> {
          assertThat(open).as(step.text()).contains(step.from().owner());
          ends.forEach(end -> assertThat(at.put(end, "")).as(step.text()).isEqualTo(from));
        }
        case INSERT -> {
          assertThat(open).as(step.text()).contains(step.to().owner());
          assertThat(plugged).as(step.text()).doesNotContain(to);
          assertThat(at.values()).as(step.text()).doesNotContain(to);
          ends.forEach(end -> assertThat(at.put(end, to)).as(step.text()).isEmpty());
        }
        case PARK -> assertThat(to).as(step.text()).isEmpty();
        default -> throw new AssertionError("nothing else is done in a merge: " + step);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Order.class)
  void theStepsOfAProposalEndWhereItSays(Order order) {
    Random random = new Random(17);
    int played = 0;
    for (int round = 0; round < 400; round++) {
      Car car = new Car(random);
      Facts now = Judged.facts(Map.of(Judged.ROOT, car.json));
      assertThat(now.problems()).isEmpty();
      for (MergeProposal proposal : MergeProposal.of(now, pair -> false)) {
        Facts target = MergedLoom.of(now, proposal);
        Rework rework = Rework.of(now, target, Matching.byId(now, target), order);
        assertThat(rework.open()).isEmpty();
        Bench bench = new Bench(car);
        rework.steps().forEach(bench::play);

        Map<String, String> goes = new TreeMap<>();
        for (MergeProposal.Move move : proposal.moves()) {
          goes.put(move.near().text(), move.toNear().text());
          goes.put(move.far().text(), move.toFar().text());
        }
        Map<String, String> wanted = new TreeMap<>(car.seats);
        wanted.replaceAll((end, seat) -> goes.getOrDefault(seat, seat));
        assertThat(bench.at).isEqualTo(wanted);
        assertThat(new HashSet<>(wanted.values())).hasSameSizeAs(wanted.values());
        assertThat(bench.open).isEmpty();
        assertThat(bench.taken).containsExactlyInAnyOrder(proposal.near(), proposal.far());
        Set<String> plugged = new TreeSet<>();
        car.blanked.stream()
            .filter(id -> !bench.taken.contains(id))
            .forEach(
                id -> {
                  for (int i = 1; i <= (id.endsWith("1") ? WAYS : 3); i++) {
                    if (!wanted.containsValue(id + ":" + i)) {
                      plugged.add(id + ":" + i);
                    }
                  }
                });
        assertThat(bench.plugged).isEqualTo(plugged);
        played++;
      }
    }
    assertThat(played).isGreaterThan(200);
  }
}
