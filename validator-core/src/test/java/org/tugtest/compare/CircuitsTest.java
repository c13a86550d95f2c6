package org.tugtest.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tugtest.compare.circuit.Certificate;
import org.tugtest.compare.circuit.NetChange;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;

/** The verdict on circuits against a matrix of what is joined, and its certificate. */
class CircuitsTest {
  private static final int SEEDS = 2_000;

  private static Comparison random(int seed) {
    Random random = new Random(seed);
    Loom base = Loom.random(random, 3 + random.nextInt(25));
    Script script = new Script(base, random);
    script.steps(random.nextInt(5));
    return Loom.compare(base, script.loom);
  }

  @Test
  void verdictIsThatOfAMatrix() {
    int same = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Comparison comparison = random(seed);
      Set<Set<String>> before =
          new Closure(comparison.before().harness()).nets(pin -> renamed(comparison, pin));
      Set<Set<String>> after = new Closure(comparison.after().harness()).nets(pin -> pin);
      boolean elements =
          Closure.elements(comparison.before().harness())
              .equals(Closure.elements(comparison.after().harness()));
      assertThat(comparison.circuits().nets().isEmpty())
          .as("seed %d", seed)
          .isEqualTo(before.equals(after));
      assertThat(comparison.circuits().elements().isEmpty())
          .as("seed %d", seed)
          .isEqualTo(elements);
      told(comparison, before, after, seed);
      same += comparison.circuits().same() ? 1 : 0;
    }
    assertThat(same).isBetween(SEEDS / 10, SEEDS * 9 / 10);
  }

  private static String renamed(Comparison comparison, String pin) {
    Ref ref = Ref.parse(pin);
    return comparison.matches().renames().owner(ref.owner()) + ":" + ref.pin();
  }

  /** Every net that differs is told, and no other. */
  private static void told(
      Comparison comparison, Set<Set<String>> before, Set<Set<String>> after, int seed) {
    Set<Set<String>> told = new HashSet<>();
    Set<Set<String>> toldAfter = new HashSet<>();
    for (NetChange change : comparison.circuits().nets()) {
      for (List<String> net : change.before()) {
        Set<String> pins = new TreeSet<>();
        net.forEach(pin -> pins.add(renamed(comparison, pin)));
        told.add(pins);
      }
      change.after().forEach(net -> toldAfter.add(new TreeSet<>(net)));
      suffice(
          change.before().isEmpty()
                  || change.kind() == NetChange.Kind.MERGED
                  || change.kind() == NetChange.Kind.GAINED
              ? comparison.after().facts()
              : comparison.before().facts(),
          change,
          seed);
      assertThat(change.wires().size() + change.contacts().size()).as("seed %d", seed).isPositive();
    }
    told.removeIf(net -> net.size() < 2);
    toldAfter.removeIf(net -> net.size() < 2);
    Set<Set<String>> gone = new HashSet<>(before);
    gone.removeAll(after);
    Set<Set<String>> come = new HashSet<>(after);
    come.removeAll(before);
    assertThat(told).as("seed %d", seed).isEqualTo(gone);
    assertThat(toldAfter).as("seed %d", seed).isEqualTo(come);
  }

  /** Without the wires and contacts that are named, the pins that came or went are apart. */
  private static void suffice(Facts facts, NetChange change, int seed) {
    Set<String> causes = new HashSet<>(change.wires());
    causes.addAll(change.contacts());
    boolean came = change.kind() == NetChange.Kind.MERGED || change.kind() == NetChange.Kind.GAINED;
    List<List<String>> apart =
        change.kind() == NetChange.Kind.SPLIT ? change.after() : change.before();
    if (change.kind() == NetChange.Kind.LOST || change.kind() == NetChange.Kind.GAINED) {
      List<String> rest = new ArrayList<>((came ? change.after() : change.before()).get(0));
      List<List<String>> partner = came ? change.before() : change.after();
      rest.removeAll(change.pins());
      rest.retainAll(partner.isEmpty() ? List.of() : partner.get(0));
      apart = List.of(rest, change.pins());
    }
    for (List<String> piece : apart) {
      if (!piece.isEmpty()) {
        Set<String> reached = walk(facts, piece.get(0), causes);
        for (List<String> other : apart) {
          if (other != piece && !other.isEmpty()) {
            assertThat(reached).as("seed %d %s", seed, change).doesNotContainAnyElementsOf(other);
          }
        }
      }
    }
  }

  private static Set<String> walk(Facts facts, String start, Set<String> without) {
    Point from = facts.wiring().pointOf(Ref.parse(start)).orElse(null);
    if (from == null) {
      return Set.of();
    }
    return new HashSet<>(
        Reach.from(
                facts.network(),
                List.of(from),
                (edge, at) -> !(edge instanceof Edge.OfElement) && !without.contains(edge.text()))
            .points()
            .stream()
            .map(Point::text)
            .toList());
  }

  @Test
  void certificateIsVerified() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Comparison comparison = random(seed);
      Certificate certificate = comparison.circuits().certificate();
      assertThat(CertificateChecker.fault(certificate.before(), comparison.before().facts()))
          .isEmpty();
      assertThat(CertificateChecker.fault(certificate.after(), comparison.after().facts()))
          .isEmpty();
      assertThat(CertificateChecker.same(certificate))
          .isEqualTo(comparison.circuits().nets().isEmpty());
    }
  }

  @Test
  void damagedCertificateIsRefused() {
    for (int seed = 0; seed < SEEDS / 4; seed++) {
      Comparison comparison = random(seed);
      Facts facts = comparison.after().facts();
      List<Certificate.Tree> trees = comparison.circuits().certificate().after();
      Random random = new Random(seed);
      for (int kind = 0; kind < 7; kind++) {
        List<Certificate.Tree> damaged = damaged(trees, kind, random);
        if (!damaged.equals(trees)) {
          assertThat(CertificateChecker.fault(damaged, facts))
              .as("seed %d, damage %d", seed, kind)
              .isNotEmpty();
        }
      }
    }
  }

  private static List<Certificate.Tree> damaged(
      List<Certificate.Tree> trees, int kind, Random random) {
    List<Certificate.Tree> damaged = new ArrayList<>(trees);
    List<Integer> joining = new ArrayList<>();
    for (int i = 0; i < trees.size(); i++) {
      if (!trees.get(i).links().isEmpty()) {
        joining.add(i);
      }
    }
    if (joining.isEmpty()) {
      return trees;
    }
    int at = joining.get(random.nextInt(joining.size()));
    int other = random.nextInt(trees.size());
    Certificate.Tree tree = trees.get(at);
    List<String> points = new ArrayList<>(tree.points());
    List<String> pins = new ArrayList<>(tree.pins());
    List<Certificate.Link> links = new ArrayList<>(tree.links());
    int last = links.size() - 1;
    Certificate.Link link = links.get(last);
    switch (kind) {
      case 0 -> links.remove(random.nextInt(links.size()));
      case 1 -> links.set(last, new Certificate.Link(link.from(), link.to(), link.wire() + "x"));
      case 2 -> links.add(link);
      case 3 -> {
        points.remove(link.to());
        links.remove(last);
        damaged.add(
            new Certificate.Tree(
                List.of(link.to()),
                pins.contains(link.to()) ? List.of(link.to()) : List.of(),
                List.of()));
        pins.remove(link.to());
      }
      case 4 -> damaged.remove(other == at ? at : Math.max(at, other));
      case 5 -> pins.add("D1:nowhere");
      default -> {
        if (other == at) {
          return trees;
        }
        points.addAll(trees.get(other).points());
        links.addAll(trees.get(other).links());
        pins.addAll(trees.get(other).pins());
        damaged.set(other, new Certificate.Tree(points, pins, links));
        damaged.remove(at);
        return damaged;
      }
    }
    if (kind != 4) {
      damaged.set(at, new Certificate.Tree(points, pins, links));
    }
    return damaged;
  }

  @Test
  void split() {
    assertThat(kinds(CHAIN, "A:1 A:2", "A:3 A:4"))
        .containsExactly(
            "split by [W2]: The net of A:1, A:2, A:3 and A:4 falls apart into A:1, A:2 | A:3, A:4,"
                + " by W2.");
    assertThat(kinds(CHAIN, "A:1 A:2"))
        .containsExactly(
            "lost by [W2, W3]: The net of A:1, A:2, A:3 and A:4 loses A:3 and A:4, by W2 and W3.");
    assertThat(
            kinds(new String[] {"A:1 A:2", "A:2 A:3", "A:3 A:4", "A:4 A:5"}, "A:1 A:2", "A:3 A:4"))
        .containsExactly(
            "split by [W2, W4]: The net of A:1, A:2, A:3, A:4 and A:5 falls apart into A:1, A:2 |"
                + " A:3, A:4 | A:5, by W2 and W4.");
  }

  @Test
  void merged() {
    assertThat(kinds(new String[] {"A:1 A:2", "A:3 A:4"}, CHAIN))
        .containsExactly("merged by [W2]: The nets of A:1, A:2 | A:3, A:4 become one, by W2.");
  }

  @Test
  void gainedAndLost() {
    assertThat(kinds(new String[] {"A:1 A:2"}, "A:1 A:2", "A:2 A:5"))
        .containsExactly("gained by [W2]: The net of A:1 and A:2 gains A:5, by W2.");
    assertThat(kinds(new String[] {}, "A:1 A:2"))
        .containsExactly("gained by [W1]: There is a new net of A:1 and A:2, by W1.");
    assertThat(kinds(new String[] {"A:1 A:2"}))
        .containsExactly("lost by [W1]: The net of A:1 and A:2 is no more, by W1.");
    assertThat(
            kinds(new String[] {"A:1 A:2", "A:2 A:5", "A:3 A:4"}, "A:1 A:2", "A:3 A:4", "A:4 A:5"))
        .containsExactly(
            "lost by [W2]: The net of A:1, A:2 and A:5 loses A:5, by W2.",
            "gained by [W4]: The net of A:3 and A:4 gains A:5, by W4.");
  }

  @Test
  void anotherWayThroughTheSameNetChangesNothing() {
    assertThat(kinds(CHAIN, "A:1 A:2", "A:2 A:4", "A:3 A:1")).isEmpty();
  }

  private static final String[] CHAIN = {"A:1 A:2", "A:2 A:3", "A:3 A:4"};

  private static List<String> kinds(String[] before, String... after) {
    return Compared.json(pins(before), pins(after)).comparison().circuits().nets().stream()
        .map(net -> net.kind().word() + " by " + net.wires() + ": " + net.sentence())
        .toList();
  }

  private static String pins(String... wires) {
    StringBuilder json = new StringBuilder();
    for (String wire : wires) {
      int gap = wire.indexOf(' ');
      String from = wire.substring(0, gap);
      String to = wire.substring(gap + 1);
      String id = "W" + from.charAt(2);
      json.append(json.isEmpty() ? "" : ", ")
          .append("\"%s\": {\"from\": \"%s\", \"to\": \"%s\"}".formatted(id, from, to));
    }
    return "{\"format\": 1, \"devices\": {\"A\": {\"pins\": {\"1\": {}, \"2\": {}, \"3\": {},"
        + " \"4\": {}, \"5\": {}}}}, \"wires\": {"
        + json
        + "}}";
  }
}
