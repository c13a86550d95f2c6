package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Point;

/** What has to be done: which units leave their seats, and what comes into which. */
final class Jobs {
  private final Sitting now;
  private final Sitting target;
  private final List<Job> jobs = new ArrayList<>();
  private final Map<PieceEnd, Job> jobOf = new HashMap<>();
  private final Set<Unit> leaving = new LinkedHashSet<>();
  private final Set<Seat> remade = new HashSet<>();

  Jobs(Sitting now, Sitting target, Reuse reuse) {
    this.now = now;
    this.target = target;
    findRemadeSplices();
    Set<Unit> staying = new HashSet<>();
    for (Unit wanted : target.all()) {
      List<Unit> sources = sources(wanted);
      boolean one = sources.size() == 1 && !remade.contains(wanted.seat());
      boolean asItIs = one && reuse.asItIs(sources.get(0), wanted);
      if (asItIs && sources.get(0).seat().equals(wanted.seat())) {
        staying.add(sources.get(0));
      } else {
        Job job = new Job(wanted, sources, !asItIs);
        jobs.add(job);
        wanted.ends().forEach(end -> jobOf.put(end, job));
      }
    }
    now.all().stream().filter(unit -> !staying.contains(unit)).forEach(leaving::add);
  }

  /** A splice that gains an end is made anew; one that only loses some keeps the others. */
  private void findRemadeSplices() {
    for (Unit wanted : target.all()) {
      Seat seat = wanted.seat();
      if (seat.kind() == Point.Kind.SPLICE) {
        Unit is = now.of(wanted.ends().get(0));
        if (is == null || !is.seat().equals(seat)) {
          remade.add(seat);
        }
      }
    }
  }

  private List<Unit> sources(Unit wanted) {
    Set<Unit> sources = new LinkedHashSet<>();
    for (PieceEnd end : wanted.ends()) {
      Unit is = now.of(end);
      if (is != null) {
        sources.add(is);
      }
    }
    return List.copyOf(sources);
  }

  /** All jobs, by seat. */
  List<Job> all() {
    return jobs;
  }

  /** The job that an end is part of; null: it stays, goes, or ends nowhere. */
  @Nullable Job of(PieceEnd end) {
    return jobOf.get(end);
  }

  /** Units that come out of their seats, by seat. */
  Set<Unit> leaving() {
    return leaving;
  }

  /** The splices that are made, with all their ends. */
  Map<Seat, List<PieceEnd>> splices() {
    Map<Seat, List<PieceEnd>> splices = new TreeMap<>();
    for (Seat seat : remade) {
      splices.put(seat, target.in(seat).stream().flatMap(u -> u.ends().stream()).sorted().toList());
    }
    return splices;
  }
}
