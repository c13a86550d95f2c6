package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.network.Point;
import org.tugtest.text.NaturalOrder;

/**
 * One connector at a time. Connectors that exchange wires are done together: all that move are
 * pulled from each of them before the first is filled, so that no cavity ever holds two.
 */
final class ByConnector {
  private final Bench bench;
  private final Writer writer;
  private final Map<String, String> leader = new HashMap<>();

  ByConnector(Bench bench, Writer writer) {
    this.bench = bench;
    this.writer = writer;
  }

  /** Writes the steps. */
  int write() {
    List<Job> jobs = bench.jobs().all();
    for (Unit unit : bench.jobs().leaving()) {
      if (unit.seat().kind() != Point.Kind.CAVITY) {
        writer.release(unit);
      }
    }
    groups().values().forEach(this::writeGroup);
    jobs.stream().filter(job -> job.to().kind() == Point.Kind.PIN).forEach(writer::place);
    writer.splices();
    return 0;
  }

  private void writeGroup(List<String> connectors) {
    for (String connector : connectors) {
      bench.jobs().leaving().stream()
          .filter(unit -> isIn(unit.seat(), connector))
          .sorted(Comparator.comparing(Unit::seat, inFaceOrder(connector)))
          .forEach(writer::release);
    }
    for (String connector : connectors) {
      bench.jobs().all().stream()
          .filter(job -> isIn(job.to(), connector))
          .sorted(Comparator.comparing(Job::to, inFaceOrder(connector)))
          .forEach(writer::place);
    }
  }

  private static boolean isIn(Seat seat, String connector) {
    return seat.kind() == Point.Kind.CAVITY && seat.owner().equals(connector);
  }

  private Comparator<Seat> inFaceOrder(String connector) {
    Map<String, Integer> old = bench.bodies().face(connector, true);
    Map<String, Integer> face = bench.bodies().face(connector, false);
    return Comparator.<Seat>comparingInt(
            seat -> (seat.old() ? old : face).getOrDefault(seat.name(), Integer.MAX_VALUE))
        .thenComparing(Comparator.naturalOrder());
  }

  /** Connectors in groups, those of a group in order, the groups by their first. */
  private Map<String, List<String>> groups() {
    for (Unit unit : bench.jobs().leaving()) {
      if (unit.seat().kind() == Point.Kind.CAVITY) {
        find(unit.seat().owner());
      }
    }
    for (Job job : bench.jobs().all()) {
      if (job.to().kind() != Point.Kind.CAVITY) {
        continue;
      }
      find(job.to().owner());
      for (Unit source : job.sources()) {
        if (source.seat().kind() == Point.Kind.CAVITY) {
          join(job.to().owner(), source.seat().owner());
        }
      }
    }
    Map<String, List<String>> members = new HashMap<>();
    for (String connector : leader.keySet().stream().sorted(NaturalOrder.NATURAL).toList()) {
      members.computeIfAbsent(find(connector), none -> new ArrayList<>()).add(connector);
    }
    Map<String, List<String>> groups = new TreeMap<>(NaturalOrder.NATURAL);
    members.values().forEach(group -> groups.put(group.get(0), group));
    return Collections.unmodifiableMap(groups);
  }

  private String find(String connector) {
    String at = connector;
    leader.putIfAbsent(at, at);
    while (!leader.getOrDefault(at, at).equals(at)) {
      String up = leader.getOrDefault(at, at);
      leader.put(at, leader.getOrDefault(up, up));
      at = leader.getOrDefault(at, at);
    }
    return at;
  }

  private void join(String one, String other) {
    leader.put(find(one), find(other));
  }
}
