package org.tugtest.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Pairs of some points of a graph that together join all of them that are joined, with the least
 * sum of lengths: the least spanning tree of their distances along the edges. Found without all
 * distances: each point of the graph is given to its nearest start, and the edges between two
 * territories are the candidates (Mehlhorn 1988); near linear.
 */
public final class NearestPairs {
  /**
   * Two of the points.
   *
   * @param length along the edges between them
   */
  public record Pair(Point one, Point other, double length) {}

  private record Candidate(int one, int other, double length, int edge) {}

  private record Reached(double length, int point) {}

  private NearestPairs() {}

  /** The pairs, the nearest first; equal lengths in the order of the points. */
  static List<Pair> of(Links links, int[] starts, double[] lengths, List<Point> points) {
    int n = links.points();
    int[] owner = new int[n];
    double[] distance = new double[n];
    Arrays.fill(owner, -1);
    Arrays.fill(distance, Double.POSITIVE_INFINITY);
    PriorityQueue<Reached> open =
        new PriorityQueue<>(
            Comparator.comparingDouble(Reached::length).thenComparingInt(Reached::point));
    for (int start : starts) {
      owner[start] = start;
      distance[start] = 0;
      open.add(new Reached(0, start));
    }
    while (!open.isEmpty()) {
      Reached next = open.remove();
      int at = next.point();
      if (next.length() > distance[at]) {
        continue;
      }
      for (int i = 0; i < links.degree(at); i++) {
        int edge = links.edge(at, i);
        int to = links.across(edge, at);
        double length = distance[at] + lengths[edge];
        if (length < distance[to]) {
          distance[to] = length;
          owner[to] = owner[at];
          open.add(new Reached(length, to));
        }
      }
    }
    return least(candidates(links, owner, distance, lengths), n, points);
  }

  private static List<Candidate> candidates(
      Links links, int[] owner, double[] distance, double[] lengths) {
    List<Candidate> candidates = new ArrayList<>();
    for (int edge = 0; edge < links.edges(); edge++) {
      int from = links.from(edge);
      int to = links.to(edge);
      if (owner[from] >= 0 && owner[to] >= 0 && owner[from] != owner[to]) {
        candidates.add(
            new Candidate(
                Math.min(owner[from], owner[to]),
                Math.max(owner[from], owner[to]),
                distance[from] + lengths[edge] + distance[to],
                edge));
      }
    }
    candidates.sort(
        Comparator.comparingDouble(Candidate::length)
            .thenComparingInt(Candidate::one)
            .thenComparingInt(Candidate::other)
            .thenComparingInt(Candidate::edge));
    return candidates;
  }

  private static List<Pair> least(List<Candidate> candidates, int n, List<Point> points) {
    Joined joined = new Joined(n);
    List<Pair> pairs = new ArrayList<>();
    for (Candidate candidate : candidates) {
      if (joined.find(candidate.one()) != joined.find(candidate.other())) {
        joined.join(candidate.one(), candidate.other());
        pairs.add(
            new Pair(
                points.get(candidate.one()), points.get(candidate.other()), candidate.length()));
      }
    }
    return pairs;
  }
}
