package org.tugtest.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** On which of their straight pieces the sources and diodes of a circuit work. */
final class Pieces {
  private final List<Branch> branches;
  private final int[] numbers;
  private final Piece[] pieces;
  private final double tolerance;

  /** A straight piece of a source or diode. */
  enum Piece {
    /** Of a diode: no current. */
    OFF('f'),
    /** Of a diode: current from anode to cathode. */
    ON('o'),
    /** Of a source: current out of its plus. */
    GIVING('g'),
    /** Of a battery: current into its plus. */
    TAKING('t'),
    /** Of a source: its greatest current out of its plus. */
    LIMITED('l'),
    /** Of a generator: no current, since its volts are too few. */
    BLOCKED('b');

    private final char mark;

    Piece(char mark) {
      this.mark = mark;
    }
  }

  /**
   * All diodes off, all sources giving.
   *
   * @param refused sources that are left out
   */
  Pieces(Circuit circuit, boolean[] refused) {
    branches = circuit.branches();
    pieces = new Piece[branches.size()];
    int[] changing = new int[branches.size()];
    int count = 0;
    double greatest = 0;
    for (int i = 0; i < pieces.length; i++) {
      if (branches.get(i) instanceof Branch.Source source && !refused[i]) {
        pieces[i] = Piece.GIVING;
        greatest = Math.max(greatest, Math.abs(source.volts()));
        changing[count++] = i;
      } else {
        pieces[i] = Piece.OFF;
        if (branches.get(i) instanceof Branch.Diode) {
          changing[count++] = i;
        }
      }
    }
    tolerance = 1e-10 * greatest;
    numbers = Arrays.copyOf(changing, count);
  }

  private Pieces(Pieces same) {
    branches = same.branches;
    numbers = same.numbers;
    pieces = same.pieces.clone();
    tolerance = same.tolerance;
  }

  Pieces copy() {
    return new Pieces(this);
  }

  /** The sources and diodes, by number. */
  int[] numbers() {
    return numbers.clone();
  }

  Piece of(int branch) {
    return pieces[branch];
  }

  void set(int branch, Piece piece) {
    pieces[branch] = piece;
  }

  /** The same for equal pieces. */
  String key() {
    StringBuilder key = new StringBuilder(numbers.length);
    for (int i : numbers) {
      key.append(pieces[i].mark);
    }
    return key.toString();
  }

  /** Writes the figures of the pieces into a linear network. */
  void lay(Linear linear) {
    for (int i : numbers) {
      lay(linear, i);
    }
  }

  /** Writes the figures of one piece into a linear network. */
  void lay(Linear linear, int i) {
    Branch branch = branches.get(i);
    if (branch instanceof Branch.Source source) {
      if (pieces[i] == Piece.GIVING) {
        linear.set(i, 1 / source.ohms(), source.volts(), 0);
      } else if (pieces[i] == Piece.TAKING) {
        linear.set(i, 1 / source.chargeOhms(), source.volts(), 0);
      } else {
        linear.set(i, 0, 0, pieces[i] == Piece.LIMITED ? -source.maxA() : 0);
      }
    } else if (branch instanceof Branch.Diode diode) {
      boolean on = pieces[i] == Piece.ON;
      linear.set(i, on ? 1 / diode.ohms() : 0, on ? diode.volts() : 0, 0);
    }
  }

  /** Whether a source gives its greatest current between nodes that nothing else joins. */
  boolean unstrand(Linear linear) {
    if (Arrays.stream(numbers).noneMatch(i -> pieces[i] == Piece.LIMITED)) {
      return false;
    }
    Islands islands = Islands.of(linear);
    boolean changed = false;
    for (int i : numbers) {
      if (pieces[i] == Piece.LIMITED
          && islands.islandOf(linear.a(i)) != islands.islandOf(linear.b(i))) {
        pieces[i] = Piece.GIVING;
        lay(linear, i);
        changed = true;
      }
    }
    return changed;
  }

