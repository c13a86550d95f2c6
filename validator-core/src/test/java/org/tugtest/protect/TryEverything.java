package org.tugtest.protect;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Limits worked out by trying every set of fuses, and returns by trying every simple way. */
final class TryEverything {
  private final RandomCar car;

  TryEverything(RandomCar car) {
    this.car = car;
  }

  /**
   * The least sum of ratings that, taken out, leaves no way from a source to {@code ends}: the
   * definition of the limit, over all positions of the switch. Infinite when no fuses suffice.
   */
  double limit(RandomCar.@Nullable Link without, Set<Integer> ends) {
    return Math.max(limit(without, ends, 0), limit(without, ends, 1));
  }

  /** The limit of a wire: the greater of those of its ends. */
  double limit(RandomCar.Link wire) {
    return Math.max(limit(wire, Set.of(wire.a())), limit(wire, Set.of(wire.b())));
  }

  /** The limit of these when sources that limit themselves give nothing. */
  double limitOfStrong(Set<Integer> ends) {
    return Math.max(limit(null, ends, 0, true), limit(null, ends, 1, true));
  }

  /** Whether nothing but a wire leads from one of its ends to the other on wires. */
  boolean isOnlyWay(RandomCar.Link wire) {
    Set<Integer> reached = new HashSet<>(Set.of(wire.a()));
    boolean more = true;
    while (more) {
      more = false;
      for (RandomCar.Link link : car.of("wire")) {
        if (!link.equals(wire) && reached.contains(link.a()) != reached.contains(link.b())) {
          reached.add(link.a());
          reached.add(link.b());
          more = true;
        }
      }
    }
    return !reached.contains(wire.b());
  }

  private double limit(RandomCar.@Nullable Link without, Set<Integer> ends, int position) {
    return limit(without, ends, position, false);
  }

  private double limit(
      RandomCar.@Nullable Link without, Set<Integer> ends, int position, boolean strongOnly) {
    List<RandomCar.Link> bounds = new ArrayList<>(car.of("fuse"));
    car.of("source").stream().filter(source -> source.amps() > 0).forEach(bounds::add);
    double least = Double.POSITIVE_INFINITY;
    for (int set = 0; set < 1 << bounds.size(); set++) {
      Set<RandomCar.Link> out = new HashSet<>();
      double sum = 0;
      for (int i = 0; i < bounds.size(); i++) {
        if ((set >> i & 1) == 1) {
          out.add(bounds.get(i));
          sum += bounds.get(i).amps();
        }
      }
      if (without != null) {
        out.add(without);
      }
      if (strongOnly) {
        car.of("source").stream().filter(source -> source.amps() > 0).forEach(out::add);
      }
      if (sum < least && ends.stream().noneMatch(fed(out, position)::get)) {
        least = sum;
      }
    }
    return least;
  }

  /** Whether a pin is on the feed side in some position of the switch. */
  boolean isFed(int pin) {
    return fed(Set.of(), 0).get(pin) || fed(Set.of(), 1).get(pin);
  }

  /** Whether a load lies between the pins of sources and nothing else feeds it. */
  boolean fedByItsOwnSourceAlone(RandomCar.Link load) {
    Set<RandomCar.Link> own = new HashSet<>();
    for (RandomCar.Link source : car.of("source")) {
      if (source.a() == load.a() && source.b() == load.b()) {
        own.add(source);
      }
    }
    return !own.isEmpty() && !fed(own, 0).get(load.a()) && !fed(own, 1).get(load.a());
  }

  /** The pins that sources reach without what is out. */
  BitSet fed(Set<RandomCar.Link> out, int position) {
    BitSet fed = new BitSet();
    Deque<Integer> open = new ArrayDeque<>();
    for (RandomCar.Link source : car.of("source")) {
      if (!out.contains(source)) {
        open.add(source.a());
      }
    }
    while (!open.isEmpty()) {
      int at = open.remove();
      if (fed.get(at)) {
        continue;
      }
      fed.set(at);
      for (RandomCar.Link link : car.links) {
        if (out.contains(link) || !conducts(link, position)) {
          continue;
        }
        if (link.a() == at) {
          open.add(link.b());
        } else if (link.b() == at && !link.kind().equals("diode")) {
          open.add(link.a());
        }
      }
    }
    return fed;
  }

  private static boolean conducts(RandomCar.Link link, int position) {
    return switch (link.kind()) {
      case "wire", "fuse", "diode" -> true;
      case "contact" -> link.position() == position;
      default -> false;
    };
  }

  /** Whether some simple way over wires leads from a pin to a source's minus through a wire. */
  boolean returnsThrough(int pin, RandomCar.Link wire) {
    return returnsThrough(pin, wire, true);
  }

  /** The same; to the minus of sources that do not limit themselves alone, or to any. */
  boolean returnsThrough(int pin, RandomCar.Link wire, boolean limitedToo) {
    boolean[] minus = new boolean[car.pins];
    car.of("source").stream()
        .filter(source -> limitedToo || source.amps() == 0)
        .forEach(source -> minus[source.b()] = true);
    boolean[] passed = new boolean[car.pins];
    return walk(pin, wire, false, passed, minus);
  }

  private boolean walk(
      int at, RandomCar.Link wire, boolean through, boolean[] passed, boolean[] minus) {
    if (through && minus[at]) {
      return true;
    }
    passed[at] = true;
    for (RandomCar.Link link : car.of("wire")) {
      if (link.a() == at || link.b() == at) {
        int next = link.a() == at ? link.b() : link.a();
        if (!passed[next] && walk(next, wire, through || link.equals(wire), passed, minus)) {
          return true;
        }
      }
    }
    passed[at] = false;
    return false;
  }

  @Override
  public String toString() {
    return Arrays.toString(car.links.toArray());
  }
}
