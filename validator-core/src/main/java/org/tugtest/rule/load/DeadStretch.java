package org.tugtest.rule.load;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;

/**
 * What is dead with a load that a state wants and that lacks one side: all that is joined to its
 * dead end, and, where an open relay stands before it, what is dead with the coil of that relay.
 */
public final class DeadStretch {
  /** So many relays, each of which waits for the next, are looked behind. */
  private static final int RELAYS = 16;

  private final Live live;
  private final Map<Point, Boolean> groups = new HashMap<>();

  private DeadStretch(Live live) {
    this.live = live;
  }

  /**
   * The stretch that a finding of {@code load-unfed} or {@code load-without-return} speaks of, in
   * the state it names; empty when it names no state or load.
   */
  public static Optional<DeadStretch> of(Facts facts, Finding finding) {
    Edge.OfElement load =
        facts.once(ById.class, ById::of).users().get(finding.firstSubject().place());
    String state = finding.state();
    return load == null || state == null ? Optional.empty() : of(facts, load, state);
  }

  /** The stretch of a load or coil in a state, wanted or not; empty when there is no such state. */
  public static Optional<DeadStretch> of(Facts facts, Edge.OfElement load, String state) {
    Map<String, Edge.OfElement> users = facts.once(ById.class, ById::of).users();
    Optional<Live> live = live(facts, state);
    if (live.isEmpty()) {
      return Optional.empty();
    }
    DeadStretch stretch = new DeadStretch(live.get());
    Deque<Edge.OfElement> lacking = new ArrayDeque<>();
    lacking.add(load);
    Set<String> seen = new HashSet<>();
    while (!lacking.isEmpty() && seen.size() < RELAYS) {
      Edge.OfElement next = lacking.remove();
      if (seen.add(next.text())) {
        stretch.add(next, users, lacking);
      }
    }
    return Optional.of(stretch);
  }

  /** What is joined to a point that is not on plus; empty when there is no such state. */
  public static Optional<DeadStretch> of(Facts facts, Point point, String state) {
    Optional<DeadStretch> stretch = live(facts, state).map(DeadStretch::new);
    stretch
        .filter(dead -> dead.live.knows(point) && !dead.live.on(point, true))
        .ifPresent(dead -> dead.groups.put(dead.live.group(point), true));
    return stretch;
  }

  private static Optional<Live> live(Facts facts, String state) {
    return Live.all(facts).stream().filter(each -> each.state().state().equals(state)).findFirst();
  }

  /** Loads and coils by the place of their subject. */
  private record ById(Map<String, Edge.OfElement> users) {
    static ById of(Facts facts) {
      Map<String, Edge.OfElement> users = new HashMap<>();
      for (Edge edge : facts.network().edges()) {
        if (edge instanceof Edge.OfElement user
            && (user.element() instanceof Element.Load || user.element() instanceof Element.Coil)) {
          users.put(user.subject().place(), user);
        }
      }
      return new ById(users);
    }
  }

  private void add(
      Edge.OfElement user, Map<String, Edge.OfElement> users, Deque<Edge.OfElement> lacking) {
    boolean plus = !live.fed(user);
    if (!plus && live.returns(user)) {
      return;
    }
    Point end = plus ? live.deadEnd(user) : live.looseEnd(user);
    if (groups.putIfAbsent(live.group(end), plus) != null) {
      return;
    }
    for (Edge.OfElement contact : live.openBefore(end)) {
      if (contact.element() instanceof Element.Contact moved && moved.coil() != null) {
        Edge.OfElement coil = users.get("devices/" + contact.device() + "." + moved.coil());
        if (coil != null) {
          lacking.add(coil);
        }
      }
    }
  }

  /**
   * Whether something that ought to join one of some points with one of others would put an end to
   * it: one of them is in the dead stretch, the other on the side that it lacks.
   *
   * @param from the points at one end; none when it is not known
   * @param to the points at the other end; none when it is not known
   */
  public boolean wouldEndBy(Collection<Point> from, Collection<Point> to) {
    for (Map.Entry<Point, Boolean> group : groups.entrySet()) {
      Predicate<Point> dead =
          point -> live.knows(point) && live.group(point).equals(group.getKey());
      Predicate<Point> alive = point -> live.on(point, group.getValue());
      if (joins(from, dead, to, alive) || joins(to, dead, from, alive)) {
        return true;
      }
    }
    return false;
  }

  private static boolean joins(
      Collection<Point> these,
      Predicate<Point> dead,
      Collection<Point> those,
      Predicate<Point> alive) {
    return these.stream().anyMatch(dead) && (those.isEmpty() || those.stream().anyMatch(alive));
  }

  /** Whether a point is in the dead stretch. */
  public boolean holds(Point point) {
    return live.knows(point) && groups.containsKey(live.group(point));
  }
}
