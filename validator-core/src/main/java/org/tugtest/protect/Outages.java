package org.tugtest.protect;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.network.Sides;

/**
 * What can no longer be fed when something is taken out: a fuse that opens, a wire that breaks.
 * Switches count as closed; a contact that a coil pulls is closed as long as that coil can be fed,
 * so that what a dead relay leaves dead is counted too.
 */
public final class Outages {
  private final Network network;
  private final Supplied feed;
  private final Supplied back;
  private final Map<String, List<Integer>> pulled = new LinkedHashMap<>();
  private final BitSet always = new BitSet();
  private final Lost standing;

  /**
   * What is lost.
   *
   * @param users loads and coils that can no longer be fed, in the order of the network
   * @param wires wires that are no longer joined to a source's plus at one end or both
   */
  public record Outage(List<Edge.OfElement> users, List<Edge.OfWire> wires) {
    public Outage {
      users = List.copyOf(users);
      wires = List.copyOf(wires);
    }
  }

  private Outages(Network network) {
    this.network = network;
    List<Point> plus = new ArrayList<>();
    List<Point> minus = new ArrayList<>();
    network.sources().forEach(source -> plus.add(source.a()));
    network.sources().forEach(source -> minus.add(source.b()));
    List<Edge> edges = network.edges();
    Set<String> coils = new LinkedHashSet<>();
    for (Edge edge : edges) {
      if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Coil) {
        coils.add(inside.text());
      }
    }
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i) instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Contact contact
          && contact.coil() != null
          && !contact.restClosed()) {
        String coil = inside.device() + "." + contact.coil();
        if (coils.contains(coil)) {
          pulled.computeIfAbsent(coil, none -> new ArrayList<>(1)).add(i);
        }
      }
    }
    feed = new Supplied(network, plus, Sides::feeds);
    back = new Supplied(network, minus, (edge, from) -> Sides.feeds(edge, edge.across(from)));
    // Contacts whose coil can never be fed never close.
    Set<Edge.OfElement> dead = new LinkedHashSet<>();
    for (Edge edge : edges) {
      if (isUser(edge) && !fed((Edge.OfElement) edge, new BitSet(), new BitSet())) {
        dead.add((Edge.OfElement) edge);
      }
    }
    standing = settle(always, dead);
  }

  /** The outages of a network; building it is linear in its size. */
  public static Outages of(Network network) {
    return new Outages(network);
  }

  private static boolean isUser(Edge edge) {
    return edge instanceof Edge.OfElement inside
        && (inside.element() instanceof Element.Load || inside.element() instanceof Element.Coil);
  }

  private boolean fed(Edge.OfElement user, BitSet noFeed, BitSet noBack) {
    int a = network.index(user.a());
    int b = network.index(user.b());
    return (on(feed, a, noFeed) && on(back, b, noBack))
        || (on(feed, b, noFeed) && on(back, a, noBack));
  }

  private static boolean on(Supplied side, int point, BitSet cut) {
    return side.reaches(point) && !cut.get(point);
  }

  /** What is lost when these are taken out at once; near linear in what hangs on them. */
  public Outage without(Collection<? extends Edge> taken) {
    BitSet out = (BitSet) always.clone();
    taken.forEach(edge -> out.set(network.number(edge)));
    Lost before = standing;
    Lost after = settle(out, Set.of());
    List<Edge.OfElement> users = new ArrayList<>();
    for (int number : after.users) {
      Edge.OfElement user = (Edge.OfElement) network.edges().get(number);
      if (!before.users.contains(number) && fed(user, before.noFeed, before.noBack)) {
        users.add(user);
      }
    }
    TreeSet<Integer> wires = new TreeSet<>();
    after.noFeed.andNot(before.noFeed);
    for (int at = after.noFeed.nextSetBit(0); at >= 0; at = after.noFeed.nextSetBit(at + 1)) {
      for (Edge edge : network.edgesAt(network.points().get(at))) {
        if (edge instanceof Edge.OfWire && !taken.contains(edge)) {
          wires.add(network.number(edge));
        }
      }
    }
    return new Outage(
        users, wires.stream().map(i -> (Edge.OfWire) network.edges().get(i)).toList());
  }

  /** Users by number that are lost, and the points that are cut off. */
  private record Lost(TreeSet<Integer> users, BitSet noFeed, BitSet noBack) {}

  /** Opens the contacts of dead coils until no more coils die by it. */
  private Lost settle(BitSet out, Set<Edge.OfElement> dead) {
    dead.forEach(user -> open(out, user));
    while (true) {
      Lost lost = lost(out);
      int before = out.cardinality();
      lost.users.forEach(number -> open(out, (Edge.OfElement) network.edges().get(number)));
      if (out.cardinality() == before) {
        return lost;
      }
    }
  }

  private void open(BitSet out, Edge.OfElement coil) {
    pulled.getOrDefault(coil.text(), List.of()).forEach(out::set);
  }

  private Lost lost(BitSet out) {
    BitSet noFeed = feed.cutOff(out);
    BitSet noBack = back.cutOff(out);
    TreeSet<Integer> users = new TreeSet<>();
    BitSet near = (BitSet) noFeed.clone();
    near.or(noBack);
    for (int at = near.nextSetBit(0); at >= 0; at = near.nextSetBit(at + 1)) {
      for (Edge edge : network.edgesAt(network.points().get(at))) {
        if (isUser(edge) && !fed((Edge.OfElement) edge, noFeed, noBack)) {
          users.add(network.number(edge));
        }
      }
    }
    return new Lost(users, noFeed, noBack);
  }
}
