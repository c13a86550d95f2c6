package org.tugtest.network;

import java.util.Arrays;

/** Numbered points and the numbered edges between them, several of one pair allowed. */
final class Links {
  private final int[] from;
  private final int[] to;
  private final int[] firstAt;
  private final int[] at;

  /** Edge {@code i} joins {@code from[i]} and {@code to[i]}, which differ. */
  Links(int points, int[] from, int[] to) {
    this.from = from;
    this.to = to;
    int[] counts = new int[points + 1];
    for (int i = 0; i < from.length; i++) {
      counts[from[i] + 1]++;
      counts[to[i] + 1]++;
    }
    Arrays.parallelPrefix(counts, Integer::sum);
    firstAt = counts.clone();
    at = new int[2 * from.length];
    for (int i = 0; i < from.length; i++) {
      at[counts[from[i]]++] = i;
      at[counts[to[i]]++] = i;
    }
  }

  int points() {
    return firstAt.length - 1;
  }

  int edges() {
    return from.length;
  }

  int from(int edge) {
    return from[edge];
  }

  int to(int edge) {
    return to[edge];
  }

  int across(int edge, int point) {
    return from[edge] == point ? to[edge] : from[edge];
  }

  int degree(int point) {
    return firstAt[point + 1] - firstAt[point];
  }

  int edge(int point, int i) {
    return at[firstAt[point] + i];
  }
}
