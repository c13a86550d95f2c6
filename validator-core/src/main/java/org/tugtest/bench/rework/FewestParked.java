package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Housing;
import org.tugtest.model.Terminal;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;

/**
 * Each terminal goes straight to its place as soon as that is free. What is left then are rings in
 * which each waits for the next; of each ring one has to wait elsewhere, and one is enough: in a
 * free cavity of the right family where there is one, else tied back.
 */
final class FewestParked {
  private final Bench bench;
  private final Writer writer;
  private final Map<Seat, Unit> held = new HashMap<>();
  private final Map<Unit, Job> jobOf = new HashMap<>();
  private final Map<Seat, Job> waitingFor = new HashMap<>();
  private final TreeSet<Job> pending =
      new TreeSet<>(Comparator.comparing(Job::to).thenComparing(job -> job.wanted().ends().get(0)));
  private final Map<Job, Seat> spares = new HashMap<>();
  private int parked;

  FewestParked(Bench bench, Writer writer) {
    this.bench = bench;
    this.writer = writer;
  }

  /** Writes the steps; answers how many terminals wait elsewhere. */
  int write() {
    sort();
    for (Job job : List.copyOf(pending)) {
      if (!bench.bodies().single(job.to())) {
        finish(job);
      }
    }
    while (!pending.isEmpty()) {
      Optional<Job> ready = pending.stream().filter(this::isReady).findFirst();
      if (ready.isPresent()) {
        follow(ready.get());
      } else {
        Job waiting = choose(ring(pending.first()));
        park(waiting);
      }
    }
    writer.splices();
    return parked;
  }

  private void sort() {
    for (Unit unit : bench.sitsNow().all()) {
      if (bench.bodies().single(unit.seat())) {
        held.put(unit.seat(), unit);
      }
    }
    for (Job job : bench.jobs().all()) {
      pending.add(job);
      if (bench.bodies().single(job.to())) {
        waitingFor.put(job.to(), job);
      }
      if (job.whole()) {
        jobOf.put(job.sources().get(0), job);
      }
    }
    for (Unit unit : bench.jobs().leaving()) {
      if (!jobOf.containsKey(unit)) {
        writer.release(unit);
        held.remove(unit.seat());
      }
    }
  }

  private boolean isReady(Job job) {
    return job.inPlace() || !held.containsKey(job.to());
  }

  /** Does a job, then the one that waits for the cavity it leaves, and so on. */
  private void follow(Job first) {
    for (Job job = first; job != null; ) {
      Seat left = finish(job);
      Job next = left == null ? null : waitingFor.get(left);
      job = next != null && pending.contains(next) && isReady(next) ? next : null;
    }
  }

  /** Does a job; answers the seat that it left. */
  private @Nullable Seat finish(Job job) {
    pending.remove(job);
    Seat left = null;
    if (job.whole() && !writer.isReleased(job.sources().get(0))) {
      left = job.sources().get(0).seat();
      held.remove(left);
    }
    Seat spare = spares.remove(job);
    if (spare != null) {
      writer.unpark(job, spare);
      held.remove(spare);
    }
    writer.place(job);
    if (bench.bodies().single(job.to())) {
      held.put(job.to(), job.wanted());
    }
    return left == null || left.equals(job.to()) ? null : left;
  }

  /** The jobs that wait for each other in a ring, beginning with this one. */
  private List<Job> ring(Job first) {
    Set<Job> ring = new LinkedHashSet<>();
    Job job = first;
    while (job != null && ring.add(job)) {
      Unit holder = held.get(job.to());
      job = holder == null ? null : jobOf.get(holder);
    }
    List<Job> all = new ArrayList<>(ring);
    int start = job == null ? 0 : all.indexOf(job);
    return all.subList(start, all.size());
  }

  /** One that gets a new crimp is out anyway; else one for which there is a free cavity. */
  private Job choose(List<Job> ring) {
    for (Job job : ring) {
      if (job.fresh()) {
        return job;
      }
    }
    for (Job job : ring) {
      Seat spare = spare(job, ring);
      if (spare != null) {
        spares.put(job, spare);
        return job;
      }
    }
    return ring.get(0);
  }

  private void park(Job job) {
    Unit unit = job.sources().get(0);
    Seat spare = spares.get(job);
    writer.park(job, spare);
    held.remove(unit.seat());
    if (spare != null) {
      held.put(spare, unit);
    }
    parked++;
    Job next = waitingFor.get(unit.seat());
    if (next != null && pending.contains(next)) {
      follow(next);
    }
  }

  /** A cavity that nothing uses, in a connector of the ring, of the terminal's own family. */
  private @Nullable Seat spare(Job job, List<Job> ring) {
    Unit unit = job.sources().get(0);
    Terminal terminal =
        unit.terminal() == null
            ? null
            : bench.now().harness().parts().terminals().get(unit.terminal());
    if (terminal == null || terminal.family() == null) {
      return null;
    }
    Set<String> connectors = new LinkedHashSet<>();
    addConnector(connectors, unit.seat());
    for (Job other : ring) {
      addConnector(connectors, other.to());
    }
    for (String connector : connectors) {
      for (String cavity : bench.bodies().cavities(connector, false)) {
        Seat seat = Seat.wanted(Point.Kind.CAVITY, connector, cavity);
        if (isFree(seat) && isOfFamily(terminal, seat)) {
          return seat;
        }
      }
    }
    return null;
  }

  private static void addConnector(Set<String> connectors, Seat seat) {
    if (seat.kind() == Point.Kind.CAVITY && !seat.old()) {
      connectors.add(seat.owner());
    }
  }

  private boolean isFree(Seat seat) {
    return !held.containsKey(seat) && bench.wanted().in(seat).isEmpty();
  }

  private boolean isOfFamily(Terminal terminal, Seat seat) {
    Housing housing = bench.bodies().housing(seat).orElse(null);
    return housing != null
        && housing.familyOf(seat.name()) != null
        && Fitting.fitsCavity(terminal, housing, seat.name());
  }
}
