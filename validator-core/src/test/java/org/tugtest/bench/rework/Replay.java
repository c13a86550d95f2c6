package org.tugtest.bench.rework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Does what a sheet says, step by step, on a loom of its own, and refuses what cannot be done. */
final class Replay {
  private static final String LOOSE = "loose";
  private static final String OUT = "out";
  private final Loom is;
  private final Loom becomes;
  private final Map<String, String> at = new TreeMap<>();
  private final Map<String, String> terminal = new HashMap<>();
  private final Map<String, Integer> inserted = new HashMap<>();
  private final Set<String> open = new HashSet<>();
  private final Set<String> closed = new HashSet<>();
  private final Set<String> plugged = new HashSet<>();
  int waits;

  Replay(Loom is, Loom becomes) {
    this.is = is;
    this.becomes = becomes;
    is.wires()
        .forEach(
            (id, wire) -> {
              Loom.Wire wanted = becomes.wires().get(id);
              boolean replaced = wanted != null && !wanted.colour().equals(wire.colour());
              String name = replaced ? id + " (old)" : id;
              put(name + "/a", wire.from());
              put(name + "/b", wire.to());
            });
    is.housings()
        .forEach(
            (connector, housing) ->
                Loom.HOUSINGS
                    .get(housing)
                    .keySet()
                    .forEach(
                        cavity -> {
                          String seat = seatNow(connector + ":" + cavity);
                          if (is.blanked().get(connector) && !at.containsValue(seat)) {
                            plugged.add(seat);
                          }
                        }));
  }

  private void put(String end, String seat) {
    at.put(end, seatNow(seat));
    if (!seat.startsWith("S")) {
      terminal.put(end, seat.startsWith("E:") ? "?" : Loom.familyAt(is.housings(), seat) + "-s");
    }
  }

  private String seatNow(String seat) {
    if (!seat.contains(":") || seat.startsWith("E:")) {
      return seat;
    }
    String owner = seat.substring(0, seat.indexOf(':'));
    boolean stays = is.housings().get(owner).equals(becomes.housings().get(owner));
    boolean again = becomes.housings().containsKey(owner);
    return stays || !again ? seat : seat + " of the old housing";
  }

  void play(List<Step> steps) {
    for (Step step : steps) {
      List<String> ends = step.ends().stream().map(PieceEnd::toString).toList();
      String from = step.from() == null ? "" : step.from().text();
      String to = step.to() == null ? "" : step.to().text();
      switch (step.kind()) {
        case OPEN, FIT -> {
          assertThat(closed).as(step.text()).doesNotContain(body(step.from()));
          assertThat(open.add(body(step.from()))).as(step.text()).isTrue();
        }
        case CLOSE, TAKE_AWAY -> {
          assertThat(open.remove(body(step.from()))).as(step.text()).isTrue();
          closed.add(body(step.from()));
          if (step.kind() == Step.Kind.TAKE_AWAY) {
            assertThat(at.values()).noneMatch(seat -> isIn(seat, step.from()));
          }
        }
        case UNBLANK -> {
          assertOpen(step.from(), step);
          assertThat(plugged.remove(from)).as(step.text()).isTrue();
        }
        case BLANK -> {
          assertOpen(step.from(), step);
          assertThat(at.values()).as(step.text()).doesNotContain(from);
          assertThat(plugged.add(from)).as(step.text()).isTrue();
        }
        case RELEASE, DETACH -> {
          if (step.kind() == Step.Kind.RELEASE) {
            assertOpen(step.from(), step);
          }
          assertThat(held(from)).as(step.text()).containsAll(ends);
          if (!from.equals("E:stud")) {
            assertThat(held(from)).as(step.text()).hasSameSizeAs(ends);
          }
          ends.forEach(end -> at.put(end, LOOSE));
        }
        case CUT -> cut(step, ends, from);
        case REMOVE ->
            ends.forEach(end -> assertThat(at.put(end, OUT)).as(step.text()).isEqualTo(LOOSE));
        case ADD -> ends.forEach(end -> assertThat(at.put(end, LOOSE)).as(step.text()).isNull());
        case SLIDE_ON ->
            ends.forEach(
                end -> {
                  assertThat(at.get(end)).as(step.text()).isEqualTo(LOOSE);
                  assertThat(terminal).as(step.text()).doesNotContainKey(end);
                });
        case CRIMP ->
            ends.forEach(
                end -> {
                  assertThat(at.get(end)).as(step.text()).isEqualTo(LOOSE);
                  String part = step.part() == null ? "?" : step.part();
                  assertThat(terminal.put(end, part)).as(step.text()).isNull();
                  inserted.remove(end);
                });
        case PARK -> {
          waits++;
          if (!to.isEmpty()) {
            insert(step, ends, to);
          }
        }
        case INSERT, ATTACH -> insert(step, ends, to);
        case SPLICE -> {
          assertThat(held(to)).as(step.text()).isEmpty();
          ends.forEach(
              end -> {
                assertThat(at.put(end, to)).as(step.text()).isEqualTo(LOOSE);
                assertThat(terminal).as(step.text()).doesNotContainKey(end);
              });
        }
        case LABEL -> {}
      }
    }
    assertThat(open).as("everything is closed").isEmpty();
  }

