package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.Housing;
import org.tugtest.network.Point;
import org.tugtest.text.NaturalOrder;

/** Puts before and after the steps at each connector what opens, empties and closes it. */
final class Locks {
  private final Bench bench;
  private final Set<Seat> plugged = new LinkedHashSet<>();
  private final Map<String, String> away;

  /** A housing on the bench. */
  private record Body(String connector, boolean old) {}

  Locks(Bench bench) {
    this.bench = bench;
    this.away = bench.bodies().takenAway();
  }

  /** All steps, those at the locks included. */
  List<Step> around(List<Step> steps) {
    Map<Body, Integer> last = new LinkedHashMap<>();
    for (int i = 0; i < steps.size(); i++) {
      Body body = bodyOf(steps.get(i));
      if (body != null) {
        last.put(body, i);
      }
    }
    List<Step> all = new ArrayList<>();
    Set<Body> open = new LinkedHashSet<>();
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      Body body = bodyOf(step);
      if (body != null && open.add(body)) {
        open(body, all);
      }
      Seat to = step.to();
      if (to != null && plugged.remove(to)) {
        all.add(step(Step.Kind.UNBLANK, to, to.text() + ": take the blank out"));
      }
      all.add(step);
      if (body != null && last.getOrDefault(body, -1) == i) {
        close(body, all);
      }
    }
    untouched(open, all);
    return all;
  }

  /** Housings at which nothing moves, but that come, go, or are plugged or labelled otherwise. */
  private void untouched(Set<Body> touched, List<Step> all) {
    Map<String, Body> bodies = new TreeMap<>(NaturalOrder.NATURAL);
    away.keySet().forEach(connector -> bodies.put(connector + " ", new Body(connector, true)));
    for (String connector : bench.target().wiring().connectors()) {
      bodies.put(connector, new Body(connector, false));
    }
    for (Body body : bodies.values()) {
      if (touched.contains(body)) {
        continue;
      }
      List<Step> opened = new ArrayList<>();
      open(body, opened);
      List<Step> closed = new ArrayList<>();
      close(body, closed);
      if (body.old() || bench.bodies().comesNew(body.connector()) || closed.size() > 1) {
        all.addAll(opened);
        all.addAll(closed);
      }
    }
  }

  private Seat seat(Body body, String cavity) {
    if (!body.old()) {
      return Seat.wanted(Point.Kind.CAVITY, body.connector(), cavity);
    }
    boolean again = bench.target().wiring().connectors().contains(body.connector());
    Seat.Stay stay = again ? Seat.Stay.REPLACED : Seat.Stay.GONE;
    return new Seat(Point.Kind.CAVITY, body.connector(), cavity, stay);
  }

  private static @Nullable Body bodyOf(Step step) {
    Seat seat = step.from() != null ? step.from() : step.to();
    return seat == null || seat.kind() != Point.Kind.CAVITY
        ? null
        : new Body(seat.owner(), seat.old());
  }

  private void open(Body body, List<Step> steps) {
    Seat any = seat(body, "");
    Housing housing = bench.bodies().housing(any).orElse(null);
    if (!body.old() && bench.bodies().comesNew(body.connector())) {
      String part = housing == null ? "a housing" : "housing " + housing.id();
      steps.add(step(Step.Kind.FIT, any, "take " + part + " for " + body.connector()));
      return;
    }
    for (String cavity : bench.bodies().cavities(body.connector(), body.old())) {
      Seat seat = seat(body, cavity);
      if (bench.sitsNow().in(seat).isEmpty() && pluggedNow(seat)) {
        plugged.add(seat);
      }
    }
    String lock =
        housing == null
            ? "; open its secondary lock, if it has one"
            : housing.secondaryLock() ? "; open its secondary lock" : "";
    steps.add(step(Step.Kind.OPEN, any, name(body) + ": unplug it" + lock));
  }

  private void close(Body body, List<Step> steps) {
    Seat any = seat(body, "");
    if (body.old()) {
      boolean gone = !bench.target().wiring().connectors().contains(body.connector());
      steps.add(
          step(
              Step.Kind.TAKE_AWAY,
              any,
              name(body)
                  + " is empty: take it away"
                  + (gone ? "; keep it bagged with its list" : "")));
      return;
    }
    for (String cavity : bench.bodies().cavities(body.connector(), false)) {
      Seat seat = seat(body, cavity);
      boolean wanted = bench.wanted().in(seat).isEmpty() && pluggedTarget(seat);
      if (wanted && plugged.add(seat)) {
        steps.add(step(Step.Kind.BLANK, seat, seat.text() + ": plug it with a blank"));
      } else if (!wanted && plugged.remove(seat)) {
        steps.add(step(Step.Kind.UNBLANK, seat, seat.text() + ": take the blank out"));
      }
    }
    Housing housing = bench.bodies().housing(any).orElse(null);
    String lock =
        housing == null
            ? "close its secondary lock, if it has one"
            : housing.secondaryLock()
                ? "close its secondary lock; if it does not close, a terminal is not home"
                : "see that all terminals stand level across the face";
    label(body, any, steps);
    steps.add(step(Step.Kind.CLOSE, any, body.connector() + ": " + lock));
  }

  private void label(Body body, Seat any, List<Step> steps) {
    String wanted = label(bench.target().harness().connectors().get(body.connector()));
    boolean fresh = bench.bodies().comesNew(body.connector());
    String is =
        label(bench.now().harness().connectors().get(bench.bodies().idNow(body.connector())));
    if (!wanted.isEmpty() && (fresh || !wanted.equals(is))) {
      String text = body.connector() + ": label it \"" + wanted + "\"";
      steps.add(step(Step.Kind.LABEL, any, text));
    }
  }

  private static String label(@Nullable Connector connector) {
    return connector == null ? "" : connector.labelText();
  }

  private String name(Body body) {
    String is = bench.bodies().idNow(body.connector());
    boolean stays = bench.target().wiring().connectors().contains(body.connector());
    return body.old() && stays ? is + " (old housing)" : is;
  }

  private boolean pluggedNow(Seat seat) {
    String is = bench.bodies().idNow(seat.owner());
    return plugged(bench.now().harness().connectors().get(is), seat.name());
  }

  private boolean pluggedTarget(Seat seat) {
    return plugged(bench.target().harness().connectors().get(seat.owner()), seat.name());
  }

  private static boolean plugged(@Nullable Connector connector, String cavity) {
    if (connector == null) {
      return false;
    }
    Connector.Cavity own = connector.cavities().get(cavity);
    Boolean blank = own == null ? null : own.blank();
    return blank == null ? connector.blanked() : blank;
  }

  private static Step step(Step.Kind kind, Seat seat, String text) {
    return new Step(kind, seat.owner(), List.of(), seat, null, null, text, List.of());
  }
}
