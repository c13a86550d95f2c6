package org.tugtest.bench.rework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tugtest.facts.Facts;

/** Random looms: every step can be done, the last ends at the target, and as few wait as can. */
class ReworkLawsTest {
  private static Rework of(Loom is, Loom becomes, Order order) {
    Facts now = is.facts();
    Facts target = becomes.facts();
    return Rework.of(now, target, Matching.byId(now, target), order);
  }

  @ParameterizedTest
  @EnumSource(Order.class)
  void everyStepCanBeDoneAndTheLastOneEndsAtTheTarget(Order order) {
    Random random = new Random(41);
    int steps = 0;
    for (int round = 0; round < 2500; round++) {
      Loom is = Loom.random(random);
      Loom becomes = is.changed(random);
      Rework rework = of(is, becomes, order);
      Replay replay = new Replay(is, becomes);
      replay.play(rework.steps());
      replay.assertDone();
      assertThat(rework.open()).allMatch(line -> line.startsWith("not judged whether"));
      assertThat(replay.waits).isEqualTo(rework.parked());
      steps += rework.steps().size();
    }
    assertThat(steps).isGreaterThan(50_000);
  }

  @ParameterizedTest
  @EnumSource(Order.class)
  void equalLoomsGiveNoSteps(Order order) {
    Random random = new Random(3);
    for (int round = 0; round < 200; round++) {
      Loom loom = Loom.random(random);
      Rework rework = of(loom, loom, order);
      assertThat(rework.steps()).isEmpty();
      assertThat(rework.cautions()).isEmpty();
    }
  }

  /** Up to seven terminals change places: none fewer can wait, by trying every way. */
  @Test
  void asFewWaitAsCan() {
    Random random = new Random(17);
    int most = 0;
    for (int round = 0; round < 1500; round++) {
      List<String> seats =
          new ArrayList<>(
              List.of("A:1", "A:2", "A:3", "A:4", "A:5", "B:1", "B:2", "B:3", "B:7", "C:1"));
      int moves = 1 + random.nextInt(7);
      Collections.shuffle(seats, random);
      List<String> from = new ArrayList<>(seats.subList(0, moves));
      List<String> to =
          new ArrayList<>(random.nextBoolean() ? from : seats.subList(0, Math.min(10, moves + 2)));
      Collections.shuffle(to, random);
      Map<String, Loom.Wire> is = new TreeMap<>();
      Map<String, Loom.Wire> becomes = new TreeMap<>();
      for (int i = 0; i < moves; i++) {
        is.put("W" + i, new Loom.Wire(from.get(i), "S1", "RD"));
        becomes.put("W" + i, new Loom.Wire(to.get(i), "S1", "RD"));
      }
      Map<String, String> housings = Map.of("A", "small", "B", "mixed", "C", "wide");
      Map<String, Boolean> blanks = Map.of("A", false, "B", true, "C", false);
      Loom one = new Loom(is, new TreeMap<>(housings), blanks);
      Loom other = new Loom(becomes, new TreeMap<>(housings), blanks);
      Rework rework = of(one, other, Order.FEWEST_PARKED);
      Replay replay = new Replay(one, other);
      replay.play(rework.steps());
      replay.assertDone();
      int least = leastWaiting(from, to.subList(0, moves));
      assertThat(rework.parked()).as("%s -> %s", from, to).isEqualTo(least);
      most = Math.max(most, least);
    }
    assertThat(most).isEqualTo(3);
  }

  /** 0: in its old seat, 1: waiting, 2: in its new seat; a search by how many wait. */
  private static int leastWaiting(List<String> from, List<String> to) {
    int n = from.size();
    Map<String, Integer> cost = new HashMap<>();
    Deque<int[]> open = new ArrayDeque<>();
    int[] start = new int[n];
    cost.put(Arrays.toString(start), 0);
    open.add(start);
    int best = Integer.MAX_VALUE;
    while (!open.isEmpty()) {
      int[] state = open.remove();
      int sum = cost.get(Arrays.toString(state));
      boolean done = true;
      for (int i = 0; i < n; i++) {
        if (state[i] == 2 || from.get(i).equals(to.get(i))) {
          continue;
        }
        done = false;
        boolean free = true;
        for (int k = 0; k < n; k++) {
          boolean there = state[k] == 0 && from.get(k).equals(to.get(i));
          free &= k == i || !there;
        }
        if (free) {
          push(state, i, 2, sum, cost, open);
        }
        if (state[i] == 0) {
          push(state, i, 1, sum + 1, cost, open);
        }
      }
      best = done ? Math.min(best, sum) : best;
    }
    return best;
  }

  private static void push(
      int[] state, int i, int value, int sum, Map<String, Integer> cost, Deque<int[]> open) {
    int[] next = state.clone();
    next[i] = value;
    if (sum < cost.getOrDefault(Arrays.toString(next), Integer.MAX_VALUE)) {
      cost.put(Arrays.toString(next), sum);
      open.add(next);
    }
  }
}
