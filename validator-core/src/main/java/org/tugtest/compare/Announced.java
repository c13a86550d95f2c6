package org.tugtest.compare;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.compare.circuit.ElementChange;
import org.tugtest.compare.circuit.NetChange;
import org.tugtest.facts.Facts;
import org.tugtest.model.AnnouncedChange;
import org.tugtest.model.Ref;
import org.tugtest.network.Point;

/**
 * The changes of circuits held against those that {@code changes/} announces. An announcement names
 * nets by any pin, cavity or splice on them, before or after, or elements; it covers every change
 * of those nets and of elements that lie at them.
 *
 * @param undeclaredNets nets that change and that nothing announces
 * @param undeclaredElements elements that change and that nothing announces
 * @param notMade what is announced and not made; not among them what the base announced already
 * @param old ids of announcements that the base has already and that cover a change
 * @param any whether anything is announced at all
 */
public record Announced(
    List<NetChange> undeclaredNets,
    List<ElementChange> undeclaredElements,
    List<NotMade> notMade,
    List<String> old,
    boolean any) {

  /**
   * A change that is announced and not made.
   *
   * @param net what it names, as written
   * @param why in words
   */
  public record NotMade(String id, String net, String why) {}

  public Announced {
    undeclaredNets = List.copyOf(undeclaredNets);
    undeclaredElements = List.copyOf(undeclaredElements);
    notMade = List.copyOf(notMade);
    old = List.copyOf(old);
  }

  /**
   * Holds a comparison against what is announced.
   *
   * @param before what the base announces
   * @param after what is announced now
   */
  public static Announced of(
      Comparison comparison,
      Collection<AnnouncedChange> before,
      Collection<AnnouncedChange> after) {
    return new Search(comparison).run(new HashSet<>(before), after);
  }

  /** Whether every change of circuits is announced. */
  public boolean complete() {
    return undeclaredNets.isEmpty() && undeclaredElements.isEmpty();
  }

  private static final class Search {
    private final Comparison comparison;
    private final Map<String, Set<NetChange>> netsBefore = new HashMap<>();
    private final Map<String, Set<NetChange>> netsAfter = new HashMap<>();

    Search(Comparison comparison) {
      this.comparison = comparison;
      for (NetChange change : comparison.circuits().nets()) {
        put(netsBefore, change.before(), change);
        put(netsAfter, change.after(), change);
      }
    }

    private static void put(
        Map<String, Set<NetChange>> to, List<List<String>> nets, NetChange change) {
      for (List<String> pins : nets) {
        pins.forEach(pin -> to.computeIfAbsent(pin, none -> new LinkedHashSet<>()).add(change));
      }
    }

    Announced run(Set<AnnouncedChange> known, Collection<AnnouncedChange> announced) {
      Set<NetChange> nets = new HashSet<>();
      Set<ElementChange> elements = new HashSet<>();
      List<NotMade> notMade = new ArrayList<>();
      Set<String> old = new LinkedHashSet<>();
      for (AnnouncedChange one : announced) {
        for (Ref ref : one.nets()) {
          Set<NetChange> itsNets = nets(ref);
          Set<ElementChange> itsElements = elements(ref);
          nets.addAll(itsNets);
          elements.addAll(itsElements);
          boolean made = !itsNets.isEmpty() || !itsElements.isEmpty();
          if (made && known.contains(one)) {
            old.add(one.id());
          } else if (!made && !known.contains(one)) {
            notMade.add(new NotMade(one.id(), ref.text(), why(ref)));
          }
        }
      }
      return new Announced(
          comparison.circuits().nets().stream().filter(net -> !nets.contains(net)).toList(),
          comparison.circuits().elements().stream()
              .filter(element -> !elements.contains(element))
              .toList(),
          notMade,
          List.copyOf(old),
          !announced.isEmpty());
    }

    private String why(Ref ref) {
      boolean known =
          !points(comparison.before().facts(), ref).isEmpty()
              || !points(comparison.after().facts(), ref).isEmpty()
              || isElement(comparison.before().facts(), ref)
              || isElement(comparison.after().facts(), ref);
      return known
          ? "nothing changes in the circuits at " + ref.text()
          : ref.text() + " is no pin, cavity, splice or element of either revision";
    }

    private Set<NetChange> nets(Ref ref) {
      Set<NetChange> found = new LinkedHashSet<>();
      points(comparison.before().facts(), ref)
          .forEach(point -> found.addAll(netsBefore.getOrDefault(point.text(), Set.of())));
      points(comparison.after().facts(), ref)
          .forEach(point -> found.addAll(netsAfter.getOrDefault(point.text(), Set.of())));
      return found;
    }

    private Set<ElementChange> elements(Ref ref) {
      Set<String> pins = new HashSet<>();
      points(comparison.before().facts(), ref).forEach(point -> pins.add(point.text()));
      points(comparison.after().facts(), ref).forEach(point -> pins.add(point.text()));
      Set<ElementChange> found = new LinkedHashSet<>();
      for (ElementChange change : comparison.circuits().elements()) {
        if (change.element().id().equals(ref.text())
            || change.pins().stream().anyMatch(pins::contains)) {
          found.add(change);
        }
      }
      return found;
    }

    /** All points of the net that a reference lies on. */
    private static List<Point> points(Facts facts, Ref ref) {
      return facts
          .wiring()
          .pointOf(ref)
          .flatMap(facts.nets()::of)
          .map(net -> net.points())
          .orElse(List.of());
    }

    private static boolean isElement(Facts facts, Ref ref) {
      var device = facts.harness().devices().get(ref.owner());
      var type = device == null ? null : facts.harness().typeOf(device);
      return type != null && ref.member() != null && type.elements().containsKey(ref.member());
    }
  }
}
