package org.tugtest.network;

import java.util.Arrays;

/** Numbers from 0 that are joined two by two (union by size, halved paths). */
public final class Joined {
  private final int[] parent;
  private final int[] size;

  /** So many numbers, none joined to another. */
  public Joined(int count) {
    parent = new int[count];
    size = new int[count];
    Arrays.setAll(parent, i -> i);
    Arrays.fill(size, 1);
  }

  /** The number that stands for all that are joined to this one. */
  public int find(int number) {
    int at = number;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  /** Joins two numbers and all that are joined to either. */
  public void join(int one, int other) {
    int a = find(one);
    int b = find(other);
    if (a == b) {
      return;
    }
    int big = size[a] >= size[b] ? a : b;
    int small = big == a ? b : a;
    parent[small] = big;
    size[big] += size[small];
  }

  /** For every number its group; groups are counted from 0 in the order of their least numbers. */
  public int[] numbered() {
    int[] groupOfRoot = new int[parent.length];
    Arrays.fill(groupOfRoot, -1);
    int[] groups = new int[parent.length];
    int count = 0;
    for (int i = 0; i < parent.length; i++) {
      int root = find(i);
      if (groupOfRoot[root] < 0) {
        groupOfRoot[root] = count++;
      }
      groups[i] = groupOfRoot[root];
    }
    return groups;
  }
}
