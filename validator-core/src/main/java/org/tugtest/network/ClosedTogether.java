package org.tugtest.network;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.State;

/**
 * Which contacts can be closed at the same time. The contacts of a switch are closed together in
 * one of its positions, those of a relay with its coil pulled or released, and either as a state
 * sets single contacts of it; never otherwise. A change-over is therefore no short. A contact that
 * no position closes is taken as closed in any.
 */
public final class ClosedTogether {
  private static final List<String> COIL = List.of("released", "pulled");

  /** Whatever moves contacts that exclude each other, with what it can be set to. */
  private record Mover(String name, int settings) {}

  private final Network network;
  private final List<Mover> movers = new ArrayList<>();
  private final int[] moverOf;
  private final List<@Nullable BitSet> closedIn;

  private ClosedTogether(Harness harness, Network network) {
    this.network = network;
    this.moverOf = new int[network.edges().size()];
    this.closedIn = new ArrayList<>(network.edges().size());
    Map<String, List<Integer>> moved = new LinkedHashMap<>();
    for (int i = 0; i < moverOf.length; i++) {
      moverOf[i] = -1;
      closedIn.add(null);
      if (network.edges().get(i) instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Contact contact) {
        String mover = inside.device() + (contact.coil() == null ? "" : "." + contact.coil());
        moved.computeIfAbsent(mover, none -> new ArrayList<>(2)).add(i);
      }
    }
    moved.forEach((name, contacts) -> add(harness, name, contacts));
  }

  /** The contacts of a network; linear in its size and the states. */
  public static ClosedTogether of(Harness harness, Network network) {
    return new ClosedTogether(harness, network);
  }

  private void add(Harness harness, String name, List<Integer> contacts) {
    if (contacts.size() < 2) {
      return;
    }
    Edge.OfElement first = contact(contacts.get(0));
    boolean relay = ((Element.Contact) first.element()).coil() != null;
    Device device = harness.devices().get(first.device());
    DeviceType type = device == null ? null : harness.typeOf(device);
    List<String> positions = relay ? COIL : type == null ? List.of() : type.positions();
    List<Integer> able = new ArrayList<>();
    List<BitSet> closed = new ArrayList<>();
    for (int number : contacts) {
      BitSet in = new BitSet();
      for (int i = 0; i < positions.size(); i++) {
        in.set(i, isClosed((Element.Contact) contact(number).element(), positions.get(i)));
      }
      if (!in.isEmpty()) {
        able.add(number);
        closed.add(in);
      }
    }
    int settings = positions.size();
    for (State state : harness.states().values()) {
      int set = positions.indexOf(position(state, first));
      for (int at : relay ? new int[] {0, 1} : new int[] {Math.max(0, set)}) {
        BitSet single = setBy(state, able, closed, at);
        if (single != null) {
          for (int i = 0; i < closed.size(); i++) {
            closed.get(i).set(settings, single.get(i));
          }
          settings++;
        }
      }
    }
    if (exclude(closed)) {
      for (int i = 0; i < able.size(); i++) {
        moverOf[able.get(i)] = movers.size();
        closedIn.set(able.get(i), closed.get(i));
      }
      movers.add(new Mover(name, settings));
    }
  }

  private static boolean isClosed(Element.Contact contact, String setting) {
    return contact.coil() == null
        ? contact.closedIn().contains(setting)
        : contact.restClosed() == setting.equals(COIL.get(0));
  }

  private static String position(State state, Edge.OfElement contact) {
    return state.set().getOrDefault(new Ref(contact.device(), null, null), "");
  }

  /** Which of these contacts a state closes when it sets one of them by itself; else null. */
  private @Nullable BitSet setBy(
      State state, List<Integer> contacts, List<BitSet> closed, int position) {
    BitSet set = new BitSet();
    boolean single = false;
    for (int i = 0; i < contacts.size(); i++) {
      Edge.OfElement contact = contact(contacts.get(i));
      String own = state.set().get(new Ref(contact.device(), null, contact.name()));
      single |= own != null;
      set.set(i, own == null ? closed.get(i).get(position) : own.equals("on"));
    }
    return single ? set : null;
  }

  private static boolean exclude(List<BitSet> closed) {
    if (closed.isEmpty()) {
      return false;
    }
    BitSet all = (BitSet) closed.get(0).clone();
    closed.forEach(all::and);
    return all.isEmpty();
  }

  private Edge.OfElement contact(int number) {
    return (Edge.OfElement) network.edges().get(number);
  }

  /** The number of what moves a contact that excludes others; -1 for every other edge. */
  public int mover(int edge) {
    return moverOf[edge];
  }

  /** How many switches and relays have contacts that exclude each other. */
  public int movers() {
    return movers.size();
  }

  /** The device, or the device and its coil. */
  public String name(int mover) {
    return movers.get(mover).name();
  }

  /** How many positions, and settings of single contacts, a mover has. */
  public int settings(int mover) {
    return movers.get(mover).settings();
  }

  /** Whether a contact with a mover is closed in one of its settings. */
  public boolean closed(int edge, int setting) {
    BitSet in = closedIn.get(edge);
    return in != null && in.get(setting);
  }

  /** How the movers may stand when all these contacts are open. */
  public Positions open(Predicate<Edge.OfElement> contacts) {
    Positions left = Positions.ANY;
    for (int i = 0; i < moverOf.length; i++) {
      BitSet in = closedIn.get(i);
      if (in != null && contacts.test(contact(i))) {
        BitSet open = (BitSet) in.clone();
        open.flip(0, settings(moverOf[i]));
        left = Objects.requireNonNullElse(left.and(moverOf[i], open), left);
      }
    }
    return left;
  }

  /** How the movers may still stand when this edge is taken too; null when it cannot be. */
  @Nullable Positions taking(Positions before, int edge) {
    BitSet in = closedIn.get(edge);
    return in == null ? before : before.and(moverOf[edge], in);
  }
}
