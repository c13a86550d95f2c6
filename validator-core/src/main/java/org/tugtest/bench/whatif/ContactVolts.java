package org.tugtest.bench.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
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
  private final Conduction conduction;
  private final int black;
  private final BitSet fedWhole = new BitSet();
  private final BitSet weakWhole = new BitSet();
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
    this.conduction = new Conduction(network, branches);
    black = blackLead();
    Sides whole = new Sides(new BitSet(), new BitSet(), pulled);
    for (int i = 0; i < branches.size(); i++) {
      if (branches.get(i) instanceof Branch.Coil && whole.feeds(i)) {
        fedWhole.set(i);
      } else if (branches.get(i) instanceof Branch.Coil && whole.mayFeed(i)) {
        weakWhole.set(i);
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
    // A coil that is left with a way through loads may hold or let go: what differs is not sure.
    List<Reads> held = settled(opened, closed, true);
    List<Reads> free = settled(opened, closed, false);
    List<Reads> both = new ArrayList<>(held);
    for (int i = 0; i < both.size(); i++) {
      if (held.get(i) != free.get(i)) {
        both.set(i, Reads.UNSURE);
      }
    }
    return List.copyOf(both);
  }

  /** The readings once the relays rest, those that may do either way held or let go. */
  private List<Reads> settled(BitSet opened, BitSet closed, boolean held) {
    Set<Integer> now = pulled;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Sides sides = new Sides(opened, closed, now);
      Set<Integer> next = sides.pulled(held);
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
    private final Conduction.Changed changed;
    private final BitSet live = new BitSet();
    private final BitSet home = new BitSet();
    private @Nullable BitSet lifted;
    private @Nullable BitSet sunk;

    Sides(BitSet opened, BitSet closed, Set<Integer> relays) {
      this.opened = opened;
      this.changed = new Conduction.Changed(opened, closed, relays);
      if (black >= 0) {
        home.set(black);
        conduction.spread(home, false, false, new BitSet(), changed);
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
            conduction.spread(live, true, false, new BitSet(), changed);
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
      return !opened.get(coil) && crosses(coil, live, home);
    }

    /** Whether a coil may get some volts, through loads in a row with it. */
    boolean mayFeed(int coil) {
      if (opened.get(coil) || !crosses(coil, lifted(), sunk())) {
        return false;
      }
      Conduction.Changed without = changed.without(coil);
      BitSet up = (BitSet) live.clone();
      conduction.spread(up, true, true, home, without);
      BitSet down = (BitSet) home.clone();
      conduction.spread(down, false, true, live, without);
      return crosses(coil, up, down);
    }

    private boolean crosses(int coil, BitSet one, BitSet other) {
      int a = branches.get(coil).a();
      int b = branches.get(coil).b();
      return (one.get(a) && other.get(b)) || (one.get(b) && other.get(a));
    }

    /** What the feed reaches, through loads and coils too. */
    private BitSet lifted() {
      if (lifted == null) {
        lifted = (BitSet) live.clone();
        conduction.spread(lifted, true, true, home, changed);
      }
      return lifted;
    }

    /** What the return reaches, through loads and coils too. */
    private BitSet sunk() {
      if (sunk == null) {
        sunk = (BitSet) home.clone();
        conduction.spread(sunk, false, true, live, changed);
      }
      return sunk;
    }

    /** The coils that are pulled when the volts are as they are here. */
    Set<Integer> pulled(boolean held) {
      Set<Integer> next = new HashSet<>();
      for (int i = 0; i < branches.size(); i++) {
        if (branches.get(i) instanceof Branch.Coil && pulls(i, held)) {
          next.add(i);
        }
      }
      return next;
    }

    private boolean pulls(int coil, boolean held) {
      boolean fed = feeds(coil);
      if (fed) {
        return !fedWhole.get(coil) || pulled.contains(coil);
      }
      if (mayFeed(coil)) {
        return weakWhole.get(coil) ? pulled.contains(coil) : held;
      }
      return !fedWhole.get(coil) && !weakWhole.get(coil) && pulled.contains(coil);
    }

    List<Reads> reads() {
      BitSet up = lifted();
      BitSet down = sunk();
      Reads[] reads = new Reads[network.points().size()];
      for (int i = 0; i < reads.length; i++) {
        reads[i] = up.get(i) ? down.get(i) ? Reads.UNSURE : Reads.VOLTS : Reads.NOTHING;
      }
      return List.of(reads);
    }
  }
}
