package org.tugtest.built.explain;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;
import org.tugtest.network.Edge;

/** How a loom may be in truth: where its wire ends sit, what is open, what touches. */
final class Bench {
  private final Loom loom;
  private final int[] seats;
  private final BitSet openWires;
  private final BitSet openJoints;
  private final int[] touching;
  private int[] nets = new int[0];

  /** As planned. */
  Bench(Loom loom) {
    this.loom = loom;
    this.seats = new int[2 * loom.wires().size()];
    for (int i = 0; i < loom.wires().size(); i++) {
      Edge wire = loom.wires().get(i);
      seats[2 * i] = loom.number(wire.a());
      seats[2 * i + 1] = loom.number(wire.b());
    }
    this.openWires = new BitSet();
    this.openJoints = new BitSet();
    this.touching = new int[0];
  }

  private Bench(Bench same, int[] touching) {
    this.loom = same.loom;
    this.seats = same.seats.clone();
    this.openWires = (BitSet) same.openWires.clone();
    this.openJoints = (BitSet) same.openJoints.clone();
    this.touching = touching;
  }

  /** The same with what sits at two points exchanged. */
  Bench exchanged(int one, int other) {
    Bench next = new Bench(this, touching);
    for (int i = 0; i < seats.length; i++) {
      if (seats[i] == one) {
        next.seats[i] = other;
      } else if (seats[i] == other) {
        next.seats[i] = one;
      }
    }
    return next;
  }

  /** The same with a wire open. */
  Bench openWire(int wire) {
    Bench next = new Bench(this, touching);
    next.openWires.set(wire);
    return next;
  }

  /** The same with some joints open. */
  Bench openJoints(BitSet joints) {
    Bench next = new Bench(this, touching);
    next.openJoints.or(joints);
    return next;
  }

  /** The same with two points touching. */
  Bench touching(int one, int other) {
    int[] more = Arrays.copyOf(touching, touching.length + 2);
    more[touching.length] = one;
    more[touching.length + 1] = other;
    return new Bench(this, more);
  }

  /** Whether an end of a wire sits at a point. */
  boolean holds(int point) {
    for (int seat : seats) {
      if (seat == point) {
        return true;
      }
    }
    return false;
  }

  /** The wires with an end at a point, by number. */
  int[] wiresAt(int point) {
    return IntStream.range(0, seats.length)
        .filter(end -> seats[end] == point)
        .map(end -> end / 2)
        .distinct()
        .toArray();
  }

  /** Where the first end of a wire sits. */
  int seat(int wire) {
    return seats[2 * wire];
  }

  boolean isOpen(int wire) {
    return openWires.get(wire);
  }

  boolean isJointOpen(int joint) {
    return openJoints.get(joint);
  }

  boolean joined(int one, int other) {
    return net(one) == net(other);
  }

  /** The net of a point: the same number for all that are joined. */
  int net(int point) {
    if (nets.length == 0) {
      nets = new int[loom.points().size()];
      for (int i = 0; i < nets.length; i++) {
        nets[i] = i;
      }
      for (int wire = 0; wire < seats.length / 2; wire++) {
        if (!openWires.get(wire)) {
          join(seats[2 * wire], seats[2 * wire + 1]);
        }
      }
      for (int joint = 0; joint < loom.joints().size(); joint++) {
        if (!openJoints.get(joint)) {
          Edge edge = loom.joints().get(joint);
          join(loom.number(edge.a()), loom.number(edge.b()));
        }
      }
      for (int i = 0; i < touching.length; i += 2) {
        join(touching[i], touching[i + 1]);
      }
    }
    return find(point);
  }

  private void join(int one, int other) {
    if (one >= 0 && other >= 0) {
      nets[find(one)] = find(other);
    }
  }

  private int find(int point) {
    int at = point;
    while (nets[at] != at) {
      nets[at] = nets[nets[at]];
      at = nets[at];
    }
    return at;
  }
}
