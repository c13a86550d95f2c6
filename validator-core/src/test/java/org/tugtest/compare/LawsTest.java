package org.tugtest.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.circuit.NetChange;
import org.tugtest.compare.match.Match;
import org.tugtest.finding.Subject;
import org.tugtest.model.Wire;

/** What holds of any two revisions. */
class LawsTest {
  private static final int SEEDS = 2_000;

  private static Loom loom(Random random) {
    return Loom.random(random, 3 + random.nextInt(30));
  }

  @Test
  void nothingChangesAgainstItself() {
    for (int seed = 0; seed < SEEDS / 4; seed++) {
      Loom loom = loom(new Random(seed));
      Comparison same = Loom.compare(loom, loom.copy());
      assertThat(same.changes()).isEmpty();
      assertThat(same.circuits().same()).isTrue();
      assertThat(same.matches().sections())
          .allSatisfy(section -> assertThat(same.matches().removed(section)).isEmpty());
    }
  }

  @Test
  void backwardsIsTheMirror() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      Loom base = loom(random);
      Script script = new Script(base, random);
      script.steps(random.nextInt(12));
      Comparison there = Loom.compare(base, script.loom);
      Comparison back = Loom.compare(script.loom, base);
      assertThat(lines(back, true)).as("seed %d", seed).isEqualTo(lines(there, false));
      assertThat(nets(back, true)).as("seed %d", seed).isEqualTo(nets(there, false));
      for (String section : there.matches().sections()) {
        assertThat(pairs(back.matches().in(section), true))
            .as("seed %d", seed)
            .containsExactlyInAnyOrderElementsOf(pairs(there.matches().in(section), false));
      }
    }
  }

  /** Which side an end of a wire is written on does not matter, so the field is left out. */
  private static List<String> lines(Comparison comparison, boolean mirrored) {
    List<String> lines = new ArrayList<>();
    for (Change change : comparison.changes()) {
      String kind = (mirrored ? change.kind().backwards() : change.kind()).word();
      String was = Objects.toString(place(mirrored ? change.is() : change.was()));
      String is = Objects.toString(place(mirrored ? change.was() : change.is()));
      String before = mirrored ? change.after() : change.before();
      String after = mirrored ? change.before() : change.after();
      if (kind.equals("ids-exchanged")) {
        List<String> both = new ArrayList<>(List.of(was, is));
        Collections.sort(both);
        lines.add(kind + both);
      } else {
        lines.add(String.join(" ", kind, was, is, before, after));
      }
    }
    Collections.sort(lines);
    return lines;
  }

  private static @Nullable String place(@Nullable Subject subject) {
    return subject == null ? null : subject.place();
  }

  private static List<String> nets(Comparison comparison, boolean mirrored) {
    List<String> lines = new ArrayList<>();
    for (NetChange net : comparison.circuits().nets()) {
      String kind =
          switch (net.kind()) {
            case SPLIT -> mirrored ? "merged" : "split";
            case MERGED -> mirrored ? "split" : "merged";
            case LOST -> mirrored ? "gained" : "lost";
            case GAINED -> mirrored ? "lost" : "gained";
          };
      lines.add(
          kind
              + sorted(mirrored ? net.after() : net.before())
              + sorted(mirrored ? net.before() : net.after())
              + net.wires()
              + net.contacts());
    }
    Collections.sort(lines);
    return lines;
  }

  private static List<String> sorted(List<List<String>> nets) {
    return nets.stream().map(pins -> pins.stream().sorted().toList().toString()).sorted().toList();
  }

  private static List<String> pairs(List<Match> matches, boolean mirrored) {
    return matches.stream()
        .map(m -> mirrored ? m.after() + ">" + m.before() : m.before() + ">" + m.after())
        .toList();
  }

  /** Every wire, connector and splice gets an id that no other has had. */
  @Test
  void renamingEverythingButDevicesChangesNoCircuit() {
    int renames = 0;
    int ids = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      Loom base = loom(random);
      base.of("wires").values().removeIf(wire -> ((Wire) wire).from() == null);
      Script script = new Script(base, random);
      List<String> numbers = new ArrayList<>();
      for (int i = 0; i < 400; i++) {
        numbers.add("Q" + i);
      }
      Collections.shuffle(numbers, random);
      int next = 0;
      for (String section : List.of("connectors", "splices")) {
        for (String id : base.ids(section)) {
          script.rename(section, id, numbers.get(next++));
          ids++;
        }
      }
      Map<String, Object> wires = new TreeMap<>();
      for (String id : script.loom.ids("wires")) {
        Wire wire = script.loom.get("wires", id, Wire.class);
        String other = numbers.get(next++);
        wires.put(
            other,
            Loom.wire(
                other,
                wire.from(),
                wire.to(),
                wire.part(),
                wire.colour(),
                wire.circuit(),
                wire.cutMm()));
        ids++;
      }
      script.loom.of("wires").clear();
      script.loom.of("wires").putAll(wires);
      Comparison comparison = Loom.compare(base, script.loom);
      assertThat(comparison.circuits().nets()).as("seed %d", seed).isEmpty();
      assertThat(comparison.circuits().same()).as("seed %d", seed).isTrue();
      renames += (int) comparison.changes().stream().filter(c -> c.field().equals("id")).count();
    }
    assertThat(renames).isGreaterThan(ids * 99 / 100);
  }
}
