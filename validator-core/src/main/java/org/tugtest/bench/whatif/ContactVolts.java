package org.tugtest.bench.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.solve.Branch;

/**
 * What a voltmeter shows at the points of a harness in one state, whole or with a fault in it, its
 * black lead on the minus of the first source: about the volts of a source, about nothing, or
 * something that cannot be said. It follows what conducts, not how much: metal, closed contacts and
 * diodes first, then loads, which lift a broken return to the volts of the feed. Relays let go or
 * pull where a fault takes or gives their coil both its sides. Where plus and minus meet, or a
 * source hangs by one side alone, nothing is said.
 */
public final class ContactVolts {
  private static final int MOST_ROUNDS = 20;
  private final Network network;
  private final List<Branch> branches;
  private final Set<Integer> pulled;
  private final int[] start;
  private final int[] at;
  private final int black;
  private final BitSet users = new BitSet();
  private final BitSet fedWhole = new BitSet();
  private final BitSet givesWhole = new BitSet();
  private final boolean shortedWhole;

  /** What the meter shows. */
  public enum Reads {
    /** Less than half of the nominal volts. */
    NOTHING,
    /** About the volts of a source. */
    VOLTS,
    /** Anything. */
    UNSURE
  }

  /**
   * The readings of one state.
   *
   * @param network of the harness, whose points and edges are the nodes and branches that the state
   *     is solved by
   */
  public ContactVolts(Network network, OperatingPoint state) {
    this.network = network;
    this.branches = state.solution().circuit().branches();
    this.pulled = Set.copyOf(state.solution().allPulled());
    for (int i = 0; i < branches.size(); i++) {
      // A load of a given resistance is solved as one, and is no joint all the same.
      users.set(
          i,
          network.edges().get(i) instanceof Edge.OfElement inside
              && (inside.element() instanceof Element.Load
                  || inside.element() instanceof Element.Coil));
    }
    int nodes = network.points().size();
    start = new int[nodes + 1];
    for (Branch branch : branches) {
      start[branch.a() + 1]++;
      start[branch.b() + 1]++;
    }
    for (int node = 0; node < nodes; node++) {
      start[node + 1] += start[node];
    }
    int[] next = start.clone();
    at = new int[2 * branches.size()];
    for (int i = 0; i < branches.size(); i++) {
      at[next[branches.get(i).a()]++] = i;
      at[next[branches.get(i).b()]++] = i;
    }
    black = blackLead();
    Sides whole = new Sides(new BitSet(), new BitSet(), pulled);
    for (int i = 0; i < branches.size(); i++) {
      if (branches.get(i) instanceof Branch.Coil && whole.feeds(i)) {
        fedWhole.set(i);
      }
    }
    givesWhole.or(whole.gives());
    shortedWhole = whole.live.intersects(whole.home);
  }

  /** The minus that the black lead is held on; empty when the state has no source. */
  public Optional<Point> blackOn() {
    return black < 0 ? Optional.empty() : Optional.of(network.points().get(black));
  }

  /** A battery's, else a generator's. */
  private int blackLead() {
    int lead = -1;
    for (Branch branch : branches) {
      if (branch instanceof Branch.Source source && !source.generator()) {
        return source.b();
      } else if (branch instanceof Branch.Source source && lead < 0) {
        lead = source.b();
      }
    }
    return lead;
  }

  /** The readings of the whole harness, by the numbers of the network's points. */
  public List<Reads> whole() {
    return new Sides(new BitSet(), new BitSet(), pulled).reads();
  }

