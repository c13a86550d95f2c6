package org.tugtest.built;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.facts.TakenReading;
import org.tugtest.model.Reading;
import org.tugtest.model.Ref;
import org.tugtest.network.Point;
import org.tugtest.read.ReadFile;
import org.tugtest.text.Place;

/** Holds readings against the points that there are; of several between two points, the last. */
final class Readings {
  private static final double LEAST_OPEN = 100;
  private final Names names;
  private final Map<Object, TakenReading> last = new LinkedHashMap<>();
  private final List<Refusal> refused = new ArrayList<>();

  /** Two points, in order, and whether insulation was measured. */
  private record Pair(Point one, Point other, boolean insulation) {}

  Readings(Facts built) {
    this.names = new Names(built);
  }

  List<TakenReading> taken() {
    return List.copyOf(last.values());
  }

  List<Refusal> refused() {
    return refused;
  }

  void read(ReadFile<Map<Integer, Reading>> file) {
    file.problems()
        .forEach(
            problem ->
                refused.add(new Refusal(problem.message(), problem.remedy(), problem.at().get(0))));
    file.value()
        .forEach((line, reading) -> read(reading, file.places().of("readings/" + line), line));
  }

  private void read(Reading reading, Place at, int line) {
    Optional<Point> from = point(reading.from(), at, line);
    Optional<Point> to = point(reading.to(), at, line);
    if (from.isEmpty() || to.isEmpty()) {
      return;
    }
    if (from.equals(to)) {
      String message =
          "line " + line + " of " + at.file() + " reads " + reading.from() + " against itself";
      refused.add(new Refusal(message, "write the other end of what was measured", at));
      return;
    }
    Double ohms = reading.ohms();
    Boolean joined = reading.joined();
    boolean insulation = reading.method() == Reading.Method.INSULATION;
    if (ohms != null && joined != null && !insulation && joined != ohms < LEAST_OPEN) {
      String message =
          "line "
              + line
              + " of "
              + at.file()
              + " reads "
              + org.tugtest.text.Quoted.number(ohms)
              + " ohm and says "
              + (joined ? "joined" : "not joined");
      refused.add(new Refusal(message, "write the one that holds", at));
      return;
    }
    boolean turned = from.get().compareTo(to.get()) > 0;
    Pair pair =
        new Pair(turned ? to.get() : from.get(), turned ? from.get() : to.get(), insulation);
    TakenReading taken = new TakenReading(reading, from.get(), to.get(), at);
    TakenReading before = last.get(pair);
    if (before == null || !day(before).isAfter(day(taken))) {
      last.remove(pair);
      last.put(pair, taken);
    }
  }

  private static LocalDate day(TakenReading taken) {
    LocalDate date = taken.reading().date();
    return date == null ? LocalDate.MIN : date;
  }

  private Optional<Point> point(Ref ref, Place at, int line) {
    Optional<Point> point = names.point(ref);
    if (point.isEmpty()) {
      refused.add(
          new Refusal(
              "line " + line + " of " + at.file() + " reads " + ref + ", which there is not",
              names.nearest(ref),
              at));
    }
    return point;
  }
}