  /** Which pieces are wrong at these volts and currents, and what they should be. */
  List<Map<Integer, Piece>> wrong(Flow flow) {
    List<Map<Integer, Piece>> wrong = new ArrayList<>();
    List<OffsetCheck.Limit> limits = new ArrayList<>();
    for (int i : numbers) {
      if (isOpen(i) && !flow.inOneIsland(i)) {
        limits.add(limit(i, flow));
        continue;
      }
      Piece right = right(i, flow.across(i));
      if (right != pieces[i]) {
        wrong.add(new TreeMap<>(Map.of(i, right)));
      }
    }
    for (List<Integer> together : OffsetCheck.broken(flow.islands().islands(), limits, tolerance)) {
      Map<Integer, Piece> change = new TreeMap<>();
      together.forEach(i -> change.put(i, closed(i)));
      wrong.add(change);
    }
    return wrong;
  }

  /**
   * Open diodes that lift an island without a source: of those into such an island from a powered
   * one, the one that lifts it highest. No current flows through it, but a meter shows its volts.
   */
  Map<Integer, Piece> lifts(Flow flow) {
    Map<Integer, Integer> best = new TreeMap<>();
    for (int i : numbers) {
      if (!isOpen(i) || flow.inOneIsland(i)) {
        continue;
      }
      int high = high(i);
      int low = low(i);
      if (flow.powered(high) && !flow.powered(low)) {
        int island = flow.islands().islandOf(low);
        Integer before = best.get(island);
        if (before == null || lift(i, flow) > lift(before, flow) + tolerance) {
          best.put(island, i);
        }
      }
    }
    Map<Integer, Piece> changes = new TreeMap<>();
    best.values().forEach(i -> changes.put(i, closed(i)));
    return changes;
  }

  private double lift(int i, Flow flow) {
    return flow.volts(high(i)) - threshold(i);
  }

  private boolean isOpen(int i) {
    return pieces[i] == Piece.OFF || pieces[i] == Piece.BLOCKED;
  }

  private Piece closed(int i) {
    return branches.get(i) instanceof Branch.Diode ? Piece.ON : Piece.GIVING;
  }

  /** The node whose volts may be at most the threshold over those of {@link #low}. */
  private int high(int i) {
    Branch branch = branches.get(i);
    return branch instanceof Branch.Diode ? branch.a() : branch.b();
  }

  private int low(int i) {
    Branch branch = branches.get(i);
    return branch instanceof Branch.Diode ? branch.b() : branch.a();
  }

  private double threshold(int i) {
    Branch branch = branches.get(i);
    if (branch instanceof Branch.Diode diode) {
      return diode.volts();
    }
    return branch instanceof Branch.Source source ? -source.volts() : 0;
  }

  private OffsetCheck.Limit limit(int i, Flow flow) {
    int high = high(i);
    int low = low(i);
    double room = threshold(i) - (flow.volts(high) - flow.volts(low));
    return new OffsetCheck.Limit(
        i, flow.islands().islandOf(high), flow.islands().islandOf(low), room);
  }

  /** The piece that a source or diode should be on with these volts from {@code a} to {@code b}. */
  Piece right(int i, double across) {
    Branch branch = branches.get(i);
    if (branch instanceof Branch.Diode diode) {
      double over = across - diode.volts();
      if (pieces[i] == Piece.ON) {
        return over < -tolerance ? Piece.OFF : Piece.ON;
      }
      return over > tolerance ? Piece.ON : Piece.OFF;
    }
    return branch instanceof Branch.Source source ? right(pieces[i], source, across) : pieces[i];
  }

  private Piece right(Piece piece, Branch.Source source, double across) {
    double under = source.volts() - across;
    double most = source.maxA() * source.ohms();
    if (piece == Piece.GIVING) {
      if (under < -tolerance) {
        return source.generator() ? Piece.BLOCKED : Piece.TAKING;
      }
      return under > most + tolerance ? Piece.LIMITED : Piece.GIVING;
    }
    if (piece == Piece.LIMITED) {
      return under < most - tolerance ? Piece.GIVING : Piece.LIMITED;
    }
    return under > tolerance ? Piece.GIVING : piece;
  }
}