  private void cut(Step step, List<String> ends, String from) {
    for (String end : ends) {
      if (from.isEmpty()) {
        assertThat(at.get(end)).as(step.text()).isEqualTo(LOOSE);
        assertThat(terminal.remove(end)).as(step.text()).isNotNull();
      } else {
        assertThat(at.put(end, LOOSE)).as(step.text()).isEqualTo(from);
      }
    }
  }

  private void insert(Step step, List<String> ends, String to) {
    assertThat(plugged).as(step.text()).doesNotContain(to);
    if (!to.startsWith("E:stud")) {
      assertThat(held(to)).as(step.text()).isEmpty();
    }
    assertThat(ends).as(step.text()).hasSizeLessThanOrEqualTo(Loom.room(to));
    if (!to.startsWith("E:")) {
      assertOpen(step.to(), step);
    }
    for (String end : ends) {
      assertThat(at.put(end, to)).as(step.text()).isEqualTo(LOOSE);
      assertThat(terminal).as(step.text()).containsKey(end);
      if (!to.startsWith("E:")) {
        assertThat(terminal.get(end))
            .as(step.text())
            .isEqualTo(Loom.familyAt(becomes.housings(), to) + "-s");
      }
      assertThat(inserted.merge(end, 1, Integer::sum))
          .as("uses of one terminal")
          .isLessThanOrEqualTo(2);
    }
  }

  private List<String> held(String seat) {
    return at.entrySet().stream()
        .filter(e -> e.getValue().equals(seat))
        .map(Map.Entry::getKey)
        .toList();
  }

  private void assertOpen(Seat seat, Step step) {
    assertThat(open).as(step.text()).contains(body(seat));
  }

  private static String body(Seat seat) {
    return seat.owner() + (seat.old() ? " old" : "");
  }

  private static boolean isIn(String place, Seat body) {
    return place.startsWith(body.owner() + ":")
        && place.endsWith("housing") == (body.stay() == Seat.Stay.REPLACED);
  }

  /** The loom on the bench is the one that was wanted. */
  void assertDone() {
    Map<String, List<String>> left = new TreeMap<>();
    at.forEach(
        (end, seat) -> {
          if (!seat.equals(OUT)) {
            left.computeIfAbsent(end.substring(0, end.length() - 2), none -> new ArrayList<>())
                .add(seat);
          }
        });
    assertThat(left.keySet()).isEqualTo(becomes.wires().keySet());
    becomes
        .wires()
        .forEach(
            (id, wire) ->
                assertThat(left.get(id)).as(id).containsExactlyInAnyOrder(wire.from(), wire.to()));
    Set<String> wanted = new HashSet<>();
    becomes
        .housings()
        .forEach(
            (connector, housing) ->
                Loom.HOUSINGS
                    .get(housing)
                    .keySet()
                    .forEach(
                        cavity -> {
                          String seat = connector + ":" + cavity;
                          if (becomes.blanked().get(connector) && !at.containsValue(seat)) {
                            wanted.add(seat);
                          }
                        }));
    plugged.removeIf(
        seat -> seat.endsWith("housing") || !becomes.housings().containsKey(seat.substring(0, 1)));
    assertThat(plugged).isEqualTo(wanted);
  }
}
