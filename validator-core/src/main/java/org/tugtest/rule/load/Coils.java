package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.rule.Ledger;
import org.tugtest.solve.Trouble;
import org.tugtest.text.Series;

/** The relay coils of a harness. */
final class Coils {
  /** So many coils and states are named. */
  static final int SHOWN = 4;

  private Coils() {}

  /** All coils that lie between two points, in the order of the network. */
  static List<Edge> of(Facts facts) {
    return facts.network().edges().stream()
        .filter(edge -> edge instanceof Edge.OfElement in && in.element() instanceof Element.Coil)
        .toList();
  }

  /** The subjects of coils. */
  static List<Subject> subjects(Collection<Edge> coils) {
    return coils.stream().map(Edge::subject).toList();
  }

  /**
   * A trouble of relays in one state.
   *
   * @param <T> the kind of trouble
   */
  record Seen<T extends Trouble>(OperatingPoint state, T trouble) {}

  /**
   * Troubles of one kind by the coils they are about, each with the states in which it is seen, in
   * the order of the states.
   *
   * @param in the states in which it counts
   */
  static <T extends Trouble> Map<List<Edge>, List<Seen<T>>> troubled(
      Facts facts, Class<T> kind, Predicate<OperatingPoint> in) {
    Map<List<Edge>, List<Seen<T>>> sets = new LinkedHashMap<>();
    for (OperatingPoint state : facts.operating().all()) {
      for (Trouble trouble : state.troubles()) {
        if (kind.isInstance(trouble) && in.test(state)) {
          sets.computeIfAbsent(state.edges(trouble), none -> new ArrayList<>(1))
              .add(new Seen<>(state, kind.cast(trouble)));
        }
      }
    }
    return sets;
  }

  /**
   * Says of each set that is troubled what is wrong, and of all other coils that they are fine.
   *
   * @param finding makes the finding of a set from where it is seen
   */
  static <T extends Trouble> void judge(
      Facts facts,
      Ledger ledger,
      Map<List<Edge>, List<Seen<T>>> troubled,
      BiFunction<List<Edge>, List<Seen<T>>, Finding.Draft> finding) {
    Set<Edge> bad = new HashSet<>();
    troubled.forEach(
        (coils, seen) -> {
          ledger.finding(finding.apply(coils, seen), subjects(coils));
          bad.addAll(coils);
        });
    of(facts).stream().filter(coil -> !bad.contains(coil)).forEach(coil -> ledger.fine());
  }

  /**
   * Begins the finding of a set of coils: {@code coils A and B come to no rest in state start}.
   *
   * @param does what they do
   * @param what the end of the sentence
   */
  static <T extends Trouble> Finding.Draft draft(
      List<Edge> coils, List<Seen<T>> seen, Does does, String what) {
    List<String> states = seen.stream().map(one -> one.state().state()).toList();
    Finding.Draft draft =
        Finding.on(coils.get(0).subject())
            .message(
                (coils.size() == 1 ? "coil " : "coils ")
                    + Series.and(coils.stream().map(Edge::text).toList(), SHOWN)
                    + " "
                    + (coils.size() == 1 ? does.one() : does.several())
                    + (states.size() == 1 ? " in state " : " in states ")
                    + Series.and(states, SHOWN)
                    + what)
            .state(states.get(0))
            .basis(basis(coils));
    coils.stream().skip(1).forEach(coil -> draft.and(coil.subject()));
    return draft;
  }

  /** What one coil does, and the same of several. */
  record Does(String one, String several) {}

  /** What rests on the volts at which coils pull and let go: common practice where not given. */
  static Basis basis(Collection<Edge> coils) {
    boolean given =
        coils.stream()
            .allMatch(
                edge ->
                    edge instanceof Edge.OfElement inside
                        && inside.element() instanceof Element.Coil coil
                        && coil.pullInV() != null
                        && coil.dropOutV() != null);
    return given ? Basis.GIVEN : Basis.COMMON_PRACTICE;
  }
}