  /** The readings with a fault; linear in the size of the network. */
  public List<Reads> after(Fault fault) {
    BitSet changed = new BitSet();
    fault.edges().stream().mapToInt(network::number).forEach(changed::set);
    BitSet none = new BitSet();
    BitSet opened = fault.kind().closes() ? none : changed;
    BitSet closed = fault.kind().closes() ? changed : none;
    Set<Integer> now = pulled;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Sides sides = new Sides(opened, closed, now);
      Set<Integer> next = sides.pulled();
      if (next.equals(now) && sides.sure()) {
        return sides.reads();
      }
      if (next.equals(now)) {
        break;
      }
      now = next;
    }
    Reads[] unsure = new Reads[network.points().size()];
    Arrays.fill(unsure, Reads.UNSURE);
    return List.of(unsure);
  }

  /** What is joined to the plus and to the minus, with some branches changed. */
  private final class Sides {
    private final BitSet opened;
    private final BitSet closed;
    private final Set<Integer> relays;
    private final BitSet live = new BitSet();
    private final BitSet home = new BitSet();

    Sides(BitSet opened, BitSet closed, Set<Integer> relays) {
      this.opened = opened;
      this.closed = closed;
      this.relays = relays;
      if (black >= 0) {
        home.set(black);
        spread(home, false, false, new BitSet());
      }
      boolean more = true;
      while (more) {
        more = false;
        for (int i = 0; i < branches.size(); i++) {
          if (branches.get(i) instanceof Branch.Source source
              && !opened.get(i)
              && !live.get(source.a())
              && (home.get(source.b()) || live.get(source.b()))) {
            live.set(source.a());
            spread(live, true, false, new BitSet());
            more = true;
          }
        }
      }
    }

    /** The sources with their plus on the feed, and their minus below it. */
    BitSet gives() {
      BitSet gives = new BitSet();
      for (int i = 0; i < branches.size(); i++) {
        if (branches.get(i) instanceof Branch.Source source
            && live.get(source.a())
            && (home.get(source.b()) || live.get(source.b()))) {
          gives.set(i);
        }
      }
      return gives;
    }

    /** Whether plus and minus do not meet, and no source lifts or sinks what it is joined to. */
    boolean sure() {
      return gives().equals(givesWhole) && (shortedWhole || !live.intersects(home));
    }

    boolean feeds(int coil) {
      int a = branches.get(coil).a();
      int b = branches.get(coil).b();
      return !opened.get(coil) && ((live.get(a) && home.get(b)) || (live.get(b) && home.get(a)));
    }

    /** The coils that are pulled when the volts are as they are here. */
    Set<Integer> pulled() {
      Set<Integer> next = new HashSet<>();
      for (int i = 0; i < branches.size(); i++) {
        if (branches.get(i) instanceof Branch.Coil) {
          boolean fed = feeds(i);
          if (fed == fedWhole.get(i) ? pulled.contains(i) : fed) {
            next.add(i);
          }
        }
      }
      return next;
    }

    List<Reads> reads() {
      BitSet up = (BitSet) live.clone();
      spread(up, true, true, home);
      BitSet down = (BitSet) home.clone();
      spread(down, false, true, live);
      Reads[] reads = new Reads[network.points().size()];
      for (int i = 0; i < reads.length; i++) {
        reads[i] = up.get(i) ? down.get(i) ? Reads.UNSURE : Reads.VOLTS : Reads.NOTHING;
      }
      return List.of(reads);
    }

    /**
     * Adds what conducts on from a set.
     *
     * @param forth from the plus: diodes lead from anode to cathode; else the other way
     * @param loads through loads and coils too
     * @param stop is reached and not gone beyond
     */
    private void spread(BitSet set, boolean forth, boolean loads, BitSet stop) {
      List<Integer> open = new ArrayList<>(set.stream().filter(i -> !stop.get(i)).boxed().toList());
      while (!open.isEmpty()) {
        int node = open.remove(open.size() - 1);
        for (int k = start[node]; k < start[node + 1]; k++) {
          Branch branch = branches.get(at[k]);
          int other = branch.a() == node ? branch.b() : branch.a();
          if (!set.get(other)
              && !stop.get(other)
              && conducts(at[k], branch, loads, (branch.a() == node) == forth)) {
            set.set(other);
            open.add(other);
          }
        }
      }
    }

    private boolean conducts(int number, Branch branch, boolean loads, boolean forwards) {
      if (closed.get(number)) {
        return true;
      }
      if (opened.get(number) || branch instanceof Branch.Open || branch instanceof Branch.Source) {
        return false;
      }
      if (users.get(number)) {
        return loads;
      }
      if (branch instanceof Branch.Contact contact) {
        return contact.closed(relays.contains(contact.coil()));
      }
      return forwards || !(branch instanceof Branch.Diode);
    }
  }
}
